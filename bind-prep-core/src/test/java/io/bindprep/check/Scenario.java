package io.bindprep.check;

import io.bindprep.binding.Closing;
import io.bindprep.binding.Depth;
import io.bindprep.binding.ElementChoice;
import io.bindprep.binding.Gap;
import io.bindprep.binding.Hole;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Holes;
import io.bindprep.binding.Margins;
import io.bindprep.binding.PackMeasure;
import io.bindprep.binding.Plan;
import io.bindprep.binding.Reason;
import io.bindprep.binding.Skew;
import io.bindprep.block.Block;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.block.PagePlace;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Method;
import io.bindprep.job.Acceptance;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Cover;
import io.bindprep.job.FailOn;
import io.bindprep.job.Job;
import io.bindprep.job.Order;
import io.bindprep.job.PageRange;
import io.bindprep.job.PrintLimits;
import io.bindprep.job.Sides;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.Supply;
import io.bindprep.job.Trim;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageBasics;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Stage;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Box;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackReason;
import io.bindprep.paper.Stock;
import io.bindprep.run.BookPart;
import io.bindprep.run.Run;
import io.bindprep.run.RunPlanner;
import io.bindprep.unit.Length;
import io.bindprep.volume.Split;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Input of the check, as the stages before hand it on, built step by step: A4 pages bound left on 3:1 wire, all clear, until said
 * otherwise. Invented, but for the sizes.
 */
public final class Scenario {
    private static final Stock BOND = new Stock(
            "bond-20",
            Stock.Kind.PAPER,
            new BigDecimal("75.195"),
            new BigDecimal("93.98"),
            new BigDecimal("7.62"),
            "JCP O-63 (1999)",
            false);
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final int pages;
    private boolean near;
    private boolean open;
    private final List<double[]> sizes = new ArrayList<>();
    private final List<PageVerdict> verdicts = new ArrayList<>();
    private final List<Integer> blankBacks = new ArrayList<>();
    private String file = "thesis.pdf";
    private boolean trimDeclared = true;
    private final double[] bleedUnits;
    private boolean rightToLeft;
    private long junk;
    private String sha256 = "00ff";
    private boolean repaired;
    private int lostPages;
    private boolean holeless;
    private List<Acceptance> accepted = List.of();
    private boolean printable = true;
    private int copies = 1;
    private Sides sides = Sides.TWO;
    private BindingEdge edge = BindingEdge.LEFT;
    private Trim trim;
    private String pitch;
    private FailOn failOn = FailOn.ERROR;
    private Element element = new Element("3/8 in", Length.ofInch(3, 8), "common practice, no source");
    private List<Element> straddles = List.of();
    private PackMeasure measure;
    private Gap gap;
    private Length slant = Length.ZERO;
    private Length stretch = Length.ZERO;
    private Length turnsBelow = Length.ofMm("8.2");
    private ElementSizes closerTakes;
    private List<WhatIf> whatIf = List.of();
    private int fewer;
    private List<Integer> fixed = List.of();
    private Length bindingMargin = Length.ofInch(3, 8);
    private Length thickest = Length.ofMm("5.2");
    private String pattern = "W3_1i-square-0t";
    private Cover front;
    private Cover back;
    private BigDecimal weight = new BigDecimal("210.04");
    private SpecialLeaves special = SpecialLeaves.NONE;
    private Supply supply = Supply.BUILT_IN;
    private Split split = Split.NONE;
    private List<Integer> lifts = List.of(14, 14, 14);

    private Scenario(int pages) {
        this.pages = pages;
        this.bleedUnits = new double[pages];
        for (int p = 1; p <= pages; p++) {
            sizes.add(new double[] {210, 297});
            verdicts.add(new PageVerdict(p, Verdict.CLEAR, null, List.of(), false, null));
        }
    }

    public static Scenario of(int pages) {
        return new Scenario(pages);
    }

