package io.bindprep.pdf.jpx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Rectangle;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pictures that OpenJPEG 2.5.0 packed and what its own decoder makes of them, recorded by {@code
 * fixtures/oracle/record-jpx.sh}. Reversible ones must be alike to the bit; of the others, which are rounded, a value may
 * differ by one.
 */
class JpxPictureTest {
    private static final Runnable NO_CLOCK = () -> {};

    /** Most values of a picture with rounded transforms that may differ. */
    private static final double ROUNDED = 0.005;

    private static final Pattern HEAD = Pattern.compile("P([56])\\s(?:#.*\n)?(\\d+)\\s(\\d+)\\s(\\d+)\\s");

    /** A picture in the simplest format that tools write (PPM, PGM), its values as eight bits. */
    private record Truth(int width, int height, int channels, int[] values) {
        static Truth read(Path file) throws IOException {
            byte[] bytes = Files.readAllBytes(file);
            Matcher head = HEAD.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
            assertThat(head.lookingAt()).isTrue();
            int width = Integer.parseInt(head.group(2));
            int height = Integer.parseInt(head.group(3));
            int channels = head.group(1).equals("6") ? 3 : 1;
            int bytesEach = head.group(4).equals("255") ? 1 : 2;
            int[] values = new int[width * height * channels];
            for (int i = 0; i < values.length; i++) {
                values[i] = bytes[head.end() + i * bytesEach] & 0xff;
            }
            return new Truth(width, height, channels, values);
        }
    }

    static Stream<Path> pictures() throws IOException, URISyntaxException {
        Path folder = Path.of(
                        JpxPictureTest.class.getResource("rgb-reversible.jp2").toURI())
                .getParent();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".jp2")).sorted().toList().stream();
        }
    }

    private static Truth truth(Path picture) throws IOException {
        String stem = picture.toString().replaceAll("\\.jp2$", "");
        Path colour = Path.of(stem + ".ppm");
        return Truth.read(Files.exists(colour) ? colour : Path.of(stem + ".pgm"));
    }

    private static JpxPicture open(Path picture) throws IOException {
        return JpxPicture.read(Files.readAllBytes(picture));
    }

    private static Rectangle whole(JpxSource picture) {
        return new Rectangle(picture.width(), picture.height());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void picturesAreDecodedAsByOpenJpeg(Path file) throws Exception {
        Truth truth = truth(file);
        JpxPicture picture = open(file);
        assertThat(picture.width()).isEqualTo(truth.width);
        assertThat(picture.height()).isEqualTo(truth.height);
        byte[] dots = picture.decode(whole(picture), 0, false, NO_CLOCK).interleaved();
        assertThat(dots).hasSameSizeAs(truth.values);
        boolean rounded =
                file.toString().contains("irreversible") || file.toString().contains("halved");
        int differ = 0;
        for (int i = 0; i < dots.length; i++) {
            int off = Math.abs((dots[i] & 0xff) - truth.values[i]);
            assertThat(off).as("value " + i).isLessThanOrEqualTo(rounded ? 1 : 0);
            differ += off;
        }
        if (!file.toString().contains("halved")) { // OpenJPEG cuts off what it makes of sYCC, we round
            assertThat((double) differ).isLessThanOrEqualTo(ROUNDED * dots.length);
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void aRegionIsWhatTheWholeHoldsThere(Path file) throws Exception {
        JpxPicture picture = open(file);
        byte[][] all = picture.decode(whole(picture), 0, false, NO_CLOCK).colours();
        Random random = new Random(5);
        for (int i = 0; i < 10; i++) {
            int x = random.nextInt(picture.width());
            int y = random.nextInt(picture.height());
            Rectangle region = new Rectangle(
                    x, y, 1 + random.nextInt(picture.width() - x), 1 + random.nextInt(picture.height() - y));
            byte[][] part = picture.decode(region, 0, false, NO_CLOCK).colours();
            for (int c = 0; c < part.length; c++) {
                for (int k = 0; k < part[c].length; k++) {
                    int at = (y + k / region.width) * picture.width() + x + k % region.width;
                    assertThat(part[c][k]).as(region + " " + k).isEqualTo(all[c][at]);
                }
            }
        }
    }

    @Test
    void halvedItIsTheSamePictureSmaller() throws Exception {
        JpxPicture picture = open(pictures()
                .filter(f -> f.endsWith("large-irreversible.jp2"))
                .findFirst()
                .orElseThrow());
        JpxSource half = picture.halved(1);
        assertThat(half.width()).isEqualTo(100);
        assertThat(half.height()).isEqualTo(75);
        byte[] large = picture.decode(whole(picture), 0, false, NO_CLOCK).colours()[1];
        byte[] small = half.decode(whole(half), 0, false, NO_CLOCK).colours()[1];
        double off = 0;
        for (int i = 0; i < small.length; i++) {
            int at = i / 100 * 2 * 200 + i % 100 * 2;
            int mean =
                    ((large[at] & 0xff) + (large[at + 1] & 0xff) + (large[at + 200] & 0xff) + (large[at + 201] & 0xff))
                            / 4;
            off += Math.abs((small[i] & 0xff) - mean);
        }
        assertThat(off / small.length).isLessThan(8);
        assertThat(picture.halved(30).width()).isEqualTo(7); // its coding has five
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void whatBreaksOffIsNoPicture(Path file) throws Exception {
        byte[] bytes = Files.readAllBytes(file);
        byte[] cut = Arrays.copyOf(bytes, bytes.length / 4);
        assertThatThrownBy(() -> {
                    JpxPicture picture = JpxPicture.read(cut);
                    picture.decode(whole(picture), 0, false, NO_CLOCK);
                })
                .isInstanceOf(IOException.class);
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void damageIsToldOrDecodedNeverThrown(Path file) throws Exception {
        byte[] bytes = Files.readAllBytes(file);
        Random random = new Random(file.getFileName().toString().hashCode());
        for (int i = 0; i < 30; i++) {
            byte[] damaged = bytes.clone();
            for (int k = 0; k <= i % 4; k++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            tried(() -> {
                try {
                    JpxPicture picture = JpxPicture.read(damaged);
                    Rectangle near = whole(picture).intersection(new Rectangle(300, 300));
                    return picture.decode(near, 0, false, NO_CLOCK);
                } catch (IOException e) {
                    return e;
                }
            });
        }
    }

    private static void tried(Supplier<Object> work) {
        assertThat(work.get()).isNotNull();
    }

    @Test
    void theClockEndsTheWork() throws Exception {
        JpxPicture picture = open(pictures().findFirst().orElseThrow());
        Runnable spent = () -> {
            throw new IllegalStateException("time is up");
        };
        assertThatThrownBy(() -> picture.decode(whole(picture), 0, false, spent))
                .hasMessage("time is up");
    }
}
