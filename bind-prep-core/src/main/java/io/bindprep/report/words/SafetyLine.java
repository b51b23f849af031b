package io.bindprep.report.words;

/** Safety line at the end of every report for people. */
public final class SafetyLine {
    /** The cautions that printers' safety guides agree on; worded here, not quoted. */
    public static final String TEXT = "Punch a waste sheet first. The machine's manual, site rules and local law come"
            + " before this report. Only trained people run punches, cutters and closers.";

    private SafetyLine() {}
}
