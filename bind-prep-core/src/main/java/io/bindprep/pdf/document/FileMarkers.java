package io.bindprep.pdf.document;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells whether a file begins and ends as a PDF does (ISO 32000-1:2008, 7.5.2, 7.5.5), since a reader that repairs silently
 * would hide a file cut short on its way.
 *
 * @param headerAt where "%PDF-" stands; -1 where it is not found
 * @param headerDamaged whether the file begins as a header does in part, or has objects and a pointer all the same
 * @param pointer whether "startxref" stands near the end
 * @param pointerHolds whether it leads to a cross-reference table or stream
 */
public record FileMarkers(long headerAt, boolean headerDamaged, boolean pointer, boolean pointerHolds) {
    /** Print systems put up to 50 lines of comments before the header; 64 KiB is generous. */
    private static final int HEAD = 64 * 1024;

    private static final int TAIL = 8 * 1024;
    private static final Pattern START_XREF = Pattern.compile("startxref\\s+(\\d{1,18})");
    private static final Pattern XREF_OR_OBJECT =
            Pattern.compile("\\s*(xref\\b|\\d+\\s+\\d+\\s+obj\\b).*", Pattern.DOTALL);

    /** A header of which a byte or two are wrong. */
    private static final Pattern NEARLY_HEADER =
            Pattern.compile("(?i)\\s{0,16}(%P|.PD|%.DF|P?DF-)[^\r\n]{0,4}-?[12]\\.\\d");

    private static final Pattern OBJECT = Pattern.compile("\\b\\d+ \\d+ obj\\b");

    public static FileMarkers of(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            long length = in.length();
            String head = text(in, 0, HEAD);
            long header = head.indexOf("%PDF-");
            String tail = text(in, Math.max(0, length - TAIL), TAIL);
            Matcher m = START_XREF.matcher(tail);
            long offset = -1;
            while (m.find()) {
                offset = Long.parseLong(m.group(1));
            }
            boolean holds = offset >= 0 && (leads(in, offset) || header > 0 && leads(in, offset + header));
            boolean damaged = header < 0
                    && (NEARLY_HEADER.matcher(head).lookingAt()
                            || offset >= 0 && OBJECT.matcher(head).find());
            return new FileMarkers(header, damaged, offset >= 0, holds);
        }
    }

    private static boolean leads(RandomAccessFile in, long offset) throws IOException {
        return offset < in.length()
                && XREF_OR_OBJECT.matcher(text(in, offset, 48)).matches();
    }

    private static String text(RandomAccessFile in, long offset, int most) throws IOException {
        byte[] bytes = new byte[(int) Math.max(0, Math.min(most, in.length() - offset))];
        in.seek(offset);
        in.readFully(bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
