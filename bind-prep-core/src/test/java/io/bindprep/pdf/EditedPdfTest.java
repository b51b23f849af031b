package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.files.PdfSource;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.edit.EditedPdf;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A moved page, drawn, is the page as it was, drawn and moved: by PDFBox, and by Poppler where it is installed. */
class EditedPdfTest {
    private static final double PT = 72 / 25.4;
    private static final String MARKS = "0 g 20.04 20.04 30 5 re f 60.04 95.04 5 40 re f 2 w 20 30 m 70 80 l S ";

    @TempDir
    private Path folder;

    private byte[] moved(OpenedPdf pdf, Move move, int... pages) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (pdf) {
            EditedPdf edited = pdf.edit();
            for (int page : pages) {
                edited.move(page, move, EditedPdf.Beyond.MOVES);
            }
            edited.save(out, "test");
        }
        return out.toByteArray();
    }

    private void assertMoved(byte[] before, byte[] after, int right, int down) throws Exception {
        assertMoved(Raster.ofPdfBox(before, 1), Raster.ofPdfBox(after, 1), right, down);
        if (Raster.onPath("pdftoppm")) {
            Path a = Files.write(folder.resolve("a.pdf"), before);
            Path b = Files.write(folder.resolve("b.pdf"), after);
            assertMoved(Raster.ofPoppler(a, 1), Raster.ofPoppler(b, 1), right, down);
        }
    }

    private static void assertMoved(Raster before, Raster after, int right, int down) {
        assertThat(before.dark()).as("dots to compare").isGreaterThan(1000);
        assertThat(after.dark()).isCloseTo(before.dark(), within(before.dark() / 50));
        assertThat(after.unlike(before, right, down)).isLessThan(before.dark() / 40);
        assertThat(after.unlike(before, 0, 0)).as("it did move").isGreaterThan(before.dark() / 10);
    }

    private static PageMaker page(int rotate, double unit, double x0, double y0) {
        return PageMaker.page(100 / unit, 150 / unit)
                .with(p -> p.setInt(COSName.ROTATE, rotate))
                .with(p -> {
                    if (unit != 1) {
                        p.setFloat(COSName.USER_UNIT, (float) unit);
                    }
                })
                .box(COSName.MEDIA_BOX, x0, y0, x0 + 100 / unit, y0 + 150 / unit)
                .draw("1 0 0 1 " + x0 + " " + y0 + " cm " + 1 / unit + " 0 0 " + 1 / unit + " 0 0 cm " + MARKS);
    }

    @ParameterizedTest
    @CsvSource({
        "0, LEFT, 60, 0",
        "0, RIGHT, -60, 0",
        "0, TOP, 0, 60",
        "0, BOTTOM, 0, -60",
        "90, LEFT, 60, 0",
        "90, TOP, 0, 60",
        "180, LEFT, 60, 0",
        "180, RIGHT, -60, 0",
        "270, LEFT, 60, 0",
        "270, BOTTOM, 0, -60"
    })
    void movesAwayFromTheBindingEdgeInEveryTurn(int rotate, PageEdge edge, int right, int down) throws Exception {
        for (double unit : new double[] {1, 2}) {
            for (double[] origin : new double[][] {{0, 0}, {-37, 12}}) {
                byte[] before = page(rotate, unit, origin[0], origin[1]).bytes();
                OpenedPdf pdf = page(rotate, unit, origin[0], origin[1]).open(folder);
                byte[] after = moved(pdf, new Move(edge, 6, 1), 1);
                Raster was = Raster.ofPdfBox(before, 1);
                // PDFBox draws as if UserUnit were 1
                int ofUnit = (int) unit;
                assertMoved(was, Raster.ofPdfBox(after, 1), right / ofUnit, down / ofUnit);
                if (unit == 1) {
                    assertMoved(before, after, right, down);
                }
            }
        }
    }

    @Test
    void scalesAboutTheMiddleOfTheBindingEdge() throws Exception {
        // by hand: the line of 2 mm at 45 degrees reaches 0.7 beyond its ends, from 19.3 to 70.7; the low bar lies
        // 20.04 from the foot of 150, so 54.96 below the middle
        OpenedPdf pdf = page(0, 1, 0, 0).open(folder);
        byte[] after = moved(pdf, new Move(PageEdge.LEFT, 4, 0.95), 1);
        Raster drawn = Raster.ofPdfBox(after, 1);
        assertThat(drawn.ink(PageEdge.LEFT)).isCloseTo(0.95 * 19.3 + 4, within(0.15));
        assertThat(drawn.ink(PageEdge.RIGHT)).isCloseTo(100 - (0.95 * 70.7 + 4), within(0.15));
        assertThat(drawn.ink(PageEdge.BOTTOM)).isCloseTo(75 - 0.95 * 54.96, within(0.15));
    }

    @ParameterizedTest
    @CsvSource({"Q Q Q", "q q", "Q q Q Q q"})
    void unbalancedStatesDoNotTakeTheMoveBack(String states) throws Exception {
        String content = states + " " + MARKS + " " + states + " 0 g 30.04 60.04 20 10 re f";
        byte[] before = PageMaker.page(100, 150).draw(content).bytes();
        byte[] after = moved(PageMaker.page(100, 150).draw(content).open(folder), new Move(PageEdge.LEFT, 6, 1), 1);
        // Poppler draws nothing after a state too many is restored, before as after
        assertMoved(Raster.ofPdfBox(before, 1), Raster.ofPdfBox(after, 1), 60, 0);
    }

    private static PageMaker patterned() {
        PageMaker page = PageMaker.page(100, 150);
        COSStream tile = page.stream("0 g 0 0 6 3 re f");
        tile.setInt("PatternType", 1);
        tile.setInt("PaintType", 1);
        tile.setInt("TilingType", 1);
        tile.setItem(COSName.BBOX, floats(0, 0, 11, 7));
        tile.setFloat("XStep", 11);
        tile.setFloat("YStep", 7);
        tile.setItem(COSName.RESOURCES, new COSDictionary());
        COSDictionary function = new COSDictionary();
        function.setInt("FunctionType", 2);
        function.setItem("Domain", floats(0, 1));
        function.setInt("N", 1);
        function.setItem("C0", floats(0));
        function.setItem("C1", floats(1));
        COSDictionary shading = new COSDictionary();
        shading.setInt("ShadingType", 2);
        shading.setItem("ColorSpace", COSName.DEVICEGRAY);
        shading.setItem("Coords", floats(100, 0, 200, 0));
        shading.setItem("Function", function);
        COSDictionary fade = new COSDictionary();
        fade.setInt("PatternType", 2);
        fade.setItem("Shading", shading);
        return page.resource(COSName.PATTERN, "Tile", tile)
                .resource(COSName.PATTERN, "Fade", fade)
                .drawInPoints("/Pattern cs /Tile scn 40 40 150 100 re f /Fade scn 90 200 120 60 re f");
    }

    private static COSArray floats(double... values) {
        COSArray array = new COSArray();
        for (double v : values) {
            array.add(new COSFloat((float) v));
        }
        return array;
    }

    @Test
    void patternsMoveWithWhatTheyFill() throws Exception {
        byte[] after = moved(patterned().open(folder), new Move(PageEdge.LEFT, 6, 1), 1);
        assertMoved(patterned().bytes(), after, 60, 0);
    }

    @Test
    void whatLiesBeyondTheBleedDoesNotComeIn() throws Exception {
        PageMaker page =
                PageMaker.page(120, 150).box(COSName.TRIM_BOX, 10, 10, 110, 140).draw(MARKS + " 0 g 0 30 5 0.5 re f");
        OpenedPdf pdf = page.open(folder);
        Raster drawn = Raster.ofPdfBox(moved(pdf, new Move(PageEdge.LEFT, 12, 1), 1), 1);
        // the line began at 19.3; the mark at 0 would come to lie at 12
        assertThat(drawn.ink(PageEdge.LEFT)).isCloseTo(31.3, within(0.15));
    }

    private static COSDictionary annotation(String kind) {
        COSDictionary a = new COSDictionary();
        a.setItem(COSName.TYPE, COSName.ANNOT);
        a.setName(COSName.SUBTYPE, kind);
        a.setItem(COSName.RECT, floats(50, 60, 150, 80));
        return a;
    }

    @Test
    void annotationsMoveWithTheirPointsAndPrintersMarksStay() throws Exception {
        COSDictionary link = annotation("Link");
        link.setItem(COSName.QUADPOINTS, floats(50, 80, 150, 80, 50, 60, 150, 60));
        COSDictionary ink = annotation("Ink");
        COSArray strokes = new COSArray();
        strokes.add(floats(51, 61, 70, 75));
        strokes.add(floats(80, 62, 90, 78));
        ink.setItem(COSName.INKLIST, strokes);
        COSDictionary text = annotation("FreeText");
        text.setItem("CL", floats(10, 20, 30, 40));
        text.setItem("RD", floats(2, 4, 6, 8));
        COSDictionary mark = annotation("PrinterMark");
        COSArray all = new COSArray();
        List.of(link, ink, text, mark).forEach(all::add);
        OpenedPdf pdf = PageMaker.page(100, 150)
                .with(p -> p.setItem(COSName.ANNOTS, all))
                .draw(MARKS)
                .open(folder);
        // user space: x' = 0.9 x + 5 mm, y' = 0.9 y + 0.1 * 75 mm
        byte[] after = moved(pdf, new Move(PageEdge.LEFT, 5, 0.9), 1);
        AffineTransform t = new AffineTransform(0.9, 0, 0, 0.9, 5 * PT, 7.5 * PT);
        try (PDDocument document = Loader.loadPDF(after)) {
            COSArray is = document.getPage(0).getCOSObject().getCOSArray(COSName.ANNOTS);
            assertPoints(is, 0, COSName.RECT, t, 50, 60, 150, 80);
            assertPoints(is, 0, COSName.QUADPOINTS, t, 50, 80, 150, 80, 50, 60, 150, 60);
            assertPoints((COSArray) at(is, 1).getDictionaryObject(COSName.INKLIST), 1, t, 80, 62, 90, 78);
            assertPoints(is, 2, COSName.getPDFName("CL"), t, 10, 20, 30, 40);
            assertPoints(is, 2, COSName.getPDFName("RD"), AffineTransform.getScaleInstance(0.9, 0.9), 2, 4, 6, 8);
            assertPoints(is, 3, COSName.RECT, new AffineTransform(), 50, 60, 150, 80);
        }
    }

    private static COSDictionary at(COSArray array, int i) {
        return (COSDictionary) array.getObject(i);
    }

    private static void assertPoints(COSArray annotations, int i, COSName key, AffineTransform t, double... were) {
        assertPoints(at(annotations, i).getCOSArray(key), t, were);
    }

    private static void assertPoints(COSArray arrays, int i, AffineTransform t, double... were) {
        assertPoints((COSArray) arrays.getObject(i), t, were);
    }

    private static void assertPoints(COSArray is, AffineTransform t, double... were) {
        assertThat(is.size()).isEqualTo(were.length);
        for (int i = 0; i < were.length; i += 2) {
            Point2D p = t.transform(new Point2D.Double(were[i], were[i + 1]), null);
            assertThat(number(is.getObject(i))).isCloseTo(p.getX(), within(0.001));
            assertThat(number(is.getObject(i + 1))).isCloseTo(p.getY(), within(0.001));
        }
    }

    private static double number(COSBase value) {
        return ((org.apache.pdfbox.cos.COSNumber) value).floatValue();
    }

    @Test
    void destinationsAreFoundWhereverTheyStandAndMovedOnce() throws Exception {
        PageMaker maker = PageMaker.page(100, 150).draw(MARKS);
        COSArray shared = new COSArray();
        maker.with(page -> {
            shared.add(page);
            shared.add(COSName.getPDFName("XYZ"));
            shared.add(new COSFloat(40));
            shared.add(new COSFloat(300));
            shared.add(COSNull.NULL);
        });
        COSArray fit = new COSArray();
        maker.with(page -> {
            fit.add(page);
            fit.add(COSName.getPDFName("FitR"));
            List.of(10, 20, 30, 40).forEach(v -> fit.add(COSInteger.get(v)));
        });
        maker.withCatalog(catalog -> {
            COSDictionary names = new COSDictionary();
            names.setItem("one", shared);
            names.setItem("two", shared);
            catalog.setItem(COSName.DESTS, names);
            COSDictionary next = new COSDictionary();
            next.setName(COSName.S, "GoTo");
            next.setItem(COSName.D, fit);
            COSDictionary action = new COSDictionary();
            action.setName(COSName.S, "JavaScript");
            action.setItem("Next", next);
            catalog.setItem(COSName.OPEN_ACTION, action);
        });
        byte[] after = moved(maker.open(folder), new Move(PageEdge.LEFT, 10, 1), 1);
        double by = 10 * PT;
        try (PDDocument document = Loader.loadPDF(after)) {
            COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
            COSArray one = catalog.getCOSDictionary(COSName.DESTS).getCOSArray(COSName.getPDFName("two"));
            assertThat(number(one.getObject(2))).isCloseTo(40 + by, within(0.001));
            assertThat(number(one.getObject(3))).isEqualTo(300);
            COSArray two = catalog.getCOSDictionary(COSName.OPEN_ACTION)
                    .getCOSDictionary(COSName.getPDFName("Next"))
                    .getCOSArray(COSName.D);
            assertThat(number(two.getObject(2))).isCloseTo(10 + by, within(0.001));
            assertThat(number(two.getObject(3))).isEqualTo(20);
            assertThat(number(two.getObject(4))).isCloseTo(30 + by, within(0.001));
        }
    }

    @Test
    void figuresOfTheStructureTreeMoveWithTheirPage() throws Exception {
        PageMaker maker = PageMaker.page(100, 150).draw(MARKS);
        COSDictionary layout = new COSDictionary();
        layout.setName(COSName.O, "Layout");
        layout.setItem(COSName.BBOX, floats(10, 20, 110, 220));
        COSDictionary figure = new COSDictionary();
        figure.setName(COSName.S, "Figure");
        figure.setItem(COSName.A, layout);
        COSDictionary content = new COSDictionary();
        content.setName(COSName.TYPE, "MCR");
        content.setInt("MCID", 0);
        maker.with(page -> content.setItem(COSName.PG, page));
        figure.setItem(COSName.K, content);
        maker.withCatalog(catalog -> {
            COSDictionary root = new COSDictionary();
            root.setItem(COSName.K, figure);
            figure.setItem(COSName.P, root);
            catalog.setItem(COSName.STRUCT_TREE_ROOT, root);
        });
        byte[] after = moved(maker.open(folder), new Move(PageEdge.LEFT, 10, 1), 1);
        try (PDDocument document = Loader.loadPDF(after)) {
            COSArray box = document.getDocumentCatalog()
                    .getCOSObject()
                    .getCOSDictionary(COSName.STRUCT_TREE_ROOT)
                    .getCOSDictionary(COSName.K)
                    .getCOSDictionary(COSName.A)
                    .getCOSArray(COSName.BBOX);
            assertPoints(box, AffineTransform.getTranslateInstance(10 * PT, 0), 10, 20, 110, 220);
        }
    }

    /** Three pages that share content, resources and an annotation; the last is the first once more. */
    private byte[] shared() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(PageMaker.page(100, 150)
                .with(p -> {
                    COSArray annotations = new COSArray();
                    annotations.add(annotation("Link"));
                    p.setItem(COSName.ANNOTS, annotations);
                })
                .draw(MARKS)
                .bytes())) {
            COSDictionary first = document.getPage(0).getCOSObject();
            COSDictionary second = new COSDictionary(first);
            COSDictionary tree = first.getCOSDictionary(COSName.PARENT);
            COSArray kids = tree.getCOSArray(COSName.KIDS);
            kids.add(second);
            kids.add(kids.get(0));
            tree.setInt(COSName.COUNT, 3);
            tree.setItem(COSName.MEDIA_BOX, first.getItem(COSName.MEDIA_BOX));
            first.removeItem(COSName.MEDIA_BOX);
            document.save(out);
        }
        return out.toByteArray();
    }

    @Test
    void pagesThatShareEverythingMoveEachTheirOwnWay() throws Exception {
        byte[] before = shared();
        Path file = Files.write(folder.resolve("shared.pdf"), before);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "shared.pdf", null))) {
            EditedPdf edited = pdf.edit();
            edited.move(1, new Move(PageEdge.LEFT, 6, 1), EditedPdf.Beyond.MOVES);
            edited.move(2, new Move(PageEdge.RIGHT, 9, 1), EditedPdf.Beyond.MOVES);
            edited.move(3, new Move(PageEdge.TOP, 3, 1), EditedPdf.Beyond.MOVES);
            edited.save(out, "test");
        }
        byte[] after = out.toByteArray();
        Raster was = Raster.ofPdfBox(before, 1);
        assertMoved(was, Raster.ofPdfBox(after, 1), 60, 0);
        assertMoved(was, Raster.ofPdfBox(after, 2), -90, 0);
        assertMoved(was, Raster.ofPdfBox(after, 3), 0, 30);
        double[][] by = {{6 * PT, 0}, {-9 * PT, 0}, {0, -3 * PT}};
        try (PDDocument document = Loader.loadPDF(after)) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
            for (int i = 0; i < 3; i++) {
                COSArray annotations = document.getPage(i).getCOSObject().getCOSArray(COSName.ANNOTS);
                AffineTransform t = AffineTransform.getTranslateInstance(by[i][0], by[i][1]);
                assertPoints(annotations, 0, COSName.RECT, t, 50, 60, 150, 80);
            }
        }
    }

    @Test
    void blanksTakeTheirPagesSizeAndLabelsStayWithTheirPages() throws Exception {
        byte[] before = shared();
        ByteArrayOutputStream labelled = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(before)) {
            COSDictionary roman = new COSDictionary();
            roman.setName(COSName.S, "r");
            COSDictionary decimal = new COSDictionary();
            decimal.setName(COSName.S, "D");
            decimal.setInt("St", 7);
            COSArray nums = new COSArray();
            nums.add(COSInteger.ZERO);
            nums.add(roman);
            nums.add(COSInteger.ONE);
            nums.add(decimal);
            COSDictionary labels = new COSDictionary();
            labels.setItem("Nums", nums);
            document.getDocumentCatalog().getCOSObject().setItem(COSName.PAGE_LABELS, labels);
            document.save(labelled);
        }
        Path file = Files.write(folder.resolve("labelled.pdf"), labelled.toByteArray());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "labelled.pdf", null))) {
            EditedPdf edited = pdf.edit();
            edited.blanksAfter(List.of(1, 2));
            edited.save(out, "test");
        }
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isEqualTo(5);
            // PDFBox reads labels for itself
            assertThat(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
                    .containsExactly("i", "", "7", "", "8");
            assertThat(document.getPage(1).getMediaBox().getWidth()).isCloseTo((float) (100 * PT), within(0.01f));
            assertThat(document.getPage(1).hasContents()).isFalse();
        }
    }

    @Test
    void theSameBytesEachTimeAndAnotherIdentifierForAnotherChange() throws Exception {
        byte[] page = page(0, 1, 0, 0).bytes();
        Path file = Files.write(folder.resolve("same.pdf"), page);
        byte[] one = moved(Intake.open(new PdfSource(file, "same.pdf", null)), new Move(PageEdge.LEFT, 6, 1), 1);
        byte[] two = moved(Intake.open(new PdfSource(file, "same.pdf", null)), new Move(PageEdge.LEFT, 6, 1), 1);
        assertThat(two).isEqualTo(one);
        assertThat(Files.readAllBytes(file)).isEqualTo(page);
    }

    private byte[] staying(PageMaker page, Move move) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OpenedPdf pdf = page.open(folder)) {
            EditedPdf edited = pdf.edit();
            edited.move(1, move, EditedPdf.Beyond.STAYS);
            edited.save(out, "test");
        }
        return out.toByteArray();
    }

    private static final String TEXT = " 0 g 14.04 60.04 20 3 re f 40.04 80.04 20 3 re f ";

    /** The part that stays and the part that moves, each drawn alone, make up the page: nothing else is on it. */
    private void assertStays(String clip, String background, Move move, int right) throws Exception {
        byte[] after = staying(PageMaker.page(100, 150).draw(clip + background + TEXT), move);
        byte[] ground = PageMaker.page(100, 150).draw(background).bytes();
        byte[] text = PageMaker.page(100, 150).draw(TEXT).bytes();
        Path file = Files.write(folder.resolve("after.pdf"), after);
        for (boolean poppler : new boolean[] {false, true}) {
            Raster is = poppler ? Raster.ofPoppler(file, 1) : Raster.ofPdfBox(after, 1);
            Raster below = poppler
                    ? Raster.ofPoppler(Files.write(folder.resolve("ground.pdf"), ground), 1)
                    : Raster.ofPdfBox(ground, 1);
            Raster above = poppler
                    ? Raster.ofPoppler(Files.write(folder.resolve("text.pdf"), text), 1)
                    : Raster.ofPdfBox(text, 1);
            int unlike = 0;
            for (int y = 0; y < is.height(); y++) {
                for (int x = 0; x < is.width(); x++) {
                    int expected = Math.min(below.at(x, y), above.at(x - right, y));
                    unlike += Math.abs(is.at(x, y) - expected) > 64 ? 1 : 0;
                }
            }
            assertThat(unlike).as(poppler ? "Poppler" : "PDFBox").isLessThan(300);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "''", // drawn straight onto the page
        "0 0 100 150 re W* n", // a page's clip as office programs write it
        "0 0 100 150 re W n q 0.5 0 0 0.5 0 0 cm 0 0 200 300 re W n Q",
        "-2 -2 63 154 re W n" // a panel that the text just fits
    })
    void aTintThroughTheBindingEdgeStaysUnderItsClip(String clip) throws Exception {
        assertStays(clip, " q 0.7 g 2 0 0 2 0 0 cm -2 -2 8 79 re f Q ", new Move(PageEdge.LEFT, 6, 1), 60);
        assertStays(clip, " 0.7 g 0 0 m 11 0 l 11 150 l 0 150 l h B ", new Move(PageEdge.LEFT, 6, 1), 60);
    }

    @Test
    void tilesOfOnePictureStayTogether() throws Exception {
        String tiles = " 0.4 g 0 100 10 40 re f 0.6 g 10 100 10 40 re f 0.8 g 20 100 10 40 re f 0.5 g 0 0 10 20 re f ";
        assertStays("", tiles, new Move(PageEdge.LEFT, 6, 1), 60);
    }

    @Test
    void whatLiesUponATintMovesAndAnotherEdgeIsNoReasonToStay() throws Exception {
        byte[] after = staying(
                PageMaker.page(100, 150).draw("0.8 g 0 0 12 150 re f 0 g 5 50 5 20 re f 70 100 30 20 re f"),
                new Move(PageEdge.LEFT, 6, 1));
        Raster is = Raster.ofPdfBox(after, 1);
        assertThat(is.at(2, 900)).as("the tint").isCloseTo(204, within(3));
        assertThat(is.at(80, 900)).as("the art upon it has moved").isCloseTo(204, within(3));
        assertThat(is.at(130, 900)).isCloseTo(0, within(3));
        assertThat(is.at(740, 400)).as("art at the outer edge has moved").isEqualTo(255);
    }
}
