package io.bindprep.pdf.syntax;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * The bytes of a page's, form's or glyph's content, unpacked as they are read, with a line break after each stream of
 * several.
 *
 * <p>Knows whether the streams were whole: PDFBox hands on what it could inflate of a broken one and only logs it, so
 * that a page cut short would look clear. The closing checksum is not asked for: some writers leave it out, and every
 * reader prints such pages whole.
 */
public final class ContentSource implements AutoCloseable {
    private static final int ZLIB_HEADER = 2;
    private static final int RAW = 8 * 1024;

    private final Budget budget;
    private final Deque<COSStream> streams = new ArrayDeque<>();
    private final boolean several;
    private boolean broken;
    private @Nullable InputStream in;
    private @Nullable Inflater inflater;
    private byte[] raw = {};

    /** Content as it stands in a dictionary: a stream or an array of them. */
    public ContentSource(@Nullable COSBase content, Budget budget) {
        this.budget = budget;
        several = content instanceof COSArray;
        if (content instanceof COSStream stream) {
            streams.add(stream);
        } else if (content instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                if (array.getObject(i) instanceof COSStream stream) {
                    streams.add(stream);
                } else {
                    broken = true;
                }
            }
        }
    }

    /** Returns true if a stream broke off or is missing; certain once all was read. */
    public boolean broken() {
        return broken;
    }

    /** All that is left; null where it is more than so many bytes. */
    public byte @Nullable [] all(int most) throws IOException {
        byte[] all = new byte[RAW];
        int n = 0;
        for (int came = fill(all, n); came > 0; came = fill(all, n)) {
            n += came;
            if (n > most) {
                return null;
            }
            all = n == all.length ? Arrays.copyOf(all, n * 2) : all;
        }
        return Arrays.copyOf(all, n);
    }

    /** Fills a buffer from an index on; returns how many bytes came, 0 at the end. */
    int fill(byte[] buffer, int from) throws IOException {
        while (true) {
            if (in == null) {
                COSStream next = streams.poll();
                if (next == null) {
                    return 0;
                }
                open(next);
            }
            int n = in == null ? 0 : inflater == null ? plain(in, buffer, from) : inflated(in, inflater, buffer, from);
            if (n > 0) {
                budget.bytes(n);
                return n;
            }
            close();
            if (several) {
                buffer[from] = '\n';
                return 1;
            }
        }
    }

    private void open(COSStream stream) throws IOException {
        if (!flateAlone(stream)) {
            broken |= !StreamCheck.whole(stream);
            in = stream.createInputStream();
            return;
        }
        in = stream.createRawInputStream();
        if (raw.length == 0) {
            raw = new byte[RAW];
        }
        if (in.readNBytes(raw, 0, ZLIB_HEADER) < ZLIB_HEADER) {
            broken |= stream.getLength() != 0;
            close();
        } else {
            inflater = new Inflater(true);
        }
    }

    private static boolean flateAlone(COSStream stream) {
        COSBase filters = stream.getFilters();
        COSBase only = filters instanceof COSArray array && array.size() == 1 ? array.getObject(0) : filters;
        return COSName.FLATE_DECODE.equals(only)
                && stream.getDictionaryObject(COSName.DECODE_PARMS) == null
                && stream.getDictionaryObject(COSName.F_DECODE_PARMS) == null;
    }

    private static int plain(InputStream packed, byte[] buffer, int from) throws IOException {
        return Math.max(0, packed.read(buffer, from, buffer.length - from));
    }

    private int inflated(InputStream packed, Inflater unpacker, byte[] buffer, int from) throws IOException {
        try {
            while (!unpacker.finished()) {
                int n = unpacker.inflate(buffer, from, buffer.length - from);
                if (n > 0) {
                    return n;
                }
                int more = unpacker.needsInput() ? packed.read(raw) : 0;
                if (more <= 0 && !unpacker.finished()) {
                    broken = true; // it ends too soon, or asks for a dictionary
                    return 0;
                }
                unpacker.setInput(raw, 0, Math.max(0, more));
            }
        } catch (DataFormatException e) {
            broken = true;
        }
        return 0;
    }

    @Override
    public void close() throws IOException {
        if (inflater != null) {
            inflater.end();
            inflater = null;
        }
        if (in != null) {
            in.close();
            in = null;
        }
    }
}
