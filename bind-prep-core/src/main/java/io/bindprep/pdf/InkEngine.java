package io.bindprep.pdf;

import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.InkState.Tone;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.SetMatrix;
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
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Interprets a page's content and hands each painted outline that reaches the strip to a collector.
 *
 * <p>No image is decoded, no colour converted and no area computed away from the strip. PDFBox keeps the matrices and the
 * text state; everything else of the graphics state is {@link InkState}. One engine serves one document, page by page.
 */
final class InkEngine extends PDFStreamEngine {
    private static final int MOST_NESTED = 24;
    private static final int MOST_STATES = 4_000;

    private final Fonts fonts;
    private final Layers layers;
    private final Budget budget;
    private final Deque<InkState> saved = new ArrayDeque<>();
    private final Deque<Boolean> contentShown = new ArrayDeque<>();
    private final Set<COSStream> wholeForms = Collections.newSetFromMap(new IdentityHashMap<>());
    private final PathBuilder path = new PathBuilder();
    private InkState ink = new InkState(Clip.of(new Rectangle2D.Double()));
    private StripCollector out = new StripCollector(new Rectangle2D.Double(), new AffineTransform());
    private int hidden;
    private int nested;
    private int glyphNested;
    private int compatibility;
    private @Nullable MarkKind forced;
    private int clipRule = -1;
    private Path2D.@Nullable Double run;
    private @Nullable String problem;

    InkEngine(Fonts fonts, Layers layers, Budget budget) {
        this.fonts = fonts;
        this.layers = layers;
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
        addOperator(new Concatenate(this));
        addOperator(new SetMatrix(this));
    }

    /** Runs one page; what it paints in the strip goes to the collector. */
    void run(PDPage page, Rectangle2D visible, StripCollector collector) throws IOException {
        budget.startPage();
        out = collector;
        saved.clear();
        contentShown.clear();
        ink = new InkState(Clip.of(visible));
        hidden = 0;
        nested = 0;
        glyphNested = 0;
        compatibility = 0;
        forced = null;
        clipRule = -1;
        run = null;
        problem = null;
        path.clear();
        COSBase contents = page.getCOSObject().getDictionaryObject(COSName.CONTENTS);
        if (contents != null && !StreamCheck.wholePage(contents)) {
            problem("its drawing instructions break off");
        }
        processPage(page);
        endUnclosed();
        AnnotationPass.run(this, page, layers, collector);
    }

    private void endUnclosed() {
        contentShown.clear();
        hidden = 0;
    }

    /** Why the page was not read whole; null where it was. */
    @Nullable
    String problem() {
        return problem;
    }

    void problem(String what) {
        if (problem == null) {
            problem = what;
        }
    }

