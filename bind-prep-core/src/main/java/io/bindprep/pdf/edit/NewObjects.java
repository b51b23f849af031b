package io.bindprep.pdf.edit;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/** Objects that a changed copy is given. */
final class NewObjects {
    private NewObjects() {}

    /** A stream of a few operators, which would be no shorter packed. */
    static COSObject stream(COSDocument document, String operators) {
        COSStream stream = document.createCOSStream();
        try (OutputStream out = stream.createOutputStream()) {
            out.write(operators.getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException("a few bytes in memory", e);
        }
        return new COSObject(stream);
    }

    static COSArray numbers(double... values) {
        COSArray array = new COSArray();
        for (double v : values) {
            array.add(new COSFloat((float) v));
        }
        return array;
    }
}
