package io.bindprep.pdf;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pages of one feature each, 148 x 210 mm, and the first ink from the left that MuPDF 1.21, Poppler 22.12 and Ghostscript
 * 10.00 drew of them at 254 dpi (fixtures/oracle/strips.py), two of the three at least.
 */
class AsReadersDrawTest {
    private static final double MM = 72 / 25.4;
    private static final double CLEAR = Double.POSITIVE_INFINITY;
    private static final String MARK = " 0 g 8 100 6 3 re f";

    @TempDir
    Path folder;

    /** A page with that content in millimetres; objects are numbered from 5. */
    private PageMarks page(String resources, String more, String content, String... objects) throws Exception {
        List<String> all = new ArrayList<>(List.of(
                "<</Type/Catalog/Pages 2 0 R>>",
                "<</Type/Pages/Count 1/Kids[3 0 R]>>",
                "<</Type/Page/Parent 2 0 R/MediaBox[0 0 " + 148 * MM + " " + 210 * MM + "]/Contents 4 0 R/Resources<<"
                        + resources + ">>" + more + ">>",
                stream("", MM + " 0 0 " + MM + " 0 0 cm " + content)));
        all.addAll(List.of(objects));
        StringBuilder pdf = new StringBuilder("%PDF-1.7\n");
        StringBuilder table = new StringBuilder("0000000000 65535 f \n");
        for (int i = 0; i < all.size(); i++) {
            table.append(String.format("%010d 00000 n \n", pdf.length()));
            pdf.append(i + 1).append(" 0 obj\n").append(all.get(i)).append("\nendobj\n");
        }
        int at = pdf.length();
        int size = all.size() + 1;
        pdf.append("xref\n0 " + size + "\n" + table + "trailer<</Root 1 0 R/Size " + size + ">>\nstartxref\n" + at);
        Path file = Files.createTempFile(folder, "page", ".pdf");
        Files.write(file, pdf.append("\n%%EOF").toString().getBytes(ISO_8859_1));
        try (OpenedPdf opened = Intake.open(new PdfSource(file, "page.pdf", null))) {
            return opened.scan(1, PageEdge.LEFT, 12);
        }
    }

    private static String stream(String keys, String data) {
        return "<<" + keys + "/Length " + data.length() + ">>stream\n" + data + "\nendstream";
    }

    private double first(String resources, String more, String content, String... objects) throws Exception {
        PageMarks marks = page(resources, more, content, objects);
        assertThat(marks.unchecked()).isNull();
        return marks.marks().stream()
                .filter(mark -> mark.kind() != MarkKind.BACKGROUND)
                .mapToDouble(Mark::nearMm)
                .min()
                .orElse(CLEAR);
    }

    private double first(String content) throws Exception {
        return first("/Font<</F<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>>>", "", content);
    }

    private static String picture(String keys, String samples) {
        return stream("/Type/XObject/Subtype/Image/Height 1/Width 2" + keys, samples);
    }

    /** ISO 32000-1:2008, 8.9.5.2: white samples of [0 .1] are nearly black. */
    @ParameterizedTest
    @CsvSource({
        "/BitsPerComponent 8/Decode[0 .1], 'ÿ\0', 3",
        "/BitsPerComponent 8/Decode[1 1], 'ÿ\0', Infinity",
        "/BitsPerComponent 8/Decode[0 0], 'ÿÿ', 3",
        "/BitsPerComponent 4/Decode[0 .3], 'ð', 3",
        "/BitsPerComponent 1/Decode[.5 1], '\u0040', 3",
        "/BitsPerComponent 16/Decode[0 .2], 'ÿÿ\0\0', 3",
        "/BitsPerComponent 8/Decode[1 0], 'ÿ\0', 3",
        "/BitsPerComponent 8, 'ÿ\0', 9"
    })
    void tonesNarrowedByDecode(String keys, String samples, double first) throws Exception {
        String grey = "/ColorSpace/DeviceGray" + keys;
        assertThat(first("/XObject<</I 5 0 R>>", "", "q 12 0 0 10 3 100 cm /I Do Q", picture(grey, samples)))
                .isCloseTo(first, within(0.3));
    }

