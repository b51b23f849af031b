package io.bindprep.pdf.strip;

import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;

/**
 * A tiling without the dark seams that Java blends in: between a dot of a tile and a clear one it takes the clear one's
 * black into the colour, so that a white dot has a grey rim.
 *
 * <p>Opacity is taken as blended, colour from the nearest dot; where that is clear, from the blended one with its black
 * taken out.
 */
record TilePaint(Paint paint) implements Paint {
    @Override
    public int getTransparency() {
        return TRANSLUCENT;
    }

    @Override
    public PaintContext createContext(
            ColorModel model, Rectangle device, Rectangle2D user, AffineTransform form, RenderingHints hints) {
        RenderingHints unblended = (RenderingHints) hints.clone();
        unblended.put(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
        return new Context(
                paint.createContext(model, device, user, form, hints),
                paint.createContext(model, device, user, form, unblended));
    }

    private record Context(PaintContext blended, PaintContext nearest) implements PaintContext {
        @Override
        public void dispose() {
            blended.dispose();
            nearest.dispose();
        }

        @Override
        public ColorModel getColorModel() {
            return ColorModel.getRGBdefault();
        }

        @Override
        public Raster getRaster(int x, int y, int w, int h) {
            BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
            int[] soft = dots(blended, x, y, w, h);
            int[] sharp = dots(nearest, x, y, w, h);
            for (int i = 0; i < soft.length; i++) {
                soft[i] = sharp[i] >>> 24 == 0 ? withoutBlack(soft[i]) : soft[i] & 0xff000000 | sharp[i] & 0xffffff;
            }
            out.setRGB(0, 0, w, h, soft, 0, w);
            return out.getRaster();
        }

        private static int[] dots(PaintContext context, int x, int y, int w, int h) {
            Raster raster = context.getRaster(x, y, w, h);
            ColorModel model = context.getColorModel();
            int[] dots = new int[w * h];
            Object dot = null;
            for (int i = 0; i < dots.length; i++) {
                dot = raster.getDataElements(raster.getMinX() + i % w, raster.getMinY() + i / w, dot);
                dots[i] = model.getRGB(dot);
            }
            return dots;
        }

        private static int withoutBlack(int argb) {
            int alpha = argb >>> 24;
            if (alpha == 0) {
                return 0;
            }
            int r = Math.min(255, (argb >> 16 & 0xff) * 255 / alpha);
            int g = Math.min(255, (argb >> 8 & 0xff) * 255 / alpha);
            int b = Math.min(255, (argb & 0xff) * 255 / alpha);
            return alpha << 24 | r << 16 | g << 8 | b;
        }
    }
}
