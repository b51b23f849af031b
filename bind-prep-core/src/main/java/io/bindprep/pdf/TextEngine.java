package io.bindprep.pdf;

import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.InkState.Tone;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.text.BeginText;
import org.apache.pdfbox.contentstream.operator.text.EndText;
import org.apache.pdfbox.contentstream.operator.text.MoveText;
import org.apache.pdfbox.contentstream.operator.text.MoveTextSetLeading;
import org.apache.pdfbox.contentstream.operator.text.NextLine;
import org.apache.pdfbox.contentstream.operator.text.SetCharSpacing;
import org.apache.pdfbox.contentstream.operator.text.SetTextHorizontalScaling;
import org.apache.pdfbox.contentstream.operator.text.SetTextLeading;
import org.apache.pdfbox.contentstream.operator.text.SetTextRenderingMode;
import org.apache.pdfbox.contentstream.operator.text.SetTextRise;
import org.apache.pdfbox.contentstream.operator.text.SetWordSpacing;
import org.apache.pdfbox.contentstream.operator.text.ShowText;
import org.apache.pdfbox.contentstream.operator.text.ShowTextAdjusted;
import org.apache.pdfbox.contentstream.operator.text.ShowTextLine;
import org.apache.pdfbox.contentstream.operator.text.ShowTextLineAndSpace;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/** Text: glyphs that come near the strip are gathered into one outline for each operator that shows text. */
abstract class TextEngine extends StateEngine {
    private final Budget budget;
    StripCollector out = new StripCollector(new Rectangle2D.Double(), new AffineTransform());
    BasicsCollector basics = BasicsCollector.ofNothing();
    private Path2D.@Nullable Double run;
    boolean clippingText;
    /** Whether the text being painted is in a font that is not in the file. */
    boolean estimated;

    TextEngine(Fonts fonts, Layers layers, Budget budget) {
        super(fonts, layers);
        this.budget = budget;
        addOperator(new BeginText(this));
        addOperator(new EndText(this));
        addOperator(new MoveText(this));
        addOperator(new MoveTextSetLeading(this));
        addOperator(new NextLine(this));
        addOperator(new SetCharSpacing(this));
        addOperator(new SetTextHorizontalScaling(this));
        addOperator(new SetTextLeading(this));
        addOperator(new SetTextRenderingMode(this));
        addOperator(new SetTextRise(this));
        addOperator(new SetWordSpacing(this));
        addOperator(new ShowText(this));
        addOperator(new ShowTextAdjusted(this));
        addOperator(new ShowTextLine(this));
        addOperator(new ShowTextLineAndSpace(this));
    }

    /** Hands an outline in user space on. */
    abstract void emit(Shape outline, Tone tone, MarkKind kind, Way way, String words);

    /** How an outline is painted. */
    enum Way {
        STROKE,
        FILL,
        /** Filled so that what lies below is hidden where the paint is opaque. */
        COVER
    }

    /** What follows text that clips is cut by its glyphs (ISO 32000-1:2008, 9.3.6). */
    final void endTextClip() {
        ink.doubtful |= clippingText;
        clippingText = false;
    }

    @Override
    public void showTextString(byte[] string) throws IOException {
        run = null;
        super.showTextString(string);
        noteFont();
        endRun(List.of(new COSString(string)));
    }

    @Override
    public void showTextStrings(COSArray array) throws IOException {
        run = null;
        super.showTextStrings(array);
        noteFont();
        endRun(array);
    }

    private void noteFont() {
        PDFont font = getGraphicsState().getTextState().getFont();
        if (font != null && !isHidden() && paintsText()) {
            basics.font(font.getCOSObject());
        }
    }

    private void endRun(Iterable<? extends COSBase> strings) {
        Path2D.Double outline = run;
        run = null;
        clippingText |= getGraphicsState().getTextState().getRenderingMode().isClip();
        PDFont font = getGraphicsState().getTextState().getFont();
        if (outline == null || font == null) {
            return;
        }
        String words = Fonts.words(font, strings);
        estimated = !font.isEmbedded() && !(font instanceof PDType3Font);
        switch (getGraphicsState().getTextState().getRenderingMode()) {
            case STROKE, STROKE_CLIP -> strokeText(outline, words);
            case FILL_STROKE, FILL_STROKE_CLIP -> {
                fillText(outline, words);
                strokeText(outline, words);
            }
            default -> fillText(outline, words);
        }
    }

    private void fillText(Path2D outline, String words) {
        if (ink.fillAlpha > 0) {
            emit(outline, ink.fillTone(), MarkKind.TEXT, Way.FILL, words);
        }
    }

    private void strokeText(Path2D outline, String words) {
        if (ink.strokeAlpha > 0) {
            Shape stroked = Strokes.outline(outline, ink, ctm().createAffineTransform());
            emit(stroked, ink.strokeTone(), MarkKind.TEXT, Way.STROKE, words);
        }
    }

    @Override
    protected void showGlyph(Matrix t, PDFont font, int code, Vector displacement) throws IOException {
        budget.glyph();
        if (isHidden() || !paintsText()) {
            return;
        }
        super.showGlyph(t, font, code, displacement);
    }

    private boolean paintsText() {
        return switch (getGraphicsState().getTextState().getRenderingMode()) {
            case NEITHER, NEITHER_CLIP -> false;
            default -> true;
        };
    }

    @Override
    protected void showFontGlyph(Matrix t, PDFont font, int code, Vector displacement) {
        // no glyph of a usual font leaves its origin by more than this many times its size
        double reach = 2.5
                * Math.max(
                        Math.abs(t.getScaleX()) + Math.abs(t.getShearX()),
                        Math.abs(t.getScaleY()) + Math.abs(t.getShearY()));
        double x = t.getTranslateX();
        double y = t.getTranslateY();
        if (!out.reaches(x - reach, y - reach, x + reach, y + reach)) {
            return;
        }
        Path2D outline = fonts.outline(font, code);
        if (Fonts.blank(outline)) {
            return;
        }
        Path2D.Double placed = new Path2D.Double(outline, t.createAffineTransform());
        if (out.reaches(placed.getBounds2D())) {
            if (run == null) {
                run = new Path2D.Double(Path2D.WIND_NON_ZERO);
            }
            run.append(placed, false);
        }
    }
}
