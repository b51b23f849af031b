package io.bindprep.pdf.edit;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Changes to content by offset: operators put in, and bytes taken out. */
final class ContentEdits {
    private final TreeMap<Integer, String> behind = new TreeMap<>();
    private final TreeMap<Integer, String> before = new TreeMap<>();
    private final TreeMap<Integer, Integer> out = new TreeMap<>();

    /** Puts operators before what begins at an offset. */
    void before(int at, String operators) {
        before.merge(at, operators, String::concat);
    }

    /** Puts operators behind what ends at an offset; they go before what begins there. */
    void behind(int at, String operators) {
        behind.merge(at, operators, (first, second) -> second + first);
    }

    /** Takes bytes out. */
    void takeOut(int from, int to) {
        out.put(from, to);
    }

    boolean isEmpty() {
        return behind.isEmpty() && before.isEmpty() && out.isEmpty();
    }

    /** The content with the changes made. */
    byte[] made(byte[] content) {
        TreeMap<Integer, String> all = new TreeMap<>();
        behind.forEach((at, operators) -> all.put(at, "\n" + operators));
        before.forEach((at, operators) -> all.merge(at, "\n" + operators, String::concat));
        ByteArrayOutputStream made = new ByteArrayOutputStream(content.length + 32 * all.size());
        int from = 0;
        TreeMap<Integer, Integer> cuts = new TreeMap<>(out);
        all.keySet().forEach(at -> cuts.putIfAbsent(at, at));
        for (Map.Entry<Integer, Integer> cut : cuts.entrySet()) {
            int at = cut.getKey();
            if (at > from) {
                made.write(content, from, at - from);
            }
            made.writeBytes(all.getOrDefault(at, "").getBytes(StandardCharsets.US_ASCII));
            from = Math.max(from, cut.getValue());
        }
        made.write(content, from, content.length - from);
        return made.toByteArray();
    }
}
