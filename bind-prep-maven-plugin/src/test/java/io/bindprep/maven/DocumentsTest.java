package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.shared.model.fileset.FileSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentsTest {
    @TempDir
    private Path base;

    @Test
    void theBuildsPdfsAreThoseUnderItsDirectoryButTestsAndOurOwn() throws IOException {
        make("target/book.pdf", "target/site/guide.PDF", "target/notes.txt", "elsewhere.pdf");
        make("target/test-classes/test.pdf", "target/bind-prep/proof.pdf");
        File target = base.resolve("target").toFile();
        Documents documents = new Documents(base).add(Documents.builtOnes(target, new File(target, "bind-prep")));
        assertThat(documents.inOrder())
                .extracting(PdfInput::name)
                .containsExactly("target/book.pdf", "target/site/guide.PDF");
        assertThat(documents.inOrder()).extracting(PdfInput::report).containsExactly("book", "guide");
    }

    @Test
    void aMissingDirectoryHasNoDocuments() {
        assertThat(new Documents(base).add(set("nowhere")).inOrder()).isEmpty();
        File target = base.resolve("target").toFile();
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
    void aNamedDocumentIsKeptEvenIfMissingAndOnlyOnce() throws IOException {
        make("docs/a.pdf");
        Documents documents = new Documents(base)
                .add(new File("docs/a.pdf"))
                .add(base.resolve("docs/../docs/a.pdf").toFile())
                .add(set("docs"))
                .add(new File("missing.pdf"));
        assertThat(documents.inOrder()).extracting(PdfInput::name).containsExactly("docs/a.pdf", "missing.pdf");
    }

    @Test
    void booksOfOneNameKeepTheirReportsApart() {
        Documents documents = new Documents(base);
        for (String name :
                List.of("a/book.pdf", "b/Book.PDF", "b/only.pdf", "a_b/c.pdf", "a/b_c.pdf", "d/c.pdf", "d/b_c.pdf")) {
            documents.add(new File(name));
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
