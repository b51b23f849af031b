package io.bindprep.cli.output;

import io.bindprep.ReportFormat;
import io.bindprep.check.Report;
import io.bindprep.cli.input.InputFile;
import io.bindprep.files.Inputs;
import io.bindprep.files.ReportNames;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.RunSummary;
import io.bindprep.report.build.SummaryRow;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ReportContext;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The files that {@code --write} asks for: which report of which document goes where, and the summary of all. */
public final class WrittenReports implements ReportFiles {
    /** Summary to write once all is checked. */
    private record SummaryFile(Path file, RunSummary summary) {}

    private final Inputs protectedFiles;
    private final List<InputFile> inputs;
    private final List<String> names;
    private final String folder = InputFile.name(Path.of("").toAbsolutePath());
    private final List<List<ReportTargets.Target>> targets = new ArrayList<>();
    private final List<SummaryFile> summaries = new ArrayList<>();

    private WrittenReports(List<InputFile> inputs, Inputs read) {
        this.inputs = inputs;
        this.names = ReportNames.portable(inputs.stream().map(InputFile::name).toList(), folder);
        this.protectedFiles =
                Inputs.pdfs(inputs.stream().map(InputFile::file).toList()).plus(read);
    }

    /**
     * Reads what was asked for, before anything is checked.
     *
     * @param asked {@code FORMAT=FILE} or {@code DIR/}, each as it was typed
     * @param inputs the documents
     * @param read files besides that no report is written over
     * @throws IllegalArgumentException where that cannot be done; the message says which, why, and what would do
     */
    public static WrittenReports of(List<String> asked, List<InputFile> inputs, Inputs read) {
        WrittenReports reports = new WrittenReports(inputs, read);
        if (asked.isEmpty()) {
            inputs.forEach(input -> reports.targets.add(List.of()));
            return reports;
        }
        List<String> stems = ReportNames.of(inputs.stream().map(InputFile::name).toList());
        Map<Path, String> taken = new HashMap<>();
        for (String one : asked) {
            ReportTargets.summary(one).ifPresent(file -> {
                reports.check(one, file, taken);
                reports.summaries.add(new SummaryFile(file, new RunSummary()));
            });
        }
        for (int i = 0; i < inputs.size(); i++) {
            List<ReportTargets.Target> ofOne = new ArrayList<>();
            for (String one : asked) {
                for (ReportTargets.Target target : ReportTargets.of(one, stems.get(i), inputs.size() > 1)) {
                    reports.check(one, target.file(), taken);
                    ofOne.add(target);
                }
            }
            reports.targets.add(ofOne);
        }
        return reports;
    }

    private void check(String asked, Path file, Map<Path, String> taken) {
        Path whole = file.toAbsolutePath().normalize();
        String other = taken.put(whole, asked);
        if (other != null) {
            throw new IllegalArgumentException(asked + ": " + file + " is already written by " + other);
        }
        if (protectedFiles.has(file)) {
            throw new IllegalArgumentException(
                    asked + ": " + file + " is an input, which is never overwritten; name another file");
        }
        Path parent = whole.getParent();
        boolean ours = ReportTargets.folder(asked.substring(asked.indexOf('=') + 1));
        if (parent != null && !ours && !Files.isDirectory(parent)) {
            throw new IllegalArgumentException(asked + ": there is no folder " + parent);
        }
    }

    @Override
    public String option() {
        return "--write";
    }

    @Override
    public List<Unwritten> write(int input, CheckRequest request, Report report, Duration took)
            throws UnreadableInputException {
        List<Unwritten> failed = new ArrayList<>();
        for (ReportTargets.Target target : targets.get(input)) {
            put(target.file(), target.format().write(request, report, context(input, target, took)), failed);
        }
        summarize(input, failed, links -> SummaryRow.of(report, names.get(input), links));
        return failed;
    }

    @Override
    public List<Unwritten> unreadable(int input, String name, UnreadableInputException why) {
        List<Unwritten> failed = new ArrayList<>();
        for (ReportTargets.Target target : targets.get(input)) {
            put(target.file(), target.format().unreadable(name, why, context(input, target, Duration.ZERO)), failed);
        }
        String said = String.valueOf(why.getMessage());
        summarize(input, failed, links -> SummaryRow.unchecked(names.get(input), name, said, links));
        return failed;
    }

    @Override
    public void unchecked(int input, String name, String why) {
        summaries.forEach(s -> s.summary().add(input, SummaryRow.unchecked(names.get(input), name, why, Map.of())));
    }

    /** Writes the summaries once no more is checked; returns as {@link #write}. */
    public List<Unwritten> finish() {
        List<Unwritten> failed = new ArrayList<>();
        summaries.forEach(s -> put(s.file(), s.summary().text(inputs.size()), failed));
        return failed;
    }

    private ReportContext context(int input, ReportTargets.Target target, Duration took) {
        String pictures = targets.get(input).stream()
                .filter(other -> other.format() == ReportFormat.CLIENT)
                .map(other -> path(target.file(), other.file()))
                .findFirst()
                .orElse("");
        return new ReportContext(
                names.get(input), ReportNames.within(inputs.get(input).name(), folder), took, pictures);
    }

    private void summarize(int input, List<Unwritten> failed, Function<Map<String, String>, SummaryRow> row) {
        List<Path> missing = failed.stream().map(Unwritten::file).toList();
        for (SummaryFile one : summaries) {
            Map<String, String> links = new LinkedHashMap<>();
            for (ReportTargets.Target target : targets.get(input)) {
                String path = path(one.file(), target.file());
                if (!missing.contains(target.file()) && !path.isEmpty()) {
                    links.put(target.format().id(), path);
                }
            }
            one.summary().add(input, row.apply(links));
        }
    }

    /** Path of one file from another's folder, with slashes; empty where there is none, as between two drives. */
    private static String path(Path from, Path to) {
        Path parent = from.toAbsolutePath().normalize().getParent();
        try {
            return parent == null
                    ? ""
                    : InputFile.name(parent.relativize(to.toAbsolutePath().normalize()));
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    private void put(Path file, String content, List<Unwritten> failed) {
        try {
            Path parent = file.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            WholeFile.write(file, content, protectedFiles);
        } catch (IOException e) {
            failed.add(new Unwritten(file, e));
        }
    }
}
