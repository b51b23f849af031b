package io.bindprep.cli.batch;

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
 * @param unwritten whether one of its reports could not be written
 */
public record Answer(
        String name, Kind kind, int exit, String out, String err, String gist, int weight, boolean unwritten) {
    /** Result kept for the summary; its output is printed already and not worth the memory. */
    Answer brief() {
        return new Answer(name, kind, exit, "", "", gist, weight, unwritten);
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
