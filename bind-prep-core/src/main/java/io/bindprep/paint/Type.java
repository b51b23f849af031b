package io.bindprep.paint;

import io.bindprep.wording.LengthText;
import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A typeface embedded in one document, with Unifont for what it lacks: widths, and lines that fit. */
public final class Type {
    private final PDType0Font font;
    private final AnyScript others;
    private final Map<Integer, Double> widths = new HashMap<>();

    private Type(PDType0Font font, AnyScript others) {
        this.font = font;
        this.others = others;
    }

    static Type load(PDDocument document, String resource, AnyScript others) throws IOException {
        try (InputStream in = Type.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the typeface " + resource + " is not in the jar");
            }
            return new Type(PDType0Font.load(document, in, true), others);
        }
    }

    /** A stretch of text in one font. */
    record Run(PDFont font, String text) {}

    /** The settable text from left to right. */
    List<Run> runs(String settable) throws IOException {
        List<Run> runs = new ArrayList<>();
        PDFont now = font;
        StringBuilder text = new StringBuilder();
        for (int c : VisualOrder.of(settable).codePoints().toArray()) {
            PDFont next = known(c) ? font : others.font(c);
            if (next != now && !text.isEmpty()) {
                runs.add(new Run(now, text.toString()));
                text.setLength(0);
            }
            now = next;
            text.appendCodePoint(c);
        }
        runs.add(new Run(now, text.toString()));
        return runs;
    }

    /** The text in characters that can be drawn; what no typeface has is named by its code point. */
    public String settable(String text) {
        boolean plain = text.codePoints().allMatch(this::known) && Normalizer.isNormalized(text, Normalizer.Form.NFC);
        return plain ? text : others.settable(text, this::known);
    }

    private boolean known(int codePoint) {
        int kind = Character.getType(codePoint);
        return kind != Character.CONTROL && kind != Character.FORMAT && ownWidth(codePoint) >= 0;
    }

    private double width(int codePoint) {
        double own = ownWidth(codePoint);
        return own >= 0 ? own : others.width(codePoint);
    }

    private double ownWidth(int codePoint) {
        return widths.computeIfAbsent(codePoint, c -> {
            try {
                return (double) font.getStringWidth(Character.toString(c));
            } catch (IOException | IllegalArgumentException e) {
                return -1.0;
            }
        });
    }

    /** Width of a settable text, millimetres. */
    public double widthMm(String settable, double points) {
        double units = settable.codePoints().mapToDouble(this::width).sum();
        return units / 1000 * points / Ink.POINTS_PER_MM;
    }

    /** Broken at blanks, and within a word where it is longer than a line. */
    public List<String> lines(String text, double points, double roomMm) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : settable(LengthText.glued(text)).split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (widthMm(longer, points) <= roomMm) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (widthMm(line, points) > roomMm) {
                int cut = fitting(line, points, roomMm);
                lines.add(line.substring(0, cut));
                line = line.substring(cut);
            }
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private int fitting(String word, double points, double roomMm) {
        int cut = word.offsetByCodePoints(0, 1);
        while (cut < word.length()) {
            int next = word.offsetByCodePoints(cut, 1);
            if (widthMm(word.substring(0, next), points) > roomMm) {
                break;
            }
            cut = next;
        }
        return cut;
    }
}
