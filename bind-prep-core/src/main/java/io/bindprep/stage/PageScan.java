package io.bindprep.stage;

import io.bindprep.block.Block;
import io.bindprep.block.PagePlace;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.PlanTrial;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.problem.SharedMemory;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Looks at every page; where there are many, or few prove to take longer than opening the document again, and the request
 * has a permit left, a second thread does so and joins in, for PDFBox's documents are not for sharing.
 */
final class PageScan {
    /** Before this the Java machine is still warming up and says nothing about the rest. */
    private static final long SETTLED_NANOS = 250_000_000L;

    /** Work that must be left, beyond a second opening, for another thread to be worth it. */
    private static final long LEFT_NANOS = 300_000_000L;

    /** More than these take so long that a second thread may begin at once: on books of 101 to 1,321 pages that saved 3 to 7 %. */
    private static final int MANY = 100;

    /** A longer document opened twice takes more than 300 MB (17,208 pages: 345), and a small heap has no room for it. */
    private static final int MOST_TWICE = 5_000;

    /** Pages taken at once; small enough that both threads end together. */
    private static final int CHUNK = 4;

    private final CheckRequest request;
    private final Block block;
    private final PlanTrial trial;
    private final PageLook further;
    private final TimeLimit limit;
    private final LongSupplier nanos;
    private final int pages;
    private final AtomicInteger next = new AtomicInteger();
    private int done;

    PageScan(
            CheckRequest request, Block block, PlanTrial trial, PageLook further, TimeLimit limit, LongSupplier nanos) {
        this.request = request;
        this.block = block;
        this.trial = trial;
        this.further = further;
        this.limit = limit;
        this.nanos = nanos;
        this.pages = block.places().size();
    }

    /** Has every page judged by the trial. */
    static void run(
            CheckRequest request, OpenedPdf pdf, Block block, PlanTrial trial, PageLook further, TimeLimit limit)
            throws UnreadableInputException {
        new PageScan(request, block, trial, further, limit, System::nanoTime).lead(pdf);
    }

    void lead(OpenedPdf pdf) throws UnreadableInputException {
        FutureTask<Void> helper = null;
        long start = nanos.getAsLong();
        try {
            do {
                if (helper == null
                        && worthHelp(nanos.getAsLong() - start, pdf.openingNanos())
                        && request.helpers().tryAcquire()) {
                    helper = helper(pdf);
                }
            } while (chunk(pdf));
            if (helper != null) {
                helper.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the check was interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof UnreadableInputException unreadable) {
                throw unreadable;
            }
            if (e.getCause() instanceof Error error) {
                throw error; // told by the time limit
            }
            throw new IllegalStateException("the check failed", e.getCause());
        } finally {
            next.set(pages); // where one thread failed the other stops
        }
    }

    /** Starts a helper, which gives its permit back before its result is there. */
    private FutureTask<Void> helper(OpenedPdf first) {
        FutureTask<Void> helper = new FutureTask<>(() -> {
            try {
                return help(first);
            } finally {
                request.helpers().release();
            }
        });
        boolean started = false;
        try {
            limit.start(helper);
            started = true;
        } finally {
            if (!started) {
                request.helpers().release();
            }
        }
        return helper;
    }

    private boolean worthHelp(long spent, long opening) {
        int looked = next.get();
        return Runtime.getRuntime().availableProcessors() > 1
                && pages <= MOST_TWICE
                && (pages > MANY
                        || spent > SETTLED_NANOS && (double) spent / looked * (pages - looked) > opening + LEFT_NANOS);
    }

    private @Nullable Void help(OpenedPdf first) throws UnreadableInputException {
        Optional<OpenedPdf> opened = SharedMemory.orElse(
                () -> Optional.of(Intake.again(request.source(), first)),
                Optional::empty); // then the first goes on alone
        if (opened.isPresent()) {
            try (OpenedPdf again = opened.get()) {
                while (chunk(again)) {
                    // the chunk says whether there was one
                }
            }
        }
        return null;
    }

    /** Looks at the next few pages; false where none is left. */
    private boolean chunk(OpenedPdf pdf) {
        int from = next.getAndAdd(CHUNK);
        for (int i = from; i < Math.min(pages, from + CHUNK); i++) {
            look(pdf, block.places().get(i));
            count();
        }
        return from < pages;
    }

    private void look(OpenedPdf pdf, PagePlace place) {
        PageFacts facts = pdf.facts().pages().get(place.page() - 1);
        double length = facts.along(place.bindingEdge()).mm();
        PageMarks marks = pdf.scan(place.page(), place.bindingEdge(), trial.stripMm(), trial.reachMm());
        trial.judge(marks, place, length);
        boolean near =
                marks.marks().stream().anyMatch(m -> m.kind() != MarkKind.BACKGROUND && m.nearMm() < trial.reachMm());
        further.look(pdf, place, near);
    }

    private synchronized void count() {
        request.progress().pages(++done, pages);
    }
}
