package io.bindprep.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.problem.SettingException;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Terms;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values worked out by hand from s x + t: what is nearest reaches the limit, what is outermost keeps its own. */
class MovePlannerTest {
    private static final double CLEAR = 9.525;
    private static final double ZONE = 7.06;

    private static Mark mark(double at, String words) {
        return new Mark(MarkKind.TEXT, Stage.GEOMETRY, new Rectangle2D.Double(at, 20, 5, 4), at, at + 5, 20, 24, words);
    }

    /** A page of 210 mm; 0 or less for no mark near an edge. */
    private static PageRoom room(int page, double near, double outer) {
        return new PageRoom(
                page,
                page % 2 == 1 ? PageEdge.LEFT : PageEdge.RIGHT,
                210,
                near > 0 ? mark(near, "word " + page) : null,
                outer > 0 ? mark(outer, "") : null,
                false,
                null);
    }

    private static ShiftSettings settings(boolean pageByPage, String gutter, String outer, String scale)
            throws SettingException {
        return ShiftSettings.of(pageByPage, gutter, outer, scale, false, false, false);
    }

    private static MovePlan plan(ShiftSettings settings, PageRoom... rooms) {
        return MovePlanner.plan(settings, CLEAR, ZONE, List.of(rooms), Measures.METRIC);
    }

    @Test
    void nothingMovesWhereNothingIsNear() {
        MovePlan plan = plan(ShiftSettings.builtIn(), room(1, 0, 3), room(2, 0, 0));
        assertThat(plan.nothing()).isTrue();
        assertThat(plan.moves()).hasSize(2);
    }

    @Test
    void whatIsReadFromDotsMovesADotFurther() {
        Mark dots = new Mark(MarkKind.IMAGE, Stage.RASTER, new Rectangle2D.Double(4, 20, 5, 4), 4, 9, 20, 24, "");
        MovePlan plan = plan(ShiftSettings.builtIn(), new PageRoom(1, PageEdge.LEFT, 210, dots, null, false, null));
        // 9.525 - (4 - 0.2) = 5.725
        assertThat(plan.moves()).containsExactly(new Move(PageEdge.LEFT, 5.73, 1));
        assertThat(plan.because().get(0))
                .contains("3.8 mm from the binding edge (measured to 0.2 mm); 9.5 mm required.");
    }

    @Test
    void allPagesMoveAlikeAsFarAsTheWorstMustEachAwayFromItsOwnEdge() {
        // 9.525 - 3 = 6.525, in whole hundredths 6.53; the least room is 20 - 5 = 15
        MovePlan plan = plan(ShiftSettings.builtIn(), room(1, 5, 0), room(2, 3, 20), room(3, 0, 30));
        assertThat(plan.moves())
                .containsExactly(
                        new Move(PageEdge.LEFT, 6.53, 1),
                        new Move(PageEdge.RIGHT, 6.53, 1),
                        new Move(PageEdge.LEFT, 6.53, 1));
        assertThat(plan.because()).hasSize(2);
        assertThat(plan.because().get(0))
                .isEqualTo(
                        "Page 2 needs the largest move: text (\"word 2\") 3.0 mm from the binding edge; 9.5 mm required.");
        assertThat(plan.because().get(1)).contains("Page 2", "20.0 mm", "13.4 mm after the move");
    }

    @Test
    void pageByPageOnlyThoseThatMust() throws SettingException {
        MovePlan plan = plan(settings(true, null, null, null), room(1, 5, 0), room(2, 3, 20), room(3, 0, 30));
        assertThat(plan.moves())
                .containsExactly(
                        new Move(PageEdge.LEFT, 4.53, 1),
                        new Move(PageEdge.RIGHT, 6.53, 1),
                        new Move(PageEdge.LEFT, 0, 1));
    }

    @Test
    void keptPagesStayAndTheRefusalNamesThem() throws SettingException {
        // page 3 reaches from edge to edge: nothing but a scale far below 90 % brings it clear
        PageRoom wide = new PageRoom(3, PageEdge.LEFT, 60, mark(0.1, "a"), mark(0.1, "b"), false, null);
        PageRoom[] rooms = {room(1, 5, 0), room(2, 3, 20), wide};
        for (boolean pageByPage : new boolean[] {false, true}) {
            MovePlan refused = plan(settings(pageByPage, null, null, null), rooms);
            assertThat(refused.refusal().said()).anyMatch(r -> r.contains("keep \"3\""));
        }
        MovePlan kept = plan(ShiftSettings.builtIn().keeping("3"), rooms);
        assertThat(kept.refusal().said()).isEmpty();
        assertThat(kept.moves())
                .containsExactly(
                        new Move(PageEdge.LEFT, 6.53, 1),
                        new Move(PageEdge.RIGHT, 6.53, 1),
                        new Move(PageEdge.LEFT, 0, 1));
    }

