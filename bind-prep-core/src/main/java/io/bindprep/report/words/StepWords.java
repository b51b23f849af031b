package io.bindprep.report.words;

import io.bindprep.binding.Plan;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Sides;
import io.bindprep.paper.SheetSize;
import io.bindprep.run.Caution.Load;
import io.bindprep.run.Fold;
import io.bindprep.run.Lift;
import io.bindprep.run.Materials;
import io.bindprep.run.Press;
import io.bindprep.run.Step;
import io.bindprep.run.StepValues;
import io.bindprep.run.StockNeed;
import io.bindprep.run.Use;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** English of the steps of a run, with its numbers. */
final class StepWords {
    /** Lifts alike in a row from which on they are counted. */
    private static final int FEW = 3;

    private static final int MOST_VOLUMES = 6;

    private final Job job;
    private final Measures measures;
    private final Materials materials;
    private final List<Fold> folds;
    private final List<Plan> plans;
    private final List<Lift> lifts;
    private final long strokes;
    private final int volume;

    private StepWords(StepValues values) {
        this.job = values.job();
        this.measures =
                job.measures(values.materials().leafWidth(), values.materials().leafHeight());
        this.materials = values.materials();
        this.folds = values.folds();
        this.plans = values.plans();
        this.lifts = values.lifts();
        this.strokes = values.strokes();
        this.volume = values.volume();
    }

    /** One sentence or two each. */
    static List<String> of(Step step) {
        StepWords words = new StepWords(step.values());
        return switch (step.work()) {
            case PRINT -> words.print();
            case TRIM -> words.trim();
            case FOLD ->
                words.folds.stream().filter(Fold::fits).map(words::fold).toList();
            case SET_PUNCH -> List.of(words.each(i -> words.setPunch(words.plans.get(i))));
            case JOG -> List.of(words.jog());
            case PUNCH -> List.of(words.punch(), words.strokes());
            case COVERS, THREAD, CLOSE, TURN_COVER ->
                ClosingWords.of(step.work(), words.job, words.plans, words.volume > 0);
            case CHECK -> words.check();
            case PACK -> List.of(words.pack());
        };
    }

    private List<String> print() {
        List<String> lines = new ArrayList<>();
        for (StockNeed need : materials.stocks()) {
            if (need.printed()) {
                Press press = need.press();
                lines.add(counted(need.total(), press == null ? "sheet" : "press sheet")
                        + (press == null ? "" : " " + press.sheet().name())
                        + " of " + need.stock().name() + " (" + word(need.use()) + ": " + leaves(need.aCopy())
                        + " per copy" + (press == null ? "" : ", " + press.up() + " up") + "; "
                        + need.overs() + " overs included).");
            }
        }
        lines.add(
                job.sides() == Sides.ONE
                        ? "Print one side only."
                        : "Print both sides, backs " + (headToFoot() ? "head to foot" : "head to head")
                                + ". Duplex setting: flip on the " + (longEdge() ? "long" : "short")
                                + " edge.");
        return lines;
    }

    private boolean headToFoot() {
        return job.sides() == Sides.TWO_HEAD_TO_FOOT;
    }

    // flipped on the upright edge a page keeps its head; the upright edge is the long one of a portrait page
    private boolean longEdge() {
        boolean portrait = materials.leafHeight().compareTo(materials.leafWidth()) >= 0;
        return portrait != headToFoot();
    }

    /** By its name where it has one: exactly, where the job says the size, within the tolerance it is cut to where it was measured. */
    private String leafSize() {
        Length width = materials.leafWidth();
        Length height = materials.leafHeight();
        SheetSize known = job.catalogue().sizes().nearest(width, height);
        boolean named = job.trim() == null
                ? known.matches(width, height)
                : known.width().equals(width) && known.height().equals(height);
        return named
                ? known.name() + " (" + measures.area(known.width(), known.height()) + ")"
                : measures.area(width, height);
    }