    public Scenario accepting(Acceptance... acceptances) {
        accepted = List.of(acceptances);
        return this;
    }

    public Scenario file(String name) {
        file = name;
        return this;
    }

    public Scenario copies(int count) {
        copies = count;
        return this;
    }

    public Scenario size(int page, double widthMm, double heightMm) {
        sizes.set(page - 1, new double[] {widthMm, heightMm});
        return this;
    }

    public Scenario allSizes(double widthMm, double heightMm) {
        sizes.replaceAll(s -> new double[] {widthMm, heightMm});
        return this;
    }

    public Scenario trim(String name, Length width, Length height) {
        trim = new Trim(name, width, height);
        return this;
    }

    /** Distance of a page's BleedBox beyond its TrimBox, in units of its user space; less than 0 within it. */
    public Scenario bleed(int page, double units) {
        bleedUnits[page - 1] = units;
        return this;
    }

    public Scenario trimUndeclared() {
        trimDeclared = false;
        return this;
    }

    public Scenario rightToLeft() {
        rightToLeft = true;
        return this;
    }

    public Scenario sha256(String digest) {
        sha256 = digest;
        return this;
    }

    public Scenario junk(long bytes) {
        junk = bytes;
        return this;
    }

    public Scenario lostPages(int lost) {
        lostPages = lost;
        return this;
    }

    public Scenario notPrintable() {
        printable = false;
        return this;
    }

    public Scenario noHoles() {
        holeless = true;
        return this;
    }

    public Scenario repaired() {
        repaired = true;
        return this;
    }

    public Scenario bound(BindingEdge bindingEdge, Sides printed) {
        edge = bindingEdge;
        sides = printed;
        return this;
    }

    public Scenario failOn(FailOn least) {
        failOn = least;
        return this;
    }

    public Scenario pitch(String name) {
        pitch = name;
        return this;
    }

    public Scenario noElement() {
        element = null;
        thickest = Length.ofMm(15);
        return this;
    }

    public Scenario straddles(Element... between) {
        straddles = List.of(between);
        return this;
    }

    public Scenario measure(PackMeasure settles) {
        measure = settles;
        return this;
    }

    public Scenario turnsBelow(Length outside) {
        turnsBelow = outside;
        return this;
    }

    public Scenario closerTakes(ElementSizes sizes) {
        closerTakes = sizes;
        return this;
    }

    /** The plan's own setting, and a deeper one with its pages. */
    public Scenario whatIf(List<Integer> hit, List<Integer> tight) {
        whatIf = List.of(
                new WhatIf(plan(lifts), true, List.of(), tight, List.of()),
                new WhatIf(plan(lifts), false, hit, tight, List.of(2)));
        return this;
    }

    private Depth depth() {
        DepthSetting middle = new DepthSetting("middle", Length.ofInch(1, 5), "invented");
        return new Depth(middle, Length.ofMm("3.1"), element == null ? null : turnsBelow, Depth.Decider.ELEMENT);
    }

    /** A stack near the limit of its element, or one that may not close in it. */
    public Scenario full(boolean nearLimit, boolean mayNotClose) {
        near = nearLimit;
        open = mayNotClose;
        return this;
    }

    public Scenario gap(Gap free) {
        gap = free;
        return this;
    }

    /** A row that ends so many holes before the sheet's end. */
    public Scenario shortRow(int holes) {
        fewer = holes;
        return this;
    }

    public Scenario measured(Length slanted, Length stretched) {
        slant = slanted;
        stretch = stretched;
        return this;
    }

    public Scenario fixed(Integer... pins) {
        fixed = List.of(pins);
        return this;
    }

    public Scenario bindingMargin(Length margin) {
        bindingMargin = margin;
        return this;
    }

    public Scenario pattern(String id) {
        pattern = id;
        return this;
    }

