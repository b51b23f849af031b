package io.bindprep.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of paths: POSIX.1 pathnames; drives and shares as RFC 8089, appendix E, names them. */
class FileNamesTest {
    @ParameterizedTest
    @CsvSource({
        "book.pdf, book.pdf, false, book.pdf",
        "./a/book.pdf, book.pdf, false, a/book.pdf",
        "a/b/book.pdf, book.pdf, false, a/b/book.pdf",
        "a\\b\\book.pdf, book.pdf, false, a/b/book.pdf",
        "../book.pdf, book.pdf, false, ../book.pdf",
        "/srv/in/book.pdf, book.pdf, true, book.pdf",
        "C:\\in\\book.pdf, book.pdf, true, book.pdf",
        "c:/in/book.pdf, book.pdf, true, book.pdf",
        "\\\\server\\share\\book.pdf, book.pdf, true, book.pdf",
        "C:book.pdf, C:book.pdf, false, C:book.pdf",
    })
    void namesOfAnySystem(String file, String last, boolean absolute, String portable) {
        assertThat(FileNames.last(file)).isEqualTo(last);
        assertThat(FileNames.absolute(file)).isEqualTo(absolute);
        assertThat(FileNames.portable(file)).isEqualTo(portable);
    }
}
