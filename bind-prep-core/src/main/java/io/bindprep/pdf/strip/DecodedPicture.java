package io.bindprep.pdf.strip;

import io.bindprep.pdf.syntax.Budget;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDIndexed;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDInlineImage;
import org.jspecify.annotations.Nullable;

/**
 * A picture whose Decode array narrows the tones of its samples, with that done: PDFBox takes from the array only which end
 * is dark, so that white samples of [0 0.1] stay white (ISO 32000-1:2008, 8.9.5.2 makes them a tenth of white).
 */
final class DecodedPicture {
    private static final COSName[] GONE = {
        COSName.DECODE,
        COSName.D,
        COSName.FILTER,
        COSName.F,
        COSName.F_FILTER,
        COSName.DECODE_PARMS,
        COSName.DP,
        COSName.LENGTH
    };

    private DecodedPicture() {}

    /** The picture with its tones and those of its soft mask narrowed, itself where that needs nothing done. */
    static PDImage of(PDImage picture, PDResources resources) throws IOException {
        PDImage plain = narrowed(picture, resources);
        COSStream mask =
                picture instanceof PDImageXObject object ? object.getCOSObject().getCOSStream(COSName.SMASK) : null;
        if (mask == null || !mask.containsKey(COSName.DECODE)) {
            return plain;
        }
        PDImageXObject own = new PDImageXObject(new PDStream(mask), resources);
        PDImage plainMask = narrowed(own, resources);
        if (plainMask == own) {
            return plain;
        }
        COSStream stream = ((PDImageXObject) plain).getCOSObject();
        COSStream copy = new COSStream();
        copy.addAll(stream);
        try (InputStream in = stream.createRawInputStream();
                OutputStream out = copy.createRawOutputStream()) {
            in.transferTo(out);
        }
        copy.setItem(COSName.SMASK, plainMask.getCOSObject());
        return new PDImageXObject(new PDStream(copy), resources);
    }

    private static PDImage narrowed(PDImage picture, PDResources resources) throws IOException {
        COSArray decode = picture.getDecode();
        boolean keyed = picture instanceof PDImageXObject object
                && object.getCOSObject().getDictionaryObject(COSName.MASK) instanceof COSArray;
        if (decode == null || keyed || picture.isStencil() || picture.getColorSpace() instanceof PDIndexed) {
            return picture;
        }
        int bits = picture.getBitsPerComponent();
        float[] usual = picture.getColorSpace().getDefaultDecode(bits);
        byte[][] tones = tones(decode, usual, Math.min(bits, 8));
        return tones == null ? picture : narrowed(picture, tones, bits, resources);
    }

    /** Of each component the byte for each value; null where Decode does no more than turn values round, or makes no sense. */
    private static byte @Nullable [][] tones(COSArray decode, float[] usual, int bits) {
        int n = usual.length / 2;
        float[] wanted = decode.toFloatArray();
        if (wanted.length < usual.length) {
            return null;
        }
        boolean plain = true;
        byte[][] tones = new byte[n][1 << bits];
        for (int c = 0; c < n; c++) {
            float low = usual[2 * c];
            float high = usual[2 * c + 1];
            float first = wanted[2 * c];
            float last = wanted[2 * c + 1];
            plain &= first == low && last == high || first == high && last == low;
            for (int v = 0; v < tones[c].length; v++) {
                double value = first + (double) v * (last - first) / (tones[c].length - 1);
                tones[c][v] = (byte) Math.round(255 * Math.max(0, Math.min(1, (value - low) / (high - low))));
            }
        }
        return plain ? null : tones;
    }

    private static PDImage narrowed(PDImage picture, byte[][] tones, int bits, PDResources resources)
            throws IOException {
        int values = picture.getWidth() * tones.length;
        int row = Math.toIntExact(((long) values * bits + 7) / 8);
        if ((long) values * picture.getHeight() > PictureCut.MOST_BYTES) {
            throw new Budget.Spent(PictureCut.TOO_LARGE);
        }
        byte[] samples = new byte[values * picture.getHeight()];
        try (InputStream in = picture.createInputStream()) {
            byte[] packed = new byte[row];
            for (int y = 0; y < picture.getHeight(); y++) {
                in.readNBytes(packed, 0, row);
                for (int i = 0; i < values; i++) {
                    int bit = i * bits;
                    int first = packed[bit / 8] & 0xff; // of 16 bits the upper eight
                    int value = bits > 8 ? first : first >> 8 - bits - bit % 8 & (1 << bits) - 1;
                    samples[y * values + i] = tones[i % tones.length][value];
                }
            }
        }
        COSDictionary about = new COSDictionary(picture.getCOSObject());
        for (COSName key : GONE) {
            about.removeItem(key);
        }
        about.setInt(COSName.BITS_PER_COMPONENT, 8);
        if (picture instanceof PDInlineImage) {
            about.setInt(COSName.BPC, 8);
            return new PDInlineImage(about, samples, resources);
        }
        COSStream plain = new COSStream();
        plain.addAll(about);
        try (OutputStream out = plain.createRawOutputStream()) {
            out.write(samples);
        }
        return new PDImageXObject(new PDStream(plain), resources);
    }
}
