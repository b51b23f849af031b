package io.bindprep.maven;

import io.bindprep.files.ReportNames;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.wording.Printable;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.shared.model.fileset.FileSet;
import org.apache.maven.shared.model.fileset.util.FileSetManager;
import org.jspecify.annotations.Nullable;

/** Search for the PDFs a goal is about, in an order that no file system decides. */
final class Documents {
    private final Path base;
    private final List<Named> all = new ArrayList<>();

    private record Named(Path file, @Nullable Document document) {}

    Documents(Path base) {
        this.base = base.toAbsolutePath().normalize();
    }

    /** One that is named, there or not. The same file twice is two documents where one says more than the file. */
    Documents add(Document document) throws MojoExecutionException {
        File file = document.file();
        if (file == null) {
            throw new MojoExecutionException(
                    "<documents>: a <document> names no file\n  Give it <file>, the path of a PDF.");
        }
        if (file.getPath().indexOf('*') >= 0) {
            throw new MojoExecutionException("<documents>: " + file.getPath() + " is a pattern, not a file"
                    + "\n  Put it into <filesets>, as an <include> of a <fileset> with its <directory>.");
        }
        Path path = base.resolve(file.toPath()).normalize();
        Named named = new Named(path, document.plain() ? null : document);
        if (!all.contains(named)) {
            all.add(named);
        }
        return this;
    }

    /** Files that a file set finds beyond those named; none where its directory is missing. A relative one is the project's. */
    Documents add(FileSet set) {
        Path directory = set.getDirectory() == null ? base : base.resolve(set.getDirectory());
        if (directory.toFile().isDirectory()) {
            // the manager would resolve a relative one against the process's folder, not the project's
            set.setDirectory(directory.toString());
            for (String found : new FileSetManager().getIncludedFiles(set)) {
                Path file = directory.resolve(found).normalize();
                if (all.stream().noneMatch(named -> named.file.equals(file))) {
                    all.add(new Named(file, null));
                }
            }
        }
        return this;
    }

    /** The PDFs a build makes: those under its output directory, but neither tests' nor our own. */
    static FileSet builtOnes(Path build, Path reports) {
        FileSet set = new FileSet();
        set.setDirectory(build.toString());
        set.setIncludes(List.of("**/*.pdf", "**/*.PDF"));
        // the last of them is where Maven 4 keeps copies of what is attached
        List<String> excludes = new ArrayList<>(List.of("test-classes/**", "it/**", "project-local-repo/**"));
        // wherever another execution may have put them
        excludes.add("**/*" + SheetWork.ending(SheetFormat.PDF));
        excludes.add("**/*" + ProofWork.ENDING);
        if (reports.startsWith(build) && !reports.equals(build)) {
            excludes.add(build.relativize(reports).toString().replace('\\', '/') + "/**");
        }
        set.setExcludes(excludes);
        return set;
    }

    /** Folder and patterns of a file set, for the log. */
    static String shown(FileSet set, Path base) {
        Path directory = set.getDirectory() == null ? base : base.resolve(set.getDirectory());
        Path folder = directory.startsWith(base) && !directory.equals(base) ? base.relativize(directory) : directory;
        List<String> includes = set.getIncludes().isEmpty() ? List.of("**") : set.getIncludes();
        return folder.toString().replace('\\', '/')
                + (directory.toFile().isDirectory() ? "" : " (there is no such folder)")
                + ": " + String.join(", ", includes)
                + (set.getExcludes().isEmpty() ? "" : " without " + String.join(", ", set.getExcludes()));
    }

    /** In the order of their paths, each with a report name of its own. */
    List<PdfInput> inOrder() {
        List<Named> inOrder =
                all.stream().sorted(Comparator.comparing(Named::file)).toList();
        List<String> names = inOrder.stream().map(named -> name(named.file)).toList();
        List<String> reports = ReportNames.of(names);
        List<String> portable = ReportNames.portable(names, base.toString().replace('\\', '/'));
        return IntStream.range(0, inOrder.size())
                .mapToObj(i -> new PdfInput(
                        inOrder.get(i).file, names.get(i), reports.get(i), portable.get(i), inOrder.get(i).document))
                .toList();
    }

    private String name(Path file) {
        Path shown = file.startsWith(base) ? base.relativize(file) : file;
        // a name that would turn or wipe the lines of a log, or break them
        return Printable.with("_", shown.toString().replace('\\', '/'));
    }
}
