package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.output.FileEnding;
import io.bindprep.files.WholeFile;
import io.bindprep.gauge.TestSheet;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** {@code bind-prep testsheet}: what to print, punch and read to see how a punch stands. */
@Command(
        name = "testsheet",
        addMethodSubcommands = false,
        description =
                "Writes a test sheet: print it, punch it and read how far the punch is off. Gauges of its elements come with it.",
        customSynopsis = "bind-prep testsheet [OPTIONS] [-o FILE]",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written",
            "2:wrong usage or settings, or the sheet could not be written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  bind-prep testsheet --trim a4 --punch bench.yaml -o testsheet.pdf",
            "  bind-prep testsheet --trim letter --binding coil --pitch 4:1",
            "The sheet says what to do. Give its readings to bind-prep calibrate."
        })
public final class TestsheetCommand implements Callable<Integer> {
    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "the file to write; overwrites an existing file (testsheet.pdf)")
    private Path output = Path.of("testsheet.pdf");

    @Mixin
    private final NoDocument input;

    private final PrintWriter out;

    public TestsheetCommand(PrintWriter out, PrintWriter err) {
        this.input = new NoDocument(err);
        this.out = out;
    }

    @Override
    public Integer call() {
        try {
            FileEnding.form(output, null, List.of("pdf"));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(input.command().commandLine(), "--output: " + e.getMessage(), e);
        }
        return input.run(output, (job, inputs) -> {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            TestSheet sheet = BindPrep.testSheet(job, pdf);
            WholeFile.write(output, pdf::writeTo, inputs);
            String settings = sheet.punched().settings().stream()
                    .map(d -> d.name() + " at " + sheet.measures().mark(d.centre()))
                    .collect(Collectors.joining(", "));
            out.println(Problems.written("Test sheet", output));
            out.println("A page for each depth setting (" + settings + "), one to read holes on, and gauges.");
            out.println("Print it at full size. Punch and read it as it says. Then: bind-prep calibrate");
        });
    }
}
