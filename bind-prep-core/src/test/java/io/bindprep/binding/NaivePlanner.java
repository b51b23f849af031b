package io.bindprep.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A planner by brute force, in floating-point millimetres. Pitches, holes and centres: XJDF 2.2, Appendix F; combs: Wikipedia
 * "Comb binding"; all else: common practice, no source.
 */
final class NaivePlanner {
    private static final double EPS = 1e-6;
    private static final double IN = 25.4;
    private static final double SHEET = 0.0037 * IN;

    /** Clearance where an element has no capacity in sheets. */
    private static final double CLEARANCE = IN / 8;

    private static final double SHARE = 0.3;

    // size in mm, sheets of 20 lb bond; 0 where the clearance decides
    private static final double[][] FINE = inches(new double[][] {
        {3 / 16.0, 25}, {1 / 4.0, 40}, {5 / 16.0, 60}, {3 / 8.0, 75}, {7 / 16.0, 90}, {1 / 2.0, 110}, {9 / 16.0, 130}
    });
    private static final double[][] WIDE = inches(new double[][] {
        {1 / 4.0, 0},
        {5 / 16.0, 0},
        {3 / 8.0, 0},
        {7 / 16.0, 0},
        {1 / 2.0, 0},
        {9 / 16.0, 0},
        {5 / 8.0, 150},
        {3 / 4.0, 190},
        {7 / 8.0, 215},
        {1, 240},
        {1.25, 275}
    });
    private static final double[][] COMB = inches(new double[][] {
        {3 / 16.0, 16},
        {1 / 4.0, 25},
        {5 / 16.0, 40},
        {3 / 8.0, 55},
        {7 / 16.0, 70},
        {1 / 2.0, 85},
        {9 / 16.0, 100},
        {5 / 8.0, 125},
        {3 / 4.0, 150},
        {7 / 8.0, 175},
        {1, 200},
        {1.125, 250},
        {1.25, 275},
        {1.5, 325},
        {1.75, 375},
        {2, 425}
    });
    private static final double[][] COIL = {
        {6, 0}, {7, 0}, {8, 0}, {9, 0}, {10, 0}, {11, 0}, {12, 0}, {13, 0}, {14, 0}, {16, 0}, {18, 0}, {20, 0}, {22, 0},
        {25, 0}, {28, 0}, {30, 0}, {32, 0}, {35, 0}, {38, 0}, {40, 0}, {45, 0}, {50, 0}
    };

    private static final Cut WIRE_3_1 = new Cut(
            "W3_1i-square-0t", IN / 3, IN * 5 / 32, IN * 5 / 32, new double[] {5.08, 5.3, 6}, IN * 3 / 16, FINE, false);
    private static final Cut WIRE_2_1 = new Cut(
            "W2_1i-square-0t", IN / 2, IN / 4, IN / 4, new double[] {6.175, 6.5, 7.064}, IN * 3 / 16, WIDE, false);
    private static final Cut COMB_US = new Cut(
            "P16_9i-rect-0t", IN * 9 / 16, IN * 5 / 16, IN / 8, new double[] {4.7625, 5.1, 5.5}, IN / 32, COMB, false);
    private static final Cut COMB_MM =
            new Cut("P12m-rect-0t", 12, 7, 3, new double[] {4.5, 5, 5.5}, IN / 32, metricCombs(), false);
    private static final Cut COIL_4_1 =
            new Cut("C4_1i-round", IN / 4, 4.4, 4.4, new double[] {5.08, 5.5, 6.2}, IN / 16, COIL, true);
    private static final Cut COIL_6 = new Cut("C6m-round", 6, 4, 4, new double[] {5, 5.5, 6}, IN / 16, COIL, true);

    private final Book book;
    private final Cut cut;
    private final Pins pins;

    NaivePlanner(Book book, Cut cut, Pins pins) {
        this.book = book;
        this.cut = cut;
        this.pins = pins;
    }

    /** A book: leaves and both covers (0 for none) in mm, the gap of its hanger (0 for none). */
    record Book(double caliper, double cover, int leaves, double edge, double gap) {
        double nominal() {
            return caliper * leaves + 2 * cover;
        }
    }

    /** Pitch, hole along and across the edge, centres of the settings, least paper at the ends, all in mm. */
    record Cut(
            String pattern,
            double pitch,
            double along,
            double across,
            double[] centres,
            double web,
            double[][] elements,
            boolean coil) {
        Pins usual() {
            return new Pins((int) (17 * IN / pitch + EPS) + 1, -1, null, web, 1.9, 3);
        }
    }

    /** A punch's pins: how many, where the first stands (below 0 where the guide moves), which come out (null for all). */
    record Pins(int count, double firstMm, @Nullable Set<Integer> pullable, double webMm, double liftMm, int depths) {}

    private static double[][] inches(double[][] sizes) {
        for (double[] size : sizes) {
            size[0] *= IN;
        }
        return sizes;
    }

    /** Sizes of 12 mm combs, each with the sheets of the next smaller ring in inches. */
    private static double[][] metricCombs() {
        int[] sizes = {6, 8, 10, 12, 14, 16, 19, 22, 25, 28, 32, 38, 45, 51};
        double[][] all = new double[sizes.length][];
        for (int i = 0; i < sizes.length; i++) {
            double sheets = 0;
            for (double[] ring : COMB) {
                sheets = ring[0] <= sizes[i] + EPS ? ring[1] : sheets;
            }
            all[i] = new double[] {sizes[i], sheets};
        }
        return all;
    }

    static Cut usual(String method, Book book) {
        return switch (method) {
            case "comb" -> COMB_US;
            case "coil" -> COIL_4_1;
            default -> book.nominal() <= 130 * SHEET + EPS ? WIRE_3_1 : WIRE_2_1;
        };
    }

