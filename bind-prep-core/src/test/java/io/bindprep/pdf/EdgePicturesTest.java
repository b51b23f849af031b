package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.EdgePicture.Nature;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.Stage;
import io.bindprep.page.PageEdge;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures that run through the binding edge, made here: where the letter begins is true by construction. */
class EdgePicturesTest {
    private static final double PAGE_MM = 100;
    private static final double LETTER_MM = 4;
    private static final double DOTS_PER_MM = 150 / 25.4;

    @TempDir
    Path folder;

    private static BufferedImage ground(int rgb) {
        int size = (int) Math.round(PAGE_MM * DOTS_PER_MM);
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        draw(image, rgb, new Rectangle2D.Double(0, 0, PAGE_MM + 1, PAGE_MM + 1));
        return image;
    }

    private static void draw(BufferedImage image, int rgb, Rectangle2D... mm) {
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(DOTS_PER_MM, DOTS_PER_MM);
        g.setColor(new Color(rgb));
        for (Rectangle2D r : mm) {
            g.fill(r);
        }
        g.dispose();
    }

    /** An H of 3 mm with strokes of half a millimetre. */
    private static BufferedImage letter(BufferedImage image, int rgb, double fromEdge) {
        draw(
                image,
                rgb,
                new Rectangle2D.Double(fromEdge, 50, 0.5, 3),
                new Rectangle2D.Double(fromEdge + 0.5, 51.2, 1.5, 0.5),
                new Rectangle2D.Double(fromEdge + 2, 50, 0.5, 3));
        return image;
    }

    private static byte[] jpeg(BufferedImage image, int quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(quality / 100f);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writer.setOutput(ImageIO.createImageOutputStream(out));
        writer.write(null, new IIOImage(image, null, null), param);
        writer.dispose();
        return out.toByteArray();
    }

    private static COSStream stream(PageMaker m, BufferedImage image, int quality) throws IOException {
        COSStream stream = m.stream("");
        byte[] jpeg = jpeg(image, quality);
        stream.setItem(COSName.SUBTYPE, COSName.IMAGE);
        stream.setItem(COSName.WIDTH, COSInteger.get(image.getWidth()));
        stream.setItem(COSName.HEIGHT, COSInteger.get(image.getHeight()));
        stream.setItem(COSName.BITS_PER_COMPONENT, COSInteger.get(8));
        stream.setItem(COSName.COLORSPACE, COSName.DEVICERGB);
        try (OutputStream out = stream.createRawOutputStream()) {
            out.write(jpeg);
        }
        stream.setItem(COSName.FILTER, COSName.DCT_DECODE);
        return stream;
    }

    private PageMarks scan(BufferedImage image, int quality, String more) throws IOException {
        PageMaker maker = PageMaker.page(PAGE_MM, PAGE_MM);
        maker.resource(COSName.XOBJECT, "Im", stream(maker, image, quality));
        try (OpenedPdf pdf = maker.draw("q 100 0 0 100 0 0 cm /Im Do Q " + more).open(folder)) {
            PageMarks marks = pdf.scan(1, PageEdge.LEFT, 15);
            assertThat(marks.unchecked()).isNull();
            return marks;
        }
    }

    private static List<Mark> inked(PageMarks marks) {
        return marks.marks().stream()
                .filter(m -> m.kind() != MarkKind.BACKGROUND)
                .toList();
    }

    private static double nearest(PageMarks marks) {
        return inked(marks).stream().mapToDouble(Mark::nearMm).min().orElse(99);
    }

    private static Nature nature(PageMarks marks) {
        return marks.basics().edgePictures().stream()
                .map(EdgePicture::nature)
                .findFirst()
                .orElseThrow();
    }

