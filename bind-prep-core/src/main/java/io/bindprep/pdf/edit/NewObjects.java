package io.bindprep.pdf.edit;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Objects that a changed copy is given. */
final class NewObjects {
    /** Length of the entry that says how a stream is packed. */
    private static final int FILTER_ENTRY = "/Filter /FlateDecode\n".length();

    private NewObjects() {}

    /** A stream of a few operators, which would be no shorter packed. */
    static COSObject stream(COSDocument document, String operators) {
        return new COSObject(filled(document, operators, null));
    }

    /** A stream of many operators, packed. */
    static COSStream packed(COSDocument document, String operators) {
        return filled(document, operators, COSName.FLATE_DECODE);
    }

    /** A stream of operators, packed where that is shorter. */
    static COSObject shorter(COSDocument document, String operators) {
        COSStream packed = packed(document, operators);
        return packed.getLength() + FILTER_ENTRY < operators.length()
                ? new COSObject(packed)
                : stream(document, operators);
    }

    private static COSStream filled(COSDocument document, String operators, @Nullable COSName filter) {
        COSStream stream = document.createCOSStream();
        try (OutputStream out = stream.createOutputStream(filter)) {
            out.write(operators.getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException("a few bytes in memory", e);
        }
        return stream;
    }

    static COSArray numbers(double... values) {
        COSArray array = new COSArray();
        for (double v : values) {
            array.add(new COSFloat((float) v));
        }
        return array;
    }
}
