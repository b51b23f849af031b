package io.bindprep.pdf.strip;

import io.bindprep.picture.Picture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Encodes an image as PNG or JPEG, whichever is smaller: lettering is smaller and sharper as PNG, a photograph as JPEG. */
final class PictureFile {
    private static final float JPEG_QUALITY = 0.8f;

    private PictureFile() {}

    static Picture encode(BufferedImage image) throws IOException {
        BufferedImage lean = isGrey(image) ? grey(image) : image;
        byte[] png = write(lean, "png", false);
        byte[] jpeg = write(lean, "jpeg", true);
        boolean lossless = png.length <= jpeg.length;
        return new Picture(
                lossless ? "image/png" : "image/jpeg",
                Base64.getEncoder().encodeToString(lossless ? png : jpeg),
                image.getWidth(),
                image.getHeight());
    }

    private static boolean isGrey(BufferedImage image) {
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                if (((rgb >> 16) & 0xff) != ((rgb >> 8) & 0xff) || ((rgb >> 8) & 0xff) != (rgb & 0xff)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** In 16 tones: a quarter of the bytes, and edges of lettering stay smooth. */
    private static BufferedImage grey(BufferedImage image) {
        byte[] tones = new byte[16];
        for (int i = 0; i < tones.length; i++) {
            tones[i] = (byte) (i * 17);
        }
        java.awt.image.IndexColorModel model = new java.awt.image.IndexColorModel(4, 16, tones, tones, tones);
        BufferedImage lean =
                new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_BINARY, model);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int tone = ((image.getRGB(x, y) & 0xff) + 8) / 17;
                lean.getRaster().setSample(x, y, 0, tone);
            }
        }
        return lean;
    }

    private static byte[] write(BufferedImage image, String format, boolean lossy) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            if (lossy) {
                param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                param.setCompressionQuality(JPEG_QUALITY);
            }
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
