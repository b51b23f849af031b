package io.bindprep.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PrintableTest {
    // Unicode 15, chapter 23.1: control codes are U+0000..U+001F and U+007F..U+009F; ECMA-48: U+009B begins a sequence
    @Test
    void noControlOrFormatMarkPasses() {
        for (int c = 0; c <= 0x10FFFF; c++) {
            int type = Character.getType(c);
            if (type == Character.CONTROL || type == Character.FORMAT) {
                String text = "a" + Character.toString(c) + "b";
                assertEquals("a?b", Printable.of(text), Integer.toHexString(c));
                assertEquals("a b", Printable.line(text), Integer.toHexString(c));
            }
        }
        assertEquals("red ?[31mtext", Printable.of("red \u001B[31mtext"));
        assertEquals("\"red 31mtext\"", Printable.quoted("red \u009B31mtext\n", 40));
        assertEquals("a_b", Printable.with("_", "a\u202Eb"));
    }

    @Test
    void wordsOfAnyScriptPass() {
        String text = "Größe 漢字 עברית";
        assertEquals(text, Printable.of(text));
        assertFalse(Printable.marked(text));
        assertEquals("\"漢字漢字漢...\"", Printable.quoted("漢字漢字漢字漢字漢字", 8));
    }

    // a second copy of the marks would drift: two of eight once let U+009B through
    @Test
    void nobodyElseSpellsTheMarks() throws IOException {
        Path root = Path.of(System.getProperty("bindprep.root", ".."));
        for (String module : List.of("bind-prep-core", "bind-prep-cli", "bind-prep-maven-plugin")) {
            try (Stream<Path> files = Files.walk(root.resolve(module).resolve("src/main/java"))) {
                List<String> found = files.filter(f -> f.toString().endsWith(".java"))
                        // XML replaces what XML cannot hold too
                        .filter(f -> !f.endsWith("Printable.java") && !f.endsWith("XmlText.java"))
                        .filter(PrintableTest::spellsMarks)
                        .map(Path::toString)
                        .toList();
                assertEquals(List.of(), found);
            }
        }
    }

    private static boolean spellsMarks(Path file) {
        try {
            String text = Files.readString(file);
            return text.lines().anyMatch(l -> l.contains("replaceAll") && l.contains("\\p{C"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
