package io.bindprep.pdf;

import static io.bindprep.pdf.PageMaker.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.Stage;
import io.bindprep.page.PageEdge;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ink that was once missed: pages whose marks are known from how they are made, lengths in millimetres. */
class MissedInkTest {
    @TempDir
    Path folder;

    private PageMarks scan(String operators, UnaryOperator<PageMaker> more) {
        try (OpenedPdf pdf = more.apply(PageMaker.a4()).draw(operators).open(folder)) {
            PageMarks marks = pdf.scan(1, PageEdge.LEFT, 15);
            assertThat(marks.unchecked()).isNull();
            return marks;
        }
    }

    private List<Mark> marks(String operators, UnaryOperator<PageMaker> more) {
        return scan(operators, more).marks();
    }

    private static COSDictionary dictionary(String type, String subtype) {
        COSDictionary d = new COSDictionary();
        d.setName(COSName.TYPE, type);
        d.setName(COSName.SUBTYPE, subtype);
        return d;
    }

    private static UnaryOperator<PageMaker> font(COSDictionary font) {
        return m -> m.resource(COSName.FONT, "F", font);
    }

    /** A composite font whose outlines are those of TrueType and not in the file; a width of 1000 is the built-in one. */
    private static COSDictionary composite(String encoding, String ordering) {
        COSDictionary system = new COSDictionary();
        system.setItem("Registry", new COSString("Adobe"));
        system.setItem("Ordering", new COSString(ordering));
        system.setInt("Supplement", 4);
        COSDictionary descriptor = new COSDictionary();
        descriptor.setName(COSName.TYPE, "FontDescriptor");
        descriptor.setName(COSName.FONT_NAME, "SomeHeiti");
        descriptor.setInt(COSName.ASCENT, 880);
        descriptor.setInt(COSName.DESCENT, -120);
        COSDictionary descendant = dictionary("Font", "CIDFontType2");
        descendant.setName(COSName.BASE_FONT, "SomeHeiti");
        descendant.setItem(COSName.CIDSYSTEMINFO, system);
        descendant.setItem(COSName.FONT_DESC, descriptor);
        COSDictionary font = dictionary("Font", "Type0");
        font.setName(COSName.BASE_FONT, "SomeHeiti");
        font.setName(COSName.ENCODING, encoding);
        COSArray descendants = new COSArray();
        descendants.add(descendant);
        font.setItem(COSName.DESCENDANT_FONTS, descendants);
        return font;
    }

    private static COSDictionary simple(String base, String... glyphs) {
        COSDictionary font = dictionary("Font", "TrueType");
        font.setName(COSName.BASE_FONT, base);
        COSArray differences = new COSArray();
        differences.add(COSInteger.get(65));
        for (String glyph : glyphs) {
            differences.add(COSName.getPDFName(glyph));
        }
        COSDictionary encoding = new COSDictionary();
        encoding.setItem(COSName.DIFFERENCES, differences);
        font.setItem(COSName.ENCODING, encoding);
        font.setInt(COSName.FIRST_CHAR, 65);
        font.setInt(COSName.LAST_CHAR, 66);
        font.setItem(COSName.WIDTHS, numbers(800, 800));
        return font;
    }

    private static COSDictionary group(PageMaker m, String operators, COSDictionary font) {
        COSStream form = m.stream(operators);
        form.setName(COSName.SUBTYPE, "Form");
        form.setItem(COSName.BBOX, numbers(0, 0, 600, 900));
        COSDictionary group = new COSDictionary();
        group.setName(COSName.S, "Transparency");
        group.setBoolean(COSName.K, true);
        form.setItem(COSName.GROUP, group);
        COSDictionary fonts = new COSDictionary();
        fonts.setItem("F", font);
        COSDictionary resources = new COSDictionary();
        resources.setItem(COSName.FONT, fonts);
        form.setItem(COSName.RESOURCES, resources);
        return form;
    }

