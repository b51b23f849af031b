package io.bindprep.maven;

import java.io.File;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.jspecify.annotations.Nullable;

/**
 * A {@code <document>} of the POM: a file alone, or {@code <file>} with what holds for it only. Its {@code <job>} goes
 * before its {@code <jobFile>}, both before those of the goal. Public for Maven, which makes it.
 */
public final class Document {
    private @Nullable File file;
    private @Nullable PlexusConfiguration job;
    private @Nullable File jobFile;
    private @Nullable String password;
    private @Nullable File passwordFile;
    private @Nullable String serverId;

    /** As Maven makes it, for the elements in it. */
    public Document() {}

    Document(File file, @Nullable PlexusConfiguration job, @Nullable File jobFile) {
        this.file = file;
        this.job = job;
        this.jobFile = jobFile;
    }

    /** Setter that Maven calls for {@code <document>book.pdf</document>}. */
    public void set(File only) {
        file = only;
    }

    @Nullable
    File file() {
        return file;
    }

    /** The job of this document, over that of the goal. */
    JobSource over(JobSource goal, String name) {
        return job == null && jobFile == null ? goal : goal.under(job, jobFile, name);
    }

    /** The password of this document; where it has none, that of the goal. */
    PasswordSource over(PasswordSource goal) {
        PasswordSource own = new PasswordSource(password, passwordFile, serverId);
        return own.isSaid() ? own : goal;
    }

    /** Returns true if there is nothing but the file. */
    boolean plain() {
        return job == null && jobFile == null && !new PasswordSource(password, passwordFile, serverId).isSaid();
    }
}
