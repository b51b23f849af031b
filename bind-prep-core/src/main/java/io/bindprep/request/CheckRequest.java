package io.bindprep.request;

import io.bindprep.files.Inputs;
import io.bindprep.files.PdfSource;
import io.bindprep.job.Job;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Request for a check. For another machine send the path with {@link io.bindprep.job.JobSettings} and
 * {@link io.bindprep.job.JobFiles}, which are serializable, and make the request there; the answer travels as JSON
 * ({@link io.bindprep.report.json.JsonReport#line}).
 *
 * @param file the PDF
 * @param name how reports call it; the same on every machine where the caller wants the same bytes out
 * @param password for an encrypted PDF; null for none
 * @param progress told how far the check is
 * @param helpers a permit for each thread that a check may have help it besides its own; checks that share these never have
 *     more of them together
 * @param read files besides the PDF that the request was made of, such as the job file; nothing is written over them
 * @param digest true where the report is to hold the digest of the file's bytes
 */
public record CheckRequest(
        Path file,
        String name,
        Job job,
        @Nullable String password,
        Progress progress,
        Semaphore helpers,
        Inputs read,
        boolean digest) {
    /** A check that was made of no other file. */
    public CheckRequest(
            Path file, String name, Job job, @Nullable String password, Progress progress, Semaphore helpers) {
        this(file, name, job, password, progress, helpers, Inputs.NONE, true);
    }

    /** A check with a helper of its own, where that pays. */
    public CheckRequest(Path file, String name, Job job, @Nullable String password, Progress progress) {
        this(file, name, job, password, progress, new Semaphore(1));
    }

    /** Told after each page, never twice at once, from threads of the check. */
    @FunctionalInterface
    public interface Progress {
        /** Pages done of so many. */
        void pages(int done, int total);
    }

    /** A check without password or progress. */
    public static CheckRequest of(Path file, String name, Job job) {
        return new CheckRequest(file, name, job, null, (done, total) -> {});
    }

    /** The same check, of a request that was made of these files besides. */
    public CheckRequest reading(Inputs files) {
        return new CheckRequest(file, name, job, password, progress, helpers, read.plus(files), digest);
    }

    /** The same check without the digest, which takes as long as reading a plain book: for a report that shows none. */
    public CheckRequest withoutDigest() {
        return new CheckRequest(file, name, job, password, progress, helpers, read, false);
    }

    /** All files that it reads, the PDF first. */
    public Inputs inputs() {
        return Inputs.NONE.plus("the PDF", file).plus(read);
    }

    /** The document as a whole value, to open it. */
    public PdfSource source() {
        return new PdfSource(file, name, password);
    }

    @Override
    public String toString() {
        return "CheckRequest[" + name + "]";
    }
}
