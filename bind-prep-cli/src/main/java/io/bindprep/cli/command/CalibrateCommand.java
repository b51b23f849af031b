package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchText;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.job.JobInput;
import io.bindprep.cli.job.NamedFiles;
import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import io.bindprep.gauge.Calibration;
import io.bindprep.gauge.CalibrationText;
import io.bindprep.gauge.Readings;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bind-prep calibrate}: a punch file of what was read off a test sheet. */
@Command(
        name = "calibrate",
        addMethodSubcommands = false,
        description = "Turns the readings of a punched test sheet into the punch's file.",
        customSynopsis = "bind-prep calibrate [OPTIONS] --punch PUNCH --depth SETTING READINGS -o FILE",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written",
            "2:wrong usage or settings, readings that cannot be, or the file could not be written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExample (of a hole give both sides, or one length for its middle):%n",
        footer = {
            "  bind-prep calibrate --punch bench.yaml --depth 2 --trim a4 --edge-first \"3.2 to 7.2 mm\"",
            "      --edge-last \"3.1 to 7.1 mm\" --end-first \"7 to 11 mm\" --row \"7 to 286.3 mm\" --bar \"99.9 mm\"",
            "      -o bench.yaml"
        })
public final class CalibrateCommand implements Callable<Integer> {
    @Option(
            names = "--edge-first",
            paramLabel = "READING",
            required = true,
            description = "1: binding edge of the paper to the first hole, \"3.1 to 7.1 mm\"")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private String edgeFirst;

    @Option(
            names = "--edge-last",
            paramLabel = "READING",
            required = true,
            description = "2: binding edge of the paper to the last hole")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private String edgeLast;

    @Option(
            names = "--end-first",
            paramLabel = "READING",
            required = true,
            description = "3: end of the paper at the side guide to the first hole, along the edge")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private String endFirst;

    @Option(
            names = "--row",
            paramLabel = "READING",
            required = true,
            description = "4: one side of the first hole and the same side of the last on the printed scale,"
                    + " \"6.8 to 286.2 mm\"; or, by a steel rule, the length between")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private String row;

    @Option(
            names = "--bar",
            paramLabel = "READING",
            description =
                    "what a steel rule shows for the printed bar of 100 mm or 4 in; of a longer part, \"249.6 mm of 250"
                            + " mm\". Left out where all four were measured with a steel rule")
    private @Nullable String bar;

    @Option(names = "--reading-error", paramLabel = "LENGTH", description = "reading error, either way (0.2 mm)")
    private @Nullable String error;

    @Option(
            names = "--afresh",
            description = "ignore earlier measurements in the punch's file, as the punch was set up anew")
    private boolean afresh;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "the punch file to write, .yaml; overwrites an existing file, the punch's own too")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path output;

    @Mixin
    private final NoDocument input;

    private final PrintWriter out;

    public CalibrateCommand(PrintWriter out, PrintWriter err) {
        this.input = new NoDocument(err);
        this.out = out;
    }

    @Override
    public Integer call() {
        String name = NamedFiles.yamlStem(input.command(), output);
        return input.run(output, (job, inputs) -> calibrate(job, inputs.without(JobInput.PUNCH), name));
    }

    private void calibrate(Job job, Inputs inputs, String name) throws SettingException, IOException {
        Readings readings = Readings.of(edgeFirst, edgeLast, endFirst, row, bar, error);
        Calibration found = BindPrep.calibrate(job, readings, afresh);
        Punch punch = found.punch();
        boolean builtIn = Catalogue.builtIn().punches().byId(punch.id()).isPresent();
        WholeFile.write(output, PunchText.of(builtIn ? punch.named(name) : punch), inputs);
        out.print(CalibrationText.write(found));
        out.println(Problems.written("Punch file", output));
        if (builtIn) {
            out.println("It began as " + punch.id() + ": correct what else differs on your punch, its pins above all.");
        }
        out.println("Use it:  bind-prep check --punch " + output + " book.pdf");
    }
}
