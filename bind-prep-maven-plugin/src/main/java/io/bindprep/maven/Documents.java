package io.bindprep.maven;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
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
        Set<String> once = new HashSet<>();
        Set<String> shared = new HashSet<>();
        for (Path file : files) {
            if (!once.add(caseless(plainName(file)))) {
                shared.add(caseless(plainName(file)));
            }
        }
        List<PdfInput> documents = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Path file : files) {
            String wanted = plainName(file);
            if (shared.contains(caseless(wanted))) {
                wanted = withoutEnding(name(file)).replace('/', '_').replace(':', '_');
            }
            String report = wanted;
            for (int n = 2; !taken.add(caseless(report)); n++) {
                report = wanted + "-" + n;
            }
            documents.add(new PdfInput(file, name(file), report));
        }
        return documents;
    }

    private String name(Path file) {
        Path shown = file.startsWith(base) ? base.relativize(file) : file;
        return shown.toString().replace('\\', '/');
    }

    private static String plainName(Path file) {
        Path name = file.getFileName();
        return name == null ? "root" : withoutEnding(name.toString());
    }

    private static String withoutEnding(String name) {
        return caseless(name).endsWith(".pdf") ? name.substring(0, name.length() - 4) : name;
    }

    // reports must not overwrite each other on a file system that ignores case
    private static String caseless(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
