package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import io.bindprep.page.BleedStrip;
import io.bindprep.page.Box;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.PageTree;
import io.bindprep.pdf.ink.InkEngine;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.proof.ProofPage;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * A PDF whose pages' content is moved or drawn over, or that gets or loses pages. What pages paint stays the streams that
 * it was, with more put before and behind them; whatever points into a moved page moves with it. No file is changed.
 */
public final class EditedPdf {
    private final PDDocument document;
    private final DocumentFacts facts;
    private final Identity sha256;
    private final PageOrder order;
    private final ContentWrap content;
    private final PageContent within;
    private final PatternMove patterns;
    private final AnnotationMove annotations = new AnnotationMove();
    private final PageReferences references = new PageReferences();
    private final List<Integer> unmarked = new ArrayList<>();
    private boolean drawMarks;
    private boolean packed;
    private @Nullable ProofPainter painter;
    private @Nullable BleedMirror bleed;
    private final InkEngine engine;

    /**
     * A document to change.
     *
     * @param sha256 its digest, waited for only when it is saved
     */
    public EditedPdf(
            PDDocument document, DocumentFacts facts, Identity sha256, List<PageTree.Entry> pages, InkEngine engine) {
        this.document = document;
        this.facts = facts;
        this.sha256 = sha256;
        this.order = new PageOrder(document.getDocumentCatalog().getCOSObject(), pages);
        this.content = new ContentWrap(document.getDocument());
        this.engine = engine;
        this.within = new PageContent(document.getDocument(), engine);
        this.patterns = new PatternMove(document.getDocument());
    }

    /** Digest of the file, which may still be at work. */
    public interface Identity {
        String await() throws UnreadableInputException;
    }

    /** Returns true if the file's permissions let its pages be changed (ISO 32000-1:2008, Table 22, bit 4). */
    public boolean mayChange() {
        return document.getCurrentAccessPermission().canModify();
    }

    /** Returns true if the file is encrypted; what is saved is not. */
    public boolean encrypted() {
        return document.isEncrypted();
    }

    /** Number of digital signatures; a change makes each of them void. */
    public int signatures() {
        return Signatures.count(document.getDocumentCatalog().getCOSObject());
    }

    /** Standards for archives and press that the file claims to keep to, such as "PDF/A-2b" or "PDF/X-4"; empty for none. */
    public List<String> claims() {
        return Claims.of(
                document.getDocument().getTrailer(),
                document.getDocumentCatalog().getCOSObject());
    }

    /** Takes such claims out; output intents stay. */
    public void dropClaims() {
        Claims.drop(
                document.getDocument().getTrailer(),
                document.getDocumentCatalog().getCOSObject());
    }

    /** Takes void signatures out; what they show on a page stays. */
    public void dropSignatures() {
        Signatures.drop(document.getDocumentCatalog().getCOSObject());
    }

    /** Fate of what reaches over the binding edge of a page that moves. */
    public enum Beyond {
        /** It moves with the rest, and what lay beyond the edge comes in. */
        MOVES,
        /** Tints and pictures that run through the edge stay in their place, the rest moves. */
        STAYS,
        /** It moves with the rest, cut at the bleed or, where none is declared, at the trim. */
        CUT
    }

    /**
     * Moves all that a page shows, once for each page. What stands beyond the bleed, such as printer's marks, is left out:
     * marks that moved would have the page cut in the wrong place.
     *
     * @param beyond what becomes of what reaches over the page's edge
     * @return kinds of what was left out; none where nothing stood beyond the trim that would come in
     */
    public Set<MarkKind> move(int page, Move move, Beyond beyond) {
        PageFacts f = facts.pages().get(page - 1);
        COSDictionary own = order.page(page);
        AffineTransform t = move.inUserSpace(f);
        Box keep = beyond == Beyond.CUT || ContentWrap.hasRoomForMarks(f) ? ContentWrap.bleed(f) : null;
        COSBase resources = order.inherited(page, COSName.RESOURCES);
        PageContent.Changed changed = beyond == Beyond.STAYS || !f.trim().equals(f.media())
                ? within.of(whole(own, resources), f, move, keep, beyond == Beyond.STAYS)
                : PageContent.Changed.NOT;
        String first = marks(page, f);
        if (changed.bytes() == null) {
            content.wrap(own, first, t, keep);
        } else {
            Box shown = keep == null || !changed.stays() ? keep : ContentWrap.staying(keep, t);
            content.wrap(own, first, t, shown, changed.bytes());
        }
        COSBase moved = patterns.moved(resources, t);
        Map<COSName, Map<String, COSBase>> added = new HashMap<>(changed.added());
        if (!first.isEmpty()) {
            added.put(COSName.COLORSPACE, Map.of(CropMarks.COLOUR_SPACE, CropMarks.colourSpace()));
        }
        if (!added.isEmpty()) {
            COSDictionary old = dictionary(moved);
            moved = PageContent.with(old == null ? new COSDictionary() : old, added);
        }
        if (moved != resources) {
            own.setItem(COSName.RESOURCES, moved);
        }
        annotations.movePage(own, t);
        own.removeItem(COSName.getPDFName("Thumb")); // a picture of the page as it was
        references.moved(own, t);
        return changed.dropped();
    }

    /** Things that a page paints, in the frame of an edge that is bound; null where its content cannot be read whole. */
    public @Nullable List<Painted> painted(int page, PageEdge edge) {
        PageFacts f = facts.pages().get(page - 1);
        COSDictionary whole = whole(order.page(page), order.inherited(page, COSName.RESOURCES));
        return LoneMarks.painted(engine, whole, f, f.toBindingEdge(edge));
    }

