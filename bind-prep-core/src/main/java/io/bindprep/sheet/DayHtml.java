package io.bindprep.sheet;

import io.bindprep.report.html.Templates;
import java.util.List;
import java.util.Map;

/** Writes a day as one HTML file, the sheet of each job behind the list: no script, nothing fetched. */
public final class DayHtml {
    private DayHtml() {}

    /** The list and the sheets. */
    public static String write(DaySheet day) {
        List<SheetView> sheets = day.sheets().stream().map(SheetView::of).toList();
        return Templates.rendered("day.jte", Map.of("day", day, "sheets", sheets));
    }
}
