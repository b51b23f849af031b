package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.ProblemWords;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values as people type them: understood, or told the nearest of the table in one line, never the whole table. */
class EverydayWordsTest {
    private static Job job(String key, String value) throws SettingException {
        return JobReader.toJob(JobSettings.of(Map.of(key, value)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "20 lb bond|bond-20",
                "20lb bond|bond-20",
                "20# bond|bond-20",
                "20# Bond|bond-20",
                "20 lb copy paper|bond-20",
                "bond 20|bond-20",
                "24 lb bond|bond-24",
                "65 lb cover|cover-65",
                "65# cover|cover-65",
                "80 lb text|text-80",
                "100# text|text-100",
                "60 lb offset|offset-60",
                "110# index|index-110",
                "tag 150|tag-150",
                "tag 150#|tag-150",
                "24 lb. bond|bond-24",
                "20-lb bond|bond-20",
                "20 pound bond|bond-20",
                "28 lb laser|bond-28",
                "70 lb book|text-70",
                "110 lb index|index-110",
                "30# newsprint|newsprint-30",
                "7 mil clear|clear-7mil",
                "14 pt. C1S|c1s-14pt",
                "10pt c1s|c1s-10pt",
                "10 pt C1S|c1s-10pt",
            })
    void stocksByTheirLabels(String typed, String name) throws SettingException {
        assertThat(job(JobKeys.STOCK, typed).stock().name()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "80 gsm 0,104 mm|104",
                "80 g/m2 104 um|104",
                "80g/m² 104 µm|104",
                "80 g 104 um|104",
                "80 gsm vol 1,3|104",
                "80 gsm bulk 1.3|104",
                "25 sheets = 2,6 mm|104",
                "0,1 mm|100",
                ".1 mm|100",
                ",1 mm|100",
                "80 gr 104 microns|104",
                "80 grams 104 mic|104",
                "80 g/sqm 104 um|104",
                "25 sheets 2.6 mm|104",
                "25 leaves is 2.6 mm|104",
                // a ream is 500 sheets (ISO 4046)
                "ream = 52 mm|104",
                // 1 mil is 25.4 um
                "10 mil|254",
                ".0047\"|119.38",
                "0.0047\u2033|119.38",
                "2 mm greyboard|2000",
            })
    void stocksByTheirNumbers(String typed, String um) throws SettingException {
        assertThat(job(JobKeys.STOCK, typed).stock().caliperUm()).isEqualByComparingTo(um);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "24# text|text-70",
                "20 lb|bond-20",
                "28#|bond-28",
                "80 gsm|uncoated-80gsm",
                "80 g/m2|uncoated-80gsm",
                "80 g/qm|uncoated-80gsm",
                "115 gsm silk|offset-80",
                "10pt|c1s-10pt",
                "12 pt C2S|c1s-12pt",
                "copy paper|bond-20",
                "cardstock|cover-65",
                "acetate|film-75",
                "chipboard|coverboard-30",
                "grey board|coverboard-30",
                "100#|text-100",
                "20 lb paper|bond-20",
                "32 lb laser|bond-28",
                "60 lb opaque|offset-60",
                "65 lb cardstock|cover-65",
                "110 lb cardstock|index-110",
                // 67 lb on 22.5 x 28.5 in is 147 g/m2 (XJDF 2.2 App. B.1); of the cover papers 65 lb is nearest
                "67# vellum bristol|cover-65",
                "90gr|bond-24",
                "120 g|ledger-32",
                "300 gsm|index-170",
                "A4 80gsm|uncoated-80gsm",
                "80 gsm copy paper|uncoated-80gsm",
                "7 mil pvc|clear-7mil",
                "12pt cover|c1s-12pt",
                "20 lb bond (75 gsm)|bond-20",
            })
    void ofOtherStocksTheNearestIsTold(String typed, String near) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.STOCK, typed));
        String told = ProblemWords.setting("--stock", null, e, "bind-prep list");
        assertThat(told.lines().toList().get(0)).endsWith("nearest in the table: \"" + near + "\"");
        assertThat(told.lines()).as("never the whole table").hasSize(2);
        assertThat(told).doesNotContain("newsprint");
    }

    @ParameterizedTest
    @CsvSource({"100lb gloss text,text-100", "80# matte cover,cover-80", "130 gsm silk,ledger-32"})
    void aCoatedPaperIsToldThatItsWeightIsNoThickness(String typed, String near) {
        // gloss coated paper has a bulk of 0.74 to 0.99 cm3/g, smooth text one of 1.35 (common practice; JCP A91)
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.STOCK, typed));
        assertThat(e)
                .hasMessageContaining("coated papers differ in thickness")
                .hasMessageEndingWith("\"" + near + "\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "8 1/2 x 11|8.5|11",
                "8-1/2 x 11|8.5|11",
                "8½ x 11|8.5|11",
                "8.5x11|8.5|11",
                "8.5 x 11 inches|8.5|11",
                "8.5\" x 11\"|8.5|11",
                "8,5 x 11 in|8.5|11",
                "8 1/2 by 11|8.5|11",
                "letter|8.5|11",
                "US letter|8.5|11",
                "ANSI A|8.5|11",
                "statement|5.5|8.5",
                "half letter|5.5|8.5",
                "ledger|11|17",
                "11x17|11|17",
                "6x9|6|9",
                "8\u00bd\u00d711\u2033|8.5|11",
                "8.5\u201d x 11\u201d|8.5|11",
                "8 1/2\" x 11\"|8.5|11",
                "letter size|8.5|11",
                "US-Letter|8.5|11",
                "half size letter|5.5|8.5",
                "legal|8.5|14",
                "tabloid|11|17",
                "letter, landscape|11|8.5",
                // PWG 5101.1: na_arch-b, na_foolscap, na_quarto, na_govt-letter, na_super-b
                "Arch B|12|18",
                "foolscap|8.5|13",
                "folio|8.5|13",
                "quarto|8.5|10.83",
                "government letter|8|10",
                "super B|13|19",
                // half letter by a US trade name, and 6 x 9 in (common practice, no source)
                "digest|5.5|8.5",
                "US trade|6|9",
            })
    void sizesInInches(String typed, double width, double height) throws SettingException {
        Trim trim = job(JobKeys.TRIM, typed).trim();
        assertThat(trim.width().inches()).isEqualTo(width);
        assertThat(trim.height().inches()).isEqualTo(height);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "A4|210|297",
                "DIN A4|210|297",
                "a4 portrait|210|297",
                "A4 landscape|297|210",
                "ISO B5|176|250",
                "JIS B5|182|257",
                "210x297|210|297",
                "210 × 297 mm|210|297",
                "210*297|210|297",
                "210mm x 297mm|210|297",
                "21,0 x 29,7 cm|210|297",
                "21x29,7|210|297",
                "14.8 x 21|148|210",
                "A 4|210|297",
                "DINA5|148|210",
                "a4 quer|297|210",
                "A4 Querformat|297|210",
                "A4-landscape|297|210",
                "landscape A4|297|210",
                "a4 hochformat|210|297",
                "B5 (JIS)|182|257",
                "JB5|182|257",
                "half A4|148|210",
                // ISO 216:2007; JIS P 0138:1998; PWG 5101.1 om_folio
                "A2|420|594",
                "B6|125|176",
                "JIS B6|128|182",
                "F4|210|330",
                // BPIF and Publishers Association, standard metric book sizes; A and B formats are those of paperbacks
                "demy octavo|138|216",
                "Demy 8vo|138|216",
                "royal 8vo|156|234",
                "crown 8vo|123|186",
                "large crown 8vo|129|198",
                "crown 4to|189|246",
                "crown quarto landscape|246|189",
                "demy quarto|219|276",
                "royal quarto|237|312",
                "B format|129|198",
            })
    void sizesInMillimetres(String typed, double width, double height) throws SettingException {
        Trim trim = job(JobKeys.TRIM, typed).trim();
        assertThat(trim.width().mm()).isEqualTo(width);
        assertThat(trim.height().mm()).isEqualTo(height);
    }

    @ParameterizedTest
    @CsvSource({
        "A4 wide,A4",
        "A4+,A4",
        "a4 sideways,A4",
        "A4R,A4",
        "leter,letter",
        // an envelope takes the size it is named for (ISO 269), a postcard is A6 (UPU)
        "C5,A5",
        "postcard,A6",
        "oficio,foolscap",
        "government,government-letter"
    })
    void ofOtherSizesTheNearestIsTold(String typed, String near) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.TRIM, typed));
        String told = ProblemWords.setting("--trim", null, e, "bind-prep list");
        assertThat(told.lines().toList().get(0)).contains("nearest in the table: \"" + near + "\" (");
        assertThat(told.lines()).as("never the whole table").hasSize(2);
        assertThat(told).doesNotContain("Did you mean", "tabloid");
    }

    @ParameterizedTest
    @CsvSource({
        "demy,demy-octavo,demy-quarto",
        "royal,royal-octavo,royal-quarto",
        "crown,crown-octavo,crown-quarto",
        "octavo,crown-octavo,demy-octavo",
        "JIS,JIS-B4,JIS-B5"
    })
    void aNameOfSeveralSizesIsToldWhich(String typed, String one, String other) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.TRIM, typed));
        String told = ProblemWords.setting("--trim", null, e, "bind-prep list");
        assertThat(told.lines().toList().get(0))
                .startsWith("--trim: \"" + typed + "\" can be ")
                .contains("\"" + one + "\" (", "\"" + other + "\" (")
                .endsWith(": say which");
        assertThat(told).doesNotContain("Did you mean", "tabloid");
    }

    @ParameterizedTest
    @CsvSource({
        "sides,duplex,TWO",
        "sides,Duplex,TWO",
        "sides,simplex,ONE",
        "sides,both,TWO",
        "sides,double sided,TWO",
        "sides,2-sided,TWO",
        "sides,both sides,TWO",
        "sides,recto verso,TWO",
        "sides,4/4,TWO",
        "sides,4/0,ONE",
        "sides,1 sided,ONE",
        "sides,front only,ONE",
        "sides,head to toe,TWO_HEAD_TO_FOOT",
        "binding,twin loop wire,WIRE",
        "binding,wire bound,WIRE",
        "binding,plastic spiral,COIL",
        "binding,comb bound,COMB",
        "binding,3-ring binder,RINGS",
        "binding,2-hole,RINGS",
        "binding-edge,left side,LEFT",
        "units,millimetres,METRIC",
        "units,mm and inches,BOTH",
        "sides,single,ONE",
        "sides,tumble,TWO_HEAD_TO_FOOT",
        "sides,head to foot,TWO_HEAD_TO_FOOT",
        "binding,Coil,COIL",
        "binding,spiral,COIL",
        "binding,twin loop,WIRE",
        "binding,plastic comb,COMB",
        "binding,ring binder,RINGS",
        "binding-edge,Left,LEFT",
        "binding-edge,head,TOP",
        "units,mm,METRIC",
        "units,inches,INCH"
    })
    void wordsOfPrintersAndShops(String key, String typed, String constant) throws SettingException {
        Job job = job(key, typed);
        Enum<?> read = switch (key) {
            case "sides" -> job.sides();
            case "binding" -> job.binding();
            case "binding-edge" -> job.bindingEdge();
            default -> job.units();
        };
        assertThat(read.name()).isEqualTo(constant);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "10mm|10",
                "10 millimeters|10",
                "10 millimetres|10",
                "1,2 cm|12",
                "3/8\"|9.525",
                "3/8 inch|9.525",
                ".375 in|9.525",
                "0,375 inches|9.525",
                "⅜ in|9.525",
                "36 pt|12.7",
                "3/8\u201d|9.525",
                "3\u20448 in|9.525",
                "\u2153 in|8.466666666666667",
                ",375 in|9.525",
            })
    void lengthsWithTheirUnits(String typed, double mm) throws SettingException {
        assertThat(job(JobKeys.BINDING_MARGIN, typed).bindingMargin()).isEqualTo(Length.ofMeasuredMm(mm));
    }

    @ParameterizedTest
    @CsvSource({"10", "3/8", ".375", "1 1/4"})
    void aBareNumberIsToldItsUnit(String typed) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.BINDING_MARGIN, typed));
        assertThat(e).hasMessage("\"" + typed + "\" has no unit");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"5\u20138|5|8", "5 to 8|5|8", "5..8|5|8", "pp. 5-8|5|8", "p5|5|5", "5 and 8|5|8", "5 & 8|5|8"})
    void pagesAsPeopleListThem(String typed, int first, int last) throws SettingException {
        List<PageRange> pages = PageRange.readAll("keep", typed);
        assertThat(pages.get(0).first()).isEqualTo(first);
        assertThat(pages.get(pages.size() - 1).last()).isEqualTo(last);
        assertThat(job(JobKeys.ROTATED, typed).special().rotated()).hasSameSizeAs(pages);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1,000", "1.000", "1 000"})
    void thousandsAreNoFraction(String typed) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.COPIES, typed));
        assertThat(e.remedy()).isEqualTo("Write the number in figures alone: 1000.");
    }

    @ParameterizedTest
    @CsvSource({"5 percent,5,0", "10 sheets,0,10", "'5 %, 10 sheets',5,10"})
    void oversInWords(String typed, int percent, int least) throws SettingException {
        Overs overs = job(JobKeys.OVERS, typed).supply().overs();
        assertThat(overs.percent()).isEqualByComparingTo(String.valueOf(percent));
        assertThat(overs.least()).isEqualTo(least);
    }
}
