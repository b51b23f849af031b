package io.bindprep.picture;

/** A stretch of a page's binding edge, in millimetres from the page's head (from its left where bound at top or bottom). */
public record CloseUpWindow(double startMm, double endMm) {
    /** Its length, millimetres. */
    public double length() {
        return endMm - startMm;
    }

    /** Returns true if a stretch has anything in common with it. */
    public boolean meets(double fromMm, double toMm) {
        return fromMm < endMm && toMm > startMm;
    }
}
