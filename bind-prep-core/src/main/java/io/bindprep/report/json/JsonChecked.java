package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.block.Block;
import io.bindprep.check.Outcome;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.marks.Verdict;
import io.bindprep.wording.Terms;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A file that was checked, as JSON. */
record JsonChecked(
        @JsonPropertyDescription("version of this format: names never change their meaning, new ones may come")
        int schemaVersion,

        @JsonPropertyDescription(
                "findings where one reaches the job's failing severity, an error where nothing fails it; planned where a"
                        + " plan without a PDF has none")
        Outcome outcome,

        @JsonPropertyDescription("whether the job fails") boolean failed,

        @JsonPropertyDescription("whether a PDF was checked; false for a plan alone, which says nothing of any page")
        boolean documentChecked,

        @JsonPropertyDescription("the file that was read; null where no PDF was checked") @Nullable
        Input input,

        @JsonPropertyDescription("the job as it was understood")
        JsonJob job,

        @JsonPropertyDescription("sheets that are printed for one copy, printed covers included")
        int sheets,

        @JsonPropertyDescription("leaves of one copy without its covers")
        int leaves,

        @JsonPropertyDescription("covers of one copy, printed or blank")
        int covers,

        @JsonPropertyDescription("block and covers of one copy")
        JsonStack stack,

        @JsonPropertyDescription("how it is bound") JsonPlan plan,

        @JsonPropertyDescription(
                "every setting of the depth stop, shallow to deep, then the other pitch at each of its settings")
        List<JsonWhatIf> whatIf,

        @JsonPropertyDescription("the volumes that the book goes into; empty where it is one")
        List<JsonSplit.JsonVolume> volumes,

        @JsonPropertyDescription("ways out where no element takes the stack")
        JsonSplit tooThick,

        @JsonPropertyDescription("what all copies use up") JsonMaterials materials,

        @JsonPropertyDescription("how all copies are made") JsonAssembly assembly,

        @JsonPropertyDescription("how many pages have which verdict; null where no PDF was checked") @Nullable
        Verdicts verdicts,

        @JsonPropertyDescription(
                "pages in order; without --all-pages only those that are not clear; null where no PDF was checked")
        @Nullable
        List<JsonPage> pages,

        @JsonPropertyDescription("worst first, then by page")
        List<JsonFinding> findings,

        @JsonPropertyDescription("comparison with an earlier check, where one was asked for")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        JsonRecheck recheck) {

    /** The file. */
    record Input(
            @JsonPropertyDescription("its name, as the caller gave it")
            String file,

            @JsonPropertyDescription("what the document calls itself; absent where it says nothing of use")
            @JsonInclude(JsonInclude.Include.NON_NULL)
            @Nullable
            String title,

            @JsonPropertyDescription("digest of its bytes, hexadecimal")
            String sha256,

            @JsonPropertyDescription("its pages") int pages) {}

    /** Pages by verdict. */
    record Verdicts(
            @JsonPropertyDescription(
                    "nothing that prints lies in the holes, the " + Terms.HOLE_ZONE + " or the " + Terms.BINDING_MARGIN)
            long clear,

            @JsonPropertyDescription(
                    "no hole is hit, but something lies between the holes or inside the " + Terms.BINDING_MARGIN)
            long tight,

            @JsonPropertyDescription("the holes would cut something that prints")
            long hit,

            @JsonPropertyDescription("could not be analysed whole, so nothing is known to be good")
            long unchecked) {
        static Verdicts of(List<PageReport> pages) {
            return new Verdicts(
                    count(pages, Verdict.CLEAR),
                    count(pages, Verdict.TIGHT),
                    count(pages, Verdict.HIT),
                    count(pages, Verdict.UNCHECKED));
        }

        private static long count(List<PageReport> pages, Verdict verdict) {
            return pages.stream().filter(p -> p.verdict().verdict() == verdict).count();
        }
    }

    static JsonChecked of(Report r, boolean allPages) {
        Block block = r.block();
        return new JsonChecked(
                JsonReport.SCHEMA_VERSION,
                r.outcome(),
                r.failed(),
                r.documentChecked(),
                r.documentChecked()
                        ? new Input(
                                r.document().file(),
                                r.document().title().isEmpty()
                                        ? null
                                        : r.document().title(),
                                r.document().sha256(),
                                r.document().pages().size())
                        : null,
                JsonJob.of(r.job()),
                block.printedSheets(),
                block.bodyLeaves(),
                block.covers(),
                JsonStack.of(r.stack()),
                JsonPlan.of(r.plan()),
                r.whatIf().stream().map(JsonWhatIf::of).toList(),
                r.volumes().stream().map(JsonSplit.JsonVolume::of).toList(),
                JsonSplit.of(r.split()),
                JsonMaterials.of(r.run().materials()),
                JsonAssembly.of(r.run()),
                r.documentChecked() ? Verdicts.of(r.pages()) : null,
                r.documentChecked()
                        ? r.pages().stream()
                                .filter(p -> allPages || p.verdict().verdict() != Verdict.CLEAR)
                                .map(JsonPage::of)
                                .toList()
                        : null,
                r.findings().stream().map(f -> JsonFinding.of(f, r.seen(f))).toList(),
                JsonRecheck.of(r.recheck()));
    }
}