    @Test
    void tonesNarrowedInInlinePicturesAndSoftMasks() throws Exception {
        assertThat(first("q 12 0 0 10 3 100 cm BI /W 2 /H 1 /CS /G /BPC 8 /D [0 .1] ID ÿÿ EI Q"))
                .isCloseTo(3, within(0.3));
        String grey = "/ColorSpace/DeviceGray/BitsPerComponent 8";
        assertThat(first(
                        "/XObject<</I 5 0 R>>",
                        "",
                        "q 12 0 0 10 3 100 cm /I Do Q",
                        picture(grey + "/SMask 6 0 R", "\0\0"),
                        picture(grey + "/Decode[.5 1]", "\0ÿ")))
                .isCloseTo(3, within(0.3));
    }

    /** White tiles have no grey rim. */
    @Test
    void whiteTilesPrintNothing() throws Exception {
        String tile = "/PatternType 1/PaintType 1/TilingType 1/BBox[0 0 10 10]/XStep 10/YStep 10/Resources<<>>/Matrix["
                + MM + " 0 0 " + MM + " 0 0]";
        String fill = "/Pattern cs /P scn 5 90 8 30 re f";
        assertThat(first("/Pattern<</P 5 0 R>>", "", fill, stream(tile, "1 g 6 6 2 2 re f")))
                .isEqualTo(CLEAR);
        assertThat(first("/Pattern<</P 5 0 R>>", "", fill, stream(tile, ".9 g 6 6 2 2 re f")))
                .isCloseTo(6, within(0.3));
        assertThat(first("/Pattern<</P 5 0 R>>", "", fill, stream(tile, "0 w 6 0 m 6 10 l S")))
                .isCloseTo(6, within(0.3));
    }

    @ParameterizedTest
    @CsvSource({
        "a white line over a mark, 0 g 4 100 6 3 re f 1 G 12 w 0 101 m 30 101 l S, Infinity",
        "a tint cut out and filled again, .5 g 0 0 148 210 re f 1 g 4 100 6 3 re f .5 g 4 100 6 3 re f, Infinity",
        "a hundredth of grey, .99 g 5 90 8 8 re f, Infinity",
        "three hundredths of grey, .97 g 5 90 8 8 re f, 5",
        "a clip of 0.0002 mm at the foot, q 1 0 0 1 4 0 cm 0 0 6 .0002 re W n 0 0 50 50 re f Q, 4",
        "a missing colour space is passed over, /No cs 1 scn 5 100 6 3 re f, Infinity",
        "a missing colour space is passed over, /No cs .5 scn 5 100 6 3 re f, 5",
        "a pen of negative width is as wide, -2 w 8 90 m 8 120 l S, 7",
        "dashes of negative phase, [4 4] -2 d 2 w 5 90 m 30 90 l S, 7",
        "a string left open, 0 g 8 100 6 3 re f (abc, 8",
        "a string left open swallows the rest, BT /F 5 Tf 9 50 Td (Hx ET 0 g 8 100 6 3 re f, Infinity",
        "an array left open, 0 g 8 100 6 3 re f [1 2, 8",
        "too few operands of a colour, 0 g 1 1 rg 8 100 6 3 re f, 8",
        "too few operands of a rectangle, 6 3 re 0 g 8 100 6 3 re f, 8",
        "too few operands of a cap, J 2 w 9 50 m 9 90 l S, 8",
        "thirty unknown words, 'aa bb cc dd ee ff gg hh kk ll aa bb cc dd ee ff gg hh kk ll aa bb cc dd ee ff gg hh kk ll 0 g 8 100 6 3 re f', 8",
    })
    void oneFeature(String what, String content, double first) throws Exception {
        assertThat(first(content)).as(what).isCloseTo(first, within(0.3));
    }

