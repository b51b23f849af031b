package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.paper.Stock;
import io.bindprep.report.words.Sentences;
import io.bindprep.run.Fold;
import io.bindprep.run.Lift;
import io.bindprep.run.Run;
import io.bindprep.run.Step;
import io.bindprep.wording.PageLists;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Steps of the run, as JSON. */
record JsonAssembly(
        @JsonPropertyDescription("how leaves that fold out are folded in; empty where there are none")
        List<OneFold> folds,

        @JsonPropertyDescription("lifts of one copy in order, volume after volume")
        List<OneLift> lifts,

        @JsonPropertyDescription(
                "strokes of the punch for all copies: leaves copy by copy, covers of all copies together by stock")
        long strokes,

        @JsonPropertyDescription("in trade order") List<OneStep> steps,

        @JsonPropertyDescription("what holds for all of it") List<OneCaution> cautions) {

    /** A fold-out. */
    record OneFold(
            @JsonPropertyDescription("its pages, as ranges") String pages,

            @JsonPropertyDescription("how far the unfolded leaf reaches from the binding edge")
            BigDecimal flatMm,

            @JsonPropertyDescription("panels, the bound one included")
            int panels,

            @JsonPropertyDescription("how far it may reach with these panels")
            BigDecimal mostMm,

            @JsonPropertyDescription("folds from the binding edge along the unfolded leaf; empty where it does not fit")
            List<BigDecimal> foldsMm) {
        static OneFold of(Fold f) {
            return new OneFold(
                    PageLists.compact(f.pages()),
                    Json.mm(f.flat()),
                    f.panels(),
                    Json.mm(f.most()),
                    f.folds().stream().map(Json::mm).toList());
        }
    }

    /** A lift. */
    record OneLift(
            @JsonPropertyDescription("the volume it belongs to, from 1")
            int volume,

            @JsonPropertyDescription("its first leaf in the volume, covers counted, from 1")
            int firstLeaf,

            @JsonPropertyDescription("how many leaves") int leaves,

            @JsonPropertyDescription("whether it is of covers")
            boolean cover,

            @JsonPropertyDescription("what the punch meets") Stock.Kind kind,

            @JsonPropertyDescription("by the nominal calipers")
            BigDecimal thicknessMm,

            @JsonPropertyDescription("first page printed on it; null where it is blank") @Nullable
            Integer firstPage,

            @JsonPropertyDescription("last page printed on it; null where it is blank") @Nullable
            Integer lastPage) {
        static OneLift of(Lift l) {
            return new OneLift(
                    l.volume(),
                    l.firstLeaf(),
                    l.leaves(),
                    l.cover(),
                    l.kind(),
                    Json.mm(l.thickness()),
                    l.firstPage(),
                    l.lastPage());
        }
    }

    /** A step. */
    record OneStep(
            @JsonPropertyDescription("what kind of work it is")
            Step.Work work,

            @JsonPropertyDescription("what to do, with this job's numbers")
            List<String> instructions,

            @JsonPropertyDescription("what to mind; the machine's manual, site rules and local law come first")
            List<OneCaution> cautions) {
        static OneStep of(Step s) {
            return new OneStep(
                    s.work(),
                    Sentences.of(s),
                    s.cautions().stream().map(OneCaution::of).toList());
        }
    }

    /** A caution. */
    record OneCaution(
            @JsonPropertyDescription("what to mind") String text,

            @JsonPropertyDescription("what it rests on; worded here, not quoted")
            String source) {
        static OneCaution of(io.bindprep.run.Caution c) {
            return new OneCaution(Sentences.of(c), Sentences.source(c));
        }
    }

    static JsonAssembly of(Run run) {
        return new JsonAssembly(
                run.folds().stream().map(OneFold::of).toList(),
                run.lifts().stream().map(OneLift::of).toList(),
                run.strokes(),
                run.steps().stream().map(OneStep::of).toList(),
                run.cautions().stream().map(OneCaution::of).toList());
    }
}
