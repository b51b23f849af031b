package io.bindprep.paint;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A typeface embedded in one document: its widths, and lines that fit. */
public final class Type {
    /** Stand-in for a character that the typeface lacks. */
    private static final int MISSING = '?';

    private final PDType0Font font;
    private final Map<Integer, Double> widths = new HashMap<>();

    private Type(PDType0Font font) {
        this.font = font;
    }

    static Type load(PDDocument document, String resource) throws IOException {
        try (InputStream in = Type.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the typeface " + resource + " is not in the jar");
            }
            return new Type(PDType0Font.load(document, in, true));
        }
    }

    PDType0Font font() {
        return font;
    }

    /** The text with what cannot be set replaced: control and direction marks come from file names and bookmarks. */
    public String settable(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().forEach(c -> clean.appendCodePoint(known(c) ? c : MISSING));
        return clean.toString();
    }

    private boolean known(int codePoint) {
        int kind = Character.getType(codePoint);
        return kind != Character.CONTROL && kind != Character.FORMAT && width(codePoint) >= 0;
    }

    /** A number and its unit stay on one line. */
    private static String glued(String text) {
        return text.replaceAll("(?<=\\d) (?=(mm|in|um|g|kg|lb|ppi|pt|%)(?!\\w))", "\u00a0");
    }

    private double width(int codePoint) {
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
        for (String word : settable(glued(text)).split(" +")) {
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
