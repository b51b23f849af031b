package io.bindprep.report.build;

import io.bindprep.wording.FileNames;
import java.nio.charset.StandardCharsets;

/** File names as URI references (RFC 3986). */
final class UriText {
    // unreserved characters and those of a path segment; a colon is encoded, as the first segment may hold none
    private static final String PLAIN = "-._~!$&'()*+,;=@/";

    private UriText() {}

    /** A relative path as a relative reference; an absolute one as a file URI. */
    static String of(String name) {
        if (FileNames.drive(name)) {
            return "file:///" + name.charAt(0) + ":" + encoded(name.substring(2).replace('\\', '/'));
        }
        if (FileNames.absolute(name)) {
            // of a share the computer is the authority (RFC 8089, appendix E.3)
            return name.startsWith("/") ? "file://" + encoded(name) : "file:" + encoded(name.replace('\\', '/'));
        }
        return encoded(FileNames.relative(name));
    }

    /** Returns true for a URI of {@link #of} with a scheme; a relative reference has every colon encoded. */
    static boolean absolute(String uri) {
        return uri.indexOf(':') >= 0;
    }

    private static String encoded(String path) {
        StringBuilder uri = new StringBuilder();
        for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean word = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
            if (word || PLAIN.indexOf(c) >= 0) {
                uri.append(c);
            } else {
                uri.append('%').append(hex(c >> 4)).append(hex(c & 15));
            }
        }
        return uri.toString();
    }

    private static char hex(int digit) {
        return "0123456789ABCDEF".charAt(digit);
    }
}
