package io.bindprep.pdf.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CopyCheckTest {
    @TempDir
    private Path folder;

    private Path copy(String from, String to) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < 2; i++) {
                PDPage page = new PDPage();
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.addRect(100, 100, 50, 50);
                    content.fill();
                }
            }
            document.save(bytes, CompressParameters.NO_COMPRESSION);
        }
        String text = bytes.toString(StandardCharsets.ISO_8859_1).replaceFirst(from, to);
        return Files.writeString(folder.resolve("copy.pdf"), text, StandardCharsets.ISO_8859_1);
    }

    @Test
    void aWholeCopyIsGood() throws Exception {
        assertThat(CopyCheck.fault(copy("never", "never"), List.of(1, 1))).isEmpty();
    }

    @Test
    void aTableOfContentsThatPointsElsewhereIsAFaultThoughOthersWouldGuess() throws Exception {
        assertThat(CopyCheck.fault(copy("startxref\n\\d", "startxref\n9"), List.of(1, 1)))
                .hasValueSatisfying(why -> assertThat(why).contains("could not be read"));
    }

    @Test
    void pagesThatAreGoneAreAFault() throws Exception {
        assertThat(CopyCheck.fault(copy("never", "never"), List.of(1, 1, 1)))
                .hasValueSatisfying(why -> assertThat(why).contains("2 pages where 3 belong"));
    }

    @Test
    void contentThatIsGoneIsAFault() throws Exception {
        assertThat(CopyCheck.fault(copy("/Contents (\\d)", "/Kontents $1"), List.of(1, 1)))
                .hasValueSatisfying(why -> assertThat(why).contains("page 1"));
    }
}
