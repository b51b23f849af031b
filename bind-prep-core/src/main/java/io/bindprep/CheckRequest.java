package io.bindprep;

import io.bindprep.job.Job;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What to check. For another machine send the path with {@link io.bindprep.job.JobSettings} and
 * {@link io.bindprep.job.JobFiles}, which are serializable, and make the request there; the answer travels as JSON
 * ({@link io.bindprep.report.JsonReport#line}).
 *
 * @param file the PDF
 * @param name how reports call it; the same on every machine where the caller wants the same bytes out
 * @param password for an encrypted PDF; null for none
 * @param progress told how far the check is
 */
public record CheckRequest(
        Path file, String name, Job job, @Nullable String password, Progress progress) {
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

    @Override
    public String toString() {
        return "CheckRequest[" + name + "]";
    }
}
