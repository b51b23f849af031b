package io.bindprep.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Cover;
import io.bindprep.job.FailOn;
import io.bindprep.job.Insert;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.job.Order;
import io.bindprep.job.PageRange;
import io.bindprep.job.PrintLimits;
import io.bindprep.job.Sides;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.Supply;
import io.bindprep.page.PageEdge;
import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BlockBuilderTest {
    private static final Stock BOND =
            Catalogue.builtIn().stocks().byId("bond-20").orElseThrow();
    private static final Stock INDEX =
            Catalogue.builtIn().stocks().byId("index-90").orElseThrow();

    private static Job job(Sides sides, BindingEdge edge, Cover front, Cover back, Insert... inserts) {
        return new Job(
                1,
                sides,
                edge,
                null,
                BOND,
                front,
                back,
                List.of(inserts),
                SpecialLeaves.NONE,
                Method.WIRE,
                null,
                null,
                null,
                null,
                Length.ofMm(1),
                Length.ofInch(1, 8),
                null,
                null,
                Supply.BUILT_IN,
                FailOn.ERROR,
                List.of(),
                PrintLimits.USUAL,
                Order.NONE,
                null,
                Catalogue.builtIn());
    }

    private static Block yaml(String text, int pages) throws Exception {
        return BlockBuilder.build(JobReader.toJob(JobSettings.read(text, "job.yaml")), pages);
    }

    private static Block two(int pages, Cover front, Cover back, Insert... inserts) throws Exception {
        return BlockBuilder.build(job(Sides.TWO, BindingEdge.LEFT, front, back, inserts), pages);
    }

    private static Insert insert(int first, int last) {
        return new Insert(new PageRange(first, last), INDEX);
    }

    @ParameterizedTest
    @CsvSource({
        // by turning a leaf of paper: which edge of the back, as it is read, lies in the binding; does it run against
        // the front
        "LEFT,TWO,LEFT,RIGHT,false", "LEFT,TWO_HEAD_TO_FOOT,LEFT,LEFT,true",
        "RIGHT,TWO,RIGHT,LEFT,false", "RIGHT,TWO_HEAD_TO_FOOT,RIGHT,RIGHT,true",
        "TOP,TWO,TOP,TOP,true", "TOP,TWO_HEAD_TO_FOOT,TOP,BOTTOM,false"
    })
    void bindingEdges(BindingEdge edge, Sides sides, PageEdge front, PageEdge back, boolean against) throws Exception {
        Block block = BlockBuilder.build(job(sides, edge, null, null), 2);
        assertThat(block.places())
                .containsExactly(new PagePlace(1, true, front, false), new PagePlace(2, false, back, against));
    }

    /** The same by coordinates: a point of the back, seen through the paper from the front. */
    @ParameterizedTest
    @EnumSource(BindingEdge.class)
    void bindingEdgesByCoordinates(BindingEdge edge) throws Exception {
        for (Sides sides : List.of(Sides.TWO, Sides.TWO_HEAD_TO_FOOT)) {
            PagePlace back =
                    BlockBuilder.build(job(sides, edge, null, null), 2).places().get(1);
            // unit sheet, x right, y down on the front; a back read upright (head to head) is mirrored left to right,
            // head to foot it is turned by half a turn besides
            boolean foot = sides == Sides.TWO_HEAD_TO_FOOT;
            double along = 0.25;
            double x = switch (back.bindingEdge()) {
                case LEFT -> 0;
                case RIGHT -> 1;
                default -> along;
            };
            double y = switch (back.bindingEdge()) {
                case TOP -> 0;
                case BOTTOM -> 1;
                default -> along;
            };
            double frontX = foot ? x : 1 - x;
            double frontY = foot ? 1 - y : y;
            double bound = switch (edge) {
                case LEFT -> frontX;
                case RIGHT -> 1 - frontX;
                case TOP -> frontY;
            };
            double frontAlong = edge == BindingEdge.TOP ? frontX : frontY;
            assertThat(bound).as(edge + " " + sides).isZero();
            assertThat(frontAlong).as(edge + " " + sides).isEqualTo(back.mirrored() ? 1 - along : along);
        }
    }

    @ParameterizedTest
    @CsvSource({"1,1", "2,1", "83,42", "84,42", "85,43"})
    void twoSidedSheetsAreHalfThePagesRoundedUp(int pages, int leaves) throws Exception {
        // sheets = ceil(pages / 2) two-sided, = pages one-sided: by definition of a leaf
        assertThat(two(pages, null, null).leaves()).hasSize(leaves);
        assertThat(BlockBuilder.build(job(Sides.ONE, BindingEdge.LEFT, null, null), pages)
                        .leaves())
                .hasSize(pages);
        assertThat(two(pages, null, null).addedBlankBacks()).isEmpty();
    }

    @Test
    void oneSidedPagesAreAllRectos() throws Exception {
        Block block = BlockBuilder.build(job(Sides.ONE, BindingEdge.RIGHT, null, null, insert(2, 2)), 3);
        assertThat(block.places()).allMatch(p -> p.recto() && p.bindingEdge() == PageEdge.RIGHT && !p.mirrored());
        assertThat(block.addedBlankBacks()).isEmpty();
    }

    @Test
    void sideFollowsFromTheLeafNotFromTheNumber() throws Exception {
        Block block = two(6, new Cover(INDEX, new PageRange(1, 1)), null);
        assertThat(block.places().stream().map(PagePlace::recto).toList())
                .containsExactly(true, true, false, true, false, true);
        assertThat(block.leaves().get(0)).isEqualTo(new Leaf(Leaf.Role.FRONT_COVER, INDEX, 1, null));
    }

    @Test
    void blankCoversCarryNoPage() throws Exception {
        Block block = two(5, new Cover(INDEX, null), new Cover(INDEX, null));
        assertThat(block.leaves()).hasSize(5);
        assertThat(block.leaves().get(0)).isEqualTo(new Leaf(Leaf.Role.FRONT_COVER, INDEX, null, null));
        assertThat(block.printedSheets()).isEqualTo(3);
        assertThat(block.covers()).isEqualTo(2);
        assertThat(block.bodyLeaves()).isEqualTo(3);
    }

    @Test
    void insertAndWhatFollowsStartOnFreshLeaves() throws Exception {
        Block block = two(10, null, new Cover(INDEX, new PageRange(10, 10)), insert(4, 6));
        assertThat(block.addedBlankBacks()).containsExactly(3, 6, 9);
        assertThat(block.leaves())
                .containsExactly(
                        new Leaf(Leaf.Role.TEXT, BOND, 1, 2),
                        new Leaf(Leaf.Role.TEXT, BOND, 3, null),
                        new Leaf(Leaf.Role.INSERT, INDEX, 4, 5),
                        new Leaf(Leaf.Role.INSERT, INDEX, 6, null),
                        new Leaf(Leaf.Role.TEXT, BOND, 7, 8),
                        new Leaf(Leaf.Role.TEXT, BOND, 9, null),
                        new Leaf(Leaf.Role.BACK_COVER, INDEX, 10, null));
    }

    @Test
    void rangesThatDoNotGoWithThePdf() {
        fails("covers.front", 5, new Cover(INDEX, new PageRange(2, 3)), null);
        fails("covers.front", 5, new Cover(INDEX, new PageRange(1, 3)), null);
        fails("covers.front", 1, new Cover(INDEX, new PageRange(1, 2)), null);
        fails("covers.back", 5, null, new Cover(INDEX, new PageRange(4, 4)));
        fails("covers.back", 5, null, new Cover(INDEX, new PageRange(5, 6)));
        fails("covers.back", 5, null, new Cover(INDEX, new PageRange(5, 4)));
        fails("covers.back", 2, new Cover(INDEX, new PageRange(1, 2)), new Cover(INDEX, new PageRange(2, 2)));
        fails("inserts", 5, null, null, insert(5, 6));
        fails("inserts", 5, null, null, insert(0, 1));
        fails("inserts", 5, null, null, insert(3, 2));
        fails("inserts", 9, null, null, insert(5, 6), insert(2, 5));
        fails("inserts", 9, new Cover(INDEX, new PageRange(1, 2)), null, insert(2, 3));
        fails("inserts", 9, null, new Cover(INDEX, new PageRange(9, 9)), insert(8, 9));
    }

    private static void fails(String key, int pages, Cover front, Cover back, Insert... inserts) {
        assertThatThrownBy(() -> two(pages, front, back, inserts)).isInstanceOfSatisfying(SettingException.class, e -> {
            assertThat(e.key()).isEqualTo(key);
            assertThat(e).hasMessageContaining(pages == 1 ? "1 page" : "pages 1-" + pages);
        });
    }

    @Test
    void everyPageLiesOnExactlyOneSide() throws Exception {
        // property, seed 216: pages in order, each on the side that its place says
        Random random = new Random(216);
        for (int run = 0; run < 300; run++) {
            int pages = 6 + random.nextInt(60);
            int first = 3 + random.nextInt(pages - 4);
            int last = first + random.nextInt(pages - first);
            Cover front = random.nextBoolean() ? new Cover(INDEX, new PageRange(1, 1 + random.nextInt(2))) : null;
            Sides sides = Sides.values()[random.nextInt(3)];
            Block block = BlockBuilder.build(job(sides, BindingEdge.LEFT, front, null, insert(first, last)), pages);
            int next = 1;
            for (Leaf leaf : block.leaves()) {
                assertThat(leaf.recto()).isEqualTo(next);
                assertThat(block.places().get(next - 1).recto()).isTrue();
                next++;
                if (leaf.verso() != null) {
                    assertThat(leaf.verso()).isEqualTo(next);
                    assertThat(block.places().get(next - 1).recto()).isFalse();
                    next++;
                }
            }
            assertThat(next - 1).isEqualTo(pages).isEqualTo(block.places().size());
        }
    }

    @Test
    void blankDividersMakeWhatFollowsStartOnAFreshLeaf() throws Exception {
        Block block = yaml("tabs: before 1, 4 on tag-150 extending 12 mm; before 7 on index-90 extending none", 8);
        Stock tag = Catalogue.builtIn().stocks().byId("tag-150").orElseThrow();
        Length out = Length.ofMm(12);
        assertThat(block.leaves())
                .containsExactly(
                        new Leaf(Leaf.Role.TAB, tag, null, null, 1, out),
                        leaf(1, 2),
                        leaf(3, null),
                        new Leaf(Leaf.Role.TAB, tag, null, null, 1, out),
                        leaf(4, 5),
                        leaf(6, null),
                        new Leaf(Leaf.Role.TAB, INDEX, null, null, 1, Length.ZERO),
                        leaf(7, 8));
        assertThat(block.addedBlankBacks()).containsExactly(3, 6);
    }

    private static Leaf leaf(Integer recto, Integer verso) throws Exception {
        // the stock's source says that the job names none
        Stock built = JobReader.toJob(JobSettings.empty()).stock();
        return new Leaf(Leaf.Role.TEXT, built, recto, verso);
    }

    @Test
    void printedDividersAndFoldOutsTakeLeavesOfTheirOwn() throws Exception {
        Block block = yaml("tabs: 3 on tag-150\nfold-outs: 6-7 in 3 panels on index-90", 9);
        assertThat(block.leaves())
                .extracting(Leaf::role, Leaf::recto, Leaf::verso, Leaf::layers)
                .containsExactly(
                        tuple(Leaf.Role.TEXT, 1, 2, 1),
                        tuple(Leaf.Role.TAB, 3, null, 1),
                        tuple(Leaf.Role.TEXT, 4, 5, 1),
                        tuple(Leaf.Role.FOLD_OUT, 6, 7, 3),
                        tuple(Leaf.Role.TEXT, 8, 9, 1));
        // page 4 would have been on the divider's back
        assertThat(block.addedBlankBacks()).containsExactly(3);
        assertThat(block.leaves().get(1).extension()).isEqualTo(Length.ofInch(1, 2));
        assertThat(block.leaves().get(3).stock()).isEqualTo(INDEX);
    }

    @Test
    void aBlankDividerMayPartAnInsertButNotAFoldOut() throws Exception {
        Block block = yaml("inserts: 3-6 on index-90\ntabs: before 5 on tag-150", 8);
        assertThat(block.leaves())
                .extracting(Leaf::role, Leaf::recto)
                .containsExactly(
                        tuple(Leaf.Role.TEXT, 1),
                        tuple(Leaf.Role.INSERT, 3),
                        tuple(Leaf.Role.TAB, null),
                        tuple(Leaf.Role.INSERT, 5),
                        tuple(Leaf.Role.TEXT, 7));
        wrongYaml("tabs", "fold-outs: 3-4 in 2 panels\ntabs: before 4 on tag-150", 8);
        wrongYaml("tabs", "covers: {front: pages 1-2 on tag-150}\ntabs: before 2 on tag-150", 8);
        wrongYaml("tabs", "tabs: before 9 on tag-150", 8);
        wrongYaml("fold-outs", "fold-outs: 8-9 in 2 panels", 8);
        wrongYaml("rotated", "rotated: 9", 8);
        wrongYaml("other-sizes", "other-sizes: 9 at letter", 8);
    }

    private static void wrongYaml(String key, String text, int pages) {
        assertThatThrownBy(() -> yaml(text, pages))
                .isInstanceOfSatisfying(
                        SettingException.class, e -> assertThat(e.key()).isEqualTo(key));
    }

    /** By coordinates: a point of the turned page's binding edge lies on the leaf's binding edge, where the row is counted. */
    @ParameterizedTest
    @EnumSource(BindingEdge.class)
    void turnedPagesByCoordinates(BindingEdge edge) throws Exception {
        for (String head : List.of("left", "right")) {
            for (String sides : List.of("two", "two-head-to-foot")) {
                String job = "binding-edge: " + edge.name().toLowerCase(java.util.Locale.ROOT) + "\nsides: " + sides;
                List<PagePlace> upright = yaml(job, 2).places();
                List<PagePlace> rotated = yaml(job + "\nrotated: [{pages: 1-2, head: " + head + "}]", 2)
                        .places();
                for (int i = 0; i < 2; i++) {
                    PagePlace up = upright.get(i);
                    PagePlace page = rotated.get(i);
                    // a point a quarter along the turned page's binding edge, in unit coordinates of the page
                    double along = 0.25;
                    double[] p = point(page.bindingEdge(), along);
                    // head left: the page's top is at the left, its left at the foot
                    double x = head.equals("left") ? p[1] : 1 - p[1];
                    double y = head.equals("left") ? 1 - p[0] : p[0];
                    String as = edge + " " + sides + " head " + head + " page " + (i + 1);
                    double off = switch (up.bindingEdge()) {
                        case LEFT -> x;
                        case RIGHT -> 1 - x;
                        case TOP -> y;
                        case BOTTOM -> 1 - y;
                    };
                    assertThat(off).as(as).isZero();
                    double onUpright = up.bindingEdge().upright() ? y : x;
                    double onRecto = up.mirrored() ? 1 - onUpright : onUpright;
                    assertThat(onRecto).as(as).isEqualTo(page.mirrored() ? 1 - along : along);
                }
            }
        }
    }

    private static double[] point(PageEdge edge, double along) {
        return switch (edge) {
            case LEFT -> new double[] {0, along};
            case RIGHT -> new double[] {1, along};
            case TOP -> new double[] {along, 0};
            case BOTTOM -> new double[] {along, 1};
        };
    }
}
