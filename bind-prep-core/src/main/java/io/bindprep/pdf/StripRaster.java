package io.bindprep.pdf;

import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.rendering.RenderDestination;
import org.jspecify.annotations.Nullable;

/**
 * The rendered strip along a bound edge, in grey: column 0 is the bound edge, row 0 the page's head (its left where it is
 * bound at top or bottom).
 *
 * @param problem what could not be drawn; null where everything was
 */
record StripRaster(
        int width, int height, byte[] grey, @Nullable String problem) {
    /** Five dots a millimetre (127 dpi): a full stop of 8 pt text is two dots wide. */
    static final int DOTS_PER_MM = 5;

    /** A strip of 4 m by 20 mm; larger pages are refused. */
    private static final int MOST_DOTS = 2_000_000;

    static StripRaster of(PDDocument source, COSDictionary page, PageFacts facts, PageEdge edge, double depthMm)
            throws IOException {
        boolean side = edge.upright();
        double pageW = facts.trimWidth().mm();
        double pageH = facts.trimHeight().mm();
        int depth = (int) Math.ceil(Math.min(depthMm, side ? pageW : pageH) * DOTS_PER_MM);
        int along = (int) Math.ceil(facts.along(edge).mm() * DOTS_PER_MM);
        if ((long) depth * along > MOST_DOTS) {
            throw new Budget.Spent("its bound edge is too long to look at its pictures");
        }
        int w = side ? depth : along;
        int h = side ? along : depth;
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        String problem;
        Graphics2D g = image.createGraphics();
        try (PDDocument one = new PDDocument()) {
            g.setBackground(Color.WHITE); // PDFBox clears the page with it
            g.clearRect(0, 0, w, h);
            g.translate(
                    edge == PageEdge.RIGHT ? depth - pageW * DOTS_PER_MM : 0,
                    edge == PageEdge.BOTTOM ? depth - pageH * DOTS_PER_MM : 0);
            one.addPage(new PDPage(trimmed(page, facts)));
            COSBase layers = source.getDocumentCatalog().getCOSObject().getDictionaryObject(COSName.OCPROPERTIES);
            one.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, layers);
            Watched renderer = new Watched(one);
            renderer.setSubsamplingAllowed(true);
            float scale = (float) (facts.mmPerUnit() * DOTS_PER_MM);
            renderer.renderPageToGraphics(0, g, scale, scale, RenderDestination.PRINT);
            problem = renderer.problem;
        } finally {
            g.dispose();
        }
        return new StripRaster(depth, along, framed(image, edge, depth, along), problem);
    }

    /** A copy whose visible box is the trim: what lies beyond it is cut away. */
    static COSDictionary trimmed(COSDictionary page, PageFacts f) {
        COSDictionary copy = new COSDictionary(page);
        COSArray box = new COSArray();
        for (double v : new double[] {
            f.trim().x0(), f.trim().y0(), f.trim().x1(), f.trim().y1()
        }) {
            box.add(new COSFloat((float) v));
        }
        copy.setItem(COSName.CROP_BOX, box);
        copy.setInt(COSName.ROTATE, f.rotate());
        copy.removeItem(COSName.PARENT);
        return copy;
    }

    private static byte[] framed(BufferedImage image, PageEdge edge, int depth, int along) {
        byte[] grey = new byte[depth * along];
        for (int y = 0; y < along; y++) {
            for (int x = 0; x < depth; x++) {
                int rgb = switch (edge) {
                    case LEFT -> image.getRGB(x, y);
                    case RIGHT -> image.getRGB(depth - 1 - x, y);
                    case TOP -> image.getRGB(y, x);
                    case BOTTOM -> image.getRGB(y, depth - 1 - x);
                };
                // ITU-R BT.601 luma
                int luma = (299 * ((rgb >> 16) & 0xff) + 587 * ((rgb >> 8) & 0xff) + 114 * (rgb & 0xff)) / 1000;
                grey[y * depth + x] = (byte) luma;
            }
        }
        return grey;
    }

    int at(int x, int y) {
        return grey[y * width + x] & 0xff;
    }

    /** Notes what PDFBox would only log: a picture it cannot decode must not pass as blank. */
    private static final class Watched extends PDFRenderer {
        private @Nullable String problem;

        Watched(PDDocument document) {
            super(document);
        }

        @Override
        protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
            return new PageDrawer(parameters) {
                @Override
                protected void operatorException(Operator operator, List<COSBase> operands, IOException e) {
                    problem = "a picture in it cannot be decoded";
                }
            };
        }
    }
}
