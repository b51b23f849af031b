package io.bindprep.pdf.strip;

import io.bindprep.pdf.ink.Shadings;
import io.bindprep.pdf.ink.Transfer;
import io.bindprep.pdf.ink.UnevenPen;
import io.bindprep.pdf.syntax.Operators;
import java.awt.Color;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDAbstractPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.PDTextState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/** PDFBox's drawer, mended where other readers draw otherwise: uneven pens, transfer functions, faulty content. */
abstract class MendedDrawer extends PageDrawer {
    private static final Color NOTHING = new Color(0, 0, 0, 0);

    /** Forms being drawn, by identity: no reader lets one draw itself. */
    private final Set<COSDictionary> drawing = Collections.newSetFromMap(new IdentityHashMap<>());

    private @Nullable String problem;

    MendedDrawer(PageDrawerParameters parameters) throws IOException {
        super(parameters);
    }

    /** Reason why something could not be drawn; null where everything was. */
    final @Nullable String problem() {
        return problem;
    }

    final void problem(String what) {
        problem = what;
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        String name = operator.getName();
        List<COSBase> given = operands == null ? List.of() : operands;
        boolean nothingSaved = name.equals("Q") && getGraphicsStackSize() <= 1;
        if (nothingSaved || Operators.mismatched(name, given)) {
            return; // a finding tells of it
        }
        if (getTextMatrix() == null) {
            setTextMatrix(new Matrix());
            setTextLineMatrix(new Matrix());
        }
        int more = given.size() - Operators.takes(name);
        try {
            super.processOperator(operator, more > 0 ? given.subList(more, given.size()) : given);
        } catch (ClassCastException e) {
            problem("its operator \"" + name + "\" cannot be drawn");
        }
    }

    /** Stays behind a text object, as other readers show text outside of one too. */
    @Override
    public void setTextMatrix(Matrix value) {
        if (value != null) {
            super.setTextMatrix(value);
        }
    }

    @Override
    public void setTextLineMatrix(Matrix value) {
        if (value != null) {
            super.setTextLineMatrix(value);
        }
    }

    @Override
    public void strokePath() throws IOException {
        Path2D outline = UnevenPen.outline(getLinePath(), getGraphicsState());
        if (outline == null) {
            super.strokePath();
        } else {
            fillAsStroke(outline);
        }
    }

    /** PDFBox strokes with a round pen only: another pen's line is filled by its outline, in the colour of lines. */
    private void fillAsStroke(Path2D outline) throws IOException {
        saveGraphicsState();
        try {
            PDGraphicsState state = getGraphicsState();
            state.setNonStrokingColorSpace(state.getStrokingColorSpace());
            state.setNonStrokingColor(state.getStrokingColor());
            state.setNonStrokeAlphaConstant(state.getAlphaConstant());
            getLinePath().reset();
            getLinePath().append(outline, false);
            fillPath(Path2D.WIND_NON_ZERO);
        } finally {
            restoreGraphicsState();
        }
    }

    @Override
    public void shadingFill(COSName name) throws IOException {
        COSDictionary shading = resource(COSName.SHADING, name);
        if (shading == null || !Shadings.complete(shading)) {
            return; // a finding tells of it
        }
        // the operator sh takes no background (ISO 32000-1:2008, Table 78), which PDFBox paints
        COSBase background = shading.getItem(COSName.BACKGROUND);
        shading.removeItem(COSName.BACKGROUND);
        Shape cone = RadialCone.of(shading);
        saveGraphicsState();
        try {
            if (cone != null) {
                PDGraphicsState state = getGraphicsState();
                AffineTransform form = state.getCurrentTransformationMatrix().createAffineTransform();
                state.intersectClippingPath(new Area(form.createTransformedShape(cone)));
            }
            super.shadingFill(name);
        } finally {
            restoreGraphicsState();
            if (background != null) {
                shading.setItem(COSName.BACKGROUND, background);
            }
        }
    }

