package io.bindprep.pdf.ink;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.common.function.PDFunction;
import org.jspecify.annotations.Nullable;

/** Transfer functions of the colorants red, green and blue or of all, 1 being white: ISO 32000-1:2008, 10.5. */
public final class Transfer {
    private static final int COLORANTS = 3;
    /** Lighter is white, as vector ink of 3 % is a mark. */
    private static final double WHITE = 0.98;

    private final @Nullable PDFunction[] functions;

    private Transfer(@Nullable PDFunction[] functions) {
        this.functions = functions;
    }

    /** The functions of a graphics state; null where they leave all as it is. */
    public static @Nullable Transfer of(@Nullable COSBase base) throws IOException {
        @Nullable PDFunction[] functions = new @Nullable PDFunction[COLORANTS];
        boolean any = false;
        for (int i = 0; i < COLORANTS; i++) {
            COSBase one = base instanceof COSArray several ? several.getObject(i) : base;
            functions[i] = one instanceof COSDictionary ? PDFunction.create(one) : null;
            any |= functions[i] != null;
        }
        return any ? new Transfer(functions) : null;
    }

    /** Returns true if white gets a tone. */
    boolean inksWhite() throws IOException {
        for (int i = 0; i < COLORANTS; i++) {
            if (of(i, 1) < WHITE) {
                return true;
            }
        }
        return false;
    }

    /** The value that a colorant gets, 0 to 1. */
    public float of(int colorant, float value) throws IOException {
        PDFunction function = functions[colorant];
        return function == null ? value : Math.max(0, Math.min(1, function.eval(new float[] {value})[0]));
    }
}
