package io.bindprep.maven;

import io.bindprep.BindPrep;
import io.bindprep.files.Inputs;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;
import org.apache.maven.project.MavenProjectHelper;
import org.apache.maven.settings.Settings;
import org.apache.maven.settings.crypto.SettingsDecrypter;
import org.apache.maven.shared.model.fileset.FileSet;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.jspecify.annotations.Nullable;

/** Parameters that the goals share: which documents, which job, where to. */
abstract class GoalMojo extends AbstractMojo {
    private static final String BASE = "${project.basedir}";

    /**
     * The PDFs, each as a path, <code>&lt;document&gt;target/book.pdf&lt;/document&gt;</code>, or as a <code>&lt;document&gt;</code>
     * with <code>&lt;file&gt;</code> and what holds for it alone: <code>&lt;job&gt;</code>, <code>&lt;jobFile&gt;</code>,
     * <code>&lt;password&gt;</code>, <code>&lt;passwordFile&gt;</code>, <code>&lt;serverId&gt;</code>. One that is not
     * there fails the build. Without <code>documents</code> and <code>filesets</code>: every PDF under the build
     * directory, but those of tests and those of this plugin.
     */
    @Parameter(property = "bindprep.documents")
    private List<Document> documents = List.of();

    /** Sets of PDFs, each with directory, includes and excludes. */
    @Parameter
    private List<FileSet> filesets = List.of();

    /**
     * The job, by the keys of a job file:
     * <code>&lt;job&gt;&lt;stock&gt;bond-20&lt;/stock&gt;&lt;bindingEdge&gt;left&lt;/bindingEdge&gt;&lt;/job&gt;</code>. What
     * it says goes before the job file, and what a document's own job says before both.
     */
    @Parameter
    private @Nullable PlexusConfiguration job;

    /** The job as a file, YAML or JSON. */
    @Parameter(property = "bindprep.jobFile")
    private @Nullable File jobFile;

    /** The least severity of a finding that fails a check: error, warning or never. Goes before what any job says. */
    @Parameter(property = "bindprep.failOn")
    private @Nullable String failOn;

    /** The password of encrypted PDFs. It shows in the POM and in <code>mvn -X</code>: a server's does not. */
    @Parameter(property = "bindprep.password")
    private @Nullable String password;

    /** A file whose first line is the password of encrypted PDFs. */
    @Parameter(property = "bindprep.passwordFile")
    private @Nullable File passwordFile;

    /** The server of Maven's settings whose password, encrypted or not, is that of encrypted PDFs. */
    @Parameter(property = "bindprep.serverId")
    private @Nullable String serverId;

    /** Tells whether to do nothing. */
    @Parameter(property = "bindprep.skip", defaultValue = "false")
    private boolean skip;

    /**
     * Tells whether a build in which there is no PDF fails; otherwise the log warns. Unless said, true where
     * <code>documents</code> or <code>filesets</code> are given, else false.
     */
    @Parameter(property = "bindprep.failIfNoFiles")
    private @Nullable Boolean failIfNoFiles;

    /**
     * Tells whether a document is looked at again although nothing changed since an earlier build in which it failed nothing:
     * the document, its job, the settings of the goal, the plugin and the files made of it.
     */
    @Parameter(property = "bindprep.force", defaultValue = "false")
    private boolean force;

    /**
     * Tells whether what is made is attached to the project, to be installed and deployed with it. The classifier is the PDF's
     * name with <code>-check</code>, <code>-junit</code>, <code>-job-sheet</code> or <code>-proof</code>.
     */
    @Parameter(property = "bindprep.attach", defaultValue = "false")
    private boolean attach;

    /** Folder for everything that is made: NAME.json, NAME.job-sheet.pdf, NAME.proof.pdf and so on for each PDF. */
    @Parameter(property = "bindprep.reportDirectory", defaultValue = "${project.build.directory}/bind-prep")
    @SuppressWarnings("NullAway.Init") // set by Maven
    private File reportDirectory;

    @Parameter(defaultValue = "${project.build.directory}", readonly = true, required = true)
    @SuppressWarnings("NullAway.Init") // set by Maven
    private File buildDirectory;

    @Parameter(defaultValue = "${basedir}", readonly = true)
    private @Nullable File baseDirectory;

    @Parameter(defaultValue = "${project}", readonly = true)
    private @Nullable MavenProject project;

    @Parameter(defaultValue = "${settings}", readonly = true, required = true)
    @SuppressWarnings("NullAway.Init") // set by Maven
    private Settings settings;

