package io.bindprep.volume;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.page.Bookmark;
import io.bindprep.page.Pages;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VolumePlannerTest {
    private static final Length W = Length.ofMm(210);
    private static final Length H = Length.ofMm(297);

    private static Split split(String yaml, int pages, Bookmark... bookmarks) throws Exception {
        Job job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
        Block block = BlockBuilder.build(job, pages);
        LeafSizes sizes = new LeafSizes(job, Pages.of(pages, 210, 297), W, H);
        Stack stack = StackEstimator.estimate(sizes.of(block.leaves()));
        Plan plan = Planner.plan(job, block, stack, H);
        return VolumePlanner.split(job, plan, block, sizes, List.of(bookmarks));
    }

    @Test
    void whatGoesOnOneElementStaysOne() throws Exception {
        assertThat(split("stock: bond-20", 400)).isEqualTo(Split.NONE);
    }

    @Test
    void tooThickForTwoLoopsIsSplitInTwo() throws Exception {
        // 400 leaves of 60 lb offset (JCP A55: 0.0047 +-0.0005 in) are at most 2.08 in, 2:1 wire is sold to 1-1/4 in
        // (common practice, no source), 1-1/8 in of it paper: 216 leaves a volume at most
        Split split = split("stock: offset-60\ncovers: front=c1s-10pt, back=c1s-10pt", 800);
        assertThat(split.volumes()).hasSize(2);
        for (Volume v : split.volumes()) {
            assertThat(v.block().bodyLeaves()).isEqualTo(200);
            assertThat(v.block().covers()).isEqualTo(2);
            assertThat(v.plan().element().name()).isEqualTo("1-1/4 in");
            assertThat(v.plan().pitchName()).isEqualTo("2:1");
            assertThat(v.plan().lifts().stream().mapToInt(Integer::intValue).sum())
                    .isEqualTo(202);
        }
        assertThat(split.volumes()).extracting(Volume::firstPage).containsExactly(1, 401);
        assertThat(split.volumes()).extracting(Volume::lastPage).containsExactly(400, 800);
        // the least uncovered: 400 x 0.0042 in of 50 lb are over 1-1/8 in too, as is everything of the catalogue
        assertThat(split.thinner()).isNull();
    }

    @Test
    void aThinnerStockOfTheSameFamily() throws Exception {
        // 240 leaves of 60 lb are at most 1.248 in, over 1-1/8 in; of 50 lb 240 x 0.0044 = 1.056 in, under it (JCP A55)
        Split split = split("stock: offset-60", 480);
        assertThat(split.thinner().name()).isEqualTo("offset-50");
        assertThat(split.volumes()).hasSize(2);
        assertThat(split.because()).anyMatch(b -> b.contains("offset-50") && b.contains("26.82 mm"));
    }

    @Test
    void chaptersArePreferredWhereTheyBeginALeaf() throws Exception {
        Split split = split(
                "stock: offset-60",
                600,
                new Bookmark("Soups", 1),
                new Bookmark("Fish", 281),
                new Bookmark("Meat", 300),
                new Bookmark("Bread", 339));
        // the even cut is before page 301; page 300 is a back, 281 is 10 leaves off, 339 is 19
        assertThat(split.volumes()).extracting(Volume::bookmark).containsExactly("Soups", "Fish");
        assertThat(split.volumes().get(1).firstPage()).isEqualTo(281);
        assertThat(split.volumes().get(0).lastPage()).isEqualTo(280);
    }

    @Test
    void printedCoversStandInEveryVolume() throws Exception {
        Split split = split("stock: offset-60\ncovers: {front: pages 1-2 on c1s-10pt}", 802);
        assertThat(split.volumes())
                .allMatch(v -> v.block().leaves().get(0).role() == Leaf.Role.FRONT_COVER
                        && v.block().leaves().get(0).recto() == 1);
        assertThat(split.volumes().get(0).firstPage()).isEqualTo(3);
    }

    @Test
    void whereNothingHelpsItSaysSo() throws Exception {
        // a board of 0.048 in (JCP Q20) on the front, 20,000 leaves of it as block: more than 100 volumes
        Split split = split("stock: coverboard-48\nsides: one", 20_000);
        assertThat(split.volumes()).isEmpty();
        assertThat(split.because()).anyMatch(b -> b.contains("no split helps"));
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 11, 13})
    void noLeafIsLost(long seed) throws Exception {
        Random random = new Random(seed);
        for (int run = 0; run < 12; run++) {
            int pages = 700 + random.nextInt(3000);
            List<Bookmark> chapters = new ArrayList<>();
            for (int page = 1; page <= pages; page += 1 + random.nextInt(150)) {
                chapters.add(new Bookmark("chapter", page));
            }
            Split split = split(
                    "stock: offset-60\nsides: " + (random.nextBoolean() ? "one" : "two")
                            + "\ncovers: back=coverboard-30",
                    pages,
                    chapters.toArray(Bookmark[]::new));
            List<Integer> seen = new ArrayList<>();
            for (Volume v : split.volumes()) {
                assertThat(v.plan().element()).as("seed " + seed).isNotNull();
                for (Leaf leaf : v.block().leaves()) {
                    if (!leaf.cover()) {
                        seen.add(leaf.recto());
                        if (leaf.verso() != null) {
                            seen.add(leaf.verso());
                        }
                    }
                }
            }
            List<Integer> all = new ArrayList<>();
            for (int page = 1; page <= pages; page++) {
                all.add(page);
            }
            assertThat(seen).as("seed " + seed + ", " + pages + " pages").isEqualTo(all);
        }
    }

    @Test
    void aDividerStaysWithWhatItDivides() throws Exception {
        // 480 pages are 240 leaves, the even cut before page 241; the divider before it begins the second volume
        Split split = split("stock: offset-60\ntabs: before 241 on tag-150", 480);
        assertThat(split.volumes()).hasSize(2);
        Leaf first = split.volumes().get(1).block().leaves().get(0);
        assertThat(first.role()).isEqualTo(Leaf.Role.TAB);
        assertThat(split.volumes().get(1).firstPage()).isEqualTo(241);
        // a divider 20 leaves off the even cut is within a quarter of a share too and is taken as a chapter's beginning
        Split off = split("stock: offset-60\ntabs: before 201 on tag-150", 480, new Bookmark("Bread", 201));
        assertThat(off.volumes().get(1).block().leaves().get(0).role()).isEqualTo(Leaf.Role.TAB);
        assertThat(off.volumes().get(1).bookmark()).isEqualTo("Bread");
    }

    @Test
    void aFoldOutIsCountedWithAllItsLayers() throws Exception {
        // 3 panels of 0.0047 in are three leaves' worth (JCP A55): 230 leaves and 10 fold-outs are as thick as 260
        Split split = split("stock: offset-60\nfold-outs: 21-40 in 3 panels", 480);
        assertThat(split.volumes()).hasSize(2);
        double all = split.volumes().stream()
                .mapToDouble(v -> v.stack().nominal().inches())
                .sum();
        assertThat(all).isCloseTo(260 * 0.0047, org.assertj.core.api.Assertions.within(1e-6));
    }
}
