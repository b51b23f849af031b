package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.project.MavenProject;
import org.apache.maven.project.MavenProjectHelper;
import org.junit.jupiter.api.Test;

class AttachmentsTest {
    private final List<String> attached = new ArrayList<>();

    private Attachments to(MavenProject project) {
        return new Attachments(project, new Recorder());
    }

    private static PdfInput input(String report) {
        return new PdfInput(Path.of(report + ".pdf"), report + ".pdf", report, null);
    }

    private static List<Path> files(String... names) {
        return List.of(names).stream().map(Path::of).toList();
    }

    @Test
    void whatIsMadeIsToldApartByClassifierAndType() {
        Attachments attachments = to(new MavenProject());
        attachments.add(input("book"), files("out/book.json", "out/book.txt", "out/book.junit.xml"));
        attachments.add(input("book"), files("out/book.job-sheet.pdf", "out/book.proof.pdf"));
        assertThat(attached)
                .containsExactly(
                        "book-check json", "book-check txt", "book-junit xml", "book-job-sheet pdf", "book-proof pdf");
    }

    @Test
    void aNameThatARepositoryWouldNotTakeIsReplacedAndStillItsOwn() {
        Attachments attachments = to(new MavenProject());
        attachments.add(input("größe (1)"), files("größe (1).json"));
        attachments.add(input("größe [1]"), files("größe [1].json", "größe [1].txt"));
        assertThat(attached).containsExactly("gr__e__1_-check json", "gr__e__1_-check-2 json", "gr__e__1_-check txt");
    }

    @Test
    void withoutAProjectNothingIs() {
        to(null).add(input("book"), files("book.json"));
        assertThat(attached).isEmpty();
    }

    private final class Recorder implements MavenProjectHelper {
        @Override
        public void attachArtifact(MavenProject project, String type, String classifier, File file) {
            attached.add(classifier + " " + type);
        }

        @Override
        public void attachArtifact(MavenProject project, File file, String classifier) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void attachArtifact(MavenProject project, String type, File file) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void addResource(MavenProject project, String directory, List<String> includes, List<String> excludes) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void addTestResource(
                MavenProject project, String directory, List<String> includes, List<String> excludes) {
            throw new UnsupportedOperationException();
        }
    }
}