    private List<String> trim() {
        List<String> lines = new ArrayList<>();
        boolean covers = job.frontCover() != null || job.backCover() != null;
        lines.add((covers ? "Cut leaves and covers to " : "Cut leaves to ") + leafSize()
                + ". If they were printed larger, cut the " + edge() + " edge first and measure from it.");
        for (StockNeed need : materials.stocks()) {
            boolean asTheBook =
                    need.width().equals(materials.leafWidth()) && need.height().equals(materials.leafHeight());
            if (!asTheBook) {
                lines.add(leaves(need.aCopy()) + " per copy of " + need.stock().name() + " (" + word(need.use())
                        + (need.aCopy() == 1 ? ") is cut to " : ") are cut to ")
                        + measures.area(need.width(), need.height())
                        + (need.use() == Use.TAB ? ", tabs included." : "."));
            }
            Press press = need.press();
            if (press != null && press.up() > 1) {
                lines.add(
                        press.imposition() == Press.Imposition.CUT_AND_STACK
                                ? "Each press sheet of " + word(need.use()) + " holds " + press.up()
                                        + " leaves of one copy. Cut the pile of each copy and stack the cut piles in"
                                        + " order."
                                : "Each press sheet of " + word(need.use()) + " holds the same leaf "
                                        + (press.up() == 2 ? "twice" : press.up() + " times")
                                        + ". Each cut pile serves one copy.");
            }
        }
        return lines;
    }

    private String fold(Fold fold) {
        String where = fold.folds().stream().map(measures::set).collect(Collectors.joining(", "));
        String pages = (fold.pages().size() == 1 ? "Page " : "Pages ") + numbers(fold.pages());
        return fold.folds().isEmpty()
                ? pages + ": no wider than the book. Nothing to fold."
                : pages + ": fold at " + where + " from the binding edge, the first fold onto the front"
                        + (fold.folds().size() > 1 ? ", the others to and fro" : "")
                        + ". Keep every fold inside the trim and clear of the holes.";
    }

    private String setPunch(Plan plan) {
        List<Integer> pulled = plan.row().pulledPins();
        return "Set the punch for " + plan.pattern() + ": hole centre " + measures.set(plan.edgeDistance())
                + " from the binding edge. "
                + (pulled.isEmpty()
                        ? "No pin to pull"
                        : "Pull " + (pulled.size() == 1 ? "pin " : "pins ") + numbers(pulled)
                                + ", counted from the side guide")
                + ". First hole centre: "
                + measures.set(plan.row().holes().get(0).centre()) + " from the "
                + (job.bindingEdge() == BindingEdge.TOP ? "left corner" : "head")
                + (plan.row().guideOff().equals(Length.ZERO)
                        ? "."
                        : ". Set the side guide's own scale to "
                                + measures.mark(plan.row()
                                        .holes()
                                        .get(0)
                                        .centre()
                                        .minus(plan.row().guideOff()))
                                + ", as measured.");
    }

    private String jog() {
        String end = job.bindingEdge() == BindingEdge.TOP ? "left side" : "head";
        return "Jog each lift square at the " + edge() + " edge and at the " + end + ". Feed every lift with the " + end
                + " to the side guide."
                + (plans.stream().anyMatch(Plan::sameEndToGuide)
                        ? " A leaf fed the other way would miss the element."
                        : "");
    }

    /** The lifts in order; those of volumes are counted, as each volume has a list of its own. */
    private String punch() {
        String thickest = measures.thickness(
                lifts.stream().map(Lift::thickness).max(Length::compareTo).orElse(Length.ZERO));
        return counted(lifts.size(), "lift") + " per copy" + (plans.size() > 1 ? volumes() : inOrder())
                + ". Thickest lift: " + thickest + ".";
    }

    private String volumes() {
        return plans.size() > MOST_VOLUMES
                ? " in " + plans.size() + " volumes"
                : IntStream.rangeClosed(1, plans.size())
                        .mapToObj(
                                v -> lifts.stream().filter(l -> l.volume() == v).count() + " of volume " + v)
                        .collect(Collectors.joining(", ", ": ", ""));
    }

