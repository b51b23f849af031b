package io.bindprep.pdf.strip;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.pdf.ink.FoundMark;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.ink.StripCollector;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import org.jspecify.annotations.Nullable;

/** Dots of one mark in doubt in the drawn strip. */
final class DoubtfulMark {
    /** The least difference of 256 that counts: just below 3 % tone, the lightest that counts as an outline too. */
    static final int LEAST_DIFFERENCE = 7;

    /** Dots end up to one dot and a half beside an outline's own bounds: closer than this the outline itself is kept. */
    private static final double SAME_MM = 0.3;

    /** White stands out where at least a quarter of the dots around it are inked; common practice, no source. */
    private static final int LEAST_AROUND = 4;

    private static final double MM = 1.0 / StripRaster.DOTS_PER_MM;

    private final StripRaster raster;
    private final int x0;
    private final int y0;
    private final int w;
    private final int h;
    private final boolean[] inside;

    /** The dots that a mark's outline touches, in a window with two dots to spare on every side. */
    private DoubtfulMark(StripRaster raster, Mark mark) {
        this.raster = raster;
        x0 = Math.max(0, (int) Math.floor(mark.nearMm() / MM) - 2);
        y0 = Math.max(0, (int) Math.floor(mark.alongStartMm() / MM) - 2);
        w = Math.max(0, Math.min(raster.width(), (int) Math.ceil(mark.farMm() / MM) + 2) - x0);
        h = Math.max(0, Math.min(raster.height(), (int) Math.ceil(mark.alongEndMm() / MM) + 2) - y0);
        inside = new boolean[w * h];
        if (inside.length == 0) {
            return;
        }
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Color.WHITE);
        g.transform(new AffineTransform(1 / MM, 0, 0, 1 / MM, -x0, -y0));
        g.fill(mark.shape());
        g.dispose();
        Raster dots = image.getRaster();
        for (int i = 0; i < inside.length; i++) {
            inside[i] = dots.getSample(i % w, i / w, 0) > 0;
        }
    }

    /** Rest of a mark that was left out of the second drawing; null where nothing is. */
    static @Nullable Mark differing(StripRaster whole, StripRaster without, FoundMark f) {
        DoubtfulMark ink = new DoubtfulMark(whole, f.mark);
        boolean[] near = ink.grown(ink.inside);
        boolean[] differs = new boolean[near.length];
        boolean any = false;
        boolean white = f.paint.tone() == Tone.BLENDED_WHITE;
        for (int i = 0; i < near.length; i++) {
            int x = ink.x0 + i % ink.w;
            int y = ink.y0 + i / ink.w;
            differs[i] = near[i]
                    && whole.off(without, x, y) >= LEAST_DIFFERENCE
                    && (!white || whole.ink(x, y) >= LEAST_DIFFERENCE);
            any |= differs[i];
        }
        return any ? ink.cutTo(differs, f) : null;
    }

    /** Returns true if nothing is to be seen of a mark: its dots and those around it have one colour. */
    static boolean isEven(StripRaster whole, Mark mark) {
        DoubtfulMark ink = new DoubtfulMark(whole, mark);
        boolean[] ring = ink.grown(ink.grown(ink.inside));
        int first = -1;
        boolean around = false;
        for (int i = 0; i < ring.length; i++) {
            if (ring[i]) {
                int at = (ink.y0 + i / ink.w) * whole.width() + ink.x0 + i % ink.w;
                first = first < 0 ? at : first;
                around |= !ink.inside[i];
                if (StripRaster.off(whole.rgb()[first], whole.rgb()[at]) >= LEAST_DIFFERENCE) {
                    return false;
                }
            }
        }
        return around;
    }

    /** Returns true if two drawings of a strip are the same to the eye. */
    static boolean same(StripRaster a, StripRaster b) {
        for (int y = 0; y < a.height(); y++) {
            for (int x = 0; x < a.width(); x++) {
                if (a.off(b, x, y) >= LEAST_DIFFERENCE) {
                    return false;
                }
            }
        }
        return true;
    }

    private Mark cutTo(boolean[] dots, FoundMark f) {
        Mark mark = f.mark;
        DotShape shape = DotShape.of(dots, w, x0, y0, f.box());
        Rectangle2D b = shape.bounds();
        boolean same = Math.abs(b.getMinX() - mark.nearMm()) <= SAME_MM
                && Math.abs(b.getMaxX() - mark.farMm()) <= SAME_MM
                && Math.abs(b.getMinY() - mark.alongStartMm()) <= SAME_MM
                && Math.abs(b.getMaxY() - mark.alongEndMm()) <= SAME_MM;
        if (same) {
            return seen(mark);
        }
        MarkKind kind = StripCollector.kindOf(f.paint, b);
        return shape.mark(kind, mark.words());
    }

    /** A mark as it is, now settled by the drawing. */
    static Mark seen(Mark m) {
        return new Mark(
                m.kind(),
                m.stage() == Stage.ESTIMATE ? Stage.ESTIMATE : Stage.RASTER,
                m.shape(),
                m.nearMm(),
                m.farMm(),
                m.alongStartMm(),
                m.alongEndMm(),
                m.words());
    }

    /** Returns true if white shows: its dots are lighter than a good part of those around it. */
    static boolean whiteStandsOut(StripRaster whole, Mark mark) {
        DoubtfulMark ink = new DoubtfulMark(whole, mark);
        boolean[] near = ink.grown(ink.inside);
        boolean[] ring = ink.grown(near);
        int lightest = 255;
        int around = 0;
        int inked = 0;
        for (int i = 0; i < ring.length; i++) {
            int tone = whole.ink(ink.x0 + i % ink.w, ink.y0 + i / ink.w);
            if (ink.inside[i]) {
                lightest = Math.min(lightest, tone);
            } else if (ring[i] && !near[i]) {
                around++;
                inked += tone >= LEAST_DIFFERENCE ? 1 : 0;
            }
        }
        // something was painted over it if its own dots are all inked too
        return inked * LEAST_AROUND >= around && inked > 0 && lightest < LEAST_DIFFERENCE * 10;
    }

    private boolean[] grown(boolean[] dots) {
        boolean[] out = dots.clone();
        for (int i = 0; i < dots.length; i++) {
            if (!dots[i]) {
                continue;
            }
            int x = i % w;
            int y = i / w;
            for (int ny = Math.max(0, y - 1); ny <= Math.min(h - 1, y + 1); ny++) {
                for (int nx = Math.max(0, x - 1); nx <= Math.min(w - 1, x + 1); nx++) {
                    out[ny * w + nx] = true;
                }
            }
        }
        return out;
    }
}
