package io.bindprep.pdf.ink;

import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType3CharProc;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/** Content within the content: forms, pictures, the appearances of annotations and glyphs that are drawn. */
public abstract class FormEngine extends PaintEngine {
    private final FormContents formContents = new FormContents();
    /** Forms and pictures being drawn, by identity. */
    private final Set<COSStream> drawing = Collections.newSetFromMap(new IdentityHashMap<>());

    FormEngine(Fonts fonts, Layers layers, Budget budget) {
        super(fonts, layers, budget);
    }

    /** Forgets all that surrounded the content before. */
    final void beginOutermost() {
        glyphNested = 0;
        forced = null;
        clipRule = -1;
        annotation = null;
        drawing.clear();
    }

    final void xobject(COSName name) throws IOException {
        if (!(resource(COSName.XOBJECT, name) instanceof COSStream stream)) {
            passedOver("the picture or form \"" + name.getName() + "\" is missing");
            return;
        }
        if (!layers.prints(stream.getDictionaryObject(COSName.OC))) {
            return;
        }
        if (!drawing.add(stream)) {
            passedOver("a form draws itself");
            return;
        }
        try {
            xobject(stream);
        } finally {
            drawing.remove(stream);
        }
    }

    private void xobject(COSStream stream) throws IOException {
        String kind = stream.getNameAsString(COSName.SUBTYPE, "");
        if (kind.equals("Image")) {
            image(stream, COSName.IMAGE_MASK);
        } else if (kind.equals("Form")) {
            form(new PDFormXObject(stream), stream);
        }
    }

    private void form(PDFormXObject form, COSStream stream) throws IOException {
        AffineTransform t = new AffineTransform(ctm().createAffineTransform());
        t.concatenate(form.getMatrix().createAffineTransform());
        PDRectangle box = form.getBBox();
        Shape outline = box == null ? null : quad(t, box);
        if (outline != null && !out.reaches(outline.getBounds2D())) {
            // clipped to its box, so nothing of it can reach the strip
            FormContents.Contents contents = formContents.of(stream);
            boolean matters = contents.pictures() || basics.reachesTrim(outline.getBounds2D());
            if (!matters) {
                contents.fontsMissing().forEach(basics::font);
                return;
            }
        }
        if (ink.fillAlpha <= 0 && stream.containsKey(COSName.GROUP)) {
            return;
        }
        COSDictionary group = stream.getCOSDictionary(COSName.GROUP);
        InkState inner = group == null ? ink.copy() : ink.forGroup(group.getBoolean(COSName.K, false));
        if (outline != null) {
            inner.clip = inner.clip.narrowedTo(outline);
        }
        inner.ctm = form.getMatrix().multiply(ink.ctm);
        nest(inner, form.getResources(), () -> interpret(stream, false, "a form in it breaks off"));
    }

    private static Shape quad(AffineTransform t, PDRectangle box) {
        return Outlines.quad(t, box.getLowerLeftX(), box.getLowerLeftY(), box.getUpperRightX(), box.getUpperRightY());
    }

    /** An annotation's appearance, with everything in it an annotation: ISO 32000-1:2008, 12.5.5. */
    void annotation(PDAnnotation shown, PDAppearanceStream appearance, Clip page) throws IOException {
        PDRectangle box = appearance.getBBox();
        PDRectangle rect = shown.getRectangle();
        if (rect == null || box == null || !(rect.getWidth() > 0 && rect.getHeight() > 0)) {
            return;
        }
        Matrix own = appearance.getMatrix();
        Rectangle2D rotated = box.transform(own).getBounds2D();
        if (rotated.isEmpty()) {
            return;
        }
        Matrix fitted = Matrix.getTranslateInstance(rect.getLowerLeftX(), rect.getLowerLeftY());
        fitted.scale((float) (rect.getWidth() / rotated.getWidth()), (float) (rect.getHeight() / rotated.getHeight()));
        fitted.translate((float) -rotated.getX(), (float) -rotated.getY());
        InkState inner = new InkState(page);
        inner.ctm = own.multiply(fitted);
        inner.clip = inner.clip.narrowedTo(quad(inner.ctm.createAffineTransform(), box));
        forced = MarkKind.ANNOTATION;
        annotation = shown.getCOSObject();
        try {
            nest(
                    inner,
                    appearance.getResources(),
                    () -> interpret(appearance.getCOSObject(), false, "one of its annotations breaks off"));
        } finally {
            forced = null;
            annotation = null;
        }
    }

    @Override
    void type3(Matrix t, TextFont font, int code) throws IOException {
        PDType3Font drawn = (PDType3Font) font.pdf();
        PDType3CharProc glyph = Type3.mayReach(t, drawn, out) ? drawn.getCharProc(code) : null;
        if (glyph == null) {
            return;
        }
        InkState inner = ink.copy();
        inner.ctm = glyph.getMatrix().multiply(t);
        inner.text.begin();
        glyphNested++;
        try {
            nest(
                    inner,
                    glyph.getResources(),
                    () -> interpret(glyph.getCOSObject(), true, "a character in it breaks off"));
        } finally {
            glyphNested--;
        }
    }
}
