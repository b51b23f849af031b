package io.bindprep.pdf.syntax;

import java.util.Arrays;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSString;

/** A string, or an array of strings and numbers, as text operators take them; used again and again. */
public final class ShownText {
    private static final int MOST_KEPT = 64 * 1024;

    private byte[] bytes = new byte[256];
    private int length;
    private float[] numbers = new float[32];
    /** Start of a string in the bytes; -1 for a number. */
    private int[] from = new int[32];

    private int[] to = new int[32];
    private int size;
    private boolean array;

    void clear(boolean isArray) {
        array = isArray;
        size = 0;
        length = 0;
        if (bytes.length > MOST_KEPT) {
            bytes = new byte[256]; // gives the memory of a huge string back
        }
        if (from.length > MOST_KEPT) {
            numbers = new float[32];
            from = new int[32];
            to = new int[32];
        }
    }

    public int size() {
        return size;
    }

    public boolean isArray() {
        return array;
    }

    public boolean isString(int i) {
        return from[i] >= 0;
    }

    public float number(int i) {
        return numbers[i];
    }

    public byte[] bytes() {
        return bytes;
    }

    public int from(int i) {
        return from[i];
    }

    public int to(int i) {
        return to[i];
    }

    void add(float number) {
        grow();
        numbers[size] = number;
        from[size++] = -1;
    }

    void beginString() {
        grow();
        from[size] = length;
    }

    void add(int b) {
        if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, length * 2);
        }
        bytes[length++] = (byte) b;
    }

    /** Takes back bytes of the string begun. */
    void cut(int n) {
        length -= n;
    }

    int begun() {
        return length - from[size];
    }

    void endString() {
        to[size++] = length;
    }

    private void grow() {
        if (size == from.length) {
            numbers = Arrays.copyOf(numbers, size * 2);
            from = Arrays.copyOf(from, size * 2);
            to = Arrays.copyOf(to, size * 2);
        }
    }

    /** The same as an object of PDFBox. */
    COSBase toCos() {
        if (!array) {
            return string(0);
        }
        COSArray all = new COSArray();
        for (int i = 0; i < size; i++) {
            all.add(isString(i) ? string(i) : new COSFloat(numbers[i]));
        }
        return all;
    }

    private COSString string(int i) {
        return new COSString(Arrays.copyOfRange(bytes, from[i], to[i]));
    }
}
