package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Gap;
import io.bindprep.binding.PackMeasure;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.FailOn;
import io.bindprep.job.Sides;
import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageBasics;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Stage;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CheckerTest {
    private static final Element SMALL = new Element("1/4 in", Length.ofInch(1, 4), "invented");
    private static final Element LARGE = new Element("5/16 in", Length.ofInch(5, 16), "invented");

    private static Finding only(Report report, String rule) {
        List<Finding> found =
                report.findings().stream().filter(f -> f.rule().equals(rule)).toList();
        assertThat(found).as(rule).hasSize(1);
        return found.get(0);
    }

    private static List<String> rules(Report report) {
        return report.findings().stream().map(Finding::rule).toList();
    }

    @Test
    void nothingWrongIsGood() {
        Report report = Scenario.of(4).report();
        assertThat(report.outcome()).isEqualTo(Outcome.GOOD);
        assertThat(report.failed()).isFalse();
        assertThat(report.findings()).isEmpty();
        assertThat(report.pages()).hasSize(4);
    }

    @ParameterizedTest
    @EnumSource(value = MarkKind.class, names = "BACKGROUND", mode = EnumSource.Mode.EXCLUDE)
    void eachKindHitIsAnErrorAndTightAWarning(MarkKind kind) {
        String name = kind.name().toLowerCase(java.util.Locale.ROOT);
        Finding hit = only(Scenario.of(2).hit(1, kind, Verdict.HIT, 12, 4.2, "").report(), name + "-hit");
        assertThat(hit.severity()).isEqualTo(Severity.ERROR);
        assertThat(hit.pages()).containsExactly(1);
        assertThat(hit.measuredMm()).isEqualTo(4.2);
        // 0.2 in centre, half of 5/32 in, 1 mm punching tolerance
        assertThat(hit.limitMm()).isEqualTo(5.08 + 3.96875 / 2 + 1, org.assertj.core.data.Offset.offset(1e-4));
        assertThat(hit.alongMm()).isEqualTo(new Finding.Span(100, 118.04));
        Finding tight =
                only(Scenario.of(2).hit(2, kind, Verdict.TIGHT, null, 9, "").report(), name + "-tight");
        assertThat(tight.severity()).isEqualTo(Severity.WARNING);
        assertThat(tight.limitMm()).isEqualTo(9.525);
        // 9.525 - 9 mm, rounded up
        assertThat(tight.remedy()).contains("moved 0.6 mm").contains("at least 8.1 mm (binding-margin)");
        Finding between =
                only(Scenario.of(2).hit(2, kind, Verdict.TIGHT, null, 6, "").report(), name + "-tight");
        assertThat(between.remedy()).contains("between two holes").doesNotContain("binding-margin");
    }

    @Test
    void repeatsAreFoldedUnderTheWorst() {
        Report report = Scenario.of(60)
                .hit(7, MarkKind.TEXT, Verdict.HIT, 9, 5.5, "fine")
                .hit(8, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "A heading that is longer than forty characters by far")
                .hit(8, MarkKind.TEXT, Verdict.TIGHT, null, 3, "between the holes")
                .hit(9, MarkKind.TEXT, Verdict.HIT, 13, 6, "also")
                .hit(9, MarkKind.LINE, Verdict.HIT, 13, 6, "")
                .report();
        Finding text = only(report, "text-hit");
        assertThat(text.pages()).containsExactly(7, 8, 9);
        assertThat(text.message())
                .isEqualTo("3 pages: text in the holes. Worst on page 8: text 4.2 mm from the binding edge; the holes,"
                        + " tolerance included, reach 8.1 mm. At pin 12, 100.0 to 118.0 mm from the head:"
                        + " \"A heading that is longer than forty c...\". Measured from the outline.");
        assertThat(text.seen())
                .isEqualTo(new Finding.Seen(
                        Stage.GEOMETRY,
                        List.of(12),
                        "A heading that is longer than forty characters by far",
                        text.seen().places()));
        assertThat(text.seen().places()).extracting(Finding.Place::page).isEqualTo(text.pages());
        assertThat(only(report, "line-hit").pages()).containsExactly(9);
        assertThat(rules(report)).as("a page counts once for a kind").doesNotContain("text-tight");
    }

    @Test
    void whatStandsAlikeOnSeveralPagesIsAFindingOfItsOwn() {
        Scenario head = Scenario.of(12);
        for (int page = 2; page <= 12; page += 2) {
            head.hit(page, MarkKind.TEXT, Verdict.HIT, 3, 5, "Chapter " + page)
                    .hit(page, MarkKind.LINE, Verdict.HIT, 4, 5, "");
        }
        Report report = head.hit(4, MarkKind.TEXT, Verdict.HIT, 9, 6, "a note")
                .hit(5, MarkKind.TEXT, Verdict.HIT, 9, 6, "another")
                .report();
        List<Finding> text = report.findings().stream()
                .filter(f -> f.rule().equals("text-hit"))
                .toList();
        assertThat(text)
                .extracting(Finding::pages)
                .containsExactlyInAnyOrder(List.of(2, 4, 6, 8, 10, 12), List.of(4, 5));
        assertThat(text)
                .extracting(Finding::message)
                .anySatisfy(m -> assertThat(m)
                        .startsWith("6 pages: text in the holes, the same words on each. Worst on page 2: text 5.0 mm"))
                .anySatisfy(m -> assertThat(m)
                        .startsWith("2 pages: text in the holes. Worst on page 4: text 6.0 mm")
                        .contains("At pin 9, "));
        assertThat(only(report, "line-hit").message())
                .startsWith("6 pages: line in the holes, in the same place on each. Worst on page 2");
    }

    @Test
    void theDocumentsWordsCannotWriteOnTheTerminal() {
        Finding f = only(
                Scenario.of(1)
                        .hit(1, MarkKind.TEXT, Verdict.HIT, 1, 4, "\u001B[31mred\u202E\u009Bder\n")
                        .report(),
                "text-hit");
        assertThat(f.message()).contains("\"[31mred der\"").doesNotContain("\u001B", "\u202E", "\u009B", "\n");
    }

    @Test
    void lengthsAlongATopEdgeAreCountedFromTheLeft() {
        Report report = Scenario.of(1)
                .bound(BindingEdge.TOP, Sides.ONE)
                .hit(1, MarkKind.TEXT, Verdict.HIT, 1, 4, "x")
                .report();
        assertThat(only(report, "text-hit").message()).contains("from the left edge");
    }

    @Test
    void backgroundIsANote() {
        Report report = Scenario.of(3).background(2).report();
        Finding f = only(report, "background-at-binding-edge");
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.pages()).containsExactly(2);
        assertThat(report.outcome()).isEqualTo(Outcome.GOOD);
    }

    @Test
    void aPhotographAtTheEdgeSaysByWhatItWasTold() {
        PageBasics photograph = new PageBasics(
                List.of(),
                null,
                null,
                List.of(),
                List.of(),
                List.of(new EdgePicture(EdgePicture.Nature.PHOTOGRAPH, EdgePicture.By.GROUND, 63, 9)));
        assertThat(only(Scenario.of(3).background(2).basics(2, photograph).report(), "background-at-binding-edge")
                        .message())
                .contains("Judged a photograph on 1 page")
                .contains("one ground colour along the edge, this has one on 63 %");
    }

    @ParameterizedTest
    @EnumSource(FailOn.class)
    void anUnreadPageIsNeverGood(FailOn failOn) {
        Report report = Scenario.of(3)
                .unchecked(2, "a JPEG 2000 picture cannot be decoded")
                .failOn(failOn)
                .report();
        assertThat(report.outcome()).isEqualTo(Outcome.FINDINGS);
        assertThat(report.failed()).isEqualTo(failOn != FailOn.NEVER);
        Finding f = only(report, "page-unchecked");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        assertThat(f.message()).contains("JPEG 2000");
    }

    @Test
    void aReasonForNotReadingOutweighsAClearVerdict() {
        Report report = Scenario.of(2)
                .verdict(new PageVerdict(1, Verdict.CLEAR, null, List.of(), false, "an operator failed"))
                .report();
        assertThat(report.pages().get(0).verdict().verdict()).isEqualTo(Verdict.UNCHECKED);
        assertThat(only(report, "page-unchecked").pages()).containsExactly(1);
    }

    @Test
    void uncheckedPagesAreFoldedByReasonAndTheReasonsCapped() {
        Scenario scenario = Scenario.of(40);
        for (int p = 1; p <= 40; p++) {
            scenario.unchecked(p, p <= 20 ? "the same" : "reason " + p);
        }
        List<Finding> found = scenario.report().findings();
        assertThat(found).hasSize(11);
        assertThat(found.get(0).pages()).hasSize(20);
        assertThat(found.get(10).message()).contains("various other reasons");
        assertThat(found.stream().mapToInt(f -> f.pages().size()).sum()).isEqualTo(40);
    }

    @Test
    void aVerdictWithoutItsMarkIsAFaultOfTheProgram() {
        Scenario scenario = Scenario.of(1).verdict(new PageVerdict(1, Verdict.HIT, null, List.of(), false, null));
        assertThatThrownBy(scenario::report)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("page 1 is HIT without a mark");
    }

    // ISO 216:2007, 7.1: +-1.5 mm up to 150 mm, +-2 mm above 150 up to 600, +-3 mm above; letter: +-1/16 in, a college
    // print shop's guide
    @ParameterizedTest
    @CsvSource({
        "A4, 212, 297, true",
        "A4, 212.02, 297, false",
        "A4, 210, 299, true",
        "A4, 210, 299.02, false",
        "A6, 106.5, 148, true",
        "A6, 106.52, 148, false",
        "A6, 105, 149.5, true",
        "A6, 105, 149.52, false",
        "594 x 841 mm, 594, 844, true",
        "594 x 841 mm, 594, 844.02, false",
        "594 x 841 mm, 596.02, 841, false",
        "letter, 217.48, 279.4, true",
        "letter, 217.5, 279.4, false",
        "letter, 215.9, 277.81, false"
    })
    void sizesHoldToTheirTolerance(String name, double width, double height, boolean fits) throws Exception {
        var size = Catalogue.builtIn().sizes().parse("trim", name);
        Report report = Scenario.of(2)
                .allSizes(size.width().mm(), size.height().mm())
                .size(2, width, height)
                .trim(name, size.width(), size.height())
                .report();
        assertThat(rules(report).contains("page-size")).isEqualTo(!fits);
    }

    @Test
    void anotherSizeThanTheJobNamesIsAnError() {
        Report report = Scenario.of(4)
                .size(2, 214, 297)
                .size(3, 215.9, 279.4)
                .trim("A4", Length.ofMm(210), Length.ofMm(297))
                .report();
        Finding f = only(report, "page-size");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        assertThat(f.pages()).containsExactly(2, 3);
        assertThat(f.message())
                .isEqualTo(
                        "2 pages differ in size from the job, A4, 210 x 297 mm. Worst: page 3, letter, 215.9 x 279.4 mm, off"
                                + " by 17.6 mm; tolerance 2.0 mm.");
        assertThat(f.limitMm()).isEqualTo(2);
        assertThat(rules(report)).doesNotContain("page-size-mixed");
    }

    @Test
    void anotherSizeThanMostPagesIsAWarning() {
        Report report = Scenario.of(4).size(1, 215.9, 279.4).report();
        Finding f = only(report, "page-size-mixed");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(1);
        assertThat(f.message()).contains("most pages, A4, 210 x 297 mm");
    }

    @Test
    void aQuarterTurnIsToldApartFromAnotherSize() {
        Scenario scenario = Scenario.of(4).size(3, 297, 210);
        Finding mixed = only(scenario.report(), "page-rotated");
        assertThat(mixed.severity()).isEqualTo(Severity.WARNING);
        assertThat(mixed.pages()).containsExactly(3);
        Report named = scenario.trim("A4", Length.ofMm(210), Length.ofMm(297)).report();
        assertThat(only(named, "page-rotated").severity()).isEqualTo(Severity.ERROR);
        assertThat(rules(named)).doesNotContain("page-size");
    }

    @Test
    void fontsThatAreNotInTheFileAreOneWarning() {
        Finding f = only(
                Scenario.of(5)
                        .basics(2, new PageBasics(List.of("Times-Roman", "Helvetica"), null, null))
                        .basics(4, new PageBasics(List.of("Helvetica", "evil\u202e\nname"), null, null))
                        .report(),
                "font-not-embedded");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(2, 4);
        assertThat(f.message())
                .startsWith(
                        "3 fonts used on 2 pages are not in the file, or not readable there: \"Helvetica\", \"Times-Roman\",")
                .contains("\"evil name\"")
                .contains("estimated");
    }

    @Test
    void annotationsWithoutAnAppearanceAreOneWarning() {
        PageBasics field =
                new PageBasics(List.of(), null, null, List.of("comment", "form field"), List.of(), List.of());
        PageBasics link = new PageBasics(List.of(), null, null, List.of("link border"), List.of(), List.of());
        Finding f = only(Scenario.of(4).basics(1, field).basics(4, link).report(), "appearance-missing");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(1, 4);
        assertThat(f.message())
                .contains("2 pages", "comment, form field, link border", "depends on the viewer", "estimated");
        assertThat(f.remedy()).contains("flattened");
        assertThat(Scenario.of(4).report().findings()).isEmpty();
    }

    @Test
    void faultsThatViewersPassOverAreOneWarningOfAtMostFourNames() {
        PageBasics four = new PageBasics(List.of(), null, null, List.of(), List.of("a", "b", "c", "d"), List.of());
        PageBasics five = new PageBasics(List.of(), null, null, List.of(), List.of("e\u202e\n", "a"), List.of());
        Finding f = only(Scenario.of(3).basics(2, four).report(), "content-fault");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(2);
        assertThat(f.message()).contains("\"a\", \"b\", \"c\", \"d\"").doesNotContain("more");
        Finding g = only(Scenario.of(3).basics(2, four).basics(3, five).report(), "content-fault");
        assertThat(g.pages()).containsExactly(2, 3);
        assertThat(g.message()).contains("and 1 more").doesNotContain("\u202e", "\n");
    }

    @Test
    void aCoarsePictureIsAWarningBelowTheJobsLimit() {
        PageBasics fine = new PageBasics(List.of(), new PageBasics.Picture(149.6, 10, 10), null);
        PageBasics coarse = new PageBasics(List.of(), new PageBasics.Picture(72, 120.4, 90), null);
        assertThat(Scenario.of(3).basics(1, fine).report().findings())
                .extracting(Finding::rule)
                .doesNotContain("image-resolution");
        Finding f = only(Scenario.of(3).basics(1, fine).basics(3, coarse).report(), "image-resolution");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(3);
        assertThat(f.message())
                .isEqualTo("Page 3: picture of 72 ppi at 120.4 mm by 90.0 mm; at least 150 ppi required.");
    }

    @Test
    void shortBleedIsAWarningWithTheLeast() {
        PageBasics enough = new PageBasics(List.of(), null, new PageBasics.Bleed(PageEdge.TOP, 3));
        PageBasics little = new PageBasics(List.of(), null, new PageBasics.Bleed(PageEdge.LEFT, 1.5));
        PageBasics none = new PageBasics(List.of(), null, new PageBasics.Bleed(PageEdge.BOTTOM, 0));
        assertThat(Scenario.of(3).basics(1, enough).report().findings())
                .extracting(Finding::rule)
                .doesNotContain("bleed-short");
        Finding f = only(
                Scenario.of(3)
                        .basics(1, enough)
                        .basics(2, none)
                        .basics(3, little)
                        .report(),
                "bleed-short");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(2, 3);
        assertThat(f.message()).contains("Worst on page 2: bleed at the bottom 0.0 mm; 3.0 mm required.");
        assertThat(f.measuredMm()).isZero();
        assertThat(f.limitMm()).isEqualTo(3);
    }

    @Test
    void aTrimBeyondItsBleedIsAWarning() {
        // ISO 32000-1:2008, 14.11.2.1; files are written in whole or tenth points
        assertThat(Scenario.of(2).bleed(1, 8.5).bleed(2, -0.1).report().findings())
                .extracting(Finding::rule)
                .doesNotContain("trim-outside-bleed");
        assertThat(Scenario.of(1).bleed(1, -5).trimUndeclared().report().findings())
                .as("a TrimBox that the page does not have")
                .extracting(Finding::rule)
                .doesNotContain("trim-outside-bleed");
        Finding f = only(Scenario.of(3).bleed(2, -0.2).report(), "trim-outside-bleed");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(2);
        assertThat(f.message()).contains("1 page");
    }

    @Test
    void undeclaredTrimIsOneNote() {
        Finding f = only(Scenario.of(5).trimUndeclared().report(), "trim-undeclared");
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.pages()).hasSize(5);
    }

    @Test
    void aStackThatNothingTakesIsAnError() {
        Finding f = only(Scenario.of(2).noElement().report(), "stack-too-thick");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        // 9/16 in takes 130 sheets of 20 lb bond (common practice, no source, from memory), 12.2 mm
        assertThat(f.measuredMm()).isEqualTo(14.7);
        assertThat(f.message())
                .contains("too thick: 14.7 mm, range 14.4 to 15.0 mm. No wire element of pitch 3:1 takes it")
                .contains("the largest, 9/16 in, takes 130 sheets of 20 lb bond");
        Report forced = Scenario.of(2).noElement().pitch("3:1").report();
        assertThat(rules(forced)).containsExactly("pitch-too-thick");
        assertThat(only(forced, "pitch-too-thick").remedy())
                .startsWith("Allow another pitch (pitch, punch). Otherwise ");
    }

    @Test
    void anElementOfUnknownSizesIsNeverGood() {
        Report report =
                Scenario.of(2).noElement().pattern("of-a-group-no-table-has").report();
        assertThat(rules(report)).containsExactly("element-unknown");
        assertThat(report.outcome()).isEqualTo(Outcome.FINDINGS);
    }

    @Test
    void aCombsLimitIsItsPublishedCapacity() {
        Finding f = only(Scenario.of(2).noElement().pattern("P16_9i-rect-0t").report(), "stack-too-thick");
        // Wikipedia, "Comb binding": 2 in takes 425 sheets
        assertThat(f.message()).contains("2 in, takes 425 sheets of 20 lb bond");
    }

    @Test
    void aStackBetweenTwoElementsAsksForAMeasuredPack() {
        // 1/4 in less the clearance of 1/8 in is 3.175 mm
        PackMeasure settles = new PackMeasure(Length.ofMm("3.175"), "bond-20", 28, Length.ofMm("2.6"));
        Finding f = only(Scenario.of(2).straddles(SMALL, LARGE).measure(settles).report(), "stack-straddles");
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.message()).contains("1/4 in takes the thinnest, 5/16 in the thickest");
        // 1/4 in less the clearance of 1/8 in: more than that does not go on the smaller one
        assertThat(f.limitMm()).isEqualTo(3.175);
        assertThat(f.measuredMm()).isGreaterThan(f.limitMm());
        assertThat(f.remedy())
                .contains("Measure a pack of 28 sheets of bond-20. If the pack measures 2.6 mm or less, ");
    }

    @Test
    void pinsThatCannotBePulledAreAnError() {
        Finding f = only(Scenario.of(2).fixed(1, 35).report(), "pins-fixed");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        assertThat(f.message()).startsWith("Pins 1, 35 would cut a half hole");
    }

    @Test
    void pagesThatDoNotTurnFreelyAreAWarning() {
        // 3.1 mm lies outside the holes
        assertThat(Scenario.of(2).turnsBelow(Length.ofMm("3.11")).report().findings())
                .isEmpty();
        Finding f = only(Scenario.of(2).turnsBelow(Length.ofMm("3.1")).report(), "pages-turn-stiffly");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.measuredMm()).isEqualTo(3.1);
        assertThat(f.limitMm()).isEqualTo(3.1);
    }

    @Test
    void anElementThatTheCloserDoesNotTakeIsAnError() {
        // the element is 3/8 in
        ElementSizes small = ElementSizes.range(Length.ofInch(3, 16), Length.ofInch(5, 16));
        Finding f = only(Scenario.of(2).closerTakes(small).report(), "closer-size");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        assertThat(f.message()).contains("3/8 in", "3/16 in to 5/16 in");
        ElementSizes enough = ElementSizes.range(Length.ofInch(3, 16), Length.ofInch(3, 8));
        assertThat(Scenario.of(2).closerTakes(enough).report().findings()).isEmpty();
    }

    @Test
    void aRowThatIsNotSymmetricAsksForTheSameEnd() {
        assertThat(Scenario.of(2).report().findings()).isEmpty();
        // one hole fewer at the foot: a leaf turned over lies a pitch off
        Finding f = only(Scenario.of(2).shortRow(1).report(), "feed-same-end");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.measuredMm()).isCloseTo(8.4667, within(0.001));
        assertThat(f.limitMm()).isEqualTo(1);
        assertThat(f.remedy()).startsWith("Put the head to the side guide on every lift");
        Report top =
                Scenario.of(2).bound(BindingEdge.TOP, Sides.ONE).shortRow(1).report();
        assertThat(only(top, "feed-same-end").remedy()).startsWith("Put the left end");
    }

    @Test
    void holesThatDriftFromTheElementsPitchAreAnErrorOnceNoStrandPasses() {
        // by hand: a hole of 5/32 in = 3.96875 mm less a wire of 1.2 mm leaves 2.76875 mm
        Length room = Length.ofMm("2.76875");
        for (Length drift : List.of(room, room.times(-1))) {
            assertThat(Scenario.of(2).measured(Length.ZERO, drift).report().findings())
                    .isEmpty();
        }
        Length beyond = room.plus(new Length(1));
        Finding longer = only(Scenario.of(2).measured(Length.ZERO, beyond).report(), "element-off-pitch");
        assertThat(longer.severity()).isEqualTo(Severity.ERROR);
        assertThat(longer.message()).contains("row is 2.77 mm longer than", "Holes of 3.97 mm", "1.2 mm no more");
        assertThat(longer.limitMm()).isEqualTo(2.76875);
        Report shorter = Scenario.of(2).measured(Length.ZERO, beyond.times(-1)).report();
        assertThat(only(shorter, "element-off-pitch").message()).contains("2.77 mm shorter than");
    }

    @Test
    void aSlantBeyondWhatTheStrandLeavesIsAWarningAndOneThatCutsAHoleOpenAnError() {
        // the scenario's rise is 2.7 mm; a leaf fed turned over is told of beyond the punching tolerance of 1 mm
        assertThat(Scenario.of(2)
                        .measured(Length.ofMm("1"), Length.ZERO)
                        .report()
                        .findings())
                .isEmpty();
        assertThat(Scenario.of(2)
                        .measured(Length.ofMm("2.7"), Length.ZERO)
                        .report()
                        .findings())
                .extracting(Finding::rule)
                .containsExactly("feed-same-end");
        Report slanting =
                Scenario.of(2).measured(Length.ofMm("-2.71"), Length.ZERO).report();
        assertThat(slanting.findings()).extracting(Finding::rule).containsExactly("element-off-line", "feed-same-end");
        assertThat(slanting.findings().get(1).message()).startsWith("The hole row slants, as the punch was measured. ");
        Finding warning = slanting.findings().get(0);
        assertThat(warning.severity()).isEqualTo(Severity.WARNING);
        assertThat(warning.message()).contains("slants by 2.71 mm", "leave 2.7 mm");
        // the scenario leaves 3.1 mm outside the holes, and half of a slant cuts into it
        Length open = Length.ofMm("6.2");
        Report just =
                Scenario.of(2).measured(open.minus(new Length(1)), Length.ZERO).report();
        assertThat(just.findings()).extracting(Finding::severity).containsOnly(Severity.WARNING);
        Report cut = Scenario.of(2).measured(open, Length.ZERO).report();
        Finding error = cut.findings().stream()
                .filter(f -> f.rule().equals("element-off-line"))
                .findFirst()
                .orElseThrow();
        assertThat(error.severity()).isEqualTo(Severity.ERROR);
        assertThat(error.message()).contains("slants by 6.2 mm", "The first hole is cut open", "only 3.1 mm of paper");
        Report other = Scenario.of(2).measured(open.times(-1), Length.ZERO).report();
        assertThat(other.findings())
                .extracting(Finding::message)
                .anyMatch(m -> m.contains("The last hole is cut open"));
    }

    @Test
    void holesInTheHangersGapAreAnError() {
        Gap gap = new Gap(Length.ofMm(100), Length.ofMm(190), List.of(12), List.of(13, 14), null);
        Finding f = only(Scenario.of(2).gap(gap).report(), "hanger-pins-fixed");
        assertThat(f.severity()).isEqualTo(Severity.ERROR);
        assertThat(f.message()).startsWith("Pins 13-14 would cut holes");
        Gap free = new Gap(Length.ofMm(100), Length.ofMm(190), List.of(12), List.of(), null);
        assertThat(Scenario.of(2)
                        .bound(BindingEdge.TOP, Sides.TWO_HEAD_TO_FOOT)
                        .gap(free)
                        .report()
                        .findings())
                .extracting(Finding::rule)
                .doesNotContain("hanger-pins-fixed", "hanger-at-side");
    }

    @Test
    void whatTheThumbCutTakesIsSaidAsThat() {
        Gap gap = new Gap(
                Length.ofMm(100),
                Length.ofMm(190),
                List.of(),
                List.of(),
                new Gap.ThumbCut(Length.ofMm(60), Length.ofMm(20)));
        Finding f = only(
                Scenario.of(2)
                        .gap(gap)
                        .hit(1, MarkKind.TEXT, Verdict.HIT, null, 12, "July")
                        .report(),
                "text-hit");
        assertThat(f.message()).contains("thumb cut, tolerance included, reaches 21.0 mm");
        assertThat(f.remedy()).contains("moved 9.0 mm away", "thumb cut smaller");
        assertThat(f.limitMm()).isEqualTo(21);
    }

    @Test
    void aBindingMarginInsideTheHoleZoneIsAWarning() {
        Finding f = only(Scenario.of(2).bindingMargin(Length.ofMm(8)).report(), "binding-margin-inside-hole-zone");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.measuredMm()).isEqualTo(8);
        assertThat(Scenario.of(2).bindingMargin(Length.ofMm("8.07")).report().findings())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "LEFT, TWO, false",
        "RIGHT, TWO, false",
        "TOP, TWO, true",
        "LEFT, TWO_HEAD_TO_FOOT, true",
        "RIGHT, TWO_HEAD_TO_FOOT, true",
        "TOP, TWO_HEAD_TO_FOOT, false",
        "TOP, ONE, false",
        "LEFT, ONE, false"
    })
    void turnsThatPutBacksUpsideDownAreWarnedOf(BindingEdge edge, Sides sides, boolean unusual) {
        Report report = Scenario.of(2).bound(edge, sides).report();
        if (unusual) {
            assertThat(only(report, "unusual-turn").severity()).isEqualTo(Severity.WARNING);
        } else {
            assertThat(report.findings()).isEmpty();
        }
    }

    @Test
    void blankBacksAreWarnedOf() {
        Finding f = only(Scenario.of(6).blankBacks(3).report(), "blank-back-added");
        assertThat(f.severity()).isEqualTo(Severity.WARNING);
        assertThat(f.pages()).containsExactly(3);
    }

    @Test
    void readingDirectionIsNotedWhereTheJobBindsLeft() {
        assertThat(only(Scenario.of(2).rightToLeft().report(), "reading-direction")
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(Scenario.of(2)
                        .rightToLeft()
                        .bound(BindingEdge.RIGHT, Sides.TWO)
                        .report()
                        .findings())
                .isEmpty();
    }

    @Test
    void anEdgeWithoutAHoleRowIsAnError() {
        assertThat(only(Scenario.of(2).noHoles().report(), "edge-unpunchable").severity())
                .isEqualTo(Severity.ERROR);
    }

    @Test
    void lostPagesAndForbiddenPrintingAreTold() {
        assertThat(only(Scenario.of(2).lostPages(3).report(), "pages-lost").severity())
                .isEqualTo(Severity.ERROR);
        assertThat(Scenario.of(2).lostPages(3).report().outcome()).isEqualTo(Outcome.FINDINGS);
        assertThat(only(Scenario.of(2).notPrintable().report(), "print-forbidden")
                        .severity())
                .isEqualTo(Severity.WARNING);
    }

    @Test
    void aRebuiltFileIsWarnedOfAndJunkNoted() {
        assertThat(only(Scenario.of(2).repaired().report(), "file-repaired").severity())
                .isEqualTo(Severity.WARNING);
        Finding junk = only(Scenario.of(2).junk(512).report(), "header-junk");
        assertThat(junk.severity()).isEqualTo(Severity.NOTE);
        assertThat(junk.message()).startsWith("512 bytes stand");
    }

    @ParameterizedTest
    @CsvSource({
        "ERROR, GOOD, false, FINDINGS, true",
        "WARNING, FINDINGS, true, FINDINGS, true",
        "NEVER, GOOD, false, FINDINGS, false"
    })
    void failOnDecidesTheOutcome(
            FailOn failOn, Outcome warned, boolean warnedFails, Outcome wrong, boolean wrongFails) {
        Report warning = Scenario.of(2).repaired().failOn(failOn).report();
        assertThat(warning.outcome()).isEqualTo(warned);
        assertThat(warning.failed()).isEqualTo(warnedFails);
        Report error = Scenario.of(2).fixed(1).failOn(failOn).report();
        assertThat(error.outcome()).isEqualTo(wrong);
        assertThat(error.failed()).isEqualTo(wrongFails);
        assertThat(Scenario.of(2).junk(1).failOn(failOn).report().outcome()).isEqualTo(Outcome.GOOD);
    }

    @Test
    void findingsStandInTheirOrder() {
        Report report = Scenario.of(8)
                .junk(1)
                .repaired()
                .hit(5, MarkKind.LINE, Verdict.HIT, 1, 4, "")
                .hit(5, MarkKind.ART, Verdict.HIT, 1, 4, "")
                .hit(2, MarkKind.TEXT, Verdict.HIT, 1, 4, "x")
                .hit(3, MarkKind.TEXT, Verdict.TIGHT, null, 9, "y")
                .report();
        assertThat(rules(report))
                .containsExactly("text-hit", "art-hit", "line-hit", "file-repaired", "text-tight", "header-junk");
    }

    @Test
    void everyPageNeedsAVerdict() {
        Report r = Scenario.of(2).report();
        assertThatThrownBy(() -> Checker.report(
                        r.document(),
                        r.job(),
                        r.block(),
                        r.stack(),
                        r.plan(),
                        List.of(),
                        r.split(),
                        r.run(),
                        List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
