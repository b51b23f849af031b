package io.bindprep.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * The graphics state of a page as far as it decides whether and where ink lands.
 *
 * <p>PDFBox keeps the matrices and the text state; everything else is {@link InkState}.
 */
abstract class StateEngine extends PDFStreamEngine {
    private static final int MOST_NESTED = 24;
    private static final int MOST_STATES = 4_000;

    final Layers layers;
    final Fonts fonts;
    private final Deque<InkState> saved = new ArrayDeque<>();
    private final Deque<Boolean> contentShown = new ArrayDeque<>();
    final PathBuilder path = new PathBuilder();
    InkState ink = new InkState(Clip.of(new Rectangle2D.Double()));
    private int hidden;
    private int nested;
    private @Nullable String problem;

    StateEngine(Fonts fonts, Layers layers) {
        this.fonts = fonts;
        this.layers = layers;
    }

    final void reset(Rectangle2D visible) {
        saved.clear();
        contentShown.clear();
        ink = new InkState(Clip.of(visible));
        hidden = 0;
        nested = 0;
        problem = null;
        path.clear();
    }

    /** Whether content belongs to a layer that does not print. */
    final boolean isHidden() {
        return hidden > 0;
    }

    /** Whether the page's own content is being read, not a form or glyph in it. */
    final boolean isTopLevel() {
        return nested == 0;
    }

    /** Marked content left open at the end of a page's content does not hide its annotations. */
    final void endUnclosed() {
        contentShown.clear();
        hidden = 0;
    }

    /** Why the page was not read whole; null where it was. */
    final @Nullable String problem() {
        return problem;
    }

    final void problem(String what) {
        if (problem == null) {
            problem = what;
        }
    }

    final void beginMarked() {
        contentShown.push(true);
    }

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

    void extGState(COSName name) throws IOException {
        if (!(resource(COSName.EXT_G_STATE, name) instanceof COSDictionary state)) {
            problem("its graphics state \"" + name.getName() + "\" is missing");
            return;
        }
        ExtGState.apply(ink, state);
        COSArray font = state.getCOSArray(COSName.FONT);
        if (font != null && font.getObject(0) instanceof COSDictionary dictionary) {
            getGraphicsState().getTextState().setFont(fonts.get(dictionary));
            getGraphicsState().getTextState().setFontSize(((COSNumber) font.getObject(1)).floatValue());
        }
    }

    void font(COSName name, float size) throws IOException {
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

    void marked(List<COSBase> o) {
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

    void endMarked() {
        if (!contentShown.isEmpty() && !contentShown.pop()) {
            hidden--;
        }
    }

    boolean colour(String name, List<COSBase> o) {
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

    void fill(ColourSpace space, List<COSBase> o) {
        ink.fillSpace = space;
        ink.fill = space.tone(o);
    }

    void stroke(ColourSpace space, List<COSBase> o) {
        ink.strokeSpace = space;
        ink.stroke = space.tone(o);
    }

    static double num(List<COSBase> o, int i) {
        return ((COSNumber) o.get(i)).floatValue();
    }

    Matrix ctm() {
        return getGraphicsState().getCurrentTransformationMatrix();
    }

    interface Body {
        void run() throws IOException;
    }

    void nest(InkState inner, Body body) throws IOException {
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

    @Nullable
    COSBase resource(COSName kind, COSName name) {
        PDResources resources = getResources();
        COSDictionary all = resources == null ? null : resources.getCOSObject().getCOSDictionary(kind);
        return all == null ? null : all.getDictionaryObject(name);
    }
}
