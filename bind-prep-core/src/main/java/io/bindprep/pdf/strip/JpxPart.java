package io.bindprep.pdf.strip;

import io.bindprep.pdf.jpx.Channels;
import io.bindprep.pdf.jpx.JpxSource;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDIndexed;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;

/**
 * A JPEG 2000 picture of a document, and plain samples of a region of it: PDFBox has no decoder of its own, and would decode
 * the whole.
 *
 * @param stream the picture with what the document says of it
 */
record JpxPart(COSStream stream, JpxSource source) {
    private static final COSName SMASK_IN_DATA = COSName.getPDFName("SMaskInData");
    private static final List<COSName> MASKS = List.of(COSName.SMASK, COSName.MASK);
    /** Decoded samples are held in numbers of four bytes. */
    private static final int BYTES_A_SAMPLE = 4;

    private static final COSName[] PACKING = {
        COSName.FILTER,
        COSName.F_FILTER,
        COSName.DECODE_PARMS,
        COSName.LENGTH,
        COSName.SMASK,
        COSName.MASK,
        SMASK_IN_DATA
    };

    /** Reads the picture's size; null where it is no JPEG 2000. */
    static @Nullable JpxPart of(@Nullable COSBase object) throws IOException {
        return object instanceof COSStream stream && Samples.isJpx(stream)
                ? new JpxPart(stream, JpxSource.open(Samples.file(stream)))
                : null;
    }

    /** Returns true if a picture is JPEG 2000. */
    static boolean is(PDImage picture) {
        return picture instanceof PDImageXObject object && Samples.isJpx(object.getCOSObject());
    }

    /** The picture with plain masks instead of those that are JPEG 2000. */
    static PDImageXObject withPlainMasks(PDImageXObject picture, PDResources resources, Budget budget)
            throws IOException {
        COSStream stream = picture.getCOSObject();
        COSStream copy = null;
        for (COSName key : MASKS) {
            JpxPart mask = of(stream.getDictionaryObject(key));
            if (mask != null) {
                copy = copy == null ? copied(stream) : copy;
                copy.setItem(key, mask.bare(mask.decode(mask.whole(), resources, budget), resources));
            }
        }
        return copy == null ? picture : new PDImageXObject(new PDStream(copy), resources);
    }

    private static COSStream copied(COSStream stream) throws IOException {
        COSStream copy = new COSStream();
        copy.addAll(stream);
        try (InputStream in = stream.createRawInputStream()) {
            write(copy, in.readAllBytes());
        }
        return copy;
    }

    /** Returns true if its masks, where it has some, are of its own size. */
    boolean masksAlike() throws IOException {
        for (COSName key : MASKS) {
            if (stream.getDictionaryObject(key) instanceof COSStream mask) {
                JpxPart jpx = of(mask);
                int w = jpx == null ? mask.getInt(COSName.WIDTH) : jpx.source.width();
                int h = jpx == null ? mask.getInt(COSName.HEIGHT) : jpx.source.height();
                if (w != source.width() || h != source.height()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The picture for a screen: with at least half of the dots that it is shown with. */
    JpxPart halved(double dotsAcross) throws IOException {
        int times = 0;
        while (times < 30 && source.width() >> times + 1 >= dotsAcross / 2) {
            times++;
        }
        return new JpxPart(stream, source.halved(times));
    }

    Rectangle whole() {
        return new Rectangle(0, 0, source.width(), source.height());
    }

    /** A picture of the region's plain samples, with plain masks of the whole. */
    COSStream plain(Rectangle region, PDResources resources, Budget budget) throws IOException {
        Channels dots = decode(region, resources, budget);
        COSStream plain = bare(dots, resources);
        for (COSName key : MASKS) {
            COSBase named = stream.getDictionaryObject(key);
            JpxPart mask = of(named);
            if (mask != null) {
                plain.setItem(key, mask.bare(mask.decode(mask.whole(), resources, budget), resources));
            } else if (named != null) {
                plain.setItem(key, named);
            }
        }
        if (stream.getInt(SMASK_IN_DATA, 0) != 0 && dots.alpha().length > 0) {
            COSStream opacity = described(dots);
            opacity.removeItem(COSName.DECODE);
            opacity.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
            write(opacity, dots.alpha());
            plain.setItem(COSName.SMASK, opacity);
        }
        return plain;
    }

    private Channels decode(Rectangle region, PDResources resources, Budget budget) throws IOException {
        long bytes = (long) region.width * region.height * source.components() * BYTES_A_SAMPLE;
        if (bytes > PictureCut.MOST_BYTES) {
            throw new Budget.Spent(PictureCut.TOO_LARGE);
        }
        PDColorSpace space = space(resources);
        int given = isStencil() ? 1 : space == null ? 0 : space.getNumberOfComponents();
        return source.decode(region, given, space instanceof PDIndexed, budget::clock);
    }

    private boolean isStencil() {
        return stream.getBoolean(COSName.IMAGE_MASK, false);
    }

    /** The colour space that the document names, which goes before the picture's own. */
    private @Nullable PDColorSpace space(PDResources resources) throws IOException {
        COSBase named = stream.getDictionaryObject(COSName.COLORSPACE, COSName.CS);
        return isStencil() || named == null ? null : PDColorSpace.create(named, resources);
    }

    /** The picture without masks. */
    private COSStream bare(Channels dots, PDResources resources) throws IOException {
        COSStream plain = described(dots);
        if (isStencil()) {
            write(plain, stencil(dots));
            plain.setInt(COSName.BITS_PER_COMPONENT, 1);
            return plain;
        }
        PDColorSpace space = space(resources);
        if (space == null) {
            plain.setItem(COSName.COLORSPACE, device(dots.colours().length));
        } else if (dots.colours().length != space.getNumberOfComponents()) {
            throw new IOException("it has fewer components than its colour space");
        }
        // the document's own is without meaning (ISO 32000-1, 7.4.9)
        plain.removeItem(COSName.DECODE);
        write(plain, dots.interleaved());
        return plain;
    }

    private COSStream described(Channels dots) {
        COSStream plain = new COSStream();
        plain.addAll(stream);
        for (COSName key : PACKING) {
            plain.removeItem(key);
        }
        plain.setInt(COSName.WIDTH, dots.width());
        plain.setInt(COSName.HEIGHT, dots.height());
        plain.setInt(COSName.BITS_PER_COMPONENT, 8);
        return plain;
    }

    private static COSName device(int components) throws IOException {
        return switch (components) {
            case 1 -> COSName.DEVICEGRAY;
            case 3 -> COSName.DEVICERGB;
            case 4 -> COSName.DEVICECMYK;
            default -> throw new IOException("it names no colour space");
        };
    }

    private static byte[] stencil(Channels dots) {
        int row = (dots.width() + 7) / 8;
        byte[] bits = new byte[row * dots.height()];
        for (int i = 0; i < dots.width() * dots.height(); i++) {
            if ((dots.colours()[0][i] & 0x80) != 0) {
                int x = i % dots.width();
                bits[i / dots.width() * row + x / 8] |= (byte) (0x80 >> x % 8);
            }
        }
        return bits;
    }

    private static void write(COSStream stream, byte[] samples) throws IOException {
        try (OutputStream out = stream.createRawOutputStream()) {
            out.write(samples);
        }
    }
}
