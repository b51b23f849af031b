package io.bindprep.maven;

import io.bindprep.files.Inputs;
import io.bindprep.files.TextFile;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.settings.Server;
import org.apache.maven.settings.Settings;
import org.apache.maven.settings.building.SettingsProblem;
import org.apache.maven.settings.crypto.DefaultSettingsDecryptionRequest;
import org.apache.maven.settings.crypto.SettingsDecrypter;
import org.apache.maven.settings.crypto.SettingsDecryptionResult;
import org.jspecify.annotations.Nullable;

/** The one place where a POM says the password of encrypted PDFs, if any. */
record PasswordSource(
        @Nullable String password,
        @Nullable File file,
        @Nullable String server) {
    /** Source of the passwords in Maven's settings. */
    record Keys(Settings settings, SettingsDecrypter decrypter) {}

    boolean isSaid() {
        return password != null || file != null || server != null;
    }

    /** The password; null where none is said. */
    @Nullable
    String read(Path base, Keys keys) throws MojoExecutionException {
        if (Stream.of(password, file, server).filter(Objects::nonNull).count() > 1) {
            throw new MojoExecutionException(
                    "<password>, <passwordFile>, <serverId>: the password is said more than once"
                            + "\n  Keep one of them.");
        }
        if (file != null) {
            return firstLine(base.resolve(file.toPath()), file.getName());
        }
        return server == null ? password : ofServer(server, keys);
    }

    /** The file that it is read from, which is not written over. */
    Inputs inputs(Path base) {
        return file == null ? Inputs.NONE : Inputs.NONE.plus("the password file", base.resolve(file.toPath()));
    }

    private static String firstLine(Path path, String name) throws MojoExecutionException {
        try {
            String line = TextFile.read(path).lines().findFirst().orElse("");
            if (!line.isEmpty()) {
                return line;
            }
            throw new MojoExecutionException("<passwordFile> (bindprep.passwordFile): there is no password in the first"
                    + " line of " + name + "\n  Put it there, as text in UTF-8.");
        } catch (IOException e) {
            throw new MojoExecutionException(Wording.cannotRead("<passwordFile> (bindprep.passwordFile)", name, e), e);
        }
    }

    private static String ofServer(String id, Keys keys) throws MojoExecutionException {
        String named = "<serverId> (bindprep.serverId): ";
        Server server = keys.settings().getServer(id);
        if (server == null) {
            List<String> known = keys.settings().getServers().stream()
                    .map(Server::getId)
                    .sorted()
                    .toList();
            throw new MojoExecutionException(named + "the settings of Maven have no server \"" + id + "\"\n  "
                    + (known.isEmpty()
                            ? "They have none; add it to settings.xml."
                            : "Known: " + String.join(", ", known))
                    + (known.isEmpty() ? "" : "."));
        }
        SettingsDecryptionResult result = keys.decrypter().decrypt(new DefaultSettingsDecryptionRequest(server));
        String problem = result.getProblems().stream()
                .filter(p -> p.getSeverity() != SettingsProblem.Severity.WARNING)
                .map(SettingsProblem::getMessage)
                .findFirst()
                .orElse(null);
        if (problem != null) {
            throw new MojoExecutionException(named + "the password of the server \"" + id + "\" cannot be decrypted: "
                    + problem + "\n  Encrypt it again with this machine's master password.");
        }
        String password = result.getServer().getPassword();
        if (password == null || password.isEmpty()) {
            throw new MojoExecutionException(
                    named + "the server \"" + id + "\" has no password" + "\n  Add <password> to it in settings.xml.");
        }
        return password;
    }

    @Override
    public String toString() {
        return "PasswordSource[" + (isSaid() ? "said" : "none") + "]";
    }
}
