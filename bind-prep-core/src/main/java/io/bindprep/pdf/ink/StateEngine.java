package io.bindprep.pdf.ink;

import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.pdf.syntax.ContentSource;
import io.bindprep.pdf.syntax.Lexer;
import io.bindprep.pdf.syntax.Operands;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
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
 * <p>Reads content by itself: PDFBox's engine and parser took two thirds of the time of books of vector drawings. What it
 * leaves to PDFBox are objects, filters and fonts.
 */
public abstract class StateEngine {
    private static final int MOST_NESTED = 24;
    /** Stands in for a font that is named and not there. */
    private static final COSDictionary UNNAMED = unnamed();

    private static final int MOST_STATES = 4_000;

    final Layers layers;
    final Fonts fonts;
    final Budget budget;
    private final Deque<InkState> saved = new ArrayDeque<>();
    private final Deque<Boolean> contentShown = new ArrayDeque<>();
    /** One for each depth of nesting, as each has buffers. */
    private final List<Lexer> lexers = new ArrayList<>();

    final PathBuilder path = new PathBuilder();
    InkState ink = new InkState(Clip.of(new Rectangle2D.Double()));
    private PDResources resources = new PDResources();
    /** Number of saved states that belong to what surrounds the content being read. */
    private int savedOutside;

    private int hidden;
    private int nested;
    /** Tells whether colour operators count: in a glyph that has the colour of its text they do not. */
    boolean coloursCount = true;

    private @Nullable String problem;
    private @Nullable String missingFont;
    private boolean missingFontShows;
    private boolean fontUnreadable;

    StateEngine(Fonts fonts, Layers layers, Budget budget) {
        this.fonts = fonts;
        this.layers = layers;
        this.budget = budget;
    }

