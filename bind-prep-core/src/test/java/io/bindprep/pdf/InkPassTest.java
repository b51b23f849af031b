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
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Marks that print and marks that do not, operator by operator: ISO 32000-1:2008 (clauses named at each check). */
class InkPassTest {
    private static final String FONT = "/F 4 Tf";
    private static final COSName OC = COSName.OC;

    @TempDir
    Path folder;

    private PageMarks scan(String operators) {
        return scan(operators, m -> m);
    }

    private PageMarks scan(String operators, UnaryOperator<PageMaker> more) {
        PageMaker maker = more.apply(PageMaker.a4().resource(COSName.FONT, "F", helvetica()));
        try (OpenedPdf pdf = maker.draw(operators).open(folder)) {
            return pdf.scan(1, PageEdge.LEFT, 15);
        }
    }

    private List<Mark> marks(String operators) {
        return marks(operators, m -> m);
    }

    private List<Mark> marks(String operators, UnaryOperator<PageMaker> more) {
        PageMarks found = scan(operators, more);
        assertThat(found.unchecked()).isNull();
        return found.marks();
    }

    private Mark one(String operators, UnaryOperator<PageMaker> more) {
        List<Mark> marks = marks(operators, more);
        assertThat(marks).hasSize(1);
        return marks.get(0);
    }

    private Mark one(String operators) {
        return one(operators, m -> m);
    }

