package io.bindprep.report.words;

import io.bindprep.binding.Depth;
import io.bindprep.binding.Gap;
import io.bindprep.binding.Hole;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Plan;
import io.bindprep.binding.Skew;
import io.bindprep.block.Block;
import io.bindprep.catalogue.Element;
import io.bindprep.check.Report;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Cover;
import io.bindprep.job.PressSheet;
import io.bindprep.marks.Verdict;
import io.bindprep.paper.Stack;
import io.bindprep.paper.Stock;
import io.bindprep.run.Materials;
import io.bindprep.run.StockNeed;
import io.bindprep.unit.Length;
import io.bindprep.volume.Volume;
import io.bindprep.wording.Counted;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Printable;
import io.bindprep.wording.Terms;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** The numbers of a report as people read them: file, sheets, stock, covers, stack, binding, punch, pages. */
public final class JobNumbers {
    private static final int MOST_LIFTS = 12;
    private static final int MOST_VOLUMES = 6;
    private static final int MOST_TITLE = 60;

    /**
     * A label and what stands under it.
     *
     * @param lines whole phrases, at least one
     */
    public record Entry(String label, List<String> lines) {
        public Entry {
            lines = List.copyOf(lines);
        }
    }

    private final Report report;
    private final Measures measures;
    private final List<Entry> entries = new ArrayList<>();

    private JobNumbers(Report report) {
        this.report = report;
        this.measures = report.measures();
    }

    /** A report's numbers, in a fixed order. */
    public static List<Entry> of(Report report) {
        return of(report, report.document().file());
    }

    /** The same for a page that goes to others: the file without its folders. */
    public static List<Entry> withoutFolders(Report report) {
        return of(report, report.document().fileName());
    }

    private static List<Entry> of(Report report, String file) {
        JobNumbers numbers = new JobNumbers(report);
        numbers.collect(file);
        return List.copyOf(numbers.entries);
    }

    private void collect(String file) {
        if (report.documentChecked()) {
            entry(
                    "File",
                    named(report, file) + ", "
                            + Counted.of(report.document().pages().size(), "page"));
        } else {
            entry("Plan", file + ", no PDF was checked");
        }
        entry("Sheets", sheets());
        entry("Stock", stock(report.job().stock()));
        covers();
        entry("Stack", stack());
        binding();
        volumes();
        punch();
        if (report.documentChecked()) {
            entry("Pages", pages());
        }
    }

    /** The document by its title, where it has one, and its file. */
    static String named(Report report, String file) {
        String title = report.document().title();
        return title.isEmpty() ? file : Printable.quoted(title, MOST_TITLE) + " (" + file + ")";
    }

    private void entry(String label, String text) {
        entries.add(new Entry(label, List.of(text)));
    }

    /** Another phrase under the label above. */
    private void more(String text) {
        Entry last = entries.remove(entries.size() - 1);
        List<String> lines = new ArrayList<>(last.lines());
        lines.add(text);
        entries.add(new Entry(last.label(), lines));
    }

    private String sheets() {
        Block block = report.block();
        int copies = report.job().copies();
        PressSheet press = report.job().supply().pressSheet();
        String text = Counted.of(block.bodyLeaves(), "leaf") + " and "
                + (block.covers() == 0 ? "no cover" : Counted.of(block.covers(), "cover")) + " per copy, "
                + block.printedSheets() + " of them printed.";
        return copies == 1 && press == null
                ? text
                : text + " " + (copies == 1 ? "1 copy" : copies + " copies") + ": "
                        + Counted.of(printed(StockNeed::sheets), press == null ? "sheet" : "press sheet")
                        + (press == null ? "" : " " + press.name()) + " and "
                        + printed(StockNeed::overs) + " overs (spare sheets).";
    }

    private long printed(ToLongFunction<StockNeed> part) {
        return report.run().materials().stocks().stream()
                .filter(StockNeed::printed)
                .mapToLong(part)
                .sum();
    }

    private String stock(Stock stock) {
        return stock.name() + ", " + measures.caliper(stock.caliperUm()) + " per sheet (" + stock.source() + ")";
    }

    private void covers() {
        List<String> covers = new ArrayList<>();
        cover(covers, "front", report.job().frontCover());
        cover(covers, "back", report.job().backCover());
        if (!covers.isEmpty()) {
            entries.add(new Entry("Covers", covers));
        }
    }

    private void cover(List<String> covers, String side, @Nullable Cover cover) {
        if (cover != null) {
            covers.add(side + (cover.printed() == null ? ", blank: " : ", printed: ") + stock(cover.stock()));
        }
    }

    private String stack() {
        Stack s = report.stack();
        BigDecimal weight = s.weightG();
        return measures.thickness(s.nominal()) + ", range " + measures.thicknesses(s.min(), s.max()) + ". "
                + (weight == null ? atLeast(report.run().materials()) : measures.weight(weight) + " per copy");
    }

    private String atLeast(Materials materials) {
        if (materials.unweighed().isEmpty()) {
            return "Weight unknown: a stock gives no grammage";
        }
        String unknown = "The weight of " + String.join(", ", materials.unweighed()) + " is unknown";
        return materials.knownCopyG().signum() == 0
                ? unknown
                : "At least " + measures.weight(materials.knownCopyG()) + " per copy. " + unknown;
    }

    private void binding() {
        Plan plan = report.plan();
        Element element = plan.element();
        String method = plan.method().name().toLowerCase(Locale.ROOT) + ", pitch " + plan.pitchName();
        if (element == null) {
            entry("Binding", method + "; no binding element takes this stack");
            return;
        }
        String loops = plan.loops() == 0 ? "" : ", " + loops(plan.pieces());
        entry("Binding", method + ", binding element " + element.name() + loops);
        Length closer = plan.closer();
        if (closer != null) {
            more("Set the closer to " + closer(element, closer, measures) + ".");
        }
    }

