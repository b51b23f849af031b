package io.bindprep.pdf.strip;

import io.bindprep.pdf.strip.PictureGround.Stretch;
import java.awt.Rectangle;
import java.util.Arrays;

/**
 * Dots that stand off the ground of a picture, by CIE lightness and by the channel in which they differ most.
 *
 * <p>On a clean ground whatever vector ink of 3 % would show counts; noise raises that up to the contrast of a scan's print.
 */
final class GroundMarks {
    /** Lightness that vector ink of 3 % has lost, which counts too (grey 0.97 is L* 97.4). */
    private static final double LEAST_LIGHTNESS = 2.2;
    /** A hue that lightness hardly tells (yellow) counts from this difference in one channel, of 255. */
    private static final int LEAST_CHANNEL = 14;
    /** Lightness and channel difference that each step of noise adds; our choice. */
    private static final double LIGHTNESS_A_STEP = 6;

    private static final int CHANNEL_A_STEP = 16;
    /** Contrast that is enough on any ground: 60 greys under white; common practice, no source. */
    private static final double MOST_LIGHTNESS = 24;

    private static final int MOST_CHANNEL = 80;
    /** Lightness that print takes off its paper; our choice. */
    private static final double PRINT_LIGHTNESS = 36;
    /** Tones darker than this print alike: the black of a press on coated paper (ISO 12647-2, from memory). */
    private static final double BLACKEST = 16;
    /** Dots as dark as that which make a piece print: a quarter of a square millimetre. */
    private static final int PRINT_CORE = 6;
    /** Share of the dots of all pieces that print has: 0.69 or more on scanned pages, 0.33 or less on photographs of wood (measured). */
    private static final double PRINT_SHARE = 0.5;
    /** Compression leaves dots of up to this share of the contrast around a mark, within two blocks of 8 at 150 dots an inch. */
    static final double HALO_SHARE = 0.3;

    static final int HALO = 14;
    /** So many dots on either side of a tint's end blend it with the paper behind. */
    private static final int SEAM = 2;
    /** A white area at least this broad on a tinted ground is bare paper, no lettering. */
    private static final int BROAD = 3 * StripRaster.DOTS_PER_MM;

    /** Two colours that compression blends miss the line between them by up to this, of 255. */
    private static final int LEAST_BETWEEN = 40;

    private static final double OVERSHOOT = 0.2;

    private static final int PAPER = 0xffffff;

    private final PictureDots dots;
    private final int[] off;
    private final boolean[] set;
    /** Ground of each dot; paper where nothing else is known. */
    private final int[] grounds;

    private GroundMarks(PictureDots dots) {
        this.dots = dots;
        off = new int[dots.rgb().length];
        set = new boolean[off.length];
        grounds = new int[off.length];
        Arrays.fill(grounds, PAPER);
    }

    /** The dots that stand off their ground, row by row. */
    static boolean[] of(PictureDots dots, PictureGround ground) {
        GroundMarks marks = new GroundMarks(dots);
        for (int i = 0; i < ground.stretches().length; i++) {
            Stretch s = ground.stretches()[i];
            int to = Math.min(dots.h(), (i + 1) * ground.length());
            // rings of compression around marks are no noise of the ground
            double noise = Math.min(s.noise(), ground.noise());
            marks.against(s, noise, i * ground.length(), to);
        }
        marks.dropHalo();
        marks.dropNeighbours(ground);
        marks.dropPaper();
        return marks.set;
    }

    /** The dots that stand off a ground without noise that each of them has for itself. */
    static boolean[] of(PictureDots dots, int[] ground) {
        GroundMarks marks = new GroundMarks(dots);
        for (int i = 0; i < ground.length; i++) {
            marks.grounds[i] = ground[i];
            marks.against(i, 0);
        }
        marks.dropHalo();
        return marks.set;
    }