    /** Some readers draw what stands behind an open bracket, others do not. */
    @ParameterizedTest
    @CsvSource({"[1 2 3", "/OC << /A 1", "<abcd", "BT /F 5 Tf 9 50 Td [(Hx) 5 TJ ET"})
    void bracketsLeftOpenAreNotJudged(String open) throws Exception {
        assertThat(page("", "", open + MARK).unchecked()).isNotNull();
    }

    @Test
    void coloursOfManySpaces() throws Exception {
        String area = "/K cs 0 scn 5 90 8 8 re f";
        String lab = "[/Indexed[/Lab<</WhitePoint[.9642 1 .8249]>>]1 <FF8080408080>]";
        assertThat(first("/ColorSpace<</K " + lab + ">>", "", area)).isEqualTo(CLEAR);
        assertThat(first("/ColorSpace<</K " + lab + ">>", "", "/K cs 1 scn 5 90 8 8 re f"))
                .isCloseTo(5, within(0.3));
        assertThat(first("/ColorSpace<</K[/Indexed/DeviceRGB 1 <FFFFFF00000000>]>>", "", area))
                .as("a palette with a byte to spare")
                .isEqualTo(CLEAR);
        assertThat(first("/ColorSpace<</K/Pattern>>", "", "/K cs 5 90 8 8 re f"))
                .as("no pattern named yet")
                .isEqualTo(CLEAR);
    }

    @Test
    void aRestoreTooManyChangesNothingThatIsDrawn() throws Exception {
        assertThat(first("/ExtGState<</G<</ca .1>>>>", "", "q Q Q /G gs 0 g 6 90 8 8 re f Q"))
                .isCloseTo(6, within(0.3));
    }

    @Test
    void threeHundredthsOfBlackShow() throws Exception {
        assertThat(first("/ExtGState<</G<</ca .03>>>>", "", "/G gs 0 g 6 90 8 8 re f"))
                .isCloseTo(6, within(0.3));
    }

    /** ISO 32000-1:2008, 8.10.2: an appearance is cut to its BBox. */
    @Test
    void anAppearanceEndsAtItsBox() throws Exception {
        String rect = "/Rect[" + 5 * MM + " " + 90 * MM + " " + 15 * MM + " " + 100 * MM + "]";
        assertThat(first(
                        "",
                        "/Annots[<</Type/Annot/Subtype/Stamp/F 4" + rect + "/AP<</N 5 0 R>>>>]",
                        "",
                        stream("/Type/XObject/Subtype/Form/BBox[0 0 10 10]", "0 g -9 0 20 10 re f")))
                .isCloseTo(5, within(0.3));
    }

    @Test
    void aCharacterThatNoStandardFontHasIsDrawnByTheSubstitute() throws Exception {
        String font = "/Font<</S<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding<</Type/Encoding"
                + "/Differences[65/M/Omega/.notdef]>>>>>>";
        assertThat(first(font, "", "BT /S 10 Tf 6 90 Td (B) Tj ET")).isCloseTo(6.2, within(1.2));
        assertThat(first(font, "", "BT /S 10 Tf 6 90 Td (C) Tj ET")).isEqualTo(CLEAR);
    }

    @Test
    void aFontThatCannotBeReadIsSetInAnother() throws Exception {
        String font = "/Font<</S<</Type/Font/Subtype/Type0/BaseFont/Bar/Encoding/Identity-H>>>>";
        assertThat(first(font, "", "BT /S 4 Tf 5 50 Td (Hx) Tj ET")).isCloseTo(5.3, within(1.2));
        assertThat(first(font, "", "BT /S 4 Tf 80 50 Td (Hx) Tj ET")).isEqualTo(CLEAR);
        assertThat(page(font, "", "BT /S 4 Tf -1 0 0 1 80 50 Tm (Hx) Tj ET").unchecked())
                .as("readers set it in others of other widths: how near this comes to the edge nobody knows")
                .contains("cannot be read");
    }
}
