package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.Terminal;
import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.repair.SplitReport;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.report.text.RepairText;
import io.bindprep.report.text.SplitText;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bind-prep shift}: a repaired copy of one file. */
@Command(
        name = "shift",
        addMethodSubcommands = false,
        description = "Writes a copy of a PDF with its content moved clear of the holes.",
        customSynopsis = "bind-prep shift [OPTIONS] FILE -o FILE",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written, and its check is good",
            "1:written, but its check still has findings at or above --fail-on; or nothing written, as it cannot be done",
            "2:wrong usage or settings, or the file could not be written",
            "3:the file could not be read",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  bind-prep shift --stock bond-20 book.pdf -o book-shifted.pdf",
            "  bind-prep shift --stock bond-20 --split thick.pdf -o volume.pdf"
        })
public final class ShiftCommand implements Callable<Integer> {
    @Option(names = "--page-by-page", description = "move each page only as far as it must, not all pages alike")
    private boolean pageByPage;

    @Option(
            names = "--only-hit",
            description =
                    "move only separate items that are too near, such as page numbers and running heads; the text stays")
    private boolean onlyHit;

    @Option(
            names = "--gutter",
            paramLabel = "LENGTH",
            description = "move every page by this length, whatever the check finds")
    private @Nullable String gutter;

    @Option(
            names = "--outer-margin",
            paramLabel = "LENGTH",
            description = "minimum distance of moved content from the outer edge (5 mm)")
    private @Nullable String outerMargin;

    @Option(
            names = "--minimum-scale",
            paramLabel = "PERCENT",
            description = "smallest scale, used where there is no room to move (90 %%)")
    private @Nullable String minimumScale;

    @Option(
            names = "--blank-versos",
            description = "add a blank page behind each page, for a one-sided document on a two-sided machine")
    private boolean blankVersos;

    @Option(names = "--pad", description = "add a blank page where a back stays blank, so that each leaf has two pages")
    private boolean pad;

    @Option(
            names = "--allow-signed",
            description = "change a signed document; the signatures are removed from the copy")
    private boolean allowSigned;

    @Option(
            names = "--keep",
            paramLabel = "PAGES",
            description = "pages to leave unchanged, with their findings, such as \"1, 84\"")
    private @Nullable String keep;

    @Option(names = "--marks", description = "add crop marks outside the bleed, where the page has room")
    private boolean marks;

    @Option(
            names = "--extend-bleed",
            description =
                    "where art ends at the binding edge without bleed, make it: the art is mirrored beyond the trim")
    private boolean extendBleed;

    @Option(
            names = "--split",
            description =
                    "a book too thick for any element: write the volumes the check proposes, as FILE-1, FILE-2, ...,"
                            + " each with its own covers")
    private boolean split;

    @Option(
            names = "--write",
            paramLabel = "html=FILE",
            description = "also write what was changed to an HTML file, with pages before and after")
    private @Nullable String write;

    @Mixin
    private final OneFile files;

    private @Nullable Path html;
    private final PrintWriter out;
    private final Terminal terminal;

    public ShiftCommand(InputStream in, PrintWriter out, PrintWriter err, Terminal terminal) {
        this.files = new OneFile(in, err, terminal);
        this.out = out;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        files.form(null, List.of("pdf"));
        html = write == null ? null : files.html(write);
        if (split && html != null) {
            throw files.wrong("--write does not go with --split");
        }
        return split ? files.run(this::volumes, this::told) : files.run(this::shifted, this::told);
    }

    private SplitReport volumes(CheckRequest check) throws UnreadableInputException, SettingException, IOException {
        return BindPrep.split(request(check));
    }

    private ShiftReport shifted(CheckRequest check) throws UnreadableInputException, SettingException, IOException {
        ShiftRequest request = request(check);
        if (html == null) {
            return BindPrep.shift(request);
        }
        Path to = html;
        Inputs read = check.inputs().plus("the output", request.output());
        checked(to, () -> WholeFile.check(to, read));
        ShiftReport shift = BindPrep.shift(request);
        byte[] report =
                HtmlReport.write(shift, BindPrep.pictures(request, shift)).getBytes(StandardCharsets.UTF_8);
        checked(to, () -> WholeFile.write(to, file -> file.write(report), read));
        return shift;
    }

    private interface Writing {
        void run() throws IOException;
    }

    private void checked(Path to, Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw files.wrong(Problems.cannotWrite("--write", to, e));
        }
    }

    private ShiftRequest request(CheckRequest check) throws SettingException {
        ShiftSettings settings = ShiftSettings.of(
                        pageByPage, gutter, outerMargin, minimumScale, blankVersos, pad, allowSigned)
                .keeping(keep)
                .marking(marks)
                .onlyHit(onlyHit)
                .extendingBleed(extendBleed);
        Path output = files.output();
        return new ShiftRequest(check, output, output.toString(), settings);
    }

    private int told(ShiftReport shift) {
        out.print(RepairText.write(shift, terminal.style()));
        Report after = shift.after();
        boolean good = shift.outcome() != ShiftReport.Result.REFUSED && after != null && !after.failed();
        return good ? ExitCode.GOOD : ExitCode.FINDINGS;
    }

    private int told(SplitReport volumes) {
        out.print(SplitText.write(volumes, terminal.style()));
        boolean good = !volumes.volumes().isEmpty()
                && volumes.volumes().stream().allMatch(v -> {
                    Report after = v.made().after();
                    return after != null && !after.failed();
                });
        return good ? ExitCode.GOOD : ExitCode.FINDINGS;
    }
}