    /** Words by which vector art would be a mark too: pale on white, on a mid tone, on a dark one. */
    @ParameterizedTest
    @CsvSource({
        "ffffff, ffd700, 90", "ffffff, ffd700, 50", "ffffff, ffc0cb, 75", "ffffff, ffff00, 60", "ffffff, ffe4e8, 90",
        "ffffff, f0f0f0, 90", "ffffff, d3d3d3, 50", "ffffff, c8f0ff, 80", "fcf6e6, ebe1c8, 90", "808080, ffd700, 75",
        "808080, 9c9c9c, 85", "808080, ffffff, 75", "1e1e28, 606070, 85", "1e1e28, dc1414, 75", "3c6ebe, ffffff, 75",
        "3c6ebe, 2c5aa0, 90", "e1e1e1, ffffff, 85", "e1e1e1, ffd700, 60", "78b478, d2f0d2, 75"
    })
    void aCleanWordCountsOnItsGround(String ground, String ink, int quality) throws IOException {
        BufferedImage image = ground(Integer.parseInt(ground, 16));
        assertThat(inked(scan(image, quality, ""))).as("without the letter").isEmpty();
        PageMarks marks = scan(letter(image, Integer.parseInt(ink, 16), LETTER_MM), quality, "");
        assertThat(nature(marks)).isEqualTo(Nature.PAGE);
        assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
    }

