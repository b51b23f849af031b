package io.bindprep.check;

import java.util.ArrayList;
import java.util.List;

/** {@code file-repaired}: the table of objects was broken and rebuilt; {@code header-junk}: bytes before the header. */
final class FileRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
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
