package io.bindprep.check;

import io.bindprep.job.PressSheet;
import io.bindprep.run.StockNeed;
import io.bindprep.wording.LengthText;
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
                        "A leaf of " + LengthText.area(need.width(), need.height())
                                + " does not fit on the press sheet "
                                + sheet.name() + ", " + LengthText.area(sheet.width(), sheet.height()) + ", with "
                                + sheet.bleed().inMm() + " of bleed all round and "
                                + sheet.gripper().inMm() + " of gripper.",
                        "Name a larger press-sheet, or its bleed and gripper where they are less."));
            }
        }
        return findings;
    }
}
