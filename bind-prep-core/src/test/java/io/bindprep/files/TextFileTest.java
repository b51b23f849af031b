package io.bindprep.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {
    @Test
    void readsUtf8AndNothingElseAndNotTooMuch(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("f");
        Files.writeString(file, "µm\n");
        assertThat(TextFile.read(file)).isEqualTo("µm\n");
        Files.write(file, new byte[] {'a', (byte) 0xB5});
        assertThatThrownBy(() -> TextFile.read(file)).isInstanceOf(CharacterCodingException.class);
        Files.write(file, new byte[4_000_001]);
        assertThatThrownBy(() -> TextFile.read(file)).hasMessageContaining("larger than 4 MB");
        assertThatThrownBy(() -> TextFile.read(folder.resolve("none"))).isInstanceOf(NoSuchFileException.class);
        assertThatThrownBy(() -> TextFile.read(folder)).isInstanceOf(java.io.IOException.class);
    }
}
