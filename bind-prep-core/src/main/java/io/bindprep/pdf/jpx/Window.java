package io.bindprep.pdf.jpx;

/** Coefficients or samples of a rectangle, row by row. */
final class Window {
    final int x0;
    final int y0;
    final int x1;
    final int y1;
    final float[] values;

    Window(int x0, int y0, int x1, int y1) {
        this.x0 = x0;
        this.y0 = y0;
        this.x1 = Math.max(x0, x1);
        this.y1 = Math.max(y0, y1);
        values = new float[(this.x1 - this.x0) * (this.y1 - this.y0)];
    }

    int width() {
        return x1 - x0;
    }

    int height() {
        return y1 - y0;
    }
}
