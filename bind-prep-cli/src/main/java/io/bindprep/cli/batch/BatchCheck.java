package io.bindprep.cli.batch;

import io.bindprep.cli.console.BatchProgress;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.ProgressLine;
import io.bindprep.cli.input.InputFile;
import io.bindprep.cli.output.ReportOutput;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.util.List;

/** Checks files, one or thousands: each gets its answer, in their order, and the worst is the exit code. */
public final class BatchCheck {
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean showsProgress;
    private final FileCheck check;
    private final ReportOutput output;

    public BatchCheck(PrintWriter out, PrintWriter err, boolean showsProgress, FileCheck check, ReportOutput output) {
        this.out = out;
        this.err = err;
        this.showsProgress = showsProgress;
        this.check = check;
        this.output = output;
    }

    /** Checks one file that stands for itself; returns the exit code. */
    public int one(InputFile file) {
        Answer answer;
        // the line is gone before the answer comes
        try (ProgressLine progress = new ProgressLine(err, showsProgress, System::nanoTime)) {
            answer = check.answer(0, file, progress);
        }
        print(answer);
        return answer.exit();
    }

    /**
     * Checks many.
     *
     * @param threads how many at once
     * @param summary told of each
     * @return the exit code
     */
    public int many(List<InputFile> files, int threads, Summary summary) {
        long[] sizes = files.stream().mapToLong(BatchCheck::size).toArray();
        long bytes = 0;
        for (long size : sizes) {
            bytes += size;
        }
        BatchProgress progress = new BatchProgress(err, showsProgress, System::nanoTime, files.size(), bytes);
        int[] worst = {ExitCode.GOOD};
        try {
            InOrder.run(
                    files.size(),
                    threads,
                    i -> {
                        CheckRequest.Progress pages = progress.ofFile();
                        Answer answer = check.answer(i, files.get(i), pages);
                        progress.file(sizes[i], answer.kind() == Answer.Kind.GOOD);
                        return answer;
                    },
                    answer -> {
                        progress.pause();
                        print(answer);
                        progress.resume();
                        summary.add(answer);
                        worst[0] = Math.max(worst[0], answer.exit());
                        // nobody reads on, or no report finds room: the rest would be for nothing
                        return !out.checkError() && answer.reports() != Answer.Reports.DISK_FULL;
                    });
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the run was interrupted", e);
        } finally {
            progress.pause();
        }
        return worst[0];
    }

    private void print(Answer answer) {
        if (!answer.out().isEmpty()) {
            output.print(answer.out());
        }
        err.print(answer.err());
        err.flush();
    }

    private static long size(InputFile file) {
        try {
            return Files.size(file.file());
        } catch (IOException e) {
            return 0; // it will be told as unreadable
        }
    }
}
