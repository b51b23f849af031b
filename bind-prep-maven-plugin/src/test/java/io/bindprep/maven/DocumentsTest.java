package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.shared.model.fileset.FileSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class DocumentsTest {
    @TempDir
    private Path base;

    @Test
    void theBuildsPdfsAreThoseUnderItsDirectoryButTestsAndOurOwn() throws IOException {
        make("target/book.pdf", "target/site/guide.PDF", "target/notes.txt", "elsewhere.pdf");
        make(
                "target/project-local-repo/g/a/1/a-1-book-proof.pdf",
                "target/test-classes/test.pdf",
                "target/bind-prep/own.pdf");
        make("target/reports/book.proof.pdf", "target/reports/book.job-sheet.pdf");
        Path target = base.resolve("target");
        Documents documents = new Documents(base).add(Documents.builtOnes(target, target.resolve("bind-prep")));
        assertThat(documents.inOrder())
                .extracting(PdfInput::name)
                .containsExactly("target/book.pdf", "target/site/guide.PDF");
        assertThat(documents.inOrder()).extracting(PdfInput::report).containsExactly("book", "guide");
    }

    @Test
    void aMissingDirectoryHasNoDocuments() {
        assertThat(new Documents(base).add(set("nowhere")).inOrder()).isEmpty();
        Path target = base.resolve("target");
        assertThat(new Documents(base).add(Documents.builtOnes(target, target)).inOrder())
                .isEmpty();
    }

    @Test
    void aRelativeDirectoryIsTheProjects() throws IOException {
        make("docs/a.pdf", "docs/deep/b.pdf");
        assertThat(new Documents(base).add(set("docs")).inOrder())
                .extracting(PdfInput::name)
                .containsExactly("docs/a.pdf", "docs/deep/b.pdf");
    }

    @Test
    void aNamedDocumentIsKeptEvenIfMissingAndOnlyOnce() throws Exception {
        make("docs/a.pdf");
        Documents documents = new Documents(base)
                .add(named("docs/a.pdf"))
                .add(new Document(base.resolve("docs/../docs/a.pdf").toFile(), null, null))
                .add(set("docs"))
                .add(named("missing.pdf"));
        assertThat(documents.inOrder()).extracting(PdfInput::name).containsExactly("docs/a.pdf", "missing.pdf");
    }

    @Test
    void aDocumentWithAJobOfItsOwnIsAnotherOneThanTheFileAlone() throws Exception {
        make("docs/a.pdf", "docs/b.pdf");
        Document onCoil = new Document(new File("docs/a.pdf"), JobElementTest.job("<binding>coil</binding>"), null);
        for (List<Document> order :
                List.of(List.of(onCoil, named("docs/a.pdf")), List.of(named("docs/a.pdf"), onCoil))) {
            Documents documents = new Documents(base);
            for (Document document : order) {
                documents.add(document);
            }
            assertThat(documents.add(set("docs")).inOrder())
                    .extracting(PdfInput::report)
                    .containsExactly("docs_a", "docs_a-2", "b");
        }
        // named files go before those found
        assertThat(new Documents(base).add(onCoil).add(set("docs")).inOrder())
                .extracting(document -> document.name() + " " + (document.document() == onCoil))
                .containsExactly("docs/a.pdf true", "docs/b.pdf false");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS) // which has no such names
    void aNameThatWouldSpoilTheLogIsShownWithoutThat() throws Exception {
        Documents documents = new Documents(base).add(named("a\n[ERROR] b\u001b[2K\u202e.pdf"));
        assertThat(documents.inOrder()).extracting(PdfInput::name).containsExactly("a_[ERROR] b_[2K_.pdf");
        assertThat(documents.inOrder().get(0).file().toString()).contains("\n");
    }

    @Test
    void aPatternIsForTheFilesets() {
        assertThatThrownBy(() -> new Documents(base).add(named("docs/*.pdf")))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("docs/*.pdf is a pattern".replace('/', File.separatorChar))
                .hasMessageContaining("<filesets>");
    }

    @Test
    void aDocumentWithoutAFileSaysSo() {
        assertThatThrownBy(() -> new Documents(base).add(new Document()))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageStartingWith("<documents>: ")
                .hasMessageContaining("<file>");
    }

    @Test
    void booksOfOneNameKeepTheirReportsApart() throws Exception {
        Documents documents = new Documents(base);
        for (String name :
                List.of("a/book.pdf", "b/Book.PDF", "b/only.pdf", "a_b/c.pdf", "a/b_c.pdf", "d/c.pdf", "d/b_c.pdf")) {
            documents.add(named(name));
        }
        assertThat(documents.inOrder())
                .extracting(document -> document.name() + " " + document.report())
                .containsExactly(
                        "a/b_c.pdf a_b_c",
                        "a/book.pdf a_book",
                        "a_b/c.pdf a_b_c-2",
                        "b/Book.PDF b_Book",
                        "b/only.pdf only",
                        "d/b_c.pdf d_b_c",
                        "d/c.pdf d_c");
    }

    private static Document named(String file) {
        return new Document(new File(file), null, null);
    }

    private FileSet set(String directory) {
        FileSet set = new FileSet();
        set.setDirectory(directory);
        return set;
    }

    private void make(String... names) throws IOException {
        for (String name : names) {
            Path file = base.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, "any");
        }
    }
}
