package io.bindprep.check;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.block.PagePlace;
import io.bindprep.job.Job;
import io.bindprep.job.Trim;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PrevailingSize;
import io.bindprep.paper.Stack;
import io.bindprep.run.Run;
import io.bindprep.volume.Split;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.util.List;

/** All that rules look at. */
record Situation(
        DocumentFacts document,
        Job job,
        Block block,
        Stack stack,
        Plan plan,
        Split split,
        Run run,
        List<PageVerdict> verdicts) {
    Situation {
        verdicts = List.copyOf(verdicts);
        int pages = document.pages().size();
        if (verdicts.size() != pages || block.places().size() != pages) {
            throw new IllegalArgumentException("every page needs one place and one verdict: " + pages + " pages, "
                    + block.places().size() + " places, " + verdicts.size() + " verdicts");
        }
        verdicts.forEach(Situation::checkBacked);
    }

    // a verdict without the mark that gave it would pass every rule in silence
    private static void checkBacked(PageVerdict v) {
        boolean needsHit = v.verdict() == Verdict.HIT || v.verdict() == Verdict.TIGHT;
        if (needsHit
                && v.hits().stream()
                        .noneMatch(h -> h.verdict() == v.verdict() && h.mark().kind() != MarkKind.BACKGROUND)) {
            throw new IllegalArgumentException("page " + v.page() + " is " + v.verdict() + " without a mark that is");
        }
    }

    /** Units in which people read lengths. */
    Measures measures() {
        return measures(job, document);
    }

    /** The units that the job asks for, else those of the size that most pages have. */
    static Measures measures(Job job, DocumentFacts document) {
        Trim trim = job.trim();
        if (document.pages().isEmpty() && trim != null) {
            return job.measures(trim.width(), trim.height());
        }
        if (document.pages().isEmpty()) {
            return new Measures(job.units() == null ? Units.METRIC : job.units());
        }
        PrevailingSize size = PrevailingSize.of(document.pages());
        return job.measures(size.width(), size.height());
    }

    PagePlace place(int page) {
        return block.places().get(page - 1);
    }
}