    @Test
    void aGutterThatOnePageHasNoRoomForNamesThatPage() throws SettingException {
        PageRoom[] rooms = {room(1, 5, 20), room(2, 3, 2), room(3, 0, 20)};
        MovePlan refused = plan(settings(false, "6 mm", null, null), rooms);
        assertThat(refused.refusal().said()).anyMatch(r -> r.contains("keep \"2\""));
        MovePlan kept = plan(settings(false, "6 mm", null, null).keeping("2"), rooms);
        assertThat(kept.moves().get(1).nothing()).isTrue();
        assertThat(kept.moves().get(2).awayMm()).isEqualTo(6);
    }

    @Test
    void noPageIsProposedWhereAllWouldHaveToStay() throws SettingException {
        MovePlan refused = plan(settings(false, "6 mm", null, null), room(1, 5, 2), room(2, 3, 2));
        assertThat(refused.refusal().said()).noneMatch(r -> r.contains("keep"));
    }

    @Test
    void exactlyTheRoomThereIsIsEnough() throws SettingException {
        // near 3.525 needs 6.00; outer 11 less 6 leaves the 5 to keep
        assertThat(plan(ShiftSettings.builtIn(), room(1, 3.525, 11)).moves())
                .containsExactly(new Move(PageEdge.LEFT, 6, 1));
        assertThat(plan(ShiftSettings.builtIn(), room(1, 3.525, 10.99))
                        .moves()
                        .get(0)
                        .scale())
                .isLessThan(1);
    }

    @Test
    void withoutRoomTheLeastScaling() {
        // (210 - 5 - 9.525) / (210 - 8 - 3) = 195.475 / 199 = 0.98228..., down to 0.9822; 9.525 - 0.9822 * 3 = 6.5784
        assertThat(plan(ShiftSettings.builtIn(), room(1, 3, 8)).moves())
                .containsExactly(new Move(PageEdge.LEFT, 6.58, 0.9822));
        // 3 from the outer edge is less than the margin already, and is kept: 197.475 / 204 = 0.96801...
        assertThat(plan(ShiftSettings.builtIn(), room(1, 3, 3)).moves())
                .containsExactly(new Move(PageEdge.LEFT, 6.63, 0.968));
    }

    @Test
    void neitherIsRefusedWithTheNumbersAndWhatWouldDo() throws SettingException {
        MovePlan plan = plan(settings(false, null, null, "99 %"), room(1, 3, 0), room(2, 0, 8), room(3, 0, 0));
        assertThat(plan.moves()).isEmpty();
        assertThat(plan.refusal().said()).hasSize(3);
        assertThat(plan.refusal().said().get(0))
                .contains("Page 1", "3.0 mm", "9.5 mm", "Page 2", "8.0 mm", "98.22 %", "99 %");
        assertThat(plan.refusal().said().get(1)).isEqualTo("Move only page 1, by its own distance (page-by-page).");

        // to 7.06 it is 4.06 of move: 8 - 4.06 is less than 5; scaled (205 - 7.06) / 199 = 0.99467
        MovePlan narrower = plan(settings(false, null, null, "99 %"), room(1, 3, 8));
        assertThat(narrower.refusal().said().get(1)).contains(Terms.BINDING_MARGIN + " of 7.1 mm (binding-margin)");
    }

    @Test
    void everyPageThatCannotBeMovedIsNamed() throws SettingException {
        MovePlan plan = plan(settings(true, null, null, "99 %"), room(1, 3, 3), room(2, 3, 0), room(3, 3, 3));
        assertThat(plan.refusal().said()).filteredOn(r -> r.contains("Page 1")).isNotEmpty();
        assertThat(plan.refusal().said()).filteredOn(r -> r.contains("Page 3")).isNotEmpty();
        assertThat(plan.refusal().said()).noneMatch(r -> r.contains("Page 2"));
    }

    /** Single floats of a large UserUnit put 6 mm at 5.9999: refused, it was told to move by 6.0 mm or less. */
    @Test
    void whatStaysOnThePageToAThousandthIsNotRefused() throws SettingException {
        assertThat(plan(settings(false, "6mm", null, null), room(1, 3, 5.999)).moves())
                .containsExactly(new Move(PageEdge.LEFT, 6, 1));
        assertThat(plan(settings(false, "6mm", null, null), room(1, 3, 5.98))
                        .refusal()
                        .said()
                        .get(0))
                .contains("off the outer edge");
    }

