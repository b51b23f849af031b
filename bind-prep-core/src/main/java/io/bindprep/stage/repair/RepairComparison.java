package io.bindprep.stage.repair;

import io.bindprep.check.Finding;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageJudge;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Move;
import io.bindprep.repair.MovePlanner;
import io.bindprep.repair.Refusal;
import io.bindprep.repair.RefusalReason;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Holds the check of a changed document against that of the document as it was. */
final class RepairComparison {
    /** Pixels of a picture are this coarse. */
    private static final double COARSE_MM = 0.25;

    private static final int MOST_RANGES = 8;

    private final ShiftSettings settings;
    private final Report before;
    private final Report after;
    private final List<Move> moves;
    private final int blanks;
    private final int[] places;
    private final PageJudge judge;

    RepairComparison(
            ShiftSettings settings,
            Report before,
            Report after,
            List<Move> moves,
            List<Integer> blanks,
            PageJudge judge) {
        this.settings = settings;
        this.before = before;
        this.after = after;
        this.moves = moves;
        this.blanks = blanks.size();
        this.places = places(before.pages().size(), Set.copyOf(blanks));
        this.judge = judge;
    }

    /** Pages where something stands nearer the binding edge than the move can have put it: it came from beyond the edge. */
    List<Integer> cameIn() {
        return pages().filter(page -> !moves.get(page - 1).nothing() && cameIn(page))
                .boxed()
                .toList();
    }

    private boolean cameIn(int page) {
        PageVerdict was = before.pages().get(page - 1).verdict();
        PageVerdict is = verdictAfter(page);
        Mark nearest = is.nearest();
        if (is.background() && !was.background()) {
            return true;
        }
        Mark first = was.nearest();
        double near = was.background() ? 0 : first == null ? judge.stripMm() : first.nearMm();
        if (was.background() && first != null && nearest != null && stayed(first, nearest)) {
            return false;
        }
        Move move = moves.get(page - 1);
        return nearest != null && nearest.nearMm() < move.scale() * near + move.awayMm() - COARSE_MM;
    }

    /** Part of a picture that runs through the edge may be told as a mark by itself, and stays with it. */
    private static boolean stayed(Mark was, Mark is) {
        return was.kind() == is.kind()
                && (is.kind() == MarkKind.IMAGE || is.kind() == MarkKind.ART)
                && Math.abs(was.nearMm() - is.nearMm()) < COARSE_MM
                && Math.abs(was.alongStartMm() - is.alongStartMm()) < COARSE_MM
                && Math.abs(was.alongEndMm() - is.alongEndMm()) < COARSE_MM;
    }

    /** Reasons why the changed document is no better than it was; empty where it is good. */
    Refusal wrong() {
        List<String> near = new ArrayList<>();
        Set<Integer> blocking = new TreeSet<>();
        if (after.pages().size() != before.pages().size() + blanks) {
            return Refusal.of(
                    RefusalReason.NOT_WHOLE,
                    "The repaired copy would have " + after.pages().size() + " pages where "
                            + (before.pages().size() + blanks) + " belong.");
        }
        for (Verdict verdict : List.of(Verdict.UNCHECKED, Verdict.HIT, Verdict.TIGHT)) {
            List<Integer> bad = pages().filter(
                            p -> verdictAfter(p).verdict() == verdict && !settled(p) && !settings.keeps(p))
                    .boxed()
                    .toList();
            blocking.addAll(bad);
            if (!bad.isEmpty()) {
                near.add("The check of the repaired copy still finds "
                        + PageLists.named(bad, MOST_RANGES) + " "
                        + word(verdict) + ".");
            }
        }
        List<Integer> art = pages().filter(p -> !settings.keeps(p)
                        && before.pages().get(p - 1).verdict().background()
                        && verdictAfter(p).verdict() != Verdict.CLEAR)
                .boxed()
                .toList();
        if (!art.isEmpty() && !near.isEmpty()) {
            near.add("A tint or picture runs through the binding edge on " + PageLists.named(art, MOST_RANGES)
                    + " and could not be kept in its place there. Have the page" + " laid out anew.");
        }
        Set<String> known = before.findings().stream().map(Finding::rule).collect(Collectors.toSet());
        List<String> faults = after.findings().stream()
                .filter(f -> f.severity() == Severity.ERROR && !known.contains(f.rule()))
                .map(f -> "The check of the repaired copy finds what was not there before: " + f.message())
                .toList();
        Refusal wrong = near.isEmpty() ? Refusal.NONE : Refusal.of(RefusalReason.STILL_NEAR, near);
        if (!faults.isEmpty()) {
            wrong = wrong.and(Refusal.of(RefusalReason.NEW_FAULT, faults));
        }
        return MovePlanner.leaving(settings, blocking, before.pages().size())
                .map(wrong::wayOut)
                .orElse(wrong);
    }

    /** A gutter promises no page to be clear, only none to be worse. */
    private boolean settled(int page) {
        Verdict was = before.pages().get(page - 1).verdict().verdict();
        return settings.gutter() != null && verdictAfter(page).verdict().compareTo(was) <= 0;
    }

    private static String word(Verdict verdict) {
        return switch (verdict) {
            case CLEAR -> "clear";
            case TIGHT -> "too near the binding";
            case HIT -> "hit";
            case UNCHECKED -> "not to be read whole";
        };
    }

    /** Places of the pages once blank ones have come in, from 0. */
    private static int[] places(int pages, Set<Integer> blanks) {
        int[] places = new int[pages];
        for (int page = 1, place = 0; page <= pages; page++) {
            places[page - 1] = place;
            place += blanks.contains(page) ? 2 : 1;
        }
        return places;
    }

    PageVerdict verdictAfter(int page) {
        return after.pages().get(places[page - 1]).verdict();
    }

    /** The number of a page in the changed document. */
    int numberAfter(int page) {
        return places[page - 1] + 1;
    }

    IntStream pages() {
        return IntStream.rangeClosed(1, before.pages().size());
    }
}
