package io.bindprep.paint;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/** Glyphs that a typeface lacks, for one document: names of any script come from file names, bookmarks and titles. */
final class AnyScript {
    private final List<DotFont> fonts = new ArrayList<>();
    private final Map<Integer, DotFont> fontOf = new HashMap<>();
    private @Nullable Unifont unifont;
    private @Nullable ArabicForms arabic;

    private Unifont unifont() {
        if (unifont == null) {
            try {
                unifont = Unifont.load();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return unifont;
    }

    /**
     * The text in characters that can be drawn: composed, without controls, Arabic joined, and what no typeface has by its
     * code point.
     */
    String settable(String text, IntPredicate known) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        StringBuilder clean = new StringBuilder();
        joined(composed).codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (type == Character.CONTROL
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR) {
                clean.append(' ');
            } else if (known.test(c) || type != Character.FORMAT && unifont().has(c)) {
                clean.appendCodePoint(c);
            } else if (type != Character.FORMAT) {
                clean.append(String.format(Locale.ROOT, "[U+%04X]", c));
            }
        });
        return clean.toString();
    }

    private String joined(String text) {
        if (!ArabicForms.needed(text)) {
            return text;
        }
        if (arabic == null) {
            arabic = new ArabicForms();
        }
        return arabic.shaped(text);
    }

    /** Width of a character, thousandths of an em. */
    double width(int codePoint) {
        Unifont.Glyph glyph = unifont().glyph(codePoint);
        return glyph == null || !glyph.advances() ? 0 : 1000.0 * glyph.width() / Unifont.HEIGHT;
    }

    /** The font that draws a settable character. */
    DotFont font(int codePoint) throws IOException {
        DotFont known = fontOf.get(codePoint);
        if (known != null) {
            return known;
        }
        Unifont.Glyph glyph = Objects.requireNonNull(unifont().glyph(codePoint), "a settable character has a glyph");
        if (fonts.isEmpty() || !fonts.get(fonts.size() - 1).take(codePoint, glyph)) {
            fonts.add(DotFont.empty());
            fonts.get(fonts.size() - 1).take(codePoint, glyph);
        }
        DotFont font = fonts.get(fonts.size() - 1);
        fontOf.put(codePoint, font);
        return font;
    }

    void finish() throws IOException {
        for (DotFont font : fonts) {
            font.finish();
        }
    }
}