    private static COSDictionary unnamed() {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE1);
        font.setName(COSName.BASE_FONT, "Helvetica");
        return font;
    }

    final void reset(Rectangle2D visible, PDResources ofPage) {
        saved.clear();
        savedOutside = 0;
        contentShown.clear();
        ink = new InkState(Clip.of(visible));
        resources = ofPage;
        hidden = 0;
        nested = 0;
        coloursCount = true;
        problem = null;
        missingFont = null;
        missingFontShows = false;
        fontUnreadable = false;
        path.clear();
    }

    /** Carries out an operator; the lexer that read it knows its operands. */
    abstract void operator(String name, Lexer read) throws IOException;

    /** Carries out content for a follower; false where there is none. */
    abstract boolean followed(@Nullable COSBase content) throws IOException;

    /** Reads content and carries out its operators; says as the problem what was not whole. */
    final void interpret(@Nullable COSBase content, boolean glyph, String notWhole) throws IOException {
        if (!glyph && followed(content)) {
            return;
        }
        String before = problem;
        boolean outer = coloursCount;
        coloursCount = true;
        try (ContentSource source = new ContentSource(content, budget)) {
            while (lexers.size() <= nested) {
                lexers.add(new Lexer(source));
            }
            Lexer lexer = lexers.get(nested);
            lexer.reset(source);
            boolean first = true;
            for (String name = lexer.next(); name != null; name = lexer.next()) {
                if (first) {
                    // a glyph that begins so has the colour of the text (ISO 32000-1:2008, Table 113)
                    coloursCount = !(glyph && name.equals("d1"));
                    first = false;
                }
                operator(name, lexer);
            }
            if (lexer.unclosed()) {
                passedOver("the end of its drawing instructions is left open"); // three readers show what stands before
            } else if (lexer.broken()) {
                problem(notWhole);
            }
            if (source.broken() && before == null) {
                problem = notWhole; // the cause of whatever else went wrong in it
            }
        } finally {
            coloursCount = outer;
        }
    }

    /** Returns true if content belongs to a layer that does not print. */
    final boolean isHidden() {
        return hidden > 0;
    }

    /** Returns true if the page's own content is being read, not a form or glyph in it. */
    final boolean isTopLevel() {
        return nested == 0;
    }

    /** Marked content left open at the end of a page's content does not hide its annotations. */
    final void endUnclosed() {
        contentShown.clear();
        hidden = 0;
    }

    /** Reason why the page was not read whole; null where it was. */
    public final @Nullable String problem() {
        return problem;
    }

    /** Reason why the page is not read whole unless it is hit anyway: no two readers show that text alike; null for none. */
    public final @Nullable String guess() {
        return missingFontShows
                ? "its font \"" + missingFont + (fontUnreadable ? "\" cannot be read" : "\" is missing")
                : null;
    }

    /** Returns true if a font stands in for one that is missing. */
    static boolean isGuess(TextFont font) {
        return font.dictionary() == UNNAMED;
    }

    /** Notes that visible text in such a font may come to the strip. */
    final void guesses() {
        missingFontShows = true;
    }

    final void problem(String what) {
        if (problem == null) {
            problem = what;
        }
    }

    /** Notes a fault that every viewer passes over. */
    abstract void passedOver(String fault);

    final void beginMarked() {
        contentShown.push(true);
    }

    void saveGraphicsState() {
        if (saved.size() >= MOST_STATES) {
            throw new Budget.Spent("it saves the graphics state more than " + MOST_STATES + " times over");
        }
        saved.push(ink);
        ink = ink.copy();
    }

    void restoreGraphicsState() {
        if (saved.size() > savedOutside) {
            ink = saved.pop();
        } else {
            passedOver("a Q without its q");
        }
    }

    void extGState(COSName name) throws IOException {
        if (!(resource(COSName.EXT_G_STATE, name) instanceof COSDictionary state)) {
            passedOver("the graphics state \"" + name.getName() + "\" is missing");
            return;
        }
        ExtGState.apply(ink, state);
        COSArray font = state.getCOSArray(COSName.FONT);
        if (font != null && font.getObject(0) instanceof COSDictionary dictionary) {
            ink.text.font = fonts.get(dictionary);
            ink.text.size = ((COSNumber) font.getObject(1)).floatValue();
        }
    }

    void font(COSName name, float size) throws IOException {
        ink.text.size = size;
        if (!(resource(COSName.FONT, name) instanceof COSDictionary dictionary)) {
            passedOver("the font \"" + name.getName() + "\" is missing");
            missingFont = name.getName();
            ink.text.font = fonts.get(UNNAMED); // two of three readers take some sans serif
            return;
        }
        try {
            ink.text.font = fonts.get(dictionary);
        } catch (IOException | RuntimeException e) {
            passedOver("the font \"" + name.getName() + "\" cannot be read");
            missingFont = name.getName();
            fontUnreadable = true;
            ink.text.font = fonts.get(UNNAMED);
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

    static float num(Operands o, int i) {
        return o.number(i);
    }

    Matrix ctm() {
        return ink.ctm;
    }

    final PDResources getResources() {
        return resources;
    }

    interface Body {
        void run() throws IOException;
    }

    /** Reads content inside the content: with a state and, unless they are null, resources of its own. */
    void nest(InkState inner, @Nullable PDResources own, Body body) throws IOException {
        if (nested >= MOST_NESTED) {
            throw new Budget.Spent("its forms are nested more than " + MOST_NESTED + " deep");
        }
        budget.drawing();
        InkState outer = ink;
        int outside = savedOutside;
        PDResources outerResources = resources;
        int contents = contentShown.size();
        PathBuilder.Kept kept = path.keep();
        ink = inner;
        savedOutside = saved.size();
        resources = own == null ? resources : own;
        nested++;
        try {
            body.run();
        } finally {
            nested--;
            ink = outer;
            resources = outerResources;
            while (saved.size() > savedOutside) {
                saved.pop();
            }
            savedOutside = outside;
            while (contentShown.size() > contents) {
                endMarked();
            }
            path.restore(kept);
        }
    }

    @Nullable
    COSBase resource(COSName kind, COSName name) {
        COSDictionary all = resources.getCOSObject().getCOSDictionary(kind);
        return all == null ? null : all.getDictionaryObject(name);
    }
}
