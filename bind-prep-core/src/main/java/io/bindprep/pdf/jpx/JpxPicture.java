package io.bindprep.pdf.jpx;

import java.awt.Rectangle;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A picture as our own decoder sees it. */
final class JpxPicture implements JpxSource {
    private final JpxFile file;
    private final Size size;
    private final int halvings;

    private JpxPicture(JpxFile file, int halvings) {
        this.file = file;
        this.size = file.size();
        this.halvings = halvings;
    }

    static JpxPicture read(byte[] file) throws IOException {
        return new JpxPicture(JpxFile.read(file), 0);
    }

    @Override
    public int width() {
        return across(size.x1()) - across(size.x0());
    }

    @Override
    public int height() {
        return down(size.y1()) - down(size.y0());
    }

    @Override
    public int components() {
        return size.components();
    }

    @Override
    public JpxPicture halved(int times) throws IOException {
        int most = Integer.MAX_VALUE;
        for (int c = 0; times > 0 && c < size.components(); c++) {
            most = Math.min(most, Codestream.read(file).coding(c).levels());
        }
        return new JpxPicture(file, Math.min(times, most));
    }

    private int across(int x) {
        return Size.up(x, (long) size.finestX() << halvings);
    }

    private int down(int y) {
        return Size.up(y, (long) size.finestY() << halvings);
    }

    @Override
    public Channels decode(Rectangle region, int given, boolean indexed, Runnable clock) throws IOException {
        for (int depth : size.depth()) {
            if (depth > Size.MOST_BITS) {
                throw new IOException("it has more than 16 bits a sample");
            }
        }
        Codestream stream = Codestream.read(file);
        int n = size.components();
        Window[] all = new Window[n];
        for (int c = 0; c < n; c++) {
            all[c] = new Window(0, 0, region.width, region.height);
        }
        try {
            for (int tile = 0; tile < size.tilesAcross() * size.tilesDown(); tile++) {
                if (near(tile, region)) {
                    Codestream.Part part = stream.tile(tile);
                    if (part == null) {
                        throw new IOException("a tile of it is missing");
                    }
                    new Tile(tile, part, clock).decode(region, all);
                }
            }
            return channels(all, region, given, indexed);
        } catch (IndexOutOfBoundsException | IllegalArgumentException | NegativeArraySizeException e) {
            throw new IOException("it is damaged", e);
        }
    }

    private boolean near(int tile, Rectangle region) {
        int x = across(size.x0());
        int y = down(size.y0());
        return across(size.tileLeft(tile)) - x < region.x + region.width
                && across(size.tileRight(tile)) - x > region.x
                && down(size.tileTop(tile)) - y < region.y + region.height
                && down(size.tileBottom(tile)) - y > region.y;
    }

    private final class Tile {
        private final int tile;
        private final Codestream.Part part;
        private final Runnable clock;

        Tile(int tile, Codestream.Part part, Runnable clock) {
            this.tile = tile;
            this.part = part;
            this.clock = clock;
        }

        void decode(Rectangle region, Window[] into) throws IOException {
            Settings settings = part.settings;
            int n = size.components();
            List<List<Resolution>> components = new ArrayList<>();
            for (int c = 0; c < n; c++) {
                components.add(Resolution.of(
                        settings,
                        c,
                        size.depth()[c],
                        Size.up(size.tileLeft(tile), size.dx()[c]),
                        Size.up(size.tileTop(tile), size.dy()[c]),
                        Size.up(size.tileRight(tile), size.dx()[c]),
                        Size.up(size.tileBottom(tile), size.dy()[c])));
            }
            new Packets(size, tile, part, components, clock).read();
            byte[] packets = part.packets.toByteArray();
            Window[] decoded = new Window[n];
            for (int c = 0; c < n; c++) {
                int asked = components.get(c).size() - halvings;
                if (asked < 1) {
                    throw new IOException("a tile of it has fewer resolutions");
                }
                List<Resolution> resolutions = components.get(c).subList(0, asked);
                Resolution whole = resolutions.get(asked - 1);
                int fx = size.dx()[c] / size.finestX();
                int fy = size.dy()[c] / size.finestY();
                int left = (across(size.x0()) + region.x) / fx;
                int top = (down(size.y0()) + region.y) / fy;
                int right = (across(size.x0()) + region.x + region.width - 1) / fx + 1;
                int bottom = (down(size.y0()) + region.y + region.height - 1) / fy + 1;
                decoded[c] = new Component(settings.coding(c), settings.raised(c), resolutions, packets, clock)
                        .decode(
                                clamp(left, whole.x0, whole.x1),
                                clamp(top, whole.y0, whole.y1),
                                clamp(right, whole.x0, whole.x1),
                                clamp(bottom, whole.y0, whole.y1));
            }
            if (settings.mixed() && n >= 3) {
                unmix(decoded, settings.coding(0).reversible());
            }
            for (int c = 0; c < n; c++) {
                put(decoded[c], region, c, into[c]);
            }
        }

