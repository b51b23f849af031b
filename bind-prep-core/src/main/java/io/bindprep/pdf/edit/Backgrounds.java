package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.page.Box;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.edit.ContentPieces.ClipPiece;
import io.bindprep.pdf.edit.ContentPieces.Content;
import io.bindprep.pdf.edit.ContentPieces.Piece;
import io.bindprep.pdf.edit.ContentPieces.Way;
import io.bindprep.pdf.ink.StripCollector;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * Chooses what of a page stays where it is while all else moves away from the binding edge, and what is left out.
 *
 * <p>What stays: broad fills, shadings and pictures that run through the binding edge, and such as begin where one that stays
 * ends and run as far along (a picture in tiles); otherwise bare paper would show beside the binding. Clips that reach the
 * edge are opened to let it show. Left out: what is told from content by its place beyond the trim, as crop marks,
 * register marks, colour bars and page information.
 */
final class Backgrounds {
    /** Half the width of a crop mark, and roundings of layout programs. */
    private static final double TOUCHING_MM = 0.1;

    private static final String PATTERN_NAME = "BindPrepPattern";

    private final PageFacts page;
    private final AffineTransform frame;
    private final AffineTransform back;
    private final double across;
    private final Rectangle2D trim;
    private final @Nullable Box keep;
    private final ContentPieces found;
    private final Map<Content, ContentEdits> edits = new IdentityHashMap<>();
    private final Set<Content> grown = new HashSet<>();
    private final Map<String, COSBase> patterns = new TreeMap<>();
    private final EnumSet<MarkKind> dropped = EnumSet.noneOf(MarkKind.class);
    private boolean stays;

    /**
     * Looks at a page.
     *
     * @param keep what may show of it: its bleed; null where nothing is beyond it
     */
    Backgrounds(ContentPieces found, PageFacts page, Move move, @Nullable Box keep)
            throws NoninvertibleTransformException {
        PageEdge edge = move.bindingEdge();
        this.page = page;
        this.found = found;
        this.keep = keep;
        this.frame = page.toBindingEdge(edge);
        this.back = move.inUserSpace(page).createInverse();
        this.across = page.across(edge).mm();
        this.trim = new Rectangle2D.Double(0, 0, across, page.along(edge).mm());
    }

    /** Edits of each content that is changed. */
    Map<Content, ContentEdits> edits() {
        return edits;
    }

    /** Contents of forms in which something stays, and whose box has to grow for it. */
    boolean grows(Content content) {
        return grown.contains(content);
    }

    /** Patterns to be added to the page's resources. */
    Map<String, COSBase> patterns() {
        return patterns;
    }

    /** Kinds of what is left out and would print. */
    Set<MarkKind> dropped() {
        return dropped;
    }

    /** Returns true if something stays. */
    boolean stays() {
        return stays;
    }

    /**
     * Decides.
     *
     * @param stay whether anything may stay
     */
    void decide(boolean stay) throws NoninvertibleTransformException {
        Set<Piece> kept = stay ? kept() : Set.of();
        stays = !kept.isEmpty();
        for (Piece piece : found.pieces()) {
            if (kept.contains(piece)) {
                String clip = keep != null && crosses(piece.box(), keep) ? clip(piece.ctm(), keep) : "";
                edits(piece)
                        .before(piece.start(), "q " + matrix(backIn(piece.ctm())) + " cm\n" + clip + pattern(piece));
                edits(piece).behind(piece.end(), "Q\n");
                for (Content c = piece.in(); c != null; c = c.outer) {
                    grown.add(c);
                }
            } else if (isBeyond(piece)) {
                leaveOut(piece);
            } else if (stays
                    && keep != null
                    && piece.way() != Way.TEXT
                    && !piece.clips()
                    && crosses(piece.box(), keep)) {
                cut(piece, keep);
            }
        }
        if (stays) {
            for (ClipPiece clip : found.clips()) {
                openClip(clip);
            }
        }
    }

    private ContentEdits edits(Piece piece) {
        return edits.computeIfAbsent(piece.in(), k -> new ContentEdits());
    }

    private Rectangle2D inFrame(Rectangle2D box) {
        return frame.createTransformedShape(box).getBounds2D();
    }

    private Set<Piece> kept() {
        Set<Piece> kept = ArtThroughEdge.of(found, frame, trim);
        if (!kept.isEmpty()) {
            // the bleed of a picture in tiles
            found.pieces().stream()
                    .filter(p -> p.way() == Way.FILL || p.way() == Way.OBJECT)
                    .filter(p -> !p.clips() && inFrame(p.box()).getMaxX() <= TOUCHING_MM && !isBeyondBleed(p))
                    .forEach(kept::add);
        }
        return kept;
    }

    /** Marks and words stand clear of the trim; what is broad may be bleed, but not on the side where it would come in. */
    private boolean isBeyond(Piece piece) {
        if (isBeyondBleed(piece)) {
            return true;
        }
        boolean thin = piece.way() == Way.LINE || piece.way() == Way.TEXT || piece.kind() == MarkKind.LINE;
        return thin && outside(piece.box(), page.trim()) || inFrame(piece.box()).getMaxX() <= TOUCHING_MM;
    }

