package io.bindprep.gauge;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import java.io.IOException;

/** A column of print on one page, from the top down, in millimetres. */
final class Column {
    private static final double STEP = 0.44;
    private static final double LEAST = 5;

    private final Ink ink;
    private final Type plain;
    private final Type bold;
    private final double left;
    private final double width;
    private double y;

    Column(Ink ink, Type plain, Type bold, double left, double top, double width) {
        this.ink = ink;
        this.plain = plain;
        this.bold = bold;
        this.left = left;
        this.y = top;
        this.width = width;
    }

    Ink ink() {
        return ink;
    }

    Type plain() {
        return plain;
    }

    Type bold() {
        return bold;
    }

    double left() {
        return left;
    }

    double width() {
        return width;
    }

    double y() {
        return y;
    }

    void to(double newY) {
        y = newY;
    }

    void down(double mm) {
        y += mm;
    }

    void heading(String text) throws IOException {
        fitted(bold, 12, text);
        down(1);
    }

    /** One line, smaller where it would be longer than the column. */
    void fitted(Type type, double points, String text) throws IOException {
        double size = sizeFor(type, points, text, width);
        y += size * STEP;
        ink.text(type, size, left, y - size * 0.1, type.lines(text, size, width).get(0));
    }

    /** The largest size, no larger than the first, at which a text keeps within that many millimetres. */
    double sizeFor(Type type, double points, String text, double room) {
        double wide = type.widthMm(type.settable(text), points);
        return wide <= room ? points : Math.max(LEAST, Math.floor(points * room / wide * 4) / 4);
    }

    /** Wrapped text. */
    void paragraph(double points, String text) throws IOException {
        for (String line : plain.lines(text, points, width)) {
            y += points * STEP;
            ink.text(plain, points, left, y - points * 0.1, line);
        }
    }

    /** Height of wrapped text. */
    double height(double points, String text) {
        return plain.lines(text, points, width).size() * points * STEP;
    }
}
