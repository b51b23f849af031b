package io.bindprep.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stacks with folded sheets and of mixed sizes; every number by hand from JCP's values of 20 lb bond. */
class StackEstimatorTest {
    // JCP O-63: 0.0037 +-0.0003 in; 500 sheets 17 x 22 in weigh 20 lb of 453.59237 g, so one 18.1436948 g
    private static final Stock BOND =
            Catalogue.builtIn().stocks().byId("bond-20").orElseThrow();

    private static Sheet bond(int layers, int width, int height) {
        return new Sheet(BOND, layers, Length.ofInch(width, 1), Length.ofInch(height, 1));
    }

    private static String last(Stack stack) {
        return Sentences.of(stack.because().get(stack.because().size() - 1));
    }

    @Test
    void aFoldedSheetCountsWithItsLayersAndWeighsUnfolded() {
        List<Sheet> sheets = new ArrayList<>(Collections.nCopies(10, bond(1, 17, 11)));
        sheets.add(bond(3, 22, 17));
        sheets.add(bond(3, 22, 17));
        Stack stack = StackEstimator.estimate(sheets);
        // 10 + 2 x 3 layers of 0.0037 in are 0.0592 in, +-16 x 0.0003
        assertThat(stack.nominal()).isEqualTo(Length.ofInch(592, 10_000));
        assertThat(stack.min()).isEqualTo(Length.ofInch(544, 10_000));
        assertThat(stack.max()).isEqualTo(Length.ofInch(640, 10_000));
        // ten halves and two whole basis sheets: seven of 18.1436948 g
        assertThat(stack.weightG().doubleValue()).isCloseTo(127.0058636, within(1e-7));
        assertThat(Sentences.of(stack.because().get(0)))
                .startsWith("10 leaves of bond-20 at 94 um +-7.6 um make 0.94 mm (JCP O-63");
        // 6 x 93.98 um are 0.56388 mm
        assertThat(Sentences.of(stack.because().get(1)))
                .startsWith("2 leaves of bond-20, folded to 3 layers, at 94 um +-7.6 um make 0.56 mm (JCP O-63");
        // 0.0592 in and 0.0048 in
        assertThat(Sentences.of(stack.because().get(2))).endsWith("1.5 mm +-0.12 mm");
        assertThat(last(stack))
                .isEqualTo("one copy weighs 127 g: grammage over leaves of 431.8 mm x 279.4 mm, 558.8 mm x 431.8 mm");
    }

    @Test
    void oneLeafIsOneLeaf() {
        Stack stack = StackEstimator.estimate(List.of(bond(2, 17, 22)));
        assertThat(Sentences.of(stack.because().get(0))).startsWith("1 leaf of bond-20, folded to 2 layers, at 94 um");
        assertThat(stack.nominal()).isEqualTo(Length.ofInch(74, 10_000));
        assertThat(last(stack)).startsWith("one copy weighs 18 g: ");
    }

    @Test
    void ofMoreThanThreeSizesTheFirstThreeAreNamed() {
        List<Sheet> three = List.of(bond(1, 1, 10), bond(1, 2, 10), bond(1, 3, 10));
        assertThat(last(StackEstimator.estimate(three)))
                .endsWith("over leaves of 25.4 mm x 254 mm, 50.8 mm x 254 mm, 76.2 mm x 254 mm");
        List<Sheet> four = new ArrayList<>(three);
        four.add(bond(1, 4, 10));
        Stack stack = StackEstimator.estimate(four);
        assertThat(last(stack))
                .endsWith("over leaves of 25.4 mm x 254 mm, 50.8 mm x 254 mm, 76.2 mm x 254 mm and other sizes");
        // (1 + 2 + 3 + 4) x 10 in2 of the 374 of a basis sheet: 100 x 18.1436948 / 374
        assertThat(stack.weightG().doubleValue()).isCloseTo(4.851255, within(1e-6));
    }
}
