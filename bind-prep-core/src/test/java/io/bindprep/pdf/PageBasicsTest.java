package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.PageBasics;
import io.bindprep.marks.Stage;
import io.bindprep.page.PageEdge;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts seen of a whole page on the way; lengths are worked out by hand from the operators. */
class PageBasicsTest {
    @TempDir
    Path folder;

    private PageBasics basics(String operators, UnaryOperator<PageMaker> more) {
        PageMaker maker = more.apply(PageMaker.page(216, 303)
                .box(COSName.TRIM_BOX, 3, 3, 213, 300)
                .resource(COSName.FONT, "F", font("Helvetica")));
        try (OpenedPdf pdf = maker.draw(operators).open(folder)) {
            return pdf.scan(1, PageEdge.LEFT, 15).basics();
        }
    }

    private PageBasics basics(String operators) {
        return basics(operators, m -> m);
    }

    private static COSDictionary font(String name) {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE1);
        font.setName(COSName.BASE_FONT, name);
        return font;
    }

    private static COSStream form(PageMaker m, String operators, COSName kind, String name, COSDictionary what) {
        COSStream form = m.stream(operators);
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        COSArray box = new COSArray();
        for (float v : new float[] {0, 0, 50, 50}) {
            box.add(new COSFloat(v));
        }
        form.setItem(COSName.BBOX, box);
        COSDictionary entries = new COSDictionary();
        entries.setItem(COSName.getPDFName(name), what);
        COSDictionary resources = new COSDictionary();
        resources.setItem(kind, entries);
        form.setItem(COSName.RESOURCES, resources);
        return form;
    }

    @Test
    void fontsThatAreNotInTheFileAreNamedWhereTheirTextShows() {
        assertThat(basics("BT /F 10 Tf 100 100 Td (far from the strip) Tj ET").fontsMissing())
                .containsExactly("Helvetica");
        assertThat(basics("BT /F 10 Tf 3 Tr 100 100 Td (unseen) Tj ET").fontsMissing())
                .as("9.3.6, mode 3: read by search, never printed")
                .isEmpty();
        assertThat(basics("BT /F 10 Tf ET").fontsMissing()).isEmpty();
        assertThat(basics(
                                "1 0 0 1 100 100 cm /Fm Do",
                                m -> m.resource(
                                        COSName.XOBJECT,
                                        "Fm",
                                        form(m, "BT /G 9 Tf (a) Tj ET", COSName.FONT, "G", font("Times-Roman"))))
                        .fontsMissing())
                .as("in a form away from the strip")
                .containsExactly("Times-Roman");
    }

    @Test
    void textInSuchAFontIsSaidToBeEstimated() {
        PageMaker maker = PageMaker.a4().resource(COSName.FONT, "F", font("Helvetica"));
        try (OpenedPdf pdf =
                maker.draw("BT /F 4 Tf 5 100 Td (H) Tj ET 5 120 4 4 re f").open(folder)) {
            assertThat(pdf.scan(1, PageEdge.LEFT, 15).marks())
                    .extracting(m -> m.stage())
                    .containsExactly(Stage.ESTIMATE, Stage.GEOMETRY);
        }
    }

    private static COSStream image(PageMaker m, int width, int height) {
        COSStream image = m.stream("");
        image.setItem(COSName.SUBTYPE, COSName.IMAGE);
        image.setItem(COSName.WIDTH, COSInteger.get(width));
        image.setItem(COSName.HEIGHT, COSInteger.get(height));
        image.setItem(COSName.BITS_PER_COMPONENT, COSInteger.get(8));
        image.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
        return image;
    }

    private static UnaryOperator<PageMaker> picture(int width, int height) {
        return m -> m.resource(COSName.XOBJECT, "Im", image(m, width, height));
    }

    @Test
    void aPictureCountsByItsDotsAtItsPrintedSize() {
        // 600 dots over 50.8 mm are 300 an inch, 400 over 101.6 mm are 100
        PageBasics.Picture p =
                basics("50.8 0 0 101.6 60 60 cm /Im Do", picture(600, 400)).coarsest();
        assertThat(p.ppi()).isCloseTo(100, within(0.01));
        assertThat(p.widthMm()).isCloseTo(50.8, within(0.01));
        assertThat(p.heightMm()).isCloseTo(101.6, within(0.01));
        assertThat(basics("0 50.8 -50.8 0 160 60 cm /Im Do", picture(600, 600))
                        .coarsest()
                        .ppi())
                .as("rotated")
                .isCloseTo(300, within(0.01));
        assertThat(basics("50 0 0 50 400 60 cm /Im Do", picture(60, 40)).coarsest())
                .as("off the page")
                .isNull();
        assertThat(basics("100 0 0 50 60 60 cm /Im Do", picture(256, 1)).coarsest())
                .as("a fade drawn as a picture")
                .isNull();
        assertThat(basics(
                                "2 0 0 2 60 60 cm /Fm Do",
                                m -> m.resource(
                                        COSName.XOBJECT,
                                        "Fm",
                                        form(m, "40 0 0 40 0 0 cm /In Do", COSName.XOBJECT, "In", image(m, 40, 40))))
                        .coarsest()
                        .ppi())
                .as("40 dots over 80 mm, in a form away from the strip")
                .isCloseTo(12.7, within(0.01));
    }

    @Test
    void artAtTheTrimCountsByHowFarItGoesBeyond() {
        // the trim is 3 mm inside the page all round; the frame of the page is as the reader sees it
        assertThat(basics("0 0 216 303 re f").bleed().mm()).isCloseTo(3, within(0.01));
        PageBasics.Bleed left = basics("2 50 40 40 re f").bleed();
        assertThat(left.edge()).isEqualTo(PageEdge.LEFT);
        assertThat(left.mm()).isCloseTo(1, within(0.01));
        assertThat(basics("50 3 40 40 re f").bleed()).isEqualTo(new PageBasics.Bleed(PageEdge.BOTTOM, 0));
        PageBasics.Bleed rotated = basics("2 50 40 40 re f", m -> m.with(p -> p.setInt(COSName.ROTATE, 90)))
                .bleed();
        assertThat(rotated.edge()).as("turned clockwise").isEqualTo(PageEdge.TOP);
        assertThat(basics("4 50 40 40 re f").bleed()).as("inside").isNull();
        assertThat(basics("1 g 0 0 216 303 re f").bleed()).as("white").isNull();
        assertThat(basics("BT /F 10 Tf 0 100 Td (text) Tj ET").bleed())
                .as("text is no art")
                .isNull();
        assertThat(basics("0 50 216 10 re f 3 50 40 10 re f").bleed().mm())
                .as("carried on by what lies below")
                .isCloseTo(3, within(0.01));
        assertThat(basics("3 3 210 297 re W n 0 0 216 303 re f").bleed().mm())
                .as("clipped at the trim")
                .isCloseTo(0, within(0.01));
        assertThat(basics("40 0 0 40 2 60 cm /Im Do", picture(600, 600)).bleed().mm())
                .isCloseTo(1, within(0.01));
        assertThat(basics("", m -> m).bleed()).isNull();
        assertThat(List.of(basics("0 50 0.5 0.5 re f")))
                .extracting(PageBasics::bleed)
                .containsOnlyNulls();
    }
}
