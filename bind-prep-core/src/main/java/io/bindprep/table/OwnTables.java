package io.bindprep.table;

import io.bindprep.problem.SettingException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * The shop's own tables, which add rows to ours or replace those of the same key. Which table a file adds to is told by its
 * columns. Of several files the later one wins.
 */
public final class OwnTables {
    /** The job key that names them. */
    private static final String KEY = "tables";

    // far beyond any shop's list of stocks
    private static final int MOST_FILES = 50;
    private static final int MOST_CHARACTERS = 1_000_000;
    private static final int MOST_ROWS = 5_000;

    /** No table of the shop's own. */
    public static final OwnTables NONE = new OwnTables(Map.of());

    private final Map<TableKind, List<Table.Row>> rows;

    private OwnTables(Map<TableKind, List<Table.Row>> rows) {
        this.rows = rows;
    }

    /**
     * Reads tables, each with one line of column names.
     *
     * @throws SettingException where one is too large, malformed or of no known kind; the message names file and line
     */
    public static OwnTables read(List<NamedText> files) throws SettingException {
        if (files.size() > MOST_FILES) {
            throw wrong(files.size() + " files", "are more than the " + MOST_FILES + " allowed", "Join some of them.");
        }
        Map<TableKind, List<Table.Row>> rows = new LinkedHashMap<>();
        for (NamedText file : files) {
            Table table = parse(file);
            TableKind kind = kind(file.name(), table.columns());
            checkKeys(kind, table.rows());
            rows.computeIfAbsent(kind, k -> new ArrayList<>()).addAll(table.rows());
        }
        return new OwnTables(rows);
    }

    /** The rows for a table, in order of files and lines. */
    public List<Table.Row> rows(TableKind kind) {
        return List.copyOf(rows.getOrDefault(kind, List.of()));
    }

    /**
     * A table of ours with the shop's own rows: in the place of the row of the same key, else at the end.
     *
     * @param reader makes a value of a row, or throws a {@link BadRow}
     * @throws SettingException where a row of the shop's own cannot be read
     */
    public <T> List<T> over(TableKind kind, Table ours, Function<Table.Row, T> reader) throws SettingException {
        Map<List<String>, Table.Row> merged = new LinkedHashMap<>();
        ours.rows().forEach(row -> merged.put(key(kind, row), row));
        rows(kind).forEach(row -> merged.put(key(kind, row), row));
        return read(List.copyOf(merged.values()), reader);
    }

    /**
     * The values of rows.
     *
     * @throws SettingException where a row of the shop's own cannot be read
     */
    public static <T> List<T> read(List<Table.Row> rows, Function<Table.Row, T> reader) throws SettingException {
        List<T> values = new ArrayList<>();
        for (Table.Row row : rows) {
            try {
                values.add(reader.apply(row));
            } catch (BadRow e) {
                if (row.file().isEmpty()) {
                    throw new IllegalStateException("a table of ours is wrong: " + e.getMessage(), e);
                }
                throw told(e);
            }
        }
        return values;
    }

    private static Table parse(NamedText file) throws SettingException {
        String text = file.text();
        if (text.length() > MOST_CHARACTERS) {
            throw wrong(
                    file.name(),
                    "is longer than " + MOST_CHARACTERS + " characters",
                    "Give a table, not the document.");
        }
        Table table;
        try {
            table = Table.parse(file.name(), text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (BadRow e) {
            throw told(e);
        }
        if (table.rows().size() > MOST_ROWS) {
            throw wrong(file.name(), "has more than " + MOST_ROWS + " rows", "Keep the rows that the shop uses.");
        }
        return table;
    }

    private static TableKind kind(String file, List<String> columns) throws SettingException {
        for (TableKind kind : TableKind.values()) {
            if (kind.has(columns) && columns.stream().distinct().count() == columns.size()) {
                return kind;
            }
        }
        TableKind meant = Arrays.stream(TableKind.values())
                .max(Comparator.comparing((TableKind k) -> k.likeness(columns))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        List<String> missing =
                meant.required().stream().filter(c -> !columns.contains(c)).toList();
        List<String> strange =
                columns.stream().filter(c -> !meant.columns().contains(c)).toList();
        boolean none = columns.stream().noneMatch(meant.columns()::contains);
        String why = columns.isEmpty()
                ? "has no line of column names"
                : none
                        ? "has the columns of no table"
                        : "has columns of no table; taken for " + meant.word()
                                + (missing.isEmpty() ? "" : ", it lacks " + String.join(", ", missing))
                                + (strange.isEmpty() ? "" : ", has besides " + String.join(", ", strange))
                                + (missing.isEmpty() && strange.isEmpty() ? ", it has a column twice" : "");
        List<String> known = Arrays.stream(TableKind.values())
                .map(k -> k.word() + ": " + String.join(" ", k.columns()))
                .toList();
        throw new SettingException(
                KEY,
                file,
                "\"" + file + "\" " + why,
                "Write the names of one table's columns in the first line, with commas between.",
                known);
    }

    // twice in one file is a slip, over several files a choice
    private static void checkKeys(TableKind kind, List<Table.Row> rows) throws SettingException {
        Map<List<String>, Integer> lines = new LinkedHashMap<>();
        for (Table.Row row : rows) {
            for (String column : kind.keys()) {
                if (row.get(column).isEmpty()) {
                    throw told(row.wrong(column, "is empty", List.of()));
                }
            }
            Integer before = lines.put(key(kind, row), row.line());
            if (before != null) {
                throw told(row.wrong(kind.keys().get(0), "stands in line " + before + " already", List.of()));
            }
        }
    }

    private static List<String> key(TableKind kind, Table.Row row) {
        return kind.keys().stream()
                .map(c -> row.get(c).toLowerCase(Locale.ROOT))
                .toList();
    }

    private static SettingException wrong(String value, String what, String remedy) {
        return new SettingException(KEY, value, "\"" + value + "\" " + what, remedy, List.of());
    }

    private static SettingException told(BadRow e) {
        return new SettingException(
                KEY, e.value(), String.valueOf(e.getMessage()), "Correct that row of the table.", e.known());
    }
}
