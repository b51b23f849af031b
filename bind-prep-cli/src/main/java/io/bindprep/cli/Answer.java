package io.bindprep.cli;

/**
 * What came of one file, in words already: the report itself need not be kept until its turn comes.
 *
 * @param name the file's
 * @param kind in a word
 * @param exit what it asks the command to return
 * @param out its part of standard output; "" for none
 * @param err its part of standard error; "" for none
 * @param gist a few words for a list of many
 * @param weight the more, the worse among its kind
 */
record Answer(String name, Kind kind, int exit, String out, String err, String gist, int weight) {
    /** Worst first. */
    enum Kind {
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

        String word() {
            return word;
        }

        /** Behind a number of files. */
        String counted() {
            return counted;
        }
    }
}
