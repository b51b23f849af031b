package io.bindprep.pdf.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
            WordMap.bound(font);
            assertThat(font.containsKey(COSName.TO_UNICODE)).isEqualTo(stays);
        }
    }
}
