package io.bindprep.sheet;

import java.io.IOException;

/** Draws the binding edge in millimetres from a top left corner, on whatever the sheet is made of. */
interface Pen {
    void width(double mm) throws IOException;

    /** Lengths of strokes and gaps; none for an unbroken line. */
    void dash(double... mm) throws IOException;

    void line(double x1, double y1, double x2, double y2) throws IOException;

    void box(double x, double y, double width, double height, boolean filled) throws IOException;

    void oval(double centreX, double centreY, double width, double height) throws IOException;

    /** Text on its base line, to the right of a place. */
    void text(boolean bold, double points, double x, double baseline, String text) throws IOException;

    /** Text about a place. */
    void centred(boolean bold, double points, double centre, double baseline, String text) throws IOException;

    /** Text that ends at a place. */
    void right(boolean bold, double points, double right, double baseline, String text) throws IOException;
}
