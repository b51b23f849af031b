package io.bindprep.cli.day;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A job as it was asked for.
 *
 * @param pdf its document; null where it is planned without one
 * @param password of an encrypted document; null for none
 */
public record DayEntry(
        String name,
        Job job,
        @Nullable Path pdf,
        Pile pile,
        @Nullable String password) {
    /** Checks a document. */
    @FunctionalInterface
    public interface Check {
        Report of(CheckRequest request) throws UnreadableInputException, SettingException;
    }

    @Override
    public String toString() {
        return "DayEntry[" + name + "]";
    }

    /** Checks the document, or plans without one. */
    public Report report(Check check) throws UnreadableInputException, SettingException {
        Path document = pdf;
        return document == null
                ? BindPrep.plan(new PlanRequest(name, job, pile))
                : check.of(new CheckRequest(document, document.toString(), job, password, (done, total) -> {}));
    }
}