    @Parameter(defaultValue = "${mojoExecution}", readonly = true, required = true)
    @SuppressWarnings("NullAway.Init") // set by Maven
    private MojoExecution execution;

    private final MavenProjectHelper projects;
    private final SettingsDecrypter decrypter;

    GoalMojo(MavenProjectHelper projects, SettingsDecrypter decrypter) {
        this.projects = projects;
        this.decrypter = decrypter;
    }

    /** Work of this goal on each document. */
    abstract Work work(OutputFolder folder, Engine engine) throws MojoExecutionException;

    @Override
    public final void execute() throws MojoExecutionException, MojoFailureException {
        if (skip) {
            getLog().info("skipped (bindprep.skip)");
            return;
        }
        KnownParameters.check(execution, project);
        File here = baseDirectory == null ? new File("") : baseDirectory;
        Path base = here.toPath().toAbsolutePath().normalize();
        BuildChecks checks = BuildChecks.of(getPluginContext(), BindPrep::check);
        List<GoalExecution.Task> tasks = tasks(base, checks);
        OutputFolder folder = new OutputFolder(base, real(reportDirectory, base), inputs(tasks));
        Work work = work(folder, request -> checks.check(request, getLog()));
        if (tasks.isEmpty()) {
            noFiles(base);
            return;
        }
        new GoalExecution(work, folder, upToDate(base), new Attachments(attach ? project : null, projects), getLog())
                .run(tasks);
    }

    /** Returns true if what is made goes out with the project. */
    boolean attaches() {
        return attach;
    }

    private void noFiles(Path base) throws MojoFailureException {
        boolean named = !documents.isEmpty() || !filesets.isEmpty();
        List<FileSet> looked = named ? filesets : List.of(builtOnes(base));
        String message = Wording.noFiles(
                looked.stream().map(set -> Documents.shown(set, base)).toList());
        if (failIfNoFiles == null ? named : failIfNoFiles) {
            throw new MojoFailureException(message);
        }
        if (project != null && !project.getModules().isEmpty()) {
            // a parent builds nothing itself
            getLog().info(message);
        } else {
            getLog().warn(message);
        }
    }

    private FileSet builtOnes(Path base) {
        return Documents.builtOnes(real(buildDirectory, base), real(reportDirectory, base));
    }

    private List<GoalExecution.Task> tasks(Path base, BuildChecks checks) throws MojoExecutionException {
        JobSource source = new JobSource(job, jobFile, failOn);
        // a wrong job is told of even where there is nothing to check yet
        JobSource.Asked asked = source.read(base);
        PasswordSource passwords = new PasswordSource(password, passwordFile, serverId);
        PasswordSource.Keys keys = new PasswordSource.Keys(settings, decrypter);
        List<GoalExecution.Task> tasks = new ArrayList<>();
        for (PdfInput input : inputs(base)) {
            Document own = input.document();
            JobSource itsSource = own == null ? source : own.over(source, input.name());
            PasswordSource itsPassword = own == null ? passwords : own.over(passwords);
            tasks.add(new GoalExecution.Task(
                    input,
                    itsSource,
                    checks.known(itsSource == source ? asked : itsSource.read(base)),
                    itsPassword.read(base, keys),
                    itsPassword.inputs(base)));
        }
        return tasks;
    }

    private static Inputs inputs(List<GoalExecution.Task> tasks) {
        Inputs inputs =
                Inputs.pdfs(tasks.stream().map(task -> task.document().file()).toList());
        for (GoalExecution.Task task : tasks) {
            inputs = inputs.plus(task.asked().inputs()).plus(task.read());
        }
        return inputs;
    }

    private List<PdfInput> inputs(Path base) throws MojoExecutionException {
        Documents all = new Documents(base);
        // Maven gives an empty list where nothing is said
        if (documents.isEmpty() && filesets.isEmpty()) {
            all.add(builtOnes(base));
        }
        for (Document document : documents) {
            all.add(document);
        }
        filesets.forEach(all::add);
        return all.inOrder();
    }

    private UpToDate upToDate(Path base) {
        return new UpToDate(
                real(buildDirectory, base).resolve("bind-prep/.made"),
                execution.getGoal() + " " + execution.getExecutionId(),
                force ? null : PluginIdentity.of(execution.getMojoDescriptor().getPluginDescriptor()));
    }

    // without a POM Maven leaves its own expression in the path
    private static Path real(File directory, Path base) {
        String path = directory.getPath();
        int at = path.indexOf(BASE);
        return at < 0 ? directory.toPath() : base.resolve(path.substring(at + BASE.length() + 1));
    }
}