    private boolean isBeyondBleed(Piece piece) {
        return keep != null && outside(piece.box(), keep);
    }

    private boolean outside(Rectangle2D box, Box limit) {
        double slack = TOUCHING_MM / page.mmPerUnit();
        return box.getMaxX() <= limit.x0() + slack
                || box.getMinX() >= limit.x1() - slack
                || box.getMaxY() <= limit.y0() + slack
                || box.getMinY() >= limit.y1() - slack;
    }

    private static boolean crosses(Rectangle2D box, Box limit) {
        return box.getMinX() < limit.x0()
                || box.getMaxX() > limit.x1()
                || box.getMinY() < limit.y0()
                || box.getMaxY() > limit.y1();
    }

    private void leaveOut(Piece piece) {
        switch (piece.way()) {
            case FILL, LINE -> {
                edits(piece).takeOut(piece.operator(), piece.end());
                edits(piece).before(piece.operator(), "n\n");
            }
            case TEXT -> {
                LoneMarks.leaveOut(edits(piece), piece);
            }
            case OBJECT -> edits(piece).takeOut(piece.start(), piece.end());
        }
        if (piece.prints()) {
            dropped.add(piece.way() == Way.LINE ? MarkKind.LINE : piece.kind());
        }
    }

    /** Cuts what moves at the bleed, as the clip around all is wide enough for what stays. */
    private void cut(Piece piece, Box limit) throws NoninvertibleTransformException {
        edits(piece).before(piece.start(), "q " + clip(piece.ctm(), limit));
        edits(piece).behind(piece.end(), "Q\n");
    }

    private static String clip(AffineTransform ctm, Box box) throws NoninvertibleTransformException {
        return matrix(ctm.createInverse()) + " cm " + rectangle(box.x0(), box.y0(), box.width(), box.height())
                + " re W n " + matrix(ctm) + " cm\n";
    }

    /** Lets a clip that reaches the binding edge reach it still: one across the page stays, a narrower one grows. */
    private void openClip(ClipPiece clip) throws NoninvertibleTransformException {
        Rectangle2D box = inFrame(clip.box());
        if (box.getMinX() > StripCollector.BLEED_SLACK_MM || box.getMaxX() <= TOUCHING_MM) {
            return;
        }
        ContentEdits own = edits.computeIfAbsent(clip.in(), k -> new ContentEdits());
        AffineTransform x = backIn(clip.ctm());
        if (box.getMaxX() >= across - StripCollector.BLEED_SLACK_MM) {
            own.before(clip.start(), matrix(x) + " cm\n");
            own.behind(clip.end(), matrix(x.createInverse()) + " cm\n");
        } else if (clip.rectangle()) {
            AffineTransform inverse = clip.ctm().createInverse();
            Rectangle2D moved = back.createTransformedShape(clip.box()).getBounds2D();
            Rectangle2D local = inverse.createTransformedShape(moved.createUnion(clip.box()))
                    .getBounds2D();
            own.takeOut(clip.start(), clip.end());
            own.before(
                    clip.start(),
                    rectangle(local.getX(), local.getY(), local.getWidth(), local.getHeight()) + " re W n\n");
        }
    }

    /** A pattern is fixed to the page and moved with it, so what stays is filled with the one that does not. */
    private String pattern(Piece piece) {
        if (piece.pattern().isEmpty() || piece.in().outer != null) {
            return "";
        }
        COSDictionary all = piece.in().resources.getCOSDictionary(COSName.PATTERN);
        COSBase pattern = all == null ? null : all.getItem(COSName.getPDFName(piece.pattern()));
        if (pattern == null || uncoloured(all, piece.pattern())) {
            return "";
        }
        String name = PATTERN_NAME + piece.pattern().replaceAll("[^A-Za-z0-9]", "") + patterns.size();
        patterns.put(name, pattern);
        return "/Pattern cs /" + name + " scn\n";
    }

    private static boolean uncoloured(COSDictionary patterns, String name) {
        COSDictionary pattern = patterns.getCOSDictionary(COSName.getPDFName(name));
        return pattern == null || pattern.getInt(COSName.PAINT_TYPE, 1) == 2;
    }

    /** Inverse of the move for what is drawn under a transform. */
    private AffineTransform backIn(AffineTransform ctm) throws NoninvertibleTransformException {
        AffineTransform x = ctm.createInverse();
        x.concatenate(back);
        x.concatenate(ctm);
        return x;
    }

    private static String matrix(AffineTransform t) {
        double[] six = new double[6];
        t.getMatrix(six);
        StringBuilder text = new StringBuilder();
        for (double v : six) {
            text.append(text.isEmpty() ? "" : " ").append(ContentWrap.number(v));
        }
        return text.toString();
    }

    private static String rectangle(double x, double y, double width, double height) {
        return ContentWrap.number(x) + " " + ContentWrap.number(y) + " " + ContentWrap.number(width) + " "
                + ContentWrap.number(height);
    }
}
