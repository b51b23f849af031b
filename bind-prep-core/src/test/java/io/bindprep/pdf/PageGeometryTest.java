package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.Mark;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.nio.file.Path;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boxes, turn and unit of a page: ISO 32000-1:2008, 7.7.3.3, 7.9.5, 14.11.2 (clauses named at each check). */
class PageGeometryTest {
    private static final COSName USER_UNIT = COSName.USER_UNIT;

    @TempDir
    Path folder;

    /**
     * One bar of ink at x 10-12 mm, y 40-50 mm on an unturned A4 page. Where it lies from each edge when the page is
     * turned clockwise (Table 30, Rotate) is worked out by hand: turned 90, the left edge is on top and the foot at the
     * left.
     */
    @ParameterizedTest
    @CsvSource({
        "0, LEFT, 10, 12, 247, 257",
        "0, RIGHT, 198, 200, 247, 257",
        "0, TOP, 247, 257, 10, 12",
        "0, BOTTOM, 40, 50, 10, 12",
        "90, LEFT, 40, 50, 10, 12",
        "90, RIGHT, 247, 257, 10, 12",
        "90, TOP, 10, 12, 40, 50",
        "90, BOTTOM, 198, 200, 40, 50",
        "180, LEFT, 198, 200, 40, 50",
        "180, TOP, 40, 50, 198, 200",
        "270, LEFT, 247, 257, 198, 200",
        "270, BOTTOM, 10, 12, 247, 257",
        "-90, LEFT, 247, 257, 198, 200",
        "450, LEFT, 40, 50, 10, 12",
    })
    void turnsAndEdges(int rotate, PageEdge edge, double near, double far, double start, double end) {
        for (boolean swapped : new boolean[] {false, true}) {
            for (double origin : new double[] {0, -100, 55}) {
                for (double unit : new double[] {1, 2}) {
                    Mark m = bar(rotate, edge, swapped, origin, unit);
                    assertThat(m.nearMm()).isCloseTo(near * unit, within(0.01));
                    assertThat(m.farMm()).isCloseTo(far * unit, within(0.01));
                    assertThat(m.alongStartMm()).isCloseTo(start * unit, within(0.01));
                    assertThat(m.alongEndMm()).isCloseTo(end * unit, within(0.01));
                }
            }
        }
    }

    private Mark bar(int rotate, PageEdge edge, boolean swapped, double origin, double unit) {
        double x0 = origin;
        double x1 = origin + 210;
        PageMaker maker = PageMaker.a4()
                .box(COSName.MEDIA_BOX, swapped ? x1 : x0, swapped ? 297 : 0, swapped ? x0 : x1, swapped ? 0 : 297)
                .with(p -> p.setInt(COSName.ROTATE, rotate))
                .with(p -> p.setItem(USER_UNIT, new COSFloat((float) unit)))
                .draw((origin + 10) + " 40 2 10 re f");
        try (OpenedPdf pdf = maker.open(folder)) {
            var marks = pdf.scan(1, edge, 1000);
            assertThat(marks.unchecked()).isNull();
            return marks.marks().get(0);
        }
    }

    @Test
    void trimIsTrimBoxElseCropBoxElseMediaBoxCutToTheMediaBox() {
        // 14.11.2 and Table 30: TrimBox defaults to CropBox, CropBox to MediaBox; 14.11.2.1: cut to the MediaBox
        assertTrim(PageMaker.a4(), 210, 297, false);
        assertTrim(PageMaker.a4().box(COSName.CROP_BOX, 5, 5, 205, 292), 200, 287, false);
        assertTrim(PageMaker.a4().box(COSName.TRIM_BOX, 10, 10, 200, 287), 190, 277, true);
        assertTrim(
                PageMaker.a4().box(COSName.CROP_BOX, 5, 5, 205, 292).box(COSName.TRIM_BOX, 200, 287, 10, 10),
                190,
                277,
                true);
        assertTrim(PageMaker.a4().box(COSName.CROP_BOX, -50, -50, 100, 400), 100, 297, false);
        // a box that lies wholly outside says nothing
        assertTrim(PageMaker.a4().box(COSName.TRIM_BOX, 300, 300, 400, 400), 210, 297, false);
    }

    private void assertTrim(PageMaker maker, double w, double h, boolean declared) {
        try (OpenedPdf pdf = maker.open(folder)) {
            PageFacts f = pdf.facts().pages().get(0);
            assertThat(f.trimWidth().mm()).isCloseTo(w, within(0.001));
            assertThat(f.trimHeight().mm()).isCloseTo(h, within(0.001));
            assertThat(f.trimDeclared()).isEqualTo(declared);
        }
    }

    @Test
    void mediaBoxCropBoxAndRotateAreInheritedAndTrimBoxIsNot() {
        // 7.7.3.4: inheritable attributes; TrimBox is not among them (Table 30)
        PageMaker maker = PageMaker.a4().with(p -> {
            COSDictionary parent = p.getCOSDictionary(COSName.PARENT);
            parent.setItem(COSName.MEDIA_BOX, p.getItem(COSName.MEDIA_BOX));
            parent.setItem(COSName.TRIM_BOX, p.getItem(COSName.MEDIA_BOX));
            parent.setItem(COSName.ROTATE, COSInteger.get(90));
            p.removeItem(COSName.MEDIA_BOX);
            p.removeItem(COSName.ROTATE);
        });
        try (OpenedPdf pdf = maker.open(folder)) {
            PageFacts f = pdf.facts().pages().get(0);
            assertThat(f.rotate()).isEqualTo(90);
            assertThat(f.trimWidth().mm()).isCloseTo(297, within(0.001));
            assertThat(f.trimDeclared()).isFalse();
        }
    }

    @Test
    void aPageWithoutUsableSizeOrTurnIsUnreadNotLetter() {
        assertUnchecked(PageMaker.a4().with(p -> p.removeItem(COSName.MEDIA_BOX)), "MediaBox");
        assertUnchecked(PageMaker.a4().box(COSName.MEDIA_BOX, 0, 0, 0, 297), "MediaBox");
        assertUnchecked(PageMaker.a4().with(p -> p.setInt(COSName.ROTATE, 45)), "Rotate");
    }

    private void assertUnchecked(PageMaker maker, String why) {
        try (OpenedPdf pdf = maker.open(folder)) {
            assertThat(pdf.scan(1, PageEdge.LEFT, 15).unchecked()).contains(why);
        }
    }
}
