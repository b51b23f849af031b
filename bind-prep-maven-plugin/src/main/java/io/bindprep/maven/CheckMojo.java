package io.bindprep.maven;

import io.bindprep.BindPrep;
import java.io.File;
import java.util.List;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.shared.model.fileset.FileSet;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.jspecify.annotations.Nullable;

/**
 * Checks PDFs that will be printed, punched and bound, and fails the build where text or pictures would be punched
 * through or the book cannot be bound as planned. Without <code>documents</code> and <code>filesets</code> it checks the
 * PDFs under the build directory. A build without PDFs passes quietly.
 */
@Mojo(name = "check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true, requiresProject = false)
public final class CheckMojo extends AbstractMojo {
    /** The PDFs to check. One that is not there fails the build. */
    @Parameter(property = "bindprep.documents")
    private List<File> documents = List.of();

    /** Sets of PDFs to check, each with directory, includes and excludes. */
    @Parameter
    private List<FileSet> filesets = List.of();

    /**
     * The job, by the keys of a job file:
     * <code>&lt;job&gt;&lt;stock&gt;bond-20&lt;/stock&gt;&lt;boundEdge&gt;left&lt;/boundEdge&gt;&lt;/job&gt;</code>. What
     * it says goes before the job file.
     */
    @Parameter
    private @Nullable PlexusConfiguration job;

    /** The job as a file, YAML or JSON. */
    @Parameter(property = "bindprep.jobFile")
    private @Nullable File jobFile;

    /** The least severity that fails the build: error, warning or never. Goes before what the job says. */
    @Parameter(property = "bindprep.failOn")
    private @Nullable String failOn;

    /** Whether to check nothing. */
    @Parameter(property = "bindprep.skip", defaultValue = "false")
    private boolean skip;

    /** Whether a build in which there is no PDF to check fails. */
    @Parameter(property = "bindprep.failIfNoFiles", defaultValue = "false")
    private boolean failIfNoFiles;

    /**
     * The forms of the reports: text, json, html (with pictures), sarif (for code hosts), junit (for build servers), xjdf (for print shops'
     * systems).
     */
    @Parameter(property = "bindprep.formats", defaultValue = "json,text")
    private List<String> formats = List.of();

    /** Where the reports go: NAME.json, NAME.txt and so on for each PDF. */
    @Parameter(property = "bindprep.reportDirectory", defaultValue = "${project.build.directory}/bind-prep")
    @SuppressWarnings("NullAway.Init") // set by Maven
    private File reportDirectory;

    @Parameter(defaultValue = "${project.build.directory}", readonly = true, required = true)
    @SuppressWarnings("NullAway.Init") // set by Maven
    private File buildDirectory;

    @Parameter(defaultValue = "${basedir}", readonly = true)
    private @Nullable File baseDirectory;

    private final Engine engine;

    /** As Maven makes it. */
    public CheckMojo() {
        this(BindPrep::check);
    }

    CheckMojo(Engine engine) {
        this.engine = engine;
    }

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        if (skip) {
            getLog().info("skipped (bindprep.skip)");
            return;
        }
        JobSource source = new JobSource(job, jobFile, failOn);
        File base = baseDirectory == null ? new File("") : baseDirectory;
        ReportFiles reports = new ReportFiles(reportDirectory.toPath(), ReportFiles.formats(formats));
        new CheckRun(base.toPath().toAbsolutePath(), reports, source, engine, getLog())
                .check(documents(base), failIfNoFiles);
    }

    private List<PdfInput> documents(File base) {
        Documents all = new Documents(base.toPath());
        // Maven gives an empty list where nothing is said
        if (documents.isEmpty() && filesets.isEmpty()) {
            all.add(Documents.builtOnes(buildDirectory, reportDirectory));
        }
        documents.forEach(all::add);
        filesets.forEach(all::add);
        return all.inOrder();
    }
}
