package io.bindprep.report.words;

import io.bindprep.job.Overs;
import io.bindprep.run.MaterialReason;
import io.bindprep.wording.LengthText;

/** English of how the materials of a run were counted. */
final class MaterialWords {
    private MaterialWords() {}

    static String of(MaterialReason reason) {
        if (reason instanceof MaterialReason.OversOfEach r) {
            Overs overs = r.overs();
            return "overs of each stock and use: " + LengthText.plain(overs.percent(), 3) + " %, at least "
                    + overs.least() + " (" + overs.source() + ")";
        }
        if (reason instanceof MaterialReason.OnPressSheet r) {
            return "leaves of " + LengthText.area(r.width(), r.height()) + ": " + r.up() + " on a press sheet "
                    + r.sheet().name() + ", " + r.sheet().bleed().inMm() + " of bleed round each and "
                    + r.sheet().gripper().inMm() + " of gripper along the sheet's long edge: " + r.stacked()
                    + " press sheets cut and stacked copy by copy, " + r.repeated() + " with each leaf repeated";
        }
        if (reason instanceof MaterialReason.NotOnPressSheet r) {
            return "leaves of " + LengthText.area(r.width(), r.height()) + " do not fit on a press sheet "
                    + r.sheet().name() + " with bleed and gripper";
        }
        if (reason instanceof MaterialReason.NoElement) {
            return "no element is counted: none takes the stack, or no hole row fits its edge";
        }
        if (reason instanceof MaterialReason.SpareElements) {
            return "spare elements by the percentage of the overs alone";
        }
        if (reason instanceof MaterialReason.NoWeight) {
            return "no weight: the grammage of a stock is not known";
        }
        return "weights are of paper, board and film at the size of the leaf, holes not taken off; the element is not"
                + " weighed";
    }
}
