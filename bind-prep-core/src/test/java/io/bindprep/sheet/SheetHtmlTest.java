package io.bindprep.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.request.CheckRequest;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Text of the sheet; looks, print and reading aloud are tested in a browser. */
class SheetHtmlTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root")).resolve("fixtures");

    private static Report handbook() throws Exception {
        String file = "members-handbook-a4.pdf";
        return BindPrep.check(CheckRequest.of(
                FIXTURES.resolve(file), file, JobReader.toJob(JobSettings.of(Map.of("stock", "bond-20")))));
    }

    /**
     * On A4 the row of 34 holes starts 8.800 mm from the head at a pitch of 1/3 in (XJDF 2.2 F.10 and German Wikipedia
     * "Drahtkammbindung"; the first centre derived). A user unit of the drawing is a millimetre.
     */
    @Test
    void theHolesStandAtTheirTruePlaces() throws Exception {
        String html = SheetHtml.write(JobSheet.of(handbook()));
        Matcher svg = Pattern.compile("viewBox=\"0 0 ([\\d.]+) ([\\d.]+)\" width=\"\\1mm\" height=\"\\2mm\"")
                .matcher(html);
        assertThat(svg.results().count()).as("two pieces and the bar").isEqualTo(3);
        List<Double> left = new ArrayList<>();
        Matcher hole = Pattern.compile("<rect x=\"([\\d.]+)\" y=\"[\\d.]+\" width=\"3.969\" height=\"3.969\"")
                .matcher(html);
        while (hole.find()) {
            left.add(Double.valueOf(hole.group(1)));
        }
        assertThat(left).hasSize(34);
        // 16 mm for the words at the side guide lie before the sheet's end
        for (int i = 0; i < 17; i++) {
            assertThat(left.get(i) + 3.969 / 2 - 16).isCloseTo(8.8 + i * 25.4 / 3, within(0.002));
        }
    }

    @Test
    void theCodeHoldsTheDigestsOfDocumentAndJob() throws Exception {
        JobSheet sheet = JobSheet.of(handbook());
        Matcher code = Pattern.compile("viewBox=\"-4 -4 (\\d+) \\1\".*?<path d=\"([^\"]+)\"")
                .matcher(SheetHtml.write(sheet));
        assertThat(code.find()).isTrue();
        int dot = 6;
        int side = Integer.parseInt(code.group(1)) * dot;
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.fillRect(0, 0, side, side);
        g.setColor(Color.BLACK);
        Matcher module = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z").matcher(code.group(2));
        while (module.find()) {
            g.fillRect(
                    (Integer.parseInt(module.group(1)) + 4) * dot,
                    (Integer.parseInt(module.group(2)) + 4) * dot,
                    dot,
                    dot);
        }
        g.dispose();
        int[] dots = image.getRGB(0, 0, side, side, null, 0, side);
        String read = new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, dots))))
                .getText();
        assertThat(read).contains("sha256=" + sheet.digest()).contains("job=" + sheet.jobId());
    }

    @Test
    void aDocumentThatLosesTextSaysSoFirst() {
        String bad = SheetHtml.write(JobSheet.of(Scenario.of(4)
                .hit(2, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "<b>&lost")
                .report()));
        assertThat(bad.indexOf("Do not print")).isPositive().isLessThan(bad.indexOf("Settings, in this order"));
        assertThat(bad).contains("&lt;b&gt;&amp;lost").doesNotContain("<b>&lost", "Good to print");
    }

    /** A sheet and a report go to others: a machine's folders are nobody's business. */
    @Test
    void noFolderOfTheMachineStandsOnASheetOrReport() throws Exception {
        Path file = FIXTURES.resolve("members-handbook-a4.pdf");
        Report report = BindPrep.check(CheckRequest.of(
                file, "/home/press/jobs/members-handbook-a4.pdf", JobReader.toJob(JobSettings.of(Map.of()))));
        assertThat(SheetHtml.write(JobSheet.of(report)))
                .contains("members-handbook-a4.pdf")
                .doesNotContain("/home/press");
        assertThat(HtmlReport.write(report, List.of()))
                .contains("members-handbook-a4.pdf")
                .doesNotContain("/home/press");
    }

    @Test
    void theSameSheetGivesTheSameTextInAnyLocale() throws Exception {
        JobSheet sheet = JobSheet.of(handbook());
        String here = SheetHtml.write(sheet);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(SheetHtml.write(sheet)).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
        assertThat(here).doesNotContain("<script", "://");
    }
}
