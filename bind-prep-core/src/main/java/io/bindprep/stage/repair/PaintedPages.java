package io.bindprep.stage.repair;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Things that the pages of a file paint, kept packed: a repair that moves single things asks for them three times, and to
 * find them takes as long as to check the page.
 */
final class PaintedPages {
    /** Things of all pages that are kept, 21 bytes each; those of further pages are found anew. */
    private static final int MOST = 2_000_000;

    private static final MarkKind[] KINDS = MarkKind.values();
    private static final int PRINTS = 16;
    private static final int FIXED = 32;

    private final Map<Integer, Optional<Packed>> pages = new HashMap<>();
    private int kept;

    private record Packed(int[] numbers, float[] boxes, byte[] kinds) {}

    /** Those of a page, by number from 1; null where its content cannot be read whole. */
    @Nullable
    List<Painted> of(int page, Supplier<@Nullable List<Painted>> find) {
        Optional<Packed> known = pages.get(page);
        if (known != null) {
            return known.map(PaintedPages::unpacked).orElse(null);
        }
        List<Painted> found = find.get();
        int more = found == null ? 0 : found.size();
        if (kept + more <= MOST) {
            kept += more;
            pages.put(page, Optional.ofNullable(found).map(PaintedPages::packed));
        }
        return found;
    }

    /** Returns true if those of a page need not be found anew. */
    boolean has(int page) {
        return pages.containsKey(page);
    }

    private static Packed packed(List<Painted> things) {
        int[] numbers = new int[things.size()];
        float[] boxes = new float[4 * things.size()];
        byte[] kinds = new byte[things.size()];
        for (int i = 0; i < kinds.length; i++) {
            Painted p = things.get(i);
            numbers[i] = p.number();
            boxes[4 * i] = (float) p.box().getMinX();
            boxes[4 * i + 1] = (float) p.box().getMinY();
            boxes[4 * i + 2] = (float) p.box().getMaxX();
            boxes[4 * i + 3] = (float) p.box().getMaxY();
            kinds[i] = (byte) (p.kind().ordinal() | (p.prints() ? PRINTS : 0) | (p.fixed() ? FIXED : 0));
        }
        return new Packed(numbers, boxes, kinds);
    }

    private static List<Painted> unpacked(Packed packed) {
        List<Painted> things = new ArrayList<>(packed.kinds.length);
        for (int i = 0; i < packed.kinds.length; i++) {
            double x = packed.boxes[4 * i];
            double y = packed.boxes[4 * i + 1];
            Rectangle2D box = new Rectangle2D.Double(x, y, packed.boxes[4 * i + 2] - x, packed.boxes[4 * i + 3] - y);
            int kind = packed.kinds[i];
            things.add(new Painted(
                    packed.numbers[i], KINDS[kind % PRINTS], box, (kind & PRINTS) != 0, (kind & FIXED) != 0));
        }
        return things;
    }
}
