package io.bindprep.cli.command;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Terminal;
import io.bindprep.cli.job.JobInput;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.report.catalogue.CatalogueJson;
import io.bindprep.report.catalogue.CatalogueSection;
import io.bindprep.report.catalogue.CatalogueText;
import io.bindprep.wording.Spelling;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** {@code bind-prep list}: what a job may name, each row with its source. */
@Command(
        name = "list",
        addMethodSubcommands = false,
        description = "Lists what a job may name, each with its source.",
        customSynopsis = "bind-prep list [OPTIONS] [TABLE] [NAME]",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:listed", "2:wrong usage or settings", "4:internal error, a bug in bind-prep"},
        footerHeading = "%nExamples:%n",
        footer = {
            "  bind-prep list stocks",
            "  bind-prep list bond-20",
            "  bind-prep list punches --tables shop-punches.csv"
        })
public final class ListCommand implements Callable<Integer> {
    private static final List<CatalogueSection> ALL = List.of(CatalogueSection.values());

    /** Words that a shell completes: the tables, and each name in them that is one word for it. */
    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            List<String> words = new ArrayList<>(tableWords());
            CatalogueText.names(Catalogue.builtIn(), ALL).stream()
                    .filter(name -> !name.contains(" "))
                    .forEach(words::add);
            return words.iterator();
        }
    }

    /** Form of the rows. */
    enum Format {
        text,
        json
    }

    @Parameters(
            arity = "0..2",
            paramLabel = "TABLE NAME",
            hideParamSyntax = true,
            completionCandidates = Words.class,
            description =
                    "stocks, sizes, patterns, elements, punches, clearances, wire-thicknesses or limits (all); a name shows every column of"
                            + " its row")
    private List<String> words = List.of();

    @Option(names = "--tables", paramLabel = "FILES", description = "own tables, CSV, as in a job")
    private @Nullable String tables;

    @Option(names = "--punch", paramLabel = "FILE", description = "own punch file, as in a job")
    private @Nullable String punch;

    @Option(names = "--job", paramLabel = "FILE", description = "job file whose own tables and punch are listed too")
    private @Nullable Path jobFile;

    @Option(names = "--format", paramLabel = "FORMAT", description = "text or json")
    private Format format = Format.text;

    @Mixin
    private final Help help = new Help();

    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;

    public ListCommand(PrintWriter out, PrintWriter err, Terminal terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        List<CatalogueSection> sections = sections();
        boolean table = sections.size() == 1;
        if (words.size() == 2 && !table) {
            throw new ParameterException(
                    help.command().commandLine(),
                    "no table \"" + words.get(0) + "\"; known: " + sectionWords() + meant(words.get(0), tableWords()));
        }
        String name = words.size() > (table ? 1 : 0) ? words.get(words.size() - 1) : null;
        JobSettings own = JobSettings.empty();
        own = tables == null ? own : own.with("tables", tables);
        own = punch == null ? own : own.with("punch", punch);
        JobInput job = new JobInput(help.command(), jobFile, own);
        try {
            return list(job.read().catalogue(), sections, name);
        } catch (SettingException e) {
            err.println(job.problem(e));
            return ExitCode.USAGE;
        }
    }

    private int list(Catalogue catalogue, List<CatalogueSection> sections, @Nullable String name) {
        if (name == null) {
            out.print(
                    format == Format.json
                            ? CatalogueJson.write(catalogue, sections, null)
                            : CatalogueText.write(catalogue, sections, terminal.style()));
            return ExitCode.GOOD;
        }
        Optional<String> row = CatalogueText.row(catalogue, sections, name, terminal.style());
        if (row.isEmpty()) {
            List<String> known = new ArrayList<>(CatalogueText.names(catalogue, sections));
            known.addAll(sections.size() == 1 ? List.of() : tableWords());
            throw new ParameterException(
                    help.command().commandLine(),
                    "nothing is called \"" + name + "\" in the "
                            + (sections.size() == 1 ? sections.get(0).word() : "tables; tables: " + sectionWords())
                            + meant(name, known));
        }
        out.print(format == Format.json ? CatalogueJson.write(catalogue, sections, name) : row.get());
        return ExitCode.GOOD;
    }

    /** The table that the first word names, else all. */
    private List<CatalogueSection> sections() {
        return words.isEmpty()
                ? ALL
                : ALL.stream()
                        .filter(s -> s.word().equals(words.get(0)))
                        .findFirst()
                        .map(List::of)
                        .orElse(ALL);
    }

    private static String sectionWords() {
        return String.join(", ", tableWords());
    }

    private static List<String> tableWords() {
        return ALL.stream().map(CatalogueSection::word).toList();
    }

    private static String meant(String word, List<String> known) {
        String near = Spelling.nearest(word, known);
        return near == null ? "" : "\nDid you mean: " + near;
    }
}
