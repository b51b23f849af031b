package io.bindprep.pdf.jpx;

import java.awt.Rectangle;
import java.io.IOException;

/** A JPEG 2000 picture, of which a region is decoded at a time. */
public interface JpxSource {
    /**
     * Reads what the file says of the picture, and decodes nothing yet. A reader that was added to ImageIO for this format
     * goes before our own decoder: whoever added it wants it.
     *
     * @throws IOException where it is no JPEG 2000, or one of a kind that is not decoded
     */
    static JpxSource open(byte[] file) throws IOException {
        JpxSource added = AddedReader.find(file);
        return added == null ? JpxPicture.read(file) : added;
    }

    /** Dots of a row. */
    int width();

    /** Rows of dots. */
    int height();

    int components();

    /**
     * The picture at half its resolution, and half of that, as often as its coding allows.
     *
     * @param times most times that it is halved
     */
    JpxSource halved(int times) throws IOException;

    /**
     * Decodes a region.
     *
     * @param region in dots from the upper left
     * @param given channels of the colour space that the document names, which goes before the file's own; 0 for none
     * @param indexed true if samples are numbers of colours, to be left as they are
     * @param clock asked now and then; what it throws ends the work
     * @throws IOException where the file is damaged or breaks off: what is missing must not pass as blank
     */
    Channels decode(Rectangle region, int given, boolean indexed, Runnable clock) throws IOException;
}
