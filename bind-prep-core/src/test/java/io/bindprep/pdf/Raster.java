package io.bindprep.pdf;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
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
        String number = Integer.toString(page);
        return drawn(
                pdf,
                "page.pgm",
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
                "page");
    }

    /** Drawn by MuPDF, another such renderer; the test is skipped where it is not installed. */
    public static Raster ofMuPdf(Path pdf, int page) throws IOException, InterruptedException {
        return drawn(
                pdf,
                "page.pgm",
                "mutool",
                "draw",
                "-q",
                "-r",
                "254",
                "-c",
                "gray",
                "-o",
                "page.pgm",
                pdf.toString(),
                Integer.toString(page));
    }

    private static Raster drawn(Path pdf, String name, String... command) throws IOException, InterruptedException {
        assumeTrue(onPath(command[0]), command[0] + " is not installed");
        Path out = Files.createTempDirectory("raster");
        Path picture = out.resolve(name);
        String[] absolute = Arrays.stream(command)
                .map(c -> c.equals(pdf.toString()) ? pdf.toAbsolutePath().toString() : c)
                .toArray(String[]::new);
        Process process = new ProcessBuilder(absolute)
                .directory(out.toFile())
                .redirectErrorStream(true)
                .start();
        process.getInputStream().readAllBytes();
        if (process.waitFor() != 0) {
            throw new IllegalStateException(command[0] + " failed on " + pdf);
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

    /** As {@link #unlike}, of dots that are like none of those around the place where they were: glyphs may be set a dot aside. */
    public int astray(Raster other, int right, int down) {
        int astray = 0;
        for (int y = Math.max(0, down); y < Math.min(height, other.height + down); y++) {
            for (int x = Math.max(0, right); x < Math.min(width, other.width + right); x++) {
                if (Math.abs(at(x, y) - other.at(x - right, y - down)) > 64) {
                    astray += other.holds(at(x, y), x - right, y - down) ? 0 : 1;
                }
            }
        }
        return astray;
    }

    private boolean holds(int grey, int x, int y) {
        int least = 255;
        int most = 0;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                least = Math.min(least, at(x + dx, y + dy));
                most = Math.max(most, at(x + dx, y + dy));
            }
        }
        return grey >= least - 64 && grey <= most + 64;
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
