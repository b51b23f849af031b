package io.bindprep.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PunchTest {
    private static Punch generic(String pattern) {
        return Catalogue.builtIn().punches().byId("generic-" + pattern).orElseThrow();
    }

    private static Punch punch(List<DepthSetting> depths, Map<Stock.Kind, LiftLimit> limits) {
        return new Punch(
                "ours",
                "W3_1i-square-0t",
                34,
                null,
                depths,
                Length.ofMm(2),
                limits,
                null,
                Length.ofMm(300),
                Length.ofMm(3),
                null,
                null,
                null,
                "our own");
    }

    @Test
    void everyBuiltInPunchCanBeSetToTheAxisOfItsPattern() {
        for (Punch punch : Catalogue.builtIn().punches().all()) {
            Length centre = Catalogue.builtIn()
                    .patterns()
                    .byId(punch.pattern())
                    .orElseThrow()
                    .centre();
            assertThat(punch.depthNearest(centre).centre()).as(punch.id()).isEqualTo(centre);
            assertThat(punch.depths())
                    .as(punch.id())
                    .isSortedAccordingTo((a, b) -> a.centre().compareTo(b.centre()))
                    .allSatisfy(d -> assertThat(d.source()).isNotBlank());
        }
    }

    @Test
    void everyRowOfDepthsIsThatOfAKnownPunch() {
        long rows = Catalogue.builtIn().punches().all().stream()
                .flatMap(p -> p.depths().stream())
                .filter(d -> !d.name().equals("fixed"))
                .count();
        assertThat(io.bindprep.table.Table.beside(Punches.class, "depths.csv").rows())
                .hasSize((int) rows);
    }

    @ParameterizedTest
    @CsvSource({
        // XJDF 2.2 F.10: 3 mm + d/2, holes of 0.2 to 0.32 in: 5.54 to 7.064 mm
        "W2_1i-square-0t,5.54,7.064",
        "W2_1i-round-0t,5.54,7.064",
        // XJDF 2.2 F.11 and RFC 3806: 4.5 to 13 mm
        "C9.5m-round-0t,4.5,13",
        // XJDF 2.2 F [DIN 5005]: 7 or 11 mm
        "R2m-DIN,7,11",
        "R4m-DIN-A4,7,11",
        "R4m-DIN-A5,7,11",
        "R6m-DIN-A5,7,11"
    })
    void settingsLieWithinThePublishedRange(String pattern, double least, double most) {
        List<DepthSetting> depths = generic(pattern).depths();
        assertThat(depths)
                .hasSizeGreaterThan(1)
                .allSatisfy(d -> assertThat(d.centre().mm()).isBetween(least, most));
        assertThat(depths.get(depths.size() - 1).centre().mm()).isCloseTo(most, within(0.001));
    }

    @Test
    void settingsAreSortedByDepthAndTheNearestIsFound() {
        DepthSetting deep = new DepthSetting("1", Length.ofMm(6), "");
        DepthSetting shallow = new DepthSetting("2", Length.ofMm(4), "");
        Punch punch = punch(List.of(deep, shallow), Map.of());
        assertThat(punch.depths()).containsExactly(shallow, deep);
        assertThat(punch.depthNearest(Length.ofMm(9))).isEqualTo(deep);
        // as near to both: the shallower
        assertThat(punch.depthNearest(Length.ofMm(5))).isEqualTo(shallow);
        assertThatThrownBy(() -> punch(List.of(), Map.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aKindOfStockHasItsOwnLimitOrTheCapacity() {
        LiftLimit film = new LiftLimit(Length.ofMm(1), 3);
        Punch punch = punch(List.of(new DepthSetting("1", Length.ofMm(5), "")), Map.of(Stock.Kind.FILM, film));
        assertThat(punch.limit(Stock.Kind.FILM)).isEqualTo(film);
        assertThat(punch.limit(Stock.Kind.PAPER)).isEqualTo(new LiftLimit(Length.ofMm(2), null));
    }

    @Test
    void aCloserTakesARangeOrAList() {
        Length quarter = Length.ofInch(1, 4);
        Length three8 = Length.ofInch(3, 8);
        Length half = Length.ofInch(1, 2);
        ElementSizes range = ElementSizes.range(quarter, half);
        assertThat(range.takes(quarter)).isTrue();
        assertThat(range.takes(three8)).isTrue();
        assertThat(range.takes(half)).isTrue();
        assertThat(range.takes(Length.ofInch(9, 16))).isFalse();
        assertThat(range.text()).isEqualTo("1/4 in to 1/2 in");
        ElementSizes two = ElementSizes.only(List.of(half, quarter));
        assertThat(two.takes(three8)).isFalse();
        assertThat(two.takes(half)).isTrue();
        assertThat(two.text()).isEqualTo("1/4 in, 1/2 in");
    }
}
