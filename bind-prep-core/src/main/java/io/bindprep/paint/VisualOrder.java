package io.bindprep.paint;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Text in the order that it is drawn in from the left (Unicode Standard Annex 9), in a line that runs from the left. */
final class VisualOrder {
    private static final Map<Integer, Integer> MIRRORED = Map.ofEntries(
            Map.entry((int) '(', (int) ')'),
            Map.entry((int) ')', (int) '('),
            Map.entry((int) '[', (int) ']'),
            Map.entry((int) ']', (int) '['),
            Map.entry((int) '{', (int) '}'),
            Map.entry((int) '}', (int) '{'),
            Map.entry((int) '<', (int) '>'),
            Map.entry((int) '>', (int) '<'),
            Map.entry((int) '«', (int) '»'),
            Map.entry((int) '»', (int) '«'));

    private VisualOrder() {}

    static String of(String text) {
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        String[] parts = new String[runs];
        for (int run = 0; run < runs; run++) {
            levels[run] = (byte) bidi.getRunLevel(run);
            String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            parts[run] = levels[run] % 2 == 1 ? reversed(part) : part;
        }
        Bidi.reorderVisually(levels, 0, parts, 0, runs);
        return String.join("", parts);
    }

    /** From the right; marks stay behind their letter, brackets open the other way. */
    private static String reversed(String part) {
        List<StringBuilder> letters = new ArrayList<>();
        part.codePoints().forEach(c -> {
            if (letters.isEmpty() || Character.getType(c) != Character.NON_SPACING_MARK) {
                letters.add(new StringBuilder());
            }
            letters.get(letters.size() - 1).appendCodePoint(MIRRORED.getOrDefault(c, c));
        });
        Collections.reverse(letters);
        return String.join("", letters);
    }
}
