package io.bindprep.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetSizesTest {
    @ParameterizedTest
    @CsvSource({
        // ISO 216:2007 sizes and 7.1 tolerances; JIS P 0138:1998; ISO 217
        "A4,210,297,2,2",
        "A5,148,210,1.5,2",
        "A6,105,148,1.5,1.5",
        "A3,297,420,2,2",
        "B5,176,250,2,2",
        "B4,250,353,2,2",
        "JIS-B5,182,257,2,2",
        "JIS-B4,257,364,2,2",
        "RA4,215,305,2,2",
        "SRA4,225,320,2,2",
        "RA3,305,430,2,2",
        "SRA3,320,450,2,2"
    })
    void metric(String name, String w, String h, String tw, String th) {
        SheetSize size = Catalogue.builtIn().sizes().byName(name).orElseThrow();
        assertThat(size.width()).isEqualTo(Length.ofMm(w));
        assertThat(size.height()).isEqualTo(Length.ofMm(h));
        assertThat(size.toleranceWidth()).isEqualTo(Length.ofMm(tw));
        assertThat(size.toleranceHeight()).isEqualTo(Length.ofMm(th));
    }

    @Test
    void us() throws Exception {
        // ASME Y14.1: A 8.5 x 11 in, B 11 x 17 in; cut within 1/16 in (a college print shop's guide)
        SheetSize letter = Catalogue.builtIn().sizes().byName("Letter").orElseThrow();
        assertThat(letter.width()).isEqualTo(Length.ofInch(17, 2));
        assertThat(letter.toleranceHeight()).isEqualTo(Length.ofInch(1, 16));
        assertThat(Catalogue.builtIn().sizes().parse("trim", "tabloid").height())
                .isEqualTo(Length.ofInch(17, 1));
        assertThat(Catalogue.builtIn().sizes().parse("trim", "letter landscape").width())
                .isEqualTo(Length.ofInch(11, 1));
    }

    @Test
    void readsNumbersAlikeInEveryUnit() throws Exception {
        // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)
        SheetSize inch = Catalogue.builtIn().sizes().parse("trim", "8.5 x 11 in");
        for (String text :
                new String[] {"8-1/2 x 11 in", "215.9 x 279.4 mm", "21.59x27.94cm", "8.5in x 11in", "8.5 X 11 \""}) {
            SheetSize same = Catalogue.builtIn().sizes().parse("trim", text);
            assertThat(same.width()).as(text).isEqualTo(inch.width());
            assertThat(same.height()).as(text).isEqualTo(inch.height());
            assertThat(same.toleranceWidth()).as(text).isEqualTo(inch.toleranceWidth());
        }
        assertThat(Catalogue.builtIn().sizes().parse("trim", "200 x 100 mm").toleranceHeight())
                .isEqualTo(Length.ofMm("1.5"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // names in everyday use for ANSI, ISO and JIS sizes, from memory; two bare numbers are inches below 50
                "8.5x11 | 215.9 | 279.4",
                "8,5 x 11 in | 215.9 | 279.4",
                "8 1/2 x 11 | 215.9 | 279.4",
                "8-1/2 by 11 inches | 215.9 | 279.4",
                "210 x 297 | 210 | 297",
                "210x297mm | 210 | 297",
                "US Letter | 215.9 | 279.4",
                "letter paper | 215.9 | 279.4",
                "DIN A4 | 210 | 297",
                "A4 paper | 210 | 297",
                "ISO B5 landscape | 250 | 176",
                "11x17 | 279.4 | 431.8",
                "ledger | 279.4 | 431.8",
                "statement | 139.7 | 215.9"
            })
    void readsSizesAsPeopleTypeThem(String text, String width, String height) throws Exception {
        SheetSize size = Catalogue.builtIn().sizes().parse("trim", text);
        assertThat(size.width()).as(text).isEqualTo(Length.ofMm(width));
        assertThat(size.height()).as(text).isEqualTo(Length.ofMm(height));
    }

    @Test
    void nearestAndLimits() {
        SheetSize size = Catalogue.builtIn().sizes().nearest(Length.ofMm("295.2"), Length.ofMm("211"));
        assertThat(size.name()).isEqualTo("A4 landscape");
        // ISO 216:2007, 7.1: 2 mm off is within, a hair more is not
        assertThat(size.matches(Length.ofMm(295), Length.ofMm(212))).isTrue();
        assertThat(size.matches(Length.ofMm("294.99"), Length.ofMm(210))).isFalse();
    }

    @Test
    void nearestGoesByTheWorseDirection() {
        // 210 x 440 mm is A4 across, but 143 mm too long for it; tabloid (279.4 x 431.8) is 69.4 mm off at most, JIS-B4
        // (257 x 364) 76
        assertThat(Catalogue.builtIn()
                        .sizes()
                        .nearest(Length.ofMm(210), Length.ofMm(440))
                        .name())
                .isEqualTo("tabloid");
    }

    @ParameterizedTest
    @CsvSource({
        // ISO 216:2007, 7.1: 1.5 mm up to 150 mm, 2 mm above 150 to 600 mm, 3 mm above
        "150 x 150.01 mm,1.5,2",
        "600 x 600.01 mm,2,3",
        // an eighth of an inch to three metres (our own limits, no source)
        "1/8 in x 3000 mm,1.5,3"
    })
    void aSizeByNumbersIsCutToIsosTolerance(String text, String across, String up) throws Exception {
        SheetSize size = Catalogue.builtIn().sizes().parse("trim", text);
        assertThat(size.toleranceWidth()).isEqualTo(Length.ofMm(across));
        assertThat(size.toleranceHeight()).isEqualTo(Length.ofMm(up));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "A",
                "3.17 x 297 mm",
                "210 x 3000.01 mm",
                "A44",
                "210 mm",
                "8.5 x 279",
                "0 x 297 mm",
                "9000 x 297 mm",
                "1/0 x 2 in",
                "letter sideways"
            })
    void refuses(String text) {
        assertThatThrownBy(() -> Catalogue.builtIn().sizes().parse("trim", text))
                .as(text)
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.known()).contains("A4", "letter"));
    }
}
