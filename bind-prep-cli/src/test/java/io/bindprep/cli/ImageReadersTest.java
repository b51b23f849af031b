package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.tools.ToolProvider;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reader of pictures in a jar, which is compiled here, in a folder that the command is told. */
class ImageReadersTest {
    private static final String READER = """
            package added;
            import java.awt.Rectangle;
            import java.awt.image.BufferedImage;
            import java.util.*;
            import javax.imageio.*;
            import javax.imageio.metadata.IIOMetadata;
            import javax.imageio.spi.ImageReaderSpi;
            public class Reader extends ImageReader {
                Reader(ImageReaderSpi spi) { super(spi); }
                public int getNumImages(boolean search) { return 1; }
                public int getWidth(int i) { return 400; }
                public int getHeight(int i) { return 400; }
                public Iterator<ImageTypeSpecifier> getImageTypes(int i) { return Collections.emptyIterator(); }
                public IIOMetadata getStreamMetadata() { return null; }
                public IIOMetadata getImageMetadata(int i) { return null; }
                public BufferedImage read(int i, ImageReadParam asked) {
                    %s
                    Rectangle r = asked.getSourceRegion();
                    return new BufferedImage(r.width, r.height, BufferedImage.TYPE_BYTE_GRAY);
                }
                public static class Spi extends ImageReaderSpi {
                    public Spi() {
                        super("added", "1", new String[] {"%s"}, null, null, "added.Reader", new Class<?>[] {Object.class},
                            null, false, null, null, null, null, false, null, null, null, null);
                    }
                    public boolean canDecodeInput(Object o) { return true; }
                    public ImageReader createReaderInstance(Object o) { return new Reader(this); }
                    public String getDescription(Locale l) { return "added"; }
                }
            }
            """;

    @TempDir
    private Path temp;

    private Path folder;
    private String pdf;

    @BeforeEach
    void pageWithAPictureOfAnUnknownKind() throws IOException {
        folder = Files.createDirectory(temp.resolve("my readers"));
        Path file = temp.resolve("book.pdf");
        try (PDDocument document = new PDDocument()) {
            COSStream data = document.getDocument().createCOSStream();
            try (OutputStream out = data.createRawOutputStream()) {
                out.write("a kind of JPEG 2000 that is not decoded".getBytes(StandardCharsets.US_ASCII));
            }
            data.setItem(COSName.SUBTYPE, COSName.IMAGE);
            data.setInt(COSName.WIDTH, 400);
            data.setInt(COSName.HEIGHT, 400);
            data.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
            data.setItem(COSName.FILTER, COSName.JPX_DECODE);
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            document.addPage(new PDPage(PDRectangle.A4));
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawImage(new PDImageXObject(new PDStream(data), null), 8, 400, 30, 30);
            }
            document.save(file.toFile());
        }
        pdf = file.toString();
    }

    @AfterEach
    void forgetReaders() {
        IIORegistry registry = IIORegistry.getDefaultInstance();
        List<ImageReaderSpi> all = new ArrayList<>();
        registry.getServiceProviders(ImageReaderSpi.class, false).forEachRemaining(all::add);
        all.stream()
                .filter(r -> r.getClass().getName().equals("added.Reader$Spi"))
                .forEach(registry::deregisterServiceProvider);
    }

    private void jar(String format, String first) throws IOException {
        Path source = Files.createDirectories(temp.resolve("source/added")).resolve("Reader.java");
        Files.writeString(source, READER.formatted(first, format));
        Path classes = Files.createDirectories(temp.resolve("classes"));
        assertThat(ToolProvider.getSystemJavaCompiler()
                        .run(null, null, null, "-d", classes.toString(), source.toString()))
                .isZero();
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(folder.resolve("reader.jar")))) {
            jar.putNextEntry(new JarEntry("META-INF/services/javax.imageio.spi.ImageReaderSpi"));
            jar.write("added.Reader$Spi\n".getBytes(StandardCharsets.UTF_8));
            for (String name : List.of("added/Reader.class", "added/Reader$Spi.class")) {
                jar.putNextEntry(new JarEntry(name));
                Files.copy(classes.resolve(name), jar);
            }
        }
    }

    private Cli check(String... options) {
        List<String> line = new ArrayList<>(List.of("check", pdf));
        line.addAll(List.of(options));
        return Cli.run(line.toArray(String[]::new));
    }

    @Test
    void withoutOneThePageIsNotCheckedAndTheAnswerSaysHowToAddOne() {
        Cli cli = check();
        assertThat(cli.exit()).isEqualTo(1);
        assertThat(cli.out().replaceAll("\\s+", " "))
                .contains("a JPEG 2000 picture in it cannot be decoded")
                .contains("the command takes a folder with its jar (--image-readers)");
    }

    @Test
    void aReaderInTheNamedFolderDecodes() throws IOException {
        jar("JPEG2000", "");
        Cli cli = check("--image-readers", folder.toString());
        assertThat(cli.exit()).isEqualTo(1);
        assertThat(cli.out()).contains("picture 2.8 mm from the binding edge").doesNotContain("decoded");
    }

    @Test
    void everyCommandThatReadsPagesTakesIt() throws IOException {
        jar("JPEG2000", "");
        String out = temp.resolve("out.pdf").toString();
        for (String command : List.of("spec", "proof", "shift")) {
            Cli cli = Cli.run(command, pdf, "-o", out, "--image-readers", folder.toString());
            assertThat(cli.err()).as(command).doesNotContain("--image-readers");
            forgetReaders();
        }
        assertThat(Cli.run("day", pdf, "--image-readers", folder.toString()).err())
                .doesNotContain("--image-readers");
    }

    @Test
    void aReaderThatThrowsSpoilsOnlyItsPage() throws IOException {
        jar("JPEG2000", "if (i == 0) throw new NoClassDefFoundError(\"gone\");");
        Cli cli = check("--image-readers", folder.toString());
        assertThat(cli.exit()).isEqualTo(1);
        assertThat(cli.out()).contains("1 page could not be checked");
    }

    @Test
    void aReaderThatTakesTooLongSpoilsOnlyItsPage() throws IOException {
        // nine seconds of the processor: a page has eight
        jar(
                "JPEG2000",
                "var clock = java.lang.management.ManagementFactory.getThreadMXBean();"
                        + "while (clock.getCurrentThreadCpuTime() < 9_000_000_000L) { }");
        Cli cli = check("--image-readers", folder.toString());
        assertThat(cli.exit()).isEqualTo(1);
        assertThat(cli.out().replaceAll("\\s+", " "))
                .contains("1 page could not be checked: it takes too long to read");
    }

    @Test
    void aFolderWithoutReadersIsTold() throws IOException {
        assertUsage("no jar is in it");
        jar("webp", "");
        assertUsage("its readers know only [webp]; a PDF asks for JPEG2000 or JBIG2");
        Files.writeString(folder.resolve("reader.jar"), "no jar at all");
        assertUsage("no ImageIO reader is in its jars");
        folder = temp.resolve("nowhere");
        assertUsage("there is no such folder");
    }

    private void assertUsage(String what) {
        Cli cli = check("--image-readers", folder.toString());
        assertThat(cli.exit()).isEqualTo(2);
        assertThat(cli.err()).contains("--image-readers " + folder + ": ").contains(what);
    }
}
