package io.bindprep.pdf.edit;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Writes a changed document: small, without encryption, the same bytes each time. */
final class CopyWriter {
    private static final int ID_BYTES = 16;
    /** Objects packed together: the more the smaller, and the more a reader has to unpack for one; measured. */
    private static final int MOST_PACKED = 500;

    private static final int BUFFER = 1 << 16;

    private CopyWriter() {}

    static void write(PDDocument document, String sha256, boolean packed, OutputStream out, String change)
            throws IOException {
        identify(document.getDocument().getTrailer(), sha256 + " " + change);
        document.setAllSecurityToBeRemoved(true);
        COSDocument objects = document.getDocument();
        // the last part of a file that was added to may have a plain table, and the rest object streams
        boolean pack = packed
                || objects.isXRefStream()
                || objects.getXrefTable().values().stream().anyMatch(place -> place < 0);
        if (!pack) {
            // all objects get new numbers, and each number left free would take 20 bytes
            objects.setHighestXRefObjectNumber(0);
        }
        InlineObjects.keep(objects);
        // a file without object streams may be of a kind that forbids them (PDF/A-1, PDF/X-3)
        objects.setIsXRefStream(pack);
        // PDFBox writes word by word
        BufferedOutputStream buffered = new BufferedOutputStream(out, BUFFER);
        new TightWriter(buffered, pack ? new CompressParameters(MOST_PACKED) : CompressParameters.NO_COMPRESSION)
                .write(document);
        buffered.flush();
    }

    /** ISO 32000-1:2008, 14.4: the first part stays, the second changes with the file; no clock in it. */
    private static void identify(COSDictionary trailer, String what) {
        byte[] digest;
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            digest = Arrays.copyOf(sha.digest(what.getBytes(StandardCharsets.UTF_8)), ID_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
        COSArray before = trailer.getCOSArray(COSName.ID);
        boolean kept = before != null && before.size() == 2 && before.getObject(0) instanceof COSString;
        COSArray id = new COSArray();
        id.add(kept && before != null ? before.getObject(0) : new COSString(digest));
        id.add(new COSString(digest));
        trailer.setItem(COSName.ID, id);
    }
}
