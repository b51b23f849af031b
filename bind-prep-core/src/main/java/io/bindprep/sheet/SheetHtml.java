package io.bindprep.sheet;

import io.bindprep.report.html.Templates;
import java.util.Map;

/**
 * Writes a job sheet as one HTML file: no script, nothing fetched; for a screen at the punch, where its lifts and steps are
 * ticked off, and for paper, where the binding edge has its true size. The same sheet gives the same text.
 */
public final class SheetHtml {
    private SheetHtml() {}

    /** The sheet. */
    public static String write(JobSheet sheet) {
        return Templates.rendered("sheet.jte", Map.of("view", SheetView.of(sheet)));
    }
}
