package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.ReportFormat;
import io.bindprep.files.Inputs;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImageReadersTest {
    private static final int DOTS = 64;

    @TempDir
    private Path base;

    @Test
    void aFormatThatAnotherPluginsLoaderDidNotKnowIsReadAllTheSame() throws Exception {
        Path pdf = blackPicture();
        forgetJbig2();
        assertThatThrownBy(() -> check(pdf))
                .isInstanceOf(MojoFailureException.class)
                .hasMessageContaining("Page 1: picture 2.8 mm from the binding edge")
                .hasMessageNotContaining("could not be read");
    }

    /** As a registry is that another plugin's class loader filled. */
    private static void forgetJbig2() {
        IIORegistry registry = IIORegistry.getDefaultInstance();
        List<ImageReaderSpi> all = new ArrayList<>();
        registry.getServiceProviders(ImageReaderSpi.class, false).forEachRemaining(all::add);
        all.stream()
                .filter(reader -> List.of(reader.getFormatNames()).contains("JBIG2"))
                .forEach(registry::deregisterServiceProvider);
    }

    private void check(Path pdf) throws Exception {
        JobSource source = new JobSource(null, null, null);
        OutputFolder folder = new OutputFolder(base, base.resolve("reports"), Inputs.NONE);
        GoalExecution run = new GoalExecution(
                new CheckWork(folder, List.of(ReportFormat.TEXT), BindPrep::check),
                folder,
                new UpToDate(base, "check", null),
                new Attachments(null, null),
                new RecordedLog());
        PdfInput input = new PdfInput(pdf, "scan.pdf", "scan", null);
        run.run(List.of(new GoalExecution.Task(input, source, source.read(base), null, Inputs.NONE)));
    }

    /** An A4 page with a black square over the holes; two pages make it a leaf. */
    private Path blackPicture() throws Exception {
        Path file = base.resolve("scan.pdf");
        try (PDDocument document = new PDDocument()) {
            COSStream data = document.getDocument().createCOSStream();
            try (OutputStream out = data.createRawOutputStream()) {
                out.write(blackJbig2());
            }
            data.setItem(COSName.TYPE, COSName.XOBJECT);
            data.setItem(COSName.SUBTYPE, COSName.IMAGE);
            data.setInt(COSName.WIDTH, DOTS);
            data.setInt(COSName.HEIGHT, DOTS);
            data.setInt(COSName.BITS_PER_COMPONENT, 1);
            data.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
            data.setItem(COSName.FILTER, COSName.JBIG2_DECODE);
            PDImageXObject image = new PDImageXObject(new org.apache.pdfbox.pdmodel.common.PDStream(data), null);
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            document.addPage(new PDPage(PDRectangle.A4));
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawImage(image, 8, 400, 30, 30);
            }
            document.save(file.toFile());
        }
        return file;
    }

    /** One page information segment, all dots black by default (ISO/IEC 14492:2001, 7.2 and 7.4.8). */
    private static byte[] blackJbig2() {
        return ByteBuffer.allocate(30)
                .putInt(0) // segment number
                .put((byte) 48) // type: page information
                .put((byte) 0) // refers to none
                .put((byte) 1) // page
                .putInt(19) // length of what follows
                .putInt(DOTS)
                .putInt(DOTS)
                .putInt(0) // resolution unknown
                .putInt(0)
                .put((byte) 4) // default dot: black
                .putShort((short) 0) // not striped
                .array();
    }
}
