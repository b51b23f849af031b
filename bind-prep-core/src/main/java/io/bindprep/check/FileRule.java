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
                    "The PDF's page tree names " + (lost == 1 ? "1 entry that is" : lost + " entries that are")
                            + " not in the file, so pages are missing from what was checked.",
                    "Ask the client for a fresh export, and for the number of pages it should have."));
        }
        if (!s.document().printable()) {
            findings.add(Say.document(
                    "print-forbidden",
                    Severity.WARNING,
                    "The PDF's own permissions forbid printing; the printer's front end may refuse it.",
                    "Ask the client for a copy that may be printed."));
        }
        if (s.document().repaired()) {
            findings.add(Say.document(
                    "file-repaired",
                    Severity.WARNING,
                    "The PDF's cross-reference table was broken and has been rebuilt from what was found; another"
                            + " program may find other pages.",
                    "Ask the client for a fresh export, or compare every page with the client's proof."));
        }
        long junk = s.document().bytesBeforeHeader();
        if (junk > 0) {
            findings.add(Say.document(
                    "header-junk",
                    Severity.NOTE,
                    (junk == 1 ? "1 byte stands" : junk + " bytes stand") + " before the PDF header.",
                    "Left by a print system as a rule; ask for a plain export if the printer's front end refuses the"
                            + " file."));
        }
        return findings;
    }
}
