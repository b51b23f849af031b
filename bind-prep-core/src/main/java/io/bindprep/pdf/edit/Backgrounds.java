package io.bindprep.pdf.edit;

import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.ink.Clip;
import io.bindprep.pdf.ink.StripCollector;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds in a page's own content what runs through its binding edge, and says which operators to put around it so that it stays
 * where it is while all else moves; otherwise bare paper would show beside the binding.
 *
 * <p>What stays: broad fills, shadings and pictures that reach the edge, and such as begin where one that stays ends and run
 * as far along (a picture in tiles). Clips that reach the edge are opened to let it show. What a form paints moves with the
 * form.
 */
final class Backgrounds {
    private static final double NEXT_TO_MM = 0.5;
    private static final int MOST_FILLS = 20_000;

    /** Painted outline in the binding-edge frame, and the bytes that paint it. */
    private record Fill(Rectangle2D box, int start, int end, AffineTransform ctm) {}

    private static final class State {
        private AffineTransform ctm = new AffineTransform();
        private Rectangle2D clip;

        State(Rectangle2D clip) {
            this.clip = clip;
        }

        State copy() {
            State copy = new State(clip);
            copy.ctm = new AffineTransform(ctm);
            return copy;
        }
    }

    private final @Nullable COSDictionary resources;
    private final AffineTransform frame;
    private final AffineTransform back;
    private final double across;
    private final Rectangle2D trim;
    private final Deque<State> saved = new ArrayDeque<>();
    private final List<Fill> fills = new ArrayList<>();
    private final Map<Integer, String> behind = new HashMap<>();
    private final Map<Integer, String> before = new HashMap<>();
    private State state;
    private @Nullable Rectangle2D path;
    private int pathStart;
    private int rectangles;
    private int otherSegments;
    private double[] rectangle = new double[4];
    private String clipRule = "";

    private Backgrounds(@Nullable COSDictionary resources, PageFacts page, Move move)
            throws NoninvertibleTransformException {
        PageEdge edge = move.bindingEdge();
        this.resources = resources;
        this.frame = page.toBindingEdge(edge);
        this.back = move.inUserSpace(page).createInverse();
        this.across = page.across(edge).mm();
        this.trim = new Rectangle2D.Double(0, 0, across, page.along(edge).mm());
        this.state =
                new State(frame.createInverse().createTransformedShape(trim).getBounds2D());
    }

    /**
     * Insertions into a page's content, by offset; empty where nothing is to stay or the content cannot be read.
     *
     * @param content all content streams of the page, decoded, one after the other
     */
    static TreeMap<Integer, String> staying(
            byte[] content, @Nullable COSDictionary resources, PageFacts page, Move move) {
        try {
            Backgrounds found = new Backgrounds(resources, page, move);
            found.read(new ContentTokens(content));
            return found.keep() ? found.inserts() : new TreeMap<>();
        } catch (IOException | NoninvertibleTransformException | RuntimeException e) {
            // the move itself needs none of it, and the check of the result tells what became of it
            return new TreeMap<>();
        }
    }

    private void read(ContentTokens tokens) throws IOException, NoninvertibleTransformException {
        for (ContentTokens.Step step = tokens.next(); step != null; step = tokens.next()) {
            carryOut(step);
        }
    }

    private void carryOut(ContentTokens.Step s) throws NoninvertibleTransformException {
        switch (s.name()) {
            case "q" -> saved.push(state.copy());
            case "Q" -> state = saved.isEmpty() ? state : saved.pop();
            case "cm" ->
                state.ctm.concatenate(
                        new AffineTransform(num(s, 0), num(s, 1), num(s, 2), num(s, 3), num(s, 4), num(s, 5)));
            case "m", "l" -> segment(s, 1);
            case "c" -> segment(s, 3);
            case "v", "y" -> segment(s, 2);
            case "h" -> {}
            case "re" -> rectangle(s);
            case "W", "W*" -> clipRule = s.name();
            case "f", "F", "f*", "B", "B*", "b", "b*" -> {
                if (path != null && clipRule.isEmpty()) {
                    fill(path, pathStart, s.end());
                }
                endPath(s);
            }
            case "n", "S", "s" -> endPath(s);
            case "sh" -> fill(state.clip, s.start(), s.end());
            case "Do" -> {
                if (picture(s)) {
                    fill(bounds(0, 0, 1, 1), s.start(), s.end());
                }
            }
            default -> {}
        }
    }

    private static double num(ContentTokens.Step s, int i) {
        return ((COSNumber) s.operands().get(i)).floatValue();
    }

