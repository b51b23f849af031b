package io.bindprep;

import io.bindprep.block.Block;
import io.bindprep.block.PagePlace;
import io.bindprep.marks.PageJudge;
import io.bindprep.marks.PageVerdict;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.problem.UnreadableInputException;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Looks at every page, long documents on two threads with the document opened twice: PDFBox's documents are not for
 * sharing, and a third thread brought nothing on two cores.
 */
final class PageScan {
    /** Below this, opening the document again costs more than it gives (measured on the fixtures). */
    private static final int WORTH_TWO = 64;

    /** Pages taken at once; small enough that both threads end together. */
    private static final int CHUNK = 8;

    private final CheckRequest request;
    private final Block block;
    private final PageJudge judge;
    private final @Nullable PageVerdict[] verdicts;
    private final AtomicInteger next = new AtomicInteger();
    private int done;

    private PageScan(CheckRequest request, Block block, PageJudge judge) {
        this.request = request;
        this.block = block;
        this.judge = judge;
        this.verdicts = new PageVerdict[block.places().size()];
    }

    static List<PageVerdict> run(CheckRequest request, OpenedPdf pdf, Block block, PageJudge judge)
            throws UnreadableInputException {
        PageScan scan = new PageScan(request, block, judge);
        if (scan.verdicts.length < WORTH_TWO || Runtime.getRuntime().availableProcessors() < 2) {
            scan.work(pdf);
        } else {
            scan.both(pdf);
        }
        return Arrays.stream(scan.verdicts).map(PageScan::found).toList();
    }

    private static PageVerdict found(@Nullable PageVerdict verdict) {
        if (verdict == null) {
            throw new IllegalStateException("a page was not looked at");
        }
        return verdict;
    }

    private void both(OpenedPdf pdf) throws UnreadableInputException {
        FutureTask<Void> second = new FutureTask<>(() -> {
            try (OpenedPdf again = Intake.open(request.file(), request.name(), request.password())) {
                if (!again.facts().sha256().equals(pdf.facts().sha256())) {
                    throw new IllegalStateException("the file changed while it was read");
                }
                work(again);
            }
            return null;
        });
        Bounded.start(second);
        try {
            work(pdf);
            second.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the check was interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof UnreadableInputException unreadable) {
                throw unreadable;
            }
            throw new IllegalStateException("the check failed", e.getCause());
        } finally {
            next.set(verdicts.length); // where one thread failed the other stops
        }
    }

    private void work(OpenedPdf pdf) {
        for (int from = next.getAndAdd(CHUNK); from < verdicts.length; from = next.getAndAdd(CHUNK)) {
            for (int i = from; i < Math.min(verdicts.length, from + CHUNK); i++) {
                verdicts[i] = look(pdf, block.places().get(i));
                count();
            }
        }
    }

    private PageVerdict look(OpenedPdf pdf, PagePlace place) {
        PageFacts facts = pdf.facts().pages().get(place.page() - 1);
        boolean upright = place.boundEdge() == PageEdge.LEFT || place.boundEdge() == PageEdge.RIGHT;
        double length = (upright ? facts.trimHeight() : facts.trimWidth()).mm();
        return judge.judge(pdf.scan(place.page(), place.boundEdge(), judge.stripMm()), place, length);
    }

    private synchronized void count() {
        request.progress().pages(++done, verdicts.length);
    }
}
