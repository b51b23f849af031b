package io.bindprep.pdf.syntax;

import java.util.AbstractList;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSFloat;
import org.jspecify.annotations.Nullable;

/** Operands before an operator: numbers and strings stay plain, and become PDFBox's objects only for who asks. */
public final class Operands extends AbstractList<COSBase> {
    /** No operator takes more than some dozens; this many is a page of garbage. */
    private static final int MOST = 100_000;

    private float[] numbers = new float[16];
    /** Null for a number; a {@link ShownText} or an object of PDFBox. */
    private @Nullable Object[] others = new @Nullable Object[16];

    private ShownText[] pool = {new ShownText()};
    private int size;
    private int pooled;

    @Override
    public void clear() {
        size = 0;
        pooled = 0;
    }

    @Override
    public int size() {
        return size;
    }

    void add(float number) {
        grow();
        others[size] = null;
        numbers[size++] = number;
    }

    void put(COSBase object) {
        grow();
        others[size++] = object;
    }

    /** A new string or array to be filled. */
    ShownText add(boolean array) {
        grow();
        if (pooled == pool.length) {
            pool = Arrays.copyOf(pool, pooled * 2);
            for (int i = pooled; i < pool.length; i++) {
                pool[i] = new ShownText();
            }
        }
        ShownText parts = pool[pooled++];
        parts.clear(array);
        others[size++] = parts;
        return parts;
    }

    private void grow() {
        if (size >= MOST) {
            throw new Budget.Spent("it holds more than " + MOST + " operands in a row without an operator");
        }
        if (size == numbers.length) {
            numbers = Arrays.copyOf(numbers, size * 2);
            others = Arrays.copyOf(others, size * 2);
        }
    }

    /** Leaves the last of them only. */
    void last(int count) {
        int more = size - count;
        if (more > 0) {
            System.arraycopy(numbers, more, numbers, 0, count);
            System.arraycopy(others, more, others, 0, count);
            size = count;
        }
    }

    boolean isNumber(int i) {
        return i < size && others[i] == null;
    }

    /** A number; whoever asks for one that is not there learns it by the same exceptions as from a list of objects. */
    public float number(int i) {
        if (i >= size) {
            throw new IndexOutOfBoundsException(i);
        }
        if (others[i] != null) {
            throw new ClassCastException("no number");
        }
        return numbers[i];
    }

    /** A string, or an array of strings and numbers; null where it is neither. */
    @Nullable
    public ShownText parts(int i) {
        return i < size && others[i] instanceof ShownText parts ? parts : null;
    }

    @Override
    public COSBase get(int i) {
        if (i >= size) {
            throw new IndexOutOfBoundsException(i);
        }
        Object other = others[i];
        if (other == null) {
            return new COSFloat(numbers[i]);
        }
        return other instanceof ShownText parts ? parts.toCos() : (COSBase) other;
    }
}
