package io.bindprep.cli.watch;

import io.bindprep.ReportFormat;
import io.bindprep.check.Report;
import io.bindprep.cli.output.ReportFiles;
import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ReportContext;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The reports of files that were found in a watched folder: each file's whole name with the report's ending behind it, so
 * that no two share one. Of a file that changed while it was checked none is written.
 */
public final class WatchedReports implements ReportFiles {
    private final Path out;
    private final List<ReportFormat> formats;
    private final List<WatchedFile> files;
    private final Inputs inputs;

    WatchedReports(Path out, List<ReportFormat> formats, List<WatchedFile> files, Inputs read) {
        this.out = out;
        this.formats = formats;
        this.files = files;
        this.inputs = read;
    }

    @Override
    public String option() {
        return "--out";
    }

    @Override
    public List<Unwritten> write(int input, CheckRequest request, Report report, Duration took)
            throws UnreadableInputException {
        List<Unwritten> failed = new ArrayList<>();
        ReportContext context = context(files.get(input), took);
        for (ReportFormat format : formats) {
            put(files.get(input), format, format.write(request, report, context), failed);
        }
        return failed;
    }

    @Override
    public List<Unwritten> unreadable(int input, String name, UnreadableInputException why) {
        List<Unwritten> failed = new ArrayList<>();
        ReportContext context = context(files.get(input), Duration.ZERO);
        for (ReportFormat format : formats) {
            put(files.get(input), format, format.unreadable(name, why, context), failed);
        }
        return failed;
    }

    @Override
    public void unchecked(int input, String name, String why) {
        // an older report goes with remove: nothing is known of the file
    }

    private ReportContext context(WatchedFile found, Duration took) {
        boolean drawn = formats.contains(ReportFormat.CLIENT);
        String pictures =
                drawn ? String.valueOf(target(found, ReportFormat.CLIENT).getFileName()) : "";
        return new ReportContext(found.name(), found.name(), took, pictures);
    }

    private void put(WatchedFile found, ReportFormat format, String content, List<Unwritten> failed) {
        if (!found.stamp().holds(found.file())) {
            return;
        }
        Path target = target(found, format);
        try {
            Path folder = target.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            WholeFile.write(target, content, inputs);
        } catch (IOException e) {
            failed.add(new Unwritten(target, e));
        }
    }

    /** Removes what an earlier state of the file was told, where there is nothing to say of it in these forms. */
    void remove(WatchedFile found) throws IOException {
        for (ReportFormat format : formats) {
            Path old = target(found, format);
            if (!inputs.has(old)) {
                Files.deleteIfExists(old);
            }
        }
    }

    private Path target(WatchedFile found, ReportFormat format) {
        return out.resolve(found.name() + format.ending());
    }
}