    private static COSDictionary helvetica() {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE1);
        font.setName(COSName.BASE_FONT, "Helvetica");
        return font;
    }

    private static void assertBox(Mark m, double near, double far, double start, double end) {
        assertThat(m.nearMm()).isCloseTo(near, within(0.01));
        assertThat(m.farMm()).isCloseTo(far, within(0.01));
        assertThat(m.alongStartMm()).isCloseTo(start, within(0.01));
        assertThat(m.alongEndMm()).isCloseTo(end, within(0.01));
    }

    @Test
    void textIsFoundByItsGlyphNotItsCell() {
        // Adobe Font Metrics, Helvetica: C 72, N H, B 77 0 646 718; at 4 mm that is 0.308 to 2.584 mm
        Mark m = one("BT " + FONT + " 5 100 Td (H) Tj ET");
        assertThat(m.kind()).isEqualTo(MarkKind.TEXT);
        assertThat(m.words()).isEqualTo("H");
        assertBox(m, 5.308, 7.584, 297 - 102.872, 197);
    }

    @Test
    void invisibleTextDoesNotPrint() {
        // 9.3.6, Table 106: mode 3 neither fills nor strokes; mode 7 only clips
        assertThat(marks("BT 3 Tr " + FONT + " 5 100 Td (H) Tj ET")).isEmpty();
        assertThat(marks("BT 7 Tr " + FONT + " 5 100 Td (H) Tj ET")).isEmpty();
        assertThat(marks("BT 1 Tr 0.1 w " + FONT + " 5 100 Td (H) Tj ET")).hasSize(1);
    }

    @Test
    void aSpacePrintsNothing() {
        assertThat(marks("BT " + FONT + " 5 100 Td (   ) Tj ET")).isEmpty();
    }

    @Test
    void fillsAndRules() {
        assertThat(one("5 100 4 4 re f").kind()).isEqualTo(MarkKind.ART);
        assertThat(one("5 100 0.4 40 re f").kind()).isEqualTo(MarkKind.LINE);
        // 8.5.3.1: filling a path without area paints the thinnest line
        assertThat(one("5 100 m 5 140 l f").kind()).isEqualTo(MarkKind.LINE);
        assertThat(marks("5 100 4 4 re n")).isEmpty();
    }

    @Test
    void strokesHaveWidthCapsAndMitres() {
        // 8.4.3: half the width to each side; a projecting cap adds half the width; a mitre reaches w / sin(a/2) / 2
        assertBox(one("2 w 8 100 m 8 140 l S"), 7, 9, 157, 197);
        assertBox(one("2 w 2 J 8 100 m 8 140 l S"), 7, 9, 156, 198);
        // the apex of a right angle pointing left: w / 2 / sin(45 deg) = 1.414 beyond the corner
        assertThat(one("2 w 10 M 14 94 m 8 100 l 14 106 l S").nearMm()).isCloseTo(8 - Math.sqrt(2), within(0.01));
        assertThat(one("0 w 8 100 m 8 140 l S").nearMm()).isCloseTo(8, within(0.03));
    }

    @Test
    void strokesAreScaledByAnUnevenMatrix() {
        assertBox(one("q 3 0 0 1 0 0 cm 1 w 3 100 m 3 140 l S Q"), 7.5, 10.5, 157, 197);
    }

    @Test
    void dashesLeaveGaps() {
        Mark m = one("[10 20] 0 d 1 w 8 100 m 8 140 l S");
        assertThat(m.shape().intersects(7, 197 - 8, 2, 6)).isTrue();
        assertThat(m.shape().intersects(7, 197 - 18, 2, 6)).isFalse();
    }

    @Test
    void curvesCountByTheCurveNotByTheirControlPoints() {
        // a cubic with both inner control points at x = -10 reaches x = 10 / 4 - 3 * 10 / 4 * ... = -5 at t = 1/2
        // B(1/2) = (10 + 3 * (-10) + 3 * (-10) + 10) / 8 = -5: shifted by 12 it is 7
        Mark m = one("0.01 w 1 0 0 1 12 0 cm 10 100 m -10 100 -10 140 10 140 c S");
        assertThat(m.nearMm()).isCloseTo(7, within(0.05));
    }

    @Test
    void theClipIsHonoured() {
        assertThat(marks("20 0 100 297 re W n 5 100 4 4 re f")).isEmpty();
        assertBox(one("6 0 100 297 re W n 5 100 8 4 re f"), 6, 13, 193, 197);
        // a triangle that leaves only x > 10 at y = 100
        assertThat(marks("10 100 m 40 80 l 40 120 l h W n 0 90 9 20 re f")).isEmpty();
        assertThat(one("q 20 0 1 1 re W n Q 5 100 4 4 re f").nearMm()).isCloseTo(5, within(0.01));
    }

    @Test
    void whatLiesOutsideTheTrimIsCutAway() {
        UnaryOperator<PageMaker> trim = m -> m.box(COSName.TRIM_BOX, 10, 10, 200, 287);
        assertThat(marks("2 100 7 4 re f", trim)).isEmpty();
        assertBox(one("5 100 8 4 re f", trim), 0, 3, 183, 187);
    }

    @Test
    void transparentIsInvisible() {
        COSDictionary gone = new COSDictionary();
        gone.setItem(COSName.CA_NS, new COSFloat(0));
        gone.setItem(COSName.CA, new COSFloat(0));
        UnaryOperator<PageMaker> gs = m -> m.resource(COSName.EXT_G_STATE, "G", gone);
        assertThat(marks("/G gs 5 100 4 4 re B BT " + FONT + " 5 100 Td (H) Tj ET", gs))
                .isEmpty();
        assertThat(marks("q /G gs Q 5 100 4 4 re f", gs)).hasSize(1);
    }

    @Test
    void whiteOnBarePaperIsNoMarkInAnyColourSpace() {
        COSArray separation = new COSArray(List.of(COSName.SEPARATION, COSName.getPDFName("Gold"), COSName.DEVICECMYK));
        COSArray none = new COSArray(List.of(COSName.SEPARATION, COSName.getPDFName("None"), COSName.DEVICECMYK));
        COSArray indexed = new COSArray(List.of(
                COSName.INDEXED, COSName.DEVICERGB, COSInteger.get(1), new COSString(new byte[] {0, 0, 0, -1, -1, -1
                })));
        COSArray lab = new COSArray(List.of(COSName.LAB, new COSDictionary()));
        UnaryOperator<PageMaker> spaces = m -> m.resource(COSName.COLORSPACE, "Sep", separation)
                .resource(COSName.COLORSPACE, "None", none)
                .resource(COSName.COLORSPACE, "Idx", indexed)
                .resource(COSName.COLORSPACE, "Lab", lab);
        for (String white : List.of(
                "1 g",
                "1 1 1 rg",
                "0 0 0 0 k",
                "/DeviceGray cs 1 sc",
                "/DeviceCMYK cs 0 0 0 0 scn",
                "/Sep cs 0 scn",
                "/None cs 1 scn",
                "/Idx cs 1 sc",
                "/Lab cs 100 0 0 sc")) {
            assertThat(marks(white + " 5 100 4 4 re f", spaces)).as(white).isEmpty();
        }
        for (String ink : List.of(
                "0.9 g",
                "1 1 0.9 rg",
                "0 0 0.1 0 k",
                "/DeviceCMYK cs",
                "/Sep cs 0.2 scn",
                "/Sep cs",
                "/Idx cs 0 sc",
                "/Lab cs 90 0 0 sc")) {
            assertThat(marks(ink + " 5 100 4 4 re f", spaces)).as(ink).hasSize(1);
        }
    }

    @Test
    void whiteTextOnATintIsAMarkAndTheTintIsBackground() {
        List<Mark> marks = marks("0.2 g 0 0 30 297 re f 1 g BT " + FONT + " 5 100 Td (H) Tj ET");
        assertThat(marks).extracting(Mark::kind).containsExactly(MarkKind.BACKGROUND, MarkKind.TEXT);
    }

    @Test
    void whatAnOpaqueRectangleCoversDoesNotPrint() {
        String text = "0 g BT " + FONT + " 5 100 Td (H) Tj ET ";
        assertThat(marks(text + "1 g 2 90 30 30 re f")).isEmpty();
        assertThat(marks(text + "1 g 6 90 30 30 re f")).as("covered in part").hasSize(1);
        COSDictionary half = new COSDictionary();
        half.setItem(COSName.CA_NS, new COSFloat(0.5f));
        assertThat(marks(text + "/G gs 1 g 2 90 30 30 re f", m -> m.resource(COSName.EXT_G_STATE, "G", half)))
                .as("seen through")
                .hasSize(1);
    }

    @Test
    void hiddenOptionalContentDoesNotPrint() {
        // 8.11: default configuration, OFF list
        COSDictionary layer = new COSDictionary();
        layer.setItem(COSName.TYPE, COSName.OCG);
        layer.setName(COSName.NAME, "notes");
        UnaryOperator<PageMaker> off = m -> m.resource(COSName.PROPERTIES, "L", layer)
                .withCatalog(c -> c.setItem(COSName.OCPROPERTIES, properties(layer)));
        String content = "/OC /L BDC 5 100 4 4 re f EMC";
        assertThat(marks(content, off)).isEmpty();
        assertThat(marks(content, m -> m.resource(COSName.PROPERTIES, "L", layer)))
                .hasSize(1);
        assertThat(marks(content + " 5 120 4 4 re f", off)).hasSize(1);
    }

    private static COSDictionary properties(COSDictionary off) {
        COSDictionary config = new COSDictionary();
        config.setItem(COSName.OFF, new COSArray(List.of(off)));
        COSDictionary properties = new COSDictionary();
        properties.setItem(COSName.D, config);
        properties.setItem(COSName.OCGS, new COSArray(List.of(off)));
        return properties;
    }

    @Test
    void formsAreMovedByTheirMatrixAndCutToTheirBox() {
        // 8.10.1
        UnaryOperator<PageMaker> form = m -> {
            COSStream s = m.stream("0 0 50 50 re f");
            s.setItem(COSName.TYPE, COSName.XOBJECT);
            s.setItem(COSName.SUBTYPE, COSName.FORM);
            s.setItem(COSName.BBOX, numbers(0, 0, 4, 6));
            s.setItem(COSName.MATRIX, numbers(1, 0, 0, 1, 5, 100));
            COSStream outer = m.stream("q 1 0 0 1 1 0 cm /Inner Do Q");
            outer.setItem(COSName.SUBTYPE, COSName.FORM);
            outer.setItem(COSName.BBOX, numbers(0, 0, 300, 300));
            COSDictionary xobjects = new COSDictionary();
            xobjects.setItem(COSName.getPDFName("Inner"), s);
            COSDictionary resources = new COSDictionary();
            resources.setItem(COSName.XOBJECT, xobjects);
            outer.setItem(COSName.RESOURCES, resources);
            return m.resource(COSName.XOBJECT, "Fm", outer);
        };
        assertBox(one("/Fm Do", form), 6, 10, 191, 197);
    }

    @Test
    void aPictureIsJudgedByItsDots() {
        // 2 x 1 dots: left white, right black; the black half lies at 8-12 mm
        String image = "q 8 0 0 10 4 100 cm BI /W 2 /H 1 /CS /G /BPC 8 /F /AHx ID FF00> EI Q";
        Mark m = one(image);
        assertThat(m.kind()).isEqualTo(MarkKind.IMAGE);
        assertThat(m.stage()).isEqualTo(Stage.RASTER);
        assertThat(m.nearMm()).isBetween(7.7, 8.3);
        assertThat(marks("q 8 0 0 10 4 100 cm BI /W 1 /H 1 /CS /G /BPC 8 /F /AHx ID FF> EI Q"))
                .as("a white picture")
                .isEmpty();
    }

    @Test
    void type3GlyphsPrintAsText() {
        UnaryOperator<PageMaker> font = m -> {
            COSDictionary procs = new COSDictionary();
            procs.setItem(COSName.getPDFName("bar"), m.stream("1000 0 0 0 500 800 d1 100 0 400 800 re f"));
            COSDictionary encoding = new COSDictionary();
            encoding.setItem(
                    COSName.DIFFERENCES, new COSArray(List.<COSBase>of(COSInteger.get(65), COSName.getPDFName("bar"))));
            COSDictionary f = new COSDictionary();
            f.setItem(COSName.TYPE, COSName.FONT);
            f.setItem(COSName.SUBTYPE, COSName.TYPE3);
            f.setItem(COSName.FONT_BBOX, numbers(0, 0, 1000, 1000));
            f.setItem(COSName.FONT_MATRIX, numbers(0.001, 0, 0, 0.001, 0, 0));
            f.setItem(COSName.CHAR_PROCS, procs);
            f.setItem(COSName.ENCODING, encoding);
            f.setInt(COSName.FIRST_CHAR, 65);
            f.setInt(COSName.LAST_CHAR, 65);
            f.setItem(COSName.WIDTHS, numbers(1000));
            return m.resource(COSName.FONT, "T", f);
        };
        Mark m = one("BT /T 10 Tf 5 100 Td (A) Tj ET", font);
        assertThat(m.kind()).isEqualTo(MarkKind.TEXT);
        assertBox(m, 6, 10, 189, 197);
    }

    @Test
    void annotationsPrintByTheirFlags() {
        // 12.5.3, Table 165: bit 3 Print, bit 2 Hidden
        assertThat(marks("", annotated(4))).extracting(Mark::kind).containsExactly(MarkKind.ANNOTATION);
        assertThat(marks("", annotated(0))).isEmpty();
        assertThat(marks("", annotated(4 | 2))).isEmpty();
    }

    @Test
    void anAnnotationThatEachReaderDrawsIsTakenWhole() {
        // 12.5.5 leaves it to the reader; Table 179: the words that a highlight marks; MuPDF, Poppler and Ghostscript
        // round its ends by 0.12 to 0.19 of its height
        List<Mark> marks = marks("", m -> {
            COSDictionary highlight = new COSDictionary();
            highlight.setName(COSName.SUBTYPE, "Highlight");
            highlight.setItem(COSName.RECT, numbers(300, 100, 310, 120));
            highlight.setItem(COSName.QUADPOINTS, numbers(20, 120, 30, 120, 20, 100, 30, 100));
            highlight.setInt(COSName.F, 4);
            return m.with(p -> p.setItem(COSName.ANNOTS, new COSArray(List.of(highlight))));
        });
        assertThat(marks).hasSize(1);
        assertThat(marks.get(0).nearMm()).isCloseTo((20 - 0.19 * 10) * 25.4 / 72, within(0.01));
        assertThat(marks.get(0).stage()).isEqualTo(Stage.ESTIMATE);
    }

    private static UnaryOperator<PageMaker> annotated(int flags) {
        return m -> {
            COSStream look = m.stream("0 0 10 10 re f");
            look.setItem(COSName.SUBTYPE, COSName.FORM);
            look.setItem(COSName.BBOX, numbers(0, 0, 10, 10));
            COSDictionary normal = new COSDictionary();
            normal.setItem(COSName.N, look);
            COSDictionary stamp = new COSDictionary();
            stamp.setItem(COSName.TYPE, COSName.ANNOT);
            stamp.setName(COSName.SUBTYPE, "Stamp");
            stamp.setItem(COSName.RECT, numbers(20, 100, 30, 120));
            stamp.setInt(COSName.F, flags);
            stamp.setItem(COSName.AP, normal);
            return m.with(p -> p.setItem(COSName.ANNOTS, new COSArray(List.of(stamp))));
        };
    }

    @Test
    void whatIsNotReadWholeIsUnchecked() {
        assertThat(scan("5 100 4 4 re f " + "1 2 fr\u00f6b\u0002 ".repeat(9)).unchecked())
                .contains("unknown operator");
        assertThat(scan("5 100 4 4 re f " + "1 2 frobnicate ".repeat(30)).unchecked())
                .as("words, which MuPDF, Poppler and Ghostscript pass over")
                .isNull();
        assertThat(scan("BX 1 2 frobnicate EX 5 100 4 4 re f").unchecked())
                .as("7.8.2: BX allows it")
                .isNull();
        assertThat(scan("BT /Gone 4 Tf 5 100 Td (H) Tj ET").basics().passedOver())
                .anyMatch(fault -> fault.contains("Gone"));
        assertThat(scan("BT /Gone 4 Tf -1 0 0 1 80 100 Tm (H) Tj ET").unchecked())
                .as("readers set a missing font in others of other widths: mirrored text may come to the edge")
                .contains("Gone");
        assertThat(scan("BT /Gone 4 Tf 80 100 Td (H) Tj ET").unchecked())
                .as("however wide, it runs away from the edge")
                .isNull();
        assertThat(scan("BT /Gone 4 Tf ET 5 100 4 4 re f").unchecked())
                .as("nothing is shown in it")
                .isNull();
        assertThat(scan("5 100 cm 5 100 4 4 re f").unchecked()).contains("cm");
        assertThat(scan("20 100 m 30 110 l").basics().passedOver())
                .as("a path never painted")
                .isNotEmpty();
        assertThat(scan("[".repeat(2000) + "] 0 d 5 100 4 4 re f").unchecked())
                .as("an array never closed")
                .isNotNull();
        assertThat(scan("").unchecked()).as("an empty page").isNull();
        assertThat(scan("20 100 4 4 re f" + " ".repeat(40_000)).unchecked())
                .as("padded")
                .isNull();
        assertThat(scan("0 g ".repeat(8192) + "20 100 4 4 re f 17 /stray").unchecked())
                .as("stray operands")
                .isNull();
        for (int pad = 0; pad < 8; pad++) {
            String content = "0 g ".repeat(4080) + " ".repeat(pad) + "BT ET BT ET BT ET BT ET BT ET BT ET BT ET ET";
            assertThat(scan(content).unchecked())
                    .as("a word across two chunks, " + pad)
                    .isNull();
        }
    }

    @Test
    void aFormThatDrawsItselfEnds() {
        UnaryOperator<PageMaker> loop = m -> {
            COSStream s = m.stream("/Fm Do /Fm Do");
            s.setItem(COSName.SUBTYPE, COSName.FORM);
            s.setItem(COSName.BBOX, numbers(0, 0, 300, 300));
            return m.resource(COSName.XOBJECT, "Fm", s);
        };
        assertThat(scan("/Fm Do", loop).unchecked()).isNull();
        assertThat(scan("/Fm Do", loop).basics().passedOver()).contains("a form draws itself");
    }

    @Test
    void endlessStatesEnd() {
        assertThat(scan("q ".repeat(5000) + "5 100 4 4 re f").unchecked()).contains("graphics state");
        assertThat(scan("Q Q Q 5 100 4 4 re f").unchecked()).isNull();
    }
}
