package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.catalogue.Method;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobReaderTest {
    private static Job job(String yaml) throws SettingException {
        return JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
    }

    private static SettingException wrong(String yaml) {
        return catchThrowableOfType(SettingException.class, () -> job(yaml));
    }

    @Test
    void everyBuiltInValue() throws SettingException {
        Job job = JobReader.toJob(JobSettings.empty());
        assertThat(job.copies()).isEqualTo(1);
        assertThat(job.sides()).isEqualTo(Sides.TWO);
        assertThat(job.bindingEdge()).isEqualTo(BindingEdge.LEFT);
        assertThat(job.trim()).isNull();
        assertThat(job.stock().name()).isEqualTo("bond-20");
        // JCP O-63 (1999): 0.0037 in
        assertThat(job.stock().caliperUm()).isEqualByComparingTo("93.98");
        assertThat(job.stock().source()).contains("JCP O-63").endsWith("the job names no stock");
        assertThat(job.frontCover()).isNull();
        assertThat(job.backCover()).isNull();
        assertThat(job.inserts()).isEmpty();
        assertThat(job.special()).isEqualTo(SpecialLeaves.NONE);
        assertThat(job.binding()).isEqualTo(Method.WIRE);
        assertThat(job.pitch()).isNull();
        assertThat(job.punch()).isNull();
        assertThat(job.bindingMargin()).isNull();
        assertThat(job.punchingTolerance()).isNull();
        assertThat(job.depth()).isNull();
        assertThat(job.clearance()).isNull();
        assertThat(job.allowance()).isEqualTo(Length.ofInch(1, 8));
        assertThat(job.minimumWeb()).isNull();
        assertThat(job.hanger()).isNull();
        assertThat(job.supply()).isEqualTo(Supply.BUILT_IN);
        assertThat(job.failOn()).isEqualTo(FailOn.ERROR);
    }

    @Test
    void everyKeyIsRead() throws SettingException {
        Job job = job("""
                copies: 25
                sides: two-head-to-foot
                binding-edge: top
                trim: A4
                stock: bond-24
                covers:
                  front: {stock: c1s-10pt, pages: 1-2}
                  back: coverboard-30
                inserts:
                  - {pages: 20, stock: index-110}
                  - 5-8 on tag-150
                binding: comb
                pitch: 2:1
                punch: generic
                depth: middle
                binding-margin: 3/8 in
                punching-tolerance: 0.5 mm
                clearance: none
                minimum-web: 4 mm
                hanger: {gap: 90 mm, thumb-cut: 60 x 20 mm}
                overs: 3 %, at least 12
                press-sheet: sra3
                tabs: before 9 on tag-150
                fold-outs: 11-12 in 2 panels
                rotated: 13
                other-sizes: 14 at a5
                fail-on: warning
                tables: none
                """);
        assertThat(job.copies()).isEqualTo(25);
        assertThat(job.sides()).isEqualTo(Sides.TWO_HEAD_TO_FOOT);
        assertThat(job.bindingEdge()).isEqualTo(BindingEdge.TOP);
        // ISO 216:2007
        assertThat(job.trim()).isEqualTo(new Trim("A4", Length.ofMm(210), Length.ofMm(297)));
        assertThat(job.stock().name()).isEqualTo("bond-24");
        assertThat(job.stock().source()).doesNotContain("built in");
        assertThat(job.frontCover().stock().name()).isEqualTo("c1s-10pt");
        assertThat(job.frontCover().printed()).isEqualTo(new PageRange(1, 2));
        assertThat(job.backCover().stock().name()).isEqualTo("coverboard-30");
        assertThat(job.backCover().printed()).isNull();
        assertThat(job.inserts()).extracting(Insert::pages).containsExactly(new PageRange(5, 8), new PageRange(20, 20));
        assertThat(job.inserts()).extracting(i -> i.stock().name()).containsExactly("tag-150", "index-110");
        assertThat(job.binding()).isEqualTo(Method.COMB);
        assertThat(job.pitch()).isEqualTo("2:1");
        assertThat(job.punch()).isEqualTo("generic");
        assertThat(job.depth()).isEqualTo("middle");
        assertThat(job.bindingMargin()).isEqualTo(Length.ofInch(3, 8));
        assertThat(job.punchingTolerance()).isEqualTo(Length.ofMm("0.5"));
        assertThat(job.clearance()).isEqualTo(Length.ZERO);
        assertThat(job.minimumWeb()).isEqualTo(Length.ofMm(4));
        assertThat(job.hanger())
                .isEqualTo(new Hanger(Length.ofMm(90), new Hanger.ThumbCut(Length.ofMm(60), Length.ofMm(20))));
        assertThat(job.supply().overs()).isEqualTo(new Overs(new BigDecimal(3), 12, "as the job says"));
        assertThat(job.supply().pressSheet().height()).isEqualTo(Length.ofMm(450));
        assertThat(job.special().tabs()).hasSize(1);
        assertThat(job.special().foldOuts()).hasSize(1);
        assertThat(job.special().rotated()).hasSize(1);
        assertThat(job.special().sizes()).hasSize(1);
        assertThat(job.failOn()).isEqualTo(FailOn.WARNING);
    }

    @Test
    void aListOfKeysThatIsWholeAndEachReadable() throws SettingException {
        assertThat(JobReader.keys()).isNotEmpty().doesNotHaveDuplicates();
        for (String key : JobReader.keys()) {
            SettingException e = catchThrowableOfType(
                    SettingException.class,
                    () -> JobReader.toJob(JobSettings.empty().with(key, Map.of("nonsense", "1"))));
            assertThat(e).as(key).isNotNull();
            assertThat(e.key()).startsWith(key);
        }
    }

    @Test
    void clearanceByTheNameOfItsRule() throws SettingException {
        // common practice, no source: none, 3/32, 1/8 and 3/16 in are all in use
        assertThat(job("clearance: none").clearance()).isEqualTo(Length.ZERO);
        assertThat(job("clearance: close").clearance()).isEqualTo(Length.ofInch(3, 32));
        assertThat(job("clearance: usual").clearance()).isEqualTo(Length.ofInch(1, 8));
        assertThat(job("clearance: ample").clearance()).isEqualTo(Length.ofInch(3, 16));
        assertThat(job("clearance: 3/16 in").clearance()).isEqualTo(Length.ofInch(3, 16));
        for (Method method : Method.values()) {
            assertThat(Clearances.builtIn(method).allowance()).as(method.name()).isEqualTo(Length.ofInch(1, 8));
        }
        assertThat(wrong("clearance: loose").remedy()).contains("none", "close", "usual", "ample");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "90 mm|90||",
                "gap = 90 mm|90||",
                "3-1/2 in|88.9||",
                // a half round is as deep as half its width
                "90 mm, thumb-cut = 60 mm|90|60|30",
                "gap=90 mm, thumb-cut=60 x 20 mm|90|60|20",
                "gap=90 mm, thumb-cut=1 in x 20 mm|90|25.4|20",
                "gap=90 mm, thumb-cut=2 x 3/4 in|90|50.8|19.05"
            })
    void hangersAsText(String text, String gap, String width, String depth) throws SettingException {
        Hanger.ThumbCut cut = width == null ? null : new Hanger.ThumbCut(Length.ofMm(width), Length.ofMm(depth));
        assertThat(HangerReader.hanger("hanger", text)).isEqualTo(new Hanger(Length.ofMm(gap), cut));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hanger: 90",
                "hanger: wide",
                "hanger: 0 mm",
                "hanger: 600 mm",
                "hanger: 90 mm, 60 mm",
                "hanger: {thumb-cut: 60 mm}",
                "hanger: {gap: 90 mm, hook: 2 mm}",
                "hanger: {gap: 90 mm, thumb-cut: 91 mm}",
                "hanger: {gap: 90 mm, thumb-cut: 0 x 20 mm}",
                "hanger: {gap: 90 mm, thumb-cut: 60 x 51 mm}",
                "hanger: {gap: 90 mm, thumb-cut: 60 x 20}",
                "hanger: {gap: 90 mm, thumb-cut: 60 x 20 x 5 mm}",
                "minimum-web: 3",
                "minimum-web: 51 mm"
            })
    void hangersAndWebsThatCannotBe(String yaml) {
        SettingException e = wrong(yaml);
        assertThat(e).as(yaml).isNotNull();
        assertThat(e.key()).startsWith(yaml.substring(0, yaml.indexOf(':')));
        assertThat(e.remedy()).isNotBlank();
    }

    @Test
    void coversAndInsertsAsText() throws SettingException {
        Job job = JobReader.toJob(JobSettings.of(Map.of(
                "covers", "front=page 1 on c1s-10pt, back=80 gsm, bulk 1.3",
                "inserts", "5-8 on tag-150; 20 on index-110")));
        assertThat(job.frontCover().printed()).isEqualTo(new PageRange(1, 1));
        assertThat(job.backCover().printed()).isNull();
        // 80 g/m2 x 1.3 cm3/g
        assertThat(job.backCover().stock().caliperUm()).isEqualByComparingTo("104");
        assertThat(job.inserts()).hasSize(2);
    }

    @Test
    void coverTakenBackWithNone() throws SettingException {
        assertThat(job("covers: {front: none, back: tag-150}").frontCover()).isNull();
        assertThat(job("covers: none").backCover()).isNull();
        assertThat(job("inserts: none").inserts()).isEmpty();
    }

    @Test
    void theOptionBeatsTheFileBeatsTheBuiltIn() throws SettingException {
        JobSettings file = JobSettings.read("sides: one\nbinding: coil", "job.yaml");
        Job job = JobReader.toJob(
                JobSettings.empty().with("sides", "two-head-to-foot").over(file));
        assertThat(job.sides()).isEqualTo(Sides.TWO_HEAD_TO_FOOT);
        assertThat(job.binding()).isEqualTo(Method.COIL);
        assertThat(job.bindingEdge()).isEqualTo(BindingEdge.LEFT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sides: tow | sides | two",
                "sides: two_head_to_foot | sides | two-head-to-foot",
                "binding-edge: lfet | binding-edge | left",
                "binding: wyre | binding | wire",
                "fail-on: warnin | fail-on | warning",
                "fail_on: error | fail_on | fail-on",
                "stok: bond-20 | stok | stock",
                "covers: {fron: bond-20} | covers.fron | front",
                "covers: {front: {stok: bond-20}} | covers.front.stok | stock",
                "inserts: [{page: 5, stock: tag-150}] | inserts[1].page | pages"
            })
    void slipsGetTheNearestSpellingAndTheKnownOnes(String yaml, String key, String meant) {
        SettingException e = wrong(yaml);
        assertThat(e.key()).isEqualTo(key);
        assertThat(e.remedy()).startsWith("Did you mean \"" + meant + "\"?").contains("Known: ");
        assertThat(e.known()).contains(meant);
        assertThat(e).hasMessageMatching(".+ \\(job\\.yaml, line 1, column \\d+\\)");
    }

    @Test
    void whatIsNothingLikeAKnownWordGetsNoSuggestion() {
        SettingException e = wrong("binding: staples");
        assertThat(e.remedy()).isEqualTo("Known: wire, coil, comb, rings.");
        assertThat(e.known()).containsExactly("wire", "coil", "comb", "rings");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "copies: 0 | copies | from 1 to 1000000",
                "copies: 1000001 | copies | from 1 to 1000000",
                "copies: 1.5 | copies | from 1 to 1000000",
                "copies: 1e999999999 | copies | whole number",
                "copies: many | copies | whole number",
                "copies: [1] | copies | one value",
                "binding-margin: 10 | binding-margin | \"10 mm\" or",
                "binding-margin: \"10\" | binding-margin | unit",
                "binding-margin: 200 mm | binding-margin | 0 to 100 mm",
                "binding-margin: wide | binding-margin | for example",
                "binding-margin: -1 mm | binding-margin | for example",
                "punching-tolerance: 1.5 | punching-tolerance | unit",
                "punching-tolerance: 11 mm | punching-tolerance | 0 to 10 mm",
                "clearance: 2 in | clearance | 0 to 25 mm",
                "trim: huge | trim | A4",
                "trim: 4 | trim | A4",
                "stock: 80 | stock | gsm",
                "stock: velvet | stock | gsm",
                "covers: film-75 | covers | front=",
                "covers: \"front=a, front=b\" | covers | front=",
                "covers: {front: {pages: 1}} | covers.front | stock",
                "covers: {front: pages 1-3 on c1s-10pt} | covers.front | one page, or two",
                "inserts: [5-8] | inserts[1] | on tag-150",
                "inserts: [8-5 on tag-150] | inserts[1] | smaller number first",
                "inserts: [0 on tag-150] | inserts[1] | smaller number first",
                "inserts: [{pages: 5}] | inserts[1] | both",
                "inserts: [5-8 on tag-150, 8-9 on tag-150] | inserts | each page to one",
                "punch: {a: b} | punch | one value"
            })
    void wrongValuesAreNeverReplacedByAGuess(String yaml, String key, String remedy) {
        SettingException e = wrong(yaml);
        assertThat(e).as(yaml).isNotNull();
        assertThat(e.key()).isEqualTo(key);
        assertThat(e.remedy()).containsIgnoringCase(remedy);
        assertThat(e).hasMessageContaining("job.yaml, line 1");
    }

    @Test
    void aPageCannotLieOnACoverAndAnInsert() {
        SettingException e = wrong("covers: {front: page 5 on c1s-10pt}\ninserts: [5-8 on tag-150]");
        assertThat(e.key()).isEqualTo("covers");
        assertThat(e).hasMessageContaining("5-8 already takes");
    }

    @Test
    void theFaultyLineIsNamed() {
        assertThat(wrong("copies: 2\ncovers:\n  front:\n    stock: velvet\n"))
                .hasMessageContaining("(job.yaml, line 4, column 12)");
    }

    @Test
    void settingsFromNoFileNameNoPlace() {
        SettingException e = catchThrowableOfType(
                SettingException.class,
                () -> JobReader.toJob(JobSettings.empty().with("sides", "tow")));
        assertThat(e).hasMessage("\"tow\" is not known");
        SettingException over = catchThrowableOfType(
                SettingException.class,
                () -> JobReader.toJob(
                        JobSettings.empty().with("sides", "tow").over(JobSettings.read("sides: two", "job.yaml"))));
        assertThat(over).as("the file's place is not the option's").hasMessage("\"tow\" is not known");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr"})
    void theSameInEveryLocale(String language) throws SettingException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            assertThat(job("binding: wire\ntrim: letter\nbinding-margin: 9.5 MM\nsides: two-head-to-foot"))
                    .extracting(Job::binding, Job::bindingMargin, Job::sides)
                    .isEqualTo(List.of(Method.WIRE, Length.ofMm("9.5"), Sides.TWO_HEAD_TO_FOOT));
            assertThat(wrong("binding: wyre").remedy())
                    .isEqualTo("Did you mean \"wire\"? Known: wire, coil, comb, rings.");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aJobCarriesWhoseItIs() throws Exception {
        Job job = JobReader.toJob(JobSettings.of(
                Map.of("job-number", 4711, "customer", "Marrowby Library", "due", "Friday noon", "units", "inch")));

        assertThat(job.order()).isEqualTo(new Order("4711", "Marrowby Library", "Friday noon"));
        assertThat(job.units()).isEqualTo(Units.INCH);
        assertThat(JobReader.toJob(JobSettings.empty()).order()).isEqualTo(Order.NONE);
        assertThat(job.withPitch("2:1").order()).isEqualTo(job.order());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u001B[31mb", "a\u009B31mb", "a\u202Eb", "two\nlines"})
    void whoseItIsHoldsNoMarkThatRewritesAScreen(String customer) {
        assertThatThrownBy(() -> JobReader.toJob(JobSettings.of(Map.of("customer", customer))))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("control character")
                .message()
                .doesNotContain(customer);
        assertThatThrownBy(() -> JobReader.toJob(JobSettings.of(Map.of("customer", "x".repeat(81)))))
                .hasMessageContaining("80 characters");
    }
}
