package io.bindprep.stage;

import io.bindprep.binding.Plan;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.marks.Verdict;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.strip.PagePictures;
import io.bindprep.picture.CloseUpWindows;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.PicturePair;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.ShiftReport;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CopyOnWriteArrayList;

/** Draws the pages that most need looking at, until there are enough or they grow too large. */
public final class PictureScan {
    /** Enough to see what is wrong; a report of this many opens at once on a phone. */
    private static final int MOST_PAGES = 30;

    /** Two pictures each. */
    private static final int MOST_PAIRS = 12;

    /** In characters of base 64. */
    private static final long MOST_SIZE = 12_000_000;

    /** Paper shown beyond what must be clear, so that what is near is seen whole. */
    private static final double BEYOND_MM = 12;

    private final CheckRequest request;
    private final Report report;
    private final List<PageReport> wanted;
    private final List<PagePicture> done = new CopyOnWriteArrayList<>();
    /** Pages whose hits are shown instead of a page's own. */
    private final Map<Integer, PageReport> places = new TreeMap<>();
    /** Pages shown with bleed. */
    private final Set<Integer> bleeds = new TreeSet<>();

    private long size;

    private PictureScan(CheckRequest request, Report report, List<PageReport> wanted) {
        this.request = request;
        this.report = report;
        this.wanted = wanted;
    }

    /** Pages that are not clear: those punched first, then those not read, then those that are tight. */
    private static List<PageReport> wanted(Report report) {
        List<Verdict> order = List.of(Verdict.HIT, Verdict.UNCHECKED, Verdict.TIGHT);
        return report.pages().stream()
                .filter(p -> order.contains(p.verdict().verdict()))
                .sorted(Comparator.comparingInt(p -> order.indexOf(p.verdict().verdict())))
                .limit(MOST_PAGES)
                .toList();
    }

    /**
     * Draws them, in page order.
     *
     * @throws UnreadableInputException where the file cannot be opened any more
     */
    public static List<PagePicture> run(CheckRequest request, Report report) throws UnreadableInputException {
        return run(new PictureScan(request, report, wanted(report)), request);
    }

    /**
     * Draws what a repair changed, before and after, close-ups of the same places; pages with findings first.
     *
     * @throws UnreadableInputException where a file cannot be opened any more
     */
    public static List<PicturePair> run(ShiftRequest request, ShiftReport shift) throws UnreadableInputException {
        Report after = shift.after();
        if (after == null || shift.outcome() != ShiftReport.Result.CHANGED) {
            return List.of();
        }
        List<PageReport> before = shift.changedPages().stream()
                .map(p -> shift.before().pages().get(p - 1))
                .sorted(Comparator.comparing((PageReport p) -> p.verdict().verdict())
                        .reversed())
                .limit(MOST_PAIRS)
                .toList();
        List<PageReport> changed = before.stream()
                .map(p -> after.pages().get(shift.numberAfter(p.facts().page()) - 1))
                .toList();
        PictureScan was = new PictureScan(request.check(), shift.before(), before);
        CheckRequest made = new CheckRequest(
                request.output(),
                request.outputName(),
                after.job(),
                null,
                request.check().progress(),
                request.check().helpers());
        PictureScan is = new PictureScan(made, after, changed);
        for (int i = 0; i < before.size(); i++) {
            is.places.put(changed.get(i).facts().page(), before.get(i));
        }
        was.bleeds.addAll(shift.bleeds());
        shift.bleeds().forEach(page -> is.bleeds.add(shift.numberAfter(page)));
        Map<Integer, PagePicture> pictures = new TreeMap<>();
        run(is, made).forEach(p -> pictures.put(p.page(), p));
        List<PicturePair> pairs = new ArrayList<>();
        for (PagePicture picture : run(was, request.check())) {
            PagePicture other = pictures.get(shift.numberAfter(picture.page()));
            if (other != null) {
                pairs.add(new PicturePair(picture, other));
            }
        }
        // the worst first, as everywhere
        List<Integer> order = before.stream().map(p -> p.facts().page()).toList();
        pairs.sort(Comparator.comparingInt(pair -> order.indexOf(pair.before().page())));
        return pairs;
    }

    private static List<PagePicture> run(PictureScan scan, CheckRequest request) throws UnreadableInputException {
        if (scan.wanted.isEmpty()) {
            return List.of();
        }
        try {
            return TimeLimit.run(request.name(), limit -> {
                scan.draw(limit);
                return scan.drawn();
            });
        } catch (UnreadableInputException e) {
            if (e.reason() == UnreadableInputException.Reason.TOO_MUCH) {
                return scan.drawn(); // time or memory is spent: what there is shows the worst pages
            }
            throw e;
        } catch (SettingException e) {
            throw new IllegalStateException("pictures ask for no setting", e);
        }
    }

    private void draw(TimeLimit limit) throws UnreadableInputException {
        try (OpenedPdf pdf = Intake.open(request.source())) {
            if (!pdf.identified().sha256().equals(report.document().sha256())) {
                throw new IllegalStateException("the file changed since it was checked");
            }
            limit.extendFor(pdf.facts().pages().size() + wanted.size() * PagePictures.LIKE_PAGES_READ);
            PagePictures pictures = pdf.pictures(wanted.size());
            for (PageReport page : wanted) {
                if (size > MOST_SIZE) {
                    return;
                }
                PagePicture picture = draw(pictures, page);
                size += picture.size();
                done.add(picture);
                request.progress().pages(done.size(), wanted.size());
            }
        }
    }

    private PagePicture draw(PagePictures pictures, PageReport page) {
        Plan plan = report.plan();
        double depth = Math.max(plan.holeZone().mm(), plan.bindingMargin().mm()) + BEYOND_MM;
        return pictures.draw(
                page.facts().page(),
                page.place().bindingEdge(),
                depth,
                bleeds.contains(page.facts().page())
                        ? report.job().printLimits().bleed().mm()
                        : 0,
                CloseUpWindows.of(
                        places.getOrDefault(page.facts().page(), page).verdict().hits(),
                        page.facts().along(page.place().bindingEdge()).mm()));
    }

    /** Pictures drawn so far, in page order. */
    private List<PagePicture> drawn() {
        List<PagePicture> pictures = new ArrayList<>(done);
        pictures.sort(Comparator.comparingInt(PagePicture::page));
        return List.copyOf(pictures);
    }
}
