package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.edit.ContentPieces.Content;
import io.bindprep.pdf.edit.ContentPieces.Piece;
import io.bindprep.pdf.edit.ContentPieces.Way;
import io.bindprep.pdf.edit.EditedPdf.AloneMove;
import io.bindprep.pdf.ink.ContentFollower.TextPlace;
import io.bindprep.pdf.ink.InkEngine;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.jspecify.annotations.Nullable;

/**
 * Moves single things that a page paints, and nothing else. What is drawn gets a transform of its own. Text gets an offset in
 * its line and a rise, taken back behind it, as no transform may stand within a text object (ISO 32000-1:2008, Figure 9).
 */
final class LoneMarks {
    private static final Pattern SPACINGS = Pattern.compile("\\s*([-+.\\d]+)\\s+([-+.\\d]+)\\s*");
    private static final double LEAST_SIZE = 1e-3;
    private static final double ROOM_MM = 1;
    private static final double FAR_MM = 1e5;

    private final Map<Content, ContentEdits> edits = new IdentityHashMap<>();

    /** The things that a page paints, seen through a frame; null where it cannot be read whole. */
    static @Nullable List<Painted> painted(
            InkEngine engine, COSDictionary page, PageFacts facts, AffineTransform frame) {
        try {
            ContentPieces pieces = ContentPieces.of(engine, page, facts, InkEngine.NOWHERE);
            return pieces == null ? null : painted(pieces, frame);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            return null;
        }
    }

    /** The things of pieces, seen through a frame. */
    static List<Painted> painted(ContentPieces found, AffineTransform frame) {
        List<Painted> all = new ArrayList<>();
        for (Piece piece : found.pieces()) {
            all.add(new Painted(
                    piece.number(),
                    piece.way() == Way.LINE ? MarkKind.LINE : piece.kind(),
                    placed(frame, piece.box()),
                    piece.prints(),
                    fixed(piece)));
        }
        return all;
    }

    /** Bounds of a box in a frame; a transformed shape of each cost a twentieth of a page's time. */
    private static Rectangle2D placed(AffineTransform frame, Rectangle2D box) {
        double[] corners = {
            box.getMinX(), box.getMinY(), box.getMaxX(), box.getMinY(),
            box.getMaxX(), box.getMaxY(), box.getMinX(), box.getMaxY()
        };
        frame.transform(corners, 0, corners, 0, 4);
        Rectangle2D.Double placed = new Rectangle2D.Double(corners[0], corners[1], 0, 0);
        for (int i = 2; i < corners.length; i += 2) {
            placed.add(corners[i], corners[i + 1]);
        }
        return placed;
    }

    /** All that lies farther in than what moves, in user space; nowhere where no frame can be turned back. */
    static Rectangle2D away(PageFacts f, List<AloneMove> moves) {
        double mm = moves.stream().mapToDouble(m -> m.box().getMaxX()).max().orElse(0) + ROOM_MM;
        try {
            return f.toBindingEdge(moves.get(0).move().bindingEdge())
                    .createInverse()
                    .createTransformedShape(new Rectangle2D.Double(mm, -FAR_MM, FAR_MM, 2 * FAR_MM))
                    .getBounds2D();
        } catch (NoninvertibleTransformException e) {
            return InkEngine.NOWHERE;
        }
    }

    private static boolean fixed(Piece piece) {
        return piece.clips()
                || piece.masked()
                || piece.in().isMasked()
                || !piece.pattern().isEmpty()
                || piece.way() == Way.TEXT && !settable(piece);
    }

    /** Modes from 4 on clip (ISO 32000-1:2008, Table 106). */
    private static boolean settable(Piece piece) {
        TextPlace text = piece.text();
        return text != null
                && !text.vertical()
                && Math.abs(text.emSize()) > LEAST_SIZE
                && piece.textMode() < 4
                && Math.abs(text.matrix().getDeterminant()) > LEAST_SIZE * LEAST_SIZE;
    }

    Map<Content, ContentEdits> edits() {
        return edits;
    }

    /** Moves things by distances in the user space of the page, by number. */
    void move(List<Piece> pieces, Map<Integer, Point2D> moves) throws NoninvertibleTransformException {
        for (Piece piece : pieces) {
            Point2D by = moves.get(piece.number());
            if (by == null) {
                continue;
            }
            ContentEdits own = edits.computeIfAbsent(piece.in(), k -> new ContentEdits());
            TextPlace text = piece.text();
            if (piece.way() == Way.TEXT && text != null) {
                moveText(own, piece, text, by);
            } else {
                Point2D local = local(piece.ctm(), by);
                own.before(
                        piece.start(),
                        "q 1 0 0 1 " + ContentWrap.number(local.getX()) + " " + ContentWrap.number(local.getY())
                                + " cm\n");
                own.behind(piece.end(), "Q\n");
            }
        }
    }

    /** Takes text out and goes on where it ended; what cannot be measured is made to paint nothing. */
    static void leaveOut(ContentEdits own, Piece piece) {
        TextPlace text = piece.text();
        String name = name(piece);
        if (text == null || !settable(piece) || name.equals("\"")) {
            own.before(piece.start(), "3 Tr\n");
            own.behind(piece.end(), piece.textMode() + " Tr\n");
            return;
        }
        own.takeOut(piece.start(), piece.end());
        own.before(
                piece.start(),
                (name.equals("'") ? "T*\n" : "") + offset(-text.advance() / text.emSize() * 1000) + "\n");
    }

    private static String name(Piece piece) {
        return new String(
                piece.in().bytes, piece.operator(), piece.end() - piece.operator(), StandardCharsets.ISO_8859_1);
    }

    private static void moveText(ContentEdits own, Piece piece, TextPlace text, Point2D by)
            throws NoninvertibleTransformException {
        Point2D local = local(text.matrix(), by);
        double back = local.getX() / text.emSize() * 1000;
        String there = offset(-back) + ContentWrap.number(text.rise() + local.getY()) + " Ts\n";
        String home = offset(back) + ContentWrap.number(text.rise()) + " Ts\n";
        switch (name(piece)) {
            case "'" -> {
                own.before(piece.start(), "T*\n" + there);
                own.takeOut(piece.operator(), piece.end());
                own.before(piece.operator(), "Tj\n");
            }
            case "\"" -> {
                String operands = new String(
                        piece.in().bytes, piece.start(), piece.operator() - piece.start(), StandardCharsets.ISO_8859_1);
                Matcher spacings = SPACINGS.matcher(operands);
                if (!spacings.lookingAt()) {
                    return; // its own check finds it where it was
                }
                own.takeOut(piece.start(), piece.start() + spacings.end());
                own.before(piece.start(), spacings.group(1) + " Tw " + spacings.group(2) + " Tc T*\n" + there);
                own.takeOut(piece.operator(), piece.end());
                own.before(piece.operator(), "Tj\n");
            }
            default -> own.before(piece.start(), there);
        }
        own.behind(piece.end(), home);
    }

    /** Offset within a line, in thousandths of the font size to the left; the start of the line stays where it is. */
    private static String offset(double thousandths) {
        return "[" + ContentWrap.number(thousandths) + "] TJ ";
    }

    /** A distance of the page as one under a transform. */
    private static Point2D local(AffineTransform ctm, Point2D by) throws NoninvertibleTransformException {
        return ctm.createInverse().deltaTransform(by, null);
    }
}
