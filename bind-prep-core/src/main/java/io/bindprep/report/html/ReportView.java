package io.bindprep.report.html;

import io.bindprep.check.Outcome;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.marks.Verdict;
import io.bindprep.picture.PagePicture;
import io.bindprep.report.words.JobNumbers;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.Sentences;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.report.words.WhatIfTable;
import io.bindprep.wording.Capital;
import io.bindprep.wording.Counted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A whole report as it is shown.
 *
 * @param tone "good", "care", "bad", or "plan" where no PDF was checked
 * @param tallies pages by verdict, worst first
 * @param whatIf rows of a table, its heading first; empty where the punch has one setting only
 * @param because how stack and plan came about, a sentence each
 * @param tens every page, ten at a time
 * @param dense whether there are so many pages that the strip's cells must be small
 * @param rest pages that are not clear and have no picture
 * @param beyond how many more are not listed at all
 * @param recheck comparison with an earlier check
 */
public record ReportView(
        String title,
        String file,
        String sha256,
        String pageCount,
        String tone,
        String sentence,
        List<Tally> tallies,
        List<FigureView> figures,
        List<JobNumbers.Entry> numbers,
        List<List<String>> whatIf,
        List<String> because,
        List<FindingView> findings,
        List<List<Cell>> tens,
        boolean dense,
        List<PageView> pages,
        List<RestView> rest,
        int beyond,
        RecheckView recheck,
        String caution) {
    private static final int MOST_ROWS = 1_000;
    private static final int DENSE_FROM = 200;

    /** Number of pages with a verdict, and which. */
    public record Tally(String verdict, int count, List<PageLink> pages) {}

    static ReportView of(Report r, List<PagePicture> pictures) {
        Map<Integer, PagePicture> byPage = new LinkedHashMap<>();
        pictures.forEach(p -> byPage.put(p.page(), p));
        List<PageView> pages = new ArrayList<>();
        List<RestView> rest = new ArrayList<>();
        Set<Integer> shown = new TreeSet<>();
        int beyond = 0;
        for (PageReport page : r.pages()) {
            PagePicture picture = byPage.get(page.facts().page());
            if (picture != null) {
                pages.add(PageView.of(r, page, picture));
                shown.add(page.facts().page());
            } else if (page.verdict().verdict() != Verdict.CLEAR) {
                if (rest.size() < MOST_ROWS) {
                    rest.add(RestView.of(page, r.measures()));
                    shown.add(page.facts().page());
                } else {
                    beyond++;
                }
            }
        }
        List<String> because = new ArrayList<>();
        r.stack().because().forEach(reason -> because.add(Capital.sentence(Sentences.of(reason, r.measures()))));
        r.plan().because().forEach(reason -> because.add(Capital.sentence(Sentences.of(reason, r.measures()))));
        return new ReportView(
                Texts.clean(r.document().heading()),
                Texts.clean(r.document().fileName()),
                r.document().sha256(),
                r.documentChecked() ? Counted.of(r.pages().size(), "page") : "",
                tone(r),
                VerdictSentence.of(r),
                tallies(r, shown),
                FigureView.of(r),
                JobNumbers.withoutFolders(r).stream().map(ReportView::clean).toList(),
                WhatIfTable.withPages(r),
                because,
                r.findings().stream().map(f -> FindingView.of(f, shown)).toList(),
                Cell.tens(r.pages(), shown),
                r.pages().size() > DENSE_FROM,
                pages,
                rest,
                beyond,
                RecheckView.of(r),
                SafetyLine.TEXT);
    }

    private static JobNumbers.Entry clean(JobNumbers.Entry entry) {
        return new JobNumbers.Entry(
                entry.label(), entry.lines().stream().map(Texts::clean).toList());
    }

    private static String tone(Report r) {
        if (r.outcome() == Outcome.FINDINGS) {
            return "bad";
        }
        if (!r.documentChecked()) {
            return "plan";
        }
        return r.findings().stream().anyMatch(f -> f.counts(Severity.WARNING)) ? "care" : "good";
    }

    private static List<Tally> tallies(Report r, Set<Integer> shown) {
        List<Tally> tallies = new ArrayList<>();
        for (Verdict verdict : List.of(Verdict.HIT, Verdict.UNCHECKED, Verdict.TIGHT, Verdict.CLEAR)) {
            List<Integer> pages = r.pages().stream()
                    .filter(p -> p.verdict().verdict() == verdict)
                    .map(p -> p.facts().page())
                    .toList();
            tallies.add(new Tally(Texts.lower(verdict), pages.size(), PageLink.of(pages, shown)));
        }
        return tallies;
    }
}
