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
}
