package io.bindprep.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Pages by their size in millimetres, no box but the one. */
public final class Pages {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private Pages() {}

    /** Pages all alike, in a list that a test may change. */
    public static List<PageFacts> of(int pages, double widthMm, double heightMm) {
        return new ArrayList<>(IntStream.rangeClosed(1, pages)
                .mapToObj(p -> page(p, widthMm, heightMm))
                .toList());
    }

    /** One page. */
    public static PageFacts page(int page, double widthMm, double heightMm) {
        Box box = new Box(0, 0, widthMm * POINTS_PER_MM, heightMm * POINTS_PER_MM);
        return new PageFacts(page, box, box, box, box, true, 0, 1);
    }
}
