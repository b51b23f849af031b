package io.bindprep.report.html;

import io.bindprep.check.Recheck;
import io.bindprep.check.Report;
import io.bindprep.report.words.RecheckWords;
import java.util.List;

/**
 * Comparison with an earlier check as it is shown.
 *
 * @param summary empty where none was asked for
 * @param gone findings that are not there any more
 * @param beyond how many more are not listed
 */
public record RecheckView(String summary, List<Gone> gone, int beyond) {
    private static final int MOST = 200;

    /** One finding that is gone. */
    public record Gone(String state, String rule, String pages, String message) {
        static Gone of(Recheck.Gone g) {
            return new Gone(
                    RecheckWords.state(g), Texts.clean(g.rule()), RecheckWords.pages(g), Texts.clean(g.message()));
        }
    }

    static RecheckView of(Report report) {
        Recheck recheck = report.recheck();
        if (recheck == null) {
            return new RecheckView("", List.of(), 0);
        }
        List<Gone> gone = recheck.gone().stream().limit(MOST).map(Gone::of).toList();
        return new RecheckView(
                Texts.clean(RecheckWords.summary(report, recheck)),
                gone,
                recheck.gone().size() - gone.size());
    }
}
