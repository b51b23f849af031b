package io.bindprep.maven;

import io.bindprep.files.Inputs;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.SummaryRow;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;

/** One execution of a goal: something is made of every document before the build may fail. */
final class GoalExecution {
    private final Work work;
    private final OutputFolder folder;
    private final UpToDate upToDate;
    private final Attachments attachments;
    private final Log log;
    private final List<String> errors = new ArrayList<>();
    private final List<String> failures = new ArrayList<>();
    private int notChecked;

    /** One document with all that the POM says of it, and the files besides that were read for it. */
    record Task(
            PdfInput document,
            JobSource source,
            JobSource.Asked asked,
            @Nullable String password,
            Inputs read) {
        CheckRequest request() {
            return new CheckRequest(document.file(), document.name(), asked.job(), password, (done, total) -> {});
        }

        @Override
        public String toString() {
            return "Task[" + document + "]";
        }
    }

    GoalExecution(Work work, OutputFolder folder, UpToDate upToDate, Attachments attachments, Log log) {
        this.work = work;
        this.folder = folder;
        this.upToDate = upToDate;
        this.attachments = attachments;
        this.log = log;
    }

    void run(List<Task> tasks) throws MojoExecutionException, MojoFailureException {
        for (int place = 0; place < tasks.size(); place++) {
            Task task = tasks.get(place);
            int before = errors.size();
            try {
                run(place, task);
            } catch (UnreadableInputException e) {
                errors.add(Wording.unreadable(task.document, e));
                work.add(place, unchecked(task, e));
                leaveNothing(task.document, e);
            } catch (SettingException e) {
                errors.add(
                        e.key().equals("since")
                                ? Wording.setting("<since> (bindprep.since)", null, e)
                                : task.source.wrong(e, task.asked.settings()));
                work.add(place, unchecked(task, e));
            } catch (IOException e) {
                errors.add(Wording.cannotWrite(task.document.name(), e));
                work.add(place, unchecked(task, e));
            } catch (RuntimeException | VirtualMachineError e) {
                // one document's trouble keeps no other from its answer
                errors.add(Wording.internal(task.document, e));
                work.add(place, unchecked(task, e));
                log.debug(e);
            }
            notChecked += errors.size() > before ? 1 : 0;
        }
        try {
            work.finish(tasks.size());
        } catch (IOException e) {
            errors.add(Wording.cannotWrite("the summary of all documents", e));
        }
        if (!errors.isEmpty()) {
            List<String> all = new ArrayList<>(errors);
            all.addAll(failures);
            throw new MojoExecutionException(ended(all, tasks));
        }
        if (!failures.isEmpty()) {
            throw new MojoFailureException(ended(failures, tasks));
        }
    }

    private String ended(List<String> messages, List<Task> tasks) {
        return Wording.together(messages) + "\n" + Wording.why(tasks.size(), notChecked, failures.size());
    }

    private void run(int place, Task task) throws UnreadableInputException, SettingException, IOException {
        PdfInput document = task.document;
        UpToDate.Key key = upToDate.key(document, work.settings(), task.asked, folder);
        Made earlier = upToDate.earlier(key);
        Made made = earlier;
        if (made == null) {
            PluginReaders.register();
            made = work.make(document, task.request().reading(folder.inputs()));
        }
        SummaryRow row = made.row();
        if (row != null) {
            work.add(place, row);
        }
        if (made.level() == Made.Level.BAD) {
            failures.add(made.message());
            return;
        }
        if (earlier == null) {
            say(made.level(), made.message());
            upToDate.remember(key, made, folder.inputs());
        } else {
            say(made.level(), Wording.unchanged(made.message()));
        }
        attachments.add(document, made.files());
    }

    private static SummaryRow unchecked(Task task, Throwable why) {
        PdfInput document = task.document;
        return SummaryRow.unchecked(document.portable(), document.name(), String.valueOf(why.getMessage()), Map.of());
    }

    private void say(Made.Level level, String message) {
        if (level == Made.Level.GOOD) {
            log.info(message);
        } else {
            log.warn(message);
        }
    }

    private void leaveNothing(PdfInput document, UnreadableInputException why) {
        try {
            work.unreadable(document, why);
        } catch (IOException e) {
            errors.add(Wording.cannotWrite(document.name(), e));
        }
    }
}
