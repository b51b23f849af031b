package io.bindprep.volume;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.page.Bookmark;
import io.bindprep.page.Pages;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VolumePlannerTest {
    private static final Length W = Length.ofMm(210);
    private static final Length H = Length.ofMm(297);

    private static Split split(String yaml, int pages, Bookmark... bookmarks) throws Exception {
        return split(yaml, "", pages, bookmarks);
    }

    private static Split split(String yaml, String table, int pages, Bookmark... bookmarks) throws Exception {
        JobSettings settings = JobSettings.read(yaml, "job.yaml");
        Job job = JobReader.toJob(settings, JobFiles.read(settings, (file, beside) -> table));
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
        // 400 leaves of 60 lb offset (JCP A55: 0.0047 in) are 1.88 in; 2:1 wire is sold to 1-1/4 in, which takes 275
        // sheets of 20 lb bond (common practice, no source, from memory), 1.0175 in: with two covers 212 leaves a
        // volume at most
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
        // the least uncovered: 400 x 0.0030 in of 40 lb are over 1.0175 in too
        assertThat(split.thinner()).isNull();
    }

    @Test
    void aThinnerStockOfTheSameFamily() throws Exception {
        // 240 leaves of 60 lb are 1.128 in, over 1.0175 in; of 50 lb 240 x 0.0039 = 0.936 in, under it (JCP A55)
        Split split = split("stock: offset-60", 480);
        assertThat(split.thinner().name()).isEqualTo("offset-50");
        assertThat(split.volumes()).hasSize(2);
        assertThat(split.because())
                .extracting(Sentences::of)
                .anyMatch(b -> b.contains("offset-50") && b.contains("23.77 mm"));
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
        assertThat(split.because()).extracting(Sentences::of).anyMatch(b -> b.contains("no split helps"));
    }

    @Test
    void everyVolumeIsOnThePatternOfTheBook() throws Exception {
        // 218 leaves of at most 0.0052 in (JCP A55) are 1.134 in: 2:1, in two; the chapter 27 leaves off the even 109
        // is taken, and its 82 leaves of 0.427 in would go on 3:1 too
        Split split = split("stock: offset-60", 436, new Bookmark("Fish", 165));
        assertThat(split.volumes()).extracting(v -> v.block().bodyLeaves()).containsExactly(82, 136);
        assertThat(split.volumes()).extracting(v -> v.plan().pitchName()).containsOnly("2:1");
        assertThat(split.volumes()).extracting(Volume::number).containsExactly(1, 2);
        assertThat(split.volumes().get(1).bookmark()).isEqualTo("Fish");
    }

    @Test
    void theCoversTakeTheirRoomInEveryVolume() throws Exception {
        // two boards of 0.030 in (JCP Q20) leave 0.9575 of 1.0175 in, 203 leaves of 0.0047: the chapter after 206 of
        // 340 leaves, within a quarter of a share, is out of reach
        Split split = split(
                "stock: offset-60\ncovers: front=coverboard-30, back=coverboard-30", 680, new Bookmark("Fish", 413));
        assertThat(split.volumes()).extracting(Volume::lastPage).containsExactly(340, 680);
        // after 203 it is within
        Split near = split(
                "stock: offset-60\ncovers: front=coverboard-30, back=coverboard-30", 680, new Bookmark("Fish", 407));
        assertThat(near.volumes()).extracting(Volume::lastPage).containsExactly(406, 680);
    }

    @Test
    void aVolumeOfOneLeaf() throws Exception {
        // two sheets of 10 to 10.5 mm; 3:1 wire of 9/16 in takes 11.11 with 1/8 in
        Split split = split("pitch: 3:1\nsides: one\nstock: 10 mm tolerance 0.5 mm", 2);
        assertThat(split.volumes()).extracting(v -> v.block().bodyLeaves()).containsExactly(1, 1);
    }

    @Test
    void blankBacksGoWithTheirLeaf() throws Exception {
        // an insert of page 240 alone leaves its own back blank and that of page 239 before it
        Split split = split("stock: offset-60\ninserts: 240 on tag-150", 480, new Bookmark("Fish", 240));
        assertThat(split.volumes()).extracting(Volume::firstPage).containsExactly(1, 240);
        assertThat(split.volumes())
                .extracting(v -> v.block().addedBlankBacks())
                .containsExactly(List.of(239), List.of(240));
    }

    @Test
    void nothingIsKnownOfWhatNobodySells() throws Exception {
        // an invented pattern without elements
        Split split = split(
                "tables: shop.csv\nbinding: rings\npitch: x\nstock: offset-60",
                "id,method,row,shape,hole_along,hole_across,spacing,centre,elements\n"
                        + "x,rings,fixed,round,3 mm,3 mm,80 mm,12 mm,staples\n",
                480);
        assertThat(split).isEqualTo(new Split(List.of(), null, List.of(new SplitReason.NothingKnown())));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                // 1-1/4 in takes 275 sheets of 0.0037 in (common practice, no source, from memory), 1.0175 in; the
                // shop's stock is "x"; a stock of the same family first: 216 x 0.0047 in (JCP O-63) are 1.0152 in
                "bond-32,paper,0.0053 in,0.0005 in,,|216|bond-28",
                // 217 of them are 1.0199 in, then 0.0041
                "bond-32,paper,0.0053 in,0.0005 in,,|217|bond-24",
                // no family: by grammage, 65 lb of 20 x 26 in at 2.704 g/m2 a pound (PrintWiki) are 175.8; 110 lb index
                // (198.9) is nearer in caliper
                "x,paper,0.0100 in,0.0005 in,175,|110|cover-65",
                // a stock with a grammage for one with: 170 lb index (307 g/m2), not a 14 pt board 1/1000 in thinner
                "x,paper,0.0150 in,0.0008 in,350,|73|index-170",
                // one without for one without, by caliper: 14 pt, not the index of 0.0138 in
                "x,paper,0.0150 in,0.0008 in,,|72|c1s-14pt",
                // a stock as thick is not thinner, however true it is: 0.0047 +-0.0001; bond-24 is 90.2 g/m2
                "x,paper,0.0047 in,0.0005 in,88.8,|220|bond-24",
                // film is not paper: the thinnest of 0.005 + 0.0005 in are too thick
                "x,film,0.0100 in,0.0005 in,,|210|-"
            })
    void theThinnerStockByHand(String own, int leaves, String thinner) throws Exception {
        String name = own.substring(0, own.indexOf(','));
        Split split = split(
                "tables: shop.csv\nsides: one\npitch: 2:1\nstock: " + name,
                "id,kind,caliper,tolerance,gsm,source\n" + own
                        + (name.equals("x") && own.contains("0.0047") ? "\ny,paper,0.0047 in,0.0001 in,88.8," : "")
                        + "\n",
                leaves);
        assertThat(split.thinner() == null ? null : split.thinner().name()).isEqualTo(thinner);
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
