package io.bindprep.pdf.strip;

import io.bindprep.pdf.syntax.Budget;
import java.awt.Rectangle;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.DecodeOptions;
import org.apache.pdfbox.filter.DecodeResult;
import org.apache.pdfbox.filter.FilterFactory;
import org.jspecify.annotations.Nullable;

/** Unpacks a picture's samples and keeps those of a region as they come by, so that the whole is never held. */
final class Samples extends OutputStream {
    /** More than this in between two packings is no picture but an attack. */
    private static final int MOST_BETWEEN = 64 * 1024 * 1024;

    private final int row;
    private final int from;
    private final int to;
    private final int firstRow;
    private final byte[] kept;
    private long at;

    private Samples(int width, int bitsPerDot, Rectangle region) {
        row = Math.toIntExact(((long) width * bitsPerDot + 7) / 8);
        from = (int) ((long) region.x * bitsPerDot / 8);
        to = (int) (((long) (region.x + region.width) * bitsPerDot + 7) / 8);
        firstRow = region.y;
        kept = new byte[(to - from) * region.height];
    }

    /**
     * The samples of a region, row by row, each row whole bytes; null where the way they are packed asks for the whole.
     * A part of the last row that a picture does not hold is 0, as some writers leave it out.
     *
     * @param width dots of a row of the whole picture
     * @param region in dots from the upper left, beginning at a multiple of eight dots
     * @throws IOException where more is missing: it must not pass as blank
     */
    static byte @Nullable [] cut(COSStream picture, int width, int bitsPerDot, Rectangle region) throws IOException {
        List<COSName> packings = packings(picture.getFilters());
        int last = packings.size() - 1;
        COSName outermost = last < 0 ? null : packings.get(last);
        boolean photograph = COSName.DCT_DECODE.equals(outermost) || COSName.DCT_DECODE_ABBREVIATION.equals(outermost);
        Samples samples = new Samples(width, bitsPerDot, region);
        try (InputStream raw = picture.createRawInputStream()) {
            InputStream in = inner(picture, raw, packings.subList(0, Math.max(0, last)));
            if (outermost == null) {
                in.transferTo(samples);
            } else if (photograph) {
                Between part = new Between();
                decode(outermost, in, part, picture, last, new DecodeOptions(region));
                return part.size() == samples.kept.length ? part.toByteArray() : null;
            } else {
                decode(outermost, in, samples, picture, last, DecodeOptions.DEFAULT);
            }
        }
        if (samples.at < (long) samples.row * (region.y + region.height - 1)) {
            throw new IOException("a picture breaks off");
        }
        return samples.kept;
    }

    /** Returns true if the picture is packed as JPEG 2000. */
    static boolean isJpx(COSStream picture) {
        List<COSName> packings = packings(picture.getFilters());
        return !packings.isEmpty() && packings.get(packings.size() - 1).equals(COSName.JPX_DECODE);
    }

    /** The file of a picture that is packed as one, such as JPEG 2000. */
    static byte[] file(COSStream picture) throws IOException {
        List<COSName> packings = packings(picture.getFilters());
        try (InputStream raw = picture.createRawInputStream()) {
            Between file = new Between();
            inner(picture, raw, packings.subList(0, packings.size() - 1)).transferTo(file);
            return file.toByteArray();
        }
    }

    private static InputStream inner(COSStream picture, InputStream raw, List<COSName> packings) throws IOException {
        InputStream in = raw;
        for (int i = 0; i < packings.size(); i++) {
            Between between = new Between();
            decode(packings.get(i), in, between, picture, i, DecodeOptions.DEFAULT);
            in = new ByteArrayInputStream(between.toByteArray());
        }
        return in;
    }

    private static DecodeResult decode(
            COSName packing, InputStream in, OutputStream out, COSStream picture, int index, DecodeOptions options)
            throws IOException {
        return FilterFactory.INSTANCE.getFilter(packing).decode(in, out, picture, index, options);
    }

    private static List<COSName> packings(@Nullable COSBase filters) {
        List<COSName> names = new ArrayList<>();
        if (filters instanceof COSName one) {
            names.add(one);
        } else if (filters instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                if (array.getObject(i) instanceof COSName name) {
                    names.add(name);
                }
            }
        }
        return names;
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) {
        int done = 0;
        while (done < length) {
            long y = at / row;
            int x = (int) (at % row);
            int n = Math.min(length - done, row - x);
            long keptRow = y - firstRow;
            int begin = Math.max(x, from);
            int end = Math.min(x + n, to);
            if (keptRow >= 0 && keptRow * (to - from) < kept.length && begin < end) {
                int into = (int) keptRow * (to - from) + begin - from;
                System.arraycopy(bytes, offset + done + begin - x, kept, into, end - begin);
            }
            done += n;
            at += n;
        }
    }

    /** Content of one packing. */
    private static final class Between extends ByteArrayOutputStream {
        @Override
        public synchronized void write(byte[] bytes, int offset, int length) {
            bound(length);
            super.write(bytes, offset, length);
        }

        @Override
        public synchronized void write(int b) {
            bound(1);
            super.write(b);
        }

        private void bound(int more) {
            if ((long) count + more > MOST_BETWEEN) {
                throw new Budget.Spent("a picture in it unpacks to more than 64 MiB on the way");
            }
        }
    }
}
