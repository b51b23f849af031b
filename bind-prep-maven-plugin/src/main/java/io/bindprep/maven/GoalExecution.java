package io.bindprep.maven;

import io.bindprep.files.Inputs;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
        for (Task task : tasks) {
            int before = errors.size();
            try {
                run(task);
            } catch (UnreadableInputException e) {
                errors.add(Wording.unreadable(task.document, e));
                leaveNothing(task.document, e);
            } catch (SettingException e) {
                errors.add(
                        e.key().equals("since")
                                ? Wording.setting("<since> (bindprep.since)", null, e)
                                : task.source.wrong(e, task.asked.settings()));
            } catch (IOException e) {
                errors.add(Wording.cannotWrite(task.document, e));
            } catch (RuntimeException | VirtualMachineError e) {
                // one document's trouble keeps no other from its answer
                errors.add(Wording.internal(task.document, e));
                log.debug(e);
            }
            notChecked += errors.size() > before ? 1 : 0;
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

    private void run(Task task) throws UnreadableInputException, SettingException, IOException {
        PdfInput document = task.document;
        UpToDate.Key key = upToDate.key(document, work.settings(), task.asked, folder);
        Made made = upToDate.earlier(key);
        if (made != null) {
            say(made.level(), Wording.unchanged(made.message()));
        } else {
            ImageReaders.register();
            made = work.make(document, task.request().reading(folder.inputs()));
            if (made.level() == Made.Level.BAD) {
                failures.add(made.message());
                return;
            }
            say(made.level(), made.message());
            upToDate.remember(key, made);
        }
        attachments.add(document, made.files());
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
            errors.add(Wording.cannotWrite(document, e));
        }
    }
}
