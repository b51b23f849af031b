package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.check.Recheck;
import io.bindprep.check.Severity;
import io.bindprep.wording.PageLists;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Comparison with an earlier check as JSON. */
record JsonRecheck(
        @JsonPropertyDescription("name of the earlier document")
        String file,

        @JsonPropertyDescription("whether it could be read; else every finding is new")
        boolean readable,

        @JsonPropertyDescription("whether both documents are the same, byte for byte")
        boolean sameFile,

        @JsonPropertyDescription("whether both were held against the same job, accepted findings aside")
        boolean sameJob,

        @JsonPropertyDescription("whether only what is new or worse fails the job")
        boolean onlyNewFails,

        @JsonPropertyDescription("earlier findings that are not there any more, whole or on some of their pages")
        List<Gone> gone) {
    /** Fate of a finding that is gone. */
    enum State {
        FIXED,
        PARTLY_FIXED,
        NOT_KNOWN
    }

    /** One of them. */
    record Gone(
            @JsonPropertyDescription("stable id, one of those in FINDINGS.md")
            String rule,

            @JsonPropertyDescription("the severity it had") Severity severity,

            @JsonPropertyDescription(
                    "fixed: nothing is left of it; partly-fixed: on these pages; not-known: its pages could not be"
                            + " looked at again")
            State state,

            @JsonPropertyDescription(
                    "the pages of the earlier document where it was and is no more, as ranges; empty for the whole"
                            + " document")
            String pages,

            @JsonPropertyDescription("what the earlier report said of it")
            String message) {
        static Gone of(Recheck.Gone g) {
            State state = !g.known() ? State.NOT_KNOWN : g.whole() ? State.FIXED : State.PARTLY_FIXED;
            return new Gone(g.rule(), g.severity(), state, PageLists.compact(g.pages()), g.message());
        }
    }

    static @Nullable JsonRecheck of(@Nullable Recheck r) {
        return r == null
                ? null
                : new JsonRecheck(
                        r.file(),
                        r.readable(),
                        r.sameFile(),
                        r.sameJob(),
                        r.onlyNewFails(),
                        r.gone().stream().map(Gone::of).toList());
    }
}
