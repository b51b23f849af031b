package io.bindprep.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PageListsTest {
    @Test
    void rangesAndSinglePages() {
        List<Integer> pages = IntStream.concat(IntStream.rangeClosed(3, 40), IntStream.of(44, 46, 47))
                .boxed()
                .toList();
        assertThat(PageLists.compact(pages)).isEqualTo("3-40, 44, 46-47");
        assertThat(PageLists.compact(List.of())).isEmpty();
        assertThat(PageLists.compact(List.of(1))).isEqualTo("1");
        assertThat(PageLists.compact(List.of(1, 2))).isEqualTo("1-2");
    }

    @Test
    void cappedWithThePagesBeyondCounted() {
        List<Integer> third =
                IntStream.iterate(1, i -> i <= 1498, i -> i + 3).boxed().toList();
        assertThat(PageLists.compact(third, 3)).isEqualTo("1, 4, 7 and 497 more");
        assertThat(PageLists.compact(third, 500)).doesNotContain("more");
    }

    @Test
    void oneSideOfEveryLeafIsSaidSo() {
        assertThat(PageLists.compact(List.of(3, 5, 7, 9), 3)).isEqualTo("3-9, odd ones");
        assertThat(PageLists.compact(List.of(2, 4, 6, 8), 3)).isEqualTo("2-8, even ones");
        assertThat(PageLists.compact(List.of(2, 4, 6), 3)).isEqualTo("2, 4, 6");
        assertThat(PageLists.compact(List.of(2, 4, 6, 9), 5)).isEqualTo("2, 4, 6, 9");
        assertThat(PageLists.compact(List.of(2, 4, 6, 8))).as("for machines").isEqualTo("2, 4, 6, 8");
    }
}
