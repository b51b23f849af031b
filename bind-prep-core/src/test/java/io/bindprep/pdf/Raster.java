package io.bindprep.pdf;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page in grey, ten dots a millimetre, drawn by PDFBox or by Poppler. */
public record Raster(int width, int height, byte[] grey) {
    /** Dots a millimetre. */
    public static final int PER_MM = 10;

    private static final int DARK = 200;
    private static final Pattern PGM = Pattern.compile("P5\\s+(\\d+)\\s+(\\d+)\\s+255\\s");

    /** Drawn by PDFBox. */
    public static Raster ofPdfBox(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image =
                    new PDFRenderer(document).renderImageWithDPI(page - 1, 25.4f * PER_MM, ImageType.GRAY);
            byte[] grey = new byte[image.getWidth() * image.getHeight()];
            for (int i = 0; i < grey.length; i++) {
                grey[i] = (byte) image.getRaster().getSample(i % image.getWidth(), i / image.getWidth(), 0);
            }
            return new Raster(image.getWidth(), image.getHeight(), grey);
        }
    }

    /** Drawn by Poppler, a renderer that shares nothing with ours; the test is skipped where it is not installed. */
    public static Raster ofPoppler(Path pdf, int page) throws IOException, InterruptedException {
        assumeTrue(onPath("pdftoppm"), "pdftoppm (Poppler) is not installed");
        Path out = Files.createTempDirectory("raster");
        Path picture = out.resolve("page.pgm");
        String number = Integer.toString(page);
        Process process = new ProcessBuilder(
                        "pdftoppm",
                        "-r",
                        "254",
                        "-gray",
                        "-singlefile",
                        "-f",
                        number,
                        "-l",
                        number,
                        pdf.toString(),
                        out.resolve("page").toString())
                .redirectErrorStream(true)
                .start();
        process.getInputStream().readAllBytes();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("pdftoppm failed on " + pdf);
        }
        byte[] bytes = Files.readAllBytes(picture);
        Files.delete(picture);
        Files.delete(out);
        Matcher head = PGM.matcher(new String(bytes, 0, 30, StandardCharsets.ISO_8859_1));
        if (!head.lookingAt()) {
            throw new IllegalStateException("no picture of " + pdf);
        }
        int w = Integer.parseInt(head.group(1));
        int h = Integer.parseInt(head.group(2));
        byte[] grey = new byte[w * h];
        System.arraycopy(bytes, head.end(), grey, 0, w * h);
        return new Raster(w, h, grey);
    }

    /** Returns true if a command can be run. */
    public static boolean onPath(String command) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator)) {
            if (Files.isExecutable(Path.of(folder, command))) {
                return true;
            }
        }
        return false;
    }

    /** The grey of a dot; white beyond the page. */
    public int at(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= height ? 255 : grey[y * width + x] & 0xff;
    }

    /** Count of dots that differ clearly from another picture moved right and down by so many dots, of those both show. */
    public int unlike(Raster other, int right, int down) {
        int unlike = 0;
        for (int y = Math.max(0, down); y < Math.min(height, other.height + down); y++) {
            for (int x = Math.max(0, right); x < Math.min(width, other.width + right); x++) {
                if (Math.abs(at(x, y) - other.at(x - right, y - down)) > 64) {
                    unlike++;
                }
            }
        }
        return unlike;
    }

    /** Dots that print. */
    public int dark() {
        int dark = 0;
        for (byte b : grey) {
            if ((b & 0xff) < DARK) {
                dark++;
            }
        }
        return dark;
    }

    /** Millimetres from the left edge to the first dark dot, or from the right, top or bottom one. */
    public double ink(io.bindprep.page.PageEdge from) {
        boolean side = from.upright();
        int depth = side ? width : height;
        int along = side ? height : width;
        for (int d = 0; d < depth; d++) {
            for (int a = 0; a < along; a++) {
                int grey = switch (from) {
                    case LEFT -> at(d, a);
                    case RIGHT -> at(width - 1 - d, a);
                    case TOP -> at(a, d);
                    case BOTTOM -> at(a, height - 1 - d);
                };
                if (grey < DARK) {
                    return d / (double) PER_MM;
                }
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
