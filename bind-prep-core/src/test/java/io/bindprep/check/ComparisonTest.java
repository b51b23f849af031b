package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.job.FailOn;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two states of an invented book: what a person who lays both side by side would say of each finding. */
class ComparisonTest {
    private static Scenario book(int pages) {
        return Scenario.of(pages);
    }

    private static Scenario text(Scenario s, int page, double near, String words) {
        return s.hit(page, MarkKind.TEXT, Verdict.HIT, 12, near, words);
    }

    private static Report compared(Scenario old, Scenario now, boolean onlyNew) {
        Report before = old.report();
        List<Earlier.Item> items = before.findings().stream()
                .map(f -> new Earlier.Item(
                        f.rule(),
                        f.severity(),
                        f.pages(),
                        f.message(),
                        f.measuredMm(),
                        f.limitMm(),
                        f.seen() == null ? List.of() : f.seen().places()))
                .toList();
        return now.report()
                .since(
                        new Earlier(
                                "old.pdf",
                                before.document().sha256(),
                                before.pages().size(),
                                items),
                        true,
                        onlyNew);
    }

    private static Report compared(Scenario old, Scenario now) {
        return compared(old, now, true);
    }

    private static Finding.Since of(Report report, String rule) {
        return report.findings().stream()
                .filter(f -> f.rule().equals(rule))
                .findFirst()
                .orElseThrow()
                .since();
    }

    @Test
    void theSameBookHasNothingNewAndFailsNothing() {
        Report report = compared(text(book(6), 3, 4.2, "Chapter one"), text(book(6), 3, 4.2, "Chapter one"));
        assertThat(of(report, "text-hit").change()).isEqualTo(Finding.Change.SAME);
        assertThat(report.failed()).isFalse();
        assertThat(report.outcome()).isEqualTo(Outcome.FINDINGS);
        assertThat(report.recheck().gone()).isEmpty();
        assertThat(compared(text(book(6), 3, 4.2, "x"), text(book(6), 3, 4.2, "x"), false)
                        .failed())
                .isTrue();
    }

    @Test
    void aFindingOnAPageThatMovedIsStillThere() {
        Report inserted = compared(text(book(6), 3, 4.2, ""), text(book(8), 5, 4.2, ""));
        assertThat(of(inserted, "text-hit").change()).isEqualTo(Finding.Change.SAME);
        Report removed = compared(text(book(6), 5, 4.2, ""), text(book(5), 4, 4.2, ""));
        assertThat(of(removed, "text-hit").change()).isEqualTo(Finding.Change.SAME);
    }

    @Test
    void wordsThatStandOnceMeetWhereverTheyAre() {
        Report report = compared(text(book(9), 2, 4.2, "Appendix"), text(book(9), 8, 4.2, "Appendix"));
        assertThat(of(report, "text-hit").change()).isEqualTo(Finding.Change.SAME);
    }

    @Test
    void whatHasNoWordsAndStandsOnAnotherPageIsNew() {
        Scenario old = book(9).hit(2, MarkKind.IMAGE, Verdict.HIT, 12, 4.2, "");
        Scenario now = book(9).hit(8, MarkKind.IMAGE, Verdict.HIT, 12, 4.2, "");
        Report report = compared(old, now);
        assertThat(of(report, "image-hit").change()).isEqualTo(Finding.Change.NEW);
        assertThat(report.failed()).isTrue();
        assertThat(report.recheck().fixed()).isOne();
    }

    @Test
    void nearerTheBindingEdgeIsWorse() {
        Report report = compared(text(book(6), 3, 4.2, "one"), text(book(6), 3, 3.9, "one"));
        assertThat(of(report, "text-hit"))
                .isEqualTo(new Finding.Since(
                        Finding.Change.WORSE, "on page 3 nearer the binding edge, 3.9 mm instead of 4.2 mm"));
        assertThat(report.failed()).isTrue();
        assertThat(of(compared(text(book(6), 3, 4.2, "one"), text(book(6), 3, 4.15, "one")), "text-hit")
                        .change())
                .as("outlines of a new export differ by rounding")
                .isEqualTo(Finding.Change.SAME);
    }

    @Test
    void anotherPageIsWorseAndTheOldOneOfTwoIsFixed() {
        Scenario old = text(text(book(9), 3, 4.2, "one"), 5, 5, "two");
        Report more = compared(old, text(text(text(book(9), 3, 4.2, "one"), 5, 5, "two"), 7, 5, "three"));
        assertThat(of(more, "text-hit")).isEqualTo(new Finding.Since(Finding.Change.WORSE, "new on page 7"));
        Report fewer = compared(old, text(book(9), 5, 5, "two"));
        assertThat(of(fewer, "text-hit").change()).isEqualTo(Finding.Change.SAME);
        assertThat(fewer.recheck().gone())
                .singleElement()
                .satisfies(g -> assertThat(g.pages()).containsExactly(3))
                .satisfies(g -> assertThat(g.whole()).isFalse());
    }

