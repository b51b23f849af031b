package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.PaintedPdf;
import io.bindprep.paint.Type;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sets one thing under the other and begins a new page where the next would not fit. */
final class Flow {
    static final double MARGIN = 11;
    private static final double FOOT = 9;

    private static final double ROW = 8.5;
    private static final double ROW_STEP = 4;
    private static final double SMALL_ROW = 7.5;

    /** Height of a row in smaller print, its rule included. */
    static final double SMALL_STEP = 4.3;

    /** Height of a heading. */
    static final double HEADING = 6.8;

    private final PaintedPdf document;
    private final SheetPaper paper;
    private final int before;
    private Ink ink;
    private double y;

    @SuppressWarnings("NullAway.Init") // the first page is opened here
    Flow(PaintedPdf document, SheetPaper paper) throws IOException {
        this.document = document;
        this.paper = paper;
        this.before = document.pages();
        newPage();
    }

    private void newPage() throws IOException {
        ink = document.page(paper.widthMm, paper.heightMm);
        y = MARGIN;
    }

    double left() {
        return MARGIN;
    }

    double room() {
        return paper.widthMm - 2 * MARGIN;
    }

    /** Place of the next thing. */
    double y() {
        return y;
    }

    Ink ink() {
        return ink;
    }

    void down(double mm) {
        y += mm;
    }

    /** Number of the sheet's page that things are set on now. */
    int page() {
        return document.pages() - before;
    }

    /** Returns true if so much still fits the page. */
    boolean fits(double mm) {
        return y + mm <= paper.heightMm - MARGIN - FOOT;
    }

    /** Makes sure of that height; returns true if it began a new page for it. */
    boolean need(double mm) throws IOException {
        boolean next = !fits(mm);
        if (next) {
            newPage();
        }
        return next;
    }

    /** Wrapped text in the full width or less, running on over pages. */
    void paragraph(Type type, double points, double indent, String text) throws IOException {
        double step = points * 0.42;
        for (String line : type.lines(text, points, room() - indent)) {
            need(step);
            y += step;
            ink.text(type, points, left() + indent, y - step * 0.22, line);
        }
    }

    /** The height that a paragraph takes, millimetres. */
    double height(Type type, double points, double indent, String text) {
        return type.lines(text, points, room() - indent).size() * points * 0.42;
    }

    /**
     * A row of a table over a rule, as high as its highest cell.
     *
     * @param shares width of each cell, of the whole
     */
    void row(Type type, List<String> cells, double[] shares) throws IOException {
        row(type, cells, shares, ROW, ROW_STEP);
    }

    /** A row in smaller print. */
    void smallRow(Type type, List<String> cells, double[] shares) throws IOException {
        row(type, cells, shares, SMALL_ROW, SMALL_STEP - 1);
    }

    private void row(Type type, List<String> cells, double[] shares, double points, double step) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            lines.add(type.lines(cells.get(i), points, room() * shares[i] - 2));
            most = Math.max(most, lines.get(i).size());
        }
        need(most * step + 1);
        double x = left();
        for (int i = 0; i < cells.size(); i++) {
            double at = y + step * 0.9;
            for (String line : lines.get(i)) {
                ink.text(type, points, x, at, line);
                at += step;
            }
            x += room() * shares[i];
        }
        down(most * step + 1);
        ink.width(0.1);
        ink.line(left(), y, left() + room(), y);
    }

    /** Begins a new page unless this one is empty. */
    void nextPage() throws IOException {
        if (y > MARGIN) {
            newPage();
        }
    }

    /** A heading over a rule, never alone at a page's foot. */
    void heading(Type bold, String text, double follows) throws IOException {
        need(HEADING + follows);
        y += HEADING - 1.2;
        ink.text(bold, 9.5, left(), y - 1.2, text.toUpperCase(Locale.ROOT));
        ink.width(0.3);
        ink.line(left(), y, left() + room(), y);
        y += 1.2;
    }

    /** Puts a foot on each of its pages, as only now their number is known. */
    void finish(Type plain, String foot) throws IOException {
        int pages = document.pages() - before;
        for (int page = 1; page <= pages; page++) {
            Ink last = document.over(before + page);
            double base = paper.heightMm - MARGIN;
            last.width(0.15);
            last.line(left(), base - 4, left() + room(), base - 4);
            String number = "page " + page + " of " + pages;
            last.right(plain, 7, left() + room(), base, number);
            double free = room() - plain.widthMm(number, 7) - 4;
            last.text(plain, 7, left(), base, plain.lines(foot, 7, free).get(0));
        }
    }
}
