package io.bindprep.pdf.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.files.PdfSource;
import io.bindprep.page.Bookmark;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutlineReaderTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    Path folder;

    private final PDDocument document = new PDDocument();
    private final COSDictionary outlines = new COSDictionary();
    private COSDictionary last;

    OutlineReaderTest() {
        for (int i = 0; i < 5; i++) {
            document.addPage(new PDPage());
        }
        document.getDocumentCatalog().getCOSObject().setItem(COSName.OUTLINES, outlines);
    }

    private COSArray to(int page) {
        COSArray destination = new COSArray();
        destination.add(document.getPage(page - 1));
        destination.add(COSName.getPDFName("Fit"));
        return destination;
    }

    private COSDictionary item(String title, COSBase destination) {
        COSDictionary item = new COSDictionary();
        item.setString(COSName.TITLE, title);
        item.setItem(COSName.DEST, destination);
        if (last == null) {
            outlines.setItem(COSName.FIRST, item);
        } else {
            last.setItem(COSName.NEXT, item);
        }
        last = item;
        return item;
    }

    private List<Bookmark> read() throws Exception {
        Path file = folder.resolve("outline.pdf");
        try (document) {
            document.save(file.toFile());
        }
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "outline.pdf", null))) {
            return pdf.facts().outline();
        }
    }

    @Test
    void asAnotherReaderHasThem() throws Exception {
        // mutool 1.21.1, show outline: 23 bookmarks, pages 2 to 24
        try (OpenedPdf pdf =
                Intake.open(new PdfSource(FIXTURES.resolve("members-handbook-a4.pdf"), "handbook", null))) {
            List<Bookmark> outline = pdf.facts().outline();
            assertThat(outline).hasSize(23);
            assertThat(outline.get(0)).isEqualTo(new Bookmark("About this handbook", 2));
            assertThat(outline.get(13)).isEqualTo(new Bookmark("The boat", 15));
            assertThat(outline.get(22)).isEqualTo(new Bookmark("Notes", 24));
        }
        try (OpenedPdf pdf =
                Intake.open(new PdfSource(FIXTURES.resolve("calendar-a4-landscape.pdf"), "calendar", null))) {
            assertThat(pdf.facts().outline()).isEmpty();
        }
    }

    @Test
    void everyWayToNameAPage() throws Exception {
        // ISO 32000-1:2008, 12.3.2.2 explicit, 12.3.2.3 named (dictionary and name tree), 12.6.4.2 go-to action
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        item("explicit", to(2));
        COSDictionary old = new COSDictionary();
        old.setItem(COSName.getPDFName("three"), to(3));
        catalog.setItem(COSName.DESTS, old);
        item("by name", COSName.getPDFName("three"));
        COSDictionary wrapped = new COSDictionary();
        wrapped.setItem(COSName.D, to(4));
        COSDictionary names = new COSDictionary();
        names.setItem(COSName.DESTS, tree(node("a", "c", "b", to(1)), node("d", "z", "four", wrapped)));
        catalog.setItem(COSName.NAMES, names);
        item("by name tree", new COSString("four"));
        COSDictionary action = new COSDictionary();
        action.setItem(COSName.S, COSName.getPDFName("GoTo"));
        action.setItem(COSName.D, to(5));
        COSDictionary acting = item("by action", new COSString("nowhere"));
        acting.removeItem(COSName.DEST);
        acting.setItem(COSName.A, action);
        COSArray numbered = new COSArray();
        numbered.add(COSInteger.get(0));
        item("by number", numbered);
        assertThat(read())
                .containsExactly(
                        new Bookmark("explicit", 2),
                        new Bookmark("by name", 3),
                        new Bookmark("by name tree", 4),
                        new Bookmark("by action", 5),
                        new Bookmark("by number", 1));
    }

    private static COSDictionary node(String least, String most, String name, COSBase destination) {
        COSDictionary node = new COSDictionary();
        COSArray limits = new COSArray();
        limits.add(new COSString(least));
        limits.add(new COSString(most));
        node.setItem(COSName.LIMITS, limits);
        COSArray leaves = new COSArray();
        leaves.add(new COSString(name));
        leaves.add(destination);
        node.setItem(COSName.NAMES, leaves);
        return node;
    }

    private static COSDictionary tree(COSDictionary... kids) {
        COSDictionary tree = new COSDictionary();
        COSArray array = new COSArray();
        for (COSDictionary kid : kids) {
            array.add(kid);
        }
        tree.setItem(COSName.KIDS, array);
        return tree;
    }

    @Test
    void whatLeadsNowhereIsLeftOut() throws Exception {
        item("no such name", new COSString("gone"));
        COSArray far = new COSArray();
        far.add(COSInteger.get(5));
        item("no such page", far);
        item("empty", new COSArray());
        item("good", to(1));
        assertThat(read()).containsExactly(new Bookmark("good", 1));
    }

    @Test
    void aChainThatLeadsBackIntoItselfEnds() throws Exception {
        COSDictionary first = item("one", to(1));
        item("two", to(2)).setItem(COSName.NEXT, first);
        assertThat(read()).extracting(Bookmark::page).containsExactly(1, 2);
    }

    @Test
    void aNameTreeThatLeadsBackIntoItselfEnds() throws Exception {
        COSDictionary tree = new COSDictionary();
        COSArray kids = new COSArray();
        for (int i = 0; i < 20; i++) {
            kids.add(tree);
        }
        tree.setItem(COSName.KIDS, kids);
        COSDictionary names = new COSDictionary();
        names.setItem(COSName.DESTS, tree);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.NAMES, names);
        item("lost", new COSString("x"));
        item("good", to(3));
        assertThat(read()).containsExactly(new Bookmark("good", 3));
    }

    @Test
    void titlesAreShortenedAndBookmarksBounded() throws Exception {
        item("\ud83d\udea4".repeat(300), to(1));
        for (int i = 0; i < 1500; i++) {
            item("more", to(2));
        }
        List<Bookmark> outline = read();
        assertThat(outline).hasSize(1000);
        assertThat(outline.get(0).title()).isEqualTo("\ud83d\udea4".repeat(200));
    }

    @Test
    void anOutlineThatIsNoneIsNoReasonNotToRead() throws Exception {
        outlines.setItem(COSName.FIRST, new COSString("not a dictionary"));
        assertThat(read()).isEmpty();
    }
}
