package io.bindprep.check;

import java.util.List;

/** A family of findings: a pure function of what is known. One class each; {@link Rules} lists them. */
@FunctionalInterface
interface Rule {
    /** Findings of the rule, repeats folded; never changes what it is given. */
    List<Finding> find(Situation situation);
}
