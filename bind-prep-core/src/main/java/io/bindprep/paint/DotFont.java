package io.bindprep.paint;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.font.PDType3Font;

/** A Type 3 font of up to 256 glyphs drawn from dots, made glyph by glyph as they are used; its text can be searched. */
final class DotFont extends PDType3Font {
    private static final int GLYPHS = 256;

    private final COSDictionary drawings = new COSDictionary();
    private final COSArray differences = new COSArray();
    private final COSArray widths = new COSArray();
    private final Map<Integer, Integer> codes = new LinkedHashMap<>();

    private DotFont(COSDictionary dictionary) throws IOException {
        super(dictionary);
        differences.add(COSInteger.ZERO);
        COSDictionary encoding = new COSDictionary();
        encoding.setItem(COSName.DIFFERENCES, differences);
        dictionary.setItem(COSName.ENCODING, encoding);
        dictionary.setItem(COSName.CHAR_PROCS, drawings);
        dictionary.setItem(COSName.WIDTHS, widths);
        dictionary.setInt(COSName.FIRST_CHAR, 0);
    }

    static DotFont empty() throws IOException {
        float dot = 1f / Unifont.HEIGHT;
        COSDictionary dictionary = new COSDictionary();
        dictionary.setItem(COSName.TYPE, COSName.FONT);
        dictionary.setItem(COSName.SUBTYPE, COSName.TYPE3);
        dictionary.setItem(COSName.FONT_MATRIX, numbers(dot, 0, 0, dot, 0, 0));
        dictionary.setItem(
                COSName.FONT_BBOX,
                numbers(-Unifont.HEIGHT, -Unifont.BELOW, Unifont.HEIGHT, Unifont.HEIGHT - Unifont.BELOW));
        dictionary.setItem(COSName.RESOURCES, new COSDictionary());
        return new DotFont(dictionary);
    }

    private static COSArray numbers(float... values) {
        COSArray array = new COSArray();
        array.setFloatArray(values);
        return array;
    }

    /** Takes a glyph in; returns false where there is no room. */
    boolean take(int codePoint, Unifont.Glyph glyph) throws IOException {
        int code = codes.size();
        if (code == GLYPHS) {
            return false;
        }
        COSName name = COSName.getPDFName(String.format(Locale.ROOT, "u%04X", codePoint));
        int width = glyph.advances() ? glyph.width() : 0;
        codes.put(codePoint, code);
        differences.add(name);
        widths.add(COSInteger.get(width));
        dict.setInt(COSName.LAST_CHAR, code);
        COSStream drawing = new COSStream();
        write(drawing, width + " 0 d0\n" + outline(glyph));
        drawings.setItem(name, drawing);
        return true;
    }

    @Override
    protected byte[] encode(int codePoint) {
        int code = Objects.requireNonNull(codes.get(codePoint), "a glyph that was taken in");
        return new byte[] {(byte) code};
    }

    private static void write(COSStream stream, String text) throws IOException {
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(text.getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** Dots joined at their middles (marching squares), so that slanted strokes have no stairs. */
    private static String outline(Unifont.Glyph glyph) {
        StringBuilder path = new StringBuilder();
        for (int row = 0; row <= Unifont.HEIGHT; row++) {
            for (int column = 0; column <= glyph.width(); column++) {
                square(path, glyph, column, row);
            }
        }
        return path.append("f\n").toString();
    }

    /** Black share between the middles of four dots, the one at that column and row their lower right. */
    private static void square(StringBuilder path, Unifont.Glyph glyph, int column, int row) {
        boolean[] black = {
            glyph.dot(column - 1, row - 1),
            glyph.dot(column, row - 1),
            glyph.dot(column, row),
            glyph.dot(column - 1, row)
        };
        double left = glyph.shift() + column - 0.5;
        double top = Unifont.HEIGHT - Unifont.BELOW - row + 0.5;
        double[] x = {left, left + 1, left + 1, left};
        double[] y = {top, top, top - 1, top - 1};
        List<String> points = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            int next = (corner + 1) % 4;
            if (black[corner]) {
                points.add(x[corner] + " " + y[corner]);
            }
            if (black[corner] != black[next]) {
                points.add((x[corner] + x[next]) / 2 + " " + (y[corner] + y[next]) / 2);
            }
        }
        for (int i = 0; i < points.size(); i++) {
            path.append(points.get(i)).append(i == 0 ? " m\n" : " l\n");
        }
    }

    @Override
    public boolean isEmbedded() {
        return true;
    }

    /** Writes which letter each glyph is, for searching and copying. */
    void finish() throws IOException {
        StringBuilder map = new StringBuilder("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
                + "/CMapType 2 def\n1 begincodespacerange\n<00> <FF>\nendcodespacerange\n");
        for (Map.Entry<Integer, Integer> entry : codes.entrySet()) {
            map.append(String.format(
                    Locale.ROOT, "1 beginbfchar\n<%02X> <%04X>\nendbfchar\n", entry.getValue(), entry.getKey()));
        }
        COSStream toUnicode = new COSStream();
        write(toUnicode, map + "endcmap\nend\nend\n");
        dict.setItem(COSName.TO_UNICODE, toUnicode);
    }
}
