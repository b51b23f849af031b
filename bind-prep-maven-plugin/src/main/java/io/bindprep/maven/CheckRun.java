package io.bindprep.maven;

import io.bindprep.CheckRequest;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;

/** One execution of the goal: every document is checked and reported before the build may fail. */
final class CheckRun {
    private final Path base;
    private final ReportFiles reports;
    private final JobSource source;
    private final Engine engine;
    private final Log log;
    private final List<String> unreadable = new ArrayList<>();
    private final List<String> failed = new ArrayList<>();

    CheckRun(Path base, ReportFiles reports, JobSource source, Engine engine, Log log) {
        this.base = base;
        this.reports = reports;
        this.source = source;
        this.engine = engine;
        this.log = log;
    }

    void check(List<PdfInput> documents, boolean failIfNone) throws MojoExecutionException, MojoFailureException {
        // a wrong job is told of even where there is nothing to check yet
        JobSettings settings = source.settings();
        Job job = source.job(settings, base);
        if (documents.isEmpty()) {
            if (failIfNone) {
                throw new MojoFailureException("no PDF to check\n  Make one before the verify phase,"
                        + " name it in <documents> or <filesets>, or set bindprep.failIfNoFiles to false.");
            }
            log.debug("no PDF to check");
            return;
        }
        for (PdfInput document : documents) {
            check(document, job, settings);
        }
        if (!unreadable.isEmpty()) {
            List<String> all = new ArrayList<>(unreadable);
            all.addAll(failed);
            throw new MojoExecutionException(String.join("\n", all));
        }
        if (!failed.isEmpty()) {
            throw new MojoFailureException(String.join("\n", failed));
        }
    }

    private void check(PdfInput document, Job job, JobSettings settings) throws MojoExecutionException {
        try {
            CheckRequest request = CheckRequest.of(document.file(), document.name(), job);
            Report report = engine.check(request);
            Path written = reports.write(document, request, report);
            if (report.failed()) {
                failed.add(Wording.failed(document, report, shown(written)));
            } else if (report.outcome() == Outcome.FINDINGS) {
                log.warn(Wording.passed(document, report, shown(written)));
            } else {
                log.info(Wording.passed(document, report, shown(written)));
            }
        } catch (UnreadableInputException e) {
            unreadable.add(Wording.unreadable(document, e));
            writeUnreadable(document, e);
        } catch (SettingException e) {
            throw source.wrong(e, settings);
        } catch (IOException e) {
            throw cannotWrite(document, e);
        }
    }

    private void writeUnreadable(PdfInput document, UnreadableInputException why) throws MojoExecutionException {
        try {
            reports.unreadable(document, why);
        } catch (IOException e) {
            throw cannotWrite(document, e);
        }
    }

    private static MojoExecutionException cannotWrite(PdfInput document, IOException e) {
        return new MojoExecutionException("cannot write the report of " + document.name() + ": " + e.getMessage(), e);
    }

    private String shown(Path file) {
        Path path = file.startsWith(base) ? base.relativize(file) : file;
        return path.toString().replace('\\', '/');
    }
}
