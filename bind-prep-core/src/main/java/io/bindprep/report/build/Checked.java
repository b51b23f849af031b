package io.bindprep.report.build;

import io.bindprep.check.Report;

/** A build reads these reports as a checked document; a plan without one must not pass for it. */
final class Checked {
    private Checked() {}

    static void require(Report report) {
        if (!report.documentChecked()) {
            throw new IllegalArgumentException("no PDF was checked: a plan goes as text, JSON, HTML or XJDF, not as a"
                    + " report of checked pages");
        }
    }
}
