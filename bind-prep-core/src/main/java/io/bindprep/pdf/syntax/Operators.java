package io.bindprep.pdf.syntax;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;

/** The operators of content (ISO 32000-1:2008, Annex A) by their bytes, so that none makes a string of its own. */
public final class Operators {
    /** Stands for every word that is no operator. */
    static final String UNKNOWN = "?";

    private static final String ALL =
            "b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i"
                    + " ID j J K k l m M MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w"
                    + " W W* y ' \" true false null";
    /** Operators with a fixed number of operands, in front of them that number. */
    private static final String TAKING = "1 cs CS Do g G gs i j J M ri sh Tc Tj TJ TL Tr Ts Tw Tz w ' 2 d l m Td TD Tf"
            + " 3 rg RG \" 4 k K re v y 6 c cm Tm";

    private static final int SLOTS = 512;
    private static final long[] WORDS = new long[SLOTS];
    private static final String[] NAMES = new String[SLOTS];
    private static final Map<String, Integer> TAKES = takes();
    private static final int[] TAKEN = new int[SLOTS];

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
            TAKEN[slot] = takes(name);
        }
    }

    private Operators() {}

    private static int slot(long word) {
        return (int) (word * 0x9E3779B97F4A7C15L >>> 55);
    }

    private static Map<String, Integer> takes() {
        Map<String, Integer> takes = new HashMap<>();
        int count = 0;
        for (String word : TAKING.split(" ", -1)) {
            if (Character.isDigit(word.charAt(0))) {
                count = word.charAt(0) - '0';
            } else {
                takes.put(word, count);
            }
        }
        return takes;
    }

    /** Number of operands an operator takes; the largest number where that varies. Readers use the last where there are more. */
    public static int takes(String name) {
        return TAKES.getOrDefault(name, Integer.MAX_VALUE);
    }

    /**
     * Returns true if operands are too few or not of the kind that an operator takes, one of those that two of three
     * readers pass over then.
     */
    public static boolean mismatched(String name, List<COSBase> operands) {
        return switch (name) {
            case "gs", "Do", "sh", "cs", "CS" -> operands.isEmpty() || !(operands.get(0) instanceof COSName);
            case "Tf" ->
                operands.size() > 1 && !(operands.get(0) instanceof COSName && operands.get(1) instanceof COSNumber);
            case "d", "g", "G", "rg", "RG", "k", "K" -> operands.size() < takes(name);
            case "re", "l", "J", "j", "M", "i" -> operands.size() < takes(name) || !numbers(operands);
            case "m", "c", "v", "y", "w", "Tr" -> !numbers(operands);
            default -> false;
        };
    }

    private static boolean numbers(List<COSBase> operands) {
        return operands.stream().allMatch(COSNumber.class::isInstance);
    }

    /** The place of up to eight bytes packed into a number; negative where they are no operator. */
    static int find(long word) {
        for (int slot = slot(word); WORDS[slot] != 0; slot = slot + 1 & SLOTS - 1) {
            if (WORDS[slot] == word) {
                return slot;
            }
        }
        return -1;
    }

    /** The name for up to eight bytes packed into a number, {@link #UNKNOWN} where they are none. */
    static String name(long word) {
        int place = find(word);
        return place < 0 ? UNKNOWN : NAMES[place];
    }

    /** The name of the operator at a place. */
    static String nameAt(int place) {
        return NAMES[place];
    }

    /** As {@link #takes(String)}, by the operator's place. */
    static int takesAt(int place) {
        return TAKEN[place];
    }
}
