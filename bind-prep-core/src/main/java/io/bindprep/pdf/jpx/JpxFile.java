package io.bindprep.pdf.jpx;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * A picture's boxes (ISO/IEC 15444-1 annex I), or a bare codestream.
 *
 * @param ycc true if its colours are luminance and colour differences
 * @param palette colours by their index, column after column; null for none
 * @param mapped of each channel its component and its column of the palette, -1 for none; null where channels are
 *     components
 * @param alpha the channel that holds the opacity of all; -1 for none
 */
record JpxFile(
        byte[] data,
        int from,
        int end,
        Size size,
        boolean ycc,
        int @Nullable [][] palette,
        int @Nullable [][] mapped,
        int alpha) {
    private static final int CODESTREAM = 0xff4f;
    private static final int SIZ = 0xff51;

    static JpxFile read(byte[] data) throws IOException {
        if (data.length > 2 && (data[0] & 0xff) == 0xff && data[1] == 0x4f) {
            return new JpxFile(data, 0, data.length, size(data, 0), false, null, null, -1);
        }
        Boxes boxes = new Boxes();
        boxes.read(new ByteReader(data, 0, data.length), true);
        if (boxes.from < 0) {
            throw new IOException("it holds no codestream");
        }
        Size size = size(data, boxes.from);
        return new JpxFile(data, boxes.from, boxes.end, size, boxes.ycc, boxes.palette, boxes.mapped, boxes.alpha);
    }

    private static Size size(byte[] data, int from) throws IOException {
        ByteReader in = new ByteReader(data, from, data.length);
        if (in.u16() != CODESTREAM || in.u16() != SIZ) {
            throw new IOException("its codestream begins wrongly");
        }
        return Size.read(in.part(in.u16() - 2));
    }

    private static final class Boxes {
        private int from = -1;
        private int end;
        private boolean ycc;
        private boolean coloured;
        private int @Nullable [][] palette;
        private int @Nullable [][] mapped;
        private int alpha = -1;

        void read(ByteReader in, boolean outermost) throws IOException {
            while (in.left() >= 8 && from < 0) {
                long length = in.i32() & 0xffffffffL;
                int type = in.i32();
                long head = 8;
                if (length == 1) {
                    in.i32();
                    length = in.i32() & 0xffffffffL;
                    head = 16;
                }
                // 0 is up to the end of the file; a box that breaks off ends there too
                long body = length == 0 ? in.left() : Math.min(in.left(), length - head);
                if (body < 0) {
                    throw new IOException("a box in it makes no sense");
                }
                if (type == 0x6a703263 && outermost) { // jp2c
                    from = in.at();
                    end = from + (int) body;
                    return;
                }
                ByteReader box = in.part((int) body);
                switch (type) {
                    case 0x6a703268 -> { // jp2h, which holds boxes
                        if (outermost) {
                            read(box, false);
                        }
                    }
                    case 0x636f6c72 -> colour(box); // colr
                    case 0x70636c72 -> palette(box); // pclr
                    case 0x636d6170 -> mapping(box); // cmap
                    case 0x63646566 -> definitions(box); // cdef
                    default -> {} // of no use here
                }
            }
        }

        /** The first that is told holds; all but sYCC are told by their number of channels well enough. */
        private void colour(ByteReader box) throws IOException {
            boolean numbered = box.u8() == 1;
            box.u16();
            if (!coloured) {
                ycc = numbered && box.i32() == 18;
                coloured = true;
            }
        }

        private void palette(ByteReader box) throws IOException {
            int entries = box.u16();
            int columns = box.u8();
            int[] bits = new int[columns];
            for (int c = 0; c < columns; c++) {
                bits[c] = (box.u8() & 0x7f) + 1;
            }
            int[][] read = new int[columns][entries];
            for (int e = 0; e < entries; e++) {
                for (int c = 0; c < columns; c++) {
                    int v = bits[c] > 8 ? box.u16() : box.u8();
                    read[c][e] = Channels.eightBits(v, bits[c]);
                }
            }
            palette = read;
        }

        private void mapping(ByteReader box) throws IOException {
            int n = box.left() / 4;
            int[][] read = new int[n][2];
            for (int i = 0; i < n; i++) {
                read[i][0] = box.u16();
                boolean byPalette = box.u8() == 1;
                int column = box.u8();
                read[i][1] = byPalette ? column : -1;
            }
            mapped = read;
        }

        private void definitions(ByteReader box) throws IOException {
            int n = box.u16();
            for (int i = 0; i < n; i++) {
                int channel = box.u16();
                int kind = box.u16();
                int of = box.u16();
                if ((kind == 1 || kind == 2) && of == 0) {
                    alpha = channel;
                }
            }
        }
    }
}
