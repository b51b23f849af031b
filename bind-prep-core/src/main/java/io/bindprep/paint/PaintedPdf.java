package io.bindprep.paint;

import io.bindprep.wording.Printable;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.jspecify.annotations.Nullable;

/**
 * A document of our own: typefaces embedded, to be printed at full size, the same strokes giving the same bytes.
 *
 * <p>One page is drawn on at a time; asking for another finishes the one before.
 */
public final class PaintedPdf implements Closeable {
    private final PDDocument document = new PDDocument();
    private final AnyScript others = new AnyScript();
    private final Type plain;
    private final Type bold;
    private @Nullable PDPageContentStream stream;

    /**
     * An empty document.
     *
     * @throws IOException where the typefaces cannot be read
     */
    public PaintedPdf() throws IOException {
        plain = Type.load(document, "Roboto-Regular.ttf", others);
        bold = Type.load(document, "Roboto-Bold.ttf", others);
    }

    /** The typeface for text. */
    public Type plain() {
        return plain;
    }

    /** The typeface for headings. */
    public Type bold() {
        return bold;
    }

    /** Number of pages. */
    public int pages() {
        return document.getNumberOfPages();
    }

    /**
     * A new page at the end, to draw on until another is asked for.
     *
     * @throws IOException where the page before cannot be finished
     */
    public Ink page(double widthMm, double heightMm) throws IOException {
        finishPage();
        PDPage page = new PDPage(
                new PDRectangle((float) (widthMm * Ink.POINTS_PER_MM), (float) (heightMm * Ink.POINTS_PER_MM)));
        document.addPage(page);
        PDPageContentStream next = new PDPageContentStream(document, page);
        stream = next;
        return new Ink(next, heightMm);
    }

    /**
     * A page that is there already, to draw over what is on it.
     *
     * @param page its number, from 1
     * @throws IOException where the page before cannot be finished
     */
    public Ink over(int page) throws IOException {
        finishPage();
        PDPage there = document.getPage(page - 1);
        PDPageContentStream next =
                new PDPageContentStream(document, there, PDPageContentStream.AppendMode.APPEND, true, true);
        stream = next;
        return new Ink(next, there.getMediaBox().getHeight() / Ink.POINTS_PER_MM);
    }

    private void finishPage() throws IOException {
        if (stream != null) {
            stream.close();
            stream = null;
        }
    }

    /**
     * Writes the document; the stream stays open.
     *
     * @param title what viewers show as its name; controls are left out
     * @throws IOException where the stream cannot be written
     */
    public void save(String title, OutputStream out) throws IOException {
        finishPage();
        document.getDocumentInformation().setTitle(Printable.with(" ", title));
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
        viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        viewer.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(viewer);
        others.finish();
        // else the id would hold the time of day
        document.setDocumentId(0L);
        document.save(out);
    }

    @Override
    public void close() throws IOException {
        finishPage();
        document.close();
    }
}
