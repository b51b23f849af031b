package io.bindprep.pdf.ink;

import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.pdf.syntax.Operands;
import io.bindprep.pdf.syntax.ShownText;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/** Text: glyphs that come near the strip are gathered into one outline for each operator that shows text. */
public abstract class TextEngine extends ColourEngine {
    /** No glyph of a usual font leaves its origin by more than this many times its size; common practice, no source. */
    public static final double REACH_EMS = 2.5;
    /** No line of text is longer than so many times its size; common practice, no source. */
    private static final double FAR_EMS = 10_000;

    private static final RenderingMode[] MODES = RenderingMode.values();

    StripCollector out = new StripCollector(new Rectangle2D.Double(), new AffineTransform());
    BasicsCollector basics = BasicsCollector.ofNothing();
    private Path2D.@Nullable Double run;
    /** Bounds of the glyphs where nothing else is asked for. */
    private @Nullable Extent boxes;
    /** Size of upright text whose bounds alone are asked for; else 0. Bounds stay bounds under such a transform. */
    private double wide;

    private double high;

    boolean clippingText;
    /** Tells whether the text being painted is in a font that is not in the file. */
    boolean estimated;

    TextEngine(Fonts fonts, Layers layers, Budget budget) {
        super(fonts, layers, budget);
    }

    /** Hands an outline in user space on. */
    abstract void emit(Shape outline, Tone tone, MarkKind kind, Way way, String words);

    @Override
    final void passedOver(String fault) {
        basics.passedOver(fault);
    }

    /** Paint of an outline. */
    enum Way {
        STROKE,
        FILL,
        /** Filled so that what lies below is hidden where the paint is opaque. */
        COVER
    }

    /** Clips what follows by the glyphs of clipping text (ISO 32000-1:2008, 9.3.6). */
    final void endTextClip() {
        ink.doubtful |= clippingText;
        clippingText = false;
    }