    @Test
    void aGlyphThatTheStandInCannotDrawTakesItsBox() {
        // U+4E2D, which no Latin font has: one em wide (Table 117, DW), by the descriptor's ascent and descent
        Mark han = marks("BT /F 5 Tf 4 100 Td <4e2d> Tj ET", font(composite("UniGB-UTF16-H", "GB1")))
                .get(0);
        assertThat(han.stage()).isEqualTo(Stage.ESTIMATE);
        assertThat(han.nearMm()).isCloseTo(4, within(0.01));
        assertThat(han.farMm()).isCloseTo(9, within(0.01));
        assertThat(han.alongEndMm() - han.alongStartMm()).isCloseTo(5, within(0.01));
        // Shift JIS and the Korean code of Windows: codes whose own numbers are other glyphs of the stand-in
        for (COSDictionary font : List.of(composite("90ms-RKSJ-H", "Japan1"), composite("KSCms-UHC-H", "Korea1"))) {
            assertThat(marks("BT /F 5 Tf 4 100 Td <c7d1b1db> Tj ET", font(font)))
                    .isNotEmpty();
        }
        for (String glyph : List.of("uniE001", "a10", "uni0E01", "uni0628", "checkmark")) {
            Mark box = marks("BT /F 5 Tf 4 100 Td (A) Tj ET", font(simple("SomeFont", glyph, "B")))
                    .get(0);
            assertThat(box.stage()).as(glyph).isEqualTo(Stage.ESTIMATE);
            assertThat(box.nearMm()).as(glyph).isCloseTo(4, within(0.5));
        }
    }

    @Test
    void aGlyphThatIsKnownToBeEmptyIsBlank() {
        assertThat(marks("BT /F 5 Tf 4 100 Td <30000020> Tj ET", font(composite("UniGB-UTF16-H", "GB1"))))
                .as("the ideographic space and the space")
                .isEmpty();
        assertThat(marks("BT /F 5 Tf 4 100 Td (AB) Tj ET", font(simple("SomeFont", "space", "nbspace"))))
                .isEmpty();
        COSDictionary helvetica = dictionary("Font", "Type1");
        helvetica.setName(COSName.BASE_FONT, "Helvetica");
        // Adobe Font Metrics of Helvetica: the space is 278 wide and has no box, H begins at 77
        Mark word = marks("BT /F 5 Tf 4 100 Td (   H) Tj ET", font(helvetica)).get(0);
        assertThat(word.nearMm()).isCloseTo(4 + 5 * (3 * 0.278 + 0.077), within(0.01));
    }

    @Test
    void theDrawingShowsTheBoxToo() {
        COSDictionary font = composite("UniGB-UTF16-H", "GB1");
        List<Mark> marks = marks(
                "/G Do", m -> m.resource(COSName.XOBJECT, "G", group(m, "BT /F 5 Tf 4 100 Td <4e2d> Tj ET", font)));
        assertThat(marks).as("a knockout group is settled by drawing it").hasSize(1);
        assertThat(marks.get(0).nearMm()).isCloseTo(4, within(0.3));
    }

    @Test
    void aFontInTheFileThatCannotBeReadIsNamed() {
        COSDictionary font = composite("Identity-H", "Identity");
        PageMarks marks = scan("BT /F 5 Tf 4 100 Td <1388> Tj ET", m -> {
            COSStream collection = m.stream("ttcf\0\1\0\0\0\0\0\2");
            COSDictionary descendant =
                    (COSDictionary) font.getCOSArray(COSName.DESCENDANT_FONTS).getObject(0);
            descendant.getCOSDictionary(COSName.FONT_DESC).setItem(COSName.FONT_FILE2, collection);
            return m.resource(COSName.FONT, "F", font);
        });
        assertThat(marks.marks()).extracting(Mark::stage).containsExactly(Stage.ESTIMATE);
        assertThat(marks.basics().fontsMissing()).containsExactly("SomeHeiti");
    }

    @Test
    void eachPartOfAPathIsJudgedByItself() {
        for (String fill : List.of("f", "f*", "B", "W n -5 0 300 300 re f")) {
            List<Mark> marks = marks("-5 20 15 50 re 4 150 5 8 re " + fill, m -> m);
            assertThat(marks.stream().filter(k -> k.kind() == MarkKind.BACKGROUND))
                    .as(fill)
                    .hasSize(1);
            assertThat(marks.stream()
                            .filter(k -> k.kind() != MarkKind.BACKGROUND && k.kind() != MarkKind.LINE)
                            .mapToDouble(Mark::nearMm))
                    .as(fill)
                    .hasSize(1)
                    .allSatisfy(near -> assertThat(near).isCloseTo(4, within(0.3)));
        }
    }

