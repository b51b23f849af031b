package io.bindprep.pdf.jpx;

import io.bindprep.pdf.jpx.Settings.Progression;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads a tile's packets in their order, and tells its code blocks where their bytes lie (ISO/IEC 15444-1 annex B). */
final class Packets {
    private static final int SOP = 0xff91;
    private static final int EPH = 0xff92;

    private final Size size;
    private final int tile;
    private final Settings settings;
    private final List<List<Resolution>> components;
    private final PacketBits body;
    private final PacketBits head;
    private final Runnable clock;
    private final int[] cells = {0};
    private int steps;

    Packets(Size size, int tile, Codestream.Part part, List<List<Resolution>> components, Runnable clock) {
        this.size = size;
        this.tile = tile;
        this.settings = part.settings;
        this.components = components;
        this.clock = clock;
        body = new PacketBits(part.packets.toByteArray());
        byte[] apart = part.headers();
        head = apart == null ? body : new PacketBits(apart);
    }

    /**
     * Reads all.
     *
     * @throws IOException also where not even the first layer of all is there: it must not pass as blank
     */
    void read() throws IOException {
        try {
            for (Progression p : settings.progressions()) {
                switch (p.order()) {
                    case 0 -> byLayer(p);
                    case 1 -> byResolution(p);
                    case 2 -> byPlace(p, true, false);
                    case 3 -> byPlace(p, false, false);
                    case 4 -> byPlace(p, false, true);
                    default -> throw new IOException("its packets come in no known order");
                }
            }
        } catch (PacketBits.End e) {
            if (!firstLayer()) {
                throw new IOException("a picture breaks off", e);
            }
        }
    }

