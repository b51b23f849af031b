package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.ProblemWords;
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
            })
    void ofOtherStocksTheNearestIsTold(String typed, String near) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.STOCK, typed));
        String told = ProblemWords.setting("--stock", null, e, "bind-prep list");
        assertThat(told.lines().toList().get(0)).endsWith("nearest in the table: \"" + near + "\"");
        assertThat(told.lines()).as("never the whole table").hasSize(2);
        assertThat(told).doesNotContain("newsprint");
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
            })
    void sizesInMillimetres(String typed, double width, double height) throws SettingException {
        Trim trim = job(JobKeys.TRIM, typed).trim();
        assertThat(trim.width().mm()).isEqualTo(width);
        assertThat(trim.height().mm()).isEqualTo(height);
    }

    @ParameterizedTest
    @CsvSource({"A4 quer", "a4 hochformat", "A4+"})
    void ofOtherSizesTheNearestIsTold(String typed) {
        SettingException e = catchThrowableOfType(SettingException.class, () -> job(JobKeys.TRIM, typed));
        String told = ProblemWords.setting("--trim", null, e, "bind-prep list");
        assertThat(told.lines().toList().get(0)).endsWith("nearest in the table: \"A4\"");
        assertThat(told).doesNotContain("Did you mean", "tabloid");
    }

    @ParameterizedTest
    @CsvSource({
        "sides,duplex,TWO",
        "sides,Duplex,TWO",
        "sides,simplex,ONE",
        "sides,both,TWO",
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
}
