package io.bindprep.cli.output;

import io.bindprep.ReportFormat;
import io.bindprep.report.build.RunSummary;
import io.bindprep.wording.FileNames;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads what {@code --write} asks for, each as it was typed: {@code FORMAT=FILE}, a file whose ending tells, or a folder. */
final class ReportTargets {
    private static final String NAME = "{name}";
    private static final String SUMMARY_FILE = RunSummary.ENDING.substring(1);

    /** One report to write. */
    record Target(ReportFormat format, Path file) {}

    private ReportTargets() {}

    /**
     * The file of the summary of all documents; empty where none is asked for.
     *
     * @throws IllegalArgumentException where that cannot be done; the message says which, why, and what would do
     */
    static Optional<Path> summary(String asked) {
        int equals = asked.indexOf('=');
        String file = asked.substring(equals + 1);
        if (equals < 0) {
            return folder(asked)
                    ? Optional.of(Path.of(asked, SUMMARY_FILE))
                    : Optional.of(asked).filter(ReportTargets::endsAsSummary).map(Path::of);
        }
        if (!asked.substring(0, equals).equals(RunSummary.ID)) {
            return Optional.empty();
        }
        require(!file.isEmpty(), asked, "say which file, as in summary=" + SUMMARY_FILE);
        if (folder(file)) {
            return Optional.of(Path.of(file, SUMMARY_FILE));
        }
        require(!file.contains(NAME), asked, "one summary tells of all documents; leave " + NAME + " out");
        byEnding(file).ifPresent(other -> contradict(asked, other.id(), RunSummary.ID, ".md"));
        return Optional.of(Path.of(file));
    }

    /**
     * The reports on one document; none where a summary is asked for.
     *
     * @param stem its name in those of its reports
     * @throws IllegalArgumentException as {@link #summary}
     */
    static List<Target> of(String asked, String stem, boolean several) {
        int equals = asked.indexOf('=');
        if (equals < 0 && folder(asked)) {
            return List.of(ReportFormat.values()).stream()
                    .map(f -> new Target(f, Path.of(asked, stem + f.ending())))
                    .toList();
        }
        if (summary(asked).isPresent()) {
            return List.of();
        }
        if (equals < 0) {
            ReportFormat format = byEnding(asked)
                    .orElseThrow(() -> new IllegalArgumentException(asked
                            + ": neither FORMAT=FILE, nor a file with a format's ending, nor a folder (which ends in / where it is not there yet); formats: "
                            + formats()));
            return List.of(target(asked, format, asked, stem, several));
        }
        String id = asked.substring(0, equals);
        ReportFormat format = ReportFormat.of(id)
                .orElseThrow(() -> new IllegalArgumentException(
                        asked + ": no format is called \"" + id + "\"; formats: " + formats()));
        String file = asked.substring(equals + 1);
        require(!file.isEmpty(), asked, "say which file, as in " + id + "=book" + format.ending());
        if (folder(file)) {
            return List.of(new Target(format, Path.of(file, stem + format.ending())));
        }
        return List.of(target(asked, agreed(asked, format, file), file, stem, several));
    }

    private static Target target(String asked, ReportFormat format, String file, String stem, boolean several) {
        require(
                !several || file.contains(NAME),
                asked,
                "several files would go into one; put " + NAME + " where each one's name belongs, as in " + format.id()
                        + "=" + NAME + format.ending() + ", or give a folder");
        return new Target(format, Path.of(file.replace(NAME, stem)));
    }

    /** The format of a file whose ending does not contradict it. */
    private static ReportFormat agreed(String asked, ReportFormat format, String file) {
        Optional<ReportFormat> other = byEnding(file);
        ReportFormat agreed = format;
        if (format == ReportFormat.CLIENT) {
            // the one report in two forms, told apart by the ending
            agreed = file.toLowerCase(Locale.ROOT).endsWith(".md") ? ReportFormat.CLIENT_MD : format;
            other = other.filter(o -> o != ReportFormat.HTML && o != ReportFormat.CLIENT_MD);
        }
        if (endsAsSummary(file)) {
            contradict(asked, RunSummary.ID, format.id(), format.ending());
        }
        if (other.isPresent() && other.get() != agreed) {
            contradict(asked, other.get().id(), format.id(), format.ending());
        }
        return agreed;
    }

    /** Every format, that of the run included. */
    private static String formats() {
        List<String> ids = new ArrayList<>(ReportFormat.ids());
        ids.add(RunSummary.ID);
        return String.join(", ", ids);
    }

    private static void contradict(String asked, String ends, String id, String ending) {
        throw new IllegalArgumentException(asked + ": the name ends as " + ends + " does, but the format asked for is "
                + id + "; end it in " + ending);
    }

    private static void require(boolean so, String asked, String otherwise) {
        if (!so) {
            throw new IllegalArgumentException(asked + ": " + otherwise);
        }
    }

    private static boolean endsAsSummary(String file) {
        String name = FileNames.last(file).toLowerCase(Locale.ROOT);
        return name.equals(SUMMARY_FILE) || name.endsWith(RunSummary.ENDING);
    }

    private static Optional<ReportFormat> byEnding(String file) {
        String name = file.toLowerCase(Locale.ROOT).replaceFirst("\\.htm$", ".html");
        return List.of(ReportFormat.values()).stream()
                .filter(f -> name.endsWith(f.ending()))
                .max(Comparator.comparingInt(f -> f.ending().length()));
    }

    /** Returns true for the name of a folder, which need not be there yet. */
    static boolean folder(String path) {
        return path.endsWith("/") || path.endsWith("\\") || Files.isDirectory(Path.of(path));
    }
}
