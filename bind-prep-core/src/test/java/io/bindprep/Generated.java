package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files of this repository that are made from the code: compared with it, or with a property written anew. */
public final class Generated {
    private static final boolean REGENERATE = System.getProperty("bindprep.regenerate") != null;

    private Generated() {}

    /** The file as it is in the repository. */
    public static String read(String path) throws IOException {
        return Files.readString(Path.of(System.getProperty("bindprep.root")).resolve(path));
    }

    /** Holds the file, by its path in the repository, against what it should be; both end their lines with a line feed. */
    public static void compare(String path, String content) throws IOException {
        Path file = Path.of(System.getProperty("bindprep.root")).resolve(path);
        if (REGENERATE) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, content);
        }
        assertThat(file).as(path + " is made from the code").exists();
        assertThat(Files.readString(file).replace("\r\n", "\n"))
                .as(path + " is made from the code; to make it anew:"
                        + " mvn -q -pl bind-prep-core test -Dtest='FindingKindsTest,*SchemaTest,PublicApiTest'"
                        + " -Dbindprep.regenerate")
                .isEqualTo(content);
    }
}
