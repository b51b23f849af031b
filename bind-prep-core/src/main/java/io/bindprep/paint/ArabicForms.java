package io.bindprep.paint;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Arabic letters in the shape that their neighbours ask for, by the presentation forms of Unicode; the letters keep their
 * order.
 *
 * <p>Letters without such forms, which a few languages have, do not join.
 */
final class ArabicForms {
    private static final int ISOLATED = 0;
    private static final int FINAL = 1;
    private static final int INITIAL = 2;
    private static final int MEDIAL = 3;
    private static final List<String> NAMES = List.of(" ISOLATED FORM", " FINAL FORM", " INITIAL FORM", " MEDIAL FORM");

    private static final int LAM = 0x644;
    private static final int TATWEEL = 0x640;
    private static final int JOINER = 0x200D;

    /** Forms of a letter, or of lam with an alef, by the letters as text; 0 where there is none. */
    private final Map<String, int[]> forms = new HashMap<>();

    ArabicForms() {
        for (int c = 0xFB50; c <= 0xFEFC; c++) {
            String name = Character.getName(c);
            String letters = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
            boolean single = letters.length() == 1;
            for (int form = 0; name != null && form < NAMES.size(); form++) {
                if (name.endsWith(NAMES.get(form)) && (single || name.contains(" LAM WITH ALEF"))) {
                    int[] known = forms.computeIfAbsent(letters, l -> new int[NAMES.size()]);
                    known[form] = known[form] == 0 ? c : known[form];
                }
            }
        }
    }

    static boolean needed(String text) {
        return text.codePoints().anyMatch(c -> Character.UnicodeScript.of(c) == Character.UnicodeScript.ARABIC);
    }

    String shaped(String text) {
        int[] letters = text.codePoints().toArray();
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < letters.length; i++) {
            boolean before = joinsNext(beside(letters, i, -1)) && joinsPrevious(letters[i]);
            int next = beside(letters, i, 1);
            int[] ligature = letters[i] == LAM && i + 1 < letters.length && letters[i + 1] == next
                    ? forms.get(new String(letters, i, 2))
                    : null;
            if (ligature != null) {
                out.add(ligature[before ? FINAL : ISOLATED]);
                i++;
                continue;
            }
            boolean after = joinsNext(letters[i]) && joinsPrevious(next);
            out.add(form(letters[i], before, after));
        }
        StringBuilder shaped = new StringBuilder();
        out.forEach(shaped::appendCodePoint);
        return shaped.toString();
    }

    private int form(int letter, boolean before, boolean after) {
        int[] known = forms.get(Character.toString(letter));
        if (known == null) {
            return letter;
        }
        int form = before ? (after ? MEDIAL : FINAL) : after ? INITIAL : ISOLATED;
        return known[form] == 0 ? letter : known[form];
    }

    // marks upon a letter do not part it from the next
    private static int beside(int[] letters, int place, int step) {
        int i = place + step;
        while (i >= 0 && i < letters.length && Character.getType(letters[i]) == Character.NON_SPACING_MARK) {
            i += step;
        }
        return i >= 0 && i < letters.length ? letters[i] : ' ';
    }

    private boolean joinsNext(int letter) {
        int[] known = forms.get(Character.toString(letter));
        return letter == TATWEEL || letter == JOINER || known != null && known[INITIAL] != 0;
    }

    private boolean joinsPrevious(int letter) {
        int[] known = forms.get(Character.toString(letter));
        return letter == TATWEEL || letter == JOINER || known != null && known[FINAL] != 0;
    }
}
