package io.bindprep.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.FailOn;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextReportTest {
    private static Report bad() {
        return Scenario.of(84)
                .copies(100)
                .hit(7, MarkKind.TEXT, Verdict.HIT, 9, 5.5, "fine print")
                .hit(8, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter one")
                .hit(44, MarkKind.LINE, Verdict.TIGHT, null, 9, "")
                .junk(12)
                .report();
    }

    private static String first(Scenario scenario) {
        return TextReport.write(scenario.report(), TextStyle.PLAIN)
                .lines()
                .findFirst()
                .orElseThrow();
    }

    @Test
    void oneScreenOfABadJob() {
        assertThat(TextReport.write(bad(), TextStyle.PLAIN)).isEqualTo("""
                        Do not print. The holes would cut content on 2 pages.

                        ERROR     2 pages: text in the holes. Worst on page 8: text 4.2 mm from the binding edge; the holes,
                                  tolerance included, reach 8.1 mm. At pin 12, 100.0 to 118.0 mm from the head: "Chapter
                                  one". Measured from the outline. Pages 7-8. [text-hit]
                                  Do: Have it moved 5.4 mm away from the binding edge, or bind another edge (binding-edge).
                        WARNING   Page 44: line 9.0 mm from the binding edge; minimum margin 9.5 mm. At 100.0 to 118.0 mm
                                  from the head. Measured from the outline. [line-tight]
                                  Do: Have it moved 0.6 mm away from the binding edge, or accept a smaller margin, at least
                                  8.1 mm (binding-margin).

                        File      thesis.pdf: 84 pages, A4, 81 clear, 1 tight, 2 hit
                        Book      42 leaves, 4.9 mm thick (4.6 to 5.2 mm); bond-20.
                        Binding   wire 3:1, binding element 3/8 in, 34 loops; close it to 3/8 in.
                        Punch     34 holes (square, 4 mm), depth middle: centre 5 mm from the binding edge. Pull pins 35-36;
                                  3 lifts per copy.
                        NOTE      1 note: header-junk. To read it: --notes
                        Punch a waste sheet first. The machine's manual, site rules and local law come before this report.
                        Only trained people run punches, cutters and closers.
                        """);
    }

    @Test
    void oneScreenOfAGoodJob() {
        assertThat(TextReport.write(Scenario.of(84).weightUnknown().report(), TextStyle.PLAIN))
                .isEqualTo("""
                        Good to print and bind.

                        File      thesis.pdf: 84 pages, A4, all clear
                        Book      42 leaves, 4.9 mm thick (4.6 to 5.2 mm); bond-20.
                        Binding   wire 3:1, binding element 3/8 in, 34 loops; close it to 3/8 in.
                        Punch     34 holes (square, 4 mm), depth middle: centre 5 mm from the binding edge. Pull pins 35-36;
                                  3 lifts per copy.
                        Punch a waste sheet first. The machine's manual, site rules and local law come before this report.
                        Only trained people run punches, cutters and closers.
                        """);
    }

    @Test
    void aGoodJobFitsTenLinesOfATerminal() {
        String text = TextReport.write(Scenario.of(84).junk(12).report(), new TextStyle(false, 80));
        assertThat(text.lines()).hasSizeLessThanOrEqualTo(10);
        assertThat(text).contains("NOTE      1 note: header-junk. To read it: --notes");
    }

    @Test
    void notesAndAllNumbersWhereAskedFor() {
        String text = TextReport.write(Scenario.of(84).junk(12).report(), TextStyle.PLAIN.withNotes());
        assertThat(text)
                .contains("NOTE      12 bytes stand before the PDF header. [header-junk]")
                .contains("Do: Usually harmless: print systems leave them.")
                .contains("Sheets    42 leaves and no cover per copy, 42 of them printed.")
                .contains("First hole 9 mm from the head; pull pins 35-36.")
                .doesNotContain("--notes");
    }

    // at most 25 words a sentence is the house rule for screens
    @Test
    void noSentenceIsLong() {
        String text = TextReport.write(bad(), new TextStyle(false, 10_000, true));
        for (String line : text.split("\n")) {
            for (String sentence : line.split("[.;:] ")) {
                assertThat(sentence.trim().split(" +").length).as(sentence).isLessThanOrEqualTo(25);
            }
        }
    }

    @Test
    void everySettingIsOneRow() {
        Scenario scenario =
                Scenario.of(9).hit(5, MarkKind.LINE, Verdict.TIGHT, 1, 4, "").whatIf(List.of(3, 4, 6), List.of(5));
        assertThat(TextReport.write(scenario.report(), TextStyle.PLAIN)).contains("""
                        What if   Setting              Centre  Hit  Tight  Not checked  Element
                                  3:1 middle (chosen)  5.1 mm  0    1      0            3/8 in
                                  3:1 middle           5.1 mm  3    1      1            3/8 in
                        """);
        assertThat(TextReport.write(scenario.report(), new TextStyle(false, 50)).lines())
                .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(50));
    }

    @Test
    void theVerdictComesFirst() {
        assertThat(first(Scenario.of(2))).isEqualTo("Good to print and bind.");
        assertThat(first(Scenario.of(2).hit(1, MarkKind.ART, Verdict.HIT, 1, 4, "")))
                .isEqualTo("Do not print. The holes would cut content on 1 page.");
        assertThat(first(Scenario.of(2).unchecked(1, "x"))).isEqualTo("Do not print yet. 1 page could not be checked.");
        assertThat(first(
                        Scenario.of(3).unchecked(1, "x").unchecked(3, "x").hit(2, MarkKind.ART, Verdict.HIT, 1, 4, "")))
                .isEqualTo("Do not print. The holes would cut content on 1 page. 2 pages could not be checked.");
        assertThat(first(Scenario.of(2).noElement())).isEqualTo("Do not print. 1 error to resolve.");
        assertThat(first(Scenario.of(2).repaired())).isEqualTo("Good to print and bind. 1 warning to review.");
        assertThat(first(Scenario.of(2).repaired().failOn(FailOn.WARNING)))
                .isEqualTo("Do not print yet. 1 warning to resolve; this job fails on warnings.");
        assertThat(first(Scenario.of(2).noElement().failOn(FailOn.NEVER)))
                .isEqualTo(
                        "Do not print. 1 error to resolve. The check does not fail, as the job says (fail-on: never).");
    }

    @Test
    void findingsAreCappedAndTheRestCounted() {
        Scenario scenario = Scenario.of(40).junk(1).rightToLeft().repaired();
        for (int p = 1; p <= 12; p++) {
            scenario.unchecked(p, "reason " + p);
        }
        String text = TextReport.write(scenario.report(), TextStyle.PLAIN);
        assertThat(text).contains("And more  3 errors, 1 warning not shown. The JSON report lists all.");
        assertThat(text.lines().filter(l -> l.startsWith("ERROR"))).hasSize(8);
    }

    @Test
    void longPageListsAreCapped() {
        Scenario scenario = Scenario.of(100);
        for (int p = 1; p <= 99; p += 2) {
            scenario.hit(p, MarkKind.TEXT, Verdict.HIT, 1, 4, "x");
        }
        for (int p = 1; p <= 100; p += 3) {
            scenario.hit(p, MarkKind.LINE, Verdict.HIT, 1, 4, "");
        }
        assertThat(TextReport.write(scenario.report(), TextStyle.PLAIN))
                .contains("Pages 1-99, odd ones. [text-hit]")
                .contains("Pages 1, 4, 7, 10, 13, 16, 19, 22 and 26 more.");
    }

    @Test
    void coversAndLiftsThatDiffer() {
        String text =
                TextReport.write(Scenario.of(4).covers().lifts(1, 14, 14, 13, 1).report(), TextStyle.PLAIN.withNotes());
        assertThat(text)
                .contains("Covers    front, printed: bond-20, 94 um per sheet (JCP O-63 (1999))")
                .contains("5 lifts per copy: 1, 14, 14, 13, 1 leaves.");
        String many = TextReport.write(
                Scenario.of(4).lifts(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 8, 7).report(), TextStyle.PLAIN.withNotes());
        assertThat(many).contains("14 lifts per copy: 12 x 9, 8, 7 leaves.");
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 120})
    void noLineIsWiderThanAskedFor(int width) {
        String text = TextReport.write(bad(), new TextStyle(false, width));
        assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(width));
        assertThat(text.lines()).noneMatch(l -> l.endsWith(" "));
        assertThat(text.replaceAll("\\s+", " "))
                .as("wrapping loses nothing")
                .isEqualTo(TextReport.write(bad(), TextStyle.PLAIN).replaceAll("\\s+", " "));
    }

    @Test
    void aVeryNarrowScreenIsTakenAsForty() {
        assertThat(new TextStyle(false, 3).width()).isEqualTo(40);
    }

    @Test
    void colourOnlyWhereAskedForAndNeverAlone() {
        String plain = TextReport.write(bad(), TextStyle.PLAIN);
        String coloured = TextReport.write(bad(), new TextStyle(true, 100));
        assertThat(plain).doesNotContain("\u001B");
        assertThat(coloured).startsWith("\u001B[1;31mDo not print").contains("\u001B[1;31mERROR\u001B[0m     ");
        assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(plain);
    }

    @Test
    void namesFromOutsideCannotWriteOnTheTerminal() {
        String text = TextReport.write(
                Scenario.of(1).file("a\u001B]0;x\u0007\u202E\u009Bfdp.pdf").report(), TextStyle.PLAIN);
        assertThat(text).contains("a?]0;x???fdp.pdf").doesNotContain("\u001B", "\u202E", "\u0007", "\u009B");
    }

    @Test
    void theSameInEveryLocale() {
        String expected = TextReport.write(bad(), TextStyle.PLAIN);
        Locale before = Locale.getDefault();
        try {
            for (String language : List.of("en", "de", "tr", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(language));
                assertThat(TextReport.write(bad(), TextStyle.PLAIN))
                        .as(language)
                        .isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void anUnreadableFile() {
        String text = TextReport.unreadable(
                "letter.pdf",
                new UnreadableInputException(
                        UnreadableInputException.Reason.NOT_PDF, "It is a word processor's file.", "Ask for a PDF."),
                TextStyle.PLAIN);
        assertThat(text).isEqualTo("""
                        Not checked: letter.pdf cannot be read. Nothing is known of it.

                        Problem   It is a word processor's file.
                        Do        Ask for a PDF.
                        """);
    }
}