    @Test
    void whatCouldNotBeReadIsNotMovedBlindlyButByAGutter() throws SettingException {
        PageRoom unchecked = new PageRoom(1, PageEdge.LEFT, 210, null, null, false, "its content breaks off");
        assertThat(plan(ShiftSettings.builtIn(), unchecked).refusal().said().get(0))
                .contains("Page 1", "breaks off", "gutter");
        assertThat(plan(settings(false, "6mm", null, null), unchecked).moves())
                .containsExactly(new Move(PageEdge.LEFT, 6, 1));
    }

    @Test
    void aGutterMovesAllButNeverOffThePage() throws SettingException {
        ShiftSettings six = settings(false, "6mm", null, null);
        assertThat(plan(six, room(1, 0, 6), room(2, 3, 0)).moves())
                .containsExactly(new Move(PageEdge.LEFT, 6, 1), new Move(PageEdge.RIGHT, 6, 1));
        assertThat(plan(six, room(1, 0, 5.99), room(2, 3, 0)).refusal().said())
                .satisfiesExactly(
                        r -> assertThat(r).contains("6 mm", "page 1", "Move by 5.9 mm or less"),
                        r -> assertThat(r).contains("keep \"1\""));
    }

    /** Whatever the pages, the limits hold, and a hair less moving or scaling would break one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theLimitsHoldAndNothingLessWouldDo(long seed) throws SettingException {
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            List<PageRoom> rooms = new ArrayList<>();
            for (int page = 1; page <= 1 + random.nextInt(5); page++) {
                double near = random.nextInt(3) == 0 ? 0 : 0.01 + random.nextDouble() * 9.4;
                double outer = random.nextInt(3) == 0 ? 0 : 0.01 + random.nextDouble() * 15;
                rooms.add(room(page, near, outer));
            }
            MovePlan plan = MovePlanner.plan(settings(false, null, null, "50 %"), CLEAR, ZONE, rooms, Measures.METRIC);
            Move move = plan.moves().get(0);
            if (rooms.stream().allMatch(r -> r.near() == null)) {
                assertThat(move.nothing()).isTrue();
                continue;
            }
            String which = "seed " + seed + ", round " + i + ": " + rooms + " " + move;
            double s = move.scale();
            double t = move.awayMm();
            double spareNear = Double.POSITIVE_INFINITY;
            double spareOuter = Double.POSITIVE_INFINITY;
            double spareLarger = Double.POSITIVE_INFINITY;
            double n = rooms.stream().mapToDouble(PageRoom::nearMm).min().orElseThrow();
            for (PageRoom r : rooms) {
                double keep = Math.min(5, r.outerMm());
                spareNear = Math.min(spareNear, s * r.nearMm() + t - CLEAR);
                if (r.outer() != null) {
                    spareOuter = Math.min(spareOuter, 210 - keep - (s * (210 - r.outerMm()) + t));
                    double larger = s + 0.0003;
                    spareLarger =
                            Math.min(spareLarger, 210 - keep - (larger * (210 - r.outerMm()) + CLEAR - larger * n));
                }
            }
            assertThat(spareNear).as(which).isBetween(-1e-6, 0.0101);
            assertThat(spareOuter).as(which).isGreaterThan(-0.0101);
            if (s < 1) {
                assertThat(spareLarger).as(which + ": could have stayed larger").isLessThan(0.0101);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "gutter, 6",
        "gutter, 0 mm",
        "gutter, 60 mm",
        "outer-margin, wide",
        "minimum-scale, 120",
        "minimum-scale, small",
        "minimum-scale, 49 %"
    })
    void wrongSettingsAreNamed(String key, String value) {
        assertThatThrownBy(() -> settings(
                        false,
                        key.equals("gutter") ? value : null,
                        key.equals("outer-margin") ? value : null,
                        key.equals("minimum-scale") ? value : null))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.key()).isEqualTo(key);
                    assertThat(e).hasMessageContaining(value);
                });
    }

    @Test
    void lengthsAndScalesAreReadAsPeopleWriteThem() throws SettingException {
        ShiftSettings read = settings(false, "1/4 in", "0 mm", "92.5%");
        assertThat(read.gutter().mm()).isCloseTo(6.35, within(1e-9));
        assertThat(read.outerMargin().mm()).isZero();
        assertThat(read.minimumScale()).isEqualTo(0.925);
        assertThatThrownBy(() -> settings(true, "6mm", null, null)).hasMessageContaining("gutter");
    }
}
