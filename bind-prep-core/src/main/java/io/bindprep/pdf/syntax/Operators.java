package io.bindprep.pdf.syntax;

/** The operators of content (ISO 32000-1:2008, Annex A) by their bytes, so that none makes a string of its own. */
final class Operators {
    /** Stands for every word that is no operator. */
    static final String UNKNOWN = "?";

    private static final String ALL =
            "b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i"
                    + " ID j J K k l m M MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w"
                    + " W W* y ' \" true false null";
    private static final int SLOTS = 512;
    private static final long[] WORDS = new long[SLOTS];
    private static final String[] NAMES = new String[SLOTS];

    static {
        for (String name : ALL.split(" ", -1)) {
            long word = 0;
            for (int i = 0; i < name.length(); i++) {
                word = word << 8 | name.charAt(i);
            }
            int slot = slot(word);
            while (WORDS[slot] != 0) {
                slot = slot + 1 & SLOTS - 1;
            }
            WORDS[slot] = word;
            NAMES[slot] = name.intern();
        }
    }

    private Operators() {}

    private static int slot(long word) {
        return (int) (word * 0x9E3779B97F4A7C15L >>> 55);
    }

    /** The name for up to eight bytes packed into a number, {@link #UNKNOWN} where they are none. */
    static String name(long word) {
        for (int slot = slot(word); WORDS[slot] != 0; slot = slot + 1 & SLOTS - 1) {
            if (WORDS[slot] == word) {
                return NAMES[slot];
            }
        }
        return UNKNOWN;
    }
}
