package io.bindprep.catalogue;

import io.bindprep.table.Table;
import java.util.List;
import java.util.regex.Pattern;

/** Form of a row's name, so that no name is taken for a file or a number. */
final class Names {
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9._-]{0,79}");
    private static final Pattern FILE = Pattern.compile("(?i).*\\.(?:yaml|yml|json)");

    private Names() {}

    static String checked(Table.Row row, String column) {
        String name = row.get(column);
        if (!NAME.matcher(name).matches() || FILE.matcher(name).matches()) {
            throw row.wrong(
                    column, "is a name of letters, digits, dots, hyphens and _ that begins with a letter", List.of());
        }
        return name;
    }
}
