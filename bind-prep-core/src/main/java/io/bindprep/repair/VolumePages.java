package io.bindprep.repair;

import io.bindprep.block.Leaf;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.volume.Volume;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The pages of the whole document that one volume is made of, its covers' among them.
 *
 * @param pages ascending, numbered as in the whole document
 */
public record VolumePages(List<Integer> pages) {
    public VolumePages {
        pages = List.copyOf(pages);
    }

    /** Those of a volume. */
    public static VolumePages of(Volume volume) {
        return new VolumePages(volume.block().leaves().stream()
                .flatMap(VolumePages::sides)
                .sorted()
                .distinct()
                .toList());
    }

    private static Stream<Integer> sides(Leaf leaf) {
        return Stream.of(Optional.ofNullable(leaf.recto()), Optional.ofNullable(leaf.verso()))
                .flatMap(Optional::stream);
    }

    /** The job of the volume by itself: page numbers count from its own first page. */
    public Job job(Job whole) {
        return whole.renumbered(whole.sides(), this::range);
    }

    private Optional<PageRange> range(PageRange whole) {
        List<Integer> here = pages.stream().filter(whole::holds).toList();
        return here.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new PageRange(pages.indexOf(here.get(0)) + 1, pages.indexOf(here.get(here.size() - 1)) + 1));
    }
}
