package io.bindprep.maven;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.maven.artifact.Artifact;
import org.apache.maven.plugin.descriptor.PluginDescriptor;
import org.jspecify.annotations.Nullable;

/** Identity of this plugin, with the libraries that a POM may have exchanged or added. */
final class PluginIdentity {
    private PluginIdentity() {}

    /** Every artifact with its version, and with its bytes where one version has many; null where they cannot be told. */
    static @Nullable String of(PluginDescriptor plugin) {
        if (plugin.getArtifacts() == null) {
            return null;
        }
        List<String> parts = new ArrayList<>();
        for (Artifact artifact : plugin.getArtifacts()) {
            String bytes = "";
            if (artifact.isSnapshot()) {
                File file = artifact.getFile();
                if (file == null || !file.isFile()) {
                    return null;
                }
                try {
                    bytes = Digests.of(file.toPath());
                } catch (IOException e) {
                    return null;
                }
            }
            parts.add(artifact.getId() + " " + bytes);
        }
        Collections.sort(parts);
        return plugin.getId() + "\n" + String.join("\n", parts);
    }
}
