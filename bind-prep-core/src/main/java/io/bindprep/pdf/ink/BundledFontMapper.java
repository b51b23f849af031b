package io.bindprep.pdf.ink;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers every font that is not embedded with the one that PDFBox ships, so that no result depends on the fonts of the
 * machine and no font folder is searched.
 */
final class BundledFontMapper implements FontMapper {
    private static final String BUNDLED = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private @Nullable TrueTypeFont font;

    private synchronized TrueTypeFont bundled() {
        if (font == null) {
            try (InputStream in = FontMapper.class.getResourceAsStream(BUNDLED)) {
                if (in == null) {
                    throw new IOException("PDFBox's own font is missing: " + BUNDLED);
                }
                font = new TTFParser().parse(new RandomAccessReadBuffer(new BufferedInputStream(in)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return font;
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(bundled(), true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(bundled(), true);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String baseFont, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo systemInfo) {
        return new CIDFontMapping(null, bundled(), true);
    }
}
