package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.artifact.Artifact;
import org.apache.maven.artifact.DefaultArtifact;
import org.apache.maven.artifact.handler.DefaultArtifactHandler;
import org.apache.maven.plugin.descriptor.PluginDescriptor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PluginIdentityTest {
    @TempDir
    private Path folder;

    @Test
    void aReleaseIsItsVersionWithThoseOfItsLibraries() {
        String plain = identity(artifact("plugin", "1.0", null), artifact("pdfbox", "3.0.8", null));
        assertThat(identity(artifact("pdfbox", "3.0.8", null), artifact("plugin", "1.0", null)))
                .isEqualTo(plain);
        assertThat(identity(artifact("plugin", "1.0", null), artifact("pdfbox", "3.0.9", null)))
                .isNotEqualTo(plain);
        assertThat(identity(
                        artifact("plugin", "1.0", null),
                        artifact("pdfbox", "3.0.8", null),
                        artifact("a-reader-the-pom-adds", "1", null)))
                .isNotEqualTo(plain);
    }

    @Test
    void aSnapshotIsItsBytes() throws Exception {
        Path jar = Files.writeString(folder.resolve("plugin.jar"), "built yesterday");
        String yesterday = identity(artifact("plugin", "1.0-SNAPSHOT", jar.toFile()));
        assertThat(identity(artifact("plugin", "1.0-SNAPSHOT", jar.toFile()))).isEqualTo(yesterday);
        Files.writeString(jar, "built today");
        assertThat(identity(artifact("plugin", "1.0-SNAPSHOT", jar.toFile())))
                .isNotNull()
                .isNotEqualTo(yesterday);
    }

    @Test
    void whatCannotBeToldIsNeverTheSame() {
        assertThat(identity(artifact("plugin", "1.0-SNAPSHOT", folder.toFile())))
                .isNull();
        assertThat(identity(artifact("plugin", "1.0-SNAPSHOT", null))).isNull();
        assertThat(PluginIdentity.of(new PluginDescriptor())).isNull();
    }

    private static Artifact artifact(String id, String version, File file) {
        Artifact artifact =
                new DefaultArtifact("g", id, version, "runtime", "jar", null, new DefaultArtifactHandler("jar"));
        artifact.setFile(file);
        return artifact;
    }

    private static String identity(Artifact... artifacts) {
        PluginDescriptor plugin = new PluginDescriptor();
        plugin.setGroupId("g");
        plugin.setArtifactId("plugin");
        plugin.setVersion("1");
        plugin.setArtifacts(List.of(artifacts));
        return PluginIdentity.of(plugin);
    }
}
