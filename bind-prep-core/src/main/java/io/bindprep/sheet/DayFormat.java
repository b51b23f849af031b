package io.bindprep.sheet;

import io.bindprep.day.Day;
import io.bindprep.report.json.JsonDay;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** The forms in which a day is put on disk, each whole, each job's sheet behind the list. */
public enum DayFormat {
    /** To be printed at full size. */
    PDF {
        @Override
        public void write(Day day, SheetPaper paper, OutputStream out) throws IOException {
            DayPdf.write(DaySheet.of(day), paper, out);
        }
    },
    /** For a screen at the punch. */
    HTML {
        @Override
        public void write(Day day, SheetPaper paper, OutputStream out) throws IOException {
            out.write(DayHtml.write(DaySheet.of(day)).getBytes(StandardCharsets.UTF_8));
        }
    },
    /** For programs: the list with each job's report. */
    JSON {
        @Override
        public void write(Day day, SheetPaper paper, OutputStream out) throws IOException {
            out.write(JsonDay.write(day).getBytes(StandardCharsets.UTF_8));
        }
    };

    /**
     * Writes the day; the stream stays open.
     *
     * @param paper what a PDF is printed on
     * @throws IOException where the stream cannot be written
     */
    public abstract void write(Day day, SheetPaper paper, OutputStream out) throws IOException;
}
