package io.bindprep.report.text;

import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.List;

/** Lays out wrapped lines with a label column; every text passes here, so that no control character gets out. */
public final class Lines {
    private static final int LABEL = 10;
    private static final String RESET = "\u001B[0m";

    /** Colours by what they stand for. */
    public enum Tint {
        NONE(""),
        GOOD("\u001B[1;32m"),
        BAD("\u001B[1;31m"),
        CARE("\u001B[1;33m"),
        QUIET("\u001B[36m");

        private final String code;

        Tint(String code) {
            this.code = code;
        }
    }

    private final TextStyle style;
    private final StringBuilder out = new StringBuilder();

    public Lines(TextStyle style) {
        this.style = style;
    }

    /** A paragraph from the left margin. */
    public void paragraph(Tint tint, String text) {
        for (String line : wrap(text, style.width())) {
            out.append(tinted(tint, line)).append('\n');
        }
    }

    /** A label and its text beside it, wrapped under itself. */
    void entry(Tint tint, String label, String text) {
        String shown = label;
        for (String line : wrap(text, style.width() - LABEL)) {
            out.append(tinted(tint, shown));
            // no blanks at a line's end
            out.append(" ".repeat(LABEL - shown.length())).append(line).append('\n');
            shown = "";
        }
    }

    /** More text of the entry above. */
    void more(String text) {
        entry(Tint.NONE, "", text);
    }

    /** A row of a table: a label, then cells, each set to the right. */
    void row(String label, int width, List<String> cells) {
        StringBuilder row = new StringBuilder(label).append(" ".repeat(LABEL - label.length()));
        for (String cell : cells) {
            row.append(" ".repeat(Math.max(1, width - cell.length()))).append(cell);
        }
        out.append(Printable.of(row.toString())).append('\n');
    }

    /** A table with a label beside its head; columns as wide as their widest cell. */
    void table(String label, List<String> head, List<List<String>> rows) {
        String shown = label;
        List<List<String>> all = new ArrayList<>();
        all.add(head);
        all.addAll(rows);
        int widest = LABEL - 2;
        for (int i = 0; i < head.size(); i++) {
            int column = i;
            widest +=
                    2 + all.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
        }
        if (widest > style.width()) {
            // too narrow for columns: each cell with its title
            for (List<String> cells : rows) {
                List<String> named = new ArrayList<>();
                for (int i = 0; i < cells.size(); i++) {
                    named.add(head.get(i) + " " + cells.get(i));
                }
                entry(Tint.NONE, shown, String.join("; ", named));
                shown = "";
            }
            return;
        }
        for (List<String> cells : all) {
            StringBuilder line = new StringBuilder(shown).append(" ".repeat(LABEL - shown.length()));
            for (int i = 0; i < cells.size(); i++) {
                int column = i;
                int width =
                        all.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
                String cell = cells.get(i);
                line.append(cell).append(i == cells.size() - 1 ? "" : " ".repeat(width - cell.length() + 2));
            }
            out.append(Printable.of(line.toString().stripTrailing())).append('\n');
            shown = "";
        }
    }

    public void blank() {
        out.append('\n');
    }

    private String tinted(Tint tint, String text) {
        return !style.colour() || tint.code.isEmpty() || text.isEmpty() ? text : tint.code + text + RESET;
    }

    /** Without control and direction marks: names and words come from outside, and one could rewrite the screen. */
    public static String shown(String text) {
        return Printable.of(text);
    }

    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : shown(text).split(" +")) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.isEmpty() && rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
