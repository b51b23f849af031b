package io.bindprep;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.imageio.stream.ImageInputStream;

/** A reader of JPEG 2000 as somebody may add it to ImageIO: every picture is black, 1,600 dots square. */
public final class FakeJpxReader extends ImageReader {
    private static final int DOTS = 1600;
    private final List<Rectangle> read;

    private FakeJpxReader(Spi spi) {
        super(spi);
        read = spi.read;
    }

    /** Until it is closed the reader is known. */
    public record Added(Spi spi) implements AutoCloseable {
        /** Regions that it was asked for. */
        public List<Rectangle> read() {
            return spi.read;
        }

        @Override
        public void close() {
            IIORegistry.getDefaultInstance().deregisterServiceProvider(spi, ImageReaderSpi.class);
        }
    }

    /** Makes it known to ImageIO. */
    public static Added add() {
        Spi spi = new Spi();
        IIORegistry.getDefaultInstance().registerServiceProvider(spi, ImageReaderSpi.class);
        return new Added(spi);
    }

    @Override
    public int getNumImages(boolean allowSearch) {
        return 1;
    }

    @Override
    public int getWidth(int index) {
        return DOTS;
    }

    @Override
    public int getHeight(int index) {
        return DOTS;
    }

    @Override
    public Iterator<ImageTypeSpecifier> getImageTypes(int index) {
        return List.of(ImageTypeSpecifier.createFromBufferedImageType(BufferedImage.TYPE_BYTE_GRAY))
                .iterator();
    }

    @Override
    public IIOMetadata getStreamMetadata() {
        return null;
    }

    @Override
    public IIOMetadata getImageMetadata(int index) {
        return null;
    }

    @Override
    public BufferedImage read(int index, ImageReadParam asked) {
        Rectangle region = asked.getSourceRegion();
        read.add(region);
        return new BufferedImage(region.width, region.height, BufferedImage.TYPE_BYTE_GRAY);
    }

    /** Its entry. */
    public static final class Spi extends ImageReaderSpi {
        private final List<Rectangle> read = new ArrayList<>();

        public Spi() {
            super(
                    "test",
                    "1",
                    new String[] {"JPEG2000"},
                    null,
                    null,
                    FakeJpxReader.class.getName(),
                    new Class<?>[] {ImageInputStream.class},
                    null,
                    false,
                    null,
                    null,
                    null,
                    null,
                    false,
                    null,
                    null,
                    null,
                    null);
        }

        @Override
        public boolean canDecodeInput(Object source) {
            return true;
        }

        @Override
        public ImageReader createReaderInstance(Object extension) {
            return new FakeJpxReader(this);
        }

        @Override
        public String getDescription(Locale locale) {
            return "fake";
        }
    }
}
