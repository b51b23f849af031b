package io.bindprep.pdf;

import io.bindprep.marks.PageMarks;
import io.bindprep.page.Box;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.Digest;
import io.bindprep.pdf.document.FileIdentity;
import io.bindprep.pdf.document.FileMarkers;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.document.OutlineReader;
import io.bindprep.pdf.document.PageBoxes;
import io.bindprep.pdf.document.PageTree;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.pdf.ink.BasicsCollector;
import io.bindprep.pdf.ink.FoundMark;
import io.bindprep.pdf.ink.InkEngine;
import io.bindprep.pdf.ink.StripCollector;
import io.bindprep.pdf.ink.StripContent;
import io.bindprep.pdf.strip.DrawnFonts;
import io.bindprep.pdf.strip.DrawnPictures;
import io.bindprep.pdf.strip.PagePictures;
import io.bindprep.pdf.strip.SecondLook;
import io.bindprep.pdf.strip.StripRaster;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.problem.SharedMemory;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jspecify.annotations.Nullable;

/** An open PDF: its facts, and what each page paints along its binding edge. For one thread; close it. */
public final class OpenedPdf implements AutoCloseable {
    /** Shared by all that are looked at. */
    private static final SharedMemory MEMORY = new SharedMemory();

    private final PDDocument document;
    private final LeanDocument objects;
    private final DocumentFacts facts;
    private final List<PageTree.Entry> pages;
    private final List<@Nullable String> problems;
    private final Layers layers;
    private final Budget budget;
    private final FileIdentity state;
    private final long openingNanos;
    private InkEngine engine;
    private DrawnFonts drawnFonts = new DrawnFonts();

    private OpenedPdf(
            PDDocument document,
            LeanDocument objects,
            DocumentFacts facts,
            List<PageTree.Entry> pages,
            List<@Nullable String> problems,
            Layers layers,
            FileIdentity state,
            long openingNanos) {
        this.document = document;
        this.objects = objects;
        this.facts = facts;
        this.pages = pages;
        this.problems = problems;
        this.layers = layers;
        this.state = state;
        this.openingNanos = openingNanos;
        this.budget = new Budget(pages.size());
        this.engine = new InkEngine(objects, layers, budget);
    }

    static OpenedPdf of(
            PDDocument document,
            LeanDocument objects,
            String name,
            Digest sha256,
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
                sha256.await(),
                facts,
                rightToLeft,
                Math.max(0, ends.headerAt()),
                !ends.pointerHolds(),
                found.lost(),
                OutlineReader.read(catalog, found.pages()),
                document.getCurrentAccessPermission().canPrint());
        return new OpenedPdf(
                document, objects, known, found.pages(), problems, layers, state, System.nanoTime() - begun);
    }

    /** Time that opening it took, as opening it again would. */
    public long openingNanos() {
        return openingNanos;
    }

    /** The file as it was when it was opened. */
    FileIdentity state() {
        return state;
    }

    /** Facts known before content is looked at. */
    public DocumentFacts facts() {
        return facts;
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
        return SharedMemory.orElse(
                () -> MEMORY.run(() -> look(page, edge, depthMm, clearMm)),
                () -> new PageMarks(page, List.of(), SharedMemory.PAGE_ASKS_TOO_MUCH));
    }

    /** Forgets what was parsed of pages looked at before, and with it what was made of it. */
    private void forgetMany() {
        if (objects.forgetMany()) {
            engine = new InkEngine(objects, layers, budget);
            drawnFonts = new DrawnFonts();
        }
    }

    private PageMarks look(int page, PageEdge edge, double depthMm, double clearMm) {
        forgetMany();
        PageFacts f = facts.pages().get(page - 1);
        String problem = problems.get(page - 1);
        if (problem != null) {
            return new PageMarks(page, List.of(), problem);
        }
        COSDictionary dictionary = page(page);
        if (contentLost(dictionary)) {
            return new PageMarks(page, List.of(), "its content is missing from the file");
        }
        AffineTransform toFrame = f.toBindingEdge(edge);
        try {
            Rectangle2D strip = toFrame.createInverse()
                    .createTransformedShape(
                            new Rectangle2D.Double(0, 0, depthMm, f.along(edge).mm()))
                    .getBounds2D();
            StripCollector collector = new StripCollector(strip, toFrame);
            BasicsCollector basics = new BasicsCollector(f);
            engine.run(new PDPage(dictionary), visible(f), collector, basics);
            List<FoundMark> found = collector.found();
            PageMarks marks = engine.problem() != null || !SecondLook.isNeeded(found, clearMm)
                    ? new PageMarks(page, found.stream().map(m -> m.mark).toList(), engine.problem())
                    : SecondLook.settled(page, found, lean(strip(dictionary, f, edge, depthMm)));
            return marks.with(basics.basics());
        } catch (Budget.Spent e) {
            return new PageMarks(page, List.of(), String.valueOf(e.getMessage()));
        } catch (StackOverflowError e) {
            return new PageMarks(page, List.of(), "it is nested too deep");
        } catch (IOException | RuntimeException | NoninvertibleTransformException e) {
            return new PageMarks(page, List.of(), "its content cannot be read");
        }
    }

    /** A page's dictionary with what it inherits, read anew at each call. */
    COSDictionary page(int page) {
        return pages.get(page - 1).whole(objects);
    }

    /** The strip of a page to draw, with all that the page paints. */
    StripRaster.Source strip(COSDictionary page, PageFacts f, PageEdge edge, double depthMm) {
        return new StripRaster.Source(
                document, page, f, edge, depthMm, layers, budget, drawnFonts, new DrawnPictures(), null);
    }

    /** The same strip without what the page paints away from it. */
    StripRaster.Source lean(StripRaster.Source strip) throws IOException {
        StripContent near = engine.near(strip.page(), visible(strip.facts()), strip.near());
        return near == null ? strip : strip.of(near);
    }

    /** The same document to change; what was scanned before stays as it was seen. */
    public EditedPdf edit() {
        return new EditedPdf(document, facts, pages, new InkEngine(objects, layers, new Budget(pages.size())));
    }

    /**
     * Draws pages to look at, a bounded time in all.
     *
     * @param pages about how many will be drawn
     */
    public PagePictures pictures(int pages) {
        return new PagePictures(
                document.getDocumentCatalog().getCOSObject().getDictionaryObject(COSName.OCPROPERTIES),
                objects,
                this.pages,
                facts.pages(),
                problems,
                new Budget(pages * PagePictures.LIKE_PAGES_READ));
    }

    /** A Contents entry that leads nowhere: an empty page and a lost one look the same otherwise. */
    private static boolean contentLost(COSDictionary page) {
        COSBase item = page.getItem(COSName.CONTENTS);
        COSBase object = page.getDictionaryObject(COSName.CONTENTS);
        return item != null && (object == null || object == COSNull.NULL) && item != COSNull.NULL;
    }

    private static Rectangle2D visible(PageFacts f) {
        Box m = f.media();
        return new Rectangle2D.Double(m.x0(), m.y0(), m.width(), m.height());
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            // only read from: nothing is lost when its temporary store cannot be closed
            return;
        }
    }
}
