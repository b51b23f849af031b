package io.bindprep.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.FailOn;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Read by a parser of Markdown with tables (commonmark-java), which knows nothing of ours. */
class RunSummaryTest {
    private static Report report() {
        return Scenario.of(6)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter one")
                .report();
    }

    /** The table as a reader sees it, and what besides plain words and links is in it. */
    private static final class Seen extends AbstractVisitor {
        private final List<List<String>> rows = new ArrayList<>();
        private final Map<String, String> links = new TreeMap<>();
        private final List<String> markup = new ArrayList<>();

        static Seen of(String markdown) {
            Seen seen = new Seen();
            Parser.builder()
                    .extensions(List.of(TablesExtension.create()))
                    .build()
                    .parse(markdown)
                    .accept(seen);
            return seen;
        }

        @Override
        public void visit(CustomNode node) {
            if (node instanceof TableRow) {
                rows.add(new ArrayList<>());
            } else if (node instanceof TableCell) {
                rows.get(rows.size() - 1).add(text(node));
            }
            visitChildren(node);
        }

        private static String text(Node node) {
            StringBuilder text = new StringBuilder();
            for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
                text.append(child instanceof Text words ? words.getLiteral() : text(child));
            }
            return text.toString();
        }

        @Override
        public void visit(Link link) {
            links.put(text(link), link.getDestination());
        }

        @Override
        public void visit(HtmlInline html) {
            markup.add(html.getLiteral());
        }

        @Override
        public void visit(HtmlBlock html) {
            markup.add(html.getLiteral());
        }

        @Override
        public void visit(Code code) {
            markup.add(code.getLiteral());
        }

        @Override
        public void visit(Image image) {
            markup.add(image.getDestination());
        }

        @Override
        public void visit(Emphasis emphasis) {
            markup.add("*");
        }

        @Override
        public void visit(StrongEmphasis emphasis) {
            markup.add("**");
        }
    }

    @Test
    void aRowForEachDocumentTheWorstFirst() {
        RunSummary summary = new RunSummary();
        summary.add(0, SummaryRow.of(Scenario.of(4).report(), "in/good.pdf", Map.of("html", "good.html")));
        summary.add(2, SummaryRow.of(report(), "in/thesis.pdf", Map.of("json", "a b/th|(1).json")));
        summary.add(
                1,
                SummaryRow.unchecked(
                        "in/junk.pdf", "/srv/in/junk.pdf", "/srv/in/junk.pdf is no PDF at all.", Map.of()));
        Seen seen = Seen.of(summary.text(3));
        assertThat(seen.rows)
                .containsExactly(
                        List.of("Document", "Verdict", "Leaves", "Worst finding", "Reports"),
                        List.of("in/junk.pdf", "Not checked. It is no PDF at all.", "", "", ""),
                        List.of(
                                "in/thesis.pdf",
                                "Do not print. The holes would cut content on 1 page.",
                                "3",
                                seen.rows.get(2).get(3),
                                "json"),
                        List.of("in/good.pdf", "Good to print and bind.", "2", "", "html"));
        assertThat(seen.rows.get(2).get(3)).contains("Page 3: text 4.2 mm", "(text-hit)");
        // RFC 3986: a bar and brackets do not stand in a path of ours
        assertThat(seen.links).containsEntry("html", "good.html").containsEntry("json", "a%20b/th%7C%281%29.json");
        assertThat(summary.text(3))
                .contains("\n3 documents: 1 not checked, 1 failed, 1 good.\n")
                .contains("Punch a waste sheet first.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a|b.pdf",
                "a\\|b.pdf",
                "a`b`.pdf",
                "a``b|c`` d.pdf",
                "<script>alert(1)</script>.pdf",
                "<img src=x>.pdf",
                "<!-- x.pdf",
                "![x](http\u003a//example.org/y).pdf",
                "[x](y).pdf",
                "**a** _b_ ~c~.pdf",
                "&lt;b&gt;.pdf",
                "&#124; x.pdf",
                "- x.pdf",
                "1. x.pdf",
                "|---|.pdf",
                "# x.pdf",
                "\\.pdf"
            })
    void aNameIsNoMarkup(String name) {
        RunSummary summary = new RunSummary();
        summary.add(0, SummaryRow.of(report(), name, Map.of(name, name)));
        Seen seen = Seen.of(summary.text(1));
        assertThat(seen.rows).hasSize(2);
        assertThat(seen.rows.get(1)).hasSize(5).startsWith(name);
        assertThat(seen.markup).isEmpty();
        assertThat(seen.links).containsOnlyKeys(name);
    }

    @Test
    void aNameOfSeveralLinesOrWithMarksThatTurnWritingStaysOneLine() {
        RunSummary summary = new RunSummary();
        summary.add(0, SummaryRow.unchecked("a\n\n| b |\r\n# c\u202e\u0007d.pdf", "x", "No\nPDF.", Map.of()));
        assertThat(Seen.of(summary.text(1)).rows.get(1))
                .containsExactly("a | b | # c d.pdf", "Not checked. No PDF.", "", "", "");
    }

    @Test
    void documentsThatWereNotReachedAreNotGood() {
        RunSummary summary = new RunSummary();
        summary.add(0, SummaryRow.of(Scenario.of(4).report(), "good.pdf", Map.of()));
        assertThat(summary.text(3))
                .contains("3 documents: 2 not checked, 1 good.")
                .contains("The run ended early: 2 documents not reached, so nothing is known of them.");
        assertThat(new RunSummary().text(2))
                .contains("2 documents: 2 not checked.")
                .doesNotContain("|");
    }

    @Test
    void whatAJobLetsPassIsNotCalledGood() {
        Report excused = Scenario.of(6)
                .failOn(FailOn.NEVER)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "x")
                .report();
        assertThat(SummaryRow.of(excused, "x.pdf", Map.of()).rank()).isEqualTo(SummaryRow.Rank.EXCUSED);
    }

    @Test
    void ofThousandsTheWorstStandThereWhateverTheOrder() {
        RunSummary one = new RunSummary();
        RunSummary other = new RunSummary();
        for (int i = 0; i < 3000; i++) {
            int back = 2999 - i;
            one.add(i, SummaryRow.unchecked("d" + i + ".pdf", "", "x", Map.of()));
            other.add(back, SummaryRow.unchecked("d" + back + ".pdf", "", "x", Map.of()));
        }
        SummaryRow bad = SummaryRow.of(report(), "late.pdf", Map.of());
        one.add(3000, bad);
        other.add(3000, bad);
        String text = one.text(3001);
        assertThat(other.text(3001)).isEqualTo(text);
        assertThat(text)
                .contains("3001 documents: 3000 not checked, 1 failed.")
                .contains("| d199.pdf |")
                .doesNotContain("| d200.pdf |")
                .contains("And 2801 more documents, none of them worse than the last one here.")
                .hasSizeLessThan(1024 * 1024);
    }
}