    @Test
    void tightThatBecomesHitIsWorseAndTheOtherWayRoundStillThere() {
        Scenario tight = book(6).hit(3, MarkKind.TEXT, Verdict.TIGHT, null, 9, "one");
        Scenario hit = text(book(6), 3, 4.2, "one");
        Report worse = compared(tight, hit);
        assertThat(of(worse, "text-hit").detail()).startsWith("it was a warning");
        assertThat(worse.recheck().gone()).isEmpty();
        Report better =
                compared(text(book(6), 3, 4.2, "one"), book(6).hit(3, MarkKind.TEXT, Verdict.TIGHT, null, 9, "one"));
        assertThat(of(better, "text-tight").change()).isEqualTo(Finding.Change.SAME);
    }

    @Test
    void aFindingOfTheWholeBookMeetsItsLike() {
        Report report = compared(book(4).noHoles(), book(6).noHoles());
        assertThat(of(report, "edge-unpunchable").change()).isEqualTo(Finding.Change.SAME);
        assertThat(of(compared(book(4), book(4).noHoles()), "edge-unpunchable").change())
                .isEqualTo(Finding.Change.NEW);
    }

    @Test
    void aPageThatCannotBeReadNowIsNoProofThatItsFindingIsFixed() {
        Report report = compared(text(book(6), 3, 4.2, "one"), book(6).unchecked(3, "cut short"));
        assertThat(report.recheck().fixed()).isZero();
        assertThat(report.recheck().unknown()).isOne();
        assertThat(of(report, "page-unchecked").change()).isEqualTo(Finding.Change.NEW);
        assertThat(compared(text(book(6), 3, 4.2, "one"), book(6).unchecked(5, "cut short"))
                        .recheck()
                        .fixed())
                .isOne();
    }

    @Test
    void aNewWarningFailsWhereWarningsDo() {
        Scenario now = book(6).hit(3, MarkKind.TEXT, Verdict.TIGHT, null, 9, "one");
        assertThat(compared(book(6), now).failed()).isFalse();
        assertThat(compared(
                                book(6),
                                book(6).hit(3, MarkKind.TEXT, Verdict.TIGHT, null, 9, "one")
                                        .failOn(FailOn.WARNING))
                        .failed())
                .isTrue();
        assertThat(compared(book(6), text(book(6), 3, 4, "one").failOn(FailOn.NEVER))
                        .failed())
                .isFalse();
    }

    private static Scenario heads(Scenario s, int... pages) {
        for (int page : pages) {
            text(s, page, 6.2, "Running head");
        }
        return s;
    }

    /** Two leaves came in before the fortieth page; the head is where it was, two pages further on. */
    @Test
    void headsMoveOnWithThePagesThatCameInBeforeThem() {
        Report alone = compared(heads(book(60), 40, 42, 44), heads(book(62), 42, 44, 46));
        assertThat(of(alone, "text-hit")).isEqualTo(new Finding.Since(Finding.Change.SAME, ""));
        assertThat(alone.recheck().gone()).isEmpty();
        Report withAnchor = compared(
                heads(text(book(60), 14, 4.2, "Only here"), 40, 42, 44, 46),
                heads(text(book(62), 16, 4.2, "Only here"), 42, 44, 46));
        assertThat(of(withAnchor, "text-hit")).isEqualTo(new Finding.Since(Finding.Change.SAME, ""));
        assertThat(withAnchor.recheck().gone())
                .singleElement()
                .satisfies(g -> assertThat(g.pages()).containsExactly(46));
    }

    /** They came in at the end: nothing before them has moved. */
    @Test
    void headsStayWherePagesCameInBehindThem() {
        Report report = compared(heads(book(60), 40, 42, 44), heads(book(62), 40, 42, 44));
        assertThat(of(report, "text-hit")).isEqualTo(new Finding.Since(Finding.Change.SAME, ""));
        Report one = compared(
                heads(text(book(60), 50, 4.2, "Only here"), 40, 42),
                heads(text(book(62), 50, 4.2, "Only here"), 40, 42, 44));
        assertThat(of(one, "text-hit").change()).isEqualTo(Finding.Change.WORSE);
        assertThat(of(one, "text-hit").detail()).contains("page 44").doesNotContain("42");
    }

    /** Pages that changed their order tell nothing of the others. */
    @Test
    void whatMovedToAndFroIsNoMeasure() {
        Report report = compared(
                heads(text(text(book(60), 10, 4.2, "One"), 30, 4.2, "Two"), 40, 42),
                heads(text(text(book(62), 30, 4.2, "One"), 10, 4.2, "Two"), 40, 42));
        assertThat(of(report, "text-hit").change()).isEqualTo(Finding.Change.SAME);
    }
}
