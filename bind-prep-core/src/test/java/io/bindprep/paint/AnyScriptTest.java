package io.bindprep.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnyScriptTest {
    private static byte[] pdf(String text) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PaintedPdf pdf = new PaintedPdf()) {
            Ink ink = pdf.page(210, 297);
            double y = 20;
            for (String line : pdf.plain().lines(text, 20, 170)) {
                ink.text(pdf.plain(), 20, 20, y, line);
                y += 8;
            }
            pdf.save(text, out);
        }
        return out.toByteArray();
    }

    private static String settable(String text) throws IOException {
        try (PaintedPdf pdf = new PaintedPdf()) {
            return pdf.plain().settable(text);
        }
    }

    /** The text as a reader searches it, read back by PDFBox, which turns what runs from the right. */
    @ParameterizedTest
    @ValueSource(
            strings = {"Кулинарная книга", "Μαγειρική", "料理の本", "요리책", "สูตรอาหาร", "ספר בישול", "हिन्दी", "Đồng hồ"})
    void namesInAnyScriptAreDrawnAndFound(String name) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf(name))) {
            assertThat(new PDFTextStripper().getText(document).strip()).isEqualTo(name);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo(name);
            for (var font : document.getPage(0).getResources().getFontNames()) {
                PDFont used = document.getPage(0).getResources().getFont(font);
                assertThat(used.isEmbedded()).isTrue();
            }
        }
    }

    /** The same letters by Unicode's presentation forms (code charts, Arabic Presentation Forms-B), written out by hand. */
    @ParameterizedTest
    @CsvSource({
        // beh: initial, medial, final; alone
        "ببب, \uFE91\uFE92\uFE90",
        "ب, \uFE8F",
        // kitab: kaf initial, teh medial, alef final, beh isolated, as alef does not join on
        "كتاب, \uFEDB\uFE98\uFE8E\uFE8F",
        // lam with alef is one letter; behind a joining letter in its final form
        "لا, \uFEFB",
        "بلا, \uFE91\uFEFC",
        // a mark does not part letters, a non-joiner does
        "بَب, \uFE91\u064E\uFE90",
        "ب\u200Cب, \uFE8F\uFE8F",
        // Persian keheh and yeh
        "کی, \uFB90\uFBFD"
    })
    void arabicLettersJoin(String written, String shaped) throws Exception {
        assertThat(settable(written)).isEqualTo(shaped);
    }

    /** Numbers run from the left within words that run from the right, brackets open the other way (UAX 9). */
    @Test
    void whatRunsFromTheRightIsReordered() {
        assertThat(VisualOrder.of("abc")).isEqualTo("abc");
        assertThat(VisualOrder.of("x אבג 12 (דה) y")).isEqualTo("x (הד) 12 גבא y");
        // the point under a letter follows its letter
        assertThat(VisualOrder.of("בִא")).isEqualTo("אבִ");
    }

    @Test
    void whatNoTypefaceHasIsNamedByItsCodePoint() throws Exception {
        assertThat(settable("a\uD83D\uDE00b")).isEqualTo("a[U+1F600]b");
        assertThat(settable("a\uD83Db")).isEqualTo("a[U+D83D]b");
    }

    /** An accent that a file name holds apart is joined; controls and marks of direction change nothing that follows. */
    @Test
    void accentsAreJoinedAndControlsLeftOut() throws Exception {
        assertThat(settable("Cafe\u0301")).isEqualTo("Café");
        assertThat(settable("a\u202Eb\u0007c")).isEqualTo("ab c");
    }

    @Test
    void settingTwiceChangesNothing() throws Exception {
        String once = settable("كتاب \uD83D\uDE00 料理");
        assertThat(settable(once)).isEqualTo(once);
    }

    /** Unifont's Han is as wide as high, its Thai half of that; a tone mark takes no room (its files say so). */
    @Test
    void widthsAreThoseOfTheGlyphs() throws Exception {
        try (PaintedPdf pdf = new PaintedPdf()) {
            double em = 72 / Ink.POINTS_PER_MM;
            assertThat(pdf.plain().widthMm("料", 72)).isCloseTo(em, within(1e-9));
            assertThat(pdf.plain().widthMm("ก", 72)).isCloseTo(em / 2, within(1e-9));
            assertThat(pdf.plain().widthMm("กิ", 72)).isCloseTo(em / 2, within(1e-9));
        }
    }

    /** More letters than one font of 256 holds, as a hostile title may have. */
    @Test
    @Timeout(value = 30, unit = TimeUnit.SECONDS)
    void aTitleOfManyLettersIsSetWhole() throws Exception {
        StringBuilder all = new StringBuilder();
        for (int c = 0x4E00; c < 0x4E00 + 600; c++) {
            all.appendCodePoint(c);
        }
        try (PDDocument document = Loader.loadPDF(pdf(all.toString()))) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s", ""))
                    .isEqualTo(all.toString());
        }
    }

    @Test
    void theSameNameGivesTheSameBytes() throws Exception {
        assertThat(pdf("料理 كتاب")).isEqualTo(pdf("料理 كتاب"));
    }
}
