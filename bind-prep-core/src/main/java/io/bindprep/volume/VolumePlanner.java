package io.bindprep.volume;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.Job;
import io.bindprep.page.Bookmark;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits a book that no element takes into volumes, each with its own stack and plan, and looks for a thinner stock.
 *
 * <p>Volumes are cut between leaves, near even shares, where a top-level bookmark begins a leaf if one does near enough,
 * and behind no divider if that can be helped. Covers stand in every volume.
 */
public final class VolumePlanner {
    /** More volumes than this are no way to bind a book; our own, no source. */
    private static final int MOST_VOLUMES = 100;

    private static final Length PROBE = Length.ofMm(200);

    private final Job job;
    private final Plan book;
    private final Block block;
    private final LeafSizes sizes;
    private final Length edge;
    private final List<Leaf> body;

    private VolumePlanner(Job job, Plan plan, Block block, LeafSizes sizes) {
        // every volume on the pattern that the pages are judged by
        this.job = job.punch() == null ? job.withPitch(plan.pattern()) : job;
        this.book = plan;
        this.block = block;
        this.sizes = sizes;
        this.edge = plan.row().length();
        this.body = block.leaves().stream().filter(l -> !l.cover()).toList();
    }

    /**
     * The ways out; {@link Split#NONE} where an element takes the stack, or no hole row fits.
     *
     * @param plan of the whole book
     * @param sizes how large each leaf is cut
     * @param bookmarks where chapters begin
     * @throws SettingException as the planner has it
     */
    public static Split split(Job job, Plan plan, Block block, LeafSizes sizes, List<Bookmark> bookmarks)
            throws SettingException {
        if (plan.element() != null || plan.row().holes().isEmpty()) {
            return Split.NONE;
        }
        return new VolumePlanner(job, plan, block, sizes).split(bookmarks);
    }

    private Split split(List<Bookmark> bookmarks) throws SettingException {
        Length most = thickestTaken();
        if (most.compareTo(Length.ZERO) <= 0) {
            return new Split(List.of(), null, List.of(new SplitReason.NothingKnown()));
        }
        List<SplitReason> because = new ArrayList<>();
        Stock thinner = new ThinnerStock(job, block, sizes).find(most);
        because.add(
                thinner == null
                        ? new SplitReason.NoThinnerStock()
                        : new SplitReason.OnThinnerStock(
                                thinner.name(),
                                ThinnerStock.replaced(block, thinner, sizes).deciding(job.bySize()),
                                most));
        List<Volume> volumes = volumes(most, bookmarks, because);
        return new Split(volumes, thinner, because);
    }

    /** The thickest stack that the largest element takes, found by asking the planner; zero where it takes none. */
    private Length thickestTaken() throws SettingException {
        long low = 0;
        long high = PROBE.units();
        while (high - low > 1) {
            long middle = (low + high) / 2;
            Length at = new Length(middle);
            Stack probe = new Stack(at, at, at, null, List.of());
            if (Planner.plan(job, new Block(List.of(), List.of(), List.of()), probe, edge)
                            .element()
                    != null) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Length(low);
    }

    private List<Volume> volumes(Length most, List<Bookmark> bookmarks, List<SplitReason> because)
            throws SettingException {
        double covers = 0;
        for (Leaf leaf : block.leaves()) {
            covers += leaf.cover() ? micrometres(leaf) : 0;
        }
        double room = most.micrometres().doubleValue() - covers;
        Map<Integer, String> chapters = new HashMap<>();
        bookmarks.forEach(b -> chapters.putIfAbsent(b.page(), b.title()));
        Cuts cuts =
                new Cuts(body.stream().mapToDouble(this::micrometres).toArray(), places(chapters), Math.max(room, 1));
        int fewest = Math.max(2, cuts.fewest());
        for (int count = fewest; count <= Math.min(Math.min(MOST_VOLUMES, body.size()), 2 * fewest); count++) {
            int[] at = cuts.into(count);
            if (at != null) {
                List<Volume> volumes = new ArrayList<>();
                for (int v = 0; v < count; v++) {
                    volumes.add(volume(v + 1, body.subList(at[v], at[v + 1]), chapters));
                }
                if (volumes.stream().allMatch(v -> v.plan().element() != null)) {
                    because.add(new SplitReason.Volumes(count, most));
                    return volumes;
                }
            }
        }
        because.add(new SplitReason.NoSplit(MOST_VOLUMES));
        return List.of();
    }

    private double micrometres(Leaf leaf) {
        return (job.bySize() ? leaf.thickestUm() : leaf.nominalUm()).doubleValue();
    }

    private Cuts.Place[] places(Map<Integer, String> chapters) {
        Cuts.Place[] places = new Cuts.Place[body.size()];
        for (int i = 0; i < places.length; i++) {
            Leaf leaf = body.get(i);
            Integer recto = leaf.recto();
            boolean tab = leaf.role() == Leaf.Role.TAB;
            // a divider belongs to what it stands before, chapter or not
            boolean atChapter = tab || (recto != null && chapters.containsKey(recto));
            boolean afterTab = i > 0 && body.get(i - 1).role() == Leaf.Role.TAB;
            places[i] = afterTab ? Cuts.Place.AVOIDED : atChapter ? Cuts.Place.CHAPTER : Cuts.Place.PLAIN;
        }
        return places;
    }

    private Volume volume(int number, List<Leaf> leaves, Map<Integer, String> chapters) throws SettingException {
        List<Leaf> bound = new ArrayList<>();
        block.leaves().stream().filter(l -> l.role() == Leaf.Role.FRONT_COVER).forEach(bound::add);
        bound.addAll(leaves);
        block.leaves().stream().filter(l -> l.role() == Leaf.Role.BACK_COVER).forEach(bound::add);
        int first = Integer.MAX_VALUE;
        int last = 0;
        for (Leaf leaf : leaves) {
            for (Integer page : new Integer[] {leaf.recto(), leaf.verso()}) {
                first = page == null ? first : Math.min(first, page);
                last = page == null ? last : Math.max(last, page);
            }
        }
        int from = first;
        int to = last;
        Block own = new Block(
                bound,
                block.places(),
                block.addedBlankBacks().stream()
                        .filter(p -> p >= from && p <= to)
                        .toList());
        Stack stack = StackEstimator.estimate(sizes.of(bound));
        return new Volume(
                number,
                first,
                last,
                chapters.getOrDefault(first, ""),
                own,
                stack,
                Planner.volume(job, own, stack, edge, book));
    }
}
