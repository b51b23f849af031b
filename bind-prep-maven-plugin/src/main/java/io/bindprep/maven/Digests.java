package io.bindprep.maven;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 in lower-case hexadecimal. */
final class Digests {
    private static final int CHUNK = 1 << 16;

    private Digests() {}

    /** Of several texts, told apart. */
    static String of(String... texts) {
        MessageDigest digest = digest();
        for (String text : texts) {
            digest.update(text.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Of a file's bytes. */
    static String of(Path file) throws IOException {
        MessageDigest digest = digest();
        byte[] chunk = new byte[CHUNK];
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(chunk); n >= 0; n = in.read(chunk)) {
                digest.update(chunk, 0, n);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