    private static BufferedImage noisy(BufferedImage image, double sigma) {
        Random random = new Random(3);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int v = image.getRGB(x, y);
                int n = (int) Math.round(random.nextGaussian() * sigma);
                int mixed = 0;
                for (int shift = 0; shift <= 16; shift += 8) {
                    mixed |= Math.max(0, Math.min(255, (v >> shift & 0xff) + n)) << shift;
                }
                image.setRGB(x, y, mixed);
            }
        }
        return image;
    }

    @Test
    void aScansPrintStandsOffItsNoise() throws IOException {
        for (double sigma : new double[] {2, 5, 8}) {
            PageMarks bare = scan(noisy(ground(0xece6d8), sigma), 75, "");
            assertThat(inked(bare)).as("paper alone, %s", sigma).isEmpty();
            PageMarks marks = scan(noisy(letter(ground(0xece6d8), 0x282828, LETTER_MM), sigma), 75, "");
            assertThat(nature(marks)).isEqualTo(Nature.PAGE);
            assertThat(nearest(marks)).as("%s", sigma).isCloseTo(LETTER_MM, within(0.4));
        }
    }

    /** Ten lines of a page's text, of which three letters each reach into the strip. */
    private static BufferedImage text(BufferedImage image, int rgb) {
        for (int line = 0; line < 10; line++) {
            for (int letter = 0; letter < 3; letter++) {
                double x = LETTER_MM + 3.5 * letter;
                double y = 10 + 8 * line;
                draw(
                        image,
                        rgb,
                        new Rectangle2D.Double(x, y, 0.5, 3),
                        new Rectangle2D.Double(x + 0.5, y + 1.2, 1.5, 0.5),
                        new Rectangle2D.Double(x + 2, y, 0.5, 3));
            }
        }
        return image;
    }

    /** Paper that lies in the shadow of a book's fold, lighter from the edge on. */
    private static BufferedImage shaded() {
        BufferedImage image = ground(0xffffff);
        for (int x = 0; x < image.getWidth(); x++) {
            int v = (int) Math.min(240, 120 + 8 * x / DOTS_PER_MM);
            for (int y = 0; y < image.getHeight(); y++) {
                image.setRGB(x, y, v << 16 | v << 8 | v - 10);
            }
        }
        return image;
    }

    @Test
    void aPagesTextCountsInTheShadowOfTheFoldAndPaleUponNoise() throws IOException {
        for (double sigma : new double[] {2, 5}) {
            assertThat(inked(scan(noisy(shaded(), sigma), 75, ""))).isEmpty();
            PageMarks marks = scan(noisy(text(shaded(), 0x302820), sigma), 75, "");
            assertThat(nature(marks)).as("shadow, %s", sigma).isEqualTo(Nature.PAGE);
            assertThat(nearest(marks)).as("shadow, %s", sigma).isCloseTo(LETTER_MM, within(0.4));
        }
        PageMarks pale = scan(noisy(text(ground(0xb0a890), 0x807060), 8), 75, "");
        assertThat(nature(pale)).isEqualTo(Nature.PAGE);
        assertThat(nearest(pale)).isCloseTo(LETTER_MM, within(0.4));
    }

    @Test
    void woodIsNoPage() throws IOException {
        for (int seed = 0; seed < 5; seed++) {
            BufferedImage image = ground(0x8a6a48);
            Random random = new Random(seed);
            for (int i = 0; i < 900; i++) {
                int tone = 60 + random.nextInt(60);
                draw(
                        image,
                        tone + 40 << 16 | tone + 10 << 8 | tone - 20,
                        new Rectangle2D.Double(
                                random.nextDouble() * PAGE_MM - 20,
                                random.nextDouble() * PAGE_MM,
                                10 + random.nextDouble() * 60,
                                0.2 + random.nextDouble() * 0.9));
            }
            PageMarks marks = scan(noisy(image, 5), 85, "");
            assertThat(nature(marks)).isEqualTo(Nature.PHOTOGRAPH);
            assertThat(inked(marks)).isEmpty();
        }
    }

    /** Tone that goes up and down twice along the edge, as no drawn gradient does; by construction. */
    @Test
    void aWordOnWavesOfToneCounts() throws IOException {
        BufferedImage waves = ground(0xffffff);
        for (int y = 0; y < waves.getHeight(); y++) {
            int v = (int) (150 + 90 * Math.sin(y / DOTS_PER_MM * 2 * Math.PI / 45));
            for (int x = 0; x < waves.getWidth(); x++) {
                waves.setRGB(x, y, v << 16 | v << 8 | v);
            }
        }
        for (int i = 0; i < 4; i++) {
            letter(waves, 0x102030, LETTER_MM + 3.2 * i);
        }
        PageMarks marks = scan(noisy(waves, 3), 85, "");
        assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
    }

    /** A screen's picture on a scanned page: panels through the edge, with lines of text on and beside them. */
    @Test
    void textBesideColouredPanelsCounts() throws IOException {
        BufferedImage page = ground(0xe6dcc0);
        for (int panel = 0; panel < 4; panel++) {
            draw(page, 0x2b2d60 + 0x401008 * panel, new Rectangle2D.Double(0, 6 + 24 * panel, PAGE_MM, 9));
        }
        for (int line = 0; line < 8; line++) {
            double x = LETTER_MM;
            for (int letter = 0; letter < 4; letter++) {
                double y = 17 + 24 * (line / 2) + 5.5 * (line % 2);
                draw(page, 0x201a18, new Rectangle2D.Double(x, y, 0.5, 2.5));
                draw(page, 0x201a18, new Rectangle2D.Double(x, y + 0.8 * (letter % 3), 1 + 0.4 * (letter % 2), 0.5));
                x += 2.2 + 0.4 * (letter % 2);
            }
        }
        PageMarks marks = scan(noisy(page, 4), 80, "");
        assertThat(nature(marks)).isNotEqualTo(Nature.PHOTOGRAPH);
        assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
    }

    @Test
    void starsAreNoLetters() throws IOException {
        BufferedImage night = ground(0x101418);
        Graphics2D g = night.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Random random = new Random(7);
        for (int i = 0; i < 250; i++) {
            int size = 5 + random.nextInt(8);
            g.setColor(new Color(0xa0a0a0 + random.nextInt(80) * 0x010101));
            g.fillOval(random.nextInt(night.getWidth()), random.nextInt(night.getHeight()), size, size);
        }
        g.dispose();
        PageMarks marks = scan(noisy(night, 5), 85, "");
        assertThat(nature(marks)).isEqualTo(Nature.PHOTOGRAPH);
        assertThat(inked(marks)).isEmpty();
    }

    /** Flat colours that meet in slanting lines: where one of them ends within the strip it still runs through the edge. */
    @Test
    void slantingAreasThroughTheEdgeAreBackground() throws IOException {
        BufferedImage slanting = ground(0xbb3f5e);
        Graphics2D g = slanting.createGraphics();
        g.shear(0, 0.7);
        for (int i = 0; i < 3; i++) {
            g.setColor(new Color(new int[] {0x7a2044, 0x78d0fc, 0xeeaeae}[i]));
            g.fillRect(0, (int) ((2 + 30 * i) * DOTS_PER_MM), slanting.getWidth(), (int) (15 * DOTS_PER_MM));
        }
        g.dispose();
        assertThat(inked(scan(slanting, 90, ""))).isEmpty();
        assertThat(nearest(scan(letter(slanting, 0xffffff, LETTER_MM), 90, ""))).isCloseTo(LETTER_MM, within(0.4));
    }

    /** A head's picture of 20 mm across the page: bands, tiles and grain, and one letter on them. */
    @Test
    void aWordInABannerIsNoGrain() throws IOException {
        BufferedImage banner =
                ground(0x93aed0).getSubimage(0, 0, (int) (PAGE_MM * DOTS_PER_MM), (int) (20 * DOTS_PER_MM));
        draw(banner, 0xcdebf5, new Rectangle2D.Double(0, 12, PAGE_MM, 8));
        for (int tile = 0; tile < 4; tile++) {
            draw(
                    banner,
                    0xd0a890,
                    new Rectangle2D.Double(2 + 5 * tile, 13, 4, 3),
                    new Rectangle2D.Double(3 + 5 * tile, 2, 3, 1));
            draw(banner, 0x609870, new Rectangle2D.Double(2 + 5 * tile, 16, 4, 3));
        }
        noisy(banner, 10);
        draw(
                banner,
                0xffffff,
                new Rectangle2D.Double(LETTER_MM, 6, 0.9, 4),
                new Rectangle2D.Double(LETTER_MM, 6, 3, 0.9));
        PageMaker maker = PageMaker.page(PAGE_MM, PAGE_MM);
        maker.resource(COSName.XOBJECT, "Im", stream(maker, banner, 85));
        try (OpenedPdf pdf = maker.draw("q 100 0 0 20 0 80 cm /Im Do Q").open(folder)) {
            PageMarks marks = pdf.scan(1, PageEdge.LEFT, 15);
            assertThat(nature(marks)).isEqualTo(Nature.IN_DOUBT);
            assertThat(inked(marks)).isNotEmpty();
        }
    }

    /** A grained surface through the edge beside white: wood, card or snow, of tones between two greys. */
    private static void surface(BufferedImage image, int darkest, int lightest, double fromMm, double toMm, int seed) {
        Random random = new Random(seed);
        for (int y = (int) (fromMm * DOTS_PER_MM); y < toMm * DOTS_PER_MM && y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int v = darkest + random.nextInt(lightest - darkest + 1);
                image.setRGB(x, y, v << 16 | v << 8 | v);
            }
        }
    }

    /** Snow with dark trees beside a white sky: nearly all of it is about white or black, as on a page. */
    @Test
    void snowIsNoPaper() throws IOException {
        BufferedImage snow = ground(0xffffff);
        surface(snow, 216, 255, 40, PAGE_MM + 1, 3);
        surface(snow, 10, 60, 40, 46, 4);
        Random random = new Random(5);
        for (int i = 0; i < 20; i++) {
            draw(snow, 0x202428, new Rectangle2D.Double(15 * random.nextDouble(), 48 + 50 * random.nextDouble(), 2, 1));
        }
        PageMarks marks = scan(snow, 90, "");
        assertThat(nature(marks)).isNotEqualTo(Nature.PAGE);
        assertThat(inked(marks)).isEmpty();
    }

    /** A black rule on white that begins half a millimetre from the edge: no dark area runs through the edge. */
    @Test
    void aRuleBesideTheEdgeIsAMark() throws IOException {
        BufferedImage rule = ground(0xffffff);
        draw(rule, 0, new Rectangle2D.Double(0.3, 10, 0.8, 80));
        PageMarks marks = scan(rule, 95, "");
        assertThat(nature(marks)).isEqualTo(Nature.PAGE);
        assertThat(nearest(marks)).isCloseTo(0.3, within(0.2));
    }

    /** The letter on the white of such a picture counts. */
    @Test
    void aSurfaceBesideWhiteIsBackgroundAndALetterOnTheWhiteIsAMark() throws IOException {
        BufferedImage card = ground(0xffffff);
        surface(card, 60, 66, 0, 20, 6);
        surface(card, 80, 110, 10, 12, 7);
        draw(card, 0xffffff, new Rectangle2D.Double(3, 5, 9, 0.6));
        assertThat(inked(scan(card, 95, ""))).isEmpty();
        PageMarks marks = scan(letter(card, 0x101010, LETTER_MM), 95, "");
        assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
    }

    /** A press prints no tone below L* 16 apart (ISO 12647-2, from memory); grey 36 is L* 14, grey 90 is L* 38. */
    @Test
    void deepBlackHasNoMarksButALighterLetterIsOne() throws IOException {
        BufferedImage black = ground(0);
        for (int i = 0; i < 20; i++) {
            draw(black, 0x242424, new Rectangle2D.Double(4 + i % 5, 5 + 4.5 * i, 1, 1));
        }
        assertThat(inked(scan(black, 95, ""))).isEmpty();
        assertThat(nearest(scan(letter(black, 0x5a5a5a, LETTER_MM), 95, ""))).isCloseTo(LETTER_MM, within(0.4));
    }

    /** Clouds: sums of soft spots of all sizes and colours, with grain. */
    /** Lights in a night that is black to the last dot: no paper is black, and none of it is lettering; true by construction. */
    @Test
    void lightsInTheNightLeaveOneMarkInDoubt() throws IOException {
        BufferedImage night = ground(0);
        Random random = new Random(8);
        for (int i = 0; i < 30; i++) {
            double size = 0.4 + random.nextDouble();
            draw(
                    night,
                    0xfff0c0,
                    new Rectangle2D.Double(14 * random.nextDouble(), 95 * random.nextDouble(), size, size));
        }
        PageMarks marks = scan(night, 90, "");
        assertThat(nature(marks)).isEqualTo(Nature.IN_DOUBT);
        assertThat(inked(marks)).isNotEmpty().allMatch(mark -> mark.stage() == Stage.ESTIMATE);
    }

    private static BufferedImage photograph(int seed) {
        return photograph(seed, 0, 256);
    }

    /** The same with a range of tones from the darkest on. */
    private static BufferedImage photograph(int seed, int darkest, int range) {
        BufferedImage image = ground(0x6080a0);
        Random random = new Random(seed);
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 3_000; i++) {
            double size = 20 + 250 * Math.pow(random.nextDouble(), 3);
            g.setColor(new Color(
                    darkest + random.nextInt(range),
                    darkest + random.nextInt(range),
                    darkest + random.nextInt(range * 200 / 256),
                    140));
            g.fillOval(random.nextInt(image.getWidth()) - 60, random.nextInt(image.getHeight()) - 40, (int) size, (int)
                    (size / 2));
        }
        g.dispose();
        return noisy(image, 3);
    }

    @Test
    void aPhotographIsBackgroundAndWordsDrawnUponItAreMarks() throws IOException {
        for (int seed = 0; seed < 5; seed++) {
            PageMarks marks = scan(photograph(seed), 85, "");
            assertThat(nature(marks)).isEqualTo(Nature.PHOTOGRAPH);
            assertThat(marks.marks()).extracting(Mark::kind).containsExactly(MarkKind.BACKGROUND);
            PageMarks drawn = scan(photograph(seed), 85, "0 g 4 50 3 1 re f");
            assertThat(inked(drawn)).hasSize(1);
            assertThat(nearest(drawn)).isCloseTo(4, within(0.01));
        }
    }

    /** Lines of print in the picture itself, far darker than its grain; where they begin is true by construction. */
    @Test
    void printInAPhotographLeavesItInDoubt() throws IOException {
        for (int seed : new int[] {1, 9, 14}) {
            BufferedImage image = photograph(seed, 20, 130);
            assertThat(inked(scan(image, 85, ""))).isEmpty();
            for (int line = 0; line < 8; line++) {
                double x = LETTER_MM;
                for (int letter = 0; letter < 4; letter++) {
                    double y = 17 + 6 * line;
                    draw(image, 0, new Rectangle2D.Double(x, y, 0.6, 3));
                    draw(image, 0, new Rectangle2D.Double(x, y + 0.9 * (letter % 3), 1 + 0.4 * (letter % 2), 0.6));
                    x += 2.2 + 0.4 * (letter % 2);
                }
            }
            PageMarks marks = scan(image, 85, "");
            assertThat(nature(marks)).isEqualTo(Nature.IN_DOUBT);
            assertThat(inked(marks)).hasSize(1);
            assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
        }
    }

    @Test
    void anEvenGroundLeavesOneMarkInDoubt() throws IOException {
        BufferedImage image = ground(0);
        for (int y = 0; y < image.getHeight(); y++) {
            int v = 220 - 40 * y / image.getHeight();
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, v << 16 | v << 8 | 230);
            }
        }
        assertThat(inked(scan(image, 90, ""))).isEmpty();
        letter(image, 0x101010, LETTER_MM);
        PageMarks marks = scan(letter(image, 0x101010, 8), 90, "");
        assertThat(nature(marks)).isEqualTo(Nature.IN_DOUBT);
        assertThat(inked(marks)).hasSize(1);
        assertThat(inked(marks).get(0).stage()).isEqualTo(Stage.ESTIMATE);
        assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
    }

    @Test
    void aPagesPanelsAreBackgroundAndTheirWordsAreMarks() throws IOException {
        Rectangle2D panel = new Rectangle2D.Double(0, 30.3, 8, 43.1);
        BufferedImage image = ground(0xffffff);
        draw(image, 0x285aa0, panel);
        assertThat(inked(scan(image, 80, ""))).isEmpty();
        assertThat(nearest(scan(letter(image, 0xffffff, LETTER_MM), 80, "")))
                .as("white in the panel")
                .isCloseTo(LETTER_MM, within(0.4));
        BufferedImage beside = ground(0xffffff);
        draw(beside, 0xc83c28, new Rectangle2D.Double(0, 0, 7, PAGE_MM + 1));
        assertThat(nearest(scan(letter(beside, 0xc83c28, 11), 85, "")))
                .as("beside a bar, in its colour")
                .isCloseTo(11, within(0.4));
    }

    /** Lighter in the middle, as drawn backgrounds of slides are: no stretch along the edge has one ground. */
    private static BufferedImage glow() {
        BufferedImage image = ground(0);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                double away = Math.hypot(x - image.getWidth() / 2.0, y - image.getHeight() / 2.0) / image.getWidth();
                int v = (int) Math.round(250 - 210 * away);
                image.setRGB(x, y, v << 16 | v - 8 << 8 | v - 30);
            }
        }
        return image;
    }

    @Test
    void aWordOnAGlowLeavesOneMarkInDoubt() throws IOException {
        assertThat(inked(scan(glow(), 85, ""))).isEmpty();
        for (int rgb : new int[] {0x101010, 0xf8f4e0, 0xd02030}) {
            PageMarks marks = scan(letter(letter(glow(), rgb, LETTER_MM), rgb, 9), 85, "");
            assertThat(marks.basics().edgePictures()).singleElement().satisfies(picture -> {
                assertThat(picture.nature()).isEqualTo(Nature.IN_DOUBT);
                assertThat(picture.by()).isEqualTo(EdgePicture.By.EVEN_GROUND);
            });
            assertThat(inked(marks)).hasSize(1);
            assertThat(nearest(marks)).isCloseTo(LETTER_MM, within(0.4));
        }
    }

    /** Wood: one tone with grain, and knots that are hardly darker. */
    @Test
    void grainWithPaleMarksLeavesOneMarkInDoubt() throws IOException {
        BufferedImage image = ground(0xc8b090);
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            draw(image, 0x907050, new Rectangle2D.Double(15 * random.nextDouble(), 99 * random.nextDouble(), 1, 0.5));
        }
        PageMarks marks = scan(noisy(image, 5), 85, "");
        assertThat(marks.basics().edgePictures()).singleElement().satisfies(picture -> {
            assertThat(picture.nature()).isEqualTo(Nature.IN_DOUBT);
            assertThat(picture.by()).isEqualTo(EdgePicture.By.PALE_MARKS);
        });
        assertThat(inked(marks)).hasSize(1);
        assertThat(inked(marks).get(0).stage()).isEqualTo(Stage.ESTIMATE);
    }
}
