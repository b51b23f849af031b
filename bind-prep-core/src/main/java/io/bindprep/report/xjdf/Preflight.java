package io.bindprep.report.xjdf;

import io.bindprep.check.Finding;
import io.bindprep.check.Severity;
import io.bindprep.report.words.FindingText;
import io.bindprep.xml.XmlText;

/** A finding as PreflightCheck. Its pages stand in words, where nobody can take them for indexes from 0. */
final class Preflight {
    private Preflight() {}

    static void check(XmlText xml, Finding f) {
        xml.open(
                "PreflightCheck",
                "Count",
                f.pages().isEmpty() ? "" : Integer.toString(f.pages().size()),
                "Severity",
                severity(f.severity()),
                "TestID",
                f.rule());
        xml.leaf("Comment", FindingText.located(f, Integer.MAX_VALUE) + "\nDo: " + f.remedy());
        xml.close();
    }

    private static String severity(Severity severity) {
        return switch (severity) {
            case ERROR -> "Error";
            case WARNING -> "Warning";
            case NOTE -> "Information";
        };
    }
}