    /** A printed front cover and a blank back one. */
    public Scenario covers() {
        front = new Cover(BOND, new PageRange(1, 2));
        back = new Cover(BOND, null);
        return this;
    }

    public Scenario weightUnknown() {
        weight = null;
        return this;
    }

    public Scenario lifts(Integer... sheets) {
        lifts = List.of(sheets);
        return this;
    }

    public Scenario special(SpecialLeaves leaves) {
        special = leaves;
        return this;
    }

    public Scenario supply(Supply given) {
        supply = given;
        return this;
    }

    public Scenario split(Split into) {
        split = into;
        return this;
    }

    public Scenario blankBacks(Integer... after) {
        blankBacks.addAll(List.of(after));
        return this;
    }

    /** A mark on a page, so many millimetres from the binding edge, 100 to 118 mm from the head. */
    public Scenario hit(int page, MarkKind kind, Verdict verdict, Integer pin, double nearMm, String words) {
        PageVerdict before = verdicts.get(page - 1);
        Mark mark = new Mark(
                kind,
                Stage.GEOMETRY,
                new Rectangle2D.Double(nearMm, 100, 5, 18),
                nearMm,
                nearMm + 5,
                100,
                118.04,
                words);
        List<Hit> hits = new ArrayList<>(before.hits());
        hits.add(new Hit(mark, verdict, pin == null ? List.of() : List.of(pin)));
        Verdict worse = before.verdict().compareTo(verdict) > 0 ? before.verdict() : verdict;
        boolean nearer = before.nearest() == null || nearMm < before.nearest().nearMm();
        verdicts.set(
                page - 1,
                new PageVerdict(
                        page, worse, nearer ? mark : before.nearest(), hits, before.background(), before.unchecked()));
        return this;
    }

    public Scenario verdict(PageVerdict verdict) {
        verdicts.set(verdict.page() - 1, verdict);
        return this;
    }

    public Scenario basics(int page, PageBasics basics) {
        PageVerdict v = verdicts.get(page - 1);
        return verdict(
                new PageVerdict(page, v.verdict(), v.nearest(), v.hits(), v.background(), v.unchecked(), basics));
    }

    public Scenario unchecked(int page, String why) {
        return verdict(new PageVerdict(page, Verdict.UNCHECKED, null, List.of(), false, why));
    }

    public Scenario background(int page) {
        return verdict(new PageVerdict(page, Verdict.CLEAR, null, List.of(), true, null));
    }

    public Report report() {
        LeafSizes cut = new LeafSizes(job(), document().pages(), Length.ofMm(210), Length.ofMm(297));
        Run run = RunPlanner.plan(job(), cut, List.of(new BookPart(block(), stack(), plan(liftsOfItsLeaves()))));
        return registered(
                Checker.report(document(), job(), block(), stack(), plan(lifts), whatIf, split, run, verdicts));
    }

    /** The same report, once each of its findings has been looked up among {@link FindingKinds}. */
    public static Report registered(Report report) {
        for (Finding f : report.findings()) {
            FindingKind kind = FindingKinds.of(f.rule())
                    .orElseThrow(() -> new AssertionError("finding \"" + f.rule() + "\" has no entry in FindingKinds"));
            if (!kind.severities().contains(f.severity())) {
                throw new AssertionError("finding \"" + f.rule() + "\" is " + f.severity()
                        + ", which its entry in FindingKinds does not have: " + kind.severities());
            }
        }
        return report;
    }

    // a test of wording may ask for lifts that its few pages do not make
    private List<Integer> liftsOfItsLeaves() {
        int leaves = block().leaves().size();
        return lifts.stream().mapToInt(Integer::intValue).sum() == leaves ? lifts : List.of(leaves);
    }

