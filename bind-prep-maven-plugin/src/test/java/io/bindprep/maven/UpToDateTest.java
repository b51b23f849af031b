package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.files.Inputs;
import io.bindprep.report.build.SummaryRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UpToDateTest {
    @TempDir
    private Path base;

    private OutputFolder outputs;
    private PdfInput book;
    private JobSource.Asked job;

    @BeforeEach
    void bookAndItsReport() throws Exception {
        outputs = new OutputFolder(base, base.resolve("out"), Inputs.NONE);
        Files.createDirectories(outputs.directory());
        book = new PdfInput(Files.writeString(base.resolve("book.pdf"), "pages"), "book.pdf", "book", null);
        job = new JobSource(null, null, null).read(base);
    }

    private UpToDate plugin(String identity) {
        return new UpToDate(base.resolve("state"), "check default", identity);
    }

    private Made made() throws IOException {
        Path one = Files.writeString(outputs.directory().resolve("book.json"), "{}");
        Path two = Files.writeString(outputs.directory().resolve("book.txt"), "good");
        return new Made(
                Made.Level.CARE,
                "book.pdf: look\n\n  at page 3",
                Digests.of(book.file()),
                List.of(one, two),
                new SummaryRow(SummaryRow.Rank.WARNED, "| book.pdf | Good. |"));
    }

    private Made earlier(UpToDate upToDate, String settings, JobSource.Asked asked) {
        return upToDate.earlier(upToDate.key(book, settings, asked, outputs));
    }

    private Made remembered() throws IOException {
        UpToDate upToDate = plugin("1");
        Made made = made();
        upToDate.remember(upToDate.key(book, "check", job, outputs), made, Inputs.NONE);
        return made;
    }

    @Test
    void whatWasMadeIsKnownToTheNextBuildWordForWord() throws Exception {
        assertThat(earlier(plugin("1"), "check", job)).isNull();
        Made made = remembered();
        assertThat(earlier(plugin("1"), "check", job)).isEqualTo(made);
    }

    @Test
    void whateverItDependsOnMakesItNew() throws Exception {
        remembered();
        assertThat(earlier(plugin("2"), "check", job)).isNull();
        assertThat(earlier(plugin("1"), "check [JSON]", job)).isNull();
        JobSource other = new JobSource(JobElementTest.job("<copies>2</copies>"), null, null);
        assertThat(earlier(plugin("1"), "check", other.read(base))).isNull();
        assertThat(earlier(new UpToDate(base.resolve("state"), "check other", "1"), "check", job))
                .isNull();
        assertThat(earlier(plugin("1"), "check", job)).isNotNull();
        Files.writeString(book.file(), "other pages");
        assertThat(earlier(plugin("1"), "check", job)).isNull();
    }

    @Test
    void aTableThatTheJobNamesCountsByWhatItSays() throws Exception {
        Path table = base.resolve("stocks.csv");
        String text = Files.readString(Path.of(System.getProperty("bindprep.root"), "fixtures", "shop-stocks.csv"));
        Files.writeString(table, text);
        JobSource source = new JobSource(JobElementTest.job("<tables>stocks.csv</tables>"), null, null);
        UpToDate upToDate = plugin("1");
        upToDate.remember(upToDate.key(book, "check", source.read(base), outputs), made(), Inputs.NONE);
        assertThat(earlier(upToDate, "check", source.read(base))).isNotNull();
        Files.writeString(table, text + "# measured anew\n");
        assertThat(earlier(upToDate, "check", source.read(base))).isNull();
    }

    @Test
    void aReportThatIsGoneOrChangedIsMadeAgain() throws Exception {
        Path report = remembered().files().get(0);
        Files.writeString(report, "{ }");
        assertThat(earlier(plugin("1"), "check", job)).isNull();
        remembered();
        Files.delete(report);
        assertThat(earlier(plugin("1"), "check", job)).isNull();
    }

    @Test
    void aSpoiltMemoryIsNone() throws Exception {
        remembered();
        Path state;
        try (var files = Files.list(base.resolve("state"))) {
            state = files.findFirst().orElseThrow();
        }
        String whole = Files.readString(state);
        for (String spoilt : List.of("", "\n\n\n\n", whole.substring(0, 140), whole.replace("\n2\n", "\n99999\n"))) {
            Files.writeString(state, spoilt);
            assertThat(earlier(plugin("1"), "check", job)).as(spoilt).isNull();
        }
        Files.write(state, new byte[] {(byte) 0xff, 0});
        assertThat(earlier(plugin("1"), "check", job)).isNull();
        Files.writeString(state, whole);
        assertThat(earlier(plugin("1"), "check", job)).isNotNull();
    }

    @Test
    void aDocumentThatWasReplacedMeanwhileIsNotRemembered() throws Exception {
        UpToDate upToDate = plugin("1");
        UpToDate.Key before = upToDate.key(book, "check", job, outputs);
        Files.writeString(book.file(), "other pages");
        upToDate.remember(before, made(), Inputs.NONE);
        assertThat(base.resolve("state")).doesNotExist();
    }

    @Test
    void nothingIsRememberedOfAMissingFileOrWhereAllIsToBeMadeAgain() throws Exception {
        remembered();
        assertThat(earlier(plugin(null), "check", job)).isNull();
        Files.delete(book.file());
        assertThat(earlier(plugin("1"), "check", job)).isNull();
    }
}
