package io.bindprep.cli.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** A command's manual page, from the same descriptions as its help: roff with the macros of man(7). */
final class ManPage {
    private final StringBuilder page = new StringBuilder();
    private final CommandSpec command;

    private ManPage(CommandSpec command) {
        this.command = command;
    }

    /** The pages of a command and its verbs by file name, "bind-prep-check.1". */
    static Map<String, String> all(CommandLine line, String version) {
        Map<String, String> pages = new TreeMap<>();
        List<CommandSpec> commands = new ArrayList<>(List.of(line.getCommandSpec()));
        line.getSubcommands().values().forEach(verb -> commands.add(verb.getCommandSpec()));
        List<String> names = commands.stream().map(ManPage::name).toList();
        for (CommandSpec command : commands) {
            pages.put(name(command) + ".1", new ManPage(command).write(version, names));
        }
        return pages;
    }

    private static String name(CommandSpec command) {
        return command.qualifiedName("-");
    }

    private String write(String version, List<String> names) {
        UsageMessageSpec usage = command.usageMessage();
        String name = name(command);
        line(".TH \"" + escaped(name.toUpperCase(Locale.ROOT)) + "\" 1 \"\" \"bind\\-prep " + escaped(version) + "\"");
        section("Name");
        line(escaped(name) + " \\- " + escaped(joined(usage.description()).replaceAll("\\.$", "")));
        section("Synopsis");
        synopsis(usage);
        section("Options");
        command.positionalParameters().forEach(this::parameter);
        options(command.options().stream().filter(o -> o.group() == null).toList());
        command.argGroups().forEach(this::group);
        verbs();
        exitCodes(usage);
        examples(usage);
        section("See also");
        List<String> others = names.stream().filter(n -> !n.equals(name)).toList();
        line(escaped(String.join(", ", others.stream().map(n -> n + "(1)").toList())));
        return page.toString();
    }

    private void synopsis(UsageMessageSpec usage) {
        line(".nf");
        if (usage.customSynopsis().length == 0) {
            line("bind\\-prep COMMAND [OPTIONS]");
        }
        for (String synopsis : usage.customSynopsis()) {
            text(synopsis.strip());
        }
        line(".fi");
    }

    private void group(ArgGroupSpec group) {
        line(".SS \""
                + escaped(format(group.heading()).strip().replaceAll(":$", "").replace("\"", "")) + "\"");
        options(new ArrayList<>(group.options()));
    }

    private void options(List<OptionSpec> options) {
        for (OptionSpec option : options) {
            String names = String.join(
                    ", ",
                    List.of(option.names()).stream()
                            .map(n -> "\\fB" + escaped(n) + "\\fR")
                            .toList());
            boolean takesValue = option.arity().max() > 0;
            entry(
                    names + (takesValue ? "=\\fI" + escaped(option.paramLabel()) + "\\fR" : ""),
                    joined(option.description()));
        }
    }

    private void parameter(PositionalParamSpec parameter) {
        entry("\\fI" + escaped(parameter.paramLabel()) + "\\fR", joined(parameter.description()));
    }

    private void verbs() {
        if (!command.subcommands().isEmpty()) {
            section("Commands");
            command.subcommands()
                    .forEach((verb, line) -> entry(
                            "\\fB" + escaped(verb) + "\\fR",
                            joined(line.getCommandSpec().usageMessage().description())));
        }
    }

    private void exitCodes(UsageMessageSpec usage) {
        if (!usage.exitCodeList().isEmpty()) {
            section("Exit status");
            usage.exitCodeList().forEach((code, meaning) -> entry(escaped(code), meaning));
        }
    }

    private void examples(UsageMessageSpec usage) {
        if (usage.footer().length > 0) {
            section("Examples");
            line(".nf");
            for (String example : usage.footer()) {
                text(format(example).strip());
            }
            line(".fi");
        }
    }

    private void section(String title) {
        line(".SH " + title.toUpperCase(Locale.ROOT));
    }

    private void entry(String term, String text) {
        line(".TP");
        line(term);
        text(text);
    }

    private void text(String text) {
        String escaped = escaped(text);
        // a point or a quote at its begin would be a request
        line(escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped);
    }

    private void line(String line) {
        page.append(line).append('\n');
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-");
    }

    private static String joined(String[] lines) {
        return format(String.join(" ", lines));
    }

    // picocli has done that to descriptions already, but to nothing else
    private static String format(String text) {
        return text.replace("%n", "\n").replace("%%", "%");
    }
}
