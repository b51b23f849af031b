package io.bindprep.pdf;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.Box;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.PageAttempt;
import io.bindprep.pdf.edit.PageThings;
import io.bindprep.pdf.ink.BasicsCollector;
import io.bindprep.pdf.ink.FoundMark;
import io.bindprep.pdf.ink.InkEngine;
import io.bindprep.pdf.ink.StripCollector;
import io.bindprep.pdf.ink.StripContent;
import io.bindprep.pdf.strip.DrawnFonts;
import io.bindprep.pdf.strip.DrawnPictures;
import io.bindprep.pdf.strip.SecondLook;
import io.bindprep.pdf.strip.StripRaster;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.problem.SharedMemory;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jspecify.annotations.Nullable;

/** Marks of each page in the strip along its binding edge; a page that cannot be looked at says why. */
final class StripScan {
    /** Reason why a page with faulty content is not looked at. */
    private static final String FAULTY = "its content cannot be read";

    /** Shared by all documents that are looked at. */
    private static final SharedMemory MEMORY = new SharedMemory();

    private final ReadPages pages;
    private final Budget budget;
    private @Nullable Budget thingsBudget;
    private InkEngine engine;
    private @Nullable InkEngine beside;
    private DrawnFonts drawnFonts = new DrawnFonts();

    StripScan(ReadPages pages) {
        this.pages = pages;
        this.budget = new Budget(pages.entries().size());
        this.engine = new InkEngine(pages.objects(), pages.layers(), budget);
    }

    /** Marks of a page, as {@link OpenedPdf#scan(int, PageEdge, double, double)}. */
    PageMarks marks(int page, PageEdge edge, double depthMm, double clearMm) {
        return PageAttempt.answer(
                () -> MEMORY.<PageMarks, IOException, NoninvertibleTransformException>run(
                        () -> look(page, edge, depthMm, clearMm)),
                FAULTY,
                why -> unread(page, why));
    }

    /** Things of a page, as {@link OpenedPdf#things}. */
    @Nullable
    PageThings things(int page, PageEdge edge) {
        forgetMany();
        if (thingsBudget == null) {
            thingsBudget = new Budget(2 * pages.entries().size()); // its time goes on while pages are scanned
        }
        InkEngine follower = beside == null ? engine.beside(thingsBudget) : beside;
        beside = follower;
        return budget.aside(
                () -> PageThings.of(follower, page(page), pages.facts().get(page - 1), edge));
    }

    private static PageMarks unread(int page, String why) {
        return new PageMarks(page, List.of(), why);
    }

    private PageMarks look(int page, PageEdge edge, double depthMm, double clearMm)
            throws IOException, NoninvertibleTransformException {
        forgetMany();
        String problem = pages.problems().get(page - 1);
        if (problem != null) {
            return unread(page, problem);
        }
        COSDictionary dictionary = page(page);
        if (contentLost(dictionary)) {
            return unread(page, "its content is missing from the file");
        }
        return read(page, dictionary, edge, depthMm, clearMm);
    }

    /** Forgets what was parsed of pages looked at before, and with it what was made of it. */
    private void forgetMany() {
        if (pages.objects().forgetMany()) {
            engine = new InkEngine(pages.objects(), pages.layers(), budget);
            beside = null;
            drawnFonts = new DrawnFonts();
        }
    }

    /** Outlines first; the strip is drawn where they leave a mark in doubt. */
    private PageMarks read(int page, COSDictionary dictionary, PageEdge edge, double depthMm, double clearMm)
            throws IOException, NoninvertibleTransformException {
        PageFacts f = pages.facts().get(page - 1);
        StripCollector collector = collector(f, edge, depthMm);
        BasicsCollector basics = new BasicsCollector(f);
        engine.run(new PDPage(dictionary), visible(f), collector, basics);
        List<FoundMark> found = collector.found();
        String problem = engine.problem();
        PageMarks marks = problem == null && SecondLook.isNeeded(found, clearMm)
                ? SecondLook.settled(page, found, lean(strip(dictionary, f, edge, depthMm)))
                : new PageMarks(page, found.stream().map(m -> m.mark).toList(), problem);
        String guess = engine.guess();
        boolean hit = marks.marks().stream().anyMatch(m -> m.kind() != MarkKind.BACKGROUND && m.nearMm() < clearMm);
        return (guess == null || hit ? marks : marks.unchecked(guess)).with(basics.basics());
    }

    private static StripCollector collector(PageFacts f, PageEdge edge, double depthMm)
            throws NoninvertibleTransformException {
        AffineTransform toFrame = f.toBindingEdge(edge);
        Rectangle2D inFrame =
                new Rectangle2D.Double(0, 0, depthMm, f.along(edge).mm());
        Rectangle2D strip =
                toFrame.createInverse().createTransformedShape(inFrame).getBounds2D();
        return new StripCollector(strip, toFrame);
    }

    /** A page's dictionary with what it inherits, read anew at each call. */
    COSDictionary page(int page) {
        return pages.entries().get(page - 1).whole(pages.objects());
    }

    /** The strip of a page to draw, with all that the page paints. */
    StripRaster.Source strip(COSDictionary page, PageFacts f, PageEdge edge, double depthMm) {
        return new StripRaster.Source(
                pages.document(),
                page,
                f,
                edge,
                depthMm,
                pages.layers(),
                budget,
                drawnFonts,
                new DrawnPictures(),
                null);
    }

    /** The same strip without what the page paints away from it. */
    StripRaster.Source lean(StripRaster.Source strip) throws IOException {
        StripContent near = engine.near(strip.page(), visible(strip.facts()), strip.near());
        return near == null ? strip : strip.of(near);
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
}
