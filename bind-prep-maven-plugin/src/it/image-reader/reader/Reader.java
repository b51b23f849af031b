package added;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Collections;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.spi.ImageReaderSpi;

/** A reader for which every picture is black, 400 dots square. */
public class Reader extends ImageReader {
    Reader(ImageReaderSpi spi) {
        super(spi);
    }

    public int getNumImages(boolean search) {
        return 1;
    }

    public int getWidth(int index) {
        return 400;
    }

    public int getHeight(int index) {
        return 400;
    }

    public Iterator<ImageTypeSpecifier> getImageTypes(int index) {
        return Collections.emptyIterator();
    }

    public IIOMetadata getStreamMetadata() {
        return null;
    }

    public IIOMetadata getImageMetadata(int index) {
        return null;
    }

    public BufferedImage read(int index, ImageReadParam asked) {
        Rectangle region = asked.getSourceRegion();
        return new BufferedImage(region.width, region.height, BufferedImage.TYPE_BYTE_GRAY);
    }

    public static class Spi extends ImageReaderSpi {
        public Spi() {
            super("added", "1", new String[] {"JPEG2000"}, null, null, "added.Reader", new Class<?>[] {Object.class},
                    null, false, null, null, null, null, false, null, null, null, null);
        }

        public boolean canDecodeInput(Object source) {
            return true;
        }

        public ImageReader createReaderInstance(Object extension) {
            return new Reader(this);
        }

        public String getDescription(Locale locale) {
            return "added";
        }
    }
}
