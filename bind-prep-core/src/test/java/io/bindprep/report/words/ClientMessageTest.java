package io.bindprep.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.FindingKind;
import io.bindprep.check.FindingKinds;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.html.ClientHtml;
import io.bindprep.report.text.ClientText;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Read as a designer reads it, who has never seen a punch. */
class ClientMessageTest {
    /** Findings that only the shop can mend: its job, paper, elements, punch, or how it feeds and turns leaves. */
    private static final Set<String> SHOP_ONLY = Set.of(
            "acceptance-unmet",
            "binding-margin-inside-hole-zone",
            "blank-back-added",
            "closer-size",
            "edge-unpunchable",
            "element-near-limit",
            "element-off-line",
            "element-off-pitch",
            "element-unknown",
            "feed-same-end",
            "half-hole",
            "hanger-at-side",
            "hanger-pins-fixed",
            "header-junk",
            "pages-turn-stiffly",
            "paper-outside-long",
            "paper-outside-short",
            "pins-fixed",
            "pitch-too-thick",
            "press-sheet-small",
            "stack-may-not-close",
            "stack-straddles",
            "stack-too-thick",
            "tabs-beyond-covers",
            "unusual-turn");

    private static Scenario book() {
        return Scenario.of(6)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter <b>one</b>")
                .hit(4, MarkKind.IMAGE, Verdict.TIGHT, null, 9, "")
                .file("in/theirs/thesis.pdf");
    }

    @Test
    void everyKindOfFindingHasWordsForTheClientOrIsTheShopsAlone() {
        Set<String> known = new TreeSet<>(SHOP_ONLY);
        assertThat(known)
                .doesNotContainAnyElementsOf(ClientAdvice.ids())
                .doesNotContainAnyElementsOf(ClientAdvice.MOVES);
        known.addAll(ClientAdvice.ids());
        known.addAll(ClientAdvice.MOVES);
        assertThat(known)
                .containsExactlyElementsOf(FindingKinds.all().stream()
                        .map(FindingKind::id)
                        .sorted()
                        .toList());
    }

    // 3/8 in is the margin at 3:1; from 4.2 mm it wants 5.325 mm more. Page 4 is a verso, bound at its right.
    @Test
    void itSaysWhatToMoveHowFarAndToWhichSide() {
        ClientMessage message = ClientMessage.of(book().report());
        assertThat(message.file()).isEqualTo("thesis.pdf");
        assertThat(message.opening()).contains("closer to that side than 9.6 mm");
        assertThat(message.pages())
                .containsExactly(
                        new ClientMessage.Moves(
                                "Page 3",
                                3,
                                List.of(
                                        "Move the text \"Chapter <b>one</b>\" by 5.4 mm to the right. It is 4.2 mm from the"
                                                + " left side, 100 mm from the top.")),
                        new ClientMessage.Moves(
                                "Page 4",
                                4,
                                List.of("Move the picture by 0.6 mm to the left. It is 9 mm from the right side, 100 mm"
                                        + " from the top.")));
    }

    @Test
    void pagesAlikeStandTogetherAndManyAreCounted() {
        Scenario heads = Scenario.of(90);
        for (int page = 1; page <= 89; page += 2) {
            heads.hit(page, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Head");
        }
        assertThat(ClientMessage.of(heads.report()).pages()).hasSize(1);
        Scenario many = Scenario.of(150);
        for (int page = 1; page <= 150; page++) {
            many.hit(page, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Page " + page);
        }
        ClientMessage message = ClientMessage.of(many.report());
        assertThat(message.pages()).hasSize(60);
        assertThat(message.more()).startsWith("90 more pages");
    }

    @Test
    void lengthsAreInTheUnitsOfTheDocument() {
        Scenario letter = Scenario.of(2);
        letter.size(1, 215.9, 279.4).size(2, 215.9, 279.4).hit(1, MarkKind.TEXT, Verdict.HIT, 12, 5.08, "one");
        ClientMessage message = ClientMessage.of(letter.report());
        assertThat(message.pages().get(0).lines().get(0))
                .startsWith("Move the text \"one\" by 0.18 in to the right. It is 0.20 in from");
    }

    @Test
    void whatIsAcceptedOrGoodAsksForNothing() {
        assertThat(ClientMessage.of(Scenario.of(3).report()).opening())
                .isEqualTo("Nothing has to change in this file.");
    }

    @Test
    void itSpeaksNoWordOfTheShop() {
        Scenario all = book().unchecked(5, "cut short").size(6, 215.9, 279.4).trimUndeclared();
        String text = ClientText.write(ClientMessage.of(all.report()), "")
                + String.join(
                        " ",
                        ClientAdvice.ids().stream()
                                .map(id -> ClientAdvice.of(id).orElseThrow())
                                .toList());
        assertThat(text.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("hole zone", "tolerance", "punch", "pitch", "element", "stock", "caliper", "trimbox")
                .doesNotContain("binding edge", "recto", "verso", "leaf", "strip", "cost", "price", "dear ", "hello");
        assertThat(text).contains("## When you export", "Page 5: These pages could not be checked whole");
    }

    @Test
    void wordsOfTheDocumentAreNoMarkup() {
        Report report = book().report();
        assertThat(ClientText.write(ClientMessage.of(report), "")).contains("Chapter \\<b\\>one\\</b\\>");
        assertThat(ClientHtml.write(report, List.of()))
                .contains("Chapter &lt;b&gt;")
                .doesNotContain("<b>one");
    }

    @ParameterizedTest
    @ValueSource(strings = {"LOCKED", "DAMAGED"})
    void aFileThatCannotBeOpenedIsToldOf(String reason) {
        ClientMessage message = ClientMessage.unreadable(
                "a/b.pdf", new UnreadableInputException(UnreadableInputException.Reason.valueOf(reason), "x", "y"));
        assertThat(ClientText.write(message, ""))
                .isEqualTo("# Changes to b.pdf\n\n"
                        + (reason.equals("LOCKED")
                                ? "The file is locked, so it could not be checked. Please send it without a password.\n"
                                : "The file could not be opened, so it was not checked. Please export it again as a PDF"
                                        + " and send it.\n"));
        assertThat(ClientHtml.unreadable(message)).contains("<bdi>b.pdf</bdi>");
    }
}
