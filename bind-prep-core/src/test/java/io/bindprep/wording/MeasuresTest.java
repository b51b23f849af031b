package io.bindprep.wording;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values worked out by hand; 1 in is 25.4 mm exactly (international yard and pound agreement, 1959). */
class MeasuresTest {
    /** A pound is 453.59237 g, an ounce a sixteenth of it (NIST SP 811, appendix B.8). */
    @Test
    void weightsAndCalipersInTheUnitsOfThePaper() {
        Measures inch = new Measures(Units.INCH);
        assertThat(inch.weight(new BigDecimal("453.59237"))).isEqualTo("1 lb");
        assertThat(inch.weight(new BigDecimal("453"))).isEqualTo("16 oz");
        assertThat(inch.weight(new BigDecimal("56.7"))).isEqualTo("2 oz");
        assertThat(inch.weight(new BigDecimal("22679.6"))).isEqualTo("50 lb");
        assertThat(Measures.METRIC.weight(new BigDecimal("999.4"))).isEqualTo("999 g");
        assertThat(Measures.METRIC.weight(new BigDecimal("2345"))).isEqualTo("2.3 kg");
        assertThat(Measures.METRIC.weight(new BigDecimal("825900"))).isEqualTo("826 kg");
        assertThat(new Measures(Units.BOTH).weight(new BigDecimal("1000"))).isEqualTo("1 kg (2.2 lb)");
        // 0.0037 in
        assertThat(inch.caliper(new BigDecimal("93.98"))).isEqualTo("3.7 mil");
        assertThat(Measures.METRIC.caliper(new BigDecimal("93.98"))).isEqualTo("94 um");
    }

    @Test
    void aSettingIsExactWhereAFinerScaleShowsTheSame() {
        assertThat(Measures.METRIC.setExactly(Length.parse("108.5 mm"))).isTrue();
        assertThat(Measures.METRIC.setExactly(Length.parse("8.8 mm"))).isFalse();
        assertThat(new Measures(Units.INCH).setExactly(Length.parse("1/4 in"))).isTrue();
        assertThat(new Measures(Units.INCH).setExactly(Length.parse("6.2 mm"))).isFalse();
    }

    private static final Measures METRIC = Measures.METRIC;
    private static final Measures INCH = new Measures(Units.INCH);
    private static final Measures BOTH = new Measures(Units.BOTH);

    /** 0.2 in is 5.08 mm; 6.55 mm is 0.2579 in; 2.79 mm is 0.1098 in. */
    @ParameterizedTest
    @CsvSource({
        "5.08, 5 mm, 5.1 mm, 5.1 mm, 5.0 mm, 3/16 in, 0.20 in, 0.20 in, 0.20 in",
        "6.55, 6.5 mm, 6.6 mm, 6.6 mm, 6.5 mm, 1/4 in, 0.26 in, 0.26 in, 0.25 in",
        "2.79, 3 mm, 2.8 mm, 2.8 mm, 2.7 mm, 1/8 in, 0.11 in, 0.11 in, 0.10 in",
        "2.7, 2.5 mm, 2.7 mm, 2.7 mm, 2.7 mm, 3/32 in, 0.11 in, 0.11 in, 0.10 in",
        "0, 0 mm, 0.0 mm, 0.0 mm, 0.0 mm, 0 in, 0.00 in, 0.00 in, 0.00 in"
    })
    void roundsToWhatAHandCanUse(
            String mm,
            String set,
            String mark,
            String up,
            String down,
            String setInch,
            String markInch,
            String upInch,
            String downInch) {
        Length length = Length.ofMm(mm);
        assertThat(METRIC.set(length)).isEqualTo(set);
        assertThat(METRIC.mark(length)).isEqualTo(mark);
        assertThat(METRIC.up(length)).isEqualTo(up);
        assertThat(METRIC.down(length)).isEqualTo(down);
        assertThat(INCH.set(length)).isEqualTo(setInch);
        assertThat(INCH.mark(length)).isEqualTo(markInch);
        assertThat(INCH.up(length)).isEqualTo(upInch);
        assertThat(INCH.down(length)).isEqualTo(downInch);
    }

    /** A distance to move is never less than needed, one that there is never more than there is, on a thousand lengths. */
    @Test
    void roundsToTheSafeSide() {
        for (int um = 1; um < 20_000; um += 17) {
            Length length = Length.ofMicrometres(BigDecimal.valueOf(um));
            for (Measures measures : List.of(METRIC, INCH)) {
                // a hundred-thousandth of a millimetre is the unit of lengths
                assertThat(Length.parse(measures.up(length)).mm()).isGreaterThanOrEqualTo(length.mm() - 1e-4);
                assertThat(Length.parse(measures.down(length)).mm()).isLessThanOrEqualTo(length.mm() + 1e-4);
            }
        }
    }

    @Test
    void settingsThatDifferNeverReadTheSame() {
        Length five = Length.ofMm("5.08");
        Length near = Length.ofMm("5.2");
        Length nearer = Length.ofMm("5.1");
        Length nearest = Length.ofMm("5.081");
        assertThat(METRIC.set(five, List.of(five, Length.ofMm("5.5")))).isEqualTo("5 mm");
        assertThat(METRIC.set(five, List.of(five, near))).isEqualTo("5.1 mm");
        assertThat(METRIC.set(five, List.of(nearer))).isEqualTo("5.08 mm");
        assertThat(METRIC.set(nearer, List.of(five))).isEqualTo("5.1 mm");
        assertThat(METRIC.set(five, List.of(nearest))).isNotEqualTo(METRIC.set(nearest, List.of(five)));
        assertThat(METRIC.mark(five, List.of(near))).isEqualTo("5.1 mm");
        assertThat(INCH.set(five, List.of(near))).isEqualTo("3/16 in");
        assertThat(INCH.set(near, List.of(five))).isEqualTo("7/32 in");
        assertThat(BOTH.set(five, List.of(nearer))).isNotEqualTo(BOTH.set(nearer, List.of(five)));
    }

    @Test
    void saysBothUnits() {
        Length length = Length.ofInch(3, 8);
        assertThat(BOTH.up(length)).isEqualTo("9.6 mm (0.38 in)");
        assertThat(METRIC.sold(length)).isEqualTo("9.5 mm (3/8 in)");
        assertThat(INCH.sold(length)).isEqualTo("3/8 in");
        assertThat(METRIC.fine(Length.ofMm("0.13"))).isEqualTo("0.13 mm");
        assertThat(INCH.fine(Length.ofMm("0.13"))).isEqualTo("0.005 in");
    }

    @Test
    void programsGetHundredths() {
        Length length = Length.ofInch(3, 8);
        assertThat(List.of(
                        Measures.EXACT.set(length),
                        Measures.EXACT.mark(length),
                        Measures.EXACT.up(length),
                        Measures.EXACT.thickness(length),
                        Measures.EXACT.size(length),
                        Measures.EXACT.exact(length)))
                .containsOnly("9.53 mm");
    }
}
