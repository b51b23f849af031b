package io.bindprep.cli.batch;

import io.bindprep.cli.output.ReportFiles;
import java.util.List;

/**
 * Answer for one file, in words already: the report itself need not be kept until its turn comes.
 *
 * @param name the file's
 * @param kind in a word
 * @param exit what it asks the command to return
 * @param out its part of standard output; "" for none
 * @param err its part of standard error; "" for none
 * @param gist a few words for a list of many
 * @param weight the more, the worse among its kind
 * @param reports whether its reports are written
 */
public record Answer(
        String name, Kind kind, int exit, String out, String err, String gist, int weight, Reports reports) {
    /** State of the reports of a file. */
    public enum Reports {
        /** All that were asked for are written. */
        WRITTEN,
        /** One could not be written. */
        UNWRITTEN,
        /** One found no room on its disk; those of the next files will find none either. */
        DISK_FULL;

        static Reports of(List<ReportFiles.Unwritten> unwritten) {
            return unwritten.isEmpty() ? WRITTEN : ReportFiles.full(unwritten) ? DISK_FULL : UNWRITTEN;
        }
    }

    /** An answer of which every report is written. */
    public Answer(String name, Kind kind, int exit, String out, String err, String gist, int weight) {
        this(name, kind, exit, out, err, gist, weight, Reports.WRITTEN);
    }

    /** Result kept for the summary; its output is printed already and not worth the memory. */
    Answer brief() {
        return new Answer(name, kind, exit, "", "", gist, weight, reports);
    }

    /** Worst first. */
    public enum Kind {
        INTERNAL("internal error", "with an internal error"),
        UNREADABLE("unreadable", "unreadable"),
        WRONG_SETTING("wrong setting", "with a wrong setting"),
        FINDINGS("findings", "with findings"),
        GOOD("good", "good");

        private final String word;
        private final String counted;

        Kind(String word, String counted) {
            this.word = word;
            this.counted = counted;
        }

        /** The word with blanks up to what comes behind it. */
        public String column() {
            return word + " ".repeat(16 - word.length());
        }

        /** Behind a number of files. */
        String counted() {
            return counted;
        }
    }
}
