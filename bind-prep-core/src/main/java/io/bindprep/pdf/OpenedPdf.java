package io.bindprep.pdf;

import io.bindprep.marks.PageMarks;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.Digest;
import io.bindprep.pdf.document.DocumentTitle;
import io.bindprep.pdf.document.FileIdentity;
import io.bindprep.pdf.document.FileMarkers;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.document.OutlineReader;
import io.bindprep.pdf.document.PageBoxes;
import io.bindprep.pdf.document.PageTree;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.pdf.edit.PageThings;
import io.bindprep.pdf.ink.InkEngine;
import io.bindprep.pdf.strip.PagePictures;
import io.bindprep.pdf.strip.StripRaster;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/** An open PDF: its facts, and what each page paints along its binding edge. For one thread; close it. */
public final class OpenedPdf implements AutoCloseable {
    private final ReadPages pages;
    private final DocumentFacts facts;
    private final Digest digest;
    private final FileIdentity state;
    private final long openingNanos;
    private final StripScan scan;

    private OpenedPdf(ReadPages pages, DocumentFacts facts, Digest digest, FileIdentity state, long openingNanos) {
        this.pages = pages;
        this.facts = facts;
        this.digest = digest;
        this.state = state;
        this.openingNanos = openingNanos;
        this.scan = new StripScan(pages);
    }

    static OpenedPdf of(
            PDDocument document,
            LeanDocument objects,
            String name,
            Digest digest,
            FileMarkers ends,
            FileIdentity state,
            long begun)
            throws UnreadableInputException, IOException {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        Layers layers = new Layers(catalog);
        COSDictionary root = catalog.getCOSDictionary(COSName.PAGES);
        objects.keep(false);
        List<PageFacts> facts = new ArrayList<>();
        List<@Nullable String> problems = new ArrayList<>();
        PageTree.Found found = PageTree.walk(root, objects, page -> {
            PageBoxes.Read read = PageBoxes.read(facts.size() + 1, page);
            facts.add(read.facts());
            problems.add(read.problem());
        });
        if (found.pages().isEmpty()) {
            throw new UnreadableInputException(
                    Reason.DAMAGED, name + " is a PDF without a page.", "Ask for the file again, exported afresh.");
        }
        COSDictionary preferences = catalog.getCOSDictionary(COSName.VIEWER_PREFERENCES);
        boolean rightToLeft =
                preferences != null && "R2L".equals(preferences.getNameAsString(COSName.getPDFName("Direction")));
        DocumentFacts known = new DocumentFacts(
                name,
                DocumentTitle.read(document.getDocument().getTrailer()),
                "",
                facts,
                rightToLeft,
                Math.max(0, ends.headerAt()),
                !ends.pointerHolds(),
                found.lost(),
                OutlineReader.read(catalog, found.pages()),
                document.getCurrentAccessPermission().canPrint());
        ReadPages pages = new ReadPages(document, objects, layers, found.pages(), known.pages(), problems);
        return new OpenedPdf(pages, known, digest, state, System.nanoTime() - begun);
    }

    /** Time that opening it took, as opening it again would. */
    public long openingNanos() {
        return openingNanos;
    }

    /** The file as it was when it was opened. */
    FileIdentity state() {
        return state;
    }

    /** Facts known before content is looked at, without the file's digest. */
    public DocumentFacts facts() {
        return facts;
    }

    /**
     * The same facts with the file's digest, waited for.
     *
     * @throws UnreadableInputException where the system refused the file meanwhile
     */
    public DocumentFacts identified() throws UnreadableInputException {
        try {
            return new DocumentFacts(
                    facts.file(),
                    facts.title(),
                    digest.await(),
                    facts.pages(),
                    facts.rightToLeft(),
                    facts.bytesBeforeHeader(),
                    facts.repaired(),
                    facts.lostPages(),
                    facts.outline(),
                    facts.printable());
        } catch (IOException e) {
            throw Intake.refused(facts.file());
        }
    }

    /** The file's digest, perhaps still at work. */
    Digest digest() {
        return digest;
    }

    /**
     * Marks of a page in the strip along its binding edge.
     *
     * @param page page number from 1
     * @param edge the edge that is bound, as the reader sees the page
     * @param depthMm how far in from that edge to look
     */
    public PageMarks scan(int page, PageEdge edge, double depthMm) {
        return scan(page, edge, depthMm, depthMm);
    }

    /**
     * Marks of a page in the strip along its binding edge, drawn only where a mark in doubt lies near enough to matter.
     *
     * @param page page number from 1
     * @param edge the edge that is bound, as the reader sees the page
     * @param depthMm how far in from that edge to look
     * @param clearMm marks in doubt that begin deeper than this are taken by their outline
     */
    public PageMarks scan(int page, PageEdge edge, double depthMm, double clearMm) {
        return scan.marks(page, edge, depthMm, clearMm);
    }

    /** Things that a page paints, in the frame of an edge that is bound; null where its content cannot be read whole. */
    public @Nullable PageThings things(int page, PageEdge edge) {
        return scan.things(page, edge);
    }

    /** A page's dictionary with what it inherits, read anew at each call. */
    COSDictionary page(int page) {
        return scan.page(page);
    }

    /** The strip of a page to draw, with all that the page paints. */
    StripRaster.Source strip(COSDictionary page, PageFacts f, PageEdge edge, double depthMm) {
        return scan.strip(page, f, edge, depthMm);
    }

    /** The same strip without what the page paints away from it. */
    StripRaster.Source lean(StripRaster.Source strip) throws IOException {
        return scan.lean(strip);
    }

    /** The same document to change; what was scanned before stays as it was seen. */
    public EditedPdf edit() {
        return new EditedPdf(
                pages.document(),
                facts,
                () -> identified().sha256(),
                pages.entries(),
                new InkEngine(
                        pages.objects(),
                        pages.layers(),
                        new Budget(pages.entries().size())));
    }

    /**
     * Draws pages to look at, a bounded time in all.
     *
     * @param pages about how many will be drawn
     */
    public PagePictures pictures(int pages) {
        return new PagePictures(
                this.pages.document().getDocumentCatalog().getCOSObject().getDictionaryObject(COSName.OCPROPERTIES),
                this.pages.objects(),
                this.pages.entries(),
                this.pages.facts(),
                this.pages.problems(),
                new Budget(pages * PagePictures.LIKE_PAGES_READ));
    }

    @Override
    public void close() {
        digest.cancel();
        try {
            pages.document().close();
        } catch (IOException e) {
            // only read from: nothing is lost when its temporary store cannot be closed
            return;
        }
    }
}
