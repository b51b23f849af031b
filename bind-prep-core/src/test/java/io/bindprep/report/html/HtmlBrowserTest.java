package io.bindprep.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.day.DayJob;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.picture.PagePicture;
import io.bindprep.request.CheckRequest;
import io.bindprep.sheet.DayHtml;
import io.bindprep.sheet.DaySheet;
import io.bindprep.sheet.JobSheet;
import io.bindprep.sheet.SheetHtml;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * The HTML report in headless Chromium, judged by axe-core (WCAG 2.2 A and AA, and its best practices). Skipped where
 * there is no Chromium with its driver.
 */
class HtmlBrowserTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    static Path folder;

    private static ChromeDriver browser;
    private static String axe;

    @BeforeAll
    static void start() throws Exception {
        Optional<File> chromium = program("chromium", "chromium-browser", "google-chrome");
        Optional<File> driver = program("chromedriver");
        assumeTrue(chromium.isPresent() && driver.isPresent(), "no Chromium with chromedriver on the path");
        write("cookbook.html", "cookbook-letter.pdf", Map.of("pitch", "3:1"));
        write("calendar.html", "calendar-a4-landscape.pdf", Map.of("binding-edge", "top", "sides", "one"));
        Files.writeString(folder.resolve("long.html"), HtmlReport.write(invented(), List.of(uncheckedPage())));
        Files.writeString(
                folder.resolve("sheet.html"), SheetHtml.write(JobSheet.of(report("calendar-a4-landscape.pdf"))));
        Files.writeString(
                folder.resolve("bad-sheet.html"),
                SheetHtml.write(JobSheet.of(report("cookbook-letter.pdf", Map.of("pitch", "3:1")))));
        Files.writeString(
                folder.resolve("day.html"),
                DayHtml.write(DaySheet.of(BindPrep.day(
                        List.of(
                                new DayJob("A cookbook", report("cookbook-letter.pdf", Map.of("pitch", "3:1"))),
                                new DayJob("The members' handbook", report("members-handbook-a4.pdf", Map.of()))),
                        null))));
        try (InputStream in = HtmlBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.get());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--user-data-dir=" + folder.resolve("profile"));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.get())
                .usingAnyFreePort()
                .build();
        browser = new ChromeDriver(service, options);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.quit();
        }
    }

    private static Optional<File> program(String... names) {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(names)
                .flatMap(name -> Stream.of(path.split(File.pathSeparator)).map(dir -> new File(dir, name)))
                .filter(File::canExecute)
                .findFirst();
    }

    private static void write(String html, String pdf, Map<String, String> job) throws Exception {
        CheckRequest request = CheckRequest.of(FIXTURES.resolve(pdf), pdf, JobReader.toJob(JobSettings.of(job)));
        Report report = BindPrep.check(request);
        List<PagePicture> pictures = BindPrep.pictures(request, report);
        assertThat(pictures)
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.problem()).isNull());
        Files.writeString(folder.resolve(html), HtmlReport.write(report, pictures));
    }

    private static Report report(String pdf) throws Exception {
        return report(
                pdf, Map.of("binding-edge", "top", "sides", "one", "hanger", "gap = 90 mm, thumb-cut = 60 x 20 mm"));
    }

    private static Report report(String pdf, Map<String, Object> job) throws Exception {
        return BindPrep.check(CheckRequest.of(FIXTURES.resolve(pdf), pdf, JobReader.toJob(JobSettings.of(job))));
    }

    private static Report invented() {
        String long_ = "w".repeat(300);
        Scenario scenario = Scenario.of(1_321).file(long_ + ".pdf");
        for (int p = 100; p < 130; p++) {
            scenario.hit(p, MarkKind.TEXT, Verdict.HIT, 12, 4.2, long_)
                    .hit(p + 200, MarkKind.LINE, Verdict.TIGHT, null, 9, "");
        }
        return scenario.unchecked(1_000, "it takes too long to read").report();
    }

    private static PagePicture uncheckedPage() {
        return PagePicture.none(1_000, "its content cannot be drawn");
    }

    private static void open(String html, int width, boolean dark) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", width < 600));
        browser.get(folder.resolve(html).toUri().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "cookbook.html,1280,false", "cookbook.html,1280,true", "cookbook.html,360,false", "cookbook.html,360,true",
        "calendar.html,1280,false", "calendar.html,360,true", "long.html,1280,true", "long.html,360,false",
        "sheet.html,1280,false", "sheet.html,1280,true", "sheet.html,360,true", "day.html,390,false"
    })
    void axeFindsNothing(String html, int width, boolean dark) {
        open(html, width, dark);
        browser.executeScript(axe);
        Object violations = browser.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run(document, {resultTypes: ['violations'], rules: {'target-size': {enabled: false}}})"
                + ".then(r => done(r.violations.map(v => v.impact + ' ' + v.id + ': '"
                + " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 200) + n.failureSummary).join(' | '))))");
        assertThat((List<?>) violations).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "cookbook.html,360",
        "cookbook.html,320",
        "calendar.html,360",
        "long.html,360",
        "long.html,1280",
        "sheet.html,390",
        "sheet.html,320",
        "day.html,390"
    })
    void nothingScrollsSideways(String html, int width) {
        open(html, width, false);
        assertThat(((Number) browser.executeScript("return document.documentElement.scrollWidth")).intValue())
                .isLessThanOrEqualTo(width);
        // nor does anything within the page
        Object within = browser.executeScript("return [...document.querySelectorAll('body *')]"
                + ".filter(e => e.scrollWidth > e.clientWidth + 1 && /auto|scroll/.test(getComputedStyle(e).overflowX))"
                + ".map(e => e.outerHTML.slice(0, 100))");
        assertThat((List<?>) within).isEmpty();
    }

    /** At the punch on a phone: what is set comes before what was found, and a screen says that it is no ruler. */
    @Test
    void thePhoneShowsSettingsBeforeFindings() {
        open("bad-sheet.html", 390, false);
        assertThat(((Number) browser.executeScript(
                                "const top = q => document.querySelector(q).getBoundingClientRect().top;"
                                        + "return top('.faults') - top('.tiles')"))
                        .doubleValue())
                .isPositive();
        assertThat(browser.findElement(By.cssSelector(".print-me")).isDisplayed())
                .isTrue();
        assertThat(browser.findElement(By.cssSelector(".print-me")).getText()).contains("Print this page at 100 %");
        assertThat(browser.findElement(By.cssSelector("td[data-label='Total to issue']"))
                        .isDisplayed())
                .isTrue();
    }

    @Test
    void theTabKeyReachesEveryLinkInOrder() {
        open("cookbook.html", 1280, false);
        List<String> links = new ArrayList<>();
        for (WebElement link : browser.findElements(By.tagName("a"))) {
            links.add(link.getDomAttribute("href"));
        }
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            browser.switchTo().activeElement().sendKeys(Keys.TAB);
            reached.add(browser.switchTo().activeElement().getDomAttribute("href"));
        }
        assertThat(reached).isEqualTo(links).hasSizeGreaterThan(15);
    }

    @Test
    void nothingIsAskedOfTheNetwork() {
        browser.manage().logs().get(LogType.PERFORMANCE);
        open("cookbook.html", 1280, false);
        List<String> asked = browser.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(entry -> entry.getMessage())
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .map(message -> message.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]{1,200}).*", "$1"))
                .filter(url -> !url.startsWith("data:image/"))
                .toList();
        assertThat(asked)
                .isNotEmpty()
                .allSatisfy(url -> assertThat(url).endsWith("/cookbook.html").startsWith("file:"));
    }

    @Test
    void everyPictureIsShown() {
        open("cookbook.html", 1280, false);
        Object sizes = browser.executeScript("return Promise.all([...document.querySelectorAll('svg image')].map(i => "
                + "new Promise(done => { const p = new Image(); p.onload = () => done(p.naturalWidth);"
                + " p.onerror = () => done(0); p.src = i.getAttribute('href'); })))");
        assertThat((List<?>) sizes)
                .hasSizeGreaterThan(13)
                .allSatisfy(w -> assertThat(((Number) w).intValue()).isGreaterThan(100));
    }

    @Test
    void printedItHasEveryPageAndItsVerdict() throws Exception {
        open("cookbook.html", 1280, true);
        String base64 = (String) browser.executeCdpCommand("Page.printToPDF", Map.of("printBackground", false))
                .get("data");
        try (PDDocument printed = Loader.loadPDF(Base64.getDecoder().decode(base64))) {
            String text = new PDFTextStripper().getText(printed);
            assertThat(text)
                    .contains("Do not print. The holes would cut content on 2 pages.")
                    .contains("Page 14, hit", "Page 44, tight", "Only trained people run punches");
            assertThat(printed.getNumberOfPages()).isBetween(3, 12);
        }
    }

    /** Read back from the dots that the browser prints: what measures the paper is a bar of 100 mm. */
    @Test
    void theJobSheetPrintsTheEdgeAtTrueSize() throws Exception {
        open("sheet.html", 1280, false);
        String base64 = (String) browser.executeCdpCommand(
                        "Page.printToPDF", Map.of("paperWidth", 8.27, "paperHeight", 11.69, "preferCSSPageSize", true))
                .get("data");
        int bars = 0;
        try (PDDocument printed = Loader.loadPDF(Base64.getDecoder().decode(base64))) {
            assertThat(new PDFTextStripper().getText(printed)).contains("thumb cut 60 x 20\u00a0mm");
            for (int page = 0; page < printed.getNumberOfPages(); page++) {
                BufferedImage image = new PDFRenderer(printed).renderImageWithDPI(page, 254);
                for (int y = 0; y < image.getHeight(); y++) {
                    // the strokes at its ends stand half a width out
                    bars += Math.abs(longestRun(image, y) - 1004) <= 4 ? 1 : 0;
                }
            }
        }
        assertThat(bars).as("rows of dots through the bar of 100 mm").isBetween(2, 8);
    }

    private static int longestRun(BufferedImage image, int y) {
        int longest = 0;
        int run = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            run = (image.getRGB(x, y) & 0xFF) < 128 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }
}
