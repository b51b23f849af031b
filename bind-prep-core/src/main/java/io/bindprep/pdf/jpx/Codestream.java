package io.bindprep.pdf.jpx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Headers of a codestream, and where its tiles' packets lie (ISO/IEC 15444-1 annex A). */
final class Codestream {
    private static final int SOT = 0xff90;
    private static final int SOD = 0xff93;
    private static final int EOC = 0xffd9;
    private static final int PPM = 0xff60;
    private static final int PPT = 0xff61;
    /** Markers without content, which decoders may pass over. */
    private static final int FIRST_BARE = 0xff30;

    private static final int LAST_BARE = 0xff3f;

    private final JpxFile file;
    private final Settings main;
    private final Map<Integer, Part> tiles = new HashMap<>();
    private @Nullable ByteReader packedHeaders;
    private boolean whole = true;

    /** Contents of the parts of one tile. */
    static final class Part {
        final Settings settings;
        final ByteArrayOutputStream packets = new ByteArrayOutputStream();
        private final Map<Integer, byte[]> headers = new TreeMap<>();
        private final ByteArrayOutputStream mainHeaders = new ByteArrayOutputStream();

        Part(Settings settings) {
            this.settings = settings;
        }

        /** The packets' headers, where they lie apart. */
        byte @Nullable [] headers() {
            if (headers.isEmpty()) {
                return mainHeaders.size() == 0 ? null : mainHeaders.toByteArray();
            }
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            headers.values().forEach(all::writeBytes);
            return all.toByteArray();
        }
    }

    private Codestream(JpxFile file) {
        this.file = file;
        main = new Settings(file.size().components());
    }

    /** Returns false if the file ends before its codestream does. */
    boolean whole() {
        return whole;
    }

    /** Coding of a component where its tiles say nothing else. */
    Coding coding(int component) throws IOException {
        return main.coding(component);
    }

    /** A tile's packets; null where the file has none of them. */
    @Nullable
    Part tile(int index) {
        return tiles.get(index);
    }

    static Codestream read(JpxFile file) throws IOException {
        Codestream stream = new Codestream(file);
        ByteReader in = new ByteReader(file.data(), file.from(), file.end());
        in.u16();
        TreeMap<Integer, byte[]> packed = new TreeMap<>();
        int marker = in.u16();
        while (marker != SOT) {
            ByteReader content = content(marker, in);
            if (content != null && marker == PPM) {
                packed.put(content.u8(), rest(content));
            } else if (content != null) {
                stream.main.take(marker, content);
            }
            marker = in.u16();
        }
        if (!packed.isEmpty()) {
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            packed.values().forEach(all::writeBytes);
            stream.packedHeaders = new ByteReader(all.toByteArray(), 0, all.size());
        }
        stream.parts(in);
        return stream;
    }

    private static byte[] rest(ByteReader in) throws IOException {
        byte[] bytes = new byte[in.left()];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) in.u8();
        }
        return bytes;
    }

    private static @Nullable ByteReader content(int marker, ByteReader in) throws IOException {
        if (marker >= FIRST_BARE && marker <= LAST_BARE) {
            return null;
        }
        if (marker < 0xff00) {
            throw new IOException("a marker is missing in it");
        }
        return in.part(in.u16() - 2);
    }

    /** Reads tile after tile; the first one's marker is read already. */
    private void parts(ByteReader in) throws IOException {
        int marker = SOT;
        while (marker == SOT) {
            int begin = in.at() - 2;
            if (in.left() < 10) {
                whole = false;
                return;
            }
            in.u16();
            int index = in.u16();
            long length = in.i32() & 0xffffffffL;
            in.u16();
            if ((long) index >= (long) file.size().tilesAcross() * file.size().tilesDown()) {
                throw new IOException("it has more tiles than room for them");
            }
            Part part = tiles.computeIfAbsent(index, i -> new Part(new Settings(main)));
            for (marker = in.u16(); marker != SOD; marker = in.u16()) {
                ByteReader content = content(marker, in);
                if (content != null && marker == PPT) {
                    part.headers.put(content.u8(), rest(content));
                } else if (content != null) {
                    part.settings.take(marker, content);
                }
            }
            if (packedHeaders != null && packedHeaders.left() >= 4) {
                part.mainHeaders.writeBytes(rest(packedHeaders.part(packedHeaders.u31())));
            }
            // 0 is up to the end
            long packets = length == 0 ? in.left() : length - (in.at() - begin);
            if (packets < 0) {
                throw new IOException("a tile of it makes no sense");
            }
            whole &= packets <= in.left();
            int n = (int) Math.min(packets, in.left());
            part.packets.write(file.data(), in.at(), n);
            in.skip(n);
            if (in.left() < 2) {
                return; // many files lack the end marker
            }
            marker = in.u16();
        }
        whole &= marker == EOC;
    }
}
