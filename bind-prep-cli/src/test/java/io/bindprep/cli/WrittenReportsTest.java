package io.bindprep.cli;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.ReportFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** {@code check --write}. */
class WrittenReportsTest {
    private static final String CLEAR = fixture("members-handbook-a4.pdf");
    private static final String HIT = fixture("cookbook-letter.pdf");
    private static final String DAMAGED = fixture("damaged.pdf");

    @TempDir
    private Path folder;

    private String in(String name) {
        return folder + "/" + name;
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void severalFormatsInOneRunAndTheAnswerAsEver() throws IOException {
        Cli plain = Cli.run("check", HIT);
        Cli run = Cli.run("check", "--write", "json=" + in("r.json"), "--write", "sarif=" + in("r.sarif"), HIT);
        assertThat(run).isEqualTo(plain);
        assertThat(written()).containsExactly("r.json", "r.sarif");
        assertThat(JsonMapper.shared()
                        .readTree(Files.readString(folder.resolve("r.json")))
                        .get("pages"))
                .hasSize(100);
    }

    @Test
    void theEndingSaysTheFormatAndMayNotContradict() throws IOException {
        assertThat(Cli.run("check", "--write", in("r.html"), "--write", in("r.junit.xml"), CLEAR)
                        .exit())
                .isZero();
        assertThat(folder.resolve("r.html")).content().startsWith("<!doctype html>");
        assertThat(folder.resolve("r.junit.xml")).content().contains("<testsuite");
        Cli run = Cli.run("check", "--write", "html=" + in("x.json"), CLEAR);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("ends as json does", "html");
        assertThat(written()).containsExactly("r.html", "r.junit.xml");
    }

    @Test
    void theMessageToTheClientIsHtmlOrMarkdownByItsEnding() throws IOException {
        assertThat(Cli.run("check", "--write", "client=" + in("a.md"), "--write", "client=" + in("a.html"), HIT)
                        .exit())
                .isEqualTo(1);
        assertThat(folder.resolve("a.md"))
                .content()
                .startsWith("# Changes to cookbook-letter.pdf\n")
                .contains("## Page 14\n\n- Move the text \"Bones:", "to the left");
        assertThat(folder.resolve("a.html")).content().contains("<!doctype html>", "data:image/");
        assertThat(Cli.run("check", "--write", "client=" + in("a.json"), HIT).err())
                .contains("ends as json does");
    }

    @Test
    void oneSummaryTellsOfEveryDocumentWithLinksToItsReports() throws IOException {
        Path other = Files.createDirectories(folder.resolve("in"));
        Path hostile = Files.copy(Path.of(DAMAGED), other.resolve("a|b`c` <i>.pdf"));
        Cli run = Cli.run(
                "check",
                "--write",
                in("summary.md"),
                "--write",
                "html=" + in("out/"),
                "--write",
                "client=" + in("{name} for them.md"),
                CLEAR,
                HIT,
                hostile + "");
        assertThat(run.exit()).as(run.err()).isEqualTo(3);
        List<String> lines = Files.readAllLines(folder.resolve("summary.md"));
        assertThat(lines).contains("3 documents: 1 not checked, 1 failed, 1 good.");
        List<String> rows = lines.stream().filter(line -> line.startsWith("| ")).toList();
        assertThat(rows).hasSize(4);
        assertThat(rows.get(1))
                .contains("a\\|b\\`c\\` \\<i\\>.pdf", "Not checked.")
                .contains("](out/a%7Cb%60c%60%20%3Ci%3E.html)");
        assertThat(rows.get(2))
                .contains(
                        "cookbook-letter.pdf | Do not print. The holes would cut content on 2 pages. | 50 | Page 14: ")
                .contains("(text-hit) And 3 more. | [html](out/cookbook-letter.html)")
                .contains("[client-md](cookbook-letter%20for%20them.md) |");
        assertThat(rows.get(3)).contains("members-handbook-a4.pdf | Good to print and bind.");
        assertThat(folder.resolve("out/cookbook-letter.html")).exists();
    }

    @Test
    void theMarkdownForTheClientNamesThePicturesThatAreWrittenToo() throws IOException {
        Cli.run("check", "--write", "client=" + in("a.md"), "--write", "client=" + in("with pictures.html"), HIT);
        assertThat(folder.resolve("a.md"))
                .content()
                .contains("\nWith pictures of the pages: [with pictures.html](with%20pictures.html)\n");
        Cli.run("check", "--write", "client=" + in("b.md"), HIT);
        assertThat(folder.resolve("b.md"))
                .content()
                .contains("\nAsk us for this message with pictures of the pages.\n");
    }

    @Test
    void aBuildServerGetsNamesWithoutTheMachineAndTheTimeOfTheCheck() throws IOException {
        Path one = Files.createDirectories(folder.resolve("one"));
        Path two = Files.createDirectories(folder.resolve("two"));
        Files.copy(Path.of(CLEAR), one.resolve("book.pdf"));
        Files.copy(Path.of(DAMAGED), two.resolve("book.pdf"));
        Cli.run("check", "--write", "junit=" + in("out/"), "--write", "sarif=" + in("out/"), HIT, folder + "");
        String here = folder.toString();
        List<String> junit =
                written().stream().filter(name -> name.endsWith(".junit.xml")).toList();
        assertThat(junit).hasSize(3);
        StringBuilder all = new StringBuilder();
        for (String name : junit) {
            String text = Files.readString(folder.resolve(name));
            assertThat(text).doesNotContain(here).contains("<testsuite name=\"");
            all.append(text);
        }
        // each as short as tells it from the other of the same name
        assertThat(all.toString())
                .contains("<testsuite name=\"one/book.pdf\"", "<testsuite name=\"two/book.pdf\"")
                .containsPattern("cookbook-letter.pdf\" tests=\"[0-9]+\" failures=\"2\" errors=\"0\""
                        + " skipped=\"[0-9]+\" time=\"[0-9]+\\.[0-9]{3}\"");
    }

    @Test
    void theHelpNamesEveryFormat() {
        String help = Cli.run("check", "--help").out().replaceAll("\\s+", " ");
        String write = help.substring(help.indexOf("--write"), help.indexOf("--all-pages"));
        assertThat(write).contains(ReportFormat.ids());
    }

    @Test
    void aFolderGetsEveryFormatUnderTheFilesName() throws IOException {
        assertThat(Cli.run("check", "--write", in("new/deep/"), CLEAR).exit()).isZero();
        assertThat(written())
                .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                Stream.of("new/deep/summary.md"),
                                Stream.of(ReportFormat.values()).map(f -> "new/deep/members-handbook-a4" + f.ending()))
                        .toList());
        assertThat(folder.resolve("new/deep/members-handbook-a4.txt")).content().startsWith("Good to print and bind");
    }

    @Test
    void ofSeveralFilesEachHasItsOwn() throws IOException {
        Path other = Files.createDirectories(folder.resolve("in"));
        Path same = Files.copy(Path.of(DAMAGED), other.resolve("Cookbook-Letter.pdf"));
        Cli run = Cli.run(
                "check",
                "--write",
                "junit=" + in("{name}.xml"),
                "--write",
                "xjdf=" + in("out/"),
                HIT,
                same + "",
                CLEAR);
        assertThat(run.exit()).isEqualTo(3);
        assertThat(written())
                .hasSize(7)
                .contains("members-handbook-a4.xml", "out/members-handbook-a4.xjdf")
                .filteredOn(name -> name.endsWith("ookbook-letter.xml") || name.endsWith("ookbook-Letter.xml"))
                .hasSize(2);
    }

    @Test
    void anUnreadableFileLeavesNoOlderReportInPlace() throws IOException {
        for (ReportFormat format : ReportFormat.values()) {
            Files.writeString(folder.resolve("damaged" + format.ending()), "good, said yesterday's report");
        }
        assertThat(Cli.run("check", "--write", folder.toString(), DAMAGED).exit())
                .isEqualTo(3);
        for (ReportFormat format : ReportFormat.values()) {
            assertThat(folder.resolve("damaged" + format.ending())).content().doesNotContain("yesterday");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "xml=a.xml, no format is called \"xml\"; formats: text; json",
        "a.jsonx, neither FORMAT=FILE; formats: text",
        "json=, say which file; as in json=book.json",
        "summary=, say which file; as in summary=summary.md",
        "summary={name}.md, one summary tells of all documents; leave {name} out",
        "summary=a.html, the name ends as html does; the format asked for is summary",
        "summary=a.client.md, the name ends as client-md does; the format asked for is summary",
        "json=a.summary.md, the name ends as summary does; the format asked for is json",
        "client=summary.md, the name ends as summary does; the format asked for is client",
        "json=no/such/folder/a.json, there is no folder"
    })
    void whatCannotBeDoneIsSaidBeforeAnythingIsChecked(String asked, String words) {
        Cli run = Cli.run(
                request -> {
                    throw new AssertionError("nothing is checked");
                },
                "check",
                "--write",
                asked,
                CLEAR);
        assertThat(run.exit()).as(run.err()).isEqualTo(2);
        assertThat(run.err()).contains(("--write " + asked + ": " + words).split("; ")[0]);
        assertThat(run.err()).contains(words.split("; "));
    }

    @Test
    void noReportOverwritesAnInputOrAnother() throws IOException {
        Path copy = Files.copy(Path.of(CLEAR), folder.resolve("book.pdf"));
        Cli over = Cli.run("check", "--write", "text=" + folder.resolve("./book.pdf"), copy.toString());
        assertThat(over.exit()).isEqualTo(2);
        assertThat(over.err()).contains("never overwritten");
        // by a link, which only the file system knows
        Files.createSymbolicLink(folder.resolve("link.txt"), copy);
        Cli link = Cli.run("check", "--write", "text=" + in("link.txt"), copy.toString());
        assertThat(link.exit()).isEqualTo(2);
        assertThat(link.err()).contains("--write text=", "is an input, which is never overwritten");
        assertThat(copy).hasSameBinaryContentAs(Path.of(CLEAR));
        Cli twice = Cli.run(
                "check", "--write", "json=" + in("a"), "--write", "text=" + folder.resolve("./a"), copy.toString());
        assertThat(twice.exit()).isEqualTo(2);
        assertThat(twice.err()).contains("already written by json=");
        Cli into = Cli.run("check", "--write", "json=" + in("a.json"), CLEAR, HIT);
        assertThat(into.exit()).isEqualTo(2);
        assertThat(into.err()).contains("json={name}.json");
    }

    @Test
    void whatCannotBeWrittenIsSaidAndTheRestIsThere() throws IOException {
        Files.createDirectories(folder.resolve("members-handbook-a4.json/occupied"));
        Cli run = Cli.run("check", "--write", in(""), CLEAR);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).startsWith("Good to print and bind");
        assertThat(run.err()).contains("members-handbook-a4.json", "a folder");
        assertThat(written()).hasSize(ReportFormat.values().length);
    }
}
