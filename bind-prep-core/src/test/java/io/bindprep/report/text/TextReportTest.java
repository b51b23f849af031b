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
                        Do not print: 2 pages would lose matter to the holes.

                        File      thesis.pdf, 84 pages
                        Sheets    42 sheets printed, 42 leaves and no cover a copy; 100 copies: 4200 sheets and 210 overs
                        Stock     bond-20, 94 um a sheet; JCP O-63 (1999)
                        Stack     4.9 mm (0.193 in), likely 4.6 mm to 5.2 mm (0.181 in to 0.205 in); 210 g a copy
                        Binding   wire, pitch 3:1, 8.47 mm (0.333 in), element 3/8 in (9.53 mm), 34 loops
                                  Set the closer to 9.53 mm (3/8 in).
                        Punch     W3_1i-square-0t: 34 holes 3.97 x 3.97 mm, centre 5.08 mm (0.2 in) from the binding edge
                                  Depth middle, by the element's size.
                                  First hole 8.8 mm (0.346 in) from the head; pull pins 35-36.
                                  A sheet may sit skewed by 2.7 mm (0.106 in) over the row.
                                  3 lifts a copy: 14, 14, 14 sheets; 300 strokes for 100 copies.
                                  Hole zone 8.06 mm (0.317 in) with 1 mm punching tolerance; binding margin 9.53 mm (3/8
                                  in).
                        Pages     81 clear, 1 tight, 2 hit

                        ERROR     text-hit, pages 7-8
                                  Text would be punched on 2 pages; worst on page 8 at pin 12, 4.2 mm from the binding edge
                                  where the holes with their punching tolerance reach to 8.06 mm, 100 to 118 mm from the
                                  head: "Chapter one". Measured by its outline.
                                  Do: Have it moved away from the binding edge by 5.4 mm, to 9.53 mm, or bind another edge
                                  (binding-edge).
                        WARNING   line-tight, page 44
                                  A line stands too near the binding on page 44, 9 mm from the binding edge where live
                                  matter keeps 9.53 mm, 100 to 118 mm from the head. Measured by its outline.
                                  Do: Have it moved away from the binding edge by 0.6 mm, to 9.53 mm, or accept it by a
                                  smaller binding-margin, no less than 8.06 mm.
                        NOTE      header-junk
                                  12 bytes stand before the PDF header.
                                  Do: Left by a print system as a rule; ask for a plain export if the printer's front end
                                  refuses the file.

                        Punch a waste sheet first. The machine's manual, site rules and local law come before this report;
                        only trained people run punches, cutters and closers.
                        """);
    }

    @Test
    void oneScreenOfAGoodJob() {
        assertThat(TextReport.write(Scenario.of(84).weightUnknown().report(), TextStyle.PLAIN))
                .isEqualTo("""
                        Good to print and bind.

                        File      thesis.pdf, 84 pages
                        Sheets    42 sheets printed, 42 leaves and no cover a copy
                        Stock     bond-20, 94 um a sheet; JCP O-63 (1999)
                        Stack     4.9 mm (0.193 in), likely 4.6 mm to 5.2 mm (0.181 in to 0.205 in); weight unknown, as a
                                  stock gives no grammage
                        Binding   wire, pitch 3:1, 8.47 mm (0.333 in), element 3/8 in (9.53 mm), 34 loops
                                  Set the closer to 9.53 mm (3/8 in).
                        Punch     W3_1i-square-0t: 34 holes 3.97 x 3.97 mm, centre 5.08 mm (0.2 in) from the binding edge
                                  Depth middle, by the element's size.
                                  First hole 8.8 mm (0.346 in) from the head; pull pins 35-36.
                                  A sheet may sit skewed by 2.7 mm (0.106 in) over the row.
                                  3 lifts a copy: 14, 14, 14 sheets.
                                  Hole zone 8.06 mm (0.317 in) with 1 mm punching tolerance; binding margin 9.53 mm (3/8
                                  in).
                        Pages     84 clear

                        Punch a waste sheet first. The machine's manual, site rules and local law come before this report;
                        only trained people run punches, cutters and closers.
                        """);
    }

    @Test
    void settingsThatDoTheSameShareALine() {
        String text = TextReport.write(
                Scenario.of(9).whatIf(List.of(3, 4, 6), List.of(5)).report(), TextStyle.PLAIN);
        assertThat(text).contains("""
                        What if   3:1 middle 5.08 mm (chosen): none hit, 1 tight (5); 3/8 in.
                                  3:1 middle 5.08 mm: 3 hit (3-4, 6), 1 tight (5), 1 not checked (2); 3/8 in.
                        """);
    }

    @Test
    void theVerdictComesFirst() {
        assertThat(first(Scenario.of(2))).isEqualTo("Good to print and bind.");
        assertThat(first(Scenario.of(2).hit(1, MarkKind.ART, Verdict.HIT, 1, 4, "")))
                .isEqualTo("Do not print: 1 page would lose matter to the holes.");
        assertThat(first(Scenario.of(2).unchecked(1, "x")))
                .isEqualTo("Do not print yet: 1 page could not be read whole, so nothing is known of it.");
        assertThat(first(
                        Scenario.of(3).unchecked(1, "x").unchecked(3, "x").hit(2, MarkKind.ART, Verdict.HIT, 1, 4, "")))
                .isEqualTo("Do not print: 1 page would lose matter to the holes, and 2 pages could not be read whole.");
        assertThat(first(Scenario.of(2).noElement())).isEqualTo("Do not print: 1 error below.");
        assertThat(first(Scenario.of(2).repaired()))
                .isEqualTo("Good to print and bind, once 1 warning below is looked at.");
        assertThat(first(Scenario.of(2).repaired().failOn(FailOn.WARNING)))
                .isEqualTo("Do not print yet: 1 warning below, and this job fails on warnings.");
        assertThat(first(Scenario.of(2).noElement().failOn(FailOn.NEVER)))
                .isEqualTo("Do not print: 1 error below. (fail-on is never, so this does not fail the check.)");
    }

    @Test
    void findingsAreCappedAndTheRestCounted() {
        Scenario scenario = Scenario.of(40).junk(1).rightToLeft().repaired();
        for (int p = 1; p <= 12; p++) {
            scenario.unchecked(p, "reason " + p);
        }
        String text = TextReport.write(scenario.report(), TextStyle.PLAIN);
        assertThat(text).contains("And more  3 errors, 1 warning, 2 notes not shown; the JSON report lists all.");
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
                .contains("text-hit, pages 1-99, odd ones\n")
                .contains("line-hit, pages 1, 4, 7, 10, 13, 16, 19, 22 and 26 more\n");
    }

    @Test
    void coversAndLiftsThatDiffer() {
        String text =
                TextReport.write(Scenario.of(4).covers().lifts(1, 14, 14, 13, 1).report(), TextStyle.PLAIN);
        assertThat(text)
                .contains("Covers    front bond-20, 94 um a sheet; JCP O-63 (1999), printed; back bond-20")
                .contains("5 lifts a copy: 1, 14, 14, 13, 1 sheets.");
        String many = TextReport.write(
                Scenario.of(4).lifts(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 8, 7).report(), TextStyle.PLAIN);
        assertThat(many).contains("9, 9 and 2 more lifts of 15 sheets.");
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
                        Not checked: letter.pdf cannot be read, so nothing is known of it.

                        Problem   It is a word processor's file.
                        Do        Ask for a PDF.
                        """);
    }
}
