package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import java.io.IOException;

/** Draws on a page of the PDF. */
record InkPen(Ink ink, Type plain, Type bold) implements Pen {
    @Override
    public void width(double mm) throws IOException {
        ink.width(mm);
    }

    @Override
    public void dash(double... mm) throws IOException {
        ink.dash(mm);
    }

    @Override
    public void line(double x1, double y1, double x2, double y2) throws IOException {
        ink.line(x1, y1, x2, y2);
    }

    @Override
    public void box(double x, double y, double width, double height, boolean filled) throws IOException {
        ink.box(x, y, width, height, filled);
    }

    @Override
    public void oval(double centreX, double centreY, double width, double height) throws IOException {
        ink.oval(centreX, centreY, width, height);
    }

    @Override
    public void text(boolean bold, double points, double x, double baseline, String text) throws IOException {
        Type type = type(bold);
        ink.text(type, points, x, baseline, type.settable(text));
    }

    @Override
    public void centred(boolean bold, double points, double centre, double baseline, String text) throws IOException {
        Type type = type(bold);
        ink.centred(type, points, centre, baseline, type.settable(text));
    }

    @Override
    public void right(boolean bold, double points, double right, double baseline, String text) throws IOException {
        Type type = type(bold);
        ink.right(type, points, right, baseline, type.settable(text));
    }

    private Type type(boolean bold) {
        return bold ? this.bold : plain;
    }
}
