package io.bindprep.page;

import io.bindprep.wording.FileNames;
import java.util.List;

/**
 * Facts of a PDF before its content is looked at.
 *
 * @param file the name shown to people: as the caller gave it
 * @param title what the document calls itself, on one line, or empty where it says nothing of use
 * @param sha256 digest of the file's bytes, lower-case hexadecimal; empty where it is not known yet, or there is no file
 * @param pages every page in order
 * @param rightToLeft whether ViewerPreferences asks for right-to-left reading (a hint; the job decides)
 * @param bytesBeforeHeader how many bytes stand before "%PDF-"
 * @param repaired whether the file's cross-reference table was broken and had to be rebuilt
 * @param lostPages entries of the page tree that are missing or lead back into it
 * @param outline top-level bookmarks that lead to a page, in their order
 * @param printable whether the file's permissions let it be printed (ISO 32000-1:2008, Table 22, bit 3)
 */
public record DocumentFacts(
        String file,
        String title,
        String sha256,
        List<PageFacts> pages,
        boolean rightToLeft,
        long bytesBeforeHeader,
        boolean repaired,
        int lostPages,
        List<Bookmark> outline,
        boolean printable) {
    public DocumentFacts {
        pages = List.copyOf(pages);
        outline = List.copyOf(outline);
    }

    /**
     * No document at all: a plan is made without one.
     *
     * @param name how reports call the job
     */
    public static DocumentFacts none(String name) {
        return new DocumentFacts(name, "", "", List.of(), false, 0, false, 0, List.of(), true);
    }

    /** The document's title, else the name of its file. */
    public String heading() {
        return title.isEmpty() ? fileName() : title;
    }

    /** The name of the file without its folders, whichever system wrote them. */
    public String fileName() {
        return FileNames.last(file);
    }

    /** Returns true if there is a document; a plan without one says nothing of pages. */
    public boolean present() {
        return !pages.isEmpty();
    }
}
