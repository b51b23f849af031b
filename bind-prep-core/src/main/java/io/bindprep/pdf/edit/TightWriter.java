package io.bindprep.pdf.edit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.COSWriter;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;

/**
 * PDFBox's writer with a cross-reference stream of differences from row to row (PNG's Up, ISO 32000-1:2008, 7.4.4.4), which
 * packs to about a quarter.
 */
final class TightWriter extends COSWriter {
    private static final int UP = 2;

    TightWriter(OutputStream out, CompressParameters parameters) {
        super(out, parameters);
    }

    @Override
    public void visitFromStream(COSStream stream) throws IOException {
        if (COSName.XREF.equals(stream.getCOSName(COSName.TYPE)) && stream.getItem(COSName.DECODE_PARMS) == null) {
            tighten(stream);
        }
        super.visitFromStream(stream);
    }

    private static void tighten(COSStream stream) throws IOException {
        COSArray widths = stream.getCOSArray(COSName.W);
        int columns = 0;
        for (int i = 0; widths != null && i < widths.size(); i++) {
            columns += widths.get(i) instanceof COSNumber n ? n.intValue() : 0;
        }
        if (columns == 0) {
            return;
        }
        byte[] plain;
        try (InputStream in = stream.createInputStream()) {
            plain = in.readAllBytes();
        }
        try (OutputStream out = stream.createRawOutputStream()) {
            out.write(packed(plain, columns));
        }
        COSDictionary parameters = new COSDictionary();
        parameters.setDirect(true);
        parameters.setInt(COSName.PREDICTOR, 10 + UP);
        parameters.setItem(COSName.COLUMNS, COSInteger.get(columns));
        stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        stream.setItem(COSName.DECODE_PARMS, parameters);
    }

    private static byte[] packed(byte[] plain, int columns) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes)) {
            for (int at = 0; at < plain.length; at++) {
                if (at % columns == 0) {
                    out.write(UP);
                }
                out.write(at < columns ? plain[at] : plain[at] - plain[at - columns]);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("bytes in memory", e);
        }
        return bytes.toByteArray();
    }
}
