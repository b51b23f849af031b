package io.bindprep.report.catalogue;

import static io.bindprep.report.catalogue.CatalogueColumn.alone;
import static io.bindprep.report.catalogue.CatalogueColumn.both;
import static io.bindprep.report.catalogue.CatalogueColumn.table;

import io.bindprep.binding.WireThicknesses;
import io.bindprep.binding.WireThicknesses.WireThickness;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Limits;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Patterns;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.Punches;
import io.bindprep.job.Clearances;
import io.bindprep.job.Clearances.Clearance;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.SheetSizes;
import io.bindprep.paper.Stock;
import io.bindprep.paper.StockCatalog;
import io.bindprep.report.json.Json;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A table of the catalogue as people read it.
 *
 * @param columns the last one holds the source, and is wrapped
 * @param names how a row is asked for
 * @param notes what holds for all rows
 */
record CatalogueListing<T>(
        CatalogueSection section,
        List<T> rows,
        List<CatalogueColumn<T>> columns,
        Function<T, String> names,
        List<String> notes) {
    private static final BigDecimal UM_PER_MIL = new BigDecimal("25.4");

    private static final List<CatalogueColumn<Stock>> STOCKS = List.of(
            both("id", Stock::name),
            both("kind", s -> Json.word(s.kind())),
            both("g/m2", CatalogueListing::grammage),
            both("caliper", s -> um(s.caliperUm())),
            both("tolerance", s -> "+-" + um(s.toleranceUm())),
            alone("in mil", s -> mil(s.caliperUm()) + " +-" + mil(s.toleranceUm())),
            both("source", Stock::source));

    private static final List<CatalogueColumn<SheetSize>> SIZES = List.of(
            both("name", SheetSize::name),
            both("size", s -> LengthText.area(s.width(), s.height())),
            alone("in inches", s -> LengthText.inches(s.width()) + " x " + LengthText.inches(s.height())),
            both("tolerance", CatalogueListing::tolerance),
            both("source", SheetSize::source));

    private static final List<CatalogueColumn<Pattern>> PATTERNS = List.of(
            both("id", Pattern::id),
            both("method", p -> Json.word(p.method())),
            both("pitch", p -> p.repeating() ? p.pitchName() : p.spacings().size() + 1 + " holes"),
            alone("spacing", p -> p.spacings().stream().map(LengthText::both).collect(Collectors.joining(", "))),
            both("hole", CatalogueListing::hole),
            alone("hole published", Pattern::holePublished),
            both("centre", p -> p.centre().inMm()),
            alone("centre published", Pattern::centrePublished),
            alone("reference edge", Pattern::referenceEdge),
            alone("count published", Pattern::publishedCount),
            alone("elements", Pattern::elements),
            both("source", Pattern::source));

    private static final List<CatalogueColumn<Elements.Entry>> ELEMENTS = List.of(
            both("group", Elements.Entry::group),
            both("name", e -> e.element().name()),
            both("size", e -> e.element().size().inMm()),
            both("20 lb bond", CatalogueListing::capacity),
            both("source", e -> e.element().source()));

    private static final List<CatalogueColumn<Punch>> PUNCHES = List.of(
            both("id", Punch::id),
            alone("pattern", Punch::pattern),
            both("pins", p -> String.valueOf(p.pins())),
            alone("side guide", CatalogueListing::guide),
            alone("pins that come out", CatalogueListing::pullable),
            table("depths", p -> depths(p, "/", false)),
            alone("depth settings", p -> depths(p, "; ", true)),
            both("lift", p -> p.capacity().inMm()),
            alone("lift by kind", CatalogueListing::limits),
            alone("longest edge", p -> LengthText.both(p.longestEdge())),
            alone("minimum web", p -> LengthText.both(p.minimumWeb())),
            alone(
                    "closer takes",
                    p -> p.elements() == null ? "not known" : p.elements().text()),
            alone(
                    "punching-tolerance",
                    p -> p.punchingTolerance() == null
                            ? "not measured"
                            : p.punchingTolerance().inMm()),
            alone("measured errors", CatalogueListing::measured),
            both("source", Punch::source));

    private static final List<CatalogueColumn<Clearance>> CLEARANCES = List.of(
            both("name", Clearance::name),
            both("over the stack", c -> LengthText.both(c.allowance())),
            both("built-in rule of", c -> String.join(", ", c.methods())),
            both("source", Clearance::source));

    private static final List<CatalogueColumn<WireThickness>> WIRE_THICKNESSES = List.of(
            both("elements", WireThickness::elements),
            both("wire thickness", s -> s.thickness().inMm()),
            both("source", WireThickness::source));

    private static final List<CatalogueColumn<Limits.Limit>> LIMITS = List.of(
            both("name", Limits.Limit::name), both("value", Limits.Limit::value), both("source", Limits.Limit::source));

    static CatalogueListing<?> of(CatalogueSection section, Catalogue c) {
        return switch (section) {
            case STOCKS -> new CatalogueListing<>(section, c.stocks().all(), STOCKS, Stock::name, StockCatalog.notes());
            case SIZES -> new CatalogueListing<>(section, c.sizes().all(), SIZES, SheetSize::name, SheetSizes.notes());
            case PATTERNS ->
                new CatalogueListing<>(section, c.patterns().all(), PATTERNS, Pattern::id, Patterns.notes());
            case ELEMENTS ->
                new CatalogueListing<>(
                        section, c.elements().all(), ELEMENTS, e -> e.element().name(), Elements.notes());
            case PUNCHES -> new CatalogueListing<>(section, c.punches().all(), PUNCHES, Punch::id, Punches.notes());
            case CLEARANCES ->
                new CatalogueListing<>(section, Clearances.all(), CLEARANCES, Clearance::name, Clearances.notes());
            case WIRE_THICKNESSES ->
                new CatalogueListing<>(
                        section,
                        WireThicknesses.all(),
                        WIRE_THICKNESSES,
                        WireThickness::elements,
                        WireThicknesses.notes());
            case LIMITS ->
                new CatalogueListing<>(section, c.limits().all(), LIMITS, Limits.Limit::name, Limits.notes());
        };
    }

    /** Questions for its rows, in their order. */
    List<String> rowNames() {
        return rows.stream().map(names).toList();
    }

    /** The rows of this name, upper or lower case; an element's size may be in several groups. */
    CatalogueListing<T> named(String name) {
        List<T> found = rows.stream()
                .filter(r -> names.apply(r).equalsIgnoreCase(name.strip()))
                .toList();
        return new CatalogueListing<>(section, found, columns, names, notes);
    }

    private static String um(BigDecimal um) {
        return LengthText.plain(um, 1) + " um";
    }

    private static String mil(BigDecimal um) {
        return LengthText.plain(um.divide(UM_PER_MIL, MathContext.DECIMAL64), 2);
    }

    private static String grammage(Stock stock) {
        BigDecimal grammage = stock.grammage();
        return grammage == null ? "unknown" : LengthText.plain(grammage, 1);
    }

    private static String tolerance(SheetSize size) {
        Length width = size.toleranceWidth();
        Length height = size.toleranceHeight();
        return "+-" + (width.equals(height) ? width.inMm() : width.inMm() + " x " + height.inMm());
    }

    private static String hole(Pattern p) {
        return p.round() ? p.holeAlong().inMm() + " round" : LengthText.area(p.holeAlong(), p.holeAcross());
    }

    private static String capacity(Elements.Entry e) {
        if (e.sheets() == null) {
            return "";
        }
        return (e.nearFrom() == null ? "" : e.nearFrom() + "-") + e.sheets() + " sheets";
    }

    private static String guide(Punch p) {
        Length first = p.firstPin();
        return first == null ? "movable" : "fixed, " + LengthText.both(first) + " to pin 1";
    }

    private static String pullable(Punch p) {
        List<Integer> pins = p.pullable();
        if (pins == null) {
            return "all";
        }
        return pins.isEmpty() ? "none" : pins.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String measured(Punch p) {
        MeasuredErrors errors = p.measured();
        return errors == null
                ? "not measured"
                : errors.byName().entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue().value().inMm() + " +-"
                                + e.getValue().tolerance().inMm())
                        .collect(Collectors.joining("; "));
    }

    private static String depths(Punch p, String between, boolean whole) {
        return p.depths().stream()
                        .map(d -> whole
                                ? d.name() + " " + d.centre().inMm() + " (" + d.source() + ")"
                                : LengthText.plain(BigDecimal.valueOf(d.centre().mm()), 2))
                        .collect(Collectors.joining(between))
                + (whole ? "" : " mm");
    }

    private static String limits(Punch p) {
        String text = Arrays.stream(Stock.Kind.values())
                .filter(p.limits()::containsKey)
                .map(k -> Json.word(k) + " " + p.limit(k).thickness().inMm()
                        + (p.limit(k).sheets() == null ? "" : ", " + p.limit(k).sheets() + " sheets"))
                .collect(Collectors.joining("; "));
        return text.isEmpty() ? "as any" : text;
    }
}