    /** The size to set a closer to: the element's name, as its dial has it. */
    static String closer(Element element, Length closer, Measures measures) {
        return closer.equals(element.size()) ? element.name() : measures.size(closer);
    }

    /** Distance from the binding edge to the hole centre. */
    static String centre(Report report) {
        return report.measures().set(report.plan().edgeDistance());
    }

    private void volumes() {
        List<Volume> volumes = report.volumes();
        if (volumes.isEmpty()) {
            return;
        }
        entry("Volumes", volumes.size() + (report.block().covers() == 0 ? "" : ", each with its covers"));
        for (Volume volume : volumes.subList(0, Math.min(MOST_VOLUMES, volumes.size()))) {
            more(volume.number() + ": "
                    + (report.documentChecked() ? "pages " + volume.firstPage() + "-" + volume.lastPage() + ", " : "")
                    + Counted.of(volume.block().bodyLeaves(), "leaf") + ", "
                    + measures.thickness(volume.stack().nominal()) + ", element " + element(volume.plan()));
        }
        if (volumes.size() > MOST_VOLUMES) {
            more("and " + (volumes.size() - MOST_VOLUMES) + " more");
        }
    }

    private static String element(Plan plan) {
        Element element = plan.element();
        return element == null ? "none" : element.name();
    }

    private void punch() {
        Plan plan = report.plan();
        HoleRow row = plan.row();
        entry(
                "Punch",
                plan.pattern() + ": " + Counted.of(row.holes().size(), "hole") + " ("
                        + measures.hole(plan.round(), plan.holeAlong(), plan.holeAcross()) + "), centre "
                        + centre(report)
                        + " from the binding edge");
        more("Depth " + plan.depth().setting().name() + ", "
                + decider(plan.depth().decidedBy()));
        List<Hole> holes = row.holes();
        String first = holes.isEmpty()
                ? "No whole hole fits this edge; "
                : "First hole " + measures.set(holes.get(0).centre()) + " from the "
                        + (report.job().bindingEdge() == BindingEdge.TOP ? "left" : "head") + "; ";
        more(first
                + (row.pulledPins().isEmpty()
                        ? "no pin to pull."
                        : "pull " + (row.pulledPins().size() == 1 ? "pin " : "pins ")
                                + PageLists.compact(row.pulledPins(), 8) + "."));
        feed(plan);
        if (!report.volumes().isEmpty()) {
            more(Counted.of(report.run().lifts().size(), "lift") + " per copy, all volumes together" + strokes());
        } else if (!plan.lifts().isEmpty()) {
            more(Counted.of(plan.lifts().size(), "lift") + " per copy: " + lifts(plan.lifts())
                    + (plan.lifts().equals(List.of(1)) ? " leaf" : " leaves") + strokes());
        }
        more("The holes, tolerance included, reach " + measures.mark(plan.holeZone())
                + " from the binding edge; " + Terms.BINDING_MARGIN + " " + measures.mark(plan.bindingMargin())
                + ".");
    }

    private static String decider(Depth.@Nullable Decider decider) {
        return switch (Objects.requireNonNull(decider, "the plan of a report was chosen")) {
            case JOB -> "set by the job.";
            case PUNCH -> "the punch's only setting.";
            case PATTERN -> "set by the ring mechanism.";
            case ELEMENT -> "chosen for the size of the element.";
            case THICKNESS -> "chosen for the thickness of the stack.";
            case TURNING -> "chosen so that pages turn freely.";
            case CONTENT -> "chosen to keep the holes off the content.";
        };
    }

    private String strokes() {
        int copies = report.job().copies();
        return copies == 1 ? "." : "; " + Counted.of(report.run().strokes(), "stroke") + " for " + copies + " copies.";
    }

    private void feed(Plan plan) {
        Gap gap = plan.row().gap();
        if (gap != null) {
            Gap.ThumbCut cut = gap.thumbCut();
            more("Hanger gap " + measures.set(gap.end().minus(gap.start())) + " in the middle of the edge"
                    + (cut == null ? "." : ", thumb cut " + measures.area(cut.width(), cut.depth()) + "."));
        }
        if (plan.sameEndToGuide()) {
            more((report.job().bindingEdge() == BindingEdge.TOP ? "Left end" : "Head")
                    + " to the side guide on every lift. A leaf fed the other way would miss the element.");
        }
        Skew skew = plan.skew();
        if (skew != null) {
            more("Maximum skew over the row: " + measures.down(skew.rise()) + ".");
        }
    }

    /** "34 loops", or "24 loops in two pieces of 12 and 12". */
    static String loops(List<Integer> pieces) {
        int all = pieces.stream().mapToInt(Integer::intValue).sum();
        return Counted.of(all, "loop")
                + (pieces.size() < 2 ? "" : " in two pieces of " + pieces.get(0) + " and " + pieces.get(1));
    }

    /** "3 x 14, 13" in the order of punching; where there are many, the rest is counted. */
    private static String lifts(List<Integer> lifts) {
        List<String> all = StepWords.alike(lifts.stream().map(String::valueOf).toList());
        String first = String.join(", ", all.subList(0, Math.min(MOST_LIFTS, all.size())));
        return all.size() <= MOST_LIFTS ? first : first + " and more";
    }

    private String pages() {
        List<String> counts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = report.pages().stream()
                    .filter(p -> p.verdict().verdict() == verdict)
                    .count();
            if (count > 0) {
                counts.add(count + " " + Phrases.word(verdict));
            }
        }
        return String.join(", ", counts);
    }
}
