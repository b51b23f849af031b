package io.bindprep.check;

import io.bindprep.job.FailOn;
import io.bindprep.marks.Verdict;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Holds a report against an earlier one. Findings meet page by page, by the words and the place of their marks; between
 * documents of unlike length a page may have moved by as many pages as came or went, and words that stand once in each meet
 * wherever they are. What is in doubt is new, never known.
 */
final class Comparison {
    /** Reports hold 0.0001 mm; outlines of a new export differ by rounding. */
    private static final double WORSE_MM = 0.1;

    private static final int MOST_RANGES = 8;

    private final Earlier earlier;
    private final Report now;

    Comparison(Earlier earlier, Report now) {
        this.earlier = earlier;
        this.now = now;
    }

    Report report(boolean sameJob, boolean onlyNewFails) {
        int added = now.pages().size() - earlier.pages();
        List<Seat> before = new ArrayList<>();
        earlier.findings().forEach(f -> before.addAll(Seat.of(f)));
        Map<Finding, List<Seat>> seats = new LinkedHashMap<>();
        List<Seat> after = new ArrayList<>();
        for (Finding f : now.findings()) {
            List<Seat> ofOne = Seat.of(f);
            seats.put(f, ofOne);
            after.addAll(ofOne);
        }
        new Pairing(before, after, added).pair();
        List<Finding> findings = now.findings().stream()
                .map(f -> f.since(since(f, Objects.requireNonNull(seats.get(f)))))
                .toList();
        Recheck recheck = new Recheck(
                earlier.file(),
                earlier.pages() > 0,
                earlier.sha256().equals(now.document().sha256()),
                sameJob,
                onlyNewFails,
                gone(before, added));
        boolean failed = onlyNewFails ? now.failed() && newFails(findings) : now.failed();
        return new Report(
                now.outcome(),
                failed,
                now.document(),
                now.job(),
                now.block(),
                now.stack(),
                now.plan(),
                now.whatIf(),
                now.split(),
                now.run(),
                now.pages(),
                findings,
                recheck);
    }

    private boolean newFails(List<Finding> findings) {
        return findings.stream().anyMatch(f -> {
            Finding.Since since = Objects.requireNonNull(f.since());
            return since.change() != Finding.Change.SAME
                    && (f.counts(Severity.ERROR) || now.job().failOn() == FailOn.WARNING && f.counts(Severity.WARNING));
        });
    }

    private Finding.Since since(Finding f, List<Seat> seats) {
        List<Integer> joined = new ArrayList<>();
        Earlier.Item met = null;
        String nearer = "";
        double most = WORSE_MM;
        for (Seat seat : seats) {
            Seat old = seat.partner();
            if (old == null) {
                joined.add(seat.page());
                continue;
            }
            met = old.earlier() != null
                            && (met == null || old.earlier().severity().compareTo(met.severity()) < 0)
                    ? old.earlier()
                    : met;
            if (seat.place() != null && old.place() != null) {
                double by = old.place().nearMm() - seat.place().nearMm();
                if (by > most) {
                    most = by;
                    nearer = "on page " + seat.page() + " nearer the binding edge, "
                            + now.measures().mark(seat.place().nearMm()) + " instead of "
                            + now.measures().mark(old.place().nearMm());
                }
            }
        }
        if (met == null) {
            return new Finding.Since(Finding.Change.NEW, "");
        }
        List<String> worse = new ArrayList<>();
        if (f.severity().compareTo(met.severity()) < 0) {
            worse.add("it was " + (met.severity() == Severity.WARNING ? "a warning" : "a note"));
        }
        if (!joined.isEmpty()) {
            worse.add("new on " + (joined.size() == 1 ? "page " : "pages ")
                    + PageLists.compact(new ArrayList<>(new TreeSet<>(joined)), MOST_RANGES));
        }
        if (!nearer.isEmpty()) {
            worse.add(nearer);
        }
        Double was = excess(met.measuredMm(), met.limitMm());
        Double is = excess(f.measuredMm(), f.limitMm());
        if (f.seen() == null && was != null && is != null && is > was + WORSE_MM) {
            worse.add(now.measures().mark(is) + " beyond the limit instead of "
                    + now.measures().mark(was));
        }
        return worse.isEmpty()
                ? new Finding.Since(Finding.Change.SAME, "")
                : new Finding.Since(Finding.Change.WORSE, String.join("; ", worse));
    }

    private static @Nullable Double excess(@Nullable Double measured, @Nullable Double limit) {
        return measured == null || limit == null ? null : Math.abs(measured - limit);
    }

    private List<Recheck.Gone> gone(List<Seat> before, int added) {
        Map<Earlier.Item, List<Seat>> lost = new LinkedHashMap<>();
        for (Seat seat : before) {
            if (seat.partner() == null) {
                lost.computeIfAbsent(Objects.requireNonNull(seat.earlier()), k -> new ArrayList<>())
                        .add(seat);
            }
        }
        List<Recheck.Gone> gone = new ArrayList<>();
        lost.forEach((f, seats) -> {
            List<Integer> pages = new ArrayList<>(new TreeSet<>(
                    seats.stream().map(Seat::page).filter(p -> p > 0).toList()));
            boolean whole = seats.size() == Seat.count(f);
            gone.add(new Recheck.Gone(
                    f.rule(),
                    f.severity(),
                    pages,
                    f.message(),
                    whole,
                    !ofContent(f.rule()) || seenAgain(pages, added)));
        });
        return gone;
    }

    private static boolean ofContent(String rule) {
        return FindingKinds.of(rule).map(FindingKind::ofContent).orElse(true);
    }

    // a page that cannot be read now is no proof that what was on it has gone
    private boolean seenAgain(List<Integer> pages, int added) {
        if (now.plan().row().holes().isEmpty()) {
            return false;
        }
        TreeSet<Integer> unread = new TreeSet<>(now.pages().stream()
                .filter(p -> p.verdict().verdict() == Verdict.UNCHECKED)
                .map(p -> p.facts().page())
                .toList());
        return pages.stream()
                .allMatch(p -> unread.subSet(p + Math.min(added, 0), true, p + Math.max(added, 0), true)
                        .isEmpty());
    }
}