    /** ", in order: 1 film cover, 3 x 13, 12 leaves, 1 board cover": the noun stands once, behind the last number. */
    private String inOrder() {
        List<String> said =
                new ArrayList<>(alike(lifts.stream().map(StepWords::lift).toList()));
        for (int i = said.size() - 1; i >= 0; i--) {
            if (said.get(i).matches("[0-9x ]+")) {
                said.set(i, said.get(i) + (said.get(i).matches("(.* )?1") ? " leaf" : " leaves"));
                break;
            }
        }
        return ", in order: " + String.join(", ", said);
    }

    /** "1 cover, 3 x 13, 12": lifts alike that follow one another are counted. */
    static List<String> alike(List<String> lifts) {
        List<String> said = new ArrayList<>();
        for (int from = 0, to; from < lifts.size(); from = to) {
            String lift = lifts.get(from);
            to = from + 1;
            while (to < lifts.size() && lifts.get(to).equals(lift)) {
                to++;
            }
            said.add(to - from < FEW ? String.join(", ", lifts.subList(from, to)) : to - from + " x " + lift);
        }
        return said;
    }

    private static String lift(Lift lift) {
        String kind = switch (lift.kind()) {
            case PAPER -> "";
            case BOARD -> "board ";
            case FILM -> "film ";
        };
        return lift.cover()
                ? counted(lift.leaves(), kind + "cover")
                : lift.leaves() + (kind.isEmpty() ? "" : " " + kind + (lift.leaves() == 1 ? "leaf" : "leaves"));
    }

    private String strokes() {
        return job.copies() == 1
                ? counted(strokes, "stroke") + (volume > 0 ? " for this volume." : " in all.")
                : counted(strokes, "stroke") + (volume > 0 ? " for " : " in all for ") + job.copies() + " copies"
                        + (volume > 0 ? " of this volume" : "")
                        + (strokes < (long) lifts.size() * job.copies()
                                ? ". Punch the covers of several copies together, each stock in its own lifts."
                                : ".");
    }

    private List<String> check() {
        List<String> lines = new ArrayList<>();
        lines.add("Leaf through each " + (volume > 0 ? "volume" : "copy") + ". Pages are in order, every leaf is on "
                + switch (job.binding()) {
                    case WIRE -> "every loop";
                    case COIL -> "the coil all the way";
                    case COMB, RINGS -> "every ring";
                }
                + ", leaves turn freely, no hole is torn.");
        BigDecimal copy = materials.copyG();
        if (copy != null && volume == 0) {
            lines.add("A copy weighs about " + measures.weight(copy)
                    + " without its element. A lighter copy may miss a leaf.");
        }
        return lines;
    }

    private String pack() {
        List<String> unknown = materials.unweighed();
        Load load = new Load(materials.knownRunG(), materials.runG() == null);
        return "The run weighs " + CautionWords.weight(load, measures) + " without elements and packing."
                + (unknown.isEmpty() ? "" : " The weight of " + String.join(", ", unknown) + " is not known.");
    }

    private String edge() {
        return job.bindingEdge().name().toLowerCase(Locale.ROOT);
    }

    private String each(IntFunction<String> sentence) {
        return each(plans.size(), sentence);
    }

    /** A sentence for each volume, said once where they are all alike. */
    static String each(int volumes, IntFunction<String> sentence) {
        List<String> said = IntStream.range(0, volumes).mapToObj(sentence).toList();
        if (said.stream().distinct().count() == 1) {
            return said.get(0);
        }
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            lines.add("Volume " + (i + 1) + ": " + said.get(i));
        }
        return String.join(" ", lines);
    }

    static String numbers(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String leaves(int count) {
        return count == 1 ? "1 leaf" : count + " leaves";
    }

    static String counted(long count, String noun) {
        return count == 1 ? "1 " + noun : count + " " + noun + "s";
    }

    private static String word(Use use) {
        return use.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
