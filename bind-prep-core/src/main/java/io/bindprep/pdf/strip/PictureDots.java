package io.bindprep.pdf.strip;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.ink.FoundMark;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Dots of the drawn strip that one picture alone decides.
 *
 * @param x0 column of the strip where they begin
 * @param y0 row of the strip where they begin
 * @param changed difference that the picture makes to what lies below it, 0 to 255; 255 where nothing does
 * @param own false for dots beside the picture's outline and for those that another mark touches
 */
record PictureDots(int x0, int y0, int w, int h, int[] rgb, boolean[] own, int[] changed) {
    private static final double MM = 1.0 / StripRaster.DOTS_PER_MM;

    /**
     * Takes the dots of a picture, those of other marks left out.
     *
     * @param without the strip without the picture, where something else lies there; null where nothing does
     */
    static PictureDots of(StripRaster raster, @Nullable StripRaster without, Mark picture, List<FoundMark> others) {
        int x0 = clamp((int) Math.floor(picture.nearMm() / MM), raster.width());
        int x1 = clamp((int) Math.ceil(picture.farMm() / MM), raster.width());
        int y0 = clamp((int) Math.floor(picture.alongStartMm() / MM), raster.height());
        int y1 = clamp((int) Math.ceil(picture.alongEndMm() / MM), raster.height());
        int w = Math.max(0, x1 - x0);
        int h = Math.max(0, y1 - y0);
        int[] rgb = new int[w * h];
        boolean[] own = new boolean[w * h];
        int[] changed = new int[w * h];
        Arrays.fill(changed, without == null ? 255 : 0);
        if (rgb.length > 0) {
            for (int y = 0; y < h; y++) {
                System.arraycopy(raster.rgb(), (y + y0) * raster.width() + x0, rgb, y * w, w);
            }
            // beside a picture on bare paper there is nothing that its dots could blend with
            boolean onPaper = picture.kind() != MarkKind.BACKGROUND;
            byte[] inside = drawn(List.of(picture.shape()), x0, y0, w, h);
            byte[] foreign = drawn(
                    others.stream()
                            .filter(f -> !f.isPicture() && f.mark.kind() != MarkKind.BACKGROUND)
                            .map(f -> f.mark.shape())
                            .toList(),
                    x0,
                    y0,
                    w,
                    h);
            for (int i = 0; i < own.length; i++) {
                own[i] = foreign[i] == 0 && (onPaper || inside[i] == -1);
            }
            own = shrunk(own, w, h);
            for (int i = 0; without != null && i < own.length; i++) {
                changed[i] = raster.off(without, x0 + i % w, y0 + i / w);
            }
        }
        return new PictureDots(x0, y0, w, h, rgb, own, changed);
    }

    /** A picture's dot shows where it differs from what lies below it by this much, of 255. */
    static final int LEAST_CHANGE = 6;

    /** Returns true if the picture leaves most of what lies below as it is. */
    boolean isOverlay() {
        int shown = 0;
        for (int c : changed) {
            shown += c >= LEAST_CHANGE ? 1 : 0;
        }
        return 2 * shown < changed.length;
    }

    private static int clamp(int v, int most) {
        return Math.max(0, Math.min(most, v));
    }

    private static byte[] drawn(List<Shape> shapes, int x0, int y0, int w, int h) {
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Color.WHITE);
        g.transform(new AffineTransform(1 / MM, 0, 0, 1 / MM, -x0, -y0));
        shapes.forEach(g::fill);
        g.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    /** A dot beside one that is not the picture's is a blend of both. */
    private static boolean[] shrunk(boolean[] own, int w, int h) {
        boolean[] out = own.clone();
        for (int i = 0; i < own.length; i++) {
            int x = i % w;
            int y = i / w;
            out[i] = own[i]
                    && (x == 0 || own[i - 1])
                    && (x == w - 1 || own[i + 1])
                    && (y == 0 || own[i - w])
                    && (y == h - 1 || own[i + w]);
        }
        return out;
    }
}
