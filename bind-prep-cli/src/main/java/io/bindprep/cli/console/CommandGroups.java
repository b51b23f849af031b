package io.bindprep.cli.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.IHelpSectionRenderer;

/** The list of commands in the help, by what they are for. */
public final class CommandGroups implements IHelpSectionRenderer {
    private static final Map<String, List<String>> GROUPS = groups();

    private static Map<String, List<String>> groups() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        groups.put("For a document", List.of("check", "spec", "proof", "shift"));
        groups.put("For the bindery", List.of("plan", "day"));
        groups.put("For a punch", List.of("testsheet", "calibrate"));
        groups.put("For jobs", List.of("init", "list"));
        return groups;
    }

    @Override
    public String render(Help help) {
        Map<String, Help> left = new LinkedHashMap<>(help.subcommands());
        StringBuilder text = new StringBuilder();
        GROUPS.forEach((heading, verbs) -> {
            List<Help> members = new ArrayList<>();
            for (String verb : verbs) {
                Help member = left.remove(verb);
                if (member != null) {
                    members.add(member);
                }
            }
            group(text, heading, members);
        });
        group(text, "Other", new ArrayList<>(left.values()));
        return text.toString();
    }

    private static void group(StringBuilder text, String heading, List<Help> members) {
        if (members.isEmpty()) {
            return;
        }
        text.append(System.lineSeparator()).append(heading).append(':').append(System.lineSeparator());
        Help.TextTable table = Help.TextTable.forColumns(
                members.get(0).colorScheme(),
                new Help.Column(14, 2, Help.Column.Overflow.SPAN),
                new Help.Column(66, 1, Help.Column.Overflow.WRAP));
        for (Help member : members) {
            CommandLine.Model.CommandSpec spec = member.commandSpec();
            table.addRowValues(spec.name(), String.join(" ", spec.usageMessage().description()));
        }
        text.append(table);
    }
}