    private DocumentFacts document() {
        List<PageFacts> facts = IntStream.rangeClosed(1, pages)
                .mapToObj(p -> {
                    double[] size = sizes.get(p - 1);
                    Box box = new Box(0, 0, size[0] * POINTS_PER_MM, size[1] * POINTS_PER_MM);
                    double b = bleedUnits[p - 1];
                    Box bleed = new Box(-b, -b, box.x1() + b, box.y1() + b);
                    return new PageFacts(p, box, box, bleed, box, trimDeclared, 0, 1);
                })
                .toList();
        return new DocumentFacts(file, "", sha256, facts, rightToLeft, junk, repaired, lostPages, List.of(), printable);
    }

    private Job job() {
        return new Job(
                copies,
                sides,
                edge,
                trim,
                BOND,
                front,
                back,
                List.of(),
                special,
                Method.WIRE,
                pitch,
                null,
                null,
                null,
                Length.ofMm(1),
                null,
                null,
                null,
                supply,
                failOn,
                accepted,
                PrintLimits.USUAL,
                Order.NONE,
                null,
                Catalogue.builtIn());
    }

    private Block block() {
        List<Leaf> leaves = new ArrayList<>();
        List<PagePlace> places = new ArrayList<>();
        for (int p = 1; p <= pages; p++) {
            boolean recto = p % 2 == 1;
            if (recto) {
                leaves.add(leaf(p, p < pages ? p + 1 : null));
            }
            PageEdge bound = edge == BindingEdge.TOP ? PageEdge.TOP : recto ? PageEdge.LEFT : PageEdge.RIGHT;
            places.add(new PagePlace(p, recto, bound, false));
        }
        return new Block(leaves, places, blankBacks);
    }

    private Leaf leaf(int recto, Integer verso) {
        return special.foldOut(recto)
                .map(f -> new Leaf(Leaf.Role.FOLD_OUT, BOND, recto, verso, f.panels(), Length.ZERO))
                .or(() ->
                        special.tab(recto).map(t -> new Leaf(Leaf.Role.TAB, t.stock(), recto, verso, 1, t.extension())))
                .orElse(new Leaf(Leaf.Role.TEXT, BOND, recto, verso));
    }

    private Stack stack() {
        Length least = thickest.minus(Length.ofMm("0.6"));
        return new Stack(
                least,
                thickest.minus(Length.ofMm("0.3")),
                thickest,
                weight,
                List.of(new StackReason.NoWeight("invented")));
    }

    private Plan plan(List<Integer> lifts) {
        int along = edge == BindingEdge.TOP ? 210 : 297;
        // W3_1i-square-0t of the XJDF 2.2 hole catalogue; 34 holes on A4, the first at 8.8 mm
        List<Hole> holes = IntStream.range(0, along == 297 ? 34 : 24)
                .mapToObj(i -> new Hole(
                        i + 1,
                        Length.ofMm(along == 297 ? "8.8" : "7.63")
                                .plus(Length.ofInch(1, 3).times(i))))
                .toList();
        List<Hole> shown = holeless ? List.of() : holes.subList(0, holes.size() - fewer);
        return new Plan(
                new Holes(
                        Method.WIRE,
                        pattern,
                        "3:1",
                        Length.ofInch(1, 3),
                        Length.ofInch(5, 32),
                        Length.ofInch(5, 32),
                        false),
                "generic-W3_1i-square-0t",
                new ElementChoice(element, null, near, open, straddles, measure),
                Length.ofInch(1, 5),
                depth(),
                new HoleRow(
                        Length.ofMm(along),
                        shown,
                        List.of(35, 36),
                        fixed,
                        Length.ofMm("6.8"),
                        Length.ZERO,
                        gap,
                        slant,
                        stretch),
                lifts,
                new Closing(34, element == null ? null : element.size(), closerTakes),
                new Margins(bindingMargin, Length.ofMm(1)),
                new Skew(Length.ofMm("2.7"), Length.ofMm("279.4"), Length.ofMm("1.2"), "common practice, no source"),
                List.of(new Reason.PitchAsked("3:1")));
    }
}