        /** Copies a component's samples to where they belong, each as often as finer components have some. */
        private void put(Window from, Rectangle region, int c, Window into) {
            int fx = size.dx()[c] / size.finestX();
            int fy = size.dy()[c] / size.finestY();
            int x0 = across(size.x0()) + region.x;
            int y0 = down(size.y0()) + region.y;
            int left = Math.max(x0, across(size.tileLeft(tile)));
            int right = Math.min(x0 + region.width, across(size.tileRight(tile)));
            int bottom = Math.min(y0 + region.height, down(size.tileBottom(tile)));
            if (from.values.length == 0) {
                return;
            }
            for (int y = Math.max(y0, down(size.tileTop(tile))); y < bottom; y++) {
                int row = (clamp(y / fy, from.y0, from.y1 - 1) - from.y0) * from.width();
                for (int x = left; x < right; x++) {
                    into.values[(y - y0) * region.width + x - x0] =
                            from.values[row + clamp(x / fx, from.x0, from.x1 - 1) - from.x0];
                }
            }
        }
    }

    private static int clamp(int v, int least, int most) {
        return Math.max(least, Math.min(most, v));
    }

    /** The inverse component transforms (ISO/IEC 15444-1 annex G). */
    private static void unmix(Window[] w, boolean reversible) throws IOException {
        float[] a = w[0].values;
        float[] b = w[1].values;
        float[] c = w[2].values;
        if (a.length != b.length || a.length != c.length) {
            throw new IOException("its mixed components differ in size");
        }
        for (int i = 0; i < a.length; i++) {
            float y = a[i];
            float u = b[i];
            float v = c[i];
            if (reversible) {
                float green = y - ((int) (u + v) >> 2);
                a[i] = v + green;
                b[i] = green;
                c[i] = u + green;
            } else {
                a[i] = y + 1.402f * v;
                b[i] = y - 0.344136f * u - 0.714136f * v;
                c[i] = y + 1.772f * u;
            }
        }
    }

    private Channels channels(Window[] all, Rectangle region, int given, boolean indexed) {
        int[][] palette = file.palette();
        boolean byPalette = palette != null && !indexed && given != 1;
        byte[][] plain = new byte[all.length][];
        for (int c = 0; c < all.length; c++) {
            plain[c] = samples(all[c], c, indexed || byPalette);
        }
        byte[][] channels = byPalette && palette != null ? looked(plain, palette, file.mapped()) : plain;
        boolean opacity = file.alpha() >= 0 && file.alpha() < channels.length && channels.length > 1;
        List<byte[]> colours = new ArrayList<>();
        for (int c = 0; c < channels.length; c++) {
            if (!opacity || c != file.alpha()) {
                colours.add(channels[c]);
            }
        }
        byte[] alpha = opacity ? channels[file.alpha()] : new byte[0];
        int use = given > 0 ? given : colours.size() == 2 ? 1 : Math.min(4, colours.size());
        byte[][] used = colours.subList(0, Math.min(use, colours.size())).toArray(byte[][]::new);
        if (given == 0 && file.ycc() && used.length == 3) {
            toRgb(used);
        }
        return new Channels(region.width, region.height, used, alpha);
    }

    private byte[] samples(Window w, int c, boolean asTheyAre) {
        int bits = size.depth()[c];
        int most = (1 << bits) - 1;
        // a signed component's 0 is the middle, as other decoders show it
        float shift = 1 << bits - 1;
        byte[] samples = new byte[w.values.length];
        for (int i = 0; i < samples.length; i++) {
            int v = clamp(Math.round(w.values[i] + shift), 0, most);
            samples[i] = (byte) (asTheyAre ? v : Channels.eightBits(v, bits));
        }
        return samples;
    }

    private static byte[][] looked(byte[][] plain, int[][] palette, int @Nullable [][] mapped) {
        int n = mapped == null ? palette.length : mapped.length;
        byte[][] out = new byte[n][];
        for (int i = 0; i < n; i++) {
            byte[] from = plain[mapped == null ? 0 : mapped[i][0]];
            int column = mapped == null ? i : mapped[i][1];
            out[i] = from.clone();
            for (int k = 0; column >= 0 && k < from.length; k++) {
                out[i][k] = (byte) palette[column][Math.min(palette[column].length - 1, from[k] & 0xff)];
            }
        }
        return out;
    }

    /** Takes luminance and colour differences of the sYCC space for red, green and blue (IEC 61966-2-1, amendment 1). */
    private static void toRgb(byte[][] ycc) {
        for (int i = 0; i < ycc[0].length; i++) {
            float y = ycc[0][i] & 0xff;
            float u = (ycc[1][i] & 0xff) - 128;
            float v = (ycc[2][i] & 0xff) - 128;
            ycc[0][i] = (byte) clamp(Math.round(y + 1.402f * v), 0, 255);
            ycc[1][i] = (byte) clamp(Math.round(y - 0.344136f * u - 0.714136f * v), 0, 255);
            ycc[2][i] = (byte) clamp(Math.round(y + 1.772f * u), 0, 255);
        }
    }
}
