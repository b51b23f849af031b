package io.bindprep.pdf;

import io.bindprep.page.Box;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The strip inside the trim along an edge as another renderer draws it, ten dots a millimetre. */
record DrawnStrip(int width, int height, byte[] rgb) {
    static final int PER_MM = 10;

    /** The lightest of 256 that counts as ink in any of the three colours: 4 %, as the check has it. */
    static final int LIGHTEST = 245;

    private static final Pattern PPM = Pattern.compile("P6\\s+(?:#[^\\n]*\\n)?(\\d+)\\s+(\\d+)\\s+255\\s");

    /** Part of a drawn page. */
    private record Window(int x, int y, int w, int h) {
        static Window of(PageFacts page, PageEdge edge, double depthMm) {
            Box c = page.crop();
            // both draw the CropBox and know no UserUnit
            double dots = PER_MM / page.userUnit();
            Rectangle2D crop = page.toReader()
                    .createTransformedShape(new Rectangle2D.Double(c.x0(), c.y0(), c.width(), c.height()))
                    .getBounds2D();
            int x = (int) Math.round(-crop.getX() * dots);
            int y = (int) Math.round(-crop.getY() * dots);
            int w = (int) Math.round(page.trimWidth().mm() * dots);
            int h = (int) Math.round(page.trimHeight().mm() * dots);
            int depth = (int) Math.round(depthMm * dots);
            int deepW = edge.upright() ? Math.min(w, depth) : w;
            int deepH = edge.upright() ? h : Math.min(h, depth);
            return new Window(
                    edge == PageEdge.RIGHT ? x + w - deepW : x,
                    edge == PageEdge.BOTTOM ? y + h - deepH : y,
                    deepW,
                    deepH);
        }
    }

    /** By Poppler's pdftoppm; null where it draws nothing. */
    static DrawnStrip byPoppler(Path pdf, PageFacts page, PageEdge edge, double depthMm)
            throws IOException, InterruptedException {
        Window w = Window.of(page, edge, depthMm);
        String number = Integer.toString(page.page());
        return run(List.of(
                "pdftoppm",
                "-cropbox",
                "-r",
                "254",
                "-f",
                number,
                "-l",
                number,
                "-x",
                "" + w.x,
                "-y",
                "" + w.y,
                "-W",
                "" + w.w,
                "-H",
                "" + w.h,
                pdf.toString()));
    }

    /** By Ghostscript, as for a printer; null where it draws nothing. */
    static DrawnStrip byGhostscript(Path pdf, PageFacts page, PageEdge edge, double depthMm)
            throws IOException, InterruptedException {
        DrawnStrip whole = run(List.of(
                "gs",
                "-q",
                "-dSAFER",
                "-dBATCH",
                "-dNOPAUSE",
                "-dUseCropBox",
                "-dPrinted",
                "-r254",
                "-sDEVICE=ppmraw",
                "-dFirstPage=" + page.page(),
                "-dLastPage=" + page.page(),
                "-sOutputFile=-",
                pdf.toString()));
        if (whole == null) {
            return null;
        }
        Window window = Window.of(page, edge, depthMm);
        byte[] rgb = new byte[3 * window.w * window.h];
        Arrays.fill(rgb, (byte) 255);
        for (int y = 0; y < Math.min(window.h, whole.height - window.y); y++) {
            int n = Math.min(window.w, whole.width - window.x);
            System.arraycopy(whole.rgb, 3 * ((window.y + y) * whole.width + window.x), rgb, 3 * y * window.w, 3 * n);
        }
        return new DrawnStrip(window.w, window.h, rgb);
    }

    private static DrawnStrip run(List<String> command) throws IOException, InterruptedException {
        Path picture = Files.createTempFile("strip", ".ppm");
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(picture.toFile())
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
        byte[] bytes = Files.readAllBytes(picture);
        Files.delete(picture);
        Matcher head = PPM.matcher(new String(bytes, 0, Math.min(200, bytes.length), StandardCharsets.ISO_8859_1));
        if (!head.lookingAt()) {
            return null;
        }
        int width = Integer.parseInt(head.group(1));
        int height = Integer.parseInt(head.group(2));
        return new DrawnStrip(width, height, Arrays.copyOfRange(bytes, head.end(), head.end() + 3 * width * height));
    }

    /** Place of ink in the binding-edge frame, millimetres; null where there is none. */
    Rectangle2D inkMm(PageEdge edge, int lightest) {
        Rectangle2D ink = null;
        int depth = edge.upright() ? width : height;
        int along = edge.upright() ? height : width;
        for (int d = 0; d < depth; d++) {
            for (int a = 0; a < along; a++) {
                if (inked(edge, d, a, lightest)) {
                    Rectangle2D dot = new Rectangle2D.Double(
                            (double) d / PER_MM, (double) a / PER_MM, 1.0 / PER_MM, 1.0 / PER_MM);
                    ink = ink == null ? dot : ink.createUnion(dot);
                }
            }
        }
        return ink;
    }

    /** Returns true if a dot is inked, so many dots in from an edge and from the head (the left). */
    private boolean inked(PageEdge edge, int in, int along, int lightest) {
        int at = 3
                * switch (edge) {
                    case LEFT -> along * width + in;
                    case RIGHT -> along * width + width - 1 - in;
                    case TOP -> in * width + along;
                    case BOTTOM -> (height - 1 - in) * width + along;
                };
        return Math.min(Math.min(rgb[at] & 0xff, rgb[at + 1] & 0xff), rgb[at + 2] & 0xff) <= lightest;
    }
}
