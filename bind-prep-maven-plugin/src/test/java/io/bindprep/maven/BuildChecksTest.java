package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.request.CheckRequest;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildChecksTest {
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");

    @TempDir
    private Path base;

    private final RecordedLog log = new RecordedLog();
    private int checked;
    private final BuildChecks checks = new BuildChecks(request -> {
        checked++;
        return BindPrep.check(request);
    });

    @BeforeEach
    void document() throws Exception {
        put("members-handbook-a4.pdf");
    }

    private void put(String fixture) throws IOException {
        Files.copy(FIXTURES.resolve(fixture), base.resolve("book.pdf"), StandardCopyOption.REPLACE_EXISTING);
    }

    /** As a goal does: its settings read anew each time. */
    private CheckRequest request(String name, @Nullable String stock, @Nullable String password) throws Exception {
        PlexusConfiguration job = stock == null ? null : JobElementTest.job("<stock>" + stock + "</stock>");
        JobSource.Asked asked = checks.known(new JobSource(job, null, null).read(base));
        return new CheckRequest(base.resolve("book.pdf"), name, asked.job(), password, (done, total) -> {});
    }

    private Report check(String name, @Nullable String stock, @Nullable String password) throws Exception {
        return checks.check(request(name, stock, password), log);
    }

    @Test
    void theSecondGoalTakesTheFirstOnesReport() throws Exception {
        Report first = check("book.pdf", "bond-20", null);
        assertThat(check("book.pdf", "bond-20", null)).isSameAs(first);
        assertThat(checked).isEqualTo(1);
    }

    @Test
    void anotherJobNameOrPasswordIsAnotherCheck() throws Exception {
        check("book.pdf", null, null);
        check("book.pdf", "bond-28", null);
        check("copy.pdf", null, null);
        check("book.pdf", null, "secret");
        assertThat(checked).isEqualTo(4);
    }

    @Test
    void otherBytesOfTheSameSizeAndTimeAreAnotherCheck() throws Exception {
        Path book = base.resolve("book.pdf");
        Report first = check("book.pdf", null, null);
        var time = Files.getLastModifiedTime(book);
        byte[] bytes = Files.readAllBytes(book);
        // the last byte is white space behind the file's end mark
        bytes[bytes.length - 1] = bytes[bytes.length - 1] == '\n' ? (byte) ' ' : (byte) '\n';
        Files.write(book, bytes);
        Files.setLastModifiedTime(book, time);
        assertThat(check("book.pdf", null, null).document().sha256())
                .isNotEqualTo(first.document().sha256());
        assertThat(checked).isEqualTo(2);
    }

    @Test
    void aDocumentReplacedBeforeItIsReadCountsAsWhatWasRead() throws Exception {
        BuildChecks racing = new BuildChecks(request -> {
            checked++;
            try {
                put("planner-a5.pdf");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return BindPrep.check(request);
        });
        CheckRequest request = request("book.pdf", null, null);
        Report planner = racing.check(request, log);
        assertThat(racing.check(request, log)).isSameAs(planner);
        assertThat(checked).isEqualTo(1);
        put("members-handbook-a4.pdf");
        racing.check(request, log);
        assertThat(checked).isEqualTo(2);
    }

    @Test
    void jobsOverTheShopsOwnTablesAreTheSameWhereTheirTextsAre() throws Exception {
        String tables = "<tables>" + FIXTURES.resolve("shop-stocks.csv") + "</tables>";
        for (int goal = 0; goal < 2; goal++) {
            JobSource source = new JobSource(JobElementTest.job(tables), (File) null, null);
            JobSource.Asked asked = checks.known(source.read(base));
            checks.check(CheckRequest.of(base.resolve("book.pdf"), "book.pdf", asked.job()), log);
        }
        assertThat(checked).isEqualTo(1);
    }

    @Test
    void oneBuildHasOneAndAnotherItsOwn() {
        Map<Object, Object> build = new HashMap<>();
        BuildChecks first = BuildChecks.of(build, BindPrep::check);
        assertThat(BuildChecks.of(build, BindPrep::check)).isSameAs(first);
        assertThat(BuildChecks.of(new HashMap<>(), BindPrep::check)).isNotSameAs(first);
    }
}