    private boolean picture(ContentTokens.Step s) {
        COSDictionary objects = resources == null ? null : resources.getCOSDictionary(COSName.XOBJECT);
        return objects != null
                && s.operands().get(0) instanceof COSName name
                && objects.getDictionaryObject(name) instanceof COSStream stream
                && COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE));
    }

    private Rectangle2D bounds(double x0, double y0, double x1, double y1) {
        Rectangle2D local =
                new Rectangle2D.Double(Math.min(x0, x1), Math.min(y0, y1), Math.abs(x1 - x0), Math.abs(y1 - y0));
        return state.ctm.createTransformedShape(local).getBounds2D();
    }

    private void segment(ContentTokens.Step s, int points) {
        begin(s);
        otherSegments++;
        for (int i = 0; i < points; i++) {
            grow(bounds(num(s, 2 * i), num(s, 2 * i + 1), num(s, 2 * i), num(s, 2 * i + 1)));
        }
    }

    private void rectangle(ContentTokens.Step s) {
        begin(s);
        rectangles++;
        rectangle = new double[] {num(s, 0), num(s, 1), num(s, 2), num(s, 3)};
        grow(bounds(rectangle[0], rectangle[1], rectangle[0] + rectangle[2], rectangle[1] + rectangle[3]));
    }

    private void begin(ContentTokens.Step s) {
        if (path == null) {
            pathStart = s.start();
            rectangles = 0;
            otherSegments = 0;
        }
    }

    private void grow(Rectangle2D by) {
        path = path == null ? by : path.createUnion(by);
    }

    private void endPath(ContentTokens.Step s) throws NoninvertibleTransformException {
        Rectangle2D drawn = path;
        if (!clipRule.isEmpty() && drawn != null) {
            if (s.name().equals("n")) {
                openClip(drawn, s.end());
            }
            state.clip = Clip.cut(state.clip, drawn);
        }
        clipRule = "";
        path = null;
    }

    /** Lets a clip that reaches the binding edge reach it still: one across the page stays, a narrower one grows. */
    private void openClip(Rectangle2D drawn, int end) throws NoninvertibleTransformException {
        Rectangle2D box = frame.createTransformedShape(drawn).getBounds2D();
        if (box.getMinX() > StripCollector.BLEED_SLACK_MM) {
            return;
        }
        AffineTransform x = backIn(state.ctm);
        if (box.getMaxX() >= across - StripCollector.BLEED_SLACK_MM) {
            before.put(pathStart, matrix(x) + " cm\n");
            behind.put(end, matrix(x.createInverse()) + " cm\n");
        } else if (rectangles == 1 && otherSegments == 0 && clipRule.equals("W")) {
            double[] corner = {rectangle[0], rectangle[1]};
            x.transform(corner, 0, corner, 0, 1);
            before.put(
                    pathStart,
                    number(corner[0]) + " " + number(corner[1]) + " " + number(rectangle[2] * x.getScaleX()) + " "
                            + number(rectangle[3] * x.getScaleY()) + " re\n");
        }
    }

    /** Inverse of the move for what is drawn under a transform. */
    private AffineTransform backIn(AffineTransform ctm) throws NoninvertibleTransformException {
        AffineTransform x = ctm.createInverse();
        x.concatenate(back);
        x.concatenate(ctm);
        return x;
    }

    private void fill(Rectangle2D drawn, int start, int end) {
        Rectangle2D seen = Clip.cut(drawn, state.clip);
        if (seen.isEmpty()) {
            return;
        }
        Rectangle2D box = Clip.cut(frame.createTransformedShape(seen).getBounds2D(), trim);
        boolean broad = box.getWidth() >= StripCollector.TINT_MM && box.getHeight() >= StripCollector.TINT_MM;
        if (broad && fills.size() < MOST_FILLS) {
            fills.add(new Fill(box, start, end, new AffineTransform(state.ctm)));
        }
    }

    private boolean keep() throws NoninvertibleTransformException {
        List<Fill> sorted = new ArrayList<>(fills);
        sorted.sort(Comparator.comparingDouble(f -> f.box().getMinX()));
        List<Rectangle2D> kept = new ArrayList<>();
        for (Fill fill : sorted) {
            if (fill.box().getMinX() <= StripCollector.BLEED_SLACK_MM || continues(fill.box(), kept)) {
                kept.add(fill.box());
                before.put(fill.start(), "q " + matrix(backIn(fill.ctm())) + " cm\n");
                behind.put(fill.end(), "Q\n");
            }
        }
        return !kept.isEmpty();
    }

    private static boolean continues(Rectangle2D box, List<Rectangle2D> kept) {
        return kept.stream()
                .anyMatch(k -> Math.abs(k.getMaxX() - box.getMinX()) <= NEXT_TO_MM
                        && Math.abs(k.getMinY() - box.getMinY()) <= NEXT_TO_MM
                        && Math.abs(k.getMaxY() - box.getMaxY()) <= NEXT_TO_MM);
    }

    /** Ends at a place go before what begins there. */
    private TreeMap<Integer, String> inserts() {
        TreeMap<Integer, String> all = new TreeMap<>();
        behind.forEach((at, operators) -> all.put(at, "\n" + operators));
        before.forEach((at, operators) -> all.merge(at, "\n" + operators, String::concat));
        return all;
    }

    private static String matrix(AffineTransform t) {
        double[] six = new double[6];
        t.getMatrix(six);
        StringBuilder text = new StringBuilder();
        for (double v : six) {
            text.append(text.isEmpty() ? "" : " ").append(number(v));
        }
        return text.toString();
    }

    private static String number(double v) {
        return ContentWrap.number(v);
    }
}
