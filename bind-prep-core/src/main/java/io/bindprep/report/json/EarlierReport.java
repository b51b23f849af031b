package io.bindprep.report.json;

import io.bindprep.check.Earlier;
import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON report of an earlier check, read to compare a later check with it. The file may be any file: its size, depth and
 * number of findings are bounded, and what is not a report of ours is refused.
 */
public final class EarlierReport {
    private static final String KEY = "since";
    private static final int MOST_BYTES = 16 * 1024 * 1024;

    private final String name;
    private final @Nullable JsonNode job;
    private final Earlier earlier;

    EarlierReport(String name, @Nullable JsonNode job, Earlier earlier) {
        this.name = name;
        this.job = job;
        this.earlier = earlier;
    }

    /**
     * Reads a report that {@code check} wrote as JSON.
     *
     * @throws SettingException where it cannot be read or is not a report of a PDF in this version's format, by the key
     *     {@code since}
     */
    public static EarlierReport read(Path file) throws SettingException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw wrong(
                        file.toString(),
                        "is larger than " + MOST_BYTES / 1024 / 1024 + " MiB",
                        "Name the JSON report itself.");
            }
            return of(bytes, file.toString());
        } catch (IOException e) {
            throw new SettingException(
                    KEY,
                    file.toString(),
                    file + " cannot be read: "
                            + (Files.exists(file) ? "the system refuses it" : "there is no such file"),
                    "Name a report that check wrote as JSON.",
                    List.of());
        }
    }

    /**
     * Report for a document that was not checked before: everything is new.
     *
     * @param document its name
     */
    public static EarlierReport none(String document) {
        return new EarlierReport(document, null, new Earlier(document, "", 0, List.of()));
    }

    /**
     * The report of these bytes.
     *
     * @param name how messages call it
     */
    static EarlierReport of(byte[] bytes, String name) throws SettingException {
        return new EarlierReader(name, new String(bytes, StandardCharsets.UTF_8)).read();
    }

    /**
     * A report compared with this one: each of its findings says what became of it.
     *
     * @param onlyNewFails whether a finding that was there before, no better than now, fails nothing
     */
    public Report compare(Report now, boolean onlyNewFails) {
        return now.since(earlier, Objects.equals(withoutAcceptances(tree(now)), job), onlyNewFails);
    }

    static @Nullable JsonNode withoutAcceptances(@Nullable JsonNode job) {
        if (job instanceof ObjectNode object) {
            object.remove("accept");
        }
        return job;
    }

    private static JsonNode tree(Report report) {
        return EarlierReader.MAPPER.readTree(JsonReport.job(report.job()));
    }

    @Override
    public String toString() {
        return name;
    }

    static SettingException wrong(String name, String what, String remedy) {
        return new SettingException(KEY, name, name + " " + what, remedy, List.of());
    }
}
