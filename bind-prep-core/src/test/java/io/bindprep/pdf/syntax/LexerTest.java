package io.bindprep.pdf.syntax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values are those of ISO 32000-1:2008 where a clause is named; else PDFBox's own parser says what is there. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LexerTest {
    private static final String PICTURE = "BI /W 2 /H 2 /CS /G /BPC 8 /F [/A85 /Fl] ID \0\1EI x\2\3 EI\nQ\n";

    private static COSStream stream(byte[] content) {
        COSStream stream = new COSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return stream;
    }

    private static byte[] latin(String s) {
        return s.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String spell(COSBase o) {
        if (o instanceof COSNumber n) {
            return Float.toString(n.floatValue() + 0f);
        }
        if (o instanceof COSString s) {
            return "(" + s.toHexString() + ")";
        }
        if (o instanceof COSArray a) {
            StringBuilder out = new StringBuilder("[");
            a.forEach(item -> out.append(spell(item)).append(' '));
            return out.append(']').toString();
        }
        if (o instanceof COSDictionary d) {
            StringBuilder out = new StringBuilder("<<");
            d.forEach((key, value) -> out.append(key).append(spell(value)).append(' '));
            return out.append(">>").toString();
        }
        return o.toString();
    }

    private record Read(List<String> operators, boolean broken) {}

    private static Read ours(COSBase content) throws IOException {
        List<String> found = new ArrayList<>();
        try (ContentSource source = new ContentSource(content, new Budget(1))) {
            Lexer lexer = new Lexer(source);
            for (String name = lexer.next(); name != null; name = lexer.next()) {
                StringBuilder line = new StringBuilder();
                for (COSBase o : lexer.operands()) {
                    line.append(spell(o)).append(' ');
                }
                found.add(line + name);
            }
            return new Read(found, lexer.broken() || source.broken());
        }
    }

    private static Read ours(String content) throws IOException {
        return ours(stream(latin(content)));
    }

    private static List<String> theirs(byte[] content) throws IOException {
        List<String> found = new ArrayList<>();
        PDFStreamParser parser = new PDFStreamParser(content);
        StringBuilder line = new StringBuilder();
        for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
            if (token instanceof Operator operator) {
                found.add(line + operator.getName());
                line.setLength(0);
            } else {
                line.append(spell((COSBase) token)).append(' ');
            }
        }
        return found;
    }

    /** 7.3.3, 7.3.4.2, 7.3.4.3, 7.3.5: the examples of the standard. */
    @Test
    void readsTheExamplesOfTheStandard() throws IOException {
        assertThat(ours("123 43445 +17 -98 0 34.5 -3.62 +123.6 4. -.002 0.0 d").operators())
                .containsExactly("123.0 43445.0 17.0 -98.0 0.0 34.5 -3.62 123.6 4.0 -0.002 0.0 d");
        assertThat(ours("(\\0053) (\\053) (\\53) (a(b)c) (two\\\nlines) <901FA> <90 1F a3> Tj")
                        .operators())
                .containsExactly("(0533) (2B) (2B) (6128622963) (74776F6C696E6573) (901FA0) (901FA3) Tj");
        assertThat(ours("/A;Name_With-Various***Characters? /Lime#20Green /1.2 gs")
                        .operators())
                .containsExactly("COSName{A;Name_With-Various***Characters?} COSName{Lime Green} COSName{1.2} gs");
    }

    /** MuPDF and Ghostscript read these so when tried; PDFBox takes 4-2 for 42. */
    @Test
    void aMinusSignEndsANumber() throws IOException {
        assertThat(ours("4-2 4--5 -5-3 .5-.7 re").operators()).containsExactly("4.0 4.0 -5.0 0.5 re");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "q 1 0 0 1 72.5 -3 cm BT /F1 12 Tf [(A\\051) -120.5 <4142> 3(x)]TJ T* (a)' 1 2(b)\" ET Q",
                "0 0 m 1 1 l 2 2 3 3 4 4 c h f* B* b* W* n 1 w[3 2]0 d 0 J/GS1 gs/Im1 Do",
                "1 2 3re 5 6 +7 . - .5.5 1.5.5 00012 -0 1234567890123456789 0.0000000000000000000012 m",
                "% a comment\r0 0 m%another\n1 1 l\0\f\t2 2 l f",
                "/OC /MC0 BDC /Span<</MCID 3/ActualText(\\376\\377)/A[1[2]/X true]>>BDC EMC EMC true false null n",
                "d0 1 0 0 0 9 9 d1 T* Tj TJ SCN scn",
                "] 1 ] 2 m (unbalanced ( bracket)\r\n/F1 3 Tf (\\)\n/F2 1 Tf",
                "(line\rbreak\r\nkept) Tj (\\12345\\8\\r\\q) Tj <4142zz43> Tj < 4 1 > Tj",
                PICTURE,
                "q BI /W 4 /H 1 /BPC 8 /CS /G ID EI EI 0 1 0 1 k EI EMC",
                "BX 1 2 unknown another 3 EX endstream sho rt",
            })
    void readsWhatPdfboxReads(String content) throws IOException {
        assertThat(known(ours(content).operators())).isEqualTo(known(theirs(latin(content))));
    }

    /** Unknown words have no names of their own here. */
    private static List<String> known(List<String> operators) {
        return operators.stream()
                .map(s -> s.matches("(?s).*(^| )(unknown|another|endstream|sho|rt|\\?)$")
                        ? s.replaceAll("\\S+$", "?")
                        : s)
                .toList();
    }

    static Stream<Path> fixtures() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("bindprep.root"), "fixtures"))) {
            return files
                    .filter(f -> f.toString().matches(".*/(calendar|cookbook|members|planner|mixed)[^/]*\\.pdf"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void readsTheContentOfRealProducersAsPdfboxDoes(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (PDPage page : document.getPages()) {
                Read read = ours(page.getCOSObject().getDictionaryObject(COSName.CONTENTS));
                assertThat(read.broken()).isFalse();
                assertThat(read.operators()).isEqualTo(theirs(page.getContents().readAllBytes()));
            }
        }
    }

    /** Tokens lie across the ends of the window on the content, wherever they fall. */
    @Test
    void readsTheSameWhateverTheWindowCuts() throws IOException {
        String[] pieces = {
            "-12.75 ",
            "0.5 ",
            "/Name#41 ",
            "(a\\(b\\134) ",
            "<48656C> ",
            "[(x)-3<41>] ",
            "Tj\n",
            "re ",
            "%c\n",
            "BT ",
            PICTURE
        };
        for (int seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            StringBuilder content = new StringBuilder(" ".repeat(16_300 + seed * 7));
            while (content.length() < 50_000) {
                content.append(pieces[random.nextInt(pieces.length)]);
            }
            assertThat(ours(content.toString()).operators())
                    .as("seed " + seed)
                    .isEqualTo(theirs(latin(content.toString())));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 0 m (never closed",
                "q [1 2 (a) ",
                "q [(a) /x",
                "/P <</A 1 BDC q",
                "BI /W 1 ID abc Q",
                "<41 Tj",
                "q ID x",
                "[1 2 > q"
            })
    void saysWhatWasNeverClosed(String content) throws IOException {
        assertThat(ours(content).broken()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "% only a comment", "q Q 1 2", "q Q /name (string) [1 2]", "BI ID x EI"})
    void strayOperandsAreNoHarm(String content) throws IOException {
        assertThat(ours(content).broken()).isFalse();
    }

    @Test
    void saysWhereAStreamBreaksOff() throws IOException {
        byte[] content = latin("0 0 m 10 10 l S\n".repeat(5_000));
        COSStream whole = stream(content);
        byte[] packed = whole.createRawInputStream().readAllBytes();
        for (int keep : new int[] {0, 1, 2, 3, packed.length / 2, packed.length - 6}) {
            COSStream cut = new COSStream();
            try (OutputStream out = cut.createRawOutputStream()) {
                out.write(packed, 0, keep);
            }
            cut.setItem(COSName.FILTER, COSName.FLATE_DECODE);
            assertThat(ours(cut).broken())
                    .as("%d of %d bytes", keep, packed.length)
                    .isEqualTo(keep > 0);
        }
        // without its checksum, which some writers leave out
        COSStream unchecked = new COSStream();
        try (OutputStream out = unchecked.createRawOutputStream()) {
            out.write(packed, 0, packed.length - 4);
        }
        unchecked.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        assertThat(ours(unchecked))
                .isEqualTo(ours(whole))
                .matches(r -> !r.broken() && r.operators().size() == 15_000);
    }

    @Test
    void streamsOfAnArrayAreApart() throws IOException {
        COSArray two = new COSArray(List.of(stream(latin("1 0 0 1 2")), stream(latin("3 cm q"))));
        assertThat(ours(two).operators()).containsExactly("1.0 0.0 0.0 1.0 2.0 3.0 cm", "q");
        two.add(COSName.A);
        assertThat(ours(two).broken()).isTrue();
    }

    @Test
    void operandsWithoutEndAreNotCollected() {
        assertThatThrownBy(() -> ours("1 ".repeat(100_001))).isInstanceOf(Budget.Spent.class);
    }
}
