package io.bindprep.volume;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CutsTest {
    private static int[] cut(int leaves, double most, int volumes, int... chapters) {
        return new Cuts(ones(leaves), places(leaves, Cuts.Place.CHAPTER, chapters), most).into(volumes);
    }

    private static double[] ones(int leaves) {
        double[] ones = new double[leaves];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static Cuts.Place[] places(int leaves, Cuts.Place kind, int... at) {
        Cuts.Place[] places = new Cuts.Place[leaves];
        Arrays.fill(places, Cuts.Place.PLAIN);
        for (int leaf : at) {
            places[leaf] = kind;
        }
        return places;
    }

    @Test
    void evenSharesWithoutChapters() {
        assertThat(cut(12, 5, 3)).containsExactly(0, 4, 8, 12);
        assertThat(new Cuts(ones(12), places(12, Cuts.Place.CHAPTER), 5).fewest())
                .isEqualTo(3);
    }

    @Test
    void aChapterWithinAQuarterOfAShareIsTaken() {
        // shares of 8: a chapter 2 off is a quarter and is taken, one 3 off is not
        assertThat(cut(16, 12, 2, 6)).containsExactly(0, 6, 16);
        assertThat(cut(16, 12, 2, 5)).containsExactly(0, 8, 16);
        assertThat(cut(16, 12, 2, 7, 10)).containsExactly(0, 7, 16);
    }

    @Test
    void aChapterThatWouldMakeAVolumeTooThickIsNot() {
        assertThat(cut(16, 9, 2, 6)).containsExactly(0, 8, 16);
    }

    @Test
    void behindADividerOnlyWhereNothingElseIsLeft() {
        Cuts.Place[] divider = places(4, Cuts.Place.AVOIDED, 2);
        assertThat(new Cuts(ones(4), divider, 3).into(2)).containsExactly(0, 1, 4);
        assertThat(new Cuts(ones(4), divider, 2).into(2)).containsExactly(0, 2, 4);
    }

    @Test
    void ofPlacesAsNearTheFirstIsTaken() {
        // three leaves: the even share ends in the middle of the second
        assertThat(cut(3, 2, 2)).containsExactly(0, 1, 3);
    }

    @Test
    void ofPlacesBetterNotCutTheNearestIsTaken() {
        assertThat(new Cuts(ones(6), places(6, Cuts.Place.AVOIDED, 1, 2, 3, 4, 5), 5).into(2))
                .containsExactly(0, 3, 6);
    }

    @Test
    void aVolumeMayBeOneLeafAndAsThickAsAnElementTakes() {
        // the last leaf alone is 3 thick, which is the most; the two before it are 2
        Cuts.Place[] plain = places(3, Cuts.Place.PLAIN);
        assertThat(new Cuts(new double[] {1, 1, 3}, plain, 3).into(2)).containsExactly(0, 2, 3);
        assertThat(new Cuts(new double[] {1, 1, 3}, plain, 3).into(3)).containsExactly(0, 1, 2, 3);
        assertThat(new Cuts(new double[] {1, 1, 3}, plain, 5).into(1)).containsExactly(0, 3);
        assertThat(new Cuts(new double[] {1, 1, 3}, plain, 4.9).into(1)).isNull();
        // more volumes than leaves
        assertThat(new Cuts(new double[] {1, 1, 3}, plain, 5).into(4)).isNull();
    }

    @Test
    void tooFewVolumesDoNotDo() {
        assertThat(cut(12, 5, 2)).isNull();
        assertThat(cut(3, 0.5, 3)).isNull();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
    void noLeafIsLostAndNoVolumeTooThick(long seed) {
        Random random = new Random(seed);
        for (int run = 0; run < 100; run++) {
            int leaves = 2 + random.nextInt(200);
            double[] thick = random.doubles(leaves, 1, 5).toArray();
            Cuts.Place[] places = new Cuts.Place[leaves];
            Arrays.setAll(places, i -> Cuts.Place.values()[random.nextInt(3)]);
            double most = 5 + random.nextInt(60);
            Cuts cuts = new Cuts(thick, places, most);
            for (int volumes = Math.max(2, cuts.fewest()); volumes <= leaves; volumes++) {
                int[] at = cuts.into(volumes);
                if (at == null) {
                    continue;
                }
                assertThat(at)
                        .as("seed " + seed)
                        .hasSize(volumes + 1)
                        .isSorted()
                        .doesNotHaveDuplicates();
                assertThat(at[0]).isZero();
                assertThat(at[volumes]).isEqualTo(leaves);
                for (int v = 0; v < volumes; v++) {
                    double sum = Arrays.stream(thick, at[v], at[v + 1]).sum();
                    assertThat(sum).as("seed " + seed).isLessThanOrEqualTo(most + 1e-9);
                }
                break;
            }
        }
    }
}
