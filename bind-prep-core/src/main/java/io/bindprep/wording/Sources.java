package io.bindprep.wording;

/** Sources of values that stand in no table. */
public final class Sources {
    /** The value stands in the job. */
    public static final String JOB = "as the job says";

    private Sources() {}
}
