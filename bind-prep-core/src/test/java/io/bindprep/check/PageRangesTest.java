package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PageRangesTest {
    @Test
    void rangesAndSinglePages() {
        List<Integer> pages = IntStream.concat(IntStream.rangeClosed(3, 40), IntStream.of(44, 46, 47))
                .boxed()
                .toList();
        assertThat(PageRanges.compact(pages)).isEqualTo("3-40, 44, 46-47");
        assertThat(PageRanges.compact(List.of())).isEmpty();
        assertThat(PageRanges.compact(List.of(1))).isEqualTo("1");
        assertThat(PageRanges.compact(List.of(1, 2))).isEqualTo("1-2");
    }

    @Test
    void cappedWithThePagesBeyondCounted() {
        List<Integer> odd =
                IntStream.iterate(1, i -> i <= 999, i -> i + 2).boxed().toList();
        assertThat(PageRanges.compact(odd, 3)).isEqualTo("1, 3, 5 and 497 more");
        assertThat(PageRanges.compact(odd, 500)).doesNotContain("more");
    }
}
