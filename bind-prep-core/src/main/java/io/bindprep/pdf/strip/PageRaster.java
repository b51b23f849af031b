package io.bindprep.pdf.strip;

import io.bindprep.page.Box;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.rendering.RenderDestination;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/** Draws pieces of one page, trimmed or with bleed, in colour, as it prints, within a budget. */
final class PageRaster {
    private final COSDictionary page;
    private final PageFacts facts;
    private final @Nullable COSBase layers;
    private final Budget budget;
    private final Map<Shown, PDImageXObject> shown = new HashMap<>();
    private double dotsPerUnit;
    private @Nullable String problem;

    /** A decoded picture, by its identity and how wide it was decoded. */
    private record Shown(COSStream picture, int width) {}

    PageRaster(COSDictionary page, PageFacts facts, Box shown, @Nullable COSBase layers, Budget budget) {
        this.page = StripRaster.showing(page, facts, shown);
        this.facts = facts;
        this.layers = layers;
        this.budget = budget;
    }

    /** Reason why something could not be drawn; null where everything was. */
    @Nullable
    String problem() {
        return problem;
    }

    /** A rectangle of what is shown in the reader's frame, millimetres, at so many dots a millimetre. */
    BufferedImage draw(double x, double y, double width, double height, double dotsPerMm) throws IOException {
        int w = Math.max(1, (int) Math.ceil(width * dotsPerMm));
        int h = Math.max(1, (int) Math.ceil(height * dotsPerMm));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try (PDDocument one = new PDDocument()) {
            g.setBackground(Color.WHITE); // PDFBox clears the page with it
            g.clearRect(0, 0, w, h);
            g.translate(-x * dotsPerMm, -y * dotsPerMm);
            one.addPage(new PDPage(page));
            one.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, layers);
            PDFRenderer renderer = new Watched(one);
            renderer.setSubsamplingAllowed(true);
            float scale = (float) (facts.mmPerUnit() * dotsPerMm);
            dotsPerUnit = scale;
            renderer.renderPageToGraphics(0, g, scale, scale, RenderDestination.PRINT);
        } finally {
            g.dispose();
            page.removeItem(COSName.PARENT); // the page belongs to no document between two drawings
        }
        return image;
    }

    private final class Watched extends PDFRenderer {
        Watched(PDDocument document) {
            super(document);
        }

        @Override
        protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
            return new PageDrawer(parameters) {
                @Override
                public void drawImage(PDImage image) throws IOException {
                    super.drawImage(JpxPart.is(image) ? plain((PDImageXObject) image) : image);
                }

                private PDImageXObject plain(PDImageXObject image) throws IOException {
                    JpxPart whole = Objects.requireNonNull(JpxPart.of(image.getCOSObject()));
                    Matrix ctm = getGraphicsState().getCurrentTransformationMatrix();
                    double across = ctm.getScalingFactorX() * dotsPerUnit;
                    JpxPart part = whole.halved(across);
                    Shown key = new Shown(image.getCOSObject(), part.whole().width);
                    PDImageXObject known = shown.get(key);
                    if (known == null) {
                        COSStream plain = part.plain(part.whole(), getResources(), budget);
                        known = new PDImageXObject(new PDStream(plain), getResources());
                        shown.put(key, known);
                    }
                    return known;
                }

                @Override
                protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
                    budget.operator();
                    super.processOperator(operator, operands);
                }

                @Override
                protected void operatorException(Operator operator, List<COSBase> operands, IOException e) {
                    problem = "something on it could not be drawn";
                }
            };
        }
    }
}