    // ---- operators

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        budget.operator();
        String name = operator.getName();
        try {
            if (!graphics(name, operator, operands)) {
                super.processOperator(operator, operands);
            }
        } catch (IOException
                | ArithmeticException
                | ClassCastException
                | IndexOutOfBoundsException
                | IllegalArgumentException
                | IllegalStateException
                | NullPointerException
                | java.util.NoSuchElementException e) {
            problem("its operator \"" + name + "\" cannot be carried out");
        }
    }

    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e) {
        problem("its operator \"" + operator.getName() + "\" cannot be carried out");
    }

    @Override
    protected void unsupportedOperator(Operator operator, List<COSBase> operands) {
        if (compatibility == 0) {
            problem("it holds an unknown operator");
        }
    }

    private boolean graphics(String name, Operator operator, List<COSBase> o) throws IOException {
        switch (name) {
            case "m" -> path.move(ctm(), num(o, 0), num(o, 1));
            case "l" -> path.line(ctm(), num(o, 0), num(o, 1));
            case "c" -> path.curve(ctm(), num(o, 0), num(o, 1), num(o, 2), num(o, 3), num(o, 4), num(o, 5));
            case "v" -> path.curveFromHere(ctm(), num(o, 0), num(o, 1), num(o, 2), num(o, 3));
            case "y" -> path.curve(ctm(), num(o, 0), num(o, 1), num(o, 2), num(o, 3), num(o, 2), num(o, 3));
            case "h" -> path.close();
            case "re" -> path.rectangle(ctm(), num(o, 0), num(o, 1), num(o, 2), num(o, 3));
            case "S" -> paint(-1, true, false);
            case "s" -> paint(-1, true, true);
            case "f", "F" -> paint(Path2D.WIND_NON_ZERO, false, false);
            case "f*" -> paint(Path2D.WIND_EVEN_ODD, false, false);
            case "B" -> paint(Path2D.WIND_NON_ZERO, true, false);
            case "B*" -> paint(Path2D.WIND_EVEN_ODD, true, false);
            case "b" -> paint(Path2D.WIND_NON_ZERO, true, true);
            case "b*" -> paint(Path2D.WIND_EVEN_ODD, true, true);
            case "n" -> paint(-1, false, false);
            case "W" -> clipRule = Path2D.WIND_NON_ZERO;
            case "W*" -> clipRule = Path2D.WIND_EVEN_ODD;
            case "w" -> ink.lineWidth = num(o, 0);
            case "J" -> ink.cap = (int) num(o, 0);
            case "j" -> ink.join = (int) num(o, 0);
            case "M" -> ink.miter = num(o, 0);
            case "d" -> ExtGState.dash(ink, (COSArray) o.get(0), num(o, 1));
            case "q" -> saveGraphicsState();
            case "Q" -> restoreGraphicsState();
            case "gs" -> extGState((COSName) o.get(0));
            case "Tf" -> font((COSName) o.get(0), (float) num(o, 1));
            case "sh" -> shade();
            case "Do" -> xobject((COSName) o.get(0));
            case "BI" -> image(Tone.INK);
            case "BMC" -> contentShown.push(true);
            case "BDC" -> marked(o);
            case "EMC" -> endMarked();
            case "BX" -> compatibility++;
            case "EX" -> compatibility = Math.max(0, compatibility - 1);
            case "MP", "DP", "ri", "i", "d0", "d1" -> {}
            default -> {
                return colour(name, o);
            }
        }
        return true;
    }

    private boolean colour(String name, List<COSBase> o) {
        switch (name) {
            case "g", "rg", "k", "G", "RG", "K", "cs", "CS", "sc", "scn", "SC", "SCN" -> {}
            default -> {
                return false;
            }
        }
        if (!isShouldProcessColorOperators()) {
            return true;
        }
        switch (name) {
            case "g", "rg" -> fill(ColourSpace.GRAY, o);
            case "k" -> fill(ColourSpace.CMYK, o);
            case "G", "RG" -> stroke(ColourSpace.GRAY, o);
            case "K" -> stroke(ColourSpace.CMYK, o);
            case "cs" -> {
                ink.fillSpace = ColourSpace.of(o.get(0), getResources());
                ink.fill = ink.fillSpace.initial();
            }
            case "CS" -> {
                ink.strokeSpace = ColourSpace.of(o.get(0), getResources());
                ink.stroke = ink.strokeSpace.initial();
            }
            case "sc", "scn" -> ink.fill = ink.fillSpace.tone(o);
            default -> ink.stroke = ink.strokeSpace.tone(o);
        }
        return true;
    }

    private void fill(ColourSpace space, List<COSBase> o) {
        ink.fillSpace = space;
        ink.fill = space.tone(o);
    }

    private void stroke(ColourSpace space, List<COSBase> o) {
        ink.strokeSpace = space;
        ink.stroke = space.tone(o);
    }

    private static double num(List<COSBase> o, int i) {
        return ((org.apache.pdfbox.cos.COSNumber) o.get(i)).floatValue();
    }

    private Matrix ctm() {
        return getGraphicsState().getCurrentTransformationMatrix();
    }

    // ---- state

    @Override
    public void saveGraphicsState() {
        if (saved.size() >= MOST_STATES) {
            throw new Budget.Spent("it saves the graphics state more than " + MOST_STATES + " times over");
        }
        super.saveGraphicsState();
        saved.push(ink);
        ink = ink.copy();
    }

    @Override
    public void restoreGraphicsState() {
        // one Q too many is common and harmless: readers ignore it
        if (getGraphicsStackSize() > 1 && !saved.isEmpty()) {
            super.restoreGraphicsState();
            ink = saved.pop();
        }
    }

    private void extGState(COSName name) throws IOException {
        if (!(resource(COSName.EXT_G_STATE, name) instanceof COSDictionary state)) {
            problem("its graphics state \"" + name.getName() + "\" is missing");
            return;
        }
        ExtGState.apply(ink, state);
        COSArray font = state.getCOSArray(COSName.FONT);
        if (font != null && font.getObject(0) instanceof COSDictionary dictionary) {
            getGraphicsState().getTextState().setFont(fonts.get(dictionary));
            getGraphicsState()
                    .getTextState()
                    .setFontSize(((org.apache.pdfbox.cos.COSNumber) font.getObject(1)).floatValue());
        }
    }

    private void font(COSName name, float size) throws IOException {
        getGraphicsState().getTextState().setFontSize(size);
        if (!(resource(COSName.FONT, name) instanceof COSDictionary dictionary)) {
            problem("its font \"" + name.getName() + "\" is missing");
            getGraphicsState().getTextState().setFont(null);
            return;
        }
        try {
            getGraphicsState().getTextState().setFont(fonts.get(dictionary));
        } catch (IOException | RuntimeException e) {
            problem("its font \"" + name.getName() + "\" cannot be read");
            getGraphicsState().getTextState().setFont(null);
        }
    }

    private void marked(List<COSBase> o) {
        boolean shown = true;
        if (o.size() > 1 && o.get(0) instanceof COSName tag && "OC".equals(tag.getName())) {
            COSBase properties = o.get(1);
            if (properties instanceof COSName name) {
                properties = resource(COSName.PROPERTIES, name);
            }
            shown = layers.prints(properties);
        }
        contentShown.push(shown);
        hidden += shown ? 0 : 1;
    }

    private void endMarked() {
        if (!contentShown.isEmpty() && !contentShown.pop()) {
            hidden--;
        }
    }

    // ---- painting

    private void paint(int fillRule, boolean strokes, boolean close) {
        if (close) {
            path.close();
        }
        try {
            boolean near = !path.isEmpty() && hidden == 0;
            if (near && fillRule >= 0 && ink.fillAlpha > 0 && path.reaches(out, 0)) {
                boolean hides = ink.fillAlpha >= 1 && ink.plainBlend && !ink.overprint;
                Shape outline = path.flat() ? Strokes.hairline(path.outline(fillRule)) : path.outline(fillRule);
                emit(outline, ink.fill, MarkKind.ART, true, hides, "");
            }
            if (near && strokes && ink.strokeAlpha > 0) {
                strokePath();
            }
            if (clipRule >= 0) {
                ink.clip = path.isEmpty()
                        ? Clip.of(new Rectangle2D.Double())
                        : ink.clip.narrowedTo(path.outline(clipRule));
            }
        } finally {
            clipRule = -1;
            path.clear();
        }
    }

    private void strokePath() {
        AffineTransform t = ctm().createAffineTransform();
        double reach = Strokes.reach(ink, t);
        if (path.reaches(out, reach)) {
            emit(
                    Strokes.outline(path.outline(Path2D.WIND_NON_ZERO), ink, t),
                    ink.stroke,
                    MarkKind.LINE,
                    false,
                    false,
                    "");
        }
    }

    private void emit(Shape outline, Tone tone, MarkKind kind, boolean filled, boolean hides, String words) {
        MarkKind shown = glyphNested > 0 ? MarkKind.TEXT : kind;
        out.add(
                outline,
                ink.clip,
                new StripCollector.Paint(
                        forced == null ? shown : forced, tone, filled, hides && forced == null, words));
    }

    private void shade() {
        if (hidden == 0 && ink.fillAlpha > 0 && out.reaches(ink.clip.bounds())) {
            emit(ink.clip.bounds(), Tone.INK, MarkKind.ART, true, false, "");
        }
    }

    private void image(Tone tone) {
        if (hidden > 0 || ink.fillAlpha <= 0) {
            return;
        }
        Shape square = Shapes.unitSquare(ctm().createAffineTransform());
        if (out.reaches(square.getBounds2D())) {
            emit(square, tone, MarkKind.IMAGE, true, false, "");
        }
    }

    private void xobject(COSName name) throws IOException {
        if (!(resource(COSName.XOBJECT, name) instanceof COSStream stream)) {
            problem("its picture or form \"" + name.getName() + "\" is missing");
            return;
        }
        if (!layers.prints(stream.getDictionaryObject(COSName.OC))) {
            return;
        }
        String kind = stream.getNameAsString(COSName.SUBTYPE, "");
        if (kind.equals("Image")) {
            image(stream.getBoolean(COSName.IMAGE_MASK, false) ? ink.fill : Tone.INK);
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
            return; // clipped to its box, so nothing of it can reach the strip
        }
        if (ink.fillAlpha <= 0 && stream.getCOSDictionary(COSName.GROUP) != null) {
            return;
        }
        if (!wholeForms.contains(stream)) {
            if (StreamCheck.whole(stream)) {
                wholeForms.add(stream);
            } else {
                problem("a form in it breaks off");
            }
        }
        InkState inner = ink.copy();
        if (stream.getCOSDictionary(COSName.GROUP) != null) {
            inner.fillAlpha = 1;
            inner.strokeAlpha = 1;
        }
        if (outline != null) {
            inner.clip = inner.clip.narrowedTo(outline);
        }
        nest(inner, () -> showForm(form));
    }

    private static Shape quad(AffineTransform t, PDRectangle box) {
        return Shapes.quad(t, box.getLowerLeftX(), box.getLowerLeftY(), box.getUpperRightX(), box.getUpperRightY());
    }

    /** An annotation's appearance, with everything in it an annotation. */
    void annotation(PDAnnotation annotation, PDAppearanceStream appearance, Clip page) throws IOException {
        forced = MarkKind.ANNOTATION;
        try {
            nest(new InkState(page), () -> processAnnotation(annotation, appearance));
        } finally {
            forced = null;
        }
    }

    private interface Body {
        void run() throws IOException;
    }

    private void nest(InkState inner, Body body) throws IOException {
        if (nested >= MOST_NESTED) {
            throw new Budget.Spent("its forms are nested more than " + MOST_NESTED + " deep");
        }
        InkState outer = ink;
        int depth = saved.size();
        int contents = contentShown.size();
        PathBuilder.Kept kept = path.keep();
        ink = inner;
        nested++;
        try {
            body.run();
        } finally {
            nested--;
            ink = outer;
            while (saved.size() > depth) {
                saved.pop();
            }
            while (contentShown.size() > contents) {
                endMarked();
            }
            path.restore(kept);
        }
    }

    // ---- text

    @Override
    public void showTextString(byte[] string) throws IOException {
        run = null;
        super.showTextString(string);
        endRun(List.of(new COSString(string)));
    }

    @Override
    public void showTextStrings(COSArray array) throws IOException {
        run = null;
        super.showTextStrings(array);
        endRun(array);
    }

    private void endRun(Iterable<? extends COSBase> strings) {
        Path2D.Double outline = run;
        run = null;
        PDFont font = getGraphicsState().getTextState().getFont();
        if (outline == null || font == null) {
            return;
        }
        String words = Fonts.words(font, strings);
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
            emit(outline, ink.fill, MarkKind.TEXT, true, false, words);
        }
    }

    private void strokeText(Path2D outline, String words) {
        if (ink.strokeAlpha > 0) {
            Shape stroked = Strokes.outline(outline, ink, ctm().createAffineTransform());
            emit(stroked, ink.stroke, MarkKind.TEXT, false, false, words);
        }
    }

    @Override
    protected void showGlyph(Matrix t, PDFont font, int code, Vector displacement) throws IOException {
        budget.glyph();
        if (hidden > 0 || !paintsText()) {
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

    @Override
    protected void showType3Glyph(Matrix t, PDType3Font font, int code, Vector displacement) throws IOException {
        if (!Type3.mayReach(t, font, out)) {
            return;
        }
        glyphNested++;
        try {
            nest(ink.copy(), () -> super.showType3Glyph(t, font, code, displacement));
        } finally {
            glyphNested--;
        }
    }

    private @Nullable COSBase resource(COSName kind, COSName name) {
        PDResources resources = getResources();
        COSDictionary all = resources == null ? null : resources.getCOSObject().getCOSDictionary(kind);
        return all == null ? null : all.getDictionaryObject(name);
    }
}
