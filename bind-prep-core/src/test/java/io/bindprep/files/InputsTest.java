package io.bindprep.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputsTest {
    @TempDir
    private Path folder;

    private Path file(String name) throws IOException {
        return Files.writeString(folder.resolve(name), name);
    }

    /** Hard and symbolic links as POSIX has them. */
    @Test
    void anInputIsKnownByAnyNameAndLink() throws IOException {
        Path job = file("job.yaml");
        Path hard = Files.createLink(folder.resolve("hard.yaml"), job);
        Path soft = Files.createSymbolicLink(folder.resolve("soft.yaml"), Path.of("job.yaml"));
        Path other = file("other.yaml");
        Inputs inputs = Inputs.NONE.plus("the job file", job);
        for (Path name : List.of(job, folder.resolve("./job.yaml"), hard, soft)) {
            assertThat(inputs.has(name)).as(name.toString()).isTrue();
            assertThatThrownBy(() -> WholeFile.write(name, "lost", inputs))
                    .hasMessageContaining("the job file")
                    .hasMessageContaining("name another file");
        }
        assertThat(inputs.has(other)).isFalse();
        assertThat(inputs.has(folder.resolve("none.yaml"))).isFalse();
        assertThat(job).hasContent("job.yaml");
    }

    @Test
    void ofThousandsEachIsKnownByItsLinksToo() throws IOException {
        List<Path> many =
                IntStream.range(0, 40).mapToObj(i -> folder.resolve(i + ".pdf")).toList();
        for (Path one : many) {
            Files.writeString(one, "book");
        }
        Inputs inputs = Inputs.pdfs(many);
        Path hard = Files.createLink(folder.resolve("hard.pdf"), many.get(30));
        Path soft = Files.createSymbolicLink(folder.resolve("soft.pdf"), many.get(31));
        assertThat(inputs.has(hard)).isTrue();
        assertThat(inputs.has(soft)).isTrue();
        assertThat(inputs.has(many.get(32))).isTrue();
        assertThat(inputs.has(file("other.pdf"))).isFalse();
    }

    /** Editors put a new file in the place of the old one; the name is still an input. */
    @Test
    void anInputThatWasReplacedIsStillOne() throws IOException {
        List<Path> many =
                IntStream.range(0, 40).mapToObj(i -> folder.resolve(i + ".pdf")).toList();
        for (Path one : many) {
            Files.writeString(one, "book");
        }
        Inputs inputs = Inputs.pdfs(many);
        assertThat(inputs.has(many.get(7))).isTrue();
        Files.delete(many.get(7));
        Files.writeString(many.get(7), "another book");
        assertThat(inputs.has(many.get(7))).isTrue();
    }

    @Test
    void oneKindCanBeLeftOutThoughAnotherNameProtectsIt() throws IOException {
        Path punch = file("bench.yaml");
        Inputs inputs = Inputs.NONE.plus("the punch file", punch);
        assertThat(inputs.without("the punch file").has(punch)).isFalse();
        assertThat(inputs.plus("the job file", punch).without("the punch file").has(punch))
                .isTrue();
    }

    @Test
    void aDeviceIsNeverProtected() {
        Path none = Path.of("/dev/null");
        assertThat(Inputs.NONE.plus("standard input", none).has(none)).isFalse();
    }
}
