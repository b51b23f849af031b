package io.bindprep.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A table of values with their sources: comment lines ("#"), one line of column names, then one row a line.
 *
 * <p>Cells are comma-separated, quoted where they hold a comma or a quote (doubled), and do not run over lines.
 *
 * @param notes the comment lines without their "#"
 * @param columns the names of the columns, in order
 * @param rows the rows in order
 */
public record Table(List<String> notes, List<String> columns, List<Row> rows) {
    private static final int LONGEST_CELL = 500;

    public Table {
        notes = List.copyOf(notes);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param file the file it stands in as the job names it; "" for a table of ours
     * @param line the line it stands in, from 1
     * @param cells its cells by column
     */
    public record Row(String file, int line, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        /** The text of a cell, "" where it is empty or the table has no such column. */
        public String get(String column) {
            return cells.getOrDefault(column, "");
        }

        /**
         * A cell's value.
         *
         * @param reader what makes it of its text, and says what is wrong in an IllegalArgumentException
         * @throws BadRow where it fails
         */
        public <T> T read(String column, Function<String, T> reader) {
            try {
                return reader.apply(get(column));
            } catch (BadRow e) {
                throw e;
            } catch (IllegalArgumentException e) {
                throw wrong(column, String.valueOf(e.getMessage()), List.of());
            }
        }

        /**
         * A cell that holds one of a few words.
         *
         * @throws BadRow where it holds another
         */
        public String choice(String column, List<String> known) {
            String cell = get(column);
            if (!known.contains(cell)) {
                throw wrong(column, "\"" + cell + "\" is not known", known);
            }
            return cell;
        }

        /** Exception about a cell. */
        public BadRow wrong(String column, String why, List<String> known) {
            String cell = get(column);
            String said = why.contains("\"" + cell + "\"") ? why : "\"" + cell + "\": " + why;
            return new BadRow(place() + ", column " + column + ": " + said, cell, known);
        }

        /** Source of its numbers: its own, and for a row of the shop's own the file and line. */
        public String source() {
            String source = get("source");
            if (file.isEmpty()) {
                return source;
            }
            return (source.isEmpty() ? "" : source + "; ") + "own table " + place();
        }

        private String place() {
            return (file.isEmpty() ? "" : file + ", ") + "line " + line;
        }
    }

    /** Reads a table that ships beside a class. */
    public static Table beside(Class<?> owner, String name) {
        try (InputStream in = owner.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the table " + name + " is missing beside " + owner.getName());
            }
            return parse("", new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the table " + name, e);
        }
    }

    /**
     * Reads a table from its text.
     *
     * @param file the file it stands in, for messages and sources; "" for a table of ours
     * @throws BadRow where a row has not one cell for each column, or a cell is malformed; the message names the line
     */
    public static Table parse(String file, String text) {
        List<String> notes = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<String> columns = List.of();
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            if (line.startsWith("#")) {
                notes.add(line.substring(1).strip());
            } else if (!line.isBlank()) {
                String place = (file.isEmpty() ? "" : file + ", ") + "line " + number;
                List<String> cells = cells(place, line);
                if (columns.isEmpty()) {
                    columns = cells;
                    continue;
                }
                if (cells.size() != columns.size()) {
                    throw new BadRow(
                            place + ": " + cells.size() + " cells for " + columns.size() + " columns", line, columns);
                }
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < cells.size(); i++) {
                    row.put(columns.get(i), cells.get(i));
                }
                rows.add(new Row(file, number, row));
            }
        }
        return new Table(notes, columns, rows);
    }

    private static List<String> cells(String place, String line) {
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
            if (cell.length() > LONGEST_CELL) {
                throw new BadRow(
                        place + ": a cell is longer than " + LONGEST_CELL + " characters",
                        cell.substring(0, 80),
                        List.of());
            }
        }
        if (quoted) {
            throw new BadRow(place + ": a quote is not closed", cell.toString(), List.of());
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
