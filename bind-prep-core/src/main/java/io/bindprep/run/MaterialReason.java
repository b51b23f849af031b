package io.bindprep.run;

import io.bindprep.job.Overs;
import io.bindprep.job.PressSheet;
import io.bindprep.unit.Length;

/** Grounds of the count of a run's materials: the values, without words. */
public sealed interface MaterialReason {
    /** Spare sheets of each stock and use. */
    record OversOfEach(Overs overs) implements MaterialReason {}

    /**
     * Leaves on a press sheet.
     *
     * @param up leaves side by side on it
     * @param stacked press sheets where each copy is cut and stacked by itself
     * @param repeated press sheets where each leaf is repeated on its sheets
     */
    record OnPressSheet(Length width, Length height, PressSheet sheet, int up, long stacked, long repeated)
            implements MaterialReason {}

    /** Leaves that are too large for the press sheet. */
    record NotOnPressSheet(Length width, Length height, PressSheet sheet) implements MaterialReason {}

    /** No element is counted. */
    record NoElement() implements MaterialReason {}

    /** Spare elements go by the percentage alone. */
    record SpareElements() implements MaterialReason {}

    /** The grammage of a stock is not known. */
    record NoWeight() implements MaterialReason {}

    /** Content of the weights. */
    record Weights() implements MaterialReason {}
}
