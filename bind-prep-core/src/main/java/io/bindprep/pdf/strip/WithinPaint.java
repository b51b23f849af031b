package io.bindprep.pdf.strip;

import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/** A paint that leaves what lies outside of an area as it is. */
record WithinPaint(Paint paint, Shape area) implements Paint {
    @Override
    public int getTransparency() {
        return TRANSLUCENT;
    }

    @Override
    public PaintContext createContext(
            ColorModel model, Rectangle device, Rectangle2D user, AffineTransform form, RenderingHints hints) {
        PaintContext context = paint.createContext(model, device, user, form, hints);
        Shape within = form.createTransformedShape(area);
        return new PaintContext() {
            @Override
            public void dispose() {
                context.dispose();
            }

            @Override
            public ColorModel getColorModel() {
                return context.getColorModel();
            }

            @Override
            public Raster getRaster(int x, int y, int w, int h) {
                Raster raster = context.getRaster(x, y, w, h);
                WritableRaster out = raster.createCompatibleWritableRaster(w, h);
                Object dot = null;
                for (int row = 0; row < h; row++) {
                    for (int column = 0; column < w; column++) {
                        if (within.intersects(x + column, y + row, 1, 1)) {
                            dot = raster.getDataElements(raster.getMinX() + column, raster.getMinY() + row, dot);
                            out.setDataElements(column, row, dot);
                        }
                    }
                }
                return out;
            }
        };
    }
}
