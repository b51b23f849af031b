package io.bindprep.pdf;

import static io.bindprep.pdf.PageMaker.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.Stage;
import io.bindprep.page.PageEdge;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Marks that geometry can't settle: soft masks, blending, patterns, clips by text, covers, white, pictures over other things.
 *
 * <p>What should be seen follows from ISO 32000-1:2008 (clauses at each check).
 */
class SecondLookTest {
    private static final String TEXT = "0 g BT /F 4 Tf 5 100 Td (H) Tj ET ";

    @TempDir
    Path folder;

    private PageMarks scan(String operators, UnaryOperator<PageMaker> more) {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE1);
        font.setName(COSName.BASE_FONT, "Helvetica");
        PageMaker maker = more.apply(PageMaker.a4().resource(COSName.FONT, "F", font));
        try (OpenedPdf pdf = maker.draw(operators).open(folder)) {
            return pdf.scan(1, PageEdge.LEFT, 15);
        }
    }

    private List<Mark> marks(String operators, UnaryOperator<PageMaker> more) {
        PageMarks found = scan(operators, more);
        assertThat(found.unchecked()).isNull();
        return found.marks();
    }

    private List<Mark> marks(String operators) {
        return marks(operators, m -> m);
    }

    private static void assertExtent(List<Mark> marks, double near, double far) {
        assertThat(marks).isNotEmpty();
        assertThat(marks.stream().mapToDouble(Mark::nearMm).min().orElseThrow()).isCloseTo(near, within(0.3));
        assertThat(marks.stream().mapToDouble(Mark::farMm).max().orElseThrow()).isCloseTo(far, within(0.3));
    }

    private static COSDictionary dictionary(Object... pairs) {
        COSDictionary d = new COSDictionary();
        for (int i = 0; i < pairs.length; i += 2) {
            d.setItem(COSName.getPDFName((String) pairs[i]), (COSBase) pairs[i + 1]);
        }
        return d;
    }

    private static COSName name(String name) {
        return COSName.getPDFName(name);
    }

    private static COSStream with(COSStream stream, Object... pairs) {
        stream.addAll(dictionary(pairs));
        return stream;
    }

    private static COSStream group(PageMaker m, String operators, Object... more) {
        COSStream form = with(
                m.stream(operators),
                "Type",
                name("XObject"),
                "Subtype",
                name("Form"),
                "BBox",
                numbers(0, 0, 600, 900),
                "Group",
                dictionary("S", name("Transparency"), "CS", name("DeviceGray")),
                "Resources",
                new COSDictionary());
        form.getCOSDictionary(COSName.GROUP).addAll(dictionary(more));
        return form;
    }

    /** A soft mask from what a group paints: white lets through, black (and nothing) hides. */
    private static UnaryOperator<PageMaker> mask(String operators) {
        return m -> m.resource(
                COSName.EXT_G_STATE,
                "M",
                dictionary("SMask", dictionary("S", name("Luminosity"), "G", group(m, operators))));
    }

    private static UnaryOperator<PageMaker> state(Object... pairs) {
        return m -> m.resource(COSName.EXT_G_STATE, "S", dictionary(pairs));
    }

    @Test
    void whatFloatsLeaveOfALineBeyondThePageIsNoMark() {
        assertThat(marks("2 296.9998 10 3 re f")).isEmpty();
        assertThat(marks("2 296.9 10 3 re f")).hasSize(1);
    }

    @Test
    void aTransferFunctionThatInvertsMakesWhiteAnInk() {
        // 10.5: white becomes 1 - 1 = 0, black
        COSDictionary inverts = dictionary(
                "FunctionType",
                COSInteger.get(2),
                "Domain",
                numbers(0, 1),
                "C0",
                numbers(1),
                "C1",
                numbers(0),
                "N",
                COSInteger.get(1));
        for (String key : List.of("TR", "TR2")) {
            assertThat(marks("/S gs 1 g 5 100 4 4 re f", state(key, inverts)))
                    .as(key)
                    .hasSize(1);
            assertThat(marks("/S gs 1 g 5 100 4 4 re f", state(key, name("Identity"))))
                    .isEmpty();
        }
        assertThat(marks("/S gs 1 g 5 100 4 4 re f", state("TR", inverts, "TR2", name("Default"))))
                .as("TR2 before TR")
                .isEmpty();
    }

    @Test
    void aSoftMaskLeavesWhatItLetsThrough() {
        // 11.5.3: outside the group's marks the mask is black
        assertThat(marks("/M gs 5 100 6 4 re f", mask("0 g 0 0 600 900 re f"))).isEmpty();
        List<Mark> half = marks("/M gs 5 100 6 4 re f", mask("1 g 8 0 600 900 re f"));
        assertExtent(half, 8, 11);
        assertThat(half).extracting(Mark::stage).containsOnly(Stage.RASTER);
        Mark through = marks("/M gs " + TEXT, mask("1 g 0 0 600 900 re f")).get(0);
        assertThat(through.stage()).isEqualTo(Stage.ESTIMATE);
        assertThat(through.kind()).isEqualTo(MarkKind.TEXT);
        assertThat(through.words()).isEqualTo("H");
        assertThat(marks(
                        "/M gs /N gs 5 100 6 4 re f",
                        m -> mask("0 g 0 0 600 900 re f")
                                .apply(m)
                                .resource(COSName.EXT_G_STATE, "N", dictionary("SMask", name("None")))))
                .as("the mask taken off again")
                .hasSize(1);
    }

    /** A square of 6 mm that says it prints, whose appearance is masked by what a group paints. */
    private static UnaryOperator<PageMaker> annotation(String mask, boolean direct) {
        return m -> {
            COSStream appearance = with(
                    m.stream("/M gs 0 g 0 0 6 6 re f"),
                    "Type",
                    name("XObject"),
                    "Subtype",
                    name("Form"),
                    "BBox",
                    numbers(0, 0, 6, 6),
                    "Resources",
                    dictionary(
                            "ExtGState",
                            dictionary(
                                    "M",
                                    dictionary("SMask", dictionary("S", name("Luminosity"), "G", group(m, mask))))));
            double pt = 72 / 25.4;
            COSDictionary square = dictionary(
                    "Type",
                    name("Annot"),
                    "Subtype",
                    name("Square"),
                    "F",
                    COSInteger.get(4),
                    "Rect",
                    numbers(5 * pt, 100 * pt, 11 * pt, 106 * pt),
                    "AP",
                    dictionary("N", appearance));
            square.setDirect(direct);
            COSArray all = new COSArray();
            all.setDirect(direct);
            all.add(square);
            return m.with(page -> page.setItem(COSName.ANNOTS, all));
        };
    }

    @Test
    void anAnnotationThatAMaskHidesLeavesNothing() {
        // 11.5.3 as above; 7.3.10: whether it is an object of its own makes no difference
        for (boolean direct : new boolean[] {false, true}) {
            assertThat(marks("", annotation("0 g 0 0 600 900 re f", direct))).isEmpty();
            assertExtent(marks("", annotation("1 g 0 0 600 900 re f", direct)), 5, 11);
        }
    }

    @Test
    void aTintThatFadesOutBeforeTheEdgeIsNoBackground() {
        List<Mark> marks = marks("/M gs 0.5 g 0 0 210 297 re f", mask("1 g 7 0 600 900 re f"));
        assertExtent(marks, 7, 15);
        assertThat(marks).extracting(Mark::kind).containsOnly(MarkKind.ART);
    }

    @Test
    void whatAnIrregularWhiteCoversDoesNotPrint() {
        String round = "1 g -5 101 m -5 120 20 120 20 101 c 20 82 -5 82 -5 101 c f";
        assertThat(marks(TEXT + round)).isEmpty();
        String half = "1 g 6.5 90 m 30 90 l 30 120 l 6.5 120 l 6.4 100 l f";
        assertExtent(marks(TEXT + half), 5.3, 6.5);
    }

    @Test
    void whiteShowsOnlyWhereInkIsAroundIt() {
        String white = "1 g BT /F 4 Tf 5 100 Td (H) Tj ET";
        assertThat(marks("0.2 g 0 0 30 297 re f " + white))
                .extracting(Mark::kind)
                .containsExactly(MarkKind.BACKGROUND, MarkKind.TEXT);
        // the box of an L-shaped tint holds the letter, the tint itself does not
        String ell = "0.2 g 2 90 m 14 90 l 14 91 l 3 91 l 3 120 l 2 120 l h f ";
        assertThat(marks(ell + white)).extracting(Mark::kind).containsExactly(MarkKind.ART);
        String drawn = " 1 g 5 100 m 9 100 l 7 104 l h f";
        assertThat(marks("0.2 g 0 0 30 297 re f" + drawn))
                .as("lettering turned to outlines")
                .extracting(Mark::kind)
                .containsExactly(MarkKind.BACKGROUND, MarkKind.ART);
        assertThat(marks("0.2 g 0 0 30 297 re f " + white + " 0.2 g 4 99 m 9 99 l 9 104 l 4 104.1 l h f"))
                .as("painted over again")
                .extracting(Mark::kind)
                .doesNotContain(MarkKind.TEXT);
    }

    @Test
    void tilesCountByWhatTheyPaint() {
        // 8.7.3: a cell of 40 mm of which only the part from 9 mm on is painted
        UnaryOperator<PageMaker> tiles = m -> m.resource(
                COSName.PATTERN,
                "P",
                with(
                        m.stream("9 0 31 40 re f"),
                        "PatternType",
                        COSInteger.get(1),
                        "PaintType",
                        COSInteger.get(1),
                        "TilingType",
                        COSInteger.get(1),
                        "BBox",
                        numbers(0, 0, 40, 40),
                        "XStep",
                        COSInteger.get(40),
                        "YStep",
                        COSInteger.get(40),
                        "Matrix",
                        numbers(72 / 25.4, 0, 0, 72 / 25.4, 0, 0),
                        "Resources",
                        new COSDictionary()));
        assertExtent(marks("/Pattern cs /P scn 5 100 9 4 re f", tiles), 9, 14);
        assertThat(marks("/Pattern cs /P scn 3 100 5 4 re f", tiles)).isEmpty();
        PageMarks gone = scan("/Pattern cs /Gone scn 3 100 5 4 re f", m -> m);
        assertThat(gone.marks()).as("no reader draws it: three tried").isEmpty();
        assertThat(gone.basics().passedOver()).anyMatch(fault -> fault.contains("Gone"));
        COSDictionary unknown = dictionary("PatternType", COSInteger.get(9));
        assertThat(scan("/Pattern cs /P scn 3 100 5 4 re f", m -> m.resource(COSName.PATTERN, "P", unknown))
                        .unchecked())
                .as("what PDFBox cannot draw is not said to be blank")
                .isNotNull();
    }

    private static COSDictionary fade(double fromX, double toX) {
        COSDictionary function = dictionary(
                "FunctionType",
                COSInteger.get(2),
                "Domain",
                numbers(0, 1),
                "C0",
                numbers(1),
                "C1",
                numbers(0),
                "N",
                COSInteger.get(1));
        return dictionary(
                "ShadingType",
                COSInteger.get(2),
                "ColorSpace",
                name("DeviceGray"),
                "Coords",
                numbers(fromX, 0, toX, 0),
                "Function",
                function);
    }

    @Test
    void aFadeBeginsWhereItShows() {
        // 8.7.4.5.3: white up to 5 mm, black at 15 mm; 245 of 255 is reached at 5 + 10 * 10 / 255 = 5.4 mm
        UnaryOperator<PageMaker> fade = m -> m.resource(COSName.SHADING, "Sh", fade(5, 15));
        assertThat(marks("q 2 100 12 9 re W n /Sh sh Q", fade)).as("no Extend").isNotEmpty();
        assertExtent(marks("q 2 100 12 9 re W n /Sh sh Q", fade), 5.4, 14);
    }

    /** 8.7.4.5.4: no circle has a radius below zero, so a cone that narrows ends there. MuPDF, Poppler and Ghostscript agree. */
    @ParameterizedTest
    @CsvSource({"30 100 20 32 100 4, 10", "60 100 8 20 100 2, 6.7", "10 100 2 60 100 8, 8"})
    void aConeEndsWhereItsCirclesDo(String coords, double nearest) {
        COSDictionary cone = fade(0, 0);
        cone.setInt("ShadingType", 3);
        double[] circles =
                Stream.of(coords.split(" ")).mapToDouble(Double::parseDouble).toArray();
        cone.setItem(COSName.COORDS, numbers(circles));
        cone.getCOSDictionary(COSName.FUNCTION).setItem(COSName.C0, numbers(0.2));
        COSArray extend = new COSArray();
        extend.add(COSBoolean.FALSE);
        extend.add(COSBoolean.TRUE);
        cone.setItem(COSName.EXTEND, extend);
        assertThat(marks("/Sh sh", m -> m.resource(COSName.SHADING, "Sh", cone)))
                .singleElement()
                .satisfies(m -> assertThat(m.nearMm()).isCloseTo(nearest, within(0.5)));
        COSDictionary pattern = dictionary("PatternType", COSInteger.get(2), "Shading", cone);
        double unit = 72 / 25.4;
        pattern.setItem(COSName.MATRIX, numbers(unit, 0, 0, unit, 0, 0));
        assertThat(marks("/Pattern cs /P scn 0 0 148 210 re f", m -> m.resource(COSName.PATTERN, "P", pattern)))
                .filteredOn(m -> m.kind() != MarkKind.BACKGROUND)
                .singleElement()
                .satisfies(m -> assertThat(m.nearMm()).isCloseTo(nearest, within(0.5)));
    }

    @Test
    void anIncompleteShadingIsPassedOverAndTold() {
        COSDictionary noFunction = fade(5, 15);
        noFunction.removeItem(COSName.FUNCTION);
        PageMarks found = scan("q 2 100 12 9 re W n /Sh sh Q", m -> m.resource(COSName.SHADING, "Sh", noFunction));
        assertThat(found.unchecked()).as("no reader draws it: three tried").isNull();
        assertThat(found.marks()).isEmpty();
        assertThat(found.basics().passedOver()).anyMatch(fault -> fault.contains("shading"));
    }

    @Test
    void textThatClipsLeavesOnlyWhatShowsThroughIt() {
        // 9.3.6: mode 7 adds to the clipping path at ET; Helvetica H is 0.308 to 2.584 mm wide at 4 mm
        List<Mark> through = marks("q BT 7 Tr /F 4 Tf 5 100 Td (H) Tj ET 0 g 2 90 12 30 re f Q");
        assertExtent(through, 5.3, 7.6);
        assertThat(marks("q BT 7 Tr /F 4 Tf 50 100 Td (H) Tj ET 0 g 2 90 12 30 re f Q"))
                .isEmpty();
        assertThat(marks("q BT 7 Tr /F 4 Tf 50 100 Td (H) Tj ET Q 0 g 2 90 12 30 re f"))
                .hasSize(1);
    }

    @Test
    void blendedOnBarePaperIsThePaintItself() {
        // 11.3.6: with a backdrop alpha of 0 the result is the source colour, whatever the blend mode
        for (String mode : List.of("Multiply", "Screen", "Difference", "Luminosity")) {
            List<Mark> marks = marks("/S gs " + TEXT, state("BM", name(mode)));
            assertThat(marks).as(mode).extracting(Mark::words).containsExactly("H");
        }
        assertThat(marks("0.5 g 0 0 40 297 re f /S gs 0.5 g 5 100 4 4 re f", state("BM", name("Darken"))))
                .as("a grey darkened by the same grey")
                .extracting(Mark::kind)
                .containsExactly(MarkKind.BACKGROUND);
        assertThat(marks("/S gs 5 100 4 4 re f 5 100 4 4 re f", state("BM", name("Darken"))))
                .as("of two equal things in one place one remains")
                .hasSize(1);
    }

    @Test
    void tooFaintToSeeIsNoMark() {
        assertThat(marks("/S gs " + TEXT, state("ca", new COSFloat(0.02f)))).isEmpty();
        assertThat(marks("/S gs " + TEXT, state("ca", new COSFloat(0.1f)))).hasSize(1);
    }

    @Test
    void aSeeThroughGroupHidesNothing() {
        UnaryOperator<PageMaker> more = m -> state("ca", new COSFloat(0.5f))
                .apply(m)
                .resource(COSName.XOBJECT, "Fm", group(m, "1 g 0 90 30 30 re f"));
        assertThat(marks(TEXT + "/S gs /Fm Do", more)).extracting(Mark::words).containsExactly("H");
        assertThat(marks(TEXT + "/Fm Do", more)).as("opaque").isEmpty();
    }

    @Test
    void aKnockoutGroupIsLookedAt() {
        // 11.4.6: the white knocks out what the group painted before it, though it is see-through
        UnaryOperator<PageMaker> more = m -> m.resource(
                COSName.XOBJECT, "Fm", group(m, "0 g 5 100 4 4 re f 1 g 2 90 30 30 re f", "K", COSBoolean.TRUE));
        assertThat(marks("/Fm Do", more)).isEmpty();
    }

    @Test
    void overprintedWhiteHidesNothing() {
        // 8.6.7: in mode 1 a component of 0 in DeviceCMYK leaves what lies below
        String cover = "/S gs 0 0 0 0 k 2 90 30 30 re f";
        assertThat(marks(TEXT + cover, state("OP", COSBoolean.TRUE, "OPM", COSInteger.get(1))))
                .extracting(Mark::words)
                .containsExactly("H");
        assertThat(marks(TEXT + cover, state("OP", COSBoolean.FALSE, "OPM", COSInteger.get(1))))
                .isEmpty();
        String white = "0.2 g 0 0 30 297 re f /S gs 0 0 0 0 k BT /F 4 Tf 5 100 Td (H) Tj ET";
        assertThat(marks(white, state("OP", COSBoolean.TRUE, "OPM", COSInteger.get(1))))
                .as("white lettering that overprints vanishes")
                .extracting(Mark::kind)
                .containsExactly(MarkKind.BACKGROUND);
    }

    private static UnaryOperator<PageMaker> space(String family, COSBase names) {
        COSDictionary function = dictionary(
                "FunctionType",
                COSInteger.get(2),
                "Domain",
                numbers(0, 1),
                "C0",
                numbers(1),
                "C1",
                numbers(1),
                "N",
                COSInteger.get(1));
        return m -> m.resource(
                COSName.COLORSPACE, "Cs", new COSArray(List.of(name(family), names, name("DeviceGray"), function)));
    }

    @Test
    void namedInksPrintByTheirName() {
        // 8.6.6.4, 8.6.6.5: All marks every plate, None marks nothing
        assertThat(marks("/Cs cs 1 scn 5 100 4 4 re f", space("Separation", name("All"))))
                .hasSize(1);
        assertThat(marks(TEXT + "/Cs cs 0 scn 2 90 30 30 re f", space("Separation", name("All"))))
                .isEmpty();
        COSArray blackAndNone = new COSArray(List.of(name("None"), name("Black")));
        assertThat(marks("/Cs cs 1 0 scn 5 100 4 4 re f", space("DeviceN", blackAndNone)))
                .isEmpty();
        assertThat(marks("/Cs cs 0 1 scn 5 100 4 4 re f", space("DeviceN", blackAndNone)))
                .hasSize(1);
        COSArray nothing = new COSArray(List.of(name("None"), name("None")));
        assertThat(marks("/Cs cs 1 1 scn 5 100 4 4 re f", space("DeviceN", nothing)))
                .as("MuPDF and Ghostscript draw the stand-in colour, Poppler nothing")
                .hasSize(1);
        Mark varnish = marks(
                        "/S gs /Cs cs 1 scn 5 100 4 4 re f",
                        m -> state("BM", name("Multiply"))
                                .apply(space("Separation", name("Varnish")).apply(m)))
                .get(0);
        assertThat(varnish.stage())
                .as("a varnish looks white on a screen and prints")
                .isEqualTo(Stage.GEOMETRY);
    }

    private static COSStream picture(PageMaker m, String grey, int width, Object... more) {
        return with(
                m.stream(grey),
                concat(
                        new Object[] {
                            "Type",
                            name("XObject"),
                            "Subtype",
                            name("Image"),
                            "Width",
                            COSInteger.get(width),
                            "Height",
                            COSInteger.get(grey.length() / width),
                            "BitsPerComponent",
                            COSInteger.get(8),
                            "ColorSpace",
                            name("DeviceGray")
                        },
                        more));
    }

    private static Object[] concat(Object[] a, Object[] b) {
        Object[] all = java.util.Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, all, a.length, b.length);
        return all;
    }

    @Test
    void aPictureHidesWhatLiesUnderItUnlessItIsMasked() {
        String white = "\u00ff\u00ff";
        String under = TEXT + "q 30 0 0 30 2 90 cm /Im Do Q";
        assertThat(marks(under, m -> m.resource(COSName.XOBJECT, "Im", picture(m, white, 2))))
                .isEmpty();
        assertThat(marks(
                        under,
                        m -> m.resource(COSName.XOBJECT, "Im", picture(m, white, 2, "SMask", picture(m, "\0\0", 2)))))
                .extracting(Mark::words)
                .contains("H");
    }

    @Test
    void aPictureOnATintCountsByItsOwnDots() {
        // left half transparent, right half black, at 4 to 12 mm
        UnaryOperator<PageMaker> logo =
                m -> m.resource(COSName.XOBJECT, "Im", picture(m, "\0\0", 2, "SMask", picture(m, "\0\u00ff", 2)));
        List<Mark> marks = marks("0.7 g 0 0 40 297 re f q 8 0 0 10 4 100 cm /Im Do Q", logo);
        assertThat(marks).extracting(Mark::kind).containsExactly(MarkKind.BACKGROUND, MarkKind.IMAGE);
        assertExtent(marks.subList(1, 2), 8, 12);
        List<Mark> beside = marks(TEXT + "q 8 0 0 10 4 100 cm /Im Do Q", logo);
        assertThat(beside).extracting(Mark::kind).containsExactly(MarkKind.TEXT, MarkKind.IMAGE);
        assertExtent(beside.subList(1, 2), 8, 12);
    }

    /** A picture over the whole page, of columns 5 mm wide. */
    private static UnaryOperator<PageMaker> scanned(String columns) {
        return m -> m.resource(COSName.XOBJECT, "Im", picture(m, columns, 42));
    }

    @Test
    void aScanOnWhitePaperLeavesOnlyItsDarkDetail() {
        String page = "q 210 0 0 297 0 0 cm /Im Do Q";
        List<Mark> white = marks(page, scanned("\u00ff\0" + "\u00ff".repeat(40)));
        assertThat(white).extracting(Mark::kind).containsExactly(MarkKind.IMAGE);
        assertExtent(white, 5, 10);
        assertThat(marks(page, scanned("\u00ff".repeat(42)))).isEmpty();
        assertThat(marks(page, scanned("\u00d8\u0010" + "\u00d8".repeat(40))))
                .as("toned paper is punched through")
                .extracting(Mark::kind)
                .containsExactly(MarkKind.BACKGROUND, MarkKind.IMAGE);
    }

    @Test
    void textOverAPhotographIsText() {
        String photograph = "q 210 0 0 297 0 0 cm /Im Do Q ";
        for (String grey : List.of("\u0020", "\u0080")) {
            for (String ink : List.of("1 g", "0 g", "0.9 0.2 0.1 rg")) {
                List<Mark> marks = marks(photograph + ink + " BT /F 4 Tf 5 100 Td (H) Tj ET", scanned(grey.repeat(42)));
                assertThat(marks)
                        .as(ink + " on " + (int) grey.charAt(0))
                        .extracting(Mark::kind)
                        .containsExactlyInAnyOrder(MarkKind.BACKGROUND, MarkKind.TEXT);
                assertThat(marks).extracting(Mark::words).contains("H");
            }
        }
    }

    @Test
    void whatCannotBeDecodedIsUnchecked() throws Exception {
        for (String filter : List.of("JPXDecode", "JBIG2Decode")) {
            PageMarks found = scan("q 30 0 0 30 2 90 cm /Im Do Q", m -> {
                COSStream broken = picture(m, "\0\0", 2);
                try (OutputStream out = broken.createRawOutputStream()) {
                    out.write("nothing that a decoder knows".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
                } catch (java.io.IOException e) {
                    throw new IllegalStateException(e);
                }
                broken.setItem(COSName.FILTER, name(filter));
                return m.resource(COSName.XOBJECT, "Im", broken);
            });
            assertThat(found.unchecked()).as(filter).contains("cannot be decoded");
        }
    }

    @Test
    void hiddenLayersStayHiddenInTheDrawing() {
        COSDictionary layer = dictionary("Type", COSName.OCG, "Name", new org.apache.pdfbox.cos.COSString("notes"));
        COSDictionary config = dictionary("OFF", new COSArray(List.of(layer)));
        UnaryOperator<PageMaker> off = m -> m.resource(COSName.PROPERTIES, "L", layer)
                .resource(COSName.XOBJECT, "Im", picture(m, "\0\0", 2))
                .withCatalog(c ->
                        c.setItem(COSName.OCPROPERTIES, dictionary("D", config, "OCGs", new COSArray(List.of(layer)))));
        String content = "q 8 0 0 10 4 100 cm /Im Do Q /OC /L BDC 0 g 2 130 20 4 re f EMC";
        assertExtent(marks(content, off), 4, 12);
    }
}
