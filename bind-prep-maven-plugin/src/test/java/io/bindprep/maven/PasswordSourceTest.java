package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.files.Inputs;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.settings.Proxy;
import org.apache.maven.settings.Server;
import org.apache.maven.settings.Settings;
import org.apache.maven.settings.building.DefaultSettingsProblem;
import org.apache.maven.settings.building.SettingsProblem;
import org.apache.maven.settings.crypto.SettingsDecrypter;
import org.apache.maven.settings.crypto.SettingsDecryptionResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PasswordSourceTest {
    @TempDir
    private Path base;

    @Test
    void fromEachPlace() throws Exception {
        Files.writeString(base.resolve("secret.txt"), "from a file\nnot this\n");
        assertThat(read(null, null, null)).isNull();
        assertThat(read("in the pom", null, null)).isEqualTo("in the pom");
        assertThat(read(null, "secret.txt", null)).isEqualTo("from a file");
        assertThat(read(null, null, "prepress")).isEqualTo("of the server, decrypted");
    }

    @Test
    void whatIsWrongSaysWhatToDo() throws Exception {
        Files.writeString(base.resolve("empty.txt"), "\n");
        assertWrong("said more than once", "once", "empty.txt", null);
        assertWrong("first line of empty.txt", null, "empty.txt", null);
        assertWrong("cannot read missing.txt", null, "missing.txt", null);
        assertWrong("no server \"preppress\"\n  Known: bare, broken, prepress.", null, null, "preppress");
        assertWrong("\"bare\" has no password", null, null, "bare");
        assertWrong("cannot be decrypted: no master password", null, null, "broken");
    }

    @Test
    void isNeverShown() {
        PasswordSource source = new PasswordSource("secret", null, null);
        assertThat(source.toString()).doesNotContain("secret");
        PdfInput input = new PdfInput(base.resolve("a.pdf"), "a.pdf", "a", null);
        assertThat(new GoalExecution.Task(input, null, null, "secret", Inputs.NONE).toString())
                .doesNotContain("secret");
    }

    @Test
    void aDocumentsOwnGoesBeforeThatOfTheGoal() throws Exception {
        PasswordSource goal = new PasswordSource("goal's", null, null);
        assertThat(new Document(new File("a.pdf"), null, null).over(goal)).isSameAs(goal);
    }

    private void assertWrong(String part, String password, String file, String server) {
        assertThatThrownBy(() -> read(password, file, server))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining(part);
    }

    private String read(String password, String file, String server) throws MojoExecutionException {
        Settings settings = new Settings();
        settings.addServer(server("prepress", "{encrypted}"));
        settings.addServer(server("bare", null));
        settings.addServer(server("broken", "{broken}"));
        return new PasswordSource(password, file == null ? null : new File(file), server)
                .read(base, new PasswordSource.Keys(settings, decrypter()));
    }

    private static Server server(String id, String password) {
        Server server = new Server();
        server.setId(id);
        server.setPassword(password);
        return server;
    }

    /** As Maven's: a copy of the server, decrypted, or a problem. */
    private static SettingsDecrypter decrypter() {
        return request -> {
            Server server = request.getServers().get(0).clone();
            boolean broken = "{broken}".equals(server.getPassword());
            if ("{encrypted}".equals(server.getPassword())) {
                server.setPassword("of the server, decrypted");
            }
            return new SettingsDecryptionResult() {
                @Override
                public Server getServer() {
                    return server;
                }

                @Override
                public List<Server> getServers() {
                    return List.of(server);
                }

                @Override
                public Proxy getProxy() {
                    return null;
                }

                @Override
                public List<Proxy> getProxies() {
                    return List.of();
                }

                @Override
                public List<SettingsProblem> getProblems() {
                    return broken
                            ? List.of(new DefaultSettingsProblem(
                                    "no master password", SettingsProblem.Severity.ERROR, "settings", 1, 1, null))
                            : List.of();
                }
            };
        };
    }
}
