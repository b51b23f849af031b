package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.page.PageEdge;
import io.bindprep.picture.CloseUpWindow;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.Picture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each test states where a square is drawn; boxes, turns and user units by ISO 32000-1:2008, 7.7.3.3 and 8.3.2. */
class PagePicturesTest {
    @TempDir
    Path folder;

    private PagePicture draw(PageMaker page, PageEdge edge, CloseUpWindow window) {
        try (OpenedPdf pdf = page.open(folder)) {
            return pdf.pictures(1).draw(1, edge, 20, 0, List.of(window));
        }
    }

    private static BufferedImage image(Picture picture) {
        try {
            return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(picture.base64())));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Red at a place given as a part of the picture's width and height. */
    private static boolean red(Picture picture, double x, double y) {
        BufferedImage image = image(picture);
        int rgb = image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight()));
        return ((rgb >> 16) & 0xff) > 150 && ((rgb >> 8) & 0xff) < 100;
    }

    /** A red square of 4 mm whose middle lies 10 mm from the given edge and 50 mm along it, as the reader sees it. */
    private static PageMaker square(PageEdge edge) {
        double x = switch (edge) {
            case LEFT -> 10;
            case RIGHT -> 90;
            case TOP, BOTTOM -> 50;
        };
        double fromHead = switch (edge) {
            case TOP -> 10;
            case BOTTOM -> 140;
            case LEFT, RIGHT -> 50;
        };
        return PageMaker.page(100, 150).draw("1 0 0 rg " + (x - 2) + " " + (150 - fromHead - 2) + " 4 4 re f");
    }

    @ParameterizedTest
    @CsvSource({"LEFT,.5,.5", "RIGHT,.5,.5", "TOP,.5,.5", "BOTTOM,.5,.5"})
    void aCloseUpShowsItsStretchOfTheBindingEdge(PageEdge edge, double x, double y) {
        Picture closeUp = draw(square(edge), edge, new CloseUpWindow(40, 60))
                .closeUps()
                .get(0)
                .picture();
        assertThat(closeUp.width()).isEqualTo(240);
        assertThat(closeUp.height()).isEqualTo(240);
        assertThat(red(closeUp, x, y)).isTrue();
        assertThat(red(closeUp, .38, .5)).isFalse();
        assertThat(red(closeUp, .5, .62)).isFalse();
    }

    @Test
    void theWholePageKeepsItsShape() {
        Picture whole = draw(square(PageEdge.LEFT), PageEdge.LEFT, new CloseUpWindow(40, 60))
                .whole();
        assertThat(whole.width()).isEqualTo(600);
        assertThat(whole.height()).isEqualTo(900);
        assertThat(red(whole, .1, 1 / 3.0)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"90,.5,.9", "180,.1,.5", "270,.5,.1"})
    void turnedPagesAreDrawnAsTheReaderSeesThem(int rotate, double x, double y) {
        // on a square sheet: the middle of the right edge goes to the foot, the left, the head
        PageMaker page = PageMaker.page(100, 100)
                .draw("1 0 0 rg 88 48 4 4 re f")
                .with(d -> d.setItem(COSName.ROTATE, COSInteger.get(rotate)));
        assertThat(red(draw(page, PageEdge.LEFT, new CloseUpWindow(0, 10)).whole(), x, y))
                .isTrue();
    }

    @Test
    void onlyTheTrimIsShown() {
        PageMaker page = PageMaker.page(120, 120)
                .box(COSName.TRIM_BOX, 10, 10, 110, 110)
                .draw("1 0 0 rg 0 0 9.5 120 re f 12 58 4 4 re f");
        PagePicture picture = draw(page, PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(red(picture.whole(), .005, .5)).isFalse();
        assertThat(red(picture.whole(), .04, .5)).isTrue();
        assertThat(red(picture.closeUps().get(0).picture(), .2, .5)).isTrue();
    }

    @Test
    void aLargerUserUnitMakesALargerPage() {
        PageMaker page = PageMaker.page(100, 100)
                .with(d -> d.setItem(COSName.USER_UNIT, COSInteger.get(2)))
                .draw("1 0 0 rg 4 23 2 4 re f");
        // 10 mm from the left edge and 150 mm from the head
        assertThat(red(
                        draw(page, PageEdge.LEFT, new CloseUpWindow(140, 160))
                                .closeUps()
                                .get(0)
                                .picture(),
                        .5,
                        .5))
                .isTrue();
    }

    @Test
    void whatCannotBeDrawnIsSaid() {
        PageMaker page = PageMaker.a4().with(d -> d.removeItem(COSName.MEDIA_BOX));
        PagePicture picture = draw(page, PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(picture.whole()).isNull();
        assertThat(picture.problem()).isEqualTo("it declares no usable MediaBox");
    }

    @Test
    void aPageThatAsksForTooMuchIsLeftOut() {
        PagePicture picture =
                draw(PageMaker.a4().draw("q Q\n".repeat(1_600_000)), PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(picture.whole()).isNull();
        assertThat(picture.problem()).contains("drawing operators");
    }

    @Test
    void aFormThatDrawsItselfIsSurvived() {
        PageMaker page = PageMaker.a4();
        var form = page.stream("q /F Do Q");
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        form.setItem(COSName.RESOURCES, page.resources());
        page.resource(COSName.XOBJECT, "F", form).draw("/F Do");
        PagePicture picture = draw(page, PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(picture.whole() != null || picture.problem() != null).isTrue();
    }

    @Test
    void aLayerThatDoesNotPrintIsNotShown() {
        PageMaker page = PageMaker.page(100, 150);
        PagePicture shown = draw(page.draw("1 0 0 rg 8 98 4 4 re f"), PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(red(shown.closeUps().get(0).picture(), .5, .5)).isTrue();
        PagePicture hidden = draw(Hidden.layer(PageMaker.page(100, 150)), PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(red(hidden.closeUps().get(0).picture(), .5, .5)).isFalse();
    }

    @Test
    void drawnTwiceItIsTheSame() {
        PagePicture first = draw(square(PageEdge.LEFT), PageEdge.LEFT, new CloseUpWindow(40, 60));
        assertThat(draw(square(PageEdge.LEFT), PageEdge.LEFT, new CloseUpWindow(40, 60)))
                .isEqualTo(first);
    }

    /** A square in a group that is off by default. */
    private static final class Hidden {
        static PageMaker layer(PageMaker page) {
            var group = new org.apache.pdfbox.cos.COSDictionary();
            group.setItem(COSName.TYPE, COSName.OCG);
            group.setString(COSName.NAME, "off");
            var off = new org.apache.pdfbox.cos.COSArray();
            off.add(group);
            var d = new org.apache.pdfbox.cos.COSDictionary();
            d.setItem(COSName.OFF, off);
            var properties = new org.apache.pdfbox.cos.COSDictionary();
            properties.setItem(COSName.OCGS, off);
            properties.setItem(COSName.D, d);
            return page.resource(COSName.PROPERTIES, "L", group)
                    .withCatalog(c -> c.setItem(COSName.OCPROPERTIES, properties))
                    .draw("/OC /L BDC 1 0 0 rg 8 98 4 4 re f EMC");
        }
    }
}
