package io.bindprep.pdf.edit;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Painted;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Moves by places that are known are those by content carried out anew. */
class PageThingsTest {
    private static final PageEdge EDGE = PageEdge.LEFT;

    @TempDir
    private Path folder;

    private Path file;

    /** Squares near the left edge: two of a form that is drawn twice, one in a form within it, one of the page; and one far in. */
    @BeforeEach
    void page() throws Exception {
        file = folder.resolve("in.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            PDFormXObject inner = form(document, "20 60 9 9 re f");
            PDFormXObject outer = form(document, "20 20 9 9 re f q 1 0 0 1 0 40 cm /In Do Q");
            outer.getResources().put(COSName.getPDFName("In"), inner);
            PDResources resources = new PDResources();
            resources.put(COSName.getPDFName("Out"), outer);
            page.setResources(resources);
            PDStream content = new PDStream(document);
            write(content, "q /Out Do Q 18 400 9 9 re f 300 400 9 9 re f q 1 0 0 1 0 300 cm /Out Do Q");
            page.setContents(content);
            document.save(file.toFile());
        }
    }

    private static PDFormXObject form(PDDocument document, String operators) throws Exception {
        PDFormXObject form = new PDFormXObject(document);
        form.setBBox(new PDRectangle(0, 0, 600, 800));
        form.setResources(new PDResources());
        write(form.getContentStream(), operators);
        return form;
    }

    private static void write(PDStream stream, String operators) throws Exception {
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(operators.getBytes(StandardCharsets.US_ASCII));
        }
    }

    private OpenedPdf open() throws Exception {
        return Intake.open(new PdfSource(file, "in.pdf", null));
    }

    private byte[] moved(boolean known, Set<Integer> numbers) throws Exception {
        try (OpenedPdf first = open();
                OpenedPdf second = open()) {
            PageThings things = Objects.requireNonNull(first.things(1, EDGE));
            EditedPdf edited = second.edit();
            Rectangle2D box = new Rectangle2D.Double(5, 0, 10, 300);
            List<EditedPdf.AloneMove> moves = List.of(new EditedPdf.AloneMove(new Move(EDGE, 4, 1), numbers, box));
            edited.moveAlone(1, moves, known ? things : null);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            edited.save(out, "");
            return out.toByteArray();
        }
    }

    private List<Painted> near() throws Exception {
        try (OpenedPdf pdf = open()) {
            return Objects.requireNonNull(pdf.things(1, EDGE)).painted().stream()
                    .filter(p -> p.box().getMinX() < 20)
                    .toList();
        }
    }

    @Test
    void placesInFormsWithinFormsAreKnown() throws Exception {
        List<Painted> near = near();
        assertThat(near).hasSize(5);
        Set<Integer> all = near.stream().map(Painted::number).collect(Collectors.toSet());
        assertThat(moved(true, all))
                .isEqualTo(moved(false, all))
                .isNotEqualTo(moved(true, Set.of(near.get(2).number())));
        for (Painted one : near) {
            assertThat(moved(true, Set.of(one.number()))).isEqualTo(moved(false, Set.of(one.number())));
        }
    }

    @Test
    void whatIsFarInIsFoundAnew() throws Exception {
        try (OpenedPdf pdf = open()) {
            Set<Integer> far = Objects.requireNonNull(pdf.things(1, EDGE)).painted().stream()
                    .filter(p -> p.box().getMinX() > 20)
                    .map(Painted::number)
                    .collect(Collectors.toSet());
            assertThat(far).hasSize(1);
            assertThat(moved(true, far))
                    .isEqualTo(moved(false, far))
                    .isNotEqualTo(moved(true, Set.of(near().get(2).number())));
        }
    }
}