    @Test
    void aPartWithinTheHoleOfABackgroundIsJudgedByItself() {
        // a frame through the edge, bare within, and a square in the bare field: 3 contours, even-odd
        List<Mark> marks = marks("-5 0 20 290 re 2 50 12 100 re 5 80 4 4 re f*", m -> m);
        assertThat(marks).extracting(Mark::kind).containsExactlyInAnyOrder(MarkKind.BACKGROUND, MarkKind.ART);
        assertThat(marks.stream().filter(k -> k.kind() == MarkKind.ART).mapToDouble(Mark::nearMm))
                .allSatisfy(near -> assertThat(near).isCloseTo(5, within(0.01)));
        assertThat(marks("-5 0 20 290 re 5 50 5 100 re f*", m -> m))
                .as("a background with a hole stays one")
                .extracting(Mark::kind)
                .containsExactly(MarkKind.BACKGROUND);
    }

    @Test
    void theDrawingStrokesWithThePenAsTheMatrixMakesIt() {
        // 8.4.3.2: a pen of 2 under a matrix that is 4 times as wide as high is 8 wide, so the line begins at 10 - 4
        COSDictionary multiply = new COSDictionary();
        multiply.setName(COSName.BM, "Multiply");
        Mark line = marks(
                        "/S gs q 4 0 0 1 0 0 cm 2 w 2.5 50 m 2.5 200 l S Q",
                        m -> m.resource(COSName.EXT_G_STATE, "S", multiply))
                .get(0);
        assertThat(line.stage()).isEqualTo(Stage.RASTER);
        assertThat(line.nearMm()).isCloseTo(6, within(0.2));
    }

    /** An annotation that prints (Table 165) in a square of 14 mm that begins 4 mm from the edge. */
    private static UnaryOperator<PageMaker> annotation(
            String subtype, java.util.function.Consumer<COSDictionary> more) {
        return m -> m.with(page -> {
            double pt = 72 / 25.4;
            COSDictionary a = dictionary("Annot", subtype);
            a.setInt(COSName.F, 4);
            a.setItem(COSName.RECT, numbers(4 * pt, 100 * pt, 18 * pt, 114 * pt));
            more.accept(a);
            COSArray all = new COSArray();
            all.add(a);
            page.setItem(COSName.ANNOTS, all);
        });
    }

    private void appears(String kind, double near, UnaryOperator<PageMaker> made) {
        PageMarks marks = scan("", made);
        assertThat(marks.marks()).as(kind).isNotEmpty().allSatisfy(k -> {
            assertThat(k.stage()).isEqualTo(Stage.ESTIMATE);
            assertThat(k.kind()).isEqualTo(MarkKind.ANNOTATION);
        });
        assertThat(marks.marks().stream().mapToDouble(Mark::nearMm).min().orElseThrow())
                .as(kind)
                .isCloseTo(near, within(1.0));
        assertThat(marks.basics().withoutAppearance()).containsExactly(kind);
    }

    private static COSDictionary field(String type, String value) {
        COSDictionary field = new COSDictionary();
        field.setName(COSName.FT, type);
        field.setString(COSName.DA, "/Helv 12 Tf 0 g");
        if (value != null) {
            field.setString(COSName.V, value);
        }
        return field;
    }

    @Test
    void whatHasNoAppearanceIsEstimatedAndSaid() {
        appears("form field", 4.7, annotation("Widget", a -> a.addAll(field("Tx", "HHH"))));
        appears("form field", 4.7, annotation("Widget", a -> a.setItem(COSName.PARENT, field("Tx", "HHH"))));
        appears("form field", 4.7, annotation("Widget", a -> {
            a.addAll(field("Ch", "HHH"));
            a.setInt(COSName.FF, 1 << 17);
        }));
        for (COSName colour : List.of(COSName.BG, COSName.BC)) {
            appears("form field", 4, annotation("Widget", a -> {
                a.addAll(field("Tx", null));
                COSDictionary look = new COSDictionary();
                look.setItem(colour, numbers(0.5));
                a.setItem(COSName.MK, look);
            }));
        }
        appears("form field", 4.7, annotation("Widget", a -> {
            a.addAll(field("Btn", null));
            a.setInt(COSName.FF, 1 << 16);
            COSDictionary look = new COSDictionary();
            look.setString(COSName.CA, "PUSH");
            a.setItem(COSName.MK, look);
        }));
        appears("link border", 4, annotation("Link", a -> a.setItem(COSName.BORDER, numbers(0, 0, 1))));
        double pt = 72 / 25.4;
        appears(
                "comment",
                5,
                annotation("Line", a -> a.setItem(COSName.L, numbers(5 * pt, 200 * pt, 9 * pt, 200 * pt))));
    }

