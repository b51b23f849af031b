package io.bindprep.pdf.strip;

import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.ink.StandIn;
import io.bindprep.pdf.ink.TextEngine;
import io.bindprep.pdf.syntax.Budget;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.MissingResourceException;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.PDTextState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Draws a page with some of its operators and annotations left out, within the page's budget, and notes what PDFBox would
 * only log: a picture that cannot be decoded must not pass as blank.
 */
final class StripDrawer extends MendedDrawer {
    /** A group whose own usage says that it does not print: how PDFBox is told that {@link Layers} hides something. */
    private static final COSDictionary HIDDEN = hidden();

    /** Operators that do nothing where what they name is missing. */
    private static final Set<String> PASSED_OVER = Set.of("Do", "cs", "CS");

    private final LeftOut leftOut;
    private final Layers layers;
    private final Budget budget;
    private final Rectangle2D near;
    private final DrawnPictures pictures;
    private final int @Nullable [] numbers;

    private int nested;
    private int operators;
    /** Count of parts that were to be left out, met so far. */
    private int met;

    private boolean mute;
    private boolean jpx;

    /**
     * Draws what lies in a rectangle of user space, which has some room around the strip.
     *
     * @param numbers of each of the page's own operators, which it was before what lies away was dropped; null where all
     *     are there
     */
    StripDrawer(
            PageDrawerParameters parameters,
            LeftOut leftOut,
            Layers layers,
            Budget budget,
            Rectangle2D near,
            DrawnPictures pictures,
            int @Nullable [] numbers)
            throws IOException {
        super(parameters);
        this.near = near;
        this.pictures = pictures;
        this.numbers = numbers;
        this.leftOut = leftOut;
        this.layers = layers;
        this.budget = budget;
    }

    private static COSDictionary hidden() {
        COSDictionary print = new COSDictionary();
        print.setName("PrintState", "OFF");
        COSDictionary usage = new COSDictionary();
        usage.setItem(COSName.PRINT, print);
        COSDictionary group = new COSDictionary();
        group.setItem(COSName.TYPE, COSName.OCG);
        group.setItem(COSName.getPDFName("Usage"), usage);
        return group;
    }

    /** Returns true if all that was to be left out was met and left out. */
    boolean leftAllOut() {
        return met == leftOut.size();
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        budget.operator();
        boolean own = nested == 0;
        if (own) {
            String name = leftOut.operators().get(number(operators++));
            mute = operator.getName().equals(name);
            met += mute ? 1 : 0;
        }
        nested++;
        try {
            super.processOperator(operator, operands);
        } finally {
            nested--;
            if (own) {
                mute = false;
            }
        }
    }

    /** Number that one of those drawn has among the operators of the page's whole content, from 1. */
    private int number(int drawn) {
        return numbers == null ? drawn + 1 : drawn < numbers.length ? numbers[drawn] : 0;
    }

    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e) {
        if (e instanceof MissingResourceException && PASSED_OVER.contains(operator.getName())) {
            return; // everybody goes on without it, and a finding tells of it
        }
        problem(
                switch (operator.getName()) {
                    case "Do", "BI" ->
                        jpx ? "a JPEG 2000 picture in it cannot be decoded" : "a picture in it cannot be decoded";
                    default -> "its operator \"" + operator.getName() + "\" cannot be drawn";
                });
        jpx = false;
    }

    @Override
    public void strokePath() throws IOException {
        if (mute) {
            endPath();
        } else {
            super.strokePath();
        }
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        budget.clock();
        if (mute) {
            endPath();
        } else {
            super.fillPath(windingRule);
        }
    }

    @Override
    public void shadingFill(COSName name) throws IOException {
        if (!mute) {
            super.shadingFill(name);
        }
    }

    @Override
    public void drawImage(PDImage image) throws IOException {
        budget.clock();
        PDGraphicsState state = getGraphicsState();
        Matrix ctm = state.getCurrentTransformationMatrix();
        jpx = JpxPart.is(image);
        PictureCut cut = mute ? null : pictures.of(image, ctm, near, getResources(), budget);
        if (cut != null) {
            state.setCurrentTransformationMatrix(cut.ctm());
            super.drawImage(cut.picture());
            state.setCurrentTransformationMatrix(ctm);
        }
        jpx = false;
    }

    /** Returns true if a glyph begins too far from the strip to reach it. */
    private boolean far(Matrix t) {
        double em = Math.max(t.getScalingFactorX(), t.getScalingFactorY()) * TextEngine.REACH_EMS;
        return !near.intersects(t.getTranslateX() - em, t.getTranslateY() - em, 2 * em, 2 * em);
    }

    /** Returns true if a form, which is clipped to its box, lies away from the strip. */
    private boolean far(PDFormXObject form) {
        PDRectangle box = form.getBBox();
        if (box == null) {
            return false;
        }
        Matrix t = form.getMatrix().multiply(getGraphicsState().getCurrentTransformationMatrix());
        return !box.transform(t).getBounds2D().intersects(near);
    }

    @Override
    protected void showFontGlyph(Matrix t, PDFont font, int code, Vector displacement) throws IOException {
        budget.glyph();
        PDTextState text = getGraphicsState().getTextState();
        RenderingMode mode = text.getRenderingMode();
        if (!mode.isClip() && far(t)) {
            return;
        }
        Path2D box = mute || !mode.isFill() ? null : StandIn.missing(font, code);
        if (box != null) {
            getLinePath().reset();
            getLinePath().append(t.createAffineTransform().createTransformedShape(box), false);
            super.fillPath(Path2D.WIND_NON_ZERO);
        } else if (!mute) {
            super.showFontGlyph(t, font, code, displacement);
        } else if (mode.isClip()) {
            text.setRenderingMode(RenderingMode.NEITHER_CLIP);
            super.showFontGlyph(t, font, code, displacement);
            text.setRenderingMode(mode);
        }
    }

    @Override
    protected void showType3Glyph(Matrix t, PDType3Font font, int code, Vector displacement) throws IOException {
        if (!mute) {
            super.showType3Glyph(t, font, code, displacement);
        }
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        if (!mute && !far(form)) {
            super.showForm(form);
        }
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        if (!mute && !far(form)) {
            super.showTransparencyGroup(form);
        }
    }

    @Override
    public void showAnnotation(PDAnnotation annotation) throws IOException {
        nested++; // no operator of an appearance is the page's own
        try {
            if (leftOut.annotations().contains(annotation.getCOSObject())) {
                met++;
            } else {
                super.showAnnotation(annotation);
            }
        } finally {
            nested--;
        }
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        boolean hides = COSName.OC.equals(tag) && !layers.prints(properties);
        super.beginMarkedContentSequence(tag, hides ? HIDDEN : new COSDictionary());
    }
}
