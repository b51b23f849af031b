package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.request.CheckRequest;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** 16,248 pages, each with objects of its own, in a Java machine of 128 MB. */
public class LongBookTest {
    private static final int PAGES = 16_248;
    /** Of each page: itself, its content, its resources, a state, and links like those of a manual's index. */
    private static final int OBJECTS = 4 + 8;

    private static final int HIT = 12_345;

    @TempDir
    private Path folder;

    @Test
    void passesInASmallHeap() throws Exception {
        Path book = folder.resolve("book.pdf");
        write(book, PAGES);
        assertThat(OwnMachine.run("128m", folder, Run.class, book.toString()))
                .containsExactly("16248 pages", "hit 12345");
    }

    /** The check, in a machine of its own. */
    static final class Run {
        public static void main(String[] args) throws Exception {
            Report report =
                    BindPrep.check(CheckRequest.of(Path.of(args[0]), "book.pdf", JobReader.toJob(JobSettings.empty())));
            System.out.println(report.pages().size() + " pages");
            report.pages().stream()
                    .filter(p -> p.verdict().verdict() != Verdict.CLEAR)
                    .forEach(
                            p -> System.out.println(p.verdict().verdict().name().toLowerCase(Locale.ROOT) + " "
                                    + p.verdict().page()));
        }
    }

    /** A PDF written out by hand (ISO 32000-1:2008, 7.5), as PDFBox would keep all of it in memory. */
    public static void write(Path file, int pages) throws Exception {
        List<Long> places = new ArrayList<>();
        try (OutputStream out = Files.newOutputStream(file)) {
            long at = put(out, "%PDF-1.7\n");
            int objects = 3 + pages * OBJECTS;
            StringBuilder kids = new StringBuilder();
            for (int page = 0; page < pages; page++) {
                kids.append(3 + page * OBJECTS).append(" 0 R ");
            }
            for (int number = 1; number < objects; number++) {
                places.add(at);
                String body;
                if (number == 1) {
                    body = "<< /Type /Catalog /Pages 2 0 R >>";
                } else if (number == 2) {
                    body = "<< /Type /Pages /Count " + pages + " /Kids [ " + kids + "] /MediaBox [ 0 0 612 792 ] >>";
                } else {
                    body = object((number - 3) / OBJECTS + 1, (number - 3) % OBJECTS, number);
                }
                at += put(out, number + " 0 obj\n" + body + "\nendobj\n");
            }
            StringBuilder end = new StringBuilder("xref\n0 " + objects + "\n0000000000 65535 f \n");
            for (long place : places) {
                end.append(String.format(Locale.ROOT, "%010d 00000 n \n", place));
            }
            put(out, end + "trailer\n<< /Size " + objects + " /Root 1 0 R >>\nstartxref\n" + at + "\n%%EOF\n");
        }
    }

    private static String object(int page, int which, int number) {
        int first = number - which;
        return switch (which) {
            case 0 -> {
                StringBuilder links = new StringBuilder();
                for (int i = 4; i < OBJECTS; i++) {
                    links.append(first + i).append(" 0 R ");
                }
                yield "<< /Type /Page /Parent 2 0 R /Contents " + (first + 1) + " 0 R /Resources " + (first + 2)
                        + " 0 R /Annots [ " + links + "] >>";
            }
            case 1 -> {
                // a box of 20 pt clear of the holes, on one page at the binding edge
                String content = "/G gs " + (page == HIT ? 4 : 300) + " 20 20 740 re f";
                yield "<< /Length " + content.length() + " >>\nstream\n" + content + "\nendstream";
            }
            case 2 -> "<< /ExtGState << /G " + (first + 3) + " 0 R >> >>";
            case 3 -> "<< /Type /ExtGState /LW " + page + " >>";
            default ->
                "<< /Type /Annot /Subtype /Link /Border [ 0 0 0 ] /Rect [ 300 " + which * 50 + " 320 "
                        + (which * 50 + 10) + " ] /Dest [ 3 0 R /XYZ 0 " + page + " 0 ] >>";
        };
    }

    private static long put(OutputStream out, String text) throws Exception {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        out.write(bytes);
        return bytes.length;
    }
}
