package io.bindprep.pdf.strip;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.ink.FoundMark;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Marks of pictures in the strip: dark dots against the local paper tone, gathered into marks.
 *
 * <p>A picture that stops short of the binding edge lies on bare paper: every dot that is not white counts. One that runs
 * through the binding edge is either a scan, light with dark detail, or a photograph or tint: where its local tone is not
 * light, it is background. A scan on white paper leaves its dark detail only.
 */
final class PictureInk {
    /** Lightest of 256 greys that still counts as a mark on bare paper: 4 % tone is the lightest that prints visibly;
     * common practice, no source. */
    private static final int LIGHTEST_MARK = 245;
    /** A tone of one process colour that shows though grey hardly tells it (yellow), above what compression leaves behind. */
    private static final int LEAST_COLOUR = 26;
    /** Below this tone a window is no paper but a photograph or tint; common practice, no source. */
    private static final int DARKEST_PAPER = 150;
    /** Contrast of a scan's dot to its paper, in 256 greys; common practice, no source. */
    private static final int CONTRAST = 60;
    /** The paper's tone is taken over stretches of this length along the binding edge. */
    private static final int WINDOW_MM = 10;
    /** Fewer dark dots that hang together than this are dust: 0.12 square millimetres. */
    private static final int LEAST_DOTS = 3;
    /** A dark piece that touches the binding edge and is this broad is a shadow or border of the scan. */
    private static final int BROAD_MM = 3;

    private static final double MM = 1.0 / StripRaster.DOTS_PER_MM;

    private PictureInk() {}

    /**
     * The marks of one picture: the picture itself as background where it runs through the binding edge and has a tone, and
     * its dark pieces.
     *
     * @param without the strip without the picture, where something else lies there; null where nothing does
     * @param found what is visible of it by its outline
     */
    static List<Mark> marks(StripRaster raster, @Nullable StripRaster without, FoundMark found) {
        Mark picture = found.mark;
        boolean throughEdge = picture.kind() == MarkKind.BACKGROUND;
        int x0 = clamp((int) Math.floor(picture.nearMm() / MM), raster.width());
        int x1 = clamp((int) Math.ceil(picture.farMm() / MM), raster.width());
        int y0 = clamp((int) Math.floor(picture.alongStartMm() / MM), raster.height());
        int y1 = clamp((int) Math.ceil(picture.alongEndMm() / MM), raster.height());
        // only as large as the picture: a page may hold thousands of small ones
        int w = x1 - x0;
        boolean[] dark = new boolean[w * (y1 - y0)];
        boolean toned = false;
        int window = WINDOW_MM * StripRaster.DOTS_PER_MM;
        for (int top = y0; top < y1; top += window) {
            int bottom = Math.min(y1, top + window);
            int limit = throughEdge ? scanLimit(raster, x0, x1, top, bottom) : LIGHTEST_MARK;
            int least = throughEdge ? 256 : LEAST_COLOUR;
            int inked = 0;
            for (int y = top; y < bottom; y++) {
                for (int x = x0; x < x1; x++) {
                    dark[(y - y0) * w + x - x0] = (raster.tone(x, y) <= limit || raster.ink(x, y) >= least)
                            && (without == null || raster.off(without, x, y) >= DoubtfulMark.LEAST_DIFFERENCE);
                    inked += raster.ink(x, y) >= DoubtfulMark.LEAST_DIFFERENCE ? 1 : 0;
                }
            }
            toned |= 2 * inked > w * (bottom - top);
        }
        List<Mark> marks = pieces(dark, w, x0, y0, found.box(), throughEdge);
        if (throughEdge && toned) {
            marks.add(0, picture);
        }
        return marks;
    }

    private static int clamp(int v, int most) {
        return Math.max(0, Math.min(most, v));
    }

    /** The darkest grey that is still paper in a window of a picture that runs through the edge; -1 where it is no paper. */
    private static int scanLimit(StripRaster raster, int x0, int x1, int y0, int y1) {
        int[] counts = new int[256];
        int n = 0;
        for (int y = y0; y < y1; y++) {
            for (int x = x0; x < x1; x++) {
                counts[raster.tone(x, y)]++;
                n++;
            }
        }
        int seen = 0;
        int tone = 255;
        // the tone that three quarters of the window are darker than or equal to
        while (tone > 0 && (seen += counts[tone]) < n / 4) {
            tone--;
        }
        return tone < DARKEST_PAPER ? -1 : tone - CONTRAST;
    }

    /** Dark dots that hang together, one mark a piece. */
    private static List<Mark> pieces(boolean[] dark, int w, int x0, int y0, Rectangle2D box, boolean throughEdge) {
        int h = w == 0 ? 0 : dark.length / w;
        List<Mark> marks = new ArrayList<>();
        boolean[] taken = new boolean[dark.length];
        int[] stack = new int[dark.length];
        for (int start = 0; start < dark.length; start++) {
            if (!dark[start] || taken[start]) {
                continue;
            }
            int top = 0;
            int count = 0;
            int[] piece = new int[64];
            stack[top++] = start;
            taken[start] = true;
            while (top > 0) {
                int at = stack[--top];
                if (count == piece.length) {
                    piece = Arrays.copyOf(piece, count * 2);
                }
                piece[count++] = at;
                int x = at % w;
                int y = at / w;
                for (int ny = Math.max(0, y - 1); ny <= Math.min(h - 1, y + 1); ny++) {
                    for (int nx = Math.max(0, x - 1); nx <= Math.min(w - 1, x + 1); nx++) {
                        int next = ny * w + nx;
                        if (dark[next] && !taken[next]) {
                            taken[next] = true;
                            stack[top++] = next;
                        }
                    }
                }
            }
            if (count >= LEAST_DOTS) {
                marks.add(mark(Arrays.copyOf(piece, count), w, x0, y0, box, throughEdge));
            }
        }
        return marks;
    }

    private static Mark mark(int[] dots, int w, int x0, int y0, Rectangle2D box, boolean throughEdge) {
        int top = dots[0] / w;
        int bottom = top;
        for (int at : dots) {
            top = Math.min(top, at / w);
            bottom = Math.max(bottom, at / w);
        }
        boolean[] window = new boolean[(bottom - top + 1) * w];
        for (int at : dots) {
            window[at - top * w] = true;
        }
        DotShape shape = DotShape.of(window, w, x0, y0 + top, box);
        Rectangle2D b = shape.bounds();
        boolean shadow = throughEdge && b.getMinX() < MM && b.getWidth() >= BROAD_MM && b.getHeight() >= BROAD_MM;
        return shape.mark(shadow ? MarkKind.BACKGROUND : MarkKind.IMAGE, "");
    }
}
