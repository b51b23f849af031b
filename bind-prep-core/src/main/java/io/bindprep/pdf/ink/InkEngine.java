package io.bindprep.pdf.ink;

import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.pdf.syntax.ContentSource;
import io.bindprep.pdf.syntax.Lexer;
import io.bindprep.pdf.syntax.Operands;
import io.bindprep.pdf.syntax.Operators;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.NoSuchElementException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Interprets a page's content and hands each painted outline that reaches the strip to a collector.
 *
 * <p>No image is decoded, no colour converted and no area computed away from the strip. One engine serves one document,
 * page by page.
 */
public final class InkEngine extends FormEngine {
    private static final String BROKEN_OFF = "its drawing instructions break off";

    /** Longer content is drawn as it is; the busiest cover of 14 books has a quarter of this (measured). */
    private static final int MOST_CONTENT = 4 * 1024 * 1024;

    /** Longer content is not changed within; it can only be moved as a whole. */
    private static final int MOST_FOLLOWED = 32 * 1024 * 1024;

    /** More unknown operators of a page than these, and than one in so many, are noise; common practice, no source. */
    private static final int MOST_STRAYS = 8;

    /** No place at all, for a follower that wants every character and line. */
    public static final Rectangle2D NOWHERE = new Rectangle2D.Double(-1e9, -1e9, 0, 0);

    private static final int STRAY_SHARE = 10;

    private final LeanDocument objects;
    private int compatibility;
    private int strays;
    private int operatorsRead;
    private COSDictionary inline = new COSDictionary();
    private @Nullable ContentWalk walk;

    public InkEngine(LeanDocument objects, Layers layers, Budget budget) {
        this(new Fonts(), objects, layers, budget);
    }

    private InkEngine(Fonts fonts, LeanDocument objects, Layers layers, Budget budget) {
        super(fonts, layers, budget);
        this.objects = objects;
    }

    /** Another engine for the same document and thread with a budget of its own; it reads no font a second time. */
    public InkEngine beside(Budget own) {
        return new InkEngine(fonts, objects, layers, own);
    }

    /** Runs one page; what it paints in the strip goes to one collector, what is seen of the whole page to the other. */
    public void run(PDPage page, Rectangle2D visible, StripCollector collector, BasicsCollector whole)
            throws IOException {
        budget.startPage();
        COSDictionary dictionary = page.getCOSObject();
        begin(dictionary, visible, collector, whole);
        interpret(dictionary.getDictionaryObject(COSName.CONTENTS), false, BROKEN_OFF);
        if (!path.isEmpty()) {
            passedOver("a line or area is begun at its end and not drawn");
        }
        path.clear();
        endUnclosed();
        AnnotationPass.run(this, page, objects, layers, collector, whole);
    }

    /** A page's content without what paints away from a place; null where all of it had better be drawn. */
    @Nullable
    public StripContent near(COSDictionary page, Rectangle2D visible, Rectangle2D place) throws IOException {
        budget.again();
        StripCollector near = StripCollector.touching(place);
        begin(page, visible, near, BasicsCollector.ofNothing());
        try (ContentSource source = new ContentSource(page.getDictionaryObject(COSName.CONTENTS), budget)) {
            byte[] content = source.all(MOST_CONTENT);
            if (content == null) {
                return null;
            }
            StripSteps steps = new StripSteps(content);
            Lexer lexer = new Lexer(content);
            for (String name = lexer.next(); name != null; name = lexer.next()) {
                operator(name, lexer);
                boolean paintsNear = near.touched();
                if (paintsNear && name.equals("BI")) {
                    return null; // where its data ends is told by what follows
                }
                steps.add(name, lexer.end(), paintsNear || ink.text.mode.isClip());
            }
            return problem() == null && !lexer.broken() ? steps.nearOnly() : null;
        }
    }

    /**
     * Carries out a page's own content and that of the forms in it for a follower.
     *
     * @param visible the page in user space
     * @param inland where characters and lines are of no interest, such as {@link #NOWHERE}; null for anywhere
     * @return whether it was read whole
     */
    public boolean follow(
            COSDictionary page, Rectangle2D visible, @Nullable Rectangle2D inland, ContentFollower follower)
            throws IOException {
        budget.startPage();
        PaintedBounds painted = new PaintedBounds(visible, inland);
        begin(page, visible, painted, BasicsCollector.ofNothing());
        walk = new ContentWalk(follower, painted);
        try {
            followed(page.getDictionaryObject(COSName.CONTENTS));
            return !walk.broken() && path.isEmpty();
        } finally {
            walk = null;
            path.clear();
        }
    }

