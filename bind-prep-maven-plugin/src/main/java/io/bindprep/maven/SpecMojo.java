package io.bindprep.maven;

import java.util.List;
import javax.inject.Inject;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProjectHelper;
import org.apache.maven.settings.crypto.SettingsDecrypter;

/**
 * Writes the job sheet of each PDF, NAME.job-sheet.pdf and what else is asked for: what to set, punch, gather and close. The sheet of a document that
 * must not be printed says so first; only <code>check</code> fails the build over it.
 */
@Mojo(name = "spec", defaultPhase = LifecyclePhase.PACKAGE, threadSafe = true, requiresProject = false)
public final class SpecMojo extends GoalMojo {
    /** Paper of a PDF sheet, at full size: a4 or letter. */
    @Parameter(property = "bindprep.paper", defaultValue = "a4")
    private String paper = "";

    /**
     * The forms of the sheet: pdf, to be printed; html, for a screen at the punch; json, the report with the run, for
     * programs.
     */
    @Parameter(property = "bindprep.sheetFormats", defaultValue = "pdf")
    private List<String> sheetFormats = List.of();

    /** As Maven makes it. */
    @Inject
    public SpecMojo(MavenProjectHelper projects, SettingsDecrypter decrypter) {
        super(projects, decrypter);
    }

    @Override
    Work work(OutputFolder folder, Engine engine) throws MojoExecutionException {
        return new SheetWork(folder, SheetWork.formats(sheetFormats), SheetWork.paper(paper), engine);
    }
}
