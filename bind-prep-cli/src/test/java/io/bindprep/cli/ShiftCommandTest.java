package io.bindprep.cli;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShiftCommandTest {
    private static final String HIT = fixture("cookbook-letter.pdf");

    @TempDir
    private Path folder;

    private String out() {
        return folder.resolve("out.pdf").toString();
    }

    @Test
    void writesACopyThatTheCheckFindsGoodAndShowsBeforeAndAfter() {
        Cli run = Cli.run("shift", HIT, "-o", out());
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.err()).isEmpty();
        // fixtures/README.md: 14 and 27 hit, 40-44 tight; 6.55 is what page 14 lacks
        assertThat(run.out())
                .containsPattern("pages +clear +tight +hit +not checked")
                .containsPattern("Before +100 +93 +5 +2 +0")
                .containsPattern("After +100 +100 +0 +0 +0")
                .contains("0.26 in away from the binding edge, at full size: pages 1-100", "Page 14", "full size")
                .doesNotContain("\u001b");
        assertThat(Cli.run("check", out()).exit()).isZero();
    }

    @Test
    void pagesThatMoveAlikeAreOneLine() {
        Cli run = Cli.run("shift", HIT, "-o", out(), "--page-by-page");
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains("the content of 7 pages moved")
                .containsPattern("0.05 in away from the binding edge, at full size: pages 40-44");
    }

    @Test
    void bleedThatIsMissingIsMadeWhenAsked() throws Exception {
        Path tint = folder.resolve("tint.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.A5);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.setNonStrokingColor(0.2f, 0.1f, 0, 0);
                content.addRect(0, 0, PDRectangle.A5.getWidth(), PDRectangle.A5.getHeight());
                content.fill();
            }
            document.save(tint.toFile());
        }
        Path html = folder.resolve("bleed.html");
        Cli run = Cli.run("shift", tint.toString(), "-o", out(), "--extend-bleed", "--write", "html=" + html);
        assertThat(run.exit()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("bleed made on 1 page", "mirrored to 3.0 mm beyond the trim");
        assertThat(Files.readString(html)).contains("the trim is dashed");
    }

    @Test
    void onlyHeadsMoveAndTheHtmlFileShowsThem() throws Exception {
        Path html = folder.resolve("repair.html");
        Cli run = Cli.run(
                "shift",
                HIT,
                "-o",
                out(),
                "--only-hit",
                "--pitch",
                "3:1",
                "--keep",
                "14, 27",
                "--write",
                "html=" + html);
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("only what stood too near moved, on 5 pages", "at the head: pages 40-44");
        assertThat(Files.readString(html)).contains("<b>Before</b>, page 40", "<b>After</b>, page 44");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--only-hit", "--gutter", "2mm"), "--only-hit");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--gutter", "2mm", "--write", "html=" + HIT), "--write");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--gutter", "2mm", "--write", "x.pdf"), "--write", "html=FILE");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--split", "--write", "html=" + html), "--split");
    }

    @Test
    void aClearFileIsCopied() {
        Cli run = Cli.run("shift", fixture("members-handbook-a4.pdf"), "-o", out());
        assertThat(run.exit()).isZero();
        assertThat(run.out().replaceAll("\\s+", " ")).contains("Nothing to move", "a copy of the file as it was");
        assertThat(Path.of(out())).exists();
    }

    @Test
    void aRefusalIsOneWithTheNumbersAndWritesNothing() {
        Cli run = Cli.run("shift", HIT, "-o", out(), "--binding-margin", "40 mm", "--minimum-scale", "99");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Not repaired, and nothing written", "1.57 in required", "99 %");
        assertThat(Path.of(out())).doesNotExist();
    }

    @Test
    void aFileWithOtherFindingsIsWrittenAndStillOne() {
        Cli run = Cli.run("shift", fixture("mixed-sizes.pdf"), "-o", out(), "--gutter", "2mm", "--fail-on", "warning");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(Path.of(out())).exists();
    }

    @Test
    void wrongSettingsAndPlacesAreTwo() throws Exception {
        assertUsage(Cli.run("shift", HIT), "-o");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--gutter", "wide"), "--gutter", "wide", "6 mm");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--gutter", "2mm", "--page-by-page"), "--page-by-page");
        assertUsage(Cli.run("shift", HIT, "-o", out(), "--binding", "glue"), "--binding", "glue");
        String nowhere = folder.resolve("no/out.pdf").toString();
        assertUsage(Cli.run("shift", HIT, "-o", nowhere, "--gutter", "1mm"), "--output", "there is no folder");
        Path input = Files.copy(Path.of(HIT), folder.resolve("in.pdf"));
        assertUsage(Cli.run("shift", input.toString(), "-o", input.toString()), "--output", "never overwritten");
    }

    private static void assertUsage(Cli run, String... words) {
        assertThat(run.exit()).as(run.out() + run.err()).isEqualTo(2);
        assertThat(run.err()).startsWith("bind-prep: ").contains(words).doesNotContain("Exception");
    }

    @Test
    void anUnreadableFileIsThree() {
        Cli run = Cli.run("shift", fixture("damaged.pdf"), "-o", out());
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).contains("damaged.pdf").doesNotContain("Exception");
        assertThat(Path.of(out())).doesNotExist();
    }

    @Test
    void helpShowsAnExampleThatRuns() {
        String help = Cli.run("shift", "--help").out();
        String example = help.lines()
                .filter(line -> line.startsWith("  bind-prep shift "))
                .findFirst()
                .orElseThrow();
        String[] args = example.strip()
                .substring("bind-prep ".length())
                .replace("book.pdf", HIT)
                .replace("book-shifted.pdf", out())
                .split(" ");
        assertThat(Cli.run(args).exit()).isZero();
    }
}
