package io.bindprep.pdf.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A document that lets go of every page after it is looked at tells the same as one that keeps them all. */
class LeanDocumentTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    private Path folder;

    private static List<String> seen(Path file, int many) throws Exception {
        List<String> told = new ArrayList<>();
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "client.pdf", null), many)) {
            told.add(pdf.facts().toString());
            for (int page = 1; page <= pdf.facts().pages().size(); page++) {
                PageMarks marks = pdf.scan(page, PageEdge.LEFT, 20);
                told.add(page + ": " + marks.unchecked() + " " + marks.basics());
                for (Mark m : marks.marks()) {
                    told.add(m.kind() + " " + m.stage() + " " + m.nearMm() + " " + m.farMm() + " " + m.alongStartMm()
                            + " " + m.alongEndMm() + " " + m.words());
                }
            }
        }
        return told;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "members-handbook-a4.pdf",
                "cookbook-letter.pdf",
                "calendar-a4-landscape.pdf",
                "mixed-sizes.pdf",
                "owner-only.pdf"
            })
    void lettingGoChangesNothing(String name) throws Exception {
        List<String> kept = seen(FIXTURES.resolve(name), Integer.MAX_VALUE);
        assertThat(kept).hasSizeGreaterThan(10);
        assertThat(seen(FIXTURES.resolve(name), 1)).isEqualTo(kept);
    }

    @Test
    void aLayerThatDoesNotPrintStaysKnown() throws Exception {
        Path file = folder.resolve("layers.pdf");
        try (PDDocument document = new PDDocument()) {
            COSDictionary layer = new COSDictionary();
            layer.setItem(COSName.TYPE, COSName.OCG);
            layer.setString(COSName.NAME, "notes");
            document.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, off(layer));
            for (int page = 0; page < 30; page++) {
                COSDictionary properties = new COSDictionary();
                properties.setItem(COSName.getPDFName("notes"), layer);
                COSDictionary resources = new COSDictionary();
                resources.setItem(COSName.PROPERTIES, properties);
                PDPage made = new PDPage();
                made.getCOSObject().setItem(COSName.RESOURCES, resources);
                PDStream content = new PDStream(document);
                try (OutputStream out = content.createOutputStream()) {
                    out.write(
                            "/OC /notes BDC 5 100 20 20 re f EMC 30 100 5 5 re f".getBytes(StandardCharsets.US_ASCII));
                }
                made.setContents(content);
                document.addPage(made);
            }
            document.save(file.toFile());
        }
        for (int many : new int[] {1, Integer.MAX_VALUE}) {
            List<String> told = seen(file, many);
            // 30 pt are 10.583 mm
            assertThat(told)
                    .filteredOn(line -> line.startsWith("ART"))
                    .hasSize(30)
                    .allSatisfy(line -> assertThat(line).startsWith("ART GEOMETRY 10.583"));
        }
    }

    private static COSDictionary off(COSDictionary layer) {
        COSArray all = new COSArray();
        all.add(layer);
        COSDictionary config = new COSDictionary();
        config.setItem(COSName.OFF, all);
        COSDictionary properties = new COSDictionary();
        properties.setItem(COSName.OCGS, all);
        properties.setItem(COSName.D, config);
        return properties;
    }

    @Test
    void oneObjectStandsForAReferenceUntilItIsLetGo() throws Exception {
        COSObjectKey one = new COSObjectKey(1, 0);
        COSObjectKey two = new COSObjectKey(2, 0);
        try (LeanDocument document = new LeanDocument(null, null, 1)) {
            Object kept = document.getObjectFromPool(one);
            document.keep(false);
            Object passing = document.getObjectFromPool(two);
            assertThat(document.getObjectFromPool(two)).isSameAs(passing);
            assertThat(document.forgetMany()).isTrue();
            assertThat(document.getObjectFromPool(one)).isSameAs(kept);
            assertThat(document.getObjectFromPool(two)).isNotSameAs(passing);
            passing = document.getObjectFromPool(two);
            document.keep(true);
            assertThat(document.getObjectFromPool(two)).isSameAs(passing);
            assertThat(document.forgetMany()).isFalse();
            document.keep(false);
            assertThat(document.getObjectFromPool(two)).isSameAs(passing);
        }
    }
}
