package io.bindprep.check;

import java.util.ArrayList;
import java.util.List;

/**
 * {@code pages-lost}: the page tree leads nowhere in places; {@code file-repaired}: the table of objects was broken and
 * rebuilt; {@code print-forbidden}: the permissions deny printing; {@code header-junk}: bytes before the header.
 */
final class FileRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        int lost = s.document().lostPages();
        if (lost > 0) {
            findings.add(Say.document(
                    "pages-lost",
                    Severity.ERROR,
                    (lost == 1 ? "1 entry" : lost + " entries") + " of the PDF's page tree "
                            + (lost == 1 ? "is" : "are") + " missing from the file. The pages there were not checked.",
                    "Ask the client for a fresh export, and how many pages it should have."));
        }
        if (!s.document().printable()) {
            findings.add(Say.document(
                    "print-forbidden",
                    Severity.WARNING,
                    "The PDF's permissions forbid printing. The printer may refuse the file.",
                    "Ask the client for a copy that may be printed."));
        }
        if (s.document().repaired()) {
            findings.add(Say.document(
                    "file-repaired",
                    Severity.WARNING,
                    "The PDF's cross-reference table was broken and has been rebuilt. Another program may find"
                            + " other pages.",
                    "Ask the client for a fresh export, or compare every page with the client's proof."));
        }
        long junk = s.document().bytesBeforeHeader();
        if (junk > 0) {
            findings.add(Say.document(
                    "header-junk",
                    Severity.NOTE,
                    (junk == 1 ? "1 byte stands" : junk + " bytes stand") + " before the PDF header.",
                    "Usually harmless: print systems leave them. If the printer refuses the file, ask for a plain"
                            + " export."));
        }
        return findings;
    }
}
