package io.bindprep.repair;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import io.bindprep.page.BleedStrip;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * Bleed to be made at the binding edge of a page. Art is mirrored at its own end, so that a tint goes on as a tint and a
 * picture without a seam; where text or a line stands too near for that, what is clear of it is mirrored and stretched.
 *
 * @param strips none where no bleed is missing
 * @param fault why it cannot be made; null where it can
 */
public record BleedPlan(List<BleedStrip> strips, @Nullable BleedFault fault) {
    /** Nothing is missing. */
    public static final BleedPlan NONE = new BleedPlan(List.of(), null);

    /** Art that ends this far from the trim still reaches it: roundings of layout programs. */
    private static final double REACH_MM = 0.1;
    /** Boxes are often rounded to whole points. */
    private static final double SLACK_MM = 0.18;
    /** Art narrower or shorter than this is a line. */
    private static final double BROAD_MM = 3;

    private static final double SAME_MM = 0.02;
    /** Between what is mirrored and what must not be. */
    private static final double AIR_MM = 0.1;
    /** Art stretched more than this shows it, even in what is cut off (our own limit). */
    private static final double MOST_STRETCH = 4;

    public BleedPlan {
        strips = List.copyOf(strips);
    }

    /** Reasons why no bleed can be made. */
    public enum BleedFault {
        UNREADABLE("the page could not be read whole"),
        CROWDED("text or a line stands so near the edge that it would be mirrored into the bleed");

        private final String why;

        BleedFault(String why) {
            this.why = why;
        }

        public String why() {
            return why;
        }
    }

    /**
     * The bleed that a page lacks at its binding edge.
     *
     * @param painted all that it paints; null where it could not be read whole
     * @param wantMm how far art has to go beyond the trim
     */
    public static BleedPlan of(@Nullable List<Painted> painted, double wantMm) {
        if (painted == null) {
            return new BleedPlan(List.of(), BleedFault.UNREADABLE);
        }
        List<Painted> art = painted.stream().filter(BleedPlan::reachesTrim).toList();
        List<BleedStrip> strips = new ArrayList<>();
        for (BleedStrip lacking : lacking(art, painted, wantMm)) {
            double need = wantMm + Math.min(0, lacking.endMm());
            double clear = painted.stream()
                    .filter(p -> p.prints() && !art.contains(p) && stands(p.box(), lacking))
                    .mapToDouble(p -> p.box().getMinX() - lacking.endMm() - AIR_MM)
                    .min()
                    .orElse(need);
            double source = Math.min(need, clear);
            if (source * MOST_STRETCH < need) {
                return new BleedPlan(List.of(), BleedFault.CROWDED);
            }
            strips.add(new BleedStrip(lacking.endMm(), source, lacking.fromMm(), lacking.toMm()));
        }
        return new BleedPlan(strips, null);
    }

    private static boolean reachesTrim(Painted p) {
        Rectangle2D box = p.box();
        return isFilled(p)
                && p.prints()
                && box.getMinX() <= REACH_MM
                && box.getMaxX() - Math.max(0, box.getMinX()) >= BROAD_MM;
    }

    /** Stands where it would be mirrored, or ends before. */
    private static boolean stands(Rectangle2D box, BleedStrip strip) {
        return box.getMaxX() > strip.endMm() && box.getMinY() < strip.toMm() && box.getMaxY() > strip.fromMm();
    }

    /** Stretches along the edge where the art that goes farthest does not go far enough; short ones are lines. */
    private static List<BleedStrip> lacking(List<Painted> art, List<Painted> painted, double wantMm) {
        double[] cuts = art.stream()
                .flatMapToDouble(p -> DoubleStream.of(p.box().getMinY(), p.box().getMaxY()))
                .sorted()
                .distinct()
                .toArray();
        List<BleedStrip> found = new ArrayList<>();
        double run = 0;
        int runFrom = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double middle = (cuts[i] + cuts[i + 1]) / 2;
            double end = end(middle, art, painted, wantMm);
            boolean lacks = end > -wantMm + SLACK_MM;
            if (lacks) {
                add(found, runFrom, new BleedStrip(end, 0, cuts[i], cuts[i + 1]));
                run += cuts[i + 1] - cuts[i];
            }
            if (!lacks || i + 2 == cuts.length) {
                if (run < BROAD_MM) {
                    found.subList(runFrom, found.size()).clear();
                }
                run = 0;
                runFrom = found.size();
            }
        }
        return found;
    }

    /** End of art at a place along the edge, with what carries it on. */
    private static double end(double along, List<Painted> art, List<Painted> painted, double wantMm) {
        double end = art.stream()
                .map(Painted::box)
                .filter(b -> b.getMinY() < along && b.getMaxY() > along)
                .mapToDouble(Rectangle2D::getMinX)
                .min()
                .orElse(-wantMm);
        List<Rectangle2D> beyond = painted.stream()
                .filter(p -> p.prints() && isFilled(p) && p.box().getMinX() < 0)
                .map(Painted::box)
                .filter(b -> b.getMinY() < along && b.getMaxY() > along)
                .sorted(Comparator.comparingDouble(Rectangle2D::getMaxX).reversed())
                .toList();
        for (Rectangle2D b : beyond) {
            end = b.getMaxX() >= end - SAME_MM ? Math.min(end, b.getMinX()) : end;
        }
        return end;
    }

    private static boolean isFilled(Painted p) {
        return p.kind() == MarkKind.ART || p.kind() == MarkKind.IMAGE || p.kind() == MarkKind.BACKGROUND;
    }

    private static void add(List<BleedStrip> found, int from, BleedStrip next) {
        BleedStrip last = found.size() > from ? found.get(found.size() - 1) : null;
        if (last != null
                && Math.abs(last.endMm() - next.endMm()) < SAME_MM
                && Math.abs(last.toMm() - next.fromMm()) < SAME_MM) {
            found.set(found.size() - 1, new BleedStrip(last.endMm(), 0, last.fromMm(), next.toMm()));
        } else {
            found.add(next);
        }
    }
}
