package io.bindprep.pdf;

import io.bindprep.page.Box;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The strip along an edge as Poppler's pdftoppm draws it, ten dots a millimetre. */
record PopplerStrip(int width, int height, byte[] rgb) {
    static final int PER_MM = 10;

    /** The lightest of 256 that counts as ink in any of the three colours: 4 %, as the check has it. */
    private static final int LIGHTEST = 245;

    private static final Pattern PPM = Pattern.compile("P6\\s+(\\d+)\\s+(\\d+)\\s+255\\s");

    /** Where the first ink from an edge lies; infinite where there is none in the strip, not a number where nothing comes. */
    static double firstInkMm(Path pdf, PageFacts page, PageEdge edge, double depthMm)
            throws IOException, InterruptedException {
        PopplerStrip strip = of(pdf, page, edge, depthMm);
        if (strip == null) {
            return Double.NaN;
        }
        for (int d = 0; d < strip.depth(edge); d++) {
            for (int a = 0; a < strip.along(edge); a++) {
                if (strip.inked(edge, d, a)) {
                    return d / (double) PER_MM;
                }
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The strip inside the trim; null where Poppler draws nothing. */
    static PopplerStrip of(Path pdf, PageFacts page, PageEdge edge, double depthMm)
            throws IOException, InterruptedException {
        Box c = page.crop();
        // Poppler draws the CropBox and knows no UserUnit
        double dots = PER_MM / page.userUnit();
        Rectangle2D crop = page.toReader()
                .createTransformedShape(new Rectangle2D.Double(c.x0(), c.y0(), c.width(), c.height()))
                .getBounds2D();
        int x = (int) Math.round(-crop.getX() * dots);
        int y = (int) Math.round(-crop.getY() * dots);
        int w = (int) Math.round(page.trimWidth().mm() * dots);
        int h = (int) Math.round(page.trimHeight().mm() * dots);
        int depth = (int) Math.round(depthMm * dots);
        switch (edge) {
            case LEFT -> w = Math.min(w, depth);
            case TOP -> h = Math.min(h, depth);
            case RIGHT -> {
                x += Math.max(0, w - depth);
                w = Math.min(w, depth);
            }
            case BOTTOM -> {
                y += Math.max(0, h - depth);
                h = Math.min(h, depth);
            }
        }
        Path picture = Files.createTempFile("strip", ".ppm");
        String number = Integer.toString(page.page());
        Process process = new ProcessBuilder(
                        "pdftoppm",
                        "-cropbox",
                        "-r",
                        "254",
                        "-f",
                        number,
                        "-l",
                        number,
                        "-x",
                        "" + x,
                        "-y",
                        "" + y,
                        "-W",
                        "" + w,
                        "-H",
                        "" + h,
                        pdf.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(picture.toFile())
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
        byte[] bytes = Files.readAllBytes(picture);
        Files.delete(picture);
        Matcher head = PPM.matcher(new String(bytes, 0, Math.min(30, bytes.length), StandardCharsets.ISO_8859_1));
        if (!head.lookingAt()) {
            return null;
        }
        int width = Integer.parseInt(head.group(1));
        int height = Integer.parseInt(head.group(2));
        byte[] rgb = java.util.Arrays.copyOfRange(bytes, head.end(), head.end() + 3 * width * height);
        return new PopplerStrip(width, height, rgb);
    }

    int depth(PageEdge edge) {
        return edge.upright() ? width : height;
    }

    int along(PageEdge edge) {
        return edge.upright() ? height : width;
    }

    /** Whether a dot is inked, so many dots in from an edge and from the head (the left). */
    boolean inked(PageEdge edge, int in, int along) {
        int at = 3
                * switch (edge) {
                    case LEFT -> along * width + in;
                    case RIGHT -> along * width + width - 1 - in;
                    case TOP -> in * width + along;
                    case BOTTOM -> (height - 1 - in) * width + along;
                };
        return Math.min(Math.min(rgb[at] & 0xff, rgb[at + 1] & 0xff), rgb[at + 2] & 0xff) <= LIGHTEST;
    }
}
