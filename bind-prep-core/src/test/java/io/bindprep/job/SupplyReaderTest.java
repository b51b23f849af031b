package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.problem.SettingException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SupplyReaderTest {
    private static Overs overs(Object value) throws SettingException {
        return SupplyReader.overs("overs", value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // by hand: the percentage rounded up, the least number where that is more
                "5 %, at least 10|1880|94",
                "5 %, at least 10|40|10",
                "5%|41|3",
                "at least 20 sheets|3|20",
                "2.5 % at least 1|1000|25",
                "none|1000|0",
                "0 %|1000|0"
            })
    void oversOnSheets(String text, long sheets, long expected) throws Exception {
        assertThat(overs(text).on(sheets)).isEqualTo(expected);
    }

    @Test
    void nothingNeededHasNoOvers() throws Exception {
        assertThat(overs("at least 20").on(0)).isZero();
    }

    @Test
    void asAMap() throws Exception {
        assertThat(overs(Map.of("percent", 4, "minimum", 6))).isEqualTo(overs("4 %, at least 6"));
        assertThat(overs(Map.of("percent", "4 %"))).isEqualTo(overs("4 %"));
        assertThat(overs(Map.of("minimum", "6"))).isEqualTo(overs("at least 6"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "5",
                "five %",
                "101 %",
                "-3 %",
                "5 %, 10",
                "at least 100001",
                "1e9 %",
                ",",
                "at least",
                "5 % of 3"
            })
    void whatIsNoOversIsSaid(String text) {
        assertThatThrownBy(() -> overs(text)).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.key()).isEqualTo("overs");
            assertThat(e.remedy()).isNotBlank();
        });
    }

    @Test
    void aWrongPartIsNamed() {
        assertThatThrownBy(() -> overs(Map.of("percent", "much")))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo("overs.percent"));
        assertThatThrownBy(() -> overs(Map.of("most", 3)))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.known()).contains("percent", "minimum"));
    }
}