    @Override
    boolean followed(@Nullable COSBase content) throws IOException {
        if (walk == null) {
            return false;
        }
        byte[] all;
        try (ContentSource source = new ContentSource(content, budget)) {
            all = whole(source);
            walk.broken(source.broken());
        }
        Lexer lexer = new Lexer(all);
        walk.begin(all, isTopLevel() ? null : content, this);
        int start = 0;
        for (String name = lexer.next(); name != null; name = lexer.next()) {
            walk.before(name, this);
            operator(name, lexer);
            walk.after(name, start, lexer.end(), this);
            start = lexer.end();
        }
        walk.end();
        walk.broken(lexer.broken());
        return true;
    }

    /** Content of a page or form, unpacked as {@link #follow} hands it on. */
    public byte[] content(@Nullable COSBase contents) throws IOException {
        budget.startPage();
        try (ContentSource source = new ContentSource(contents, budget)) {
            return whole(source);
        }
    }

    private static byte[] whole(ContentSource source) throws IOException {
        byte[] all = source.all(MOST_FOLLOWED);
        if (all == null) {
            throw new Budget.Spent("its content is too long to be changed");
        }
        return all;
    }

    private void begin(COSDictionary dictionary, Rectangle2D visible, StripCollector collector, BasicsCollector whole) {
        COSDictionary resources = dictionary.getCOSDictionary(COSName.RESOURCES);
        reset(visible, new PDResources(resources == null ? new COSDictionary() : resources));
        out = collector;
        basics = whole;
        compatibility = 0;
        strays = 0;
        operatorsRead = 0;
        lastOperator = "";
        operators = 0;
        clippingText = false;
        beginOutermost();
    }

    @Override
    void operator(String name, Lexer read) throws IOException {
        budget.operator();
        operatorsRead++;
        if (isTopLevel()) {
            lastOperator = name;
            operators++;
        }
        inline = read.image();
        try {
            Operands operands = read.operandsTaken();
            if (!graphics(name, operands) && !text(name, operands) && compatibility == 0) {
                strayOperator(read.noise());
            }
        } catch (ClassCastException
                | IOException
                | ArithmeticException
                | IndexOutOfBoundsException
                | IllegalArgumentException
                | IllegalStateException
                | NullPointerException
                | NoSuchElementException e) {
            if (Operators.mismatched(name, read.operandsTaken())) {
                passedOver("the operands of an operator are too few or of another kind");
                return;
            }
            problem("its operator \"" + name + "\" cannot be carried out");
        }
    }

    /** Viewers pass over an operator that nobody knows; many of them are no content but noise. */
    private void strayOperator(boolean noise) {
        strays += noise ? 1 : 0;
        if (strays > MOST_STRAYS && strays * STRAY_SHARE > operatorsRead) {
            problem("it holds more than " + MOST_STRAYS + " unknown operators");
        } else {
            passedOver("an unknown operator");
        }
    }

    private boolean graphics(String name, Operands o) throws IOException {
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
            case "cm" ->
                ink.ctm = new Matrix(o.number(0), o.number(1), o.number(2), o.number(3), o.number(4), o.number(5))
                        .multiply(ink.ctm);
            case "w" -> ink.lineWidth = Math.abs(num(o, 0)); // two of three readers
            case "J" -> ink.cap = (int) num(o, 0);
            case "j" -> ink.join = (int) num(o, 0);
            case "M" -> ink.miter = num(o, 0);
            case "d" -> ExtGState.dash(ink, (COSArray) o.get(0), num(o, 1));
            case "q" -> saveGraphicsState();
            case "Q" -> restoreGraphicsState();
            case "gs" -> extGState((COSName) o.get(0));
            case "Tf" -> font((COSName) o.get(0), o.number(1));
            case "ET" -> endTextClip();
            case "sh" -> shade((COSName) o.get(0));
            case "Do" -> xobject((COSName) o.get(0));
            case "BI" -> image(inline, COSName.IM);
            case "BMC" -> beginMarked();
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
}
