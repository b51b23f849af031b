package io.bindprep.sheet;

import io.bindprep.check.Report;
import io.bindprep.day.Day;
import io.bindprep.report.json.JsonDay;
import io.bindprep.report.json.JsonReport;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The forms in which a job sheet, and a day with the sheet of each job behind its list, is put on disk, each whole. */
public enum SheetFormat {
    /** To be printed at full size. */
    PDF {
        @Override
        public void write(Report report, SheetPaper paper, OutputStream out) throws IOException {
            SheetPdf.write(JobSheet.of(report), paper, out);
        }

        @Override
        public void write(Day day, SheetPaper paper, OutputStream out) throws IOException {
            DayPdf.write(DaySheet.of(day), paper, out);
        }
    },
    /** For a screen at the punch. */
    HTML {
        @Override
        public void write(Report report, SheetPaper paper, OutputStream out) throws IOException {
            out.write(SheetHtml.write(JobSheet.of(report)).getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public void write(Day day, SheetPaper paper, OutputStream out) throws IOException {
            out.write(DayHtml.write(DaySheet.of(day)).getBytes(StandardCharsets.UTF_8));
        }
    },
    /** For programs: the report with its run, without its pages; a day's list with each job's report. */
    JSON {
        @Override
        public void write(Report report, SheetPaper paper, OutputStream out) throws IOException {
            out.write(JsonReport.write(report, false).getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public void write(Day day, SheetPaper paper, OutputStream out) throws IOException {
            out.write(JsonDay.write(day).getBytes(StandardCharsets.UTF_8));
        }
    };

    /** Its name in settings, "html"; what a file's name ends with. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The format of this name; empty where there is none. */
    public static Optional<SheetFormat> of(String id) {
        return Arrays.stream(values()).filter(f -> f.id().equals(id)).findFirst();
    }

    /** Every name. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(SheetFormat::id).toList();
    }

    /**
     * Writes the sheet of a report; the stream stays open.
     *
     * @param paper what a PDF is printed on
     * @throws IOException where the stream cannot be written
     */
    public abstract void write(Report report, SheetPaper paper, OutputStream out) throws IOException;

    /**
     * Writes a day; the stream stays open.
     *
     * @param paper as of a sheet
     * @throws IOException where the stream cannot be written
     */
    public abstract void write(Day day, SheetPaper paper, OutputStream out) throws IOException;
}
