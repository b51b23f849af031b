package io.bindprep.gauge;

import io.bindprep.gauge.PrintedPage.Box;
import io.bindprep.gauge.PrintedPage.Line;
import io.bindprep.gauge.PrintedPage.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Reads a punched sheet as an operator does, knowing nothing but what is printed on it: boxes, lines and numbers are taken
 * from the PDF.
 */
final class SheetOperator {
    private final List<Box> targets;
    private final TreeMap<Double, Double> edgeScale = new TreeMap<>();
    private final List<Rung> rungs = new ArrayList<>();
    private final double bar;

    /** A line of the reading page: how far it lies from line 0, and what it says. */
    private record Rung(double from, double says) {}

    SheetOperator(byte[] pdf, int pages) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrintedPage punched = PrintedPage.of(document, 1);
            PrintedPage reading = PrintedPage.of(document, pages + 1);
            targets = targets(punched);
            edgeScale(punched);
            rungs(reading);
            bar = bar(punched);
        }
    }

    // the boxes in one row at the top, all of one size
    private static List<Box> targets(PrintedPage page) {
        double top = page.boxes().stream().mapToDouble(Box::y).min().orElseThrow();
        return page.boxes().stream()
                .filter(b -> Math.abs(b.y() - top) < 1e-3)
                .sorted(Comparator.comparing(Box::x))
                .toList();
    }

    private void edgeScale(PrintedPage page) {
        double below = targets.get(0).y() + targets.get(0).height();
        for (Word word : page.words()) {
            if (word.text().matches("\\d+") && word.y() > below && word.y() < below + 9) {
                page.lines().stream()
                        .filter(l ->
                                l.upright() && Math.abs(l.x1() - word.x()) < 0.2 && l.y1() > below && l.y1() < word.y())
                        .forEach(l -> edgeScale.put(l.x1(), Double.valueOf(word.text())));
            }
        }
    }

    private void rungs(PrintedPage page) {
        Line zero = page.lines().stream()
                .filter(Line::level)
                .max(Comparator.comparing(Line::length))
                .orElseThrow();
        List<Word> heads =
                page.words().stream().filter(w -> w.text().matches("\\.\\d")).toList();
        for (Word number : page.words()) {
            if (!number.text().matches("\\d+") || number.y() < zero.y1()) {
                continue;
            }
            Word head = heads.stream()
                    .min(Comparator.comparing(h -> Math.abs(h.x() - number.x())))
                    .orElseThrow();
            Line own = page.lines().stream()
                    .filter(l -> l.level()
                            && Math.abs(l.y1() - number.y()) < 0.2
                            && l.x1() > number.x()
                            && l.x1() - number.x() < 4)
                    .findFirst()
                    .orElse(null);
            if (own == null) {
                continue; // the bar's numbers
            }
            List<Line> column = page.lines().stream()
                    .filter(l -> l.level() && l.x2() == own.x2() && l.y1() > zero.y1())
                    .sorted(Comparator.comparing(Line::y1))
                    .toList();
            double whole = Double.parseDouble(number.text() + head.text());
            // counted from the figure, up to four lines either way
            for (int i = -4; i <= 4; i++) {
                int at = column.indexOf(own) + i;
                if (at >= 0 && at < column.size() && Math.abs(column.get(at).y1() - own.y1()) < 4.5) {
                    rungs.add(new Rung(column.get(at).y1() - zero.y1(), whole + i));
                }
            }
        }
    }

    private static double bar(PrintedPage page) {
        for (Word hundred : page.words()) {
            List<Double> marks = page.lines().stream()
                    .filter(l -> l.upright() && l.y1() < hundred.y() + 0.5 && l.y2() > hundred.y() + 0.5)
                    .map(Line::x1)
                    .sorted()
                    .toList();
            // the number stands before its mark
            Double end = marks.stream()
                    .filter(x -> x > hundred.x() && x < hundred.x() + 8)
                    .findFirst()
                    .orElse(null);
            if (hundred.text().equals("100") && end != null) {
                return end - marks.get(0);
            }
        }
        throw new IllegalStateException("no bar of 100 mm");
    }

    List<Box> targets() {
        return targets;
    }

    /** Length at which the bar of 100 mm is drawn. */
    double bar() {
        return bar;
    }

    int rungs() {
        return rungs.size();
    }

    /** Reading of a distance from the edge of the paper on the reading page, printed to a scale: that of the nearest line. */
    double onReadingPage(double mm, double scale) {
        return rungs.stream()
                .min(Comparator.comparing(r -> Math.abs(r.from() * scale - mm)))
                .orElseThrow()
                .says();
    }

    /** Reading of a place, in the drawing's own millimetres, on the scale along the edge: between the numbered ticks. */
    double onEdgeScale(double place) {
        Double after = edgeScale.higherKey(place);
        // beyond the last number the ticks go on
        double to = after == null ? edgeScale.lastKey() : Math.max(after, edgeScale.higherKey(edgeScale.firstKey()));
        double from = edgeScale.lowerKey(to);
        double share = (place - from) / (to - from);
        return edgeScale.get(from) + share * (edgeScale.get(to) - edgeScale.get(from));
    }

    static String mm(double from, double to) {
        return String.format(Locale.ROOT, "%.1f to %.1f mm", from, to);
    }
}
