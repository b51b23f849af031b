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

    /** Millimetres of the unit that the sheet's figures are in. */
    private final double unit;

    /** A line of the reading page: how far it lies from line 0, and what it says. */
    private record Rung(double from, double says) {}

    SheetOperator(byte[] pdf, int pages) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrintedPage punched = PrintedPage.of(document, 1);
            PrintedPage reading = PrintedPage.of(document, pages + 1);
            targets = targets(punched);
            unit = punched.words().stream().anyMatch(w -> w.text().equals("mm")) ? 1 : 25.4;
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
            if (word.text().matches("\\d+(\\.5)?") && word.y() > below && word.y() < below + 9) {
                page.lines().stream()
                        .filter(l ->
                                l.upright() && Math.abs(l.x1() - word.x()) < 0.2 && l.y1() > below && l.y1() < word.y())
                        .forEach(l -> edgeScale.put(l.x1(), unit * Double.parseDouble(word.text())));
            }
        }
    }

    private void rungs(PrintedPage page) {
        Line zero = page.lines().stream()
                .filter(Line::level)
                .max(Comparator.comparing(Line::length))
                .orElseThrow();
        List<Word> heads = page.words().stream()
                .filter(w -> w.text().matches("\\.\\d{1,3}"))
                .toList();
        for (Word number : page.words()) {
            if (!number.text().matches("\\d*(\\.\\d)?") || number.y() < zero.y1()) {
                continue;
            }
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
            Word head = heads.stream()
                    .min(Comparator.comparing(h -> Math.abs(h.x() - (own.x1() + own.x2()) / 2)))
                    .orElseThrow();
            List<Line> column = page.lines().stream()
                    .filter(l -> l.level() && l.x2() == own.x2() && l.y1() > zero.y1())
                    .sorted(Comparator.comparing(Line::y1))
                    .toList();
            double whole = unit * (Double.parseDouble(number.text()) + Double.parseDouble(head.text()));
            double line = unit == 1 ? 1 : 0.05 * unit;
            // counted from the figure, up to four lines either way
            for (int i = -4; i <= 4; i++) {
                int at = column.indexOf(own) + i;
                if (at >= 0 && at < column.size() && Math.abs(column.get(at).y1() - own.y1()) < 4.5 * line) {
                    rungs.add(new Rung(column.get(at).y1() - zero.y1(), whole + i * line));
                }
            }
        }
    }

    private double bar(PrintedPage page) {
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
            if (hundred.text().equals(unit == 1 ? "100" : "4") && end != null) {
                return end - marks.get(0);
            }
        }
        throw new IllegalStateException("no bar of 100 mm or 4 in");
    }

    List<Box> targets() {
        return targets;
    }

    /** Length at which the bar of 100 mm, or of 4 in, is drawn. */
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
        return String.format(Locale.ROOT, "%.2f to %.2f mm", from, to);
    }
}