    /** Carries out an operator of text; false where it is another. */
    final boolean text(String name, Operands o) throws IOException {
        TextState t = ink.text;
        switch (name) {
            case "BT" -> t.begin();
            case "Td" -> t.moveLine(num(o, 0), num(o, 1));
            case "TD" -> {
                t.leading = -num(o, 1);
                t.moveLine(num(o, 0), num(o, 1));
            }
            case "T*" -> t.moveLine(0, -t.leading);
            case "Tm" -> t.set(num(o, 0), num(o, 1), num(o, 2), num(o, 3), num(o, 4), num(o, 5));
            case "Tc" -> t.charSpacing = num(o, o.size() - 1);
            case "Tw" -> t.wordSpacing = num(o, 0);
            case "Tz" -> t.scale = num(o, 0) / 100;
            case "TL" -> t.leading = num(o, 0);
            case "Ts" -> t.rise = num(o, 0);
            case "Tr" -> {
                int mode = (int) num(o, 0);
                t.mode = mode < 0 || mode >= MODES.length ? t.mode : MODES[mode];
            }
            case "Tj", "TJ" -> show(o.parts(0), name.equals("TJ"));
            case "'" -> {
                t.moveLine(0, -t.leading);
                show(o.parts(0), false);
            }
            case "\"" -> {
                t.wordSpacing = num(o, 0);
                t.charSpacing = num(o, 1);
                t.moveLine(0, -t.leading);
                show(o.parts(2), false);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void show(@Nullable ShownText parts, boolean array) throws IOException {
        TextState t = ink.text;
        TextFont font = t.font;
        // no font has been set: nobody knows what would be shown, and nobody shows it
        if (parts == null || parts.isArray() != array || font == null) {
            return;
        }
        run = null;
        boxes = null;
        Matrix placed = t.rendering(ctm());
        boolean boundsAlone = out.wantsBoundsAlone()
                && t.mode == RenderingMode.FILL
                && placed.getShearX() == 0
                && placed.getShearY() == 0;
        wide = boundsAlone ? placed.getScaleX() : 0;
        high = placed.getScaleY();
        double reach = REACH_EMS
                * Math.max(
                        Math.abs(placed.getScaleX()) + Math.abs(placed.getShearX()),
                        Math.abs(placed.getScaleY()) + Math.abs(placed.getShearY()));
        for (int i = 0; i < parts.size(); i++) {
            if (parts.isString(i)) {
                if (isGuess(font)) {
                    guessedFrom(t.rendering(ctm()));
                }
                string(font, parts.bytes(), parts.from(i), parts.to(i), reach);
            } else if (font.isVertical()) {
                t.advance(0, -parts.number(i) / 1000 * t.size);
            } else {
                t.advance(-parts.number(i) / 1000 * t.size * t.scale, 0);
            }
        }
        endRun(font, parts);
    }

    /** Notes text of unknown widths that may come to the strip: it stands ahead of where the text begins. */
    private void guessedFrom(Matrix begin) {
        TextState t = ink.text;
        if (isHidden() || t.mode == RenderingMode.NEITHER || t.mode == RenderingMode.NEITHER_CLIP) {
            return;
        }
        Rectangle2D way = new Rectangle2D.Double(begin.getTranslateX(), begin.getTranslateY(), 0, 0);
        way.add(
                begin.getTranslateX() + FAR_EMS * begin.getScaleX(),
                begin.getTranslateY() + FAR_EMS * begin.getShearY());
        double em = Math.max(begin.getScalingFactorX(), begin.getScalingFactorY());
        way.setRect(way.getX() - em, way.getY() - em, way.getWidth() + 2 * em, way.getHeight() + 2 * em);
        if (way.intersects(out.strip())) {
            guesses();
        }
    }

    private void string(TextFont font, byte[] bytes, int from, int to, double reach) throws IOException {
        if (font.codes() == TextFont.Codes.MAPPED || (to - from) % 2 != 0 && font.codes() == TextFont.Codes.DOUBLE) {
            ByteArrayInputStream in = new ByteArrayInputStream(bytes, from, to - from);
            while (in.available() > 0) {
                int before = in.available();
                int code = font.code(in);
                glyph(font, code, before - in.available(), reach);
            }
        } else if (font.codes() == TextFont.Codes.DOUBLE) {
            for (int i = from; i + 1 < to; i += 2) {
                glyph(font, (bytes[i] & 0xff) << 8 | bytes[i + 1] & 0xff, 2, reach);
            }
        } else {
            for (int i = from; i < to; i++) {
                glyph(font, bytes[i] & 0xff, 1, reach);
            }
        }
    }

    private void glyph(TextFont font, int code, int length, double reach) throws IOException {
        budget.glyph();
        TextState t = ink.text;
        if (!isHidden() && t.mode != RenderingMode.NEITHER && t.mode != RenderingMode.NEITHER_CLIP) {
            paint(font, code, reach);
        }
        float spacing = length == 1 && code == ' ' ? t.charSpacing + t.wordSpacing : t.charSpacing;
        if (font.isVertical()) {
            t.advance(0, font.displacement(code).getY() * t.size + spacing);
        } else {
            t.advance((font.advance(code) * t.size + spacing) * t.scale, 0);
        }
    }

    private void paint(TextFont font, int code, double reach) throws IOException {
        if (font.isType3()) {
            type3(ink.text.rendering(ctm()), font, code);
            return;
        }
        if (font.isVertical()) {
            Matrix t = ink.text.rendering(ctm());
            t.translate(font.position(code));
            glyph(t, font, code, reach);
            return;
        }
        TextState t = ink.text;
        Matrix m = ctm();
        float e = t.rise * t.c + t.e;
        float f = t.rise * t.d + t.f;
        double x = e * m.getScaleX() + f * m.getShearX() + m.getTranslateX();
        double y = e * m.getShearY() + f * m.getScaleY() + m.getTranslateY();
        if (out.reachesThin(x - reach, y - reach, x + reach, y + reach)) {
            if (wide != 0) {
                box(x, y, fonts.box(font, code));
            } else {
                glyph(t.rendering(m), font, code, reach);
            }
        }
    }

    /** Carries out a glyph that is content of its own. */
    abstract void type3(Matrix t, TextFont font, int code) throws IOException;

    private void endRun(TextFont font, ShownText parts) throws IOException {
        clippingText |= ink.text.mode.isClip();
        if (!isHidden() && ink.text.mode != RenderingMode.NEITHER && ink.text.mode != RenderingMode.NEITHER_CLIP) {
            basics.font(font.dictionary());
        }
        Path2D.Double outline = run;
        Extent around = boxes;
        run = null;
        boxes = null;
        if (around != null) {
            fillText(around.bounds(), "");
        }
        if (outline == null) {
            return;
        }
        String words = out.wantsBoundsAlone() ? "" : Fonts.words(font, parts);
        estimated = !font.isType3() && !font.pdf().isEmbedded();
        if (estimated) {
            basics.fontStandsIn(font.dictionary()); // one in the file that cannot be read, too
        }
        switch (ink.text.mode) {
            case STROKE, STROKE_CLIP -> strokeText(outline, words);
            case FILL_STROKE, FILL_STROKE_CLIP -> {
                fillText(outline, words);
                strokeText(outline, words);
            }
            default -> fillText(outline, words);
        }
    }

    private void fillText(Shape outline, String words) {
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

    private void glyph(Matrix t, TextFont font, int code, double reach) throws IOException {
        double x = t.getTranslateX();
        double y = t.getTranslateY();
        if (!out.reachesThin(x - reach, y - reach, x + reach, y + reach)) {
            return;
        }
        Path2D outline = fonts.outline(font, code);
        if (Fonts.blank(outline)) {
            return;
        }
        Path2D.Double placed = new Path2D.Double(outline, t.createAffineTransform());
        Rectangle2D bounds = placed.getBounds2D();
        if (!out.reaches(bounds)) {
            return;
        }
        // glyph by glyph: to cut the outline of a whole line took a tenth of the time of a book
        Shape near = ink.text.mode == RenderingMode.FILL ? out.near(placed, bounds) : placed;
        if (near.getPathIterator(null).isDone()) {
            return;
        }
        if (run == null) {
            run = new Path2D.Double(Path2D.WIND_NON_ZERO);
        }
        run.append(near, false);
    }

    private void box(double x, double y, Rectangle2D box) {
        if (box.isEmpty()) {
            return;
        }
        double ax = box.getMinX() * wide + x;
        double bx = box.getMaxX() * wide + x;
        double ay = box.getMinY() * high + y;
        double by = box.getMaxY() * high + y;
        if (out.reaches(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by))) {
            boxes = boxes == null ? new Extent() : boxes;
            boxes.add(ax, ay);
            boxes.add(bx, by);
        }
    }
}
