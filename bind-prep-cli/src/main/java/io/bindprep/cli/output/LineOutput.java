package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.json.JsonReport;
import java.io.PrintWriter;

/** Reports for programs that read line by line: one JSON object a line, one line a file whatever came of it. */
public final class LineOutput implements ReportOutput {
    private final PrintWriter out;
    private final boolean allPages;

    public LineOutput(PrintWriter out, boolean allPages) {
        this.out = out;
        this.allPages = allPages;
    }

    @Override
    public Said report(Report report) {
        return new Said(JsonReport.line(report, allPages), "");
    }

    @Override
    public Said unreadable(String file, UnreadableInputException e) {
        return new Said(JsonReport.unreadableLine(file, e), "");
    }

    @Override
    public Said wrongSetting(String file, SettingException e, String worded) {
        return new Said(JsonReport.wrongSettingLine(file, e), "");
    }

    @Override
    public Said internal(String file, String worded) {
        return new Said(JsonReport.internalErrorLine(file, worded), worded + "\n");
    }

    @Override
    public void print(String line) {
        out.print(line);
        out.flush();
    }

    @Override
    public void close() {
        out.flush();
    }
}
