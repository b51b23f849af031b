package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.json.JsonReport;
import java.io.PrintWriter;

/** Reports for programs: one object for one file, an array of them for several. */
public final class JsonOutput implements ReportOutput {
    private final PrintWriter out;
    private final boolean array;
    private final boolean allPages;
    private String before;

    public JsonOutput(PrintWriter out, boolean array, boolean allPages) {
        this.out = out;
        this.array = array;
        this.allPages = allPages;
        this.before = array ? "[\n" : "";
    }

    @Override
    public Said report(Report report) {
        return new Said(JsonReport.write(report, allPages), "");
    }

    @Override
    public Said unreadable(String file, UnreadableInputException e) {
        return new Said(JsonReport.unreadable(file, e), "");
    }

    @Override
    public Said wrongSetting(String file, SettingException e, String worded) {
        return new Said("", worded + "\n");
    }

    @Override
    public Said internal(String file, String worded) {
        return new Said("", worded + "\n");
    }

    @Override
    public void print(String object) {
        out.print(before + object.strip());
        before = ",\n";
        out.flush();
    }

    @Override
    public void close() {
        if (array) {
            boolean none = before.startsWith("[");
            out.print(none ? "[]\n" : "\n]\n");
        } else if (before.startsWith(",")) {
            out.print("\n");
        }
        out.flush();
    }
}
