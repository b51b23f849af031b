package io.bindprep.pdf.strip;

import io.bindprep.pdf.ink.Outlines;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * A large picture cut to what of it lies near the strip, so that it asks for the strip's memory only: no verdict may hang
 * on how much there is.
 *
 * @param picture the picture, or the part of it
 * @param ctm where its unit square lies
 */
record PictureCut(PDImage picture, Matrix ctm) {
    /** Smaller pictures stay whole: 200 dots square. */
    private static final long SMALL = 40_000;
    /** The most that a picture or its part may unpack to; the same on every machine. */
    static final long MOST_BYTES = 128L * 1024 * 1024;

    static final String TOO_LARGE = "a picture in it unpacks to more than 128 MiB";
    /** Dots of the picture to spare around the part, so that its edges blend as within the whole. */
    private static final int SPARE = 4;

    private static final List<COSName> MASKS = List.of(COSName.SMASK, COSName.MASK);
    private static final COSName SMASK_IN_DATA = COSName.getPDFName("SMaskInData");

    /**
     * Part of a picture to be drawn; null where nothing of it is near.
     *
     * @param near what is looked at, in user space, with some room around it
     */
    static @Nullable PictureCut of(PDImage drawn, Matrix ctm, Rectangle2D near, PDResources resources, Budget budget)
            throws IOException {
        AffineTransform t = ctm.createAffineTransform();
        if (!Outlines.unitSquare(t).getBounds2D().intersects(near)) {
            return null;
        }
        PDImage picture = drawn;
        if (drawn instanceof PDImageXObject object) {
            JpxPart jpx = JpxPart.of(object.getCOSObject());
            if (jpx != null) {
                return ofJpx(jpx, ctm, near, resources, budget);
            }
            picture = JpxPart.withPlainMasks(object, resources, budget);
        }
        long dots = (long) picture.getWidth() * picture.getHeight();
        if (dots <= SMALL) {
            return new PictureCut(DecodedPicture.of(picture, resources), ctm);
        }
        PictureCut part = null;
        if (picture instanceof PDImageXObject whole) {
            Rectangle region = region(t, near, whole.getWidth(), whole.getHeight());
            if (region != null && region.isEmpty()) {
                return null;
            }
            COSStream stream = region == null ? null : part(whole.getCOSObject(), whole, region, resources);
            if (region != null && stream != null) {
                part = new PictureCut(
                        DecodedPicture.of(new PDImageXObject(new PDStream(stream), resources), resources),
                        placed(region, whole.getWidth(), whole.getHeight()).multiply(ctm));
            }
        }
        if (part == null && dots * bitsPerDot(picture) / 8 > MOST_BYTES) {
            throw new Budget.Spent(TOO_LARGE);
        }
        return part == null ? new PictureCut(DecodedPicture.of(picture, resources), ctm) : part;
    }

    private static @Nullable PictureCut ofJpx(
            JpxPart jpx, Matrix ctm, Rectangle2D near, PDResources resources, Budget budget) throws IOException {
        Rectangle whole = jpx.whole();
        boolean small = (long) whole.width * whole.height <= SMALL;
        Rectangle region = small ? whole : region(ctm.createAffineTransform(), near, whole.width, whole.height);
        if (region != null && region.isEmpty()) {
            return null;
        }
        Rectangle use = region != null && jpx.masksAlike() ? region : whole;
        COSStream plain = jpx.plain(use, resources, budget);
        for (COSName key : MASKS) {
            if (plain.getDictionaryObject(key) instanceof COSStream mask && !use.equals(whole)) {
                COSStream cut = part(mask, new PDImageXObject(new PDStream(mask), resources), use, resources);
                if (cut == null) {
                    throw new IOException("a mask of it cannot be cut");
                }
                plain.setItem(key, cut);
            }
        }
        return new PictureCut(
                new PDImageXObject(new PDStream(plain), resources),
                placed(use, whole.width, whole.height).multiply(ctm));
    }

    private static int bitsPerDot(PDImage picture) throws IOException {
        return picture.isStencil()
                ? 1
                : picture.getBitsPerComponent() * picture.getColorSpace().getNumberOfComponents();
    }

    /** The dots that lie near, from the upper left; null where the picture is drawn without any extent. */
    private static @Nullable Rectangle region(AffineTransform t, Rectangle2D near, int w, int h) {
        try {
            Rectangle2D unit = t.createInverse()
                    .createTransformedShape(near)
                    .getBounds2D()
                    .createIntersection(new Rectangle2D.Double(0, 0, 1, 1));
            if (unit.isEmpty()) {
                return new Rectangle();
            }
            // eight dots of any depth are whole bytes
            int x0 = Math.max(0, (int) Math.floor(unit.getMinX() * w) - SPARE) / 8 * 8;
            int x1 = Math.min(w, (int) Math.ceil(unit.getMaxX() * w) + SPARE);
            int y0 = Math.max(0, (int) Math.floor((1 - unit.getMaxY()) * h) - SPARE);
            int y1 = Math.min(h, (int) Math.ceil((1 - unit.getMinY()) * h) + SPARE);
            return new Rectangle(x0, y0, x1 - x0, y1 - y0);
        } catch (NoninvertibleTransformException e) {
            return null;
        }
    }

    private static Matrix placed(Rectangle r, int w, int h) {
        return new Matrix(
                (float) ((double) r.width / w),
                0,
                0,
                (float) ((double) r.height / h),
                (float) ((double) r.x / w),
                (float) (1 - (double) (r.y + r.height) / h));
    }

    /** A stream of the region's bare samples; null where only the whole picture can be decoded. */
    private static @Nullable COSStream part(
            COSStream whole, PDImageXObject picture, Rectangle region, PDResources resources) throws IOException {
        if (whole.getInt(SMASK_IN_DATA, 0) != 0) {
            return null;
        }
        int bits = bitsPerDot(picture);
        long bytes = ((long) region.width * bits + 7) / 8 * region.height;
        if (bytes > MOST_BYTES) {
            throw new Budget.Spent(TOO_LARGE);
        }
        byte[] samples = Samples.cut(whole, picture.getWidth(), bits, region);
        if (samples == null) {
            return null;
        }
        COSStream part = new COSStream();
        part.addAll(whole);
        for (COSName packing : new COSName[] {COSName.FILTER, COSName.F_FILTER, COSName.DECODE_PARMS, COSName.LENGTH}) {
            part.removeItem(packing);
        }
        part.setInt(COSName.WIDTH, region.width);
        part.setInt(COSName.HEIGHT, region.height);
        for (COSName key : MASKS) {
            COSBase mask = whole.getDictionaryObject(key);
            if (mask instanceof COSStream stream) {
                PDImageXObject own = new PDImageXObject(new PDStream(stream), resources);
                boolean alike = own.getWidth() == picture.getWidth() && own.getHeight() == picture.getHeight();
                COSStream cut = alike ? part(stream, own, region, resources) : null;
                if (cut == null) {
                    return null;
                }
                part.setItem(key, cut);
            }
        }
        try (OutputStream out = part.createRawOutputStream()) {
            out.write(samples);
        }
        return part;
    }
}