    private boolean firstLayer() throws IOException {
        for (List<Resolution> resolutions : components) {
            for (Resolution r : resolutions) {
                for (int p = 0; p < r.across * r.down; p++) {
                    if (r.precinct(p, cells).layers == 0) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private int highest(Progression p) {
        int most = 0;
        for (List<Resolution> c : components) {
            most = Math.max(most, c.size());
        }
        return Math.min(most, p.resolutionEnd());
    }

    private void byLayer(Progression p) throws IOException {
        for (int l = 0; l < p.layers(); l++) {
            for (int r = p.resolution(); r < highest(p); r++) {
                all(p, r, l);
            }
        }
    }

    private void byResolution(Progression p) throws IOException {
        for (int r = p.resolution(); r < highest(p); r++) {
            for (int l = 0; l < p.layers(); l++) {
                all(p, r, l);
            }
        }
    }

    private void all(Progression p, int r, int layer) throws IOException {
        for (int c = p.component(); c < p.componentEnd(); c++) {
            if (r < components.get(c).size()) {
                Resolution resolution = components.get(c).get(r);
                for (int k = 0; k < resolution.across * resolution.down; k++) {
                    packet(c, resolution, k, layer);
                }
            }
        }
    }

    /** Goes through places on the reference grid: resolution by resolution, place by place or component by component. */
    private void byPlace(Progression p, boolean resolutionFirst, boolean componentFirst) throws IOException {
        if (resolutionFirst) {
            for (int r = p.resolution(); r < highest(p); r++) {
                places(p, r, r + 1, p.component(), p.componentEnd());
            }
        } else if (componentFirst) {
            for (int c = p.component(); c < p.componentEnd(); c++) {
                places(p, p.resolution(), highest(p), c, c + 1);
            }
        } else {
            places(p, p.resolution(), highest(p), p.component(), p.componentEnd());
        }
    }

    private void places(Progression p, int r0, int r1, int c0, int c1) throws IOException {
        long stepX = Long.MAX_VALUE;
        long stepY = Long.MAX_VALUE;
        for (int c = c0; c < c1; c++) {
            List<Resolution> resolutions = components.get(c);
            for (int r = r0; r < Math.min(r1, resolutions.size()); r++) {
                int below = resolutions.size() - 1 - r;
                stepX = Math.min(stepX, (long) size.dx()[c] << resolutions.get(r).precinctWidth + below);
                stepY = Math.min(stepY, (long) size.dy()[c] << resolutions.get(r).precinctHeight + below);
            }
        }
        if (stepX == Long.MAX_VALUE) {
            return;
        }
        for (long y = size.tileTop(tile); y < size.tileBottom(tile); y += stepY - y % stepY) {
            for (long x = size.tileLeft(tile); x < size.tileRight(tile); x += stepX - x % stepX) {
                for (int c = c0; c < c1; c++) {
                    List<Resolution> resolutions = components.get(c);
                    for (int r = r0; r < Math.min(r1, resolutions.size()); r++) {
                        at(p, c, resolutions, r, x, y);
                    }
                }
            }
        }
    }

    private void at(Progression p, int c, List<Resolution> resolutions, int r, long x, long y) throws IOException {
        tick();
        Resolution resolution = resolutions.get(r);
        int below = resolutions.size() - 1 - r;
        int dx = size.dx()[c];
        int dy = size.dy()[c];
        if (resolution.across * resolution.down == 0
                || !begins(y, dy, resolution.precinctHeight + below, size.tileTop(tile), resolution.y0, below)
                || !begins(x, dx, resolution.precinctWidth + below, size.tileLeft(tile), resolution.x0, below)) {
            return;
        }
        int px = (Size.up(x, (long) dx << below) >> resolution.precinctWidth)
                - (resolution.x0 >> resolution.precinctWidth);
        int py = (Size.up(y, (long) dy << below) >> resolution.precinctHeight)
                - (resolution.y0 >> resolution.precinctHeight);
        for (int l = 0; l < p.layers(); l++) {
            packet(c, resolution, py * resolution.across + px, l);
        }
    }

    /** Returns true if a precinct begins at a place, or the tile does within one. */
    private static boolean begins(long at, int d, int exponent, int tileBegin, int begin, int below) {
        return at % ((long) d << exponent) == 0 || at == tileBegin && ((long) begin << below) % (1L << exponent) != 0;
    }

    private void tick() {
        if ((++steps & 0xfff) == 0) {
            clock.run();
        }
    }

    private void packet(int component, Resolution resolution, int index, int layer) throws IOException {
        tick();
        Resolution.Precinct precinct = resolution.precinct(index, cells);
        if (layer < precinct.layers) {
            return; // a change of order comes by it once more
        }
        if (body.at() >= body.size() && head.at() >= head.size()) {
            throw new PacketBits.End();
        }
        body.skipMarker(SOP, 6);
        head.begin();
        Coding coding = settings.coding(component);
        Bodies bodies = new Bodies();
        if (head.bit() == 1) {
            for (Resolution.Cell cell : precinct.cells) {
                for (int b = 0; b < cell.blocks.size(); b++) {
                    block(cell, b, layer, coding, bodies);
                }
            }
        }
        head.align();
        head.skipMarker(EPH, 2);
        bodies.place(body);
        precinct.layers = layer + 1;
    }

    private void block(Resolution.Cell cell, int b, int layer, Coding coding, Bodies bodies) throws IOException {
        CodeBlock block = cell.blocks.get(b);
        boolean included = block.met ? head.bit() == 1 : cell.included.below(head, b, layer + 1);
        if (!included) {
            return;
        }
        if (!block.met) {
            int zero = 0;
            while (!cell.zeroPlanes.below(head, b, zero + 1)) {
                if (++zero > 80) {
                    throw new IOException("its bit planes make no sense");
                }
            }
            block.zeroPlanes = zero;
            block.met = true;
        }
        int passes = passes();
        while (head.bit() == 1) {
            if (++block.lengthBits > 31) {
                throw new IOException("a block of it makes no sense");
            }
        }
        while (passes > 0) {
            CodeBlock.Segment segment = block.open(coding);
            int n = Math.min(passes, segment.room());
            int bits = block.lengthBits + 31 - Integer.numberOfLeadingZeros(n);
            if (bits > 31) {
                throw new IOException("a block of it makes no sense");
            }
            int length = head.bits(bits);
            bodies.add(segment, n, length);
            passes -= n;
        }
    }

    /** The number of new passes (table B.4). */
    private int passes() {
        if (head.bit() == 0) {
            return 1;
        }
        if (head.bit() == 0) {
            return 2;
        }
        int n = head.bits(2);
        if (n < 3) {
            return 3 + n;
        }
        n = head.bits(5);
        return n < 31 ? 6 + n : 37 + head.bits(7);
    }

    /** Bytes of a packet's blocks, which follow its header. */
    private static final class Bodies {
        private final List<CodeBlock.Segment> segments = new ArrayList<>();
        private int[] lengths = new int[16];

        void add(CodeBlock.Segment segment, int passes, int length) {
            if (segments.size() == lengths.length) {
                lengths = Arrays.copyOf(lengths, 2 * lengths.length);
            }
            lengths[segments.size()] = length;
            segments.add(segment);
            segment.add(passes, 0, 0);
        }

        void place(PacketBits body) {
            for (int i = 0; i < segments.size(); i++) {
                int at = body.at();
                body.skip(lengths[i]);
                segments.get(i).add(0, at, lengths[i]);
            }
        }
    }
}
