package io.bindprep.pdf.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.cmap.CMap;
import org.apache.fontbox.cmap.CMapParser;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordMapTest {
    /** ISO 32000-1:2008, 9.10.3 has codes of one or two bytes in its example; no font has more than 65,536 of them. */
    @ParameterizedTest
    @CsvSource({
        "<0000> <FFFF> <0000>,true",
        "<20> <7E> <0020>,true",
        "<00000000> <FFFFFFFF> <0000>,false",
        "<0000> <FFFF> <0000> <0000> <FFFF> <0000> <0000> <FFFF> <0000>,false",
        "<FFFF> <0000> <0000>,true"
    })
    void aMapOfMoreCodesThanThereAreIsDropped(String ranges, boolean stays) throws Exception {
        try (COSStream map = new COSStream()) {
            try (OutputStream out = map.createOutputStream(COSName.FLATE_DECODE)) {
                out.write(("1 beginbfrange " + ranges + " endbfrange").getBytes(StandardCharsets.US_ASCII));
            }
            COSDictionary font = new COSDictionary();
            font.setItem(COSName.TO_UNICODE, map);
            WordMap.of(font);
            assertThat(font.containsKey(COSName.TO_UNICODE)).isEqualTo(stays);
        }
    }

    /** ISO 32000-1:2008, 9.10.3, Example 2, with a range by an array, a ligature and a comment. */
    private static final String PLAIN = """
            /CIDInit /ProcSet findresource begin 12 dict begin begincmap
            /CIDSystemInfo << /Registry (Adobe\\)) /Ordering (UCS) /Supplement 0 >> def
            1 begincodespacerange <0000> <FFFF> endcodespacerange
            % a comment 1 beginbfchar <0001> <0002> endbfchar
            2 beginbfrange
            <0000> <005E> <0020>
            <005F> <0061> [<00660066> <00660069> <00 66 0066 006C>]
            endbfrange
            1 beginbfchar <3A51> <D840DC3E> endbfchar
            1 beginbfchar <41> <e9> endbfchar
            endcmap""";

    @Test
    void aPlainMapTellsTheWordsThatPdfBoxTells() throws Exception {
        CMap reference = new CMapParser().parse(new RandomAccessReadBuffer(PLAIN.getBytes(StandardCharsets.US_ASCII)));
        WordMap map = read(PLAIN, true);
        assertThat(map).isNotNull();
        for (int code = 0; code < 0x10000; code++) {
            assertThat(map.words(code)).as("code %x", code).isEqualTo(reference.toUnicode(code));
        }
        assertThat(map.words(0x60)).isEqualTo("fi");
        assertThat(map.words(0x41)).isEqualTo("\u00e9");
    }

    /** Left to PDFBox: another map in use, codes of three bytes, a range over two rows, names, strings cut short, no code. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/Adobe-Japan1-UCS2 usecmap 1 beginbfchar <0041> <0041> endbfchar",
                "1 beginbfchar <000041> <0041> endbfchar",
                "1 beginbfrange <00F0> <0110> <0041> endbfrange",
                "1 beginbfrange <0000> <0020> <00F0> endbfrange",
                "1 beginbfchar <0041> /A endbfchar",
                "1 beginbfchar <0041> <0041> <00",
                "1 beginbfchar <041> <0041> endbfchar",
                "1 beginbfrange <0000> <0002> [<0041> <0042>] endbfrange",
                "begincmap endcmap"
            })
    void anotherMapIsLeftToPdfBox(String text) throws Exception {
        assertThat(read(text, true)).isNull();
    }

    @Test
    void aFontThatTheFileDoesNotHoldIsLeftToPdfBox() throws Exception {
        assertThat(read(PLAIN, false)).isNull();
    }

    private static WordMap read(String text, boolean embedded) throws Exception {
        try (COSStream map = new COSStream();
                COSStream program = new COSStream()) {
            try (OutputStream out = map.createOutputStream(COSName.FLATE_DECODE)) {
                out.write(text.getBytes(StandardCharsets.US_ASCII));
            }
            COSDictionary font = new COSDictionary();
            font.setItem(COSName.TO_UNICODE, map);
            COSDictionary descriptor = new COSDictionary();
            if (embedded) {
                descriptor.setItem(COSName.FONT_FILE2, program);
            }
            font.setItem(COSName.FONT_DESC, descriptor);
            return WordMap.of(font);
        }
    }
}