    @Override
    protected Paint getPaint(PDColor color) throws IOException {
        if (color.getColorSpace() instanceof PDPattern
                && color.getPatternName() != null
                && !Shadings.drawn(resource(COSName.PATTERN, color.getPatternName()))) {
            return NOTHING; // a finding tells of it
        }
        Paint paint = color.getColorSpace() instanceof PDPattern pattern
                ? mended(super.getPaint(color), pattern.getPattern(color))
                : super.getPaint(color);
        Transfer transfer = Transfer.of(getGraphicsState().getTransfer());
        return transfer != null && paint instanceof Color plain ? darkened(plain, transfer) : paint;
    }

    private Paint mended(Paint paint, @Nullable PDAbstractPattern pattern) {
        if (pattern instanceof PDTilingPattern) {
            return paint instanceof Color ? paint : new TilePaint(paint);
        }
        COSDictionary shading = pattern == null ? null : pattern.getCOSObject().getCOSDictionary(COSName.SHADING);
        Shape cone = shading == null || shading.containsKey(COSName.BACKGROUND) ? null : RadialCone.of(shading);
        if (pattern == null || cone == null) {
            return paint;
        }
        Matrix matrix = Matrix.concatenate(getInitialMatrix(), pattern.getMatrix());
        return new WithinPaint(paint, matrix.createAffineTransform().createTransformedShape(cone));
    }

    /** PDFBox takes pictures alone through a transfer function, other readers all or nothing: the darker is drawn. */
    private static Color darkened(Color c, Transfer transfer) throws IOException {
        float[] rgb = c.getRGBColorComponents(null);
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = Math.min(rgb[i], transfer.of(i, rgb[i]));
        }
        return new Color(rgb[0], rgb[1], rgb[2], c.getAlpha() / 255f);
    }

    @Override
    public void drawImage(PDImage image) throws IOException {
        PDGraphicsState state = getGraphicsState();
        COSBase transfer = state.getTransfer();
        if (Transfer.of(transfer) == null) {
            super.drawImage(image);
            return;
        }
        BlendMode mode = state.getBlendMode();
        state.setTransfer(null);
        super.drawImage(image);
        state.setTransfer(transfer);
        state.setBlendMode(BlendMode.DARKEN);
        super.drawImage(image);
        state.setBlendMode(mode);
    }

    @Override
    protected void showFontGlyph(Matrix t, PDFont font, int code, Vector displacement) throws IOException {
        PDTextState text = getGraphicsState().getTextState();
        RenderingMode mode = text.getRenderingMode();
        if (!mode.isStroke() || !(font instanceof PDVectorFont outlines) || UnevenPen.isRound(getGraphicsState())) {
            super.showFontGlyph(t, font, code, displacement);
            return;
        }
        if (mode.isFill() || mode.isClip()) {
            text.setRenderingMode(withoutStroke(mode));
            super.showFontGlyph(t, font, code, displacement);
            text.setRenderingMode(mode);
        }
        AffineTransform placed = t.createAffineTransform();
        placed.concatenate(font.getFontMatrix().createAffineTransform());
        Path2D outline =
                UnevenPen.outline(new Path2D.Double(outlines.getNormalizedPath(code), placed), getGraphicsState());
        if (outline != null) {
            fillAsStroke(outline);
        }
    }

    private static RenderingMode withoutStroke(RenderingMode mode) {
        if (mode.isFill()) {
            return mode.isClip() ? RenderingMode.FILL_CLIP : RenderingMode.FILL;
        }
        return RenderingMode.NEITHER_CLIP;
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        once(form, () -> super.showForm(form));
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        once(form, () -> super.showTransparencyGroup(form));
    }

    private interface Drawing {
        void draw() throws IOException;
    }

    /** Draws a form unless it is being drawn already. */
    private void once(PDFormXObject form, Drawing drawn) throws IOException {
        if (drawing.add(form.getCOSObject())) {
            try {
                drawn.draw();
            } finally {
                drawing.remove(form.getCOSObject());
            }
        }
    }

    private @Nullable COSDictionary resource(COSName kind, COSName name) {
        COSDictionary all = getResources().getCOSObject().getCOSDictionary(kind);
        return all == null ? null : all.getCOSDictionary(name);
    }
}
