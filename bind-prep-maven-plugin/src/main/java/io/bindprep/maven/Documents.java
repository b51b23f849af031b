package io.bindprep.maven;

import io.bindprep.files.ReportNames;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.maven.shared.model.fileset.FileSet;
import org.apache.maven.shared.model.fileset.util.FileSetManager;

/** Which PDFs a goal is about, in an order that no file system decides. */
final class Documents {
    private final Path base;
    private final Set<Path> files = new TreeSet<>();

    Documents(Path base) {
        this.base = base.toAbsolutePath().normalize();
    }

    /** A file that is named, there or not. */
    Documents add(File file) {
        files.add(base.resolve(file.toPath()).normalize());
        return this;
    }

    /** What a file set finds; nothing where its directory is missing. A relative directory is one of the project's. */
    Documents add(FileSet set) {
        Path directory = set.getDirectory() == null ? base : base.resolve(set.getDirectory());
        if (directory.toFile().isDirectory()) {
            // the manager would resolve a relative one against the process's folder, not the project's
            set.setDirectory(directory.toString());
            for (String found : new FileSetManager().getIncludedFiles(set)) {
                files.add(directory.resolve(found).normalize());
            }
        }
        return this;
    }

    /** The PDFs a build makes: those under its output directory, but neither tests' nor our own. */
    static FileSet builtOnes(File buildDirectory, File reports) {
        FileSet set = new FileSet();
        set.setDirectory(buildDirectory.getPath());
        set.setIncludes(List.of("**/*.pdf", "**/*.PDF"));
        List<String> excludes = new ArrayList<>(List.of("test-classes/**", "it/**"));
        Path own = buildDirectory.toPath().relativize(reports.toPath());
        if (!own.startsWith("..")) {
            excludes.add(own.toString().replace('\\', '/') + "/**");
        }
        set.setExcludes(excludes);
        return set;
    }

    /** In the order of their paths, each with a report name of its own. */
    List<PdfInput> inOrder() {
        List<Path> inOrder = List.copyOf(files);
        List<String> names = inOrder.stream().map(this::name).toList();
        List<String> reports = ReportNames.of(names);
        return IntStream.range(0, inOrder.size())
                .mapToObj(i -> new PdfInput(inOrder.get(i), names.get(i), reports.get(i)))
                .toList();
    }

    private String name(Path file) {
        Path shown = file.startsWith(base) ? base.relativize(file) : file;
        return shown.toString().replace('\\', '/');
    }
}
