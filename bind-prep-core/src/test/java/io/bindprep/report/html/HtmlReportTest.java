package io.bindprep.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Sides;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.picture.CloseUp;
import io.bindprep.picture.CloseUpWindow;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.Picture;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlReportTest {
    private static final Picture PICTURE = new Picture("image/png", "AAAA", 10, 20);

    private static Scenario bad() {
        return Scenario.of(84)
                .hit(8, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter one")
                .hit(44, MarkKind.LINE, Verdict.TIGHT, null, 9, "")
                .unchecked(50, "it takes too long to read");
    }

    private static PagePicture picture(int page) {
        return new PagePicture(page, PICTURE, 21.5, 0, List.of(new CloseUp(new CloseUpWindow(87, 131), PICTURE)), null);
    }

    private static String html(Scenario scenario, PagePicture... pictures) {
        return HtmlReport.write(scenario.report(), List.of(pictures));
    }

    private static List<String> all(String pattern, String html) {
        return Pattern.compile(pattern)
                .matcher(html)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void verdictAndNumbersComeFirst() {
        String html = html(bad());
        assertThat(html).startsWith("<!doctype html>").endsWith("</html>\n");
        assertThat(html)
                .containsSubsequence(
                        "<h1 class=\"bad\">",
                        "Do not print. The holes would cut content on 1 page. 1 page could not be checked.",
                        "<dt>Sheets per copy</dt><dd><b>42</b>",
                        "<h2 id=\"findings-title\">Findings</h2>",
                        "text-hit",
                        "<h2 id=\"every-page-title\">Every page</h2>",
                        "<h2 id=\"numbers-title\">Numbers</h2>",
                        "Only trained people run punches");
        assertThat(html(Scenario.of(84))).contains("<h1 class=\"good\">", "Nothing was found.");
        assertThat(html(Scenario.of(84).hit(1, MarkKind.TEXT, Verdict.TIGHT, null, 9, "x")))
                .contains("<h1 class=\"care\">");
    }

    @Test
    void everyFindingHasItsWordItsPagesAndWhatToDo() {
        Report report = bad().report();
        String html = HtmlReport.write(report, List.of()).replace('\u00a0', ' ');
        assertThat(report.findings()).isNotEmpty();
        report.findings()
                .forEach(f -> assertThat(html)
                        .contains(
                                "<li class=\"" + f.severity().name().toLowerCase(Locale.ROOT) + "\">",
                                "<code>" + f.rule() + "</code>",
                                "<b>Do:</b> " + f.remedy().replace("&", "&amp;")));
    }

    /** A number parted from its unit by the end of a line is misread; the screen of a phone breaks lines anywhere. */
    @Test
    void numbersKeepTheirUnits() {
        assertThat(HtmlReport.write(bad().report(), List.of()))
                .containsPattern("\\d\u00a0mm")
                .doesNotContainPattern("\\d (mm|um|kg|ppi)\\b");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 10, 84, 1321})
    void thereIsOneCellForEachPage(int pages) {
        String strip =
                html(Scenario.of(pages)).split("<div class=\"strip", 2)[1].split("<p class=\"small\">", 2)[0];
        assertThat(all("<(i|a) class=\"cell clear\"", strip)).hasSize(pages);
    }

    @Test
    void cellsAreToldApartByLetterAndLeadToTheirPage() {
        assertThat(html(bad()))
                .contains(
                        "<a class=\"cell hit\" href=\"#p8\" title=\"Page 8, hit\" aria-label=\"Page 8, hit\">H</a>",
                        "aria-label=\"Page 44, tight\">T</a>",
                        "aria-label=\"Page 50, not checked\">?</a>");
    }

    @Test
    void everyLinkLeadsToOnePlaceInTheFile() {
        String html = html(bad(), picture(8));
        TreeSet<String> ids = new TreeSet<>(all("(?<= id=\")[^\"]+", html));
        assertThat(all("(?<= id=\")[^\"]+", html)).doesNotHaveDuplicates();
        List<String> targets = all("(?<=<a )[^>]*href=\"[^\"]*", html);
        assertThat(targets).isNotEmpty();
        assertThat(targets).allSatisfy(t -> assertThat(ids).contains(t.replaceAll(".*href=\"#", "")));
    }

    @Test
    void nothingIsFetchedAndNothingRuns() {
        String html = html(bad(), picture(8));
        assertThat(html).doesNotContain("<script", "http:", "https:", "url(", "@import", "<link", "<iframe");
        assertThat(all("<[a-z][^>]* on[a-z]+=", html)).isEmpty();
        assertThat(all("(?<=href=\")[^#d]", html)).isEmpty();
        assertThat(html).contains("content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\"");
    }

    @Test
    void aDocumentsWordsStayText() {
        String hostile = "<script>alert(1)</script>\" onload=\"x\u202E\u0000&";
        String html = html(Scenario.of(2).file(hostile).hit(1, MarkKind.TEXT, Verdict.HIT, 3, 4, hostile), picture(1));
        assertThat(html).doesNotContain("<script", "\u202E", "\u0000");
        assertThat(html).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
        assertThat(all("<[^>]* onload", html)).isEmpty();
    }

    @Test
    void aPageInPicturesShowsHolesInTrueScale() {
        String html = html(bad(), picture(8));
        // 3:1 on A4: hole 5/32 in = 3.97 mm square, centre 0.2 in = 5.08 mm, the first 8.8 mm from the head (XJDF 2.2,
        // Appendix F); page 8 is bound at its right: 210 - 5.08 - 1.984 = 202.94, 8.8 - 1.984 = 6.82
        assertThat(html).contains("<rect class=\"hole\" x=\"202.94\" y=\"6.82\" width=\"3.97\" height=\"3.97\"");
        // the close-up from 87 to 131 mm, 21.5 mm deep: its box on the page
        assertThat(html).contains("viewBox=\"188.5 87 21.5 44\"");
        // the mark, 4.2 to 9.2 mm from the edge and 100 to 118.04 from the head, in its outline a quarter of a mm
        // around
        assertThat(html).contains("<rect class=\"mark hit\" x=\"200.55\" y=\"99.75\" width=\"5.5\" height=\"18.54\"");
        assertThat(html).contains("mark 1, text, hit.\"").contains("<q><bdi>Chapter one</bdi></q>");
        // centres at 93.5, 101.9, 110.4, 118.9, 127.3 and, reaching in with its punching tolerance, 85 mm
        assertThat(all("<rect class=\"hole\"", html.split("<figure class=\"close\">")[1]))
                .hasSize(6);
    }

    @Test
    void aTopBoundPageHasItsHolesAtTheTop() {
        String html = html(
                Scenario.of(1).bound(BindingEdge.TOP, Sides.ONE).hit(1, MarkKind.TEXT, Verdict.HIT, 3, 4, "x"),
                picture(1));
        assertThat(html)
                .contains("<rect class=\"hole\" x=\"5.65\" y=\"3.1\" width=\"3.97\" height=\"3.97\"")
                .contains("100.0 to 118.0\u00a0mm from the left edge");
    }

    @Test
    void whatIsMissingInAPictureIsSaid() {
        String html = html(bad(), picture(8), PagePicture.none(50, "its content cannot be drawn"));
        assertThat(html)
                .contains("<b>Not read whole:</b> it takes too long to read. Nothing on this page is known")
                .contains("<b>No picture:</b> its content cannot be drawn.");
    }

    @Test
    void pagesWithoutAPictureAreListedAndTheRestCounted() {
        Scenario many = Scenario.of(1_500);
        for (int p = 1; p <= 1_500; p++) {
            many.hit(p, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "words");
        }
        String html = html(many, picture(1));
        assertThat(all("<tr id=\"p\\d+\">", html)).hasSize(1_000);
        assertThat(html).contains("499 more pages are not clear and not listed here");
    }

    @Test
    void theSameReportGivesTheSameTextInAnyLocale() {
        String english = html(bad(), picture(8));
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de", "tr", "ar-EG")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(html(bad(), picture(8))).as(tag).isEqualTo(english);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
