package io.bindprep.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of values with their sources: comment lines ("#"), one line of column names, then one row a line.
 *
 * <p>Cells are comma-separated, quoted where they hold a comma or a quote (doubled), and do not run over lines.
 *
 * @param notes the comment lines without their "#"
 * @param rows the rows in order
 */
public record Table(List<String> notes, List<Row> rows) {
    public Table {
        notes = List.copyOf(notes);
        rows = List.copyOf(rows);
    }

    /** One row: its cells by column, and the line it stands in, from 1. */
    public record Row(int line, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        /**
         * The text of a cell, "" where it is empty.
         *
         * @throws IllegalArgumentException where the table has no such column
         */
        public String get(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("line " + line + ": no column \"" + column + "\"");
            }
            return cell;
        }
    }

    /** Reads a table that ships beside a class. */
    public static Table beside(Class<?> owner, String name) {
        try (InputStream in = owner.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the table " + name + " is missing beside " + owner.getName());
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the table " + name, e);
        }
    }

    /**
     * Reads a table from its text.
     *
     * @throws IllegalArgumentException where a row has not one cell for each column; the message names the line
     */
    public static Table parse(String text) {
        List<String> notes = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<String> columns = List.of();
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            if (line.startsWith("#")) {
                notes.add(line.substring(1).strip());
            } else if (!line.isBlank()) {
                List<String> cells = cells(line);
                if (columns.isEmpty()) {
                    columns = cells;
                    continue;
                }
                if (cells.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "line " + number + ": " + cells.size() + " cells for " + columns.size() + " columns");
                }
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < cells.size(); i++) {
                    row.put(columns.get(i), cells.get(i));
                }
                rows.add(new Row(number, row));
            }
        }
        return new Table(notes, rows);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    cell.append(c);
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