    /** Returns true if a good part of what stands off has a core as dark as print. */
    static boolean isDark(PictureDots dots, PictureGround ground, boolean[] set) {
        int all = 0;
        int dark = 0;
        for (int[] piece : Pieces.of(set, dots.w())) {
            int core = 0;
            for (int at : piece) {
                int own = ground.stretches()[at / dots.w() / ground.length()].rgb();
                core += Lightness.of(own) - Lightness.of(dots.rgb()[at]) >= PRINT_LIGHTNESS ? 1 : 0;
            }
            all += piece.length;
            dark += core >= PRINT_CORE ? piece.length : 0;
        }
        return dark >= PRINT_SHARE * all;
    }

    /** The dots that an overlay changes. */
    static boolean[] ofOverlay(PictureDots dots) {
        GroundMarks marks = new GroundMarks(dots);
        for (int i = 0; i < marks.set.length; i++) {
            marks.off[i] = dots.own()[i] ? dots.changed()[i] : 0;
            marks.set[i] = marks.off[i] >= PictureDots.LEAST_CHANGE;
        }
        marks.dropHalo();
        marks.dropPaper();
        return marks.set;
    }

    /** The dots that stand off bare paper. */
    static boolean[] ofPaper(PictureDots dots) {
        GroundMarks marks = new GroundMarks(dots);
        marks.against(Stretch.NONE, 0, 0, dots.h());
        marks.dropHalo();
        return marks.set;
    }

    private void against(Stretch s, double noise, int from, int to) {
        for (int i = from * dots.w(); i < to * dots.w(); i++) {
            int x = i % dots.w();
            grounds[i] = x < s.depth() ? s.rgb() : PAPER;
            if (Math.abs(x - s.depth()) > SEAM) {
                against(i, noise);
            }
        }
    }

    private void against(int i, double noise) {
        int v = dots.rgb()[i];
        if (dots.own()[i] && v != grounds[i] && dots.changed()[i] >= PictureDots.LEAST_CHANGE) {
            double tone = Math.max(BLACKEST, Lightness.of(v));
            double ground = Math.max(BLACKEST, Lightness.of(grounds[i]));
            if (tone == BLACKEST && ground == BLACKEST) {
                return;
            }
            off[i] = StripRaster.off(v, grounds[i]);
            set[i] = off[i] >= Math.min(MOST_CHANNEL, LEAST_CHANNEL + CHANNEL_A_STEP * noise)
                    || Math.abs(tone - ground) >= Math.min(MOST_LIGHTNESS, LEAST_LIGHTNESS + LIGHTNESS_A_STEP * noise);
        }
    }

    /** Takes out faint dots beside strong ones. */
    private void dropHalo() {
        int[] strongest = most(most(off, 1, dots.w()), dots.w(), dots.h());
        for (int i = 0; i < set.length; i++) {
            set[i] &= off[i] >= HALO_SHARE * strongest[i];
        }
    }

    /** The largest value within the halo's width, along rows by steps of 1, along columns by a row's. */
    private int[] most(int[] values, int step, int length) {
        int[] out = values.clone();
        boolean down = step > 1 || length != dots.w(); // a picture may be one dot wide
        for (int i = 0; i < values.length; i++) {
            if (set[i] || down && values[i] > 0) {
                int at = down ? i / dots.w() : i % dots.w();
                int v = values[i];
                for (int d = -Math.min(HALO, at); d <= Math.min(HALO, length - 1 - at); d++) {
                    out[i + d * step] = Math.max(out[i + d * step], v);
                }
            }
        }
        return out;
    }

    /** Takes out the ground of a stretch where it begins before the stretch or goes on behind it. */
    private void dropNeighbours(PictureGround ground) {
        Stretch[] all = ground.stretches();
        for (int i = 1; i < all.length; i++) {
            if (StripRaster.off(all[i - 1].rgb(), all[i].rgb()) > LEAST_CHANNEL) {
                int border = i * ground.length();
                int from = border - ground.length();
                int to = Math.min(dots.h(), border + ground.length());
                dropFaint(StripRaster.off(all[i - 1].rgb(), all[i].rgb()), border - HALO, border + HALO);
                dropBetween(all[i - 1].rgb(), all[i].rgb(), border, from, to);
            }
        }
    }

    private void dropFaint(int contrast, int from, int to) {
        for (int i = Math.max(0, from) * dots.w(); i < Math.min(dots.h(), to) * dots.w(); i++) {
            set[i] &= off[i] >= HALO_SHARE * contrast;
        }
    }

