package io.bindprep.pdf.strip;

import io.bindprep.marks.Stage;
import io.bindprep.page.Box;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.ink.StripContent;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.ResourceCache;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.rendering.RenderDestination;
import org.jspecify.annotations.Nullable;

/**
 * The rendered strip along a binding edge, in colour: column 0 is the binding edge, row 0 the page's head (its left where it
 * is bound at top or bottom).
 *
 * @param problem what could not be drawn; null where everything was
 * @param leftAllOut whether all that was to be left out of the drawing was
 */
public record StripRaster(
        int width, int height, int[] rgb, @Nullable String problem, boolean leftAllOut) {
    /** Five dots a millimetre (127 dpi): a full stop of 8 pt text is two dots wide. */
    static final int DOTS_PER_MM = (int) Math.round(1 / Stage.RASTER.coarseMm());

    private static final double ROOM_MM = 2;

    /** A strip of 4 m by 20 mm; larger pages are refused. */
    private static final int MOST_DOTS = 2_000_000;

    /** Draws strips of one page. */
    public record Source(
            PDDocument document,
            COSDictionary page,
            PageFacts facts,
            PageEdge edge,
            double depthMm,
            Layers layers,
            Budget budget,
            ResourceCache cache,
            DrawnPictures pictures,
            int @Nullable [] numbers) {
        /** The strip in user space, with room around it for what blends into its dots. */
        public Rectangle2D near() {
            try {
                Rectangle2D strip = new Rectangle2D.Double(
                        -ROOM_MM,
                        -ROOM_MM,
                        depthMm + 2 * ROOM_MM,
                        facts.along(edge).mm() + 2 * ROOM_MM);
                return facts.toBindingEdge(edge)
                        .createInverse()
                        .createTransformedShape(strip)
                        .getBounds2D();
            } catch (NoninvertibleTransformException e) {
                throw new IllegalStateException("a page without extent", e);
            }
        }

        /** The same with that content only. */
        public Source of(StripContent content) throws IOException {
            COSDictionary lean = new COSDictionary(page);
            COSStream stream = new COSStream();
            try (OutputStream out = stream.createRawOutputStream()) {
                out.write(content.bytes());
            }
            lean.setItem(COSName.CONTENTS, stream);
            return new Source(document, lean, facts, edge, depthMm, layers, budget, cache, pictures, content.numbers());
        }

        public StripRaster draw(LeftOut leftOut) throws IOException {
            return StripRaster.of(this, leftOut);
        }
    }

    private static StripRaster of(Source s, LeftOut leftOut) throws IOException {
        PageEdge edge = s.edge;
        boolean side = edge.upright();
        double pageW = s.facts.trimWidth().mm();
        double pageH = s.facts.trimHeight().mm();
        int depth = (int) Math.ceil(Math.min(s.depthMm, side ? pageW : pageH) * DOTS_PER_MM);
        int along = (int) Math.ceil(s.facts.along(edge).mm() * DOTS_PER_MM);
        if ((long) depth * along > MOST_DOTS) {
            throw new Budget.Spent("its binding edge is too long to look at its pictures");
        }
        int w = side ? depth : along;
        int h = side ? along : depth;
        // transparent, for blending with bare paper leaves the paint as it is (ISO 32000-1:2008, 11.3.6)
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        try (PDDocument one = new PDDocument()) {
            g.setBackground(new Color(0, 0, 0, 0)); // PDFBox clears the page with it
            g.translate(
                    edge == PageEdge.RIGHT ? depth - pageW * DOTS_PER_MM : 0,
                    edge == PageEdge.BOTTOM ? depth - pageH * DOTS_PER_MM : 0);
            one.addPage(new PDPage(trimmed(s.page, s.facts)));
            COSBase layers = s.document.getDocumentCatalog().getCOSObject().getDictionaryObject(COSName.OCPROPERTIES);
            one.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, layers);
            one.setResourceCache(s.cache);
            Renderer renderer = new Renderer(one, leftOut, s);
            renderer.setSubsamplingAllowed(true);
            float scale = (float) (s.facts.mmPerUnit() * DOTS_PER_MM);
            renderer.renderPageToGraphics(0, g, scale, scale, RenderDestination.PRINT);
            StripDrawer drawer = renderer.drawer;
            if (drawer == null) {
                throw new IOException("nothing was drawn");
            }
            return new StripRaster(
                    depth, along, framed(image, edge, depth, along), drawer.problem(), drawer.leftAllOut());
        } finally {
            g.dispose();
        }
    }

    /** A copy whose visible box is the trim: what lies beyond it is cut away. */
    static COSDictionary trimmed(COSDictionary page, PageFacts f) {
        return showing(page, f, f.trim());
    }

    /** A copy that shows no more than a box, and bare paper where that goes beyond the page. */
    static COSDictionary showing(COSDictionary page, PageFacts f, Box shown) {
        COSDictionary copy = new COSDictionary(page);
        COSArray box = new COSArray();
        for (double v : new double[] {shown.x0(), shown.y0(), shown.x1(), shown.y1()}) {
            box.add(new COSFloat((float) v));
        }
        if (!f.media().contains(shown, 0)) {
            copy.setItem(COSName.MEDIA_BOX, box);
        }
        copy.setItem(COSName.CROP_BOX, box);
        copy.setInt(COSName.ROTATE, f.rotate());
        copy.removeItem(COSName.PARENT);
        return copy;
    }

    private static int[] framed(BufferedImage image, PageEdge edge, int depth, int along) {
        int[] drawn = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int[] rgb = new int[depth * along];
        for (int y = 0; y < along; y++) {
            for (int x = 0; x < depth; x++) {
                rgb[y * depth + x] = onPaper(drawn[
                        switch (edge) {
                            case LEFT -> y * depth + x;
                            case RIGHT -> y * depth + depth - 1 - x;
                            case TOP -> x * along + y;
                            case BOTTOM -> (depth - 1 - x) * along + y;
                        }]);
            }
        }
        return rgb;
    }

    private static int onPaper(int argb) {
        int alpha = argb >>> 24;
        if (alpha == 0) {
            return 0xffffff;
        }
        int paper = 255 * (255 - alpha);
        int r = ((argb >> 16 & 0xff) * alpha + paper) / 255;
        int g = ((argb >> 8 & 0xff) * alpha + paper) / 255;
        int b = ((argb & 0xff) * alpha + paper) / 255;
        return r << 16 | g << 8 | b;
    }

    /** The tone of a dot, 0 to 255: ITU-R BT.601 luma. */
    int tone(int x, int y) {
        int v = rgb[y * width + x];
        return (299 * (v >> 16) + 587 * (v >> 8 & 0xff) + 114 * (v & 0xff)) / 1000;
    }

    /** Ink of a dot in the process colour it shows most of, 0 to 255. */
    int ink(int x, int y) {
        int v = rgb[y * width + x];
        return 255 - Math.min(Math.min(v >> 16, v >> 8 & 0xff), v & 0xff);
    }

    /** Difference of a dot to the same one of another drawing, in the colour in which it is farthest, 0 to 255. */
    int off(StripRaster o, int x, int y) {
        return off(rgb[y * width + x], o.rgb[y * width + x]);
    }

    /** Difference of two colours in the channel in which they are farthest, 0 to 255. */
    static int off(int a, int b) {
        return Math.max(
                Math.max(Math.abs((a >> 16 & 0xff) - (b >> 16 & 0xff)), Math.abs((a >> 8 & 0xff) - (b >> 8 & 0xff))),
                Math.abs((a & 0xff) - (b & 0xff)));
    }

    private static final class Renderer extends PDFRenderer {
        private final LeftOut leftOut;
        private final Source source;
        private @Nullable StripDrawer drawer;

        Renderer(PDDocument document, LeftOut leftOut, Source source) {
            super(document);
            this.leftOut = leftOut;
            this.source = source;
        }

        @Override
        protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
            drawer = new StripDrawer(
                    parameters, leftOut, source.layers, source.budget, source.near(), source.pictures, source.numbers);
            return drawer;
        }
    }
}
