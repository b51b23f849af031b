package io.bindprep.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.bindprep.LongBookTest;
import io.bindprep.binding.PlanChoices;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.LeafSizes;
import io.bindprep.files.PdfSource;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.PlanTrial;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.StackEstimator;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.request.CheckRequest;
import io.bindprep.unit.Length;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageScanTest {
    private static final Path BOOK = Path.of(System.getProperty("bindprep.root"), "fixtures", "cookbook-letter.pdf");

    /** Threads that gave a permit back. */
    private static final class Told extends Semaphore {
        private static final long serialVersionUID = 1;
        private final AtomicInteger given = new AtomicInteger();

        Told(int permits) {
            super(permits);
        }

        @Override
        public void release() {
            super.release();
            given.incrementAndGet();
        }
    }

    @BeforeEach
    void aSecondProcessor() {
        assumeThat(Runtime.getRuntime().availableProcessors())
                .as("one processor has no use for a helper")
                .isGreaterThan(1);
    }

    /** Scans the book of 100 pages as if each look at the clock came ten seconds after the one before. */
    private static List<PageVerdict> scan(Semaphore helpers) throws Exception {
        return scan(BOOK, helpers, TimeUnit.SECONDS.toNanos(10));
    }

    private static List<PageVerdict> scan(Path book, Semaphore helpers, long eachLook) throws Exception {
        AtomicLong clock = new AtomicLong();
        Job job = JobReader.toJob(JobSettings.empty());
        CheckRequest request = new CheckRequest(book, "book.pdf", job, null, (done, total) -> {}, helpers);
        return TimeLimit.run("book.pdf", bound -> {
            try (OpenedPdf pdf = Intake.open(new PdfSource(book, "book.pdf", null))) {
                List<PageFacts> pages = pdf.facts().pages();
                bound.extendFor(pages.size());
                Length width = Length.ofInch(17, 2);
                Length height = Length.ofInch(11, 1);
                Block block = BlockBuilder.build(job, pages.size());
                LeafSizes sizes = new LeafSizes(job, pages, width, height);
                PlanChoices choices =
                        Planner.choices(job, block, StackEstimator.estimate(sizes.of(block.leaves())), height);
                PlanTrial trial = new PlanTrial(choices.settings(), choices.others(), pages.size());
                new PageScan(request, block, trial, PageLook.NONE, bound, () -> clock.addAndGet(eachLook)).lead(pdf);
                return trial.verdicts(0);
            }
        });
    }

    @Test
    void aHelperTakesAPermitAndGivesItBackAndChangesNothing() throws Exception {
        Told one = new Told(1);
        List<PageVerdict> helped = scan(one);
        assertThat(one.given).hasValue(1);
        assertThat(one.availablePermits()).isEqualTo(1);
        assertThat(helped).hasSize(100).isEqualTo(scan(new Semaphore(0)));
    }

    @Test
    void withoutAPermitThereIsNoHelper() throws Exception {
        Told none = new Told(0);
        scan(none);
        assertThat(none.given).hasValue(0);
        assertThat(none.availablePermits()).isZero();
    }

    @Test
    void oneCheckHasOneHelperHoweverManyPermitsThereAre() throws Exception {
        Told many = new Told(5);
        scan(many);
        assertThat(many.given).hasValue(1);
        assertThat(many.availablePermits()).isEqualTo(5);
    }

    @Test
    void ofAHundredPagesAHelperComesWhereTheyTakeLong() throws Exception {
        Told one = new Told(1);
        scan(BOOK, one, 0);
        assertThat(one.given).hasValue(0);
    }

    @Test
    void ofMorePagesAHelperComesAtOnce(@TempDir Path folder) throws Exception {
        Path book = folder.resolve("book.pdf");
        LongBookTest.write(book, 101);
        Told one = new Told(1);
        List<PageVerdict> helped = scan(book, one, 0);
        assertThat(one.given).hasValue(1);
        assertThat(helped).hasSize(101).isEqualTo(scan(book, new Semaphore(0), 0));
    }
}
