package io.bindprep.cli;

import io.bindprep.check.Report;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.JsonReport;
import java.io.PrintWriter;

/** Reports for programs: one object for one file, an array of them for several. */
final class JsonOutput implements ReportOutput {
    private final PrintWriter out;
    private final boolean array;
    private final boolean allPages;
    private String before;

    JsonOutput(PrintWriter out, boolean array, boolean allPages) {
        this.out = out;
        this.array = array;
        this.allPages = allPages;
        this.before = array ? "[\n" : "";
    }

    @Override
    public void report(Report report) {
        print(JsonReport.write(report, allPages));
    }

    @Override
    public void unreadable(String file, UnreadableInputException e) {
        print(JsonReport.unreadable(file, e));
    }

    private void print(String object) {
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
