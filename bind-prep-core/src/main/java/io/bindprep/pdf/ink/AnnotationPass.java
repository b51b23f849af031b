package io.bindprep.pdf.ink;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.jspecify.annotations.Nullable;

/** Annotations that print: flag Print set, Hidden clear (ISO 32000-1:2008, 12.5.3), by their normal appearance. */
final class AnnotationPass {
    private static final int MOST_ANNOTATIONS = 20_000;
    /** Flags of an annotation: ISO 32000-1:2008, Table 165. */
    private static final int HIDDEN = 2;

    private static final int PRINT = 4;
    /** These show nothing on paper without an appearance of their own. */
    private static final Set<String> SILENT = Set.of("Link", "Popup", "Widget", "Movie", "Screen", "3D", "RichMedia");

    /** Readers round a highlight's ends by up to so much of its height (three tried). */
    private static final double ROUNDED = 0.19;

    private AnnotationPass() {}

    static void run(
            InkEngine engine,
            PDPage page,
            LeanDocument objects,
            Layers layers,
            StripCollector out,
            BasicsCollector whole)
            throws IOException {
        COSArray all = page.getCOSObject().getCOSArray(COSName.ANNOTS);
        if (all == null) {
            return;
        }
        if (all.size() > MOST_ANNOTATIONS) {
            throw new Budget.Spent("it holds more than " + MOST_ANNOTATIONS + " annotations");
        }
        for (int i = 0; i < all.size(); i++) {
            // most of a manual's are links, which must not stay in memory
            if (objects.read(all.get(i)) instanceof COSDictionary alone) {
                try {
                    if (mayPrint(alone) && all.getObject(i) instanceof COSDictionary dictionary) {
                        one(engine, dictionary, layers, out, whole);
                    }
                } catch (IOException | ClassCastException | IllegalArgumentException | NullPointerException e) {
                    engine.problem("one of its annotations cannot be read");
                }
            }
        }
    }

    private static boolean mayPrint(COSDictionary annotation) {
        boolean silent = SILENT.contains(annotation.getNameAsString(COSName.SUBTYPE, ""));
        return (annotation.getInt(COSName.F, 0) & (HIDDEN | PRINT)) == PRINT
                && (annotation.containsKey(COSName.AP) || !silent || Unstyled.mayPrint(annotation));
    }

    private static void one(
            InkEngine engine, COSDictionary dictionary, Layers layers, StripCollector out, BasicsCollector whole)
            throws IOException {
        String kind = dictionary.getNameAsString(COSName.SUBTYPE, "");
        PDAnnotation annotation = PDAnnotation.createAnnotation(dictionary);
        PDRectangle rect = annotation.getRectangle();
        if (kind.equals("Popup") || rect == null || !layers.prints(dictionary.getDictionaryObject(COSName.OC))) {
            return;
        }
        Rectangle2D box =
                new Rectangle2D.Double(rect.getLowerLeftX(), rect.getLowerLeftY(), rect.getWidth(), rect.getHeight());
        if (!dictionary.containsKey(COSName.AP)) {
            Unstyled.Look look = Unstyled.of(dictionary, kind, box);
            if (look != null) {
                whole.withoutAppearance(look.kind());
                look.shapes().forEach(shape -> estimate(shape, out));
                return;
            }
        }
        PDAppearanceStream appearance = annotation.getNormalAppearanceStream();
        if (appearance != null && out.reaches(box)) {
            engine.annotation(annotation, appearance, Clip.of(out.strip()));
        } else if (!SILENT.contains(kind) && !dictionary.containsKey(COSName.AP)) {
            // each reader draws its own: taken as its whole rectangle, and the words it says to mark
            whole.withoutAppearance("comment");
            estimate(box, out);
            quads(dictionary.getCOSArray(COSName.QUADPOINTS), kind.equals("Highlight") ? ROUNDED : 0, out);
        }
    }

    private static void estimate(Shape box, StripCollector out) {
        if (out.reaches(box.getBounds2D())) {
            out.add(
                    box,
                    Clip.of(out.strip()),
                    new StripCollector.Paint(
                            MarkKind.ANNOTATION, Tone.INK, 0, false, false, false, false, Stage.ESTIMATE, ""));
        }
    }

    /** Four corners each, ISO 32000-1:2008, Table 179. */
    private static void quads(@Nullable COSArray points, double rounded, StripCollector out) {
        float[] all = points == null ? new float[0] : points.toFloatArray();
        for (int i = 0; i + 8 <= all.length; i += 8) {
            Rectangle2D box = new Rectangle2D.Double(all[i], all[i + 1], 0, 0);
            for (int corner = 1; corner < 4; corner++) {
                box.add(all[i + 2 * corner], all[i + 2 * corner + 1]);
            }
            double more = rounded * Math.min(box.getWidth(), box.getHeight());
            estimate(
                    new Rectangle2D.Double(box.getX() - more, box.getY(), box.getWidth() + 2 * more, box.getHeight()),
                    out);
        }
    }
}
