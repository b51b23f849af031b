package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
    private static final PdfInput BOOK = new PdfInput(Path.of("book.pdf"), "book.pdf", "book");

    @TempDir
    private Path folder;

    @Test
    void writesBothFormsOverOldOnesAndLeavesNothingElse() throws IOException {
        Path reports = folder.resolve("not/yet/there");
        new ReportFiles(reports).write(BOOK, "old", "old");
        Path text = new ReportFiles(reports).write(BOOK, "{\"a\":\"ü\"}", "ü");
        assertThat(text).isEqualTo(reports.resolve("book.txt")).hasContent("ü");
        assertThat(reports.resolve("book.json")).hasContent("{\"a\":\"ü\"}");
        try (var files = Files.list(reports)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void whatCannotBeWrittenLeavesNothingHalf() throws IOException {
        Files.createDirectories(folder.resolve("book.json/occupied"));
        assertThatThrownBy(() -> new ReportFiles(folder).write(BOOK, "{}", "")).isInstanceOf(IOException.class);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("book.json"));
        }
    }
}
