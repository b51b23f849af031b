package io.bindprep.report.catalogue;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.report.text.Lines;
import io.bindprep.report.text.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Writes the catalogue for people: tables of all rows, or every column of one row. */
public final class CatalogueText {
    private static final int GAP = 2;
    // less room than this beside the other columns, and the source goes below them
    private static final int LEAST_SOURCE = 24;

    private CatalogueText() {}

    /** Tables with every row and its source, ending in a line feed. */
    public static String write(Catalogue catalogue, List<CatalogueSection> sections, TextStyle style) {
        StringBuilder out = new StringBuilder();
        for (CatalogueSection section : sections) {
            CatalogueListing<?> listing = CatalogueListing.of(section, catalogue);
            out.append(out.isEmpty() ? "" : "\n").append(section.word()).append("\n\n");
            table(out, listing, style.width());
            Lines notes = new Lines(style);
            notes.blank();
            listing.notes().forEach(note -> notes.paragraph(Lines.Tint.NONE, note));
            out.append(notes);
        }
        return out.toString();
    }

    /** Every column of the rows of one name, in whichever of the tables it stands; empty where in none. */
    public static Optional<String> row(
            Catalogue catalogue, List<CatalogueSection> sections, String name, TextStyle style) {
        StringBuilder out = new StringBuilder();
        for (CatalogueSection section : sections) {
            entries(out, CatalogueListing.of(section, catalogue).named(name), style.width());
        }
        return out.isEmpty() ? Optional.empty() : Optional.of(out.toString());
    }

    /** The names of all rows, in the order of the tables. */
    public static List<String> names(Catalogue catalogue, List<CatalogueSection> sections) {
        return sections.stream()
                .flatMap(section -> CatalogueListing.of(section, catalogue).rowNames().stream())
                .distinct()
                .toList();
    }

    private static <T> void table(StringBuilder out, CatalogueListing<T> listing, int width) {
        List<CatalogueColumn<T>> columns =
                listing.columns().stream().filter(CatalogueColumn::inTable).toList();
        List<List<String>> lines = new ArrayList<>();
        lines.add(columns.stream().map(CatalogueColumn::label).toList());
        listing.rows()
                .forEach(row -> lines.add(columns.stream()
                        .map(c -> Lines.shown(c.text().apply(row)))
                        .toList()));
        int last = columns.size() - 1;
        int[] widths = new int[last];
        int used = 0;
        for (int i = 0; i < last; i++) {
            for (List<String> line : lines) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
            used += widths[i] + GAP;
        }
        boolean beside = width - used >= LEAST_SOURCE;
        for (List<String> line : lines) {
            StringBuilder shown = new StringBuilder();
            for (int i = 0; i < last; i++) {
                shown.append(line.get(i))
                        .append(" ".repeat(widths[i] + GAP - line.get(i).length()));
            }
            int indent = beside ? used : 2 * GAP;
            List<String> source = Lines.wrap(line.get(last), width - indent);
            if (!beside) {
                out.append(shown.toString().stripTrailing()).append('\n');
                shown.setLength(0);
                shown.append(" ".repeat(indent));
            }
            for (String part : source) {
                out.append((shown + part).stripTrailing()).append('\n');
                shown.setLength(0);
                shown.append(" ".repeat(indent));
            }
        }
    }

    private static <T> void entries(StringBuilder out, CatalogueListing<T> listing, int width) {
        int label = Collections.max(
                        listing.columns().stream().map(c -> c.label().length()).toList())
                + GAP;
        for (T row : listing.rows()) {
            out.append(out.isEmpty() ? "" : "\n")
                    .append("of the ")
                    .append(listing.section().word())
                    .append('\n');
            for (CatalogueColumn<T> column : listing.columns()) {
                String text = Lines.shown(column.text().apply(row));
                if (text.isEmpty() || !column.alone()) {
                    continue;
                }
                String shown =
                        column.label() + " ".repeat(label - column.label().length());
                for (String part : Lines.wrap(text, width - label)) {
                    out.append(shown).append(part).append('\n');
                    shown = " ".repeat(label);
                }
            }
        }
    }
}
