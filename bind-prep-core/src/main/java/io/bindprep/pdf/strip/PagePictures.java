package io.bindprep.pdf.strip;

import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.document.PageAttempt;
import io.bindprep.pdf.document.PageTree;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.picture.CloseUp;
import io.bindprep.picture.CloseUpWindow;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.Picture;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.jspecify.annotations.Nullable;

/** Draws pages for people to look at, bounded in time and size; what cannot be drawn is said, never thrown. */
public final class PagePictures {
    /** Reason why a page with faulty content is not drawn. */
    private static final String FAULTY = "its content cannot be drawn";

    /** A page and three close-ups take the time in which so many pages are read (our estimate). */
    public static final int LIKE_PAGES_READ = 20;

    /** An A4 page at about 86 dpi: its headings can be read. */
    private static final double PAGE_DOTS = 1_000;

    private static final double MOST_PAGE_DOTS_PER_MM = 6;

    /** About 300 dpi, so that a letter beside a hole is sharp. */
    private static final double CLOSE_DOTS_PER_MM = 12;

    /** PDFBox may take the whole page at the close-up's scale for a transparency group: an A4 page at 12 dots a mm is 9 million. */
    private static final double MOST_DOTS = 12_000_000;

    private final @Nullable COSBase layers;
    private final LeanDocument objects;
    private final List<PageTree.Entry> pages;
    private final List<PageFacts> facts;
    private final List<@Nullable String> problems;
    private final Budget budget;

    public PagePictures(
            @Nullable COSBase layers,
            LeanDocument objects,
            List<PageTree.Entry> pages,
            List<PageFacts> facts,
            List<@Nullable String> problems,
            Budget budget) {
        this.layers = layers;
        this.objects = objects;
        this.pages = pages;
        this.facts = facts;
        this.problems = problems;
        this.budget = budget;
    }

    /**
     * A page and pieces of its binding edge, as it would print.
     *
     * @param page page number from 1
     * @param edge the edge that is bound, as the reader sees the page
     * @param depthMm how far in from that edge the close-ups reach, millimetres; cut to the page
     * @param beyondMm how far beyond that edge the whole page is shown, millimetres
     * @param windows the stretches of the edge to enlarge
     */
    public PagePicture draw(int page, PageEdge edge, double depthMm, double beyondMm, List<CloseUpWindow> windows) {
        String problem = problems.get(page - 1);
        if (problem != null) {
            return PagePicture.none(page, problem);
        }
        budget.startPage();
        return PageAttempt.answer(
                () -> drawn(page, edge, depthMm, beyondMm, windows), FAULTY, why -> PagePicture.none(page, why));
    }

    private PagePicture drawn(int page, PageEdge edge, double depthMm, double beyondMm, List<CloseUpWindow> windows)
            throws IOException {
        PageFacts f = facts.get(page - 1);
        COSDictionary dictionary = pages.get(page - 1).whole(objects);
        double w = f.trimWidth().mm();
        double h = f.trimHeight().mm();
        double depth = Math.min(depthMm, edge.upright() ? w : h);
        PageRaster raster = new PageRaster(dictionary, f, f.trim(), layers, budget);
        double scale = Math.min(MOST_PAGE_DOTS_PER_MM, PAGE_DOTS / Math.max(w, h));
        Picture whole = PictureFile.encode(
                beyondMm == 0
                        ? raster.draw(0, 0, w, h, scale)
                        : new PageRaster(dictionary, f, f.beyond(edge, beyondMm), layers, budget)
                                .draw(
                                        0,
                                        0,
                                        w + (edge.upright() ? beyondMm : 0),
                                        h + (edge.upright() ? 0 : beyondMm),
                                        scale));
        List<CloseUp> closeUps = new ArrayList<>();
        double close = Math.min(CLOSE_DOTS_PER_MM, Math.sqrt(MOST_DOTS / (w * h)));
        for (CloseUpWindow window : windows) {
            double at = window.startMm();
            double length = window.length();
            BufferedImage image = switch (edge) {
                case LEFT -> raster.draw(0, at, depth, length, close);
                case RIGHT -> raster.draw(w - depth, at, depth, length, close);
                case TOP -> raster.draw(at, 0, length, depth, close);
                case BOTTOM -> raster.draw(at, h - depth, length, depth, close);
            };
            closeUps.add(new CloseUp(window, PictureFile.encode(image)));
        }
        return new PagePicture(page, whole, depth, beyondMm, closeUps, raster.problem());
    }
}
