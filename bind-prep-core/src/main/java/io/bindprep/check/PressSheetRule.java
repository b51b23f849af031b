package io.bindprep.check;

import io.bindprep.job.PressSheet;
import io.bindprep.run.StockNeed;
import java.util.ArrayList;
import java.util.List;

/** {@code press-sheet-small}: leaves that do not fit on the job's press sheet. */
final class PressSheetRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        PressSheet sheet = s.job().supply().pressSheet();
        List<Finding> findings = new ArrayList<>();
        if (sheet == null) {
            return findings;
        }
        for (StockNeed need : s.run().materials().stocks()) {
            if (need.printed() && need.press() == null) {
                findings.add(Say.document(
                        "press-sheet-small",
                        Severity.ERROR,
                        "A leaf of " + s.measures().area(need.width(), need.height())
                                + " does not fit on the press sheet "
                                + sheet.name() + ", " + s.measures().area(sheet.width(), sheet.height()) + ", with "
                                + s.measures().exact(sheet.bleed()) + " bleed all round and "
                                + s.measures().exact(sheet.gripper()) + " gripper edge.",
                        "Use a larger press sheet, or give its smaller bleed and gripper edge (press-sheet)."));
            }
        }
        return findings;
    }
}
