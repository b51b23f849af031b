package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Adds accepted findings to the text of a job file in YAML; every other line of it, comments included, stays. */
public final class AcceptanceText {
    private static final Pattern KEY = Pattern.compile("accept\\s*:\\s*(none\\s*)?(#.*)?");
    private static final Pattern ITEM = Pattern.compile("( *)- .*");

    private AcceptanceText() {}

    /**
     * The text with these findings accepted too, read once to see that it says so.
     *
     * @param text what the file says; may be empty
     * @param name how errors call the file
     * @throws SettingException where its list of accepted findings is not written as one entry a line, or it is no job
     */
    public static String added(String text, List<Acceptance> more, String name) throws SettingException {
        int before = accepted(text, name);
        List<String> lines = new ArrayList<>(text.lines().toList());
        int key = key(lines, name);
        String indent = "  ";
        int at;
        if (key < 0) {
            lines.add(JobKeys.ACCEPT + ":");
            at = lines.size();
        } else {
            // "accept: none" becomes a list
            lines.set(key, lines.get(key).replaceFirst(":\\s*none", ":"));
            at = key + 1;
            for (int i = key + 1; i < lines.size() && inside(lines.get(i)); i++) {
                Matcher item = ITEM.matcher(lines.get(i));
                if (at == key + 1 && item.matches()) {
                    indent = item.group(1);
                }
                // blank lines and comments at the margin belong to what follows
                at = lines.get(i).isBlank() || lines.get(i).startsWith("#") ? at : i + 1;
            }
        }
        List<String> written = new ArrayList<>();
        for (Acceptance acceptance : more) {
            item(acceptance, indent, written);
        }
        lines.addAll(at, written);
        String made = String.join("\n", lines) + "\n";
        if (accepted(made, name) != before + more.size()) {
            throw unfit(name);
        }
        return made;
    }

    private static int accepted(String text, String name) throws SettingException {
        if (text.isBlank()) {
            return 0;
        }
        Object value = JobSettings.read(text, name).value(JobKeys.ACCEPT).orElse("none");
        return AcceptanceReader.acceptances(JobKeys.ACCEPT, value).size();
    }

    private static int key(List<String> lines, String name) throws SettingException {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(JobKeys.ACCEPT)) {
                if (!KEY.matcher(lines.get(i)).matches()) {
                    throw unfit(name);
                }
                return i;
            }
        }
        return -1;
    }

    // of the list: items, what is deeper, blank lines and comments
    private static boolean inside(String line) {
        return line.isBlank() || line.startsWith(" ") || line.startsWith("-") || line.startsWith("#");
    }

    private static void item(Acceptance a, String indent, List<String> lines) {
        lines.add(indent + "- " + AcceptanceReader.FINDING + ": " + a.finding());
        String deeper = indent + "  ";
        if (!a.pages().isEmpty()) {
            lines.add(deeper + AcceptanceReader.PAGES + ": " + quoted(a.pages()));
        }
        lines.add(deeper + AcceptanceReader.REASON + ": " + quoted(a.reason()));
        lines.add(deeper + AcceptanceReader.WHO + ": " + quoted(a.who()));
        // quoted, as sixteen digits would be a number
        lines.add(deeper + AcceptanceReader.SEEN + ": " + quoted(a.seen()));
    }

    private static String quoted(String text) {
        String plain = Printable.line(text);
        return "\"" + plain.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static SettingException unfit(String name) {
        return Scalars.wrong(
                JobKeys.ACCEPT,
                name,
                "has a list of accepted findings that cannot be added to",
                "Write it as block YAML, one \"- finding: ...\" below \"accept:\".");
    }
}
