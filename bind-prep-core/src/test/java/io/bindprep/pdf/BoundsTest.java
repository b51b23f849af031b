package io.bindprep.pdf;

import static io.bindprep.pdf.PageMaker.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import io.bindprep.problem.UnreadableInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Each bound on what a page may ask for, one step beyond it: the page is not checked and the next one is not. */
@Timeout(120)
class BoundsTest {
    @TempDir
    Path folder;

    private PageMarks scan(String operators, UnaryOperator<PageMaker> more) {
        try (OpenedPdf pdf = more.apply(PageMaker.a4()).draw(operators).open(folder)) {
            return pdf.scan(1, PageEdge.LEFT, 15);
        }
    }

    private String unchecked(String operators, UnaryOperator<PageMaker> more) {
        String unchecked = scan(operators, more).unchecked();
        assertThat(unchecked).as("unchecked").isNotNull();
        return unchecked;
    }

    private String unchecked(String operators) {
        return unchecked(operators, m -> m);
    }

    private static UnaryOperator<PageMaker> form(String name, String content) {
        return m -> m.resource(COSName.XOBJECT, name, form(m, content));
    }

    private static COSStream form(PageMaker m, String content) {
        COSStream form = m.stream(content);
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        form.setItem(COSName.BBOX, numbers(0, 0, 300, 300));
        return form;
    }

    @Test
    void dashes() {
        // lines of 900 m and of a million km along the edge, a dash and a gap of 2 mm
        String dashed = "1 w [2 2] 0 d 5 0 m 5 %s l S";
        assertThat(scan(dashed.formatted("900000"), m -> m).unchecked()).isNull();
        assertThat(unchecked(dashed.formatted("1000000000000"))).contains("dashes");
        assertThat(unchecked("1 w [2 2] 0 d 5 0 m 5 1000000 5 1000000000000 5 0 c h S"))
                .contains("dashes");
    }

    @Test
    void operators() {
        assertThat(scan("n ".repeat(2_999_000), m -> m).unchecked()).isNull();
        assertThat(unchecked("n ".repeat(3_000_001))).contains("3000000 drawing operators");
    }

    @Test
    void characters() {
        UnaryOperator<PageMaker> font = m -> {
            COSDictionary f = new COSDictionary();
            f.setItem(COSName.TYPE, COSName.FONT);
            f.setItem(COSName.SUBTYPE, COSName.TYPE1);
            f.setName(COSName.BASE_FONT, "Helvetica");
            f.setInt(COSName.FIRST_CHAR, 97);
            f.setInt(COSName.LAST_CHAR, 97);
            f.setItem(COSName.WIDTHS, numbers(0));
            return m.resource(COSName.FONT, "F", f);
        };
        assertThat(unchecked("BT /F 4 Tf 100 100 Td (" + "a".repeat(3_000_001) + ") Tj ET", font))
                .contains("3000000 characters");
    }

    @Test
    void operandsWithoutAnOperator() {
        assertThat(unchecked("1 ".repeat(100_001) + "n")).contains("100000 operands");
    }

    @Test
    void pointsOfAnOutline() {
        assertThat(unchecked("0 0 m " + "0 0 l ".repeat(2_000_000) + "n")).contains("2000000 points");
    }

    @Test
    void marks() {
        assertThat(unchecked("5 100 m 6 100 l S ".repeat(20_001))).contains("20000 marks");
    }

    @Test
    void formsInForms() {
        UnaryOperator<PageMaker> tenTimesEach = m -> {
            COSStream inner = form(m, "n");
            for (int depth = 0; depth < 12; depth++) {
                COSStream outer = form(m, "/Fm Do ".repeat(10));
                COSDictionary objects = new COSDictionary();
                objects.setItem(COSName.getPDFName("Fm"), inner);
                COSDictionary resources = new COSDictionary();
                resources.setItem(COSName.XOBJECT, objects);
                outer.setItem(COSName.RESOURCES, resources);
                inner = outer;
            }
            return m.resource(COSName.XOBJECT, "Fm", inner);
        };
        assertThat(unchecked("/Fm Do", tenTimesEach)).contains("200000 forms");
    }

