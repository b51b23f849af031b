package io.bindprep.report.html;

import io.bindprep.check.Report;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.PicturePair;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.ShiftReport;
import java.util.List;
import java.util.Map;

/**
 * Writes a report as one HTML file: no script, nothing fetched, pictures inside; for screens of any width, for dark mode
 * and for paper.
 *
 * <p>Its text is the same for the same report everywhere; the pixels of its pictures are those of the JDK that drew them.
 */
public final class HtmlReport {
    private HtmlReport() {}

    /**
     * The report.
     *
     * @param pictures of pages that are not clear, as {@code BindPrep.pictures} gives them; may be empty
     */
    public static String write(Report report, List<PagePicture> pictures) {
        return Templates.rendered("report.jte", Map.of("view", ReportView.of(report, pictures)));
    }

    /**
     * Report of a repair, its pages before and after.
     *
     * @param pictures as {@code BindPrep.pictures} gives them; may be empty
     */
    public static String write(ShiftReport shift, List<PicturePair> pictures) {
        return Templates.rendered("repair.jte", Map.of("view", RepairView.of(shift, pictures)));
    }

    /** Report on a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException why) {
        return Templates.rendered(
                "unreadable.jte",
                Map.of(
                        "file",
                        Texts.clean(file),
                        "message",
                        Texts.clean(String.valueOf(why.getMessage())),
                        "remedy",
                        why.remedy()));
    }
}
