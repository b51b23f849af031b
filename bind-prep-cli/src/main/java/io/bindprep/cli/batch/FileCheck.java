package io.bindprep.cli.batch;

import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.input.InputFile;
import io.bindprep.cli.job.JobInput;
import io.bindprep.cli.output.ReportFiles;
import io.bindprep.cli.output.ReportOutput;
import io.bindprep.job.Job;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.SharedMemory;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.wording.ProblemWords;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** Checks one file and words the answer, whatever happens; safe on several threads at once. */
public final class FileCheck {
    private final Engine engine;
    private final Job job;
    private final @Nullable String password;
    private final JobInput input;
    private final ReportOutput output;
    private final ReportFiles written;
    private final Semaphore pageThreads;
    private final SharedMemory memory = new SharedMemory();

    /**
     * A check of files against one job.
     *
     * @param pageThreads a permit for each thread that looks at pages, of all files together
     */
    public FileCheck(
            Engine engine,
            Job job,
            @Nullable String password,
            JobInput input,
            ReportOutput output,
            ReportFiles written,
            Semaphore pageThreads) {
        this.engine = engine;
        this.job = job;
        this.password = password;
        this.input = input;
        this.output = output;
        this.written = written;
        this.pageThreads = pageThreads;
    }

    /**
     * Checks a file.
     *
     * @param index its place among the inputs, from 0
     */
    public Answer answer(int index, InputFile file, CheckRequest.Progress progress) {
        try {
            UnreadableInputException known = file.problem();
            if (known != null) {
                return unreadable(index, file, known);
            }
            CheckRequest request = new CheckRequest(file.file(), file.name(), job, password, progress, pageThreads);
            // one for the check itself; while another file's helper has it, that file is nearly done
            pageThreads.acquireUninterruptibly();
            try {
                return memory.<Answer, UnreadableInputException, SettingException>run(() -> report(index, request));
            } finally {
                pageThreads.release();
            }
        } catch (UnreadableInputException e) {
            return unreadable(index, file, e);
        } catch (SettingException e) {
            ReportOutput.Said said = output.wrongSetting(file.name(), e, input.problem(e));
            String gist = "--" + e.key() + ": " + e.getMessage();
            written.unchecked(index, file.name(), gist);
            return new Answer(file.name(), Answer.Kind.WRONG_SETTING, ExitCode.USAGE, said.out(), said.err(), gist, 0);
        } catch (RuntimeException | VirtualMachineError e) {
            // one file's trouble keeps no other from its answer
            ReportOutput.Said said = output.internal(file.name(), Problems.internal(file.name(), e));
            String gist = ProblemWords.internalGist(e);
            written.unchecked(index, file.name(), gist);
            return new Answer(file.name(), Answer.Kind.INTERNAL, ExitCode.INTERNAL, said.out(), said.err(), gist, 0);
        }
    }

    private Answer report(int index, CheckRequest request) throws UnreadableInputException, SettingException {
        long begun = System.nanoTime();
        Report report = engine.check(request);
        Duration took = Duration.ofNanos(System.nanoTime() - begun);
        List<ReportFiles.Unwritten> unwritten = written.write(index, request, report, took);
        ReportOutput.Said said = output.report(report);
        int exit = Math.max(
                report.failed() ? ExitCode.FINDINGS : ExitCode.GOOD,
                unwritten.isEmpty() ? ExitCode.GOOD : ExitCode.USAGE);
        Answer.Kind kind = report.failed() ? Answer.Kind.FINDINGS : Answer.Kind.GOOD;
        int errors = count(report, Severity.ERROR);
        return new Answer(
                request.name(),
                kind,
                exit,
                said.out(),
                said.err() + written.told(unwritten),
                gist(report),
                errors,
                Answer.Reports.of(unwritten));
    }

    private Answer unreadable(int index, InputFile file, UnreadableInputException e) {
        List<ReportFiles.Unwritten> unwritten = written.unreadable(index, file.name(), e);
        ReportOutput.Said said = output.unreadable(file.name(), e);
        String message = String.valueOf(e.getMessage());
        // the name stands before it already
        String gist = message.startsWith(file.name() + " ")
                ? message.substring(file.name().length() + 1)
                : message;
        return new Answer(
                file.name(),
                Answer.Kind.UNREADABLE,
                ExitCode.UNREADABLE,
                said.out(),
                said.err() + written.told(unwritten),
                gist,
                0,
                Answer.Reports.of(unwritten));
    }

    private static String gist(Report report) {
        List<String> parts = new ArrayList<>();
        add(parts, count(report, Verdict.HIT), "page punched", "pages punched");
        add(parts, count(report, Verdict.UNCHECKED), "page not checked", "pages not checked");
        add(parts, count(report, Severity.ERROR), "error", "errors");
        add(parts, count(report, Severity.WARNING), "warning", "warnings");
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, int count, String one, String many) {
        if (count > 0) {
            parts.add(count + " " + (count == 1 ? one : many));
        }
    }

    private static int count(Report report, Verdict verdict) {
        return (int) report.pages().stream()
                .filter(page -> page.verdict().verdict() == verdict)
                .count();
    }

    private static int count(Report report, Severity severity) {
        return (int) report.findings().stream()
                .filter(finding -> finding.counts(severity))
                .count();
    }
}