    @Test
    void whatPrintsNothingWithoutAnAppearanceIsNotEstimated() {
        COSDictionary white = new COSDictionary();
        white.setItem(COSName.BG, numbers(1));
        for (UnaryOperator<PageMaker> made : List.<UnaryOperator<PageMaker>>of(
                annotation("Widget", a -> a.addAll(field("Tx", null))),
                annotation("Widget", a -> {
                    a.addAll(field("Tx", null));
                    a.setItem(COSName.MK, white);
                }),
                annotation("Widget", a -> a.addAll(field("Sig", null))),
                annotation("Widget", a -> {
                    a.addAll(field("Tx", "HHH"));
                    a.setInt(COSName.F, 0);
                }),
                annotation("Link", a -> a.setItem(COSName.BORDER, numbers(0, 0, 0))),
                annotation("Link", a -> a.setItem(COSName.C, new COSArray())))) {
            PageMarks marks = scan("", made);
            assertThat(marks.marks()).isEmpty();
            assertThat(marks.basics().withoutAppearance()).isEmpty();
        }
    }

    /** ISO 32000-1:2008, 8.4.2: q and Q come in pairs; renderers pass over a Q too many (Ghostscript, MuPDF, poppler). */
    @Test
    void aRestoreWithoutItsSaveIsSaidAndChangesNothing() {
        PageMarks marks = scan("q 1 0 0 1 4 0 cm Q Q 1 0 0 1 4 0 cm Q 0 100 5 5 re f", m -> m);
        assertThat(marks.marks())
                .singleElement()
                .satisfies(k -> assertThat(k.nearMm()).isCloseTo(4, within(0.01)));
        assertThat(marks.basics().passedOver()).containsExactly("a Q without its q");
        assertThat(scan("q q Q 4 100 5 5 re f Q", m -> m).basics().passedOver()).isEmpty();
    }

    @Test
    void faultsThatEveryViewerPassesOverAreSaidAndThePageIsJudged() {
        PageMarks marks = scan("/Nope gs /None Do foo 4 100 5 5 re f", m -> m);
        assertThat(marks.marks())
                .singleElement()
                .satisfies(k -> assertThat(k.nearMm()).isCloseTo(4, within(0.01)));
        assertThat(marks.basics().passedOver())
                .containsExactly(
                        "an unknown operator",
                        "the graphics state \"Nope\" is missing",
                        "the picture or form \"None\" is missing");
        try (OpenedPdf pdf = PageMaker.a4()
                .draw("f\u00f6\u0001 ".repeat(9) + "4 100 5 5 re f")
                .open(folder)) {
            assertThat(pdf.scan(1, PageEdge.LEFT, 15).unchecked()).isEqualTo("it holds more than 8 unknown operators");
        }
    }

