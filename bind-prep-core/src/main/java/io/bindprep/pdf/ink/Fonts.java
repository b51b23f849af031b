package io.bindprep.pdf.ink;

import io.bindprep.pdf.syntax.ShownText;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.apache.fontbox.afm.CharMetric;
import org.apache.fontbox.afm.FontMetrics;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontFactory;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.jspecify.annotations.Nullable;

/** Fonts of one document, parsed once each, and the outlines of the glyphs that came near a binding edge. */
final class Fonts {
    private static final String NOT_DEFINED = ".notdef";
    private static final int MOST_FONTS = 1_000;
    private static final int MOST_LOADED = 64;
    private static final int MOST_GLYPHS = 500;
    private static final int MOST_WORDS = 120;
    /** Typesetters kern by less and space words by more, thousandths of the font size; common practice, no source. */
    private static final float WORD_GAP = 180;

    static {
        // a font that is not embedded must not send PDFBox searching this machine's folders
        FontMappers.set(new BundledFontMapper());
    }

    /** Keyed by the dictionary's identity, which PDFBox keeps while the document is open; least recently used first. */
    private final Map<Key, TextFont> fonts = new LinkedHashMap<>(32, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, TextFont> eldest) {
            if (size() <= MOST_FONTS) {
                return false;
            }
            loaded.remove(eldest.getValue());
            return true;
        }
    };

    /** Those whose program is in memory, least recently loaded first. */
    private final Set<TextFont> loaded = new LinkedHashSet<>();

    private record Key(COSDictionary dictionary) {
        @Override
        public boolean equals(Object o) {
            return o instanceof Key k && k.dictionary == dictionary;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(dictionary);
        }
    }

    TextFont get(COSDictionary dictionary) throws IOException {
        Key key = new Key(dictionary);
        TextFont font = fonts.get(key);
        if (font == null) {
            font = new TextFont(dictionary, this);
            fonts.put(key, font);
        }
        return font;
    }

    /** A font with its program, for which another may have to leave the memory. */
    PDFont load(TextFont font) throws IOException {
        COSDictionary dictionary = font.dictionary();
        font.words = WordMap.of(dictionary);
        PDFont with = PDFontFactory.createFont(font.words == null ? dictionary : WordMap.without(dictionary));
        if (font.words != null && !with.isEmbedded()) {
            font.words = null; // a program that cannot be read: what stands in for it is chosen by the words
            with = PDFontFactory.createFont(dictionary);
        }
        with = withPublishedWidths(dictionary, with);
        if (loaded.size() >= MOST_LOADED) {
            TextFont eldest = loaded.iterator().next();
            loaded.remove(eldest);
            eldest.unload();
        }
        loaded.add(font);
        return with;
    }

    /**
     * A standard font that is not embedded and states no widths has the published ones, whatever its encoding; PDFBox
     * takes the substitute's where the encoding has differences.
     */
    private static PDFont withPublishedWidths(COSDictionary dictionary, PDFont font) throws IOException {
        FontMetrics metrics = Standard14Fonts.getAFM(font.getName());
        if (metrics == null
                || font.isEmbedded()
                || dictionary.containsKey(COSName.WIDTHS)
                || !(font instanceof PDSimpleFont simple)
                || simple.getEncoding() == null) {
            return font;
        }
        Map<String, Float> published = new HashMap<>();
        for (CharMetric metric : metrics.getCharMetrics()) {
            published.put(metric.getName(), metric.getWx());
        }
        COSArray widths = new COSArray();
        for (int code = 0; code < 256; code++) {
            String name = simple.getEncoding().getName(code);
            Float width = published.get(name);
            // a character of another font, such as a Greek one in Helvetica, is as wide as the substitute's
            widths.add(
                    new COSFloat(width != null ? width : NOT_DEFINED.equals(name) ? 0 : font.getWidthFromFont(code)));
        }
        COSDictionary stated = new COSDictionary(dictionary);
        stated.setInt(COSName.FIRST_CHAR, 0);
        stated.setInt(COSName.LAST_CHAR, 255);
        stated.setItem(COSName.WIDTHS, widths);
        return PDFontFactory.createFont(stated);
    }

    /** The outline of a glyph in text space (1 is the font size), empty where it paints nothing. */
    Path2D outline(TextFont font, int code) throws IOException {
        Path2D path = font.outlines.get(code);
        if (path == null) {
            path = make(font.pdf(), code);
            if (font.outlines.size() < MOST_GLYPHS) {
                font.outlines.put(code, path);
            }
        }
        return path;
    }

    /** Bounds of that outline, empty where it paints nothing. */
    Rectangle2D box(TextFont font, int code) throws IOException {
        Rectangle2D box = font.boxes.get(code);
        if (box == null) {
            box = Outlines.bounds(outline(font, code));
            if (font.boxes.size() < MOST_GLYPHS) {
                font.boxes.put(code, box);
            }
        }
        return box;
    }

    private static Path2D make(PDFont font, int code) {
        try {
            if (!font.isEmbedded()) {
                Path2D standard = standardBox(font, code);
                if (standard != null) {
                    return standard;
                }
            }
            if (font instanceof PDVectorFont vector) {
                java.awt.geom.GeneralPath drawn = vector.getNormalizedPath(code);
                Path2D lacking = font.isEmbedded() ? null : StandIn.lacking(font, code, drawn);
                return lacking == null ? scaled(drawn, font, code) : lacking;
            }
        } catch (IOException | RuntimeException e) {
            return StandIn.box(font, code); // a broken glyph still takes its place
        }
        return StandIn.box(font, code);
    }

    private static Path2D scaled(java.awt.geom.GeneralPath outline, PDFont font, int code) throws IOException {
        AffineTransform t = font.getFontMatrix().createAffineTransform();
        if (!font.isEmbedded() && font.hasExplicitWidth(code)) {
            float own = font.getWidthFromFont(code);
            float stated = font.getWidth(code);
            if (own > 0 && Math.abs(own - stated) > 1) {
                t.scale(stated / own, 1); // the substitute is drawn at the width the document states
            }
        }
        return new Path2D.Double(outline, t);
    }

    /** The published bounding box of a standard font's glyph (Adobe Font Metrics), stretched to the stated width. */
    private static @Nullable Path2D standardBox(PDFont font, int code) throws IOException {
        FontMetrics metrics = Standard14Fonts.getAFM(font.getName());
        if (metrics == null || !(font instanceof PDSimpleFont simple) || simple.getEncoding() == null) {
            return null;
        }
        String name = simple.getEncoding().getName(code);
        for (CharMetric metric : metrics.getCharMetrics()) {
            if (metric.getName().equals(name)) {
                BoundingBox b = metric.getBoundingBox();
                if (!(b.getWidth() > 0 && b.getHeight() > 0)) {
                    return new Path2D.Double(); // the space
                }
                double stretch = metric.getWx() > 0 ? font.getWidth(code) / metric.getWx() : 1;
                return StandIn.rectangle(
                        b.getLowerLeftX() * stretch / 1000,
                        b.getLowerLeftY() / 1000.0,
                        b.getUpperRightX() * stretch / 1000,
                        b.getUpperRightY() / 1000.0);
            }
        }
        return null;
    }

    /** Words of a show operator's strings, as far as the font tells; a wide gap between two of them is a space. */
    static String words(TextFont font, ShownText parts) {
        StringBuilder out = new StringBuilder();
        try {
            for (int i = 0; i < parts.size() && out.length() <= MOST_WORDS; i++) {
                if (parts.isString(i)) {
                    decode(font, parts.bytes(), parts.from(i), parts.to(i), out);
                } else if (parts.number(i) < -WORD_GAP) {
                    out.append(' ');
                }
            }
        } catch (IOException | RuntimeException e) {
            return "";
        }
        int[] visible = out.codePoints()
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? ' ' : c)
                .limit(MOST_WORDS)
                .toArray();
        return new String(visible, 0, visible.length).strip();
    }

    private static void decode(TextFont font, byte[] bytes, int from, int to, StringBuilder out) throws IOException {
        ByteArrayInputStream in = new ByteArrayInputStream(bytes, from, Math.min(to - from, MOST_WORDS * 2));
        while (in.available() > 0) {
            String s = font.words(font.code(in));
            out.append(s == null ? "?" : s);
        }
    }

    /** Returns true if a glyph paints nothing. */
    static boolean blank(Path2D outline) {
        return outline.getPathIterator(null).isDone();
    }
}