    @Test
    void unpackedBytesOfAFormDrawnAgainAndAgain() {
        UnaryOperator<PageMaker> wide = form("Fm", " ".repeat(1 << 20));
        assertThat(scan("/Fm Do ".repeat(250), wide).unchecked()).isNull();
        assertThat(unchecked("/Fm Do ".repeat(257), wide)).contains("256 MiB");
    }

    @Test
    void aGlyphThatShowsItself() {
        UnaryOperator<PageMaker> font = m -> {
            COSDictionary procs = new COSDictionary();
            procs.setItem(COSName.getPDFName("bar"), m.stream("1000 0 d0 BT /T 1 Tf (A) Tj ET"));
            COSDictionary encoding = new COSDictionary();
            encoding.setItem(
                    COSName.DIFFERENCES, new COSArray(List.<COSBase>of(COSInteger.get(65), COSName.getPDFName("bar"))));
            COSDictionary f = new COSDictionary();
            f.setItem(COSName.TYPE, COSName.FONT);
            f.setItem(COSName.SUBTYPE, COSName.TYPE3);
            f.setItem(COSName.FONT_BBOX, numbers(0, 0, 0, 0));
            f.setItem(COSName.FONT_MATRIX, numbers(1, 0, 0, 1, 0, 0));
            f.setItem(COSName.CHAR_PROCS, procs);
            f.setItem(COSName.ENCODING, encoding);
            return m.resource(COSName.FONT, "T", f);
        };
        assertThat(unchecked("BT /T 10 Tf 5 100 Td (A) Tj ET", font)).contains("nested");
    }

    @Test
    void annotations() {
        COSDictionary link = new COSDictionary();
        link.setItem(COSName.SUBTYPE, COSName.getPDFName("Link"));
        UnaryOperator<PageMaker> many =
                m -> m.with(p -> p.setItem(COSName.ANNOTS, new COSArray(Collections.nCopies(20_001, link))));
        assertThat(unchecked("", many)).contains("20000 annotations");
    }

    @Test
    void aPageTreeTooDeepLosesItsPage() {
        PageMaker deep = PageMaker.a4().withCatalog(catalog -> {
            COSDictionary tree = catalog.getCOSDictionary(COSName.PAGES);
            COSDictionary below = new COSDictionary();
            below.setItem(COSName.TYPE, COSName.PAGES);
            below.setItem(
                    COSName.KIDS, new COSArray(tree.getCOSArray(COSName.KIDS).toList()));
            for (int i = 0; i < 250; i++) {
                COSDictionary node = new COSDictionary();
                node.setItem(COSName.TYPE, COSName.PAGES);
                node.setItem(COSName.KIDS, new COSArray(List.of(below)));
                below = node;
            }
            COSArray kids = new COSArray(tree.getCOSArray(COSName.KIDS).toList());
            kids.add(below);
            tree.setItem(COSName.KIDS, kids);
        });
        try (OpenedPdf pdf = deep.draw("n").open(folder)) {
            assertThat(pdf.facts().pages()).hasSize(1);
            assertThat(pdf.facts().lostPages()).isEqualTo(1);
        }
    }

    @Test
    void pages() throws Exception {
        byte[] bytes = PageMaker.a4()
                .withCatalog(catalog -> {
                    COSDictionary tree = catalog.getCOSDictionary(COSName.PAGES);
                    COSBase page = tree.getCOSArray(COSName.KIDS).get(0);
                    tree.setItem(COSName.KIDS, new COSArray(Collections.nCopies(100_001, page)));
                })
                .draw("n")
                .bytes();
        Path file = Files.write(folder.resolve("many.pdf"), bytes);
        assertThatThrownBy(() -> Intake.open(new PdfSource(file, "many.pdf", null)))
                .isInstanceOf(UnreadableInputException.class)
                .hasMessageContaining("100000 pages");
    }
}