    private double nearest(String operators, UnaryOperator<PageMaker> more) {
        return marks(operators, more).stream().mapToDouble(Mark::nearMm).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Places where Poppler, MuPDF and Ghostscript, two of them at least, drew the first ink of these when tried. */
    @Test
    void faultsAreDrawnAsReadersDrawThem() {
        String mark = " 0 g 4 100 6 3 re f";
        assertThat(nearest("0 g 4-2 100 6 3 re f", m -> m))
                .as("a minus sign in a number")
                .isCloseTo(4, within(0.1));
        assertThat(nearest("q 1 0 0 1 4 100 cm 0 0 20 .0002 re W n 0 0 50 50 re f Q", m -> m))
                .as("a clip as thin as nothing")
                .isCloseTo(4, within(0.1));
        assertThat(nearest("W n" + mark, m -> m)).as("a clip by no path").isCloseTo(4, within(0.1));
        assertThat(nearest("<< /A 1 >>" + mark, m -> m)).as("operands too many").isCloseTo(4, within(0.1));
        assertThat(nearest("1 2" + mark, m -> m)).as("operands too many").isCloseTo(4, within(0.1));
        assertThat(nearest("3 50 l 6 50 l S" + mark, m -> m))
                .as("a line from nowhere")
                .isCloseTo(4, within(0.1));
        assertThat(nearest(mark + " 2 50 m 3 50 l", m -> m))
                .as("a path at the end")
                .isCloseTo(4, within(0.1));
        assertThat(nearest("(x) w (x) gs 12 Do /A J" + mark, m -> m))
                .as("other kinds")
                .isCloseTo(4, within(0.1));
        assertThat(nearest("/Pattern cs /No scn 3 50 9 9 re f" + mark, m -> m)).isCloseTo(4, within(0.1));
        assertThat(nearest("/No sh" + mark, m -> m)).as("no shading").isCloseTo(4, within(0.1));
        assertThat(nearest("BT /No 4 Tf 5 100 Td (H) Tj ET", m -> m))
                .as("no font")
                .isCloseTo(5.3, within(0.4));
        assertThat(nearest("/F 4 Tf 5 100 Td (A) Tj", font(simple("Some", "H"))))
                .as("text outside of a text object")
                .isCloseTo(5.3, within(0.4));
    }

    /** ISO 32000-1:2008: 8.6.6.3 (initial colour), 8.6.5.4 (Lab), 10.5 (transfer), 11.3.5 (blending). */
    @Test
    void whiteIsInkOnlyWhereItPrints() {
        String area = " 4 100 6 3 re f";
        COSArray indexed = new COSArray();
        indexed.add(COSName.INDEXED);
        indexed.add(COSName.DEVICERGB);
        indexed.add(COSInteger.ONE);
        indexed.add(new COSString(new byte[] {-1, -1, -1, 0, 0, 0}));
        assertThat(nearest("/I cs" + area, m -> m.resource(COSName.COLORSPACE, "I", indexed)))
                .isInfinite();
        COSDictionary point = new COSDictionary();
        point.setItem(COSName.WHITE_POINT, numbers(0.9642f, 1, 0.8249f));
        COSArray lab = new COSArray();
        lab.add(COSName.LAB);
        lab.add(point);
        UnaryOperator<PageMaker> withLab = m -> m.resource(COSName.COLORSPACE, "L", lab);
        assertThat(nearest("/L cs 100 -40 60 scn" + area, withLab)).isCloseTo(4, within(0.1));
        assertThat(nearest("/L cs 100 0 0 scn" + area, withLab)).isInfinite();
        COSDictionary function = new COSDictionary();
        function.setInt(COSName.FUNCTION_TYPE, 2);
        function.setItem(COSName.DOMAIN, numbers(0, 1));
        function.setItem(COSName.C0, numbers(1));
        function.setItem(COSName.C1, numbers(1));
        function.setInt(COSName.N, 1);
        COSDictionary vanish = new COSDictionary();
        vanish.setItem(COSName.getPDFName("TR"), function);
        assertThat(nearest("/G gs 0 g" + area, m -> m.resource(COSName.EXT_G_STATE, "G", vanish)))
                .as("readers differ in transfer functions: what one of them draws counts")
                .isCloseTo(4, within(0.1));
        COSDictionary difference = new COSDictionary();
        difference.setName(COSName.BM, "Difference");
        assertThat(marks(
                        ".8 .9 .7 rg 0 0 210 297 re f /G gs 1 g" + area,
                        m -> m.resource(COSName.EXT_G_STATE, "G", difference)))
                .anyMatch(mark -> mark.kind() == MarkKind.ART && Math.abs(mark.nearMm() - 4) < 0.3);
    }

    private double nearestOnGround(String operators, UnaryOperator<PageMaker> more) {
        return marks(operators, more).stream()
                .filter(mark -> mark.kind() != MarkKind.BACKGROUND)
                .mapToDouble(Mark::nearMm)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void whatHasTheColourOfTheTintBelowDoesNotShow() {
        String tint = ".2 .4 .6 rg 0 0 210 297 re f ";
        assertThat(nearestOnGround(tint + ".2 .4 .6 rg 6 100 5 3 re f", m -> m)).isInfinite();
        assertThat(nearestOnGround(tint + ".2 .4 .6 RG .5 w 6 100 m 6 120 l S", m -> m))
                .isInfinite();
        assertThat(nearestOnGround(tint + "1 g 5 99 8 8 re f .2 .4 .6 rg 6 100 5 3 re f", m -> m))
                .as("a white area lies between")
                .isCloseTo(6, within(0.3));
        assertThat(nearestOnGround(".8 g 0 0 210 297 re f .8 .8 .8 rg 6 100 5 3 re f", m -> m))
                .as("grey by another name")
                .isInfinite();
    }

    @Test
    void manyPartsInOnePathAreJudgedEachByItself() {
        StringBuilder many = new StringBuilder(".4 g 0 0 210 10 re ");
        for (int i = 0; i < 1200; i++) {
            many.append(4 + 2 * (i % 6)).append(' ').append(15 + i / 6).append(" 1 .5 re ");
        }
        assertThat(nearestOnGround(many + "f", m -> m)).isCloseTo(4, within(0.1));
    }
}
