package io.bindprep.page;

import java.util.List;

/**
 * What is known of a PDF before its content is looked at.
 *
 * @param file the name shown to people: as the caller gave it
 * @param sha256 digest of the file's bytes, lower-case hexadecimal
 * @param pages every page in order
 * @param rightToLeft whether ViewerPreferences asks for right-to-left reading (a hint; the job decides)
 * @param bytesBeforeHeader how many bytes stand before "%PDF-"
 * @param repaired whether the file's cross-reference table was broken and had to be rebuilt
 */
public record DocumentFacts(
        String file,
        String sha256,
        List<PageFacts> pages,
        boolean rightToLeft,
        long bytesBeforeHeader,
        boolean repaired) {
    public DocumentFacts {
        pages = List.copyOf(pages);
    }
}
