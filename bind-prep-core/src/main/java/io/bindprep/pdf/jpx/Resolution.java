package io.bindprep.pdf.jpx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A resolution of one component of a tile: its extent, subbands and precincts (ISO/IEC 15444-1 B.5 to B.7). */
final class Resolution {
    /** A picture of 30,000 by 30,000 dots in blocks of 64 has a fifth of it. */
    private static final int MOST_CELLS = 1 << 20;

    final int x0;
    final int y0;
    final int x1;
    final int y1;
    final int precinctWidth;
    final int precinctHeight;
    final int across;
    final int down;
    final List<Band> bands = new ArrayList<>();

    private final Coding coding;
    private final boolean lowest;
    private final @Nullable Precinct[] precincts;

    /** Code blocks of one band in one precinct. */
    static final class Cell {
        final List<CodeBlock> blocks = new ArrayList<>();
        final TagTree included;
        final TagTree zeroPlanes;
        final Band band;

        Cell(Band band, int across, int down) {
            this.band = band;
            included = new TagTree(across, down);
            zeroPlanes = new TagTree(across, down);
        }
    }

    /** Subject of one packet. */
    static final class Precinct {
        final List<Cell> cells = new ArrayList<>();
        int layers;
    }

    private Resolution(Coding coding, int r, int x0, int y0, int x1, int y1) throws IOException {
        this.coding = coding;
        this.lowest = r == 0;
        this.x0 = x0;
        this.y0 = y0;
        this.x1 = x1;
        this.y1 = y1;
        precinctWidth = coding.precinctWidth()[r];
        precinctHeight = coding.precinctHeight()[r];
        boolean empty = x0 >= x1 || y0 >= y1;
        across = empty ? 0 : up(x1, precinctWidth) - (x0 >> precinctWidth);
        down = empty ? 0 : up(y1, precinctHeight) - (y0 >> precinctHeight);
        if ((long) across * down > MOST_CELLS) {
            throw new IOException("it is cut too finely");
        }
        precincts = new @Nullable Precinct[across * down];
    }

    /** Resolutions of a component, the lowest first, and their bands. */
    static List<Resolution> of(Settings settings, int component, int depth, int x0, int y0, int x1, int y1)
            throws IOException {
        Coding coding = settings.coding(component);
        Quantising quantising = settings.quantising(component);
        List<Resolution> all = new ArrayList<>();
        for (int r = 0; r <= coding.levels(); r++) {
            int n = coding.levels() - r;
            Resolution resolution = new Resolution(coding, r, up(x0, n), up(y0, n), up(x1, n), up(y1, n));
            for (int b = 0; b < (r == 0 ? 1 : 3); b++) {
                int right = r == 0 ? 0 : b + 1 & 1; // HL, LH, HH
                int below = r == 0 ? 0 : b + 1 >> 1;
                int level = r == 0 ? n : n + 1;
                int index = r == 0 ? 0 : 3 * (r - 1) + 1 + b;
                int exponent = quantising.exponent(index);
                float step = coding.reversible()
                        ? 1
                        : (float) ((1 + quantising.mantissa(index) / 2048.0)
                                * Math.pow(2, depth + right + below - exponent));
                resolution.bands.add(new Band(
                        right,
                        below,
                        side(x0, level, right),
                        side(y0, level, below),
                        side(x1, level, right),
                        side(y1, level, below),
                        quantising.guard() + exponent - 1,
                        step));
            }
            all.add(resolution);
        }
        return all;
    }

    private static int side(int at, int level, int high) {
        return level == 0 ? at : up(at - ((long) high << level - 1), level);
    }

    static int up(long v, int exponent) {
        return (int) (v + (1L << exponent) - 1 >> exponent);
    }

    /** The precinct of a number, its blocks laid out when it is first asked for. */
    Precinct precinct(int index, int[] cells) throws IOException {
        Precinct known = precincts[index];
        if (known != null) {
            return known;
        }
        Precinct made = new Precinct();
        int shift = lowest ? 0 : 1;
        long px = (long) (x0 >> precinctWidth) + index % across << precinctWidth - shift;
        long py = (long) (y0 >> precinctHeight) + index / across << precinctHeight - shift;
        int bw = Math.min(coding.blockWidth(), precinctWidth - shift);
        int bh = Math.min(coding.blockHeight(), precinctHeight - shift);
        for (Band band : bands) {
            int left = (int) Math.max(px, band.x0());
            int top = (int) Math.max(py, band.y0());
            int right = (int) Math.min(px + (1L << precinctWidth - shift), band.x1());
            int bottom = (int) Math.min(py + (1L << precinctHeight - shift), band.y1());
            if (left >= right || top >= bottom) {
                continue;
            }
            int acrossBlocks = up(right, bw) - (left >> bw);
            int downBlocks = up(bottom, bh) - (top >> bh);
            cells[0] += acrossBlocks * downBlocks;
            if ((long) acrossBlocks * downBlocks > MOST_CELLS || cells[0] > MOST_CELLS) {
                throw new IOException("it is cut too finely");
            }
            Cell cell = new Cell(band, acrossBlocks, downBlocks);
            for (int i = 0; i < acrossBlocks * downBlocks; i++) {
                int x = (left >> bw) + i % acrossBlocks << bw;
                int y = (top >> bh) + i / acrossBlocks << bh;
                cell.blocks.add(new CodeBlock(
                        Math.max(x, left),
                        Math.max(y, top),
                        Math.min(x + (1 << bw), right),
                        Math.min(y + (1 << bh), bottom)));
            }
            band.blocks().addAll(cell.blocks);
            made.cells.add(cell);
        }
        precincts[index] = made;
        return made;
    }
}
