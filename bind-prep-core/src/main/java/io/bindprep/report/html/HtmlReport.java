package io.bindprep.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.bindprep.check.Report;
import io.bindprep.picture.PagePicture;
import java.util.List;

/**
 * Writes a report as one HTML file: no script, nothing fetched, pictures inside; for screens of any width, for dark mode
 * and for paper.
 *
 * <p>Its text is the same for the same report everywhere; the pixels of its pictures are those of the JDK that drew them.
 */
public final class HtmlReport {
    private static final String TEMPLATES = "io.bindprep.report.html.template";

    private HtmlReport() {}

    /**
     * The report.
     *
     * @param pictures of pages that are not clear, as {@code BindPrep.pictures} gives them; may be empty
     */
    public static String write(Report report, List<PagePicture> pictures) {
        // the caller's own class loader may not see the templates, as in a Maven plugin
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, HtmlReport.class.getClassLoader(), TEMPLATES);
        StringOutput out = new StringOutput();
        engine.render("report.jte", ReportView.of(report, pictures), out);
        return out.toString();
    }
}
