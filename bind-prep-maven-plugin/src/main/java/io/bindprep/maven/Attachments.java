package io.bindprep.maven;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.maven.project.MavenProject;
import org.apache.maven.project.MavenProjectHelper;
import org.jspecify.annotations.Nullable;

/** Files made of the documents as artifacts of the project, where that is asked for. */
final class Attachments {
    private final @Nullable MavenProject project;
    private final MavenProjectHelper helper;
    private final Set<String> taken = new HashSet<>();

    /** Attaches to a project; to nothing where it is null. */
    Attachments(@Nullable MavenProject project, MavenProjectHelper helper) {
        this.project = project;
        this.helper = helper;
    }

    /** {@code book.json} becomes the classifier {@code book-check}, {@code book.proof.pdf} is {@code book-proof}. */
    void add(PdfInput document, List<Path> files) {
        if (project == null) {
            return;
        }
        for (Path file : files) {
            String ending =
                    file.getFileName().toString().substring(document.report().length() + 1);
            int point = ending.lastIndexOf('.');
            String type = ending.substring(point + 1);
            // characters that a repository takes in a file's name
            String wanted = document.report().replaceAll("[^A-Za-z0-9._-]", "_") + "-"
                    + (point < 0 ? "check" : ending.substring(0, point));
            String classifier = wanted;
            for (int n = 2; !taken.add(classifier + ":" + type); n++) {
                classifier = wanted + "-" + n;
            }
            helper.attachArtifact(project, type, classifier, file.toFile());
        }
    }
}
