package io.bindprep.pdf;

import io.bindprep.files.PdfSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Builds one-page PDFs in millimetres, with content as raw operators so that a test says exactly what is painted. */
public final class PageMaker {
    private static final double PT = 72 / 25.4;

    private final PDDocument document = new PDDocument();
    private final PDPage page;

    private PageMaker(double w, double h) {
        page = new PDPage(new PDRectangle((float) (w * PT), (float) (h * PT)));
        page.getCOSObject().setItem(COSName.RESOURCES, new COSDictionary());
        document.addPage(page);
    }

    static PageMaker page(double widthMm, double heightMm) {
        return new PageMaker(widthMm, heightMm);
    }

    public static PageMaker a4() {
        return page(210, 297);
    }

    /** An array of numbers, as they are. */
    public static COSArray numbers(double... values) {
        COSArray a = new COSArray();
        for (double v : values) {
            a.add(new COSFloat((float) v));
        }
        return a;
    }

    /** A box by any two opposite corners, millimetres. */
    PageMaker box(COSName name, double xa, double ya, double xb, double yb) {
        page.getCOSObject().setItem(name, numbers(xa * PT, ya * PT, xb * PT, yb * PT));
        return this;
    }

    PageMaker with(Consumer<COSDictionary> change) {
        change.accept(page.getCOSObject());
        return this;
    }

    PageMaker withCatalog(Consumer<COSDictionary> change) {
        change.accept(document.getDocumentCatalog().getCOSObject());
        return this;
    }

    public PageMaker resource(COSName kind, String name, org.apache.pdfbox.cos.COSBase value) {
        COSDictionary resources = (COSDictionary) page.getCOSObject().getDictionaryObject(COSName.RESOURCES);
        COSDictionary of = resources.getCOSDictionary(kind);
        if (of == null) {
            of = new COSDictionary();
            resources.setItem(kind, of);
        }
        of.setItem(COSName.getPDFName(name), value);
        return this;
    }

    /** A font that PDFBox embeds as the document is saved. */
    interface FontMaker {
        PDFont make(PDDocument document) throws IOException;
    }

    PageMaker font(String name, FontMaker maker) throws IOException {
        return resource(COSName.FONT, name, maker.make(document).getCOSObject());
    }

    COSDictionary resources() {
        return (COSDictionary) page.getCOSObject().getDictionaryObject(COSName.RESOURCES);
    }

    public COSStream stream(String content) {
        COSStream s = document.getDocument().createCOSStream();
        try (OutputStream out = s.createOutputStream()) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return s;
    }

    /** Content in millimetres, y up from the media box's origin. */
    public PageMaker draw(String operators) {
        return drawInPoints(PT + " 0 0 " + PT + " 0 0 cm\n" + operators);
    }

    PageMaker drawInPoints(String operators) {
        try {
            page.setContents(new PDStream(
                    document,
                    new java.io.ByteArrayInputStream(operators.getBytes(StandardCharsets.ISO_8859_1)),
                    COSName.FLATE_DECODE));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (document) {
            document.save(out);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toByteArray();
    }

    public OpenedPdf open(Path folder) {
        try {
            Path file = Files.createTempFile(folder, "page", ".pdf");
            Files.write(file, bytes());
            return Intake.open(new PdfSource(file, "page.pdf", null));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
