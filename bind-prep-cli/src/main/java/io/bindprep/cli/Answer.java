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
        INTERNAL("internal error"),
        UNREADABLE("unreadable"),
        WRONG_SETTING("wrong setting"),
        FINDINGS("findings"),
        GOOD("good");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }
}
