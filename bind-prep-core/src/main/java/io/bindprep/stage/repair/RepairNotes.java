package io.bindprep.stage.repair;

import io.bindprep.check.Report;
import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.PageRoom;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.stage.TimeLimit;
import io.bindprep.unit.Length;
import io.bindprep.wording.PageLists;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Notes on a repaired document before it is printed: what no longer reaches an edge, what is gone. */
final class RepairNotes {
    private static final int MOST_RANGES = 8;
    private static final double STRETCHED_MM = 0.01;

    private final CheckRequest check;
    private final Report before;
    private final RepairComparison checked;
    private final Planned planned;
    private final Map<Integer, Set<MarkKind>> dropped;
    static final String NO_BLEED_MISSING = "No bleed is missing at the binding edge: nothing was added there.";

    private final List<Integer> unmarked;
    private final MadeBleed bleed;
    private final List<String> notes = new ArrayList<>();

    RepairNotes(CheckRequest check, Report before, RepairComparison checked, Planned planned, ChangedCopy copy) {
        this.unmarked = copy.unmarked();
        this.dropped = copy.dropped();
        this.bleed = copy.bleed();
        this.check = check;
        this.before = before;
        this.checked = checked;
        this.planned = planned;
    }

    /** The notes, what may be seen on paper first. */
    List<String> of(ShiftSettings settings, Path made, Collection<Integer> cut)
            throws UnreadableInputException, SettingException {
        bindingEdge();
        otherEdges(made);
        if (settings.extendBleed()) {
            madeBleed();
        }
        outerEdge(settings);
        if (planned.alone().moves().isEmpty()) {
            beyond(cut);
        }
        notes.addAll(planned.alone().notes());
        if (!dropped.isEmpty()) {
            notes.add("Printer's marks beyond the trim on " + pages(dropped.keySet()) + " (" + kinds()
                    + ") are left out. If they moved with the content, the page would be cut in the wrong place; the page"
                    + " boxes say where to cut.");
        }
        kept(settings);
        if (settings.marks()) {
            marks();
        }
        if (!planned.claims().isEmpty()) {
            notes.add("The file claims " + String.join(" and ", planned.claims())
                    + ". The copy keeps that claim, its output intents, fonts and boxes. It was not validated again: have"
                    + " that done before you pass it on.");
        }
        if (planned.encrypted()) {
            notes.add("The file was encrypted; what is written is not. Keep it as safe as the content asks.");
        }
        if (planned.signatures() > 0) {
            notes.add("Its signatures no longer hold and are taken out; the copy is for printing only.");
        }
        return notes;
    }

    private void madeBleed() {
        if (bleed.pages().isEmpty()) {
            notes.add(NO_BLEED_MISSING);
            return;
        }
        notes.add("Bleed is made at the binding edge of " + pages(bleed.pages().keySet())
                + ": the art there is mirrored to " + upTo(bleed.wantMm())
                + " beyond the trim. Page boxes grow so far; the trim stays. Look at the edge before you print.");
        List<Integer> stretched = bleed.pages().entrySet().stream()
                .filter(e ->
                        e.getValue().stream().anyMatch(s -> s.sourceMm() < bleed.wantMm() + s.endMm() - STRETCHED_MM))
                .map(Map.Entry::getKey)
                .toList();
        if (!stretched.isEmpty()) {
            notes.add("On " + pages(stretched)
                    + " text or a line stands near the edge: what is clear of it is mirrored and stretched.");
        }
    }

    private void kept(ShiftSettings settings) {
        List<Integer> kept = checked.pages().filter(settings::keeps).boxed().toList();
        List<Integer> bad = kept.stream()
                .filter(p -> checked.verdictAfter(p).verdict() != Verdict.CLEAR)
                .toList();
        if (!bad.isEmpty()) {
            notes.add("Left as asked, with content near the holes: " + pages(bad) + ".");
        }
    }

    private void marks() {
        List<Integer> drawn = moved().filter(p -> !unmarked.contains(p)).boxed().toList();
        if (!drawn.isEmpty()) {
            notes.add("New crop marks are drawn outside the bleed on " + pages(drawn) + ", in all inks.");
        }
        if (!unmarked.isEmpty()) {
            notes.add("No room for crop marks beyond the bleed on " + pages(unmarked)
                    + ": the page boxes say where to cut.");
        }
    }

    /** Says by kind what stood there, in the order in which it is looked for. */
    private String kinds() {
        Set<MarkKind> all = EnumSet.noneOf(MarkKind.class);
        dropped.values().forEach(all::addAll);
        List<String> words = new ArrayList<>();
        if (all.contains(MarkKind.LINE)) {
            words.add("lines such as crop marks and register marks");
        }
        if (all.contains(MarkKind.ART) || all.contains(MarkKind.IMAGE) || all.contains(MarkKind.BACKGROUND)) {
            words.add("bars or pictures");
        }
        if (all.contains(MarkKind.TEXT)) {
            words.add("page information");
        }
        return String.join(", ", words);
    }

