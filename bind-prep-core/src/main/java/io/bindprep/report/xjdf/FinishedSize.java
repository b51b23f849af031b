package io.bindprep.report.xjdf;

import io.bindprep.check.Report;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Trim;
import io.bindprep.page.PrevailingSize;
import io.bindprep.unit.Length;

/** The size of the finished leaf: the job's trim, else that of most pages. */
final class FinishedSize {
    private FinishedSize() {}

    static Length width(Report report) {
        Trim trim = report.job().trim();
        return trim != null
                ? trim.width()
                : PrevailingSize.of(report.document().pages()).width();
    }

    static Length height(Report report) {
        Trim trim = report.job().trim();
        return trim != null
                ? trim.height()
                : PrevailingSize.of(report.document().pages()).height();
    }

    /** Width and height of a leaf that stands out by so much opposite the binding edge, as a divider's tab does. */
    static String flat(Report report, Length extension) {
        return report.job().bindingEdge() == BindingEdge.TOP
                ? Points.pair(width(report), height(report).plus(extension))
                : Points.pair(width(report).plus(extension), height(report));
    }
}
