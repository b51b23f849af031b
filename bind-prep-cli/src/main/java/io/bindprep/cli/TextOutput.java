package io.bindprep.cli;

import io.bindprep.check.Report;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.TextReport;
import io.bindprep.report.TextStyle;
import java.io.PrintWriter;

/** Reports for people; of several files each under the name of its own. */
final class TextOutput implements ReportOutput {
    private final PrintWriter out;
    private final PrintWriter err;
    private final TextStyle style;
    private final boolean several;
    private boolean first = true;

    TextOutput(PrintWriter out, PrintWriter err, TextStyle style, boolean several) {
        this.out = out;
        this.err = err;
        this.style = style;
        this.several = several;
    }

    @Override
    public void report(Report report) {
        if (several) {
            out.print((first ? "" : "\n") + "== " + report.document().file() + " ==\n\n");
        }
        first = false;
        out.print(TextReport.write(report, style));
        out.flush();
    }

    @Override
    public void unreadable(String file, UnreadableInputException e) {
        // stderr may be a file where stdout is a terminal
        err.print(TextReport.unreadable(file, e, new TextStyle(false, style.width())));
        err.flush();
    }

    @Override
    public void close() {
        out.flush();
    }
}
