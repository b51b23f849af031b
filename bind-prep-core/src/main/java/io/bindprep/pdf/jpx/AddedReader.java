package io.bindprep.pdf.jpx;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.jspecify.annotations.Nullable;

/** A picture as a reader sees it that somebody added to ImageIO. */
record AddedReader(byte[] file, int width, int height, int components) implements JpxSource {
    /** Name by which readers of PDF files ask for it. */
    private static final String FORMAT = "JPEG2000";

    /** Work with a reader. */
    private interface Work<T> {
        T of(ImageReader reader) throws IOException;
    }

    /** The picture's size; null where no reader is there. */
    static @Nullable AddedReader find(byte[] file) throws IOException {
        if (!ImageIO.getImageReadersByFormatName(FORMAT).hasNext()) {
            return null;
        }
        try {
            // whatever a reader says: what the codestream itself claims bounds its memory
            JpxPicture own = JpxPicture.read(file);
            return new AddedReader(file, own.width(), own.height(), own.components());
        } catch (IOException e) {
            return with(file, r -> new AddedReader(file, r.getWidth(0), r.getHeight(0), 4));
        }
    }

    private static <T> T with(byte[] file, Work<T> work) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(FORMAT);
        ImageReader reader = readers.next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            return work.of(reader);
        } catch (RuntimeException | LinkageError e) {
            throw new IOException("the added reader fails", e);
        } finally {
            reader.dispose();
        }
    }

    @Override
    public JpxSource halved(int times) {
        return this;
    }

    @Override
    public Channels decode(Rectangle region, int given, boolean indexed, Runnable clock) throws IOException {
        clock.run();
        BufferedImage image = with(file, reader -> {
            ImageReadParam asked = reader.getDefaultReadParam();
            asked.setSourceRegion(region);
            return reader.read(0, asked);
        });
        clock.run();
        if (image.getWidth() != region.width || image.getHeight() != region.height) {
            throw new IOException("the added reader gives another region than it was asked for");
        }
        ColorModel model = image.getColorModel();
        boolean alpha = model != null && model.hasAlpha();
        Raster raster = image.getRaster();
        boolean palette = model instanceof IndexColorModel && !indexed;
        int all = palette ? 3 : raster.getNumBands();
        int colours = palette ? 3 : Math.max(1, alpha ? all - 1 : all);
        byte[][] channels = new byte[given > 0 ? Math.min(given, colours) : colours][];
        for (int c = 0; c < channels.length; c++) {
            channels[c] = palette ? looked(image, 16 - 8 * c) : band(raster, c, indexed);
        }
        byte[] opacity = alpha && !palette && all > colours ? band(raster, colours, false) : new byte[0];
        return new Channels(region.width, region.height, channels, opacity);
    }

    private static byte[] looked(BufferedImage image, int shift) {
        byte[] out = new byte[image.getWidth() * image.getHeight()];
        for (int i = 0; i < out.length; i++) {
            out[i] = (byte) (image.getRGB(i % image.getWidth(), i / image.getWidth()) >> shift);
        }
        return out;
    }

    private static byte[] band(Raster raster, int band, boolean asTheyAre) {
        int bits = Math.min(raster.getSampleModel().getSampleSize(band), Size.MOST_BITS);
        int w = raster.getWidth();
        byte[] out = new byte[w * raster.getHeight()];
        for (int i = 0; i < out.length; i++) {
            int v = raster.getSample(raster.getMinX() + i % w, raster.getMinY() + i / w, band);
            out[i] = (byte) (asTheyAre ? v : Channels.eightBits(v, bits));
        }
        return out;
    }
}