    /** Cut away at the edge of the page as it was: what already ran off it, and what had nothing to do with it. */
    private void beyond(Collection<Integer> cut) {
        List<Integer> runOff = cut.stream().filter(this::ranOff).toList();
        List<Integer> hidden = cut.stream().filter(p -> !ranOff(p)).toList();
        if (!runOff.isEmpty()) {
            notes.add("On " + pages(runOff)
                    + " content runs off the binding edge in the file itself and stays cut there. See"
                    + " whether anything is lost.");
        }
        if (!hidden.isEmpty()) {
            notes.add("On " + pages(hidden) + " something that lay hidden beyond the page would have come in with the"
                    + " content; it is cut away.");
        }
    }

    private boolean ranOff(int page) {
        Mark nearest = before.pages().get(page - 1).verdict().nearest();
        return nearest != null && nearest.nearMm() <= OuterEdge.BLEED_MM;
    }

    private IntStream moved() {
        return checked.pages().filter(p -> !move(p).nothing());
    }

    private Move move(int page) {
        return planned.plan().moves().get(page - 1);
    }

    private void bindingEdge() {
        List<Integer> gaps = moved().filter(
                        p -> before.pages().get(p - 1).verdict().background()
                                && !checked.verdictAfter(p).background())
                .boxed()
                .toList();
        List<Integer> stay = moved().filter(
                        p -> before.pages().get(p - 1).verdict().background() && !gaps.contains(p))
                .boxed()
                .toList();
        if (!stay.isEmpty()) {
            notes.add(
                    "The tint or picture that runs through the binding edge on " + pages(stay)
                            + " stays in its place or still reaches it; what lies upon it moves. See that the two still go together.");
        }
        if (!gaps.isEmpty()) {
            double most = gaps.stream().mapToDouble(p -> move(p).awayMm()).max().orElse(0);
            notes.add("The tint or picture that ran through the binding edge no longer reaches it on " + pages(gaps)
                    + ": up to " + upTo(most)
                    + " of bare paper will show beside the binding. Have the art made wider there,"
                    + " or accept it.");
        }
    }

    /** Only what is scaled draws back from the edges that are not limit. */
    private void otherEdges(Path made) throws UnreadableInputException, SettingException {
        List<Integer> scaled = moved().filter(p -> move(p).scales()).boxed().toList();
        if (scaled.isEmpty()) {
            return;
        }
        Map<PageEdge, List<Integer>> gaps = TimeLimit.run(check.name(), limit -> {
            Map<PageEdge, List<Integer>> found = new TreeMap<>();
            try (OpenedPdf was = Intake.known(check.source(), "");
                    OpenedPdf is = Intake.known(new PdfSource(made, check.name(), null), "")) {
                limit.extendFor(2 * scaled.size());
                for (int page : scaled) {
                    for (PageEdge edge : PageEdge.values()) {
                        if (edge != move(page).bindingEdge()
                                && OuterEdge.bleeds(was, page, edge)
                                && !OuterEdge.bleeds(is, checked.numberAfter(page), edge)) {
                            found.computeIfAbsent(edge, k -> new ArrayList<>()).add(page);
                        }
                    }
                }
            }
            return found;
        });
        gaps.forEach(
                (edge, pages) -> notes.add(
                        "What ran off the "
                                + edge.name().toLowerCase(Locale.ROOT) + " edge no longer reaches it on " + pages(pages)
                                + ", for everything is made smaller there: bare paper will show. Have the art made larger, or accept it."));
    }

    private void outerEdge(ShiftSettings settings) {
        List<Integer> bleeding = planned.rooms().stream()
                .filter(r -> r.bleeds()
                        && !move(r.page()).nothing()
                        && !move(r.page()).scales())
                .map(PageRoom::page)
                .toList();
        if (!bleeding.isEmpty()) {
            double most =
                    bleeding.stream().mapToDouble(p -> move(p).awayMm()).max().orElse(0);
            notes.add("What runs off the outer edge on " + pages(bleeding) + " loses up to " + upTo(most)
                    + " more there.");
        }
        if (settings.gutter() == null) {
            return;
        }
        double outer = settings.outerMargin().mm();
        List<Integer> near = planned.rooms().stream()
                .filter(r -> r.outerMm() - move(r.page()).awayMm() < outer)
                .map(PageRoom::page)
                .toList();
        if (!near.isEmpty()) {
            notes.add("Content on " + pages(near) + " comes nearer the outer edge than "
                    + before.measures().exact(settings.outerMargin())
                    + ". See that the printer prints so far out and that the trim is true.");
        }
        List<Integer> unchecked = planned.rooms().stream()
                .filter(r -> r.unchecked() != null)
                .map(PageRoom::page)
                .toList();
        if (!unchecked.isEmpty()) {
            notes.add("Not read whole: " + pages(unchecked)
                    + ". Nothing is known of what the move does there; look at it.");
        }
    }

    private static String pages(Collection<Integer> pages) {
        return PageLists.named(pages, MOST_RANGES);
    }

    private String upTo(double mm) {
        return before.measures().up(Length.ofMeasuredMm(mm));
    }
}
