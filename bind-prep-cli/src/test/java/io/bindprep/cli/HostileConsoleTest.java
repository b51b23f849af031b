package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Nothing that a file brings, its name, title or text, nor a typed word, rewrites the screen of any command. */
class HostileConsoleTest {
    // Unicode 15, 23.1: C0 and C1 codes; Unicode Annex 9: marks that turn writing round
    private static final String MARKS = "\u001B[31m\u0007\u009B31m\u202E";

    @TempDir
    private Path folder;

    private Path hostile(String name) throws Exception {
        Path file = folder.resolve("a" + MARKS + name);
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle("t" + MARKS);
            PDDocumentOutline outline = new PDDocumentOutline();
            for (int i = 0; i < 3; i++) {
                PDPage page = new PDPage();
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.beginText();
                    content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
                    content.newLineAtOffset(6, 700);
                    content.showText("text in the holes");
                    content.endText();
                }
                PDOutlineItem item = new PDOutlineItem();
                item.setTitle("b" + MARKS);
                PDPageFitDestination there = new PDPageFitDestination();
                there.setPage(page);
                item.setDestination(there);
                outline.addLast(item);
            }
            document.getDocumentCatalog().setDocumentOutline(outline);
            document.save(file.toFile());
        }
        return file;
    }

    private static List<String> marks(String text) {
        return text.codePoints()
                .filter(c -> Character.getType(c) == Character.CONTROL && c != '\n' && c != '\t'
                        || c >= 0x202A && c <= 0x202E
                        || c >= 0x2066 && c <= 0x2069)
                .mapToObj(Integer::toHexString)
                .distinct()
                .toList();
    }

    // such names cannot be on Windows
    @DisabledOnOs(OS.WINDOWS)
    @Test
    void everyCommandOverHostileNamesAndDocuments() throws Exception {
        String pdf = hostile("1.pdf").toString();
        String other = hostile("2.pdf").toString();
        String out = folder.resolve("o" + MARKS).toString();
        Path notPdf = folder.resolve("n" + MARKS + ".pdf");
        Files.writeString(notPdf, "no PDF" + MARKS);
        Path job = folder.resolve("j" + MARKS + ".yaml");
        Files.writeString(job, "stock: bond-20\nsidez: \"x\\e[31m\"\n");
        Path day = folder.resolve("d" + MARKS + ".yaml");
        Files.writeString(
                day,
                "jobs:\n  - pdf: \""
                        + Path.of(pdf)
                                .getFileName()
                                .toString()
                                .replace("\u001B", "\\e")
                                .replace("\u0007", "\\a")
                                .replace("\u009B", "\\x9B")
                                .replace("\u202E", "\\u202E")
                        + "\"\n");
        List<List<String>> lines = new ArrayList<>(List.of(
                List.of("check", pdf),
                List.of("check", "--notes", pdf, other),
                List.of("check", "--format", "json", pdf),
                List.of("check", "--format", "jsonl", pdf, notPdf.toString()),
                List.of("check", notPdf.toString()),
                List.of("check", folder + "/" + MARKS + ".pdf"),
                List.of("check", "--job", job.toString(), pdf),
                List.of("check", "--job", folder + "/" + MARKS + ".yaml", pdf),
                List.of("check", "--write", "json=" + folder + "/" + MARKS + "/x.json", pdf),
                List.of("check", "--since", folder + "/" + MARKS + ".json", pdf),
                List.of("check", "--password-file", folder + "/" + MARKS, pdf),
                List.of("check", "--accept-into", out + ".yaml", "--accept-reason", "r", "--accept-who", "w", pdf),
                List.of("check", "--watch", folder + "/" + MARKS),
                List.of("check", "--watch", folder.toString(), "--out", out, "--once", "--interval", "1s"),
                List.of("check", "--explain-job", "--stock", "x" + MARKS, pdf),
                List.of("spec", pdf, "-o", out + ".pdf"),
                List.of("spec", pdf, "-o", folder + "/" + MARKS + "/x.pdf"),
                List.of("proof", pdf, "-o", out + "-proof.pdf"),
                List.of("shift", pdf, "-o", out + "-shift.pdf"),
                List.of("shift", pdf, "--split", "--stock", "coverboard-48", "-o", out + "-split.pdf"),
                List.of("plan", "--leaves", "9", "--trim", "a4", "--name", "n" + MARKS, "-o", out + "-plan.pdf"),
                List.of("day", day.toString(), "-o", out + "-day.pdf"),
                List.of("day", folder + "/" + MARKS + ".yaml"),
                List.of("testsheet", "--trim", "a4", "-o", out + "-test.pdf"),
                List.of(
                        "calibrate",
                        "--punch",
                        out + "-no.yaml",
                        "--depth",
                        "1",
                        "--edge-first",
                        MARKS,
                        "--edge-last",
                        "1 mm",
                        "--end-first",
                        "1 mm",
                        "--row",
                        "1 mm",
                        "-o",
                        out + "-bench.yaml"),
                List.of("init", out + "-job.yaml"),
                List.of("init", out + "-job.yaml"),
                List.of("list", "x" + MARKS),
                List.of("help", "x" + MARKS),
                List.of("check", "--x" + MARKS),
                List.of("check", "--format", MARKS, pdf),
                List.of("check", "--copies", MARKS, pdf),
                List.of("x" + MARKS)));
        for (String key : List.of(
                "--stock",
                "--trim",
                "--sides",
                "--covers",
                "--inserts",
                "--tabs",
                "--fold-outs",
                "--pitch",
                "--punch",
                "--depth",
                "--binding-margin",
                "--overs",
                "--press-sheet",
                "--customer",
                "--tables",
                "--hanger")) {
            lines.add(List.of("check", key, "v" + MARKS, pdf));
        }
        SoftAssertions all = new SoftAssertions();
        for (List<String> line : lines) {
            Cli run = Cli.run(line.toArray(String[]::new));
            all.assertThat(marks(run.out() + run.err())).as(line.toString()).isEmpty();
            all.assertThat(run.exit()).as(line + run.err()).isNotEqualTo(4);
        }
        all.assertAll();
    }

    @Test
    void marksAreFound() {
        assertThat(marks(MARKS)).containsExactly("1b", "7", "9b", "202e");
    }
}
