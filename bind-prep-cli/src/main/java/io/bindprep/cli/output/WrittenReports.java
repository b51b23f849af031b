package io.bindprep.cli.output;

import io.bindprep.ReportFormat;
import io.bindprep.check.Report;
import io.bindprep.cli.input.InputFile;
import io.bindprep.files.Inputs;
import io.bindprep.files.ReportNames;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The files that {@code --write} asks for: which report of which document goes where. */
public final class WrittenReports implements ReportFiles {
    private static final String NAME = "{name}";

    /** One report to write. */
    private record Target(ReportFormat format, Path file) {}

    private final Inputs protectedFiles;
    private final List<List<Target>> targets = new ArrayList<>();

    private WrittenReports(List<InputFile> inputs, Inputs read) {
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
        for (int i = 0; i < inputs.size(); i++) {
            List<Target> ofOne = new ArrayList<>();
            for (String one : asked) {
                for (Target target : targets(one, stems.get(i), inputs.size() > 1)) {
                    reports.check(one, target.file(), taken);
                    ofOne.add(target);
                }
            }
            reports.targets.add(ofOne);
        }
        return reports;
    }

    private static List<Target> targets(String asked, String stem, boolean several) {
        int equals = asked.indexOf('=');
        if (equals < 0 && !folder(asked)) {
            Optional<ReportFormat> byEnding = byEnding(asked);
            if (byEnding.isPresent()) {
                return targets(byEnding.get().id() + "=" + asked, stem, several);
            }
        }
        if (equals < 0) {
            if (!folder(asked)) {
                throw new IllegalArgumentException(asked
                        + ": neither FORMAT=FILE, nor a file with a format's ending, nor a folder (which ends in / where it is not there yet); formats: "
                        + String.join(", ", ReportFormat.ids()));
            }
            return List.of(ReportFormat.values()).stream()
                    .map(f -> new Target(f, Path.of(asked, stem + f.ending())))
                    .toList();
        }
        String id = asked.substring(0, equals);
        ReportFormat format = ReportFormat.of(id)
                .orElseThrow(() -> new IllegalArgumentException(asked + ": no format is called \"" + id
                        + "\"; formats: " + String.join(", ", ReportFormat.ids())));
        String file = asked.substring(equals + 1);
        if (file.isEmpty()) {
            throw new IllegalArgumentException(asked + ": say which file, as in " + id + "=book" + format.ending());
        }
        Optional<ReportFormat> other = byEnding(file);
        if (format == ReportFormat.CLIENT && !folder(file)) {
            // the one report in two forms, told apart by the ending
            format = file.toLowerCase(Locale.ROOT).endsWith(".md") ? ReportFormat.CLIENT_MD : format;
            other = other.filter(o -> o != ReportFormat.HTML && o != ReportFormat.CLIENT_MD);
        }
        if (!folder(file) && other.isPresent() && other.get() != format) {
            throw new IllegalArgumentException(asked + ": the name ends as "
                    + other.get().id() + " does, but the format asked for is " + id + "; end it in " + format.ending());
        }
        if (folder(file)) {
            return List.of(new Target(format, Path.of(file, stem + format.ending())));
        }
        if (several && !file.contains(NAME)) {
            throw new IllegalArgumentException(
                    asked + ": several files would go into one; put " + NAME + " where each one's name belongs, as in "
                            + id + "=" + NAME + format.ending() + ", or give a folder");
        }
        return List.of(new Target(format, Path.of(file.replace(NAME, stem))));
    }

    private static Optional<ReportFormat> byEnding(String file) {
        String name = file.toLowerCase(Locale.ROOT).replaceFirst("\\.htm$", ".html");
        return List.of(ReportFormat.values()).stream()
                .filter(f -> name.endsWith(f.ending()))
                .max(Comparator.comparingInt(f -> f.ending().length()));
    }

    private static boolean folder(String path) {
        return path.endsWith("/") || path.endsWith("\\") || Files.isDirectory(Path.of(path));
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
        Path folder = whole.getParent();
        boolean ours = folder(asked.substring(asked.indexOf('=') + 1));
        if (folder != null && !ours && !Files.isDirectory(folder)) {
            throw new IllegalArgumentException(asked + ": there is no folder " + folder);
        }
    }

    @Override
    public String option() {
        return "--write";
    }

    @Override
    public List<Unwritten> write(int input, CheckRequest request, Report report) throws UnreadableInputException {
        List<Unwritten> failed = new ArrayList<>();
        for (Target target : targets.get(input)) {
            put(target, target.format().write(request, report), failed);
        }
        return failed;
    }

    @Override
    public List<Unwritten> unreadable(int input, String name, UnreadableInputException why) {
        List<Unwritten> failed = new ArrayList<>();
        for (Target target : targets.get(input)) {
            put(target, target.format().unreadable(name, why), failed);
        }
        return failed;
    }

    private void put(Target target, String content, List<Unwritten> failed) {
        try {
            Path folder = target.file().toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            WholeFile.write(target.file(), content, protectedFiles);
        } catch (IOException e) {
            failed.add(new Unwritten(target.file(), e));
        }
    }
}
