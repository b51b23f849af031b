package io.bindprep.pdf.document;

import io.bindprep.pdf.syntax.ObjectReader;
import io.bindprep.pdf.syntax.Scanner;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * Objects in object streams (ISO 32000-1:2008, 7.5.7), each read when it is asked for.
 *
 * <p>PDFBox parses a stream's objects all at once and keeps them: on long books most are destinations and links that no
 * check ever looks at.
 */
final class ObjectStreams {
    /** Unpacked streams kept for the next object out of them. */
    private static final int MOST_KEPT = 16;
    /** Larger ones are PDFBox's to read. */
    private static final int MOST_BYTES = 16 * 1024 * 1024;

    private final Map<Long, Unpacked> kept = new LinkedHashMap<>(32, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Unpacked> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** A stream unpacked and where in it the object of each number begins; nowhere where PDFBox is to read it. */
    private record Unpacked(Scanner in, Map<Long, Integer> offsets) {}

    /** Returns true if this can read a stream; else it is for PDFBox. */
    boolean reads(long streamNumber, COSStream stream) throws IOException {
        return !unpacked(streamNumber, stream).offsets.isEmpty();
    }

    /** An object of a stream; null where there is none of that number. */
    @Nullable
    COSBase object(long streamNumber, COSStream stream, long number, COSDocument document) throws IOException {
        Unpacked unpacked = unpacked(streamNumber, stream);
        Integer offset = unpacked.offsets.get(number);
        if (offset == null) {
            return null;
        }
        unpacked.in.seek(offset);
        return new ObjectReader(unpacked.in, document).object(0);
    }

    private Unpacked unpacked(long number, COSStream stream) throws IOException {
        Unpacked known = kept.get(number);
        if (known == null) {
            byte[] bytes;
            try (InputStream in = stream.createInputStream()) {
                bytes = in.readNBytes(MOST_BYTES);
            }
            known = new Unpacked(new Scanner(bytes), bytes.length < MOST_BYTES ? offsets(bytes, stream) : Map.of());
            kept.put(number, known);
        }
        return known;
    }

    /** None where the table makes no sense or names a number twice. */
    private static Map<Long, Integer> offsets(byte[] bytes, COSStream stream) throws IOException {
        int count = stream.getInt(COSName.N, 0);
        int first = stream.getInt(COSName.FIRST, 0);
        Map<Long, Integer> offsets = new HashMap<>();
        Scanner in = new Scanner(bytes);
        for (int i = 0; i < count && in.position() < first; i++) {
            long number = whole(in);
            long offset = whole(in);
            if (number < 0
                    || offset < 0
                    || first + offset > bytes.length
                    || offsets.put(number, (int) (first + offset)) != null) {
                return Map.of();
            }
        }
        return offsets;
    }

    private static long whole(Scanner in) throws IOException {
        int c = in.skipSpace();
        return c >= '0' && c <= '9' && in.number() ? in.whole() : -1;
    }
}
