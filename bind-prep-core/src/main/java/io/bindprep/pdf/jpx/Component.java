package io.bindprep.pdf.jpx;

import java.io.IOException;
import java.util.List;

/** Decodes a rectangle of one component of a tile, and of its subbands only the code blocks that it depends on. */
final class Component {
    private final Coding coding;
    private final int raised;
    private final List<Resolution> resolutions;
    private final byte[] packets;
    private final Runnable clock;
    private final BlockDecoder decoder = new BlockDecoder();

    /** @param resolutions from the lowest to the one that is decoded */
    Component(Coding coding, int raised, List<Resolution> resolutions, byte[] packets, Runnable clock) {
        this.coding = coding;
        this.raised = raised;
        this.resolutions = resolutions;
        this.packets = packets;
        this.clock = clock;
    }

    /** Samples of a rectangle of the highest resolution, before they are shifted to begin at 0. */
    Window decode(int x0, int y0, int x1, int y1) throws IOException {
        return decode(resolutions.size() - 1, x0, y0, x1, y1);
    }

    private Window decode(int level, int x0, int y0, int x1, int y1) throws IOException {
        Resolution r = resolutions.get(level);
        if (level == 0) {
            Window lowest = new Window(x0, y0, x1, y1);
            place(r.bands.get(0), lowest, 1);
            return lowest;
        }
        Window all = new Window(
                Math.max(r.x0, x0 - Wavelet.REACH),
                Math.max(r.y0, y0 - Wavelet.REACH),
                Math.min(r.x1, x1 + Wavelet.REACH),
                Math.min(r.y1, y1 + Wavelet.REACH));
        Window below = decode(level - 1, half(all.x0), half(all.y0), half(all.x1), half(all.y1));
        for (int y = below.y0; y < below.y1; y++) {
            for (int x = below.x0; x < below.x1; x++) {
                all.values[(2 * y - all.y0) * all.width() + 2 * x - all.x0] =
                        below.values[(y - below.y0) * below.width() + x - below.x0];
            }
        }
        for (Band band : r.bands) {
            place(band, all, 2);
        }
        new Wavelet(coding.reversible()).invert(all);
        return all.x0 == x0 && all.y0 == y0 && all.x1 == x1 && all.y1 == y1 ? all : cut(all, x0, y0, x1, y1);
    }

    private static int half(int v) {
        return v + 1 >> 1;
    }

    private static Window cut(Window all, int x0, int y0, int x1, int y1) {
        Window part = new Window(x0, y0, x1, y1);
        for (int y = y0; y < part.y1; y++) {
            System.arraycopy(
                    all.values,
                    (y - all.y0) * all.width() + x0 - all.x0,
                    part.values,
                    (y - y0) * part.width(),
                    part.width());
        }
        return part;
    }

    /** Decodes a band's blocks into their places among the other bands' coefficients. */
    private void place(Band band, Window into, int apart) throws IOException {
        // of the band only what falls into the window
        int left = apart == 1 ? into.x0 : into.x0 + 1 - band.right() >> 1;
        int top = apart == 1 ? into.y0 : into.y0 + 1 - band.below() >> 1;
        int right = apart == 1 ? into.x1 : into.x1 + 1 - band.right() >> 1;
        int bottom = apart == 1 ? into.y1 : into.y1 + 1 - band.below() >> 1;
        for (CodeBlock block : band.blocks()) {
            if (!block.met || block.x0 >= right || block.x1 <= left || block.y0 >= bottom || block.y1 <= top) {
                continue;
            }
            clock.run();
            int[] values = decoder.decode(block, band, coding, raised, packets);
            int width = block.x1 - block.x0;
            float half = band.step() / 2;
            for (int y = Math.max(top, block.y0); y < Math.min(bottom, block.y1); y++) {
                for (int x = Math.max(left, block.x0); x < Math.min(right, block.x1); x++) {
                    int v = values[(y - block.y0) * width + x - block.x0];
                    int at = (apart * y + band.below() - into.y0) * into.width() + apart * x + band.right() - into.x0;
                    into.values[at] = coding.reversible() ? v / 2 : v * half;
                }
            }
        }
    }
}
