package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.OwnMachine;
import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Large pictures, of which only the part near the strip is unpacked: a white one of 160 mm and 1,600 dots with a black bar
 * whose place follows from its dots.
 */
class PictureCutTest {
    private static final int DOTS = 1600;
    private static final int BAR_X = 60;
    private static final int BAR_Y = 200;
    private static final int BAR_W = 40;
    private static final int BAR_H = 100;

    @TempDir
    Path folder;

    private static boolean bar(int x, int y) {
        return x >= BAR_X && x < BAR_X + BAR_W && y >= BAR_Y && y < BAR_Y + BAR_H;
    }

    /** Samples of so many bits a dot, each all ones but in the bar. */
    private static byte[] samples(int bits) {
        int row = (DOTS * bits + 7) / 8;
        byte[] bytes = new byte[row * DOTS];
        for (int y = 0; y < DOTS; y++) {
            for (int bit = 0; bit < DOTS * bits; bit++) {
                if (!bar(bit / bits, y)) {
                    bytes[y * row + bit / 8] |= (byte) (0x80 >> bit % 8);
                }
            }
        }
        return bytes;
    }

    private static byte[] packed(COSName packing, byte[] bytes) {
        try (COSDocument document = new COSDocument()) {
            COSStream stream = document.createCOSStream();
            try (OutputStream out = stream.createOutputStream(packing)) {
                out.write(bytes);
            }
            try (InputStream in = stream.createRawInputStream()) {
                return in.readAllBytes();
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] photograph() {
        BufferedImage image = new BufferedImage(DOTS, DOTS, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < DOTS * DOTS; i++) {
            image.getRaster().setSample(i % DOTS, i / DOTS, 0, bar(i % DOTS, i / DOTS) ? 0 : 255);
        }
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, "jpeg", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static COSStream stream(PageMaker m, byte[] raw, int bits, String space, COSName... packings) {
        COSStream s = m.stream("");
        try (OutputStream out = s.createRawOutputStream()) {
            out.write(raw);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        s.removeItem(COSName.FILTER);
        if (packings.length > 0) {
            s.setItem(COSName.FILTER, new COSArray(List.of(packings)));
        }
        asPicture(s, DOTS, bits, space);
        return s;
    }

    private static void asPicture(COSStream s, int dots, int bits, String space) {
        s.setItem(COSName.SUBTYPE, COSName.IMAGE);
        s.setInt(COSName.WIDTH, dots);
        s.setInt(COSName.HEIGHT, dots);
        s.setInt(COSName.BITS_PER_COMPONENT, bits);
        s.setName(COSName.COLORSPACE, space);
    }

    private static Arguments of(String name, byte[] raw, int bits, String space, COSName... packings) {
        return Arguments.of(name, (Function<PageMaker, COSStream>) m -> stream(m, raw, bits, space, packings));
    }

    static Stream<Arguments> packings() {
        byte[] grey = samples(8);
        byte[] flate = packed(COSName.FLATE_DECODE, grey);
        return Stream.of(
                of("bare", grey, 8, "DeviceGray"),
                of("one bit", packed(COSName.FLATE_DECODE, samples(1)), 1, "DeviceGray", COSName.FLATE_DECODE),
                of("four bits", packed(COSName.FLATE_DECODE, samples(4)), 4, "DeviceGray", COSName.FLATE_DECODE),
                of("flate", flate, 8, "DeviceGray", COSName.FLATE_DECODE),
                of("colour", packed(COSName.FLATE_DECODE, samples(24)), 8, "DeviceRGB", COSName.FLATE_DECODE),
                of("16 bits", packed(COSName.FLATE_DECODE, samples(48)), 16, "DeviceRGB", COSName.FLATE_DECODE),
                of("lzw", packed(COSName.LZW_DECODE, grey), 8, "DeviceGray", COSName.LZW_DECODE),
                of(
                        "two packings",
                        packed(COSName.ASCII85_DECODE, flate),
                        8,
                        "DeviceGray",
                        COSName.ASCII85_DECODE,
                        COSName.FLATE_DECODE),
                of("photograph", photograph(), 8, "DeviceGray", COSName.DCT_DECODE));
    }

    private List<Mark> marks(PageMaker page, PageEdge edge, String matrix, COSStream picture) {
        page.resource(COSName.XOBJECT, "Im", picture);
        try (OpenedPdf pdf = page.draw("q " + matrix + " cm /Im Do Q").open(folder)) {
            PageMarks found = pdf.scan(1, edge, 15);
            assertThat(found.unchecked()).isNull();
            return found.marks();
        }
    }

    private static void assertBar(List<Mark> marks, double near, double far, double along, double alongEnd) {
        assertThat(marks).hasSize(1);
        Mark bar = marks.get(0);
        assertThat(bar.kind()).isEqualTo(MarkKind.IMAGE);
        assertThat(bar.nearMm()).isCloseTo(near, within(0.25));
        assertThat(bar.farMm()).isCloseTo(far, within(0.25));
        assertThat(bar.alongStartMm()).isCloseTo(along, within(0.25));
        assertThat(bar.alongEndMm()).isCloseTo(alongEnd, within(0.25));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packings")
    void theBarLiesWhereItsDotsLie(String name, Function<PageMaker, COSStream> picture) {
        // the picture's upper left corner is 2 mm from the left edge and 37 mm from the head
        PageMaker page = PageMaker.a4();
        assertBar(marks(page, PageEdge.LEFT, "160 0 0 160 2 100", picture.apply(page)), 8, 12, 57, 67);
    }

    @ParameterizedTest
    @EnumSource(PageEdge.class)
    void turnedToEachEdge(PageEdge edge) {
        PageMaker page = PageMaker.page(200, 200);
        COSStream picture =
                stream(page, packed(COSName.FLATE_DECODE, samples(8)), 8, "DeviceGray", COSName.FLATE_DECODE);
        switch (edge) {
            case LEFT -> assertBar(marks(page, edge, "160 0 0 160 2 20", picture), 8, 12, 40, 50);
            case RIGHT -> assertBar(marks(page, edge, "-160 0 0 160 198 20", picture), 8, 12, 40, 50);
            case TOP -> assertBar(marks(page, edge, "0 -160 160 0 20 198", picture), 8, 12, 150, 160);
            case BOTTOM -> assertBar(marks(page, edge, "0 160 160 0 20 2", picture), 8, 12, 150, 160);
        }
    }

    @Test
    void aMaskIsCutAlike() {
        PageMaker page = PageMaker.a4();
        byte[] black = new byte[DOTS * DOTS];
        COSStream picture = stream(page, packed(COSName.FLATE_DECODE, black), 8, "DeviceGray", COSName.FLATE_DECODE);
        COSStream mask = stream(page, packed(COSName.FLATE_DECODE, samples(8)), 8, "DeviceGray", COSName.FLATE_DECODE);
        mask.setItem(COSName.DECODE, new COSArray(List.of(new COSFloat(1), new COSFloat(0))));
        picture.setItem(COSName.SMASK, mask);
        assertBar(marks(page, PageEdge.LEFT, "160 0 0 160 2 100", picture), 8, 12, 57, 67);
    }

    @Test
    void aStencilIsCutToo() {
        PageMaker page = PageMaker.a4();
        COSStream stencil =
                stream(page, packed(COSName.FLATE_DECODE, samples(1)), 1, "DeviceGray", COSName.FLATE_DECODE);
        stencil.removeItem(COSName.COLORSPACE);
        stencil.setBoolean(COSName.IMAGE_MASK, true);
        assertBar(marks(page, PageEdge.LEFT, "160 0 0 160 2 100", stencil), 8, 12, 57, 67);
    }

    @Test
    void aPictureThatBreaksOffIsUnchecked() {
        PageMaker page = PageMaker.a4();
        // nothing at all in four inks would be blank paper
        COSStream broken = stream(page, new byte[4 * DOTS * (DOTS - 2)], 8, "DeviceCMYK");
        page.resource(COSName.XOBJECT, "Im", broken);
        try (OpenedPdf pdf = page.draw("q 160 0 0 160 2 100 cm /Im Do Q").open(folder)) {
            assertThat(pdf.scan(1, PageEdge.LEFT, 15).unchecked()).contains("cannot be decoded");
        }
    }

    @Test
    void whatUnpacksToTooMuchIsUnreadOnEveryMachine() {
        PageMaker page = PageMaker.a4();
        COSStream huge = stream(page, new byte[100], 8, "DeviceRGB");
        huge.setInt(COSName.WIDTH, 100_000);
        huge.setInt(COSName.HEIGHT, 100_000);
        page.resource(COSName.XOBJECT, "Im", huge);
        try (OpenedPdf pdf = page.draw("q 160 0 0 160 2 100 cm /Im Do Q").open(folder)) {
            assertThat(pdf.scan(1, PageEdge.LEFT, 15).unchecked()).contains("128 MiB");
        }
    }

    @Test
    void aPictureOfManyTimesTheMemoryIsReadByTwoAtOnce() throws Exception {
        int dots = 9000; // 243 MB unpacked
        PageMaker page = PageMaker.a4();
        COSStream picture = page.stream("");
        try (OutputStream out = picture.createOutputStream(COSName.FLATE_DECODE)) {
            byte[] row = new byte[3 * dots];
            Arrays.fill(row, (byte) 255);
            byte[] barred = row.clone();
            // 160 mm: 6 to 10 mm from the picture's left edge
            Arrays.fill(barred, 3 * dots * 6 / 160, 3 * dots * 10 / 160, (byte) 0);
            for (int y = 0; y < dots; y++) {
                out.write(y >= dots / 8 && y < dots * 3 / 16 ? barred : row);
            }
        }
        asPicture(picture, dots, 8, "DeviceRGB");
        Path file = Files.write(
                folder.resolve("large.pdf"),
                page.resource(COSName.XOBJECT, "Im", picture)
                        .draw("q 160 0 0 160 2 100 cm /Im Do Q")
                        .bytes());
        assertThat(OwnMachine.run("64m", folder, TwoAtOnce.class, file.toString()))
                .filteredOn(l -> !l.startsWith("SLF4J"))
                .hasSize(4)
                .allSatisfy(l -> assertThat(l).matches("null IMAGE 8\\.[0-2]\\d? 5[67]\\.\\d+"));
    }

    /** Scans the first page on two threads at once, twice each. */
    static final class TwoAtOnce {
        public static void main(String[] args) {
            Path file = Path.of(args[0]);
            CompletableFuture<?>[] both = IntStream.range(0, 2)
                    .mapToObj(i -> CompletableFuture.runAsync(() -> {
                        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "large.pdf", null))) {
                            for (int n = 0; n < 2; n++) {
                                PageMarks found = pdf.scan(1, PageEdge.LEFT, 15);
                                Mark m = found.marks().isEmpty()
                                        ? null
                                        : found.marks().get(0);
                                System.out.println(found.unchecked() + " "
                                        + (m == null ? "" : m.kind() + " " + m.nearMm() + " " + m.alongStartMm()));
                            }
                        } catch (Exception e) {
                            System.out.println(e);
                        }
                    }))
                    .toArray(CompletableFuture[]::new);
            CompletableFuture.allOf(both).join();
        }
    }
}
