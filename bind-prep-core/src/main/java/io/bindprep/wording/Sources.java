package io.bindprep.wording;

import io.bindprep.unit.Length;

/** Sources of values that stand in no table of their own. */
public final class Sources {
    /** The value stands in the job. */
    public static final String JOB = "as the job says";

    /** Caliper that the job gives. */
    public static final String CALIPER = "caliper as given in the job";

    /** Caliper by grammage and bulk. */
    public static final String CALIPER_BY_BULK =
            "caliper = grammage x bulk (ISO 534, apparent specific volume) as given in the job";

    /** Tolerance that the job gives. */
    public static final String TOLERANCE = "tolerance as given in the job";

    /** Tolerance of a measured pack. */
    public static final String TOLERANCE_OF_PACK = measured("pack");

    /** Tolerance of a stock of which nothing else is known. */
    public static final String TOLERANCE_USUAL = "tolerance 8 % (common practice, no source)";

    /** A size that the job gives, with the tolerance it is cut to. */
    public static final String SIZE = "as given in the job; tolerance ISO 216:2007, 7.1";

    private Sources() {}

    /** Caliper of a measured pack, as the job says it. */
    public static String caliperOfPack(String pack) {
        return "caliper from the measured pack \"" + pack + "\" of the job";
    }

    /** Caliper and tolerance of a measured stack. */
    public static String measuredStack(int leaves, Length stack) {
        return "caliper from the measured stack, " + Counted.of(leaves, "leaf") + " = " + stack.inMm() + "; "
                + measured("stack");
    }

    private static String measured(String what) {
        return "tolerance 2 %, at least 0.1 mm of reading over the " + what + " (common practice, no source)";
    }

    /**
     * A size of a table with the tolerance it is cut to.
     *
     * @param iso whether the table says ISO 216
     * @param ours whether it is our own table, else the shop's, which says so itself
     */
    public static String size(String source, boolean iso, boolean ours) {
        return source
                + (iso ? "; tolerance ISO 216:2007, 7.1" : ours ? "; tolerance: a college print shop's guide" : "");
    }
}
