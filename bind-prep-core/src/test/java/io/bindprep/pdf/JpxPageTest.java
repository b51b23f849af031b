package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.FakeJpxReader;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import io.bindprep.picture.PagePicture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * JPEG 2000 on pages: white pictures of 160 mm and 1,600 dots that OpenJPEG packed, with a black bar whose place follows from
 * its dots ({@code fixtures/oracle/record-jpx.sh}).
 */
class JpxPageTest {
    private static final int DOTS = 1600;
    private static final String PLACED = "q 160 0 0 160 2 100 cm /Im Do Q";

    private final PageMaker page = PageMaker.a4();

    @TempDir
    private Path folder;

    private static byte[] file(String name) {
        try (InputStream in = JpxPageTest.class.getResourceAsStream("jpx/page/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private COSStream picture(byte[] data, @Nullable COSName filter) {
        COSStream s = page.stream("");
        try (OutputStream out = s.createRawOutputStream()) {
            out.write(data);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        s.setItem(COSName.FILTER, filter);
        s.setItem(COSName.SUBTYPE, COSName.IMAGE);
        s.setInt(COSName.WIDTH, DOTS);
        s.setInt(COSName.HEIGHT, DOTS);
        return s;
    }

    private COSStream picture(byte[] file) {
        return picture(file, COSName.JPX_DECODE);
    }

    private COSStream grey(String name) {
        COSStream s = picture(file(name));
        s.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
        return s;
    }

    private PageMarks scan(COSStream picture) {
        page.resource(COSName.XOBJECT, "Im", picture);
        try (OpenedPdf pdf = page.draw(PLACED).open(folder)) {
            return pdf.scan(1, PageEdge.LEFT, 15);
        }
    }

    private void assertBar(COSStream picture) {
        PageMarks found = scan(picture);
        assertThat(found.unchecked()).isNull();
        assertThat(found.marks()).hasSize(1);
        Mark bar = found.marks().get(0);
        assertThat(bar.kind()).isEqualTo(MarkKind.IMAGE);
        assertThat(bar.nearMm()).isCloseTo(8, within(0.25));
        assertThat(bar.farMm()).isCloseTo(12, within(0.25));
        assertThat(bar.alongStartMm()).isCloseTo(57, within(0.25));
        assertThat(bar.alongEndMm()).isCloseTo(67, within(0.25));
    }

    @ParameterizedTest
    @CsvSource({"bar.jp2, DeviceGray", "bar.jp2,", "bar.j2k, DeviceGray", "bar.j2k,"})
    void theBarLiesWhereItsDotsLie(String name, String space) {
        COSStream picture = picture(file(name));
        if (space != null) {
            picture.setName(COSName.COLORSPACE, space);
        }
        assertBar(picture);
    }

    @Test
    void theFilesOwnSizeHolds() {
        COSStream picture = picture(file("bar.jp2"));
        picture.setInt(COSName.WIDTH, 7);
        picture.setInt(COSName.HEIGHT, 99_999);
        assertBar(picture);
    }

    @Test
    void aMaskIsDecodedAndCutAlike() {
        COSStream black = picture(new byte[DOTS * DOTS], null);
        black.setInt(COSName.BITS_PER_COMPONENT, 8);
        black.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
        black.setItem(COSName.SMASK, grey("mask.jp2"));
        assertBar(black);
    }

    @Test
    void aMaskOfAJpxPictureIsCutAlike() {
        COSStream black = grey("opacity.jp2");
        black.setItem(COSName.SMASK, grey("mask.jp2"));
        assertBar(black);
    }

    @Test
    void opacityInTheFileHoldsWhereTheDocumentSaysSo() {
        COSStream picture = grey("opacity.jp2");
        picture.setInt("SMaskInData", 1);
        assertBar(picture);
    }

    @Test
    void opacityInTheFileIsNothingWhereTheDocumentDoesNot() {
        COSStream picture = grey("opacity.jp2");
        Mark all = scan(picture).marks().get(0);
        assertThat(all.nearMm()).isCloseTo(2, within(0.25));
    }

    @Test
    void whatBreaksOffIsUncheckedAndSaysWhatToDo() {
        byte[] whole = file("bar.j2k");
        PageMarks found = scan(picture(Arrays.copyOf(whole, whole.length / 3)));
        assertThat(found.unchecked()).isEqualTo("a JPEG 2000 picture in it cannot be decoded");
    }

    @Test
    void whatUnpacksToTooMuchIsUnreadOnEveryMachine() {
        byte[] huge = file("bar.j2k");
        // size and size of a tile, behind two markers, a length and the capabilities
        ByteBuffer.wrap(huge)
                .putInt(8, 100_000)
                .putInt(12, 100_000)
                .putInt(24, 100_000)
                .putInt(28, 100_000);
        assertThat(scan(picture(huge)).unchecked()).contains("128 MiB");
    }

    @Test
    void peopleSeeItToo() throws Exception {
        page.resource(COSName.XOBJECT, "Im", picture(file("bar.jp2")));
        try (OpenedPdf pdf = page.draw(PLACED).open(folder)) {
            PagePicture shown = pdf.pictures(1).draw(1, PageEdge.LEFT, 15, 0, List.of());
            assertThat(shown.problem()).isNull();
            byte[] png = Base64.getDecoder().decode(shown.whole().base64());
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
            double dots = image.getWidth() / 210.0;
            assertThat(image.getRGB((int) (10 * dots), (int) (62 * dots)) & 0xff)
                    .isLessThan(40);
            assertThat(image.getRGB((int) (16 * dots), (int) (62 * dots)) & 0xff)
                    .isGreaterThan(215);
        }
    }

    @Test
    void anAddedReaderGoesFirst() {
        COSStream picture = grey("bar.jp2");
        try (FakeJpxReader.Added reader = FakeJpxReader.add()) {
            Mark black = scan(picture).marks().get(0);
            assertThat(black.nearMm()).isCloseTo(2, within(0.25));
            assertThat(reader.read()).isNotEmpty().allMatch(region -> region.width < 300);
        }
    }
}
