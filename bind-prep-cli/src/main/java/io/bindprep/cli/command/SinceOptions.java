package io.bindprep.cli.command;

import io.bindprep.check.Report;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.console.Choice;
import io.bindprep.cli.input.InputFile;
import io.bindprep.files.Inputs;
import io.bindprep.files.ReportNames;
import io.bindprep.problem.SettingException;
import io.bindprep.report.json.EarlierReport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} that compare with an earlier check. */
final class SinceOptions {
    private final OptionSpec since = Choice.of(
            Path.class,
            "--since",
            "OLD.json",
            "compare with the JSON report of an earlier check: each finding is new, worse, still there or"
                    + " fixed. For several files: a folder with one report each, NAME.json");

    private final OptionSpec failOnNew =
            Choice.flag("--fail-on-new", "fail only on findings that are new or worse since then; goes with --since");

    ArgGroupSpec group(int order) {
        return Choice.group(order, "Checking again", since, failOnNew);
    }

    boolean asked() {
        return since.getValue() != null;
    }

    /** Refuses what does not go together. */
    void check(CommandSpec command, boolean watched, int named) {
        Path earlier = since.getValue();
        if (earlier == null) {
            if (Choice.given(failOnNew)) {
                throw wrong(command, "--fail-on-new goes with --since");
            }
            return;
        }
        if (watched) {
            throw wrong(command, "--since goes without --watch");
        }
        if (named > 1 && !Files.isDirectory(earlier)) {
            throw wrong(command, "--since: several files need a folder of earlier reports, NAME.json for each");
        }
    }

    /**
     * A check that compares, or the check itself where no comparison is asked for.
     *
     * @throws SettingException where the earlier report of a single file cannot be read
     */
    Engine over(Engine engine, List<InputFile> files) throws SettingException {
        Path earlier = since.getValue();
        if (earlier == null) {
            return engine;
        }
        boolean newOnly = Choice.given(failOnNew);
        if (!Files.isDirectory(earlier)) {
            EarlierReport one = EarlierReport.read(earlier);
            return request -> one.compare(engine.check(request), newOnly);
        }
        Map<String, Path> reports = reports(earlier, files);
        return request -> {
            Report report = engine.check(request);
            Path file = reports.get(request.name());
            // without an earlier report nothing was found before
            return file == null || !Files.exists(file)
                    ? EarlierReport.none(request.name()).compare(report, newOnly)
                    : EarlierReport.read(file).compare(report, newOnly);
        };
    }

    /** Reports that are read, which no report is written over. */
    Inputs inputs(List<InputFile> files) {
        Path earlier = since.getValue();
        if (earlier == null) {
            return Inputs.NONE;
        }
        if (!Files.isDirectory(earlier)) {
            return Inputs.NONE.plus("the earlier report", earlier);
        }
        Inputs inputs = Inputs.NONE;
        for (Path file : reports(earlier, files).values()) {
            inputs = inputs.plus("the earlier report", file);
        }
        return inputs;
    }

    private static Map<String, Path> reports(Path folder, List<InputFile> files) {
        List<String> names = files.stream().map(InputFile::name).toList();
        List<String> stems = ReportNames.of(names);
        Map<String, Path> reports = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            reports.put(names.get(i), folder.resolve(stems.get(i) + ".json"));
        }
        return reports;
    }

    private static ParameterException wrong(CommandSpec command, String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
