package io.bindprep.wording;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {
    // the trade's sizes as they are written; 25.4 mm to the inch
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3/8 in | 9.53 mm (3/8 in)",
                "1-1/4 in | 31.75 mm (1-1/4 in)",
                "2 in | 50.8 mm (2 in)",
                "5/32 in | 3.97 mm (5/32 in)",
                "0.2 in | 5.08 mm (0.2 in)",
                "1/3 in | 8.47 mm (0.333 in)",
                "0 mm | 0 mm (0 in)",
                "4.9 mm | 4.9 mm (0.193 in)"
            })
    void bothUnits(String given, String expected) {
        assertThat(LengthText.both(Length.parse(given))).isEqualTo(expected);
    }

    @Test
    void plainNumbersNeverTakeAnExponent() {
        assertThat(LengthText.plain(new BigDecimal("210"), 1)).isEqualTo("210");
        assertThat(LengthText.plain(new BigDecimal("0.05"), 1)).isEqualTo("0.1");
        assertThat(LengthText.mm(20, 24.24)).isEqualTo("20 to 24.2 mm");
        assertThat(LengthText.inches(new Length(-914_400))).isEqualTo("-1 in");
    }
}
