package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.wording.Printable;
import java.io.PrintWriter;

/** Reports for people; of several files each under the name of its own. */
public final class TextOutput implements ReportOutput {
    private final PrintWriter out;
    private final TextStyle style;
    private final boolean several;
    private boolean first = true;

    public TextOutput(PrintWriter out, TextStyle style, boolean several) {
        this.out = out;
        this.style = style;
        this.several = several;
    }

    @Override
    public Said report(Report report) {
        String heading = several ? "== " + Printable.of(report.document().file()) + " ==\n\n" : "";
        return new Said(heading + TextReport.write(report, style), "");
    }

    @Override
    public Said unreadable(String file, UnreadableInputException e) {
        // stderr may be a file where stdout is a terminal
        return new Said("", TextReport.unreadable(file, e, new TextStyle(false, style.width())));
    }

    @Override
    public Said wrongSetting(String file, SettingException e, String worded) {
        return new Said("", (several ? "bind-prep: " + Printable.of(file) + ":\n" : "") + worded + "\n");
    }

    @Override
    public Said internal(String file, String worded) {
        return new Said("", worded + "\n");
    }

    @Override
    public void print(String text) {
        out.print((first ? "" : "\n") + text);
        out.flush();
        first = false;
    }

    @Override
    public void close() {
        out.flush();
    }
}