    private void dropBetween(int before, int after, int border, int from, int to) {
        boolean[] between = new boolean[(to - from) * dots.w()];
        for (int i = 0; i < between.length; i++) {
            int at = from * dots.w() + i;
            between[i] = set[at] && isMixed(dots.rgb()[at], before, after, LEAST_BETWEEN);
        }
        for (int[] piece : Pieces.of(between, dots.w())) {
            Rectangle box = Pieces.box(piece, dots.w());
            boolean atBorder = box.y <= border - from && box.y + box.height >= border - from;
            if (atBorder && box.x <= 2 && box.width >= BROAD) {
                for (int at : piece) {
                    set[from * dots.w() + at] = false;
                }
            }
        }
    }

    /** Takes out bare paper that is no lettering: broad, or with more paper around it. */
    private void dropPaper() {
        boolean[] white = new boolean[set.length];
        boolean any = false;
        for (int i = 0; i < white.length; i++) {
            white[i] = set[i] && PictureGround.isPaper(dots.rgb()[i]);
            any |= white[i];
        }
        if (!any) {
            return;
        }
        boolean[] dropped = new boolean[set.length];
        for (int[] piece : Pieces.of(white, dots.w())) {
            Rectangle box = Pieces.box(piece, dots.w());
            if (box.width >= BROAD && box.height >= BROAD || isInPaper(piece, white)) {
                for (int at : piece) {
                    set[at] = false;
                    dropped[at] = true;
                }
            }
        }
        for (int i = 0; i < set.length; i++) {
            set[i] &= !isBlendBeside(i, dropped);
        }
    }

    private boolean isInPaper(int[] piece, boolean[] white) {
        int around = 0;
        int paper = 0;
        for (int at : piece) {
            int x = at % dots.w();
            int y = at / dots.w();
            for (int ny = Math.max(0, y - 1); ny <= Math.min(dots.h() - 1, y + 1); ny++) {
                for (int nx = Math.max(0, x - 1); nx <= Math.min(dots.w() - 1, x + 1); nx++) {
                    int next = ny * dots.w() + nx;
                    around += white[next] ? 0 : 1;
                    paper += !white[next] && PictureGround.isPaper(dots.rgb()[next]) ? 1 : 0;
                }
            }
        }
        return 2 * paper > around;
    }

    /** Returns true for a dot that blends the bare paper on one side of it with the ground on the other. */
    private boolean isBlendBeside(int at, boolean[] paper) {
        int x = at % dots.w();
        int y = at / dots.w();
        int ground = grounds[at];
        boolean across = x > 0 && x < dots.w() - 1;
        boolean along = y > 0 && y < dots.h() - 1;
        return set[at]
                && isMixed(dots.rgb()[at], ground, PAPER, LEAST_CHANNEL)
                && (across && isSeam(at - 1, at + 1, ground, paper)
                        || along && isSeam(at - dots.w(), at + dots.w(), ground, paper));
    }

    private boolean isSeam(int before, int after, int ground, boolean[] paper) {
        return paper[before] && StripRaster.off(dots.rgb()[after], ground) <= LEAST_CHANNEL
                || paper[after] && StripRaster.off(dots.rgb()[before], ground) <= LEAST_CHANNEL;
    }

    /** Returns true for a colour between two others, or as little beyond them as a sharp edge overshoots once scaled. */
    private static boolean isMixed(int rgb, int one, int other, int tolerance) {
        int far = 0;
        for (int shift = 8; shift <= 16; shift += 8) {
            far = Math.abs(step(one, other, shift)) > Math.abs(step(one, other, far)) ? shift : far;
        }
        double span = step(one, other, far);
        double part = span == 0 ? 0 : step(one, rgb, far) / span;
        for (int shift = 0; shift <= 16; shift += 8) {
            if (Math.abs(part * step(one, other, shift) - step(one, rgb, shift)) > tolerance) {
                return false;
            }
        }
        return part >= -OVERSHOOT && part <= 1 + OVERSHOOT;
    }

    private static int step(int from, int to, int shift) {
        return (to >> shift & 0xff) - (from >> shift & 0xff);
    }
}
