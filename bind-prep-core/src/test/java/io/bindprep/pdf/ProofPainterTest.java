package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.proof.Comment;
import io.bindprep.proof.Outline;
import io.bindprep.proof.ProofPage;
import io.bindprep.proof.Strip;
import io.bindprep.wording.Terms;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A proof with its layers off looks as the page did: by PDFBox, and by Poppler where it is installed. */
class ProofPainterTest {
    private static final String MARKS = "0 g 20 20 30 5 re f 60 95 5 40 re f 2 w 20 30 m 70 80 l S ";

    @TempDir
    private Path folder;

    /** One round hole, its middle 12 mm from the binding edge and 50 mm along it, 6 mm wide. */
    private static ProofPage proof(int page, PageEdge edge, Comment... comments) {
        return new ProofPage(
                page,
                edge,
                new Strip(100, 16, 20, List.of(new Outline(true, 9, 15, 47, 53)), List.of()),
                List.of(comments));
    }

    private static Comment hit(String words) {
        return new Comment(Verdict.HIT, List.of(new Outline(false, 10, 14, 48, 52)), words);
    }

    private static byte[] proofed(OpenedPdf pdf, ProofPage... pages) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (pdf) {
            EditedPdf edited = pdf.edit();
            for (ProofPage page : pages) {
                assertThat(edited.proof(page)).isTrue();
            }
            edited.save(out, "test");
        }
        return out.toByteArray();
    }

    /** The same file with the layers of the proof off and without the events that put them on again. */
    private static byte[] layersOff(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            COSDictionary config = document.getDocumentCatalog()
                    .getCOSObject()
                    .getCOSDictionary(COSName.OCPROPERTIES)
                    .getCOSDictionary(COSName.D);
            COSArray on = config.getCOSArray(COSName.ON);
            COSArray off = config.getCOSArray(COSName.OFF);
            off = off == null ? new COSArray() : off;
            for (int i = on.size() - 3; i < on.size(); i++) {
                off.add(on.get(i));
            }
            config.setItem(COSName.OFF, off);
            config.removeItem(COSName.ON);
            config.removeItem(COSName.AS);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private void assertLooksAlike(byte[] before, byte[] after) throws Exception {
        Raster was = Raster.ofPdfBox(before, 1);
        assertThat(was.dark()).isGreaterThan(1000);
        assertThat(Raster.ofPdfBox(after, 1).unlike(was, 0, 0)).isZero();
        if (Raster.onPath("pdftoppm")) {
            Path a = Files.write(folder.resolve("a.pdf"), before);
            Path b = Files.write(folder.resolve("b.pdf"), after);
            assertThat(Raster.ofPoppler(b, 1).unlike(Raster.ofPoppler(a, 1), 0, 0))
                    .isZero();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                MARKS,
                "q 1 0 0 1 5 5 cm q " + MARKS, // saves without restores
                "1 0 0 1 5 5 cm Q Q " + MARKS, // stray restores after a transform
                "q 2 0 0 2 0 0 cm Q Q 1 0 0 1 3 3 cm " + MARKS,
                "0 0 60 90 re W n .5 0 0 .5 10 10 cm " + MARKS, // a clip and a transform left behind
                MARKS + "BT 5 0 0 5 0 0 Tm", // a text object left open
                MARKS + "/Span BMC /Artifact BMC" // marked content left open
            })
    void withTheLayersOffThePageLooksAsItDid(String content) throws Exception {
        byte[] before = PageMaker.page(100, 150).draw(content).bytes();
        byte[] after =
                proofed(PageMaker.page(100, 150).draw(content).open(folder), proof(1, PageEdge.LEFT, hit("words")));
        assertLooksAlike(before, layersOff(after));
        // Poppler draws nothing more after a stray restore, before the proof as after it
        assertHole(after, 12, 50, !content.contains("Q Q"));
    }

    /** On a blank place the middle of the hole is lighter than the tinted zone beside it, its outline dark. */
    private void assertHole(byte[] pdf, double x, double y, boolean poppler) throws Exception {
        List<Raster> drawn = new ArrayList<>(List.of(Raster.ofPdfBox(pdf, 1)));
        if (poppler && Raster.onPath("pdftoppm")) {
            drawn.add(Raster.ofPoppler(Files.write(folder.resolve("hole.pdf"), pdf), 1));
        }
        for (Raster r : drawn) {
            int column = (int) (x * Raster.PER_MM);
            int row = (int) (y * Raster.PER_MM);
            int radius = 3 * Raster.PER_MM;
            assertThat(r.at(column - radius, row)).as("outline, left").isLessThan(150);
            assertThat(r.at(column + radius, row)).as("outline, right").isLessThan(150);
            assertThat(r.at(column, row - radius)).as("outline, above").isLessThan(150);
            assertThat(r.at(column, row + radius)).as("outline, below").isLessThan(150);
            assertThat(r.at(column - radius / 2, row - radius / 2)).as("inside").isGreaterThan(200);
        }
    }

    @ParameterizedTest
    @CsvSource({
        // place at which the reader sees the hole on a sheet of 100 x 150 mm, rotated: 12 from the edge, 50 from head
        // or left
        "0, LEFT, 12, 50",
        "0, RIGHT, 88, 50",
        "0, TOP, 50, 12",
        "0, BOTTOM, 50, 138",
        "90, LEFT, 12, 50",
        "90, RIGHT, 138, 50",
        "90, TOP, 50, 12",
        "180, RIGHT, 88, 50",
        "180, BOTTOM, 50, 138",
        "270, LEFT, 12, 50",
        "270, BOTTOM, 50, 88"
    })
    void holesLieWhereTheReaderSeesTheBindingEdge(int rotate, PageEdge edge, double x, double y) throws Exception {
        for (double[] origin : new double[][] {{0, 0}, {-37, 12}}) {
            PageMaker page = PageMaker.page(100, 150)
                    .with(p -> p.setInt(COSName.ROTATE, rotate))
                    .box(COSName.MEDIA_BOX, origin[0], origin[1], origin[0] + 100, origin[1] + 150);
            assertHole(proofed(page.open(folder), proof(1, edge)), x, y, true);
        }
    }

    @Test
    void aUserUnitIsMinded() throws Exception {
        // PDFBox draws as if it were 1: a page of half the size, on which the hole of 6 mm is one of 3
        byte[] after = proofed(
                PageMaker.page(50, 75).with(p -> p.setInt(COSName.USER_UNIT, 2)).open(folder), proof(1, PageEdge.LEFT));
        Raster r = Raster.ofPdfBox(after, 1);
        assertThat(r.at(45, 250)).isLessThan(150);
        assertThat(r.at(75, 250)).isLessThan(150);
        assertThat(r.at(55, 245)).isGreaterThan(200);
    }

    @Test
    void theDocumentsOwnStreamsKeepTheirBytes() throws Exception {
        PageMaker maker = PageMaker.page(100, 150).draw(MARKS);
        byte[] before = maker.bytes();
        Path file = Files.write(folder.resolve("in.pdf"), before);
        byte[] after = proofed(Intake.open(new PdfSource(file, "in.pdf", null)), proof(1, PageEdge.LEFT, hit("x")));
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(streams(after).subList(1, 2)).isEqualTo(streams(before));
    }

    /** The packed bytes of a page's content streams. */
    private static List<String> streams(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            COSBase contents = document.getPage(0).getCOSObject().getDictionaryObject(COSName.CONTENTS);
            List<COSBase> all = contents instanceof COSArray array
                    ? List.of(array.getObject(0), array.getObject(1), array.getObject(2))
                    : List.of(contents);
            List<String> raw = new ArrayList<>();
            for (COSBase stream : all) {
                raw.add(Arrays.toString(
                        ((COSStream) stream).createRawInputStream().readAllBytes()));
            }
            return raw;
        }
    }

    @Test
    void resourcesThatPagesShareAreNotChangedForTheOther() throws Exception {
        PageMaker maker = PageMaker.page(100, 150).draw(MARKS);
        COSDictionary[] shared = {maker.resources()};
        byte[] after = proofed(maker.open(folder), proof(1, PageEdge.LEFT));
        assertThat(shared[0].getCOSDictionary(COSName.XOBJECT)).isNull();
        try (PDDocument document = Loader.loadPDF(after)) {
            assertThat(document.getPage(0).getResources().getXObjectNames())
                    .extracting(COSName::getName)
                    .containsExactly("BindingHoles");
        }
    }

    @Test
    void aNameThatIsTakenIsLeftAlone() throws Exception {
        PageMaker maker = PageMaker.page(100, 150);
        COSStream own = maker.stream("0 g 20 20 30 30 re f");
        own.setItem(COSName.SUBTYPE, COSName.FORM);
        own.setItem(COSName.BBOX, new org.apache.pdfbox.pdmodel.common.PDRectangle(300, 400).getCOSArray());
        byte[] after = proofed(
                maker.resource(COSName.XOBJECT, "BindingHoles", own)
                        .drawInPoints("/BindingHoles Do")
                        .open(folder),
                proof(1, PageEdge.LEFT));
        try (PDDocument document = Loader.loadPDF(after)) {
            assertThat(document.getPage(0).getResources().getXObjectNames())
                    .extracting(COSName::getName)
                    .contains("BindingHoles", "BindingHoles2");
        }
        assertThat(Raster.ofPdfBox(after, 1).at(110, 1410)).isLessThan(50);
    }

    @Test
    void layersAreShownAndNotPrintedAndTheDocumentsOwnStay() throws Exception {
        COSDictionary own = new COSDictionary();
        own.setItem(COSName.TYPE, COSName.OCG);
        own.setString(COSName.NAME, "hidden");
        COSArray groups = new COSArray();
        groups.add(own);
        COSDictionary config = new COSDictionary();
        config.setItem(COSName.OFF, groups);
        config.setItem(COSName.BASE_STATE, COSName.OFF);
        COSDictionary properties = new COSDictionary();
        properties.setItem(COSName.OCGS, groups);
        properties.setItem(COSName.D, config);
        byte[] after = proofed(
                PageMaker.page(100, 150)
                        .resource(COSName.PROPERTIES, "L", own)
                        .withCatalog(c -> c.setItem(COSName.OCPROPERTIES, properties))
                        .draw("/OC /L BDC 0 g 60 60 30 30 re f EMC")
                        .open(folder),
                proof(1, PageEdge.LEFT));
        assertHole(after, 12, 50, true);
        assertThat(Raster.ofPdfBox(after, 1).at(700, 700)).as("still hidden").isGreaterThan(250);
        try (PDDocument document = Loader.loadPDF(after)) {
            PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
            assertThat(layers.getGroupNames())
                    .containsExactly("hidden", "binding: holes", "binding: " + Terms.BINDING_MARGIN, "binding: hits");
            assertThat(layers.isGroupEnabled("binding: hits")).isTrue();
            Layers printing = new Layers(document.getDocumentCatalog().getCOSObject());
            assertThat(printing.prints(layers.getGroup("binding: holes").getCOSObject()))
                    .isFalse();
        }
    }

    @Test
    void whatWasFoundIsListedAndDoesNotPrint() throws Exception {
        byte[] after = proofed(
                PageMaker.page(100, 150).draw(MARKS).open(folder),
                proof(1, PageEdge.RIGHT, hit("Would be punched: “Grüße”.")));
        try (PDDocument document = Loader.loadPDF(after)) {
            List<PDAnnotation> all = document.getPage(0).getAnnotations();
            assertThat(all).hasSize(1);
            PDAnnotation a = all.get(0);
            assertThat(a.getSubtype()).isEqualTo("Square");
            assertThat(a.getContents()).isEqualTo("Would be punched: “Grüße”.");
            assertThat(a.isPrinted()).isFalse();
            assertThat(a.isHidden()).isFalse();
            // 10 to 14 mm from the right of 100, 48 to 52 from the head of 150, half a millimetre around, and then out
            // to whole points: 242.4, 276.4, 256.5, 290.6 before, by hand
            assertThat(a.getRectangle().getCOSArray().toFloatArray()).containsExactly(242, 276, 257, 291);
        }
    }

    /** A comment on several marks: each has its outline, and the comment a rectangle around them. */
    @Test
    void marksThatShareACommentAreEachOutlined() throws Exception {
        Comment two = new Comment(
                Verdict.HIT, List.of(new Outline(false, 30, 40, 60, 70), new Outline(false, 50, 60, 80, 90)), "two");
        byte[] after = proofed(PageMaker.page(100, 150).open(folder), proof(1, PageEdge.LEFT, two));
        try (PDDocument document = Loader.loadPDF(after)) {
            PDAnnotation a = document.getPage(0).getAnnotations().get(0);
            assertThat(a.getRectangle().getLowerLeftX()).isEqualTo((float) Math.floor(29.5 * 72 / 25.4));
            assertThat(a.getRectangle().getUpperRightX()).isEqualTo((float) Math.ceil(60.5 * 72 / 25.4));
        }
        List<Raster> drawn = new ArrayList<>(List.of(Raster.ofPdfBox(after, 1)));
        if (Raster.onPath("pdftoppm")) {
            drawn.add(Raster.ofPoppler(Files.write(folder.resolve("two.pdf"), after), 1));
        }
        for (Raster r : drawn) {
            for (int[] at : new int[][] {{30, 65}, {40, 65}, {35, 60}, {50, 85}, {60, 85}, {55, 90}}) {
                assertThat(r.at(at[0] * Raster.PER_MM, at[1] * Raster.PER_MM))
                        .as("%s", Arrays.toString(at))
                        .isLessThan(200);
            }
            assertThat(r.at(45 * Raster.PER_MM, 65 * Raster.PER_MM))
                    .as("between them")
                    .isGreaterThan(250);
        }
    }

    @Test
    void aProofChangesNoVerdict() throws Exception {
        byte[] after =
                proofed(PageMaker.page(100, 150).draw(MARKS).open(folder), proof(1, PageEdge.LEFT, hit("words")));
        Path file = Files.write(folder.resolve("again.pdf"), after);
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "again.pdf", null))) {
            assertThat(pdf.scan(1, PageEdge.LEFT, 18).marks()).isEmpty();
            assertThat(pdf.scan(1, PageEdge.LEFT, 18).unchecked()).isNull();
        }
    }

    @Test
    void contentThatBreaksOffIsNotDrawnOver() throws Exception {
        try (OpenedPdf pdf = PageMaker.page(100, 150).draw(MARKS + " (open").open(folder)) {
            assertThat(pdf.edit().proof(proof(1, PageEdge.LEFT))).isFalse();
        }
    }

    @Test
    void theSameBytesEachTime() throws Exception {
        Path file = Files.write(
                folder.resolve("in.pdf"), PageMaker.page(100, 150).draw(MARKS).bytes());
        byte[] first = proofed(Intake.open(new PdfSource(file, "in.pdf", null)), proof(1, PageEdge.LEFT, hit("x")));
        assertThat(proofed(Intake.open(new PdfSource(file, "in.pdf", null)), proof(1, PageEdge.LEFT, hit("x"))))
                .isEqualTo(first);
    }

    @Test
    void pagesLeftOutAreNotInTheFileAndTheOthersKeepTheirLabels() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            for (int i = 1; i <= 5; i++) {
                document.addPage(new org.apache.pdfbox.pdmodel.PDPage());
                document.getPage(i - 1).getCOSObject().setString(COSName.getPDFName("Mark"), "page number " + i);
            }
            document.save(out, org.apache.pdfbox.pdfwriter.compress.CompressParameters.NO_COMPRESSION);
        }
        Path file = Files.write(folder.resolve("five.pdf"), out.toByteArray());
        ByteArrayOutputStream kept = new ByteArrayOutputStream();
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "five.pdf", null))) {
            EditedPdf edited = pdf.edit();
            edited.proof(proof(2, PageEdge.RIGHT));
            edited.only(List.of(2, 4));
            edited.save(kept, "test");
        }
        try (PDDocument document = Loader.loadPDF(kept.toByteArray())) {
            List<String> marks = document.getDocument().getXrefTable().keySet().stream()
                    .map(key -> document.getDocument().getObjectFromPool(key).getObject())
                    .filter(COSDictionary.class::isInstance)
                    .map(object -> ((COSDictionary) object).getString("Mark"))
                    .filter(Objects::nonNull)
                    .toList();
            assertThat(marks)
                    .as("of all objects in the file")
                    .containsExactlyInAnyOrder("page number 2", "page number 4");
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
                    .containsExactly("2", "4");
        }
    }
}