    /** The same things to be kept. */
    public @Nullable PageThings things(int page, PageEdge edge) {
        return PageThings.of(
                engine,
                whole(order.page(page), order.inherited(page, COSName.RESOURCES)),
                facts.pages().get(page - 1),
                edge);
    }

    /**
     * Moves single things of a page, once for each page, and nothing else; links that lie upon them move along.
     *
     * @param moves each with the {@link Painted} things that it moves, and where they lie in the frame of its edge
     * @param known what the page paints, where that was asked for before
     */
    public void moveAlone(int page, List<AloneMove> moves, @Nullable PageThings known) {
        PageFacts f = facts.pages().get(page - 1);
        COSDictionary own = order.page(page);
        COSBase resources = order.inherited(page, COSName.RESOURCES);
        Map<Integer, Point2D> by = new TreeMap<>();
        for (AloneMove m : moves) {
            AffineTransform t = m.move().inUserSpace(f);
            m.numbers().forEach(n -> by.put(n, new Point2D.Double(t.getTranslateX(), t.getTranslateY())));
        }
        PageContent.Changed changed = within.alone(whole(own, resources), f, by, LoneMarks.away(f, moves), known);
        if (changed == null || changed.bytes() == null) {
            return; // the check of the result finds all of it where it was
        }
        content.replace(own, changed.bytes());
        COSDictionary old = dictionary(resources);
        own.setItem(COSName.RESOURCES, PageContent.with(old == null ? new COSDictionary() : old, changed.added()));
        for (AloneMove m : moves) {
            Move move = m.move();
            annotations.moveLinks(own, move.inUserSpace(f), f.toBindingEdge(move.bindingEdge()), m.box());
        }
        own.removeItem(COSName.getPDFName("Thumb")); // a picture of the page as it was
    }

    /** Move of single things, and the box that they fill in the frame of the edge that is bound. */
    public record AloneMove(Move move, Set<Integer> numbers, Rectangle2D box) {}

    /** Number of things a page refers to that are there; its copy has to have as many, see {@link CopyCheck}. */
    public int reach(int page) {
        return CopyCheck.reach(order.page(page), dictionary(order.inherited(page, COSName.RESOURCES)));
    }

    /**
     * Makes bleed at an edge of a page, once for each page, from what the page paints there.
     *
     * @param wantMm how far beyond the trim
     * @return whether it could be made; else the page is as it was
     */
    public boolean extendBleed(int page, PageEdge edge, double wantMm, List<BleedStrip> strips) {
        if (bleed == null) {
            bleed = new BleedMirror(
                    document.getDocument(), engine, new Budget(facts.pages().size()));
        }
        COSDictionary own = order.page(page);
        COSDictionary whole = whole(own, order.inherited(page, COSName.RESOURCES));
        return bleed.extend(own, whole, facts.pages().get(page - 1), edge, wantMm, strips);
    }

    /** Asks for new crop marks on pages that move. */
    public void drawMarks(boolean draw) {
        drawMarks = draw;
    }

    /** Pages that moved and have no room for crop marks, where those were asked for. */
    public List<Integer> withoutRoomForMarks() {
        return List.copyOf(unmarked);
    }

    private String marks(int page, PageFacts f) {
        String operators = drawMarks ? CropMarks.of(f) : "";
        if (operators == null) {
            unmarked.add(page);
            return "";
        }
        return operators;
    }

    private static COSDictionary whole(COSDictionary page, @Nullable COSBase resources) {
        COSDictionary whole = new COSDictionary();
        whole.setItem(COSName.CONTENTS, page.getItem(COSName.CONTENTS));
        whole.setItem(COSName.RESOURCES, resources);
        return whole;
    }

    private static @Nullable COSDictionary dictionary(@Nullable COSBase item) {
        COSBase object = item instanceof COSObject reference ? reference.getObject() : item;
        return object instanceof COSDictionary found ? found : null;
    }

    /** Puts a blank page of the same size and turn behind each of these pages, ascending numbers from 1. */
    public void blanksAfter(List<Integer> pages) {
        order.blanksAfter(pages);
    }

    /**
     * Draws a proof over a page, once for each page: layers behind its content, and an annotation for each comment.
     *
     * @return whether the layers could be drawn; where the content breaks off or asks for too much only the annotations are
     */
    public boolean proof(ProofPage proof) {
        if (painter == null) {
            packed = true; // the proof makes no claim that forbids it, and its comments are long
            painter = new ProofPainter(
                    document.getDocument(),
                    document.getDocumentCatalog().getCOSObject(),
                    new Budget(facts.pages().size()));
        }
        int page = proof.page();
        return painter.paint(
                order.page(page), facts.pages().get(page - 1), order.inherited(page, COSName.RESOURCES), proof);
    }

    /**
     * Leaves all pages out but these, ascending numbers from 1. Each keeps its label, or gets its number as one; bookmarks,
     * article threads and structure go, and links to pages left out lead nowhere.
     */
    public void only(List<Integer> pages) {
        order.only(pages);
    }

    /**
     * Writes it, the same bytes each time, without encryption; afterwards this can no longer be changed.
     *
     * @param change what was done, so that files that differ have identifiers that differ
     * @throws UnreadableInputException where the system refused the file meanwhile
     */
    public void save(OutputStream out, String change) throws UnreadableInputException, IOException {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        references.apply(catalog);
        order.apply();
        CopyWriter.write(document, sha256.await(), packed, out, change);
    }
}
