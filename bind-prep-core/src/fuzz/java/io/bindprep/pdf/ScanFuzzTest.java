package io.bindprep.pdf;

import io.bindprep.files.PdfSource;
import com.code_intelligence.jazzer.junit.FuzzTest;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.strip.LeftOut;
import io.bindprep.pdf.strip.StripRaster;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.problem.UnreadableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the bytes, a file is read or refused with a reason, and a page is seen or not checked with a reason. */
class ScanFuzzTest {
    private static final int MOST_PAGES = 3;

    @TempDir
    static Path folder;

    /** Bytes as a whole file. */
    @FuzzTest(maxDuration = "150s")
    void aFile(byte[] bytes) throws IOException {
        look(bytes);
    }

    /** Bytes as a page's drawing instructions. */
    @FuzzTest(maxDuration = "150s")
    void instructions(byte[] bytes) throws IOException {
        look(page(bytes));
    }

    /** Bytes as drawing instructions: what is drawn of them for a strip is what is drawn of all of them. */
    @FuzzTest(maxDuration = "150s")
    void strips(byte[] bytes) throws IOException, UnreadableInputException {
        Path file = Files.write(folder.resolve("fuzzed.pdf"), page(bytes));
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "fuzzed.pdf", null))) {
            if (pdf.scan(1, PageEdge.LEFT, 15).unchecked() != null) {
                return;
            }
            StripRaster.Source whole =
                    pdf.strip(pdf.page(1), pdf.facts().pages().get(0), PageEdge.LEFT, 15);
            StripRaster all = whole.draw(LeftOut.NOTHING);
            StripRaster near = pdf.lean(whole).draw(LeftOut.NOTHING);
            if (!Arrays.equals(all.rgb(), near.rgb())) {
                throw new IllegalStateException("another strip");
            }
        } catch (Budget.Spent e) {
            return; // that is told of the page
        }
    }

    private static byte[] page(byte[] bytes) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            COSStream content = document.getDocument().createCOSStream();
            try (OutputStream out = content.createOutputStream()) {
                out.write(bytes);
            }
            COSDictionary font = new COSDictionary();
            font.setItem(COSName.TYPE, COSName.FONT);
            font.setItem(COSName.SUBTYPE, COSName.TYPE1);
            font.setName(COSName.BASE_FONT, "Helvetica");
            COSDictionary fonts = new COSDictionary();
            fonts.setItem(COSName.getPDFName("F1"), font);
            COSDictionary resources = new COSDictionary();
            resources.setItem(COSName.FONT, fonts);
            page.getCOSObject().setItem(COSName.RESOURCES, resources);
            page.getCOSObject().setItem(COSName.CONTENTS, content);
            document.addPage(page);
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            document.save(file);
            return file.toByteArray();
        }
    }

    private static void look(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("fuzzed.pdf"), bytes);
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "fuzzed.pdf", null))) {
            int pages = Math.min(MOST_PAGES, pdf.facts().pages().size());
            for (int page = 1; page <= pages; page++) {
                for (PageEdge edge : PageEdge.values()) {
                    sound(pdf.scan(page, edge, 15));
                }
            }
        } catch (UnreadableInputException e) {
            if (String.valueOf(e.getMessage()).isBlank() || e.remedy().isBlank()) {
                throw new IllegalStateException("refused without a word", e);
            }
        }
    }

    private static void sound(PageMarks found) {
        if (found.unchecked() != null && found.unchecked().isBlank()) {
            throw new IllegalStateException("not checked without a word");
        }
        boolean odd = found.marks().stream()
                .anyMatch(m -> !(m.nearMm() >= -0.01 && m.nearMm() <= m.farMm() && m.alongStartMm() <= m.alongEndMm()));
        if (odd) {
            throw new IllegalStateException("a mark without bounds: " + found.marks());
        }
    }
}
