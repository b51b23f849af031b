package io.bindprep.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReportNamesTest {
    @Test
    void aFilesOwnNameWithoutItsEnding() {
        assertThat(ReportNames.of(List.of("in/Book.PDF", "a.b.pdf", "plain", ".pdf")))
                .containsExactly("Book", "a.b", "plain", "report");
    }

    @Test
    void filesOfOneNameAreToldApartByTheirPaths() {
        assertThat(ReportNames.of(List.of("a/book.pdf", "b/Book.pdf", "C:/book.pdf", "other.pdf")))
                .containsExactly("a_book", "b_Book", "C__book", "other");
    }

    @Test
    void noTwoAreEverEqual() {
        assertThat(ReportNames.of(List.of("a/book.pdf", "a_book.pdf", "b/book.pdf", "a/book.pdf", "A/book.PDF")))
                .containsExactly("a_book", "a_book-2", "b_book", "a_book-3", "A_book-4");
    }

    @Test
    void aPortableNameCountsFromTheFolderOfTheRun() {
        assertThat(ReportNames.portable(
                        List.of("/run/in/a.pdf", "in/b.pdf", "./c.pdf", "../d.pdf", "/running/e.pdf", "C:/x/f.pdf"),
                        "/run"))
                .containsExactly("in/a.pdf", "in/b.pdf", "c.pdf", "../d.pdf", "e.pdf", "f.pdf");
    }

    @Test
    void portableNamesOfOneFileNameAreToldApartByTheFewestFolders() {
        assertThat(ReportNames.portable(
                        List.of("/x/one/a.pdf", "/x/two/a.pdf", "/x/two/b.pdf", "b.pdf", "/run/c.pdf", "/y/two/a.pdf"),
                        "/run"))
                .containsExactly("one/a.pdf", "x/two/a.pdf", "two/b.pdf", "b.pdf", "c.pdf", "y/two/a.pdf");
        assertThat(ReportNames.portable(List.of("/x/a.pdf", "/x/a.pdf"), "/")).containsExactly("x/a.pdf", "x/a.pdf");
        assertThat(ReportNames.portable(List.of("/x/a.pdf", "/x/a.pdf"), "/run"))
                .containsExactly("/x/a.pdf", "/x/a.pdf");
    }
}
