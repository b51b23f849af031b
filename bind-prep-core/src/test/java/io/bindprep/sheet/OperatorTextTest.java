package io.bindprep.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OperatorTextTest {
    /** Sources as the tables have them, and as a person at the punch needs them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "pull pins (Printing Impressions, Feb 2005); go | Pull pins (trade press, 2005); go",
                "at 3:1: G. Markovits, \"Good Wire Work is a Balancing Act\", Printing News | At 3:1: trade press",
                "stock: F. T. Carson, NBS Research Paper RP69, 1929 | Stock: NBS Research Paper RP69, 1929",
                "XJDF 2.2, Appendix F | XJDF 2.2, Appendix F",
                "of 3.97 mm, A. | Of 3.97 mm, A."
            })
    void authorsStandInTheTables(String told, String shown) {
        assertThat(OperatorText.of(told)).isEqualTo(shown);
    }
}
