package io.bindprep.binding;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.block.Leaf;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.paper.Stock;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Lifts of leaves by hand: 1 mm is what the punch takes, thicknesses are round hundredths. */
class LiftMakerTest {
    private static final LiftLimit ONE_MM = new LiftLimit(Length.ofMm(1), null);

    private static Leaf leaf(int um, int layers, Stock.Kind kind) {
        Stock stock = new Stock(um + " um", kind, null, BigDecimal.valueOf(um), BigDecimal.ONE, "invented", false);
        return new Leaf(Leaf.Role.TEXT, stock, 1, 2, layers, Length.ZERO);
    }

    private static List<Integer> lifts(LiftLimit limit, int... um) {
        List<Leaf> leaves =
                Arrays.stream(um).mapToObj(u -> leaf(u, 1, Stock.Kind.PAPER)).toList();
        return LiftMaker.lifts(leaves, kind -> limit);
    }

    @Test
    void aLiftMayBeAsThickAsThePunchTakes() {
        assertThat(lifts(ONE_MM, 250, 250, 250, 250)).containsExactly(4);
        // 1.001 mm: the first lift has its half with 0.501
        assertThat(lifts(ONE_MM, 251, 250, 250, 250)).containsExactly(2, 2);
        assertThat(lifts(ONE_MM, 250, 250, 250, 250, 250, 250, 250, 250)).containsExactly(4, 4);
    }

    @Test
    void aLiftMayHaveAsManySheetsAsThePunchTakes() {
        LiftLimit three = new LiftLimit(Length.ofMm(1), 3);
        assertThat(lifts(three, 100, 100, 100)).containsExactly(3);
        assertThat(lifts(three, 100, 100, 100, 100)).containsExactly(2, 2);
        // a leaf folded to two layers is two sheets to the punch
        List<Leaf> folded = List.of(leaf(100, 2, Stock.Kind.PAPER), leaf(100, 2, Stock.Kind.PAPER));
        assertThat(LiftMaker.lifts(folded, kind -> three)).containsExactly(1, 1);
    }

    @Test
    void boardsThatGoOneByOneAreParted() {
        // JCP Q20: 0.048 in are 1.2192 mm, so that 1.9 mm take one
        Leaf board = leaf(1219, 1, Stock.Kind.BOARD);
        assertThat(LiftMaker.lifts(Collections.nCopies(20_000, board), kind -> new LiftLimit(Length.ofMm("1.9"), null)))
                .hasSize(20_000)
                .containsOnly(1);
    }

    @Test
    void aLeafThickerThanALiftGoesByItselfAndTheOthersTogether() {
        // 1.7 mm are two lifts by thickness: 1.2 is beyond its share of 0.85 at once, the five of 0.1 follow
        assertThat(lifts(ONE_MM, 1200, 100, 100, 100, 100, 100)).containsExactly(1, 5);
        assertThat(lifts(ONE_MM, 1200, 1200)).containsExactly(1, 1);
        // 3.3 mm would be four lifts by thickness, though the three of 0.1 go at once
        assertThat(lifts(ONE_MM, 3000, 100, 100, 100)).containsExactly(1, 3);
        assertThat(lifts(ONE_MM, 100, 3000, 100)).containsExactly(1, 1, 1);
    }

    @Test
    void noLiftIsEmptyWhereTheThickLeavesComeLast() {
        // 2.4 mm in three lifts have shares of 0.8: the first reaches it only with the leaf of 1 mm, so that three of
        // 0.1 and it would be too thick; the cut comes before there are fewer leaves than lifts
        List<Integer> lifts = lifts(ONE_MM, 100, 100, 100, 100, 1000, 1000);
        assertThat(lifts).containsExactly(4, 1, 1);
    }

    @Test
    void runsOfOneKindAreTold() {
        List<Leaf> leaves =
                List.of(leaf(500, 1, Stock.Kind.FILM), leaf(100, 1, Stock.Kind.PAPER), leaf(500, 1, Stock.Kind.BOARD));
        Map<Stock.Kind, LiftLimit> limits = Map.of(
                Stock.Kind.PAPER,
                ONE_MM,
                Stock.Kind.BOARD,
                new LiftLimit(Length.ofMm("1.5"), 2),
                Stock.Kind.FILM,
                new LiftLimit(Length.ofInch(1, 64), null));
        assertThat(LiftMaker.lifts(leaves, limits::get)).containsExactly(1, 1, 1);
        List<Reason.KindLimit> kinds = LiftMaker.limits(leaves, limits::get);
        assertThat(Sentences.of(new Reason.Lifts(List.of(1, 1, 1), kinds, "invented")))
                .contains("At most 1 mm of paper, 1.5 mm and 2 sheets of board, 0.4 mm of film (invented)");
    }
}