    /** The other pitch of the same method. */
    static Cut other(Cut cut) {
        return cut.coil() ? COIL_6 : cut == COMB_US ? COMB_MM : cut == WIRE_3_1 ? WIRE_2_1 : WIRE_3_1;
    }

    private record Row(
            List<Double> holes,
            List<Integer> holePins,
            List<Integer> pulled,
            List<Integer> stay,
            List<Integer> gapStay) {
        int wrong() {
            return stay.size() + gapStay.size();
        }
    }

    String text() {
        Row row = row();
        if (row != null && book.gap() > 0) {
            long before = row.holes().stream()
                    .filter(c -> c <= (book.edge() - book.gap()) / 2 + EPS)
                    .count();
            if (before < 2 || row.holes().size() - before < 2) {
                return "gap too wide";
            }
        }
        int depth = depth();
        int lift = Math.max(1, (int) (pins.liftMm() / book.caliper() + EPS));
        int lifts = (book.leaves() + lift - 1) / lift + (book.cover() > 0 ? 2 : 0);
        return text(
                element(depth),
                row == null ? 0 : row.holes().size(),
                row == null ? 0 : row.holes().get(0),
                row == null ? List.of() : row.pulled(),
                row == null ? List.of() : row.stay(),
                row == null ? List.of() : row.gapStay(),
                cut.centres()[depth],
                lifts);
    }

    static String text(
            double size,
            int holes,
            double first,
            List<Integer> pulled,
            List<Integer> stay,
            List<Integer> gapStay,
            double centre,
            int lifts) {
        return (size == 0 ? "no element" : "element " + Math.round(size * 100_000))
                + (holes == 0 ? ", no row" : ", " + holes + " holes from " + Math.round(first * 100_000)) + ", pull "
                + pulled
                + (stay.isEmpty() && gapStay.isEmpty() ? "" : ", pin that stays " + stay + " " + gapStay)
                + ", depth " + Math.round(centre * 100_000) + ", " + lifts + " lifts";
    }

    /** The row of fewest pins that cut where they must not, of every place that the guide allows; null for none. */
    private @Nullable Row row() {
        if (book.edge() > 17 * IN + EPS) {
            return null;
        }
        if (pins.firstMm() >= 0) {
            Row row = at(pins.firstMm(), false);
            return row.holes().isEmpty() ? null : at(pins.firstMm(), book.gap() > 0);
        }
        int count = 0;
        while (count < pins.count() && count * cut.pitch() + cut.along() + 2 * pins.webMm() <= book.edge() + EPS) {
            count++;
        }
        if (count == 0) {
            return null;
        }
        double first = (book.edge() - (count - 1) * cut.pitch()) / 2;
        Row best = null;
        for (int shift = 0; shift + count <= pins.count(); shift++) {
            Row row = at(first - shift * cut.pitch(), book.gap() > 0);
            best = best == null || row.wrong() < best.wrong() ? row : best;
        }
        return best;
    }

    private Row at(double first, boolean hung) {
        Row row =
                new Row(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (int pin = 1; pin <= pins.count(); pin++) {
            double centre = first + (pin - 1) * cut.pitch();
            double nearer = Math.min(centre, book.edge() - centre);
            double beyond = -nearer - cut.along() / 2;
            if (nearer - cut.along() / 2 >= pins.webMm() - EPS) {
                row.holes().add(centre);
                row.holePins().add(pin);
            } else if (comesOut(pin) && beyond < cut.pitch() - EPS) {
                row.pulled().add(pin);
            } else if (beyond <= EPS) {
                row.stay().add(pin);
            }
        }
        if (hung) {
            gap(row);
        }
        return row;
    }

    private boolean comesOut(int pin) {
        return pins.pullable() == null || pins.pullable().contains(pin);
    }

    /** Takes the holes over the gap out, each with the one as far from the other end of the row. */
    private void gap(Row row) {
        Set<Integer> over = new TreeSet<>();
        int count = row.holes().size();
        for (int i = 0; i < count; i++) {
            double off = Math.abs(row.holes().get(i) - book.edge() / 2);
            if (2 * off - cut.along() < book.gap() - EPS) {
                over.add(i);
                over.add(count - 1 - i);
            }
        }
        for (int i = count - 1; i >= 0; i--) {
            if (over.contains(i)) {
                int pin = row.holePins().get(i);
                if (comesOut(pin)) {
                    row.holes().remove(i);
                    row.holePins().remove(i);
                    row.pulled().add(pin);
                } else {
                    row.gapStay().add(0, pin);
                }
            }
        }
        row.pulled().sort(null);
    }

    /** Size of the smallest element that takes the book at this setting; 0 for none. */
    private double element(int depth) {
        double t = book.nominal();
        double outside = cut.centres()[depth] - cut.across() / 2;
        for (double[] e : cut.elements()) {
            boolean takes = e[1] > 0 ? t <= e[1] * SHEET + EPS : t + CLEARANCE <= e[0] + EPS;
            if (takes && (!cut.coil() || t * t + outside * outside < e[0] * e[0] - EPS)) {
                return e[0];
            }
        }
        return 0;
    }

    /** The deepest with no more paper outside than its share of the shallowest one's element, at which pages turn. */
    private int depth() {
        double[][] all = cut.elements();
        double shallow = element(0);
        double by = shallow == 0 ? all[all.length - 1][0] : shallow;
        int best = 0;
        for (int i = 0; i < pins.depths(); i++) {
            double outside = cut.centres()[i] - cut.across() / 2;
            double size = element(i);
            double t = book.nominal();
            boolean turns = size == 0 || outside * outside + t * t < size * size - EPS;
            best = turns && outside <= SHARE * by + EPS ? i : best;
        }
        return best;
    }
}
