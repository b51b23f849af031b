package io.bindprep.check;

import java.util.List;

/**
 * Common part of all findings of one id.
 *
 * @param id stable id, "text-hit"
 * @param severities every severity it can have, worst first; never empty
 * @param meaning what is so where it is found, one sentence
 * @param ofContent whether it is looked for in what pages paint, so that an unchecked page says nothing of it
 * @param remedy what is done about it as a rule, one sentence; a finding's own remedy has the numbers
 */
public record FindingKind(String id, List<Severity> severities, boolean ofContent, String meaning, String remedy) {
    public FindingKind {
        severities = List.copyOf(severities);
    }

    /** The severity it has as a rule, its worst. */
    public Severity worst() {
        return severities.get(0);
    }
}
