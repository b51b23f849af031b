package io.bindprep.maven;

import java.io.File;
import java.util.List;
import javax.inject.Inject;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProjectHelper;
import org.apache.maven.settings.crypto.SettingsDecrypter;
import org.jspecify.annotations.Nullable;

/**
 * Checks PDFs that will be printed, punched and bound, and fails the build where text or pictures would be punched
 * through or the book cannot be bound as planned. A build without PDFs passes with a warning.
 */
@Mojo(name = "check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true, requiresProject = false)
public final class CheckMojo extends GoalMojo {
    /**
     * The forms of the reports: text, json, html (with pictures), sarif (for code hosts), junit (for build servers), xjdf
     * (for print shops' systems), client and client-md (what the designer has to change), and summary (summary.md, one table
     * of all documents in Markdown). What is attached to the project tells no times, so that a build can be made again.
     */
    @Parameter(property = "bindprep.formats", defaultValue = "json,text")
    private List<String> formats = List.of();

    /**
     * A folder with the JSON reports of an earlier check, NAME.json for each PDF: each finding is told as new, worse, still
     * there or fixed since then. Not the folder of the new reports.
     */
    @Parameter(property = "bindprep.since")
    private @Nullable File since;

    /** Tells whether only findings that are new or worse since then fail the build; goes with <code>since</code>. */
    @Parameter(property = "bindprep.failOnNew", defaultValue = "false")
    private boolean failOnNew;

    /** As Maven makes it. */
    @Inject
    public CheckMojo(MavenProjectHelper projects, SettingsDecrypter decrypter) {
        super(projects, decrypter);
    }

    @Override
    Work work(OutputFolder folder, Engine engine) throws MojoExecutionException {
        if (since == null && failOnNew) {
            throw new MojoExecutionException("<failOnNew> (bindprep.failOnNew) goes with <since> (bindprep.since)");
        }
        EarlierReports earlier =
                since == null ? null : EarlierReports.of(since.toPath(), failOnNew, folder.directory());
        return new CheckWork(
                folder, CheckWork.formats(formats), engine, earlier, CheckWork.summary(formats), !attaches());
    }
}
