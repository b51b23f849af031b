package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.paper.Stock;
import io.bindprep.report.words.Sentences;
import io.bindprep.volume.Split;
import io.bindprep.volume.Volume;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The ways out of a stack too thick, as JSON. */
record JsonSplit(
        @JsonPropertyDescription("a stock of the catalogue on which the book would stay one; null for none") @Nullable
        String thinnerStock,

        @JsonPropertyDescription("how volumes and stock came about, one sentence each; empty where an element fits")
        List<String> because) {

    /** One volume. */
    record JsonVolume(
            @JsonPropertyDescription("from 1") int number,

            @JsonPropertyDescription("first page of its body")
            int firstPage,

            @JsonPropertyDescription("last page of its body")
            int lastPage,

            @JsonPropertyDescription("title of the top-level bookmark it begins with; empty for none")
            String bookmark,

            @JsonPropertyDescription("sheets that are printed for one copy of it")
            int sheets,

            @JsonPropertyDescription("its leaves without covers")
            int leaves,

            @JsonPropertyDescription("its covers") int covers,

            @JsonPropertyDescription("its block and covers") JsonStack stack,

            @JsonPropertyDescription("how it is bound") JsonPlan plan) {
        static JsonVolume of(Volume v) {
            return new JsonVolume(
                    v.number(),
                    v.firstPage(),
                    v.lastPage(),
                    v.bookmark(),
                    v.block().printedSheets(),
                    v.block().bodyLeaves(),
                    v.block().covers(),
                    JsonStack.of(v.stack()),
                    JsonPlan.of(v.plan()));
        }
    }

    static JsonSplit of(Split split) {
        Stock thinner = split.thinner();
        return new JsonSplit(
                thinner == null ? null : thinner.name(),
                split.because().stream().map(Sentences::of).toList());
    }
}
