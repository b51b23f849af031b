package io.bindprep.wording;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds what a mistyped word was meant to be. */
public final class Spelling {
    private static final int LONGEST = 60;

    private Spelling() {}

    /** The known word with the fewest slips, the first of equals; null where none is near. */
    public static @Nullable String nearest(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return null;
        }
        String given = word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        String best = null;
        int least = Math.max(1, Math.min(3, given.length() / 2)) + 1;
        for (String candidate : known) {
            int slips = slips(given, candidate.toLowerCase(Locale.ROOT));
            if (slips < least) {
                least = slips;
                best = candidate;
            }
        }
        // "bond" is the beginning of "bond-20", not a slip for "none"
        return least < 2
                ? best
                : known.stream()
                        .filter(c ->
                                given.length() > 2 && c.toLowerCase(Locale.ROOT).startsWith(given + "-"))
                        .findFirst()
                        .orElse(best);
    }

    /** "Did you mean ...? Known: ..." */
    public static String remedy(String word, List<String> known) {
        String near = nearest(word, known);
        String all = "Known: " + String.join(", ", known) + ".";
        return near == null ? all : "Did you mean \"" + near + "\"? " + all;
    }

    // optimal string alignment: letters missing, added, changed or swapped with their neighbour
    private static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
