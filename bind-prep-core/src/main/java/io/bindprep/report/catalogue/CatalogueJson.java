package io.bindprep.report.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.bindprep.binding.WireThicknesses.WireThickness;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.catalogue.Limits;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Clearances.Clearance;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.Stock;
import io.bindprep.report.json.Json;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Writes the catalogue as JSON, schema version 1: names never change their meaning, new ones may come. Lengths are
 * millimetres rounded to four decimals.
 */
public final class CatalogueJson {
    private static final int SCHEMA_VERSION = 2;

    private CatalogueJson() {}

    /**
     * The tables asked for, indented, ending in a line feed.
     *
     * @param name the rows of this name alone, upper or lower case; null for every row
     */
    public static String write(Catalogue catalogue, List<CatalogueSection> sections, @Nullable String name) {
        return Json.text(new Tables(
                SCHEMA_VERSION,
                rows(catalogue, sections, CatalogueSection.STOCKS, name, r -> StockRow.of((Stock) r)),
                rows(catalogue, sections, CatalogueSection.SIZES, name, r -> SizeRow.of((SheetSize) r)),
                rows(catalogue, sections, CatalogueSection.PATTERNS, name, r -> PatternRow.of((Pattern) r)),
                rows(catalogue, sections, CatalogueSection.ELEMENTS, name, r -> ElementRow.of((Elements.Entry) r)),
                rows(catalogue, sections, CatalogueSection.PUNCHES, name, r -> PunchRow.of((Punch) r)),
                rows(catalogue, sections, CatalogueSection.CLEARANCES, name, r -> ClearanceRow.of((Clearance) r)),
                rows(
                        catalogue,
                        sections,
                        CatalogueSection.WIRE_THICKNESSES,
                        name,
                        r -> WireThicknessRow.of((WireThickness) r)),
                rows(catalogue, sections, CatalogueSection.LIMITS, name, r -> (Limits.Limit) r)));
    }

    private static <R> @Nullable List<R> rows(
            Catalogue catalogue,
            List<CatalogueSection> sections,
            CatalogueSection section,
            @Nullable String name,
            Function<Object, R> row) {
        if (!sections.contains(section)) {
            return null;
        }
        CatalogueListing<?> all = CatalogueListing.of(section, catalogue);
        CatalogueListing<?> listing = name == null ? all : all.named(name);
        // a name asked for in all tables stands in few
        return listing.rows().isEmpty() && name != null
                ? null
                : listing.rows().stream().map(r -> row.apply(r)).toList();
    }

    /** The tables by name; those not asked for are left out. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    private record Tables(
            int schemaVersion,
            @Nullable List<StockRow> stocks,
            @Nullable List<SizeRow> sizes,
            @Nullable List<PatternRow> patterns,
            @Nullable List<ElementRow> elements,
            @Nullable List<PunchRow> punches,
            @Nullable List<ClearanceRow> clearances,
            @Nullable List<WireThicknessRow> wireThicknesses,
            @Nullable List<Limits.Limit> limits) {}

    private record StockRow(
            String id,
            Stock.Kind kind,
            @Nullable BigDecimal grammageGsm,
            BigDecimal caliperUm,
            BigDecimal toleranceUm,
            String source) {
        static StockRow of(Stock s) {
            BigDecimal grammage = s.grammage();
            return new StockRow(
                    s.name(),
                    s.kind(),
                    grammage == null ? null : Json.rounded(grammage, 3),
                    Json.rounded(s.caliperUm(), 2),
                    Json.rounded(s.toleranceUm(), 2),
                    s.source());
        }
    }

    private record SizeRow(
            String name,
            BigDecimal widthMm,
            BigDecimal heightMm,
            BigDecimal widthToleranceMm,
            BigDecimal heightToleranceMm,
            String source) {
        static SizeRow of(SheetSize s) {
            return new SizeRow(
                    s.name(),
                    Json.mm(s.width()),
                    Json.mm(s.height()),
                    Json.mm(s.toleranceWidth()),
                    Json.mm(s.toleranceHeight()),
                    s.source());
        }
    }

    private record PatternRow(
            String id,
            String method,
            String pitchName,
            boolean repeats,
            List<BigDecimal> spacingsMm,
            boolean round,
            BigDecimal holeAlongMm,
            BigDecimal holeAcrossMm,
            String holePublished,
            BigDecimal centreMm,
            String centrePublished,
            String referenceEdge,
            String countPublished,
            String elements,
            String source) {
        static PatternRow of(Pattern p) {
            return new PatternRow(
                    p.id(),
                    Json.word(p.method()),
                    p.pitchName(),
                    p.repeating(),
                    p.spacings().stream().map(Json::mm).toList(),
                    p.round(),
                    Json.mm(p.holeAlong()),
                    Json.mm(p.holeAcross()),
                    p.holePublished(),
                    Json.mm(p.centre()),
                    p.centrePublished(),
                    p.referenceEdge(),
                    p.publishedCount(),
                    p.elements(),
                    p.source());
        }
    }

    private record ElementRow(
            String group,
            String name,
            BigDecimal sizeMm,
            @Nullable Integer bond20Sheets,
            @Nullable Integer nearLimitFromSheets,
            String source) {
        static ElementRow of(Elements.Entry e) {
            return new ElementRow(
                    e.group(),
                    e.element().name(),
                    Json.mm(e.element().size()),
                    e.sheets(),
                    e.nearFrom(),
                    e.element().source());
        }
    }

    private record DepthRow(String name, BigDecimal centreMm, String source) {
        static DepthRow of(DepthSetting d) {
            return new DepthRow(d.name(), Json.mm(d.centre()), d.source());
        }
    }

    private record LiftRow(BigDecimal thicknessMm, @Nullable Integer sheets) {
        static LiftRow of(LiftLimit l) {
            return new LiftRow(Json.mm(l.thickness()), l.sheets());
        }
    }

    private record SizesRow(BigDecimal smallestMm, BigDecimal largestMm, List<BigDecimal> onlyMm) {
        static @Nullable SizesRow of(@Nullable ElementSizes s) {
            return s == null
                    ? null
                    : new SizesRow(
                            Json.mm(s.smallest()),
                            Json.mm(s.largest()),
                            s.listed().stream().map(Json::mm).toList());
        }
    }

    private record ErrorRow(BigDecimal valueMm, BigDecimal toleranceMm) {
        static @Nullable Map<String, ErrorRow> of(@Nullable MeasuredErrors errors) {
            if (errors == null) {
                return null;
            }
            Map<String, ErrorRow> rows = new LinkedHashMap<>();
            errors.byName()
                    .forEach((name, error) ->
                            rows.put(name, new ErrorRow(Json.mm(error.value()), Json.mm(error.tolerance()))));
            return rows;
        }
    }

    private record PunchRow(
            String id,
            String pattern,
            int pins,
            @Nullable BigDecimal firstPinMm,
            @Nullable List<Integer> pullablePins,
            List<DepthRow> depths,
            BigDecimal liftMm,
            Map<String, LiftRow> liftByKind,
            BigDecimal longestEdgeMm,
            BigDecimal minimumWebMm,
            @Nullable SizesRow elements,
            @Nullable BigDecimal punchingToleranceMm,
            @Nullable Map<String, ErrorRow> measured,
            String source) {
        static PunchRow of(Punch p) {
            Map<String, LiftRow> lifts = new LinkedHashMap<>();
            for (Stock.Kind kind : Stock.Kind.values()) {
                lifts.put(Json.word(kind), LiftRow.of(p.limit(kind)));
            }
            return new PunchRow(
                    p.id(),
                    p.pattern(),
                    p.pins(),
                    Json.mmOrNull(p.firstPin()),
                    p.pullable(),
                    p.depths().stream().map(DepthRow::of).toList(),
                    Json.mm(p.capacity()),
                    lifts,
                    Json.mm(p.longestEdge()),
                    Json.mm(p.minimumWeb()),
                    SizesRow.of(p.elements()),
                    Json.mmOrNull(p.punchingTolerance()),
                    ErrorRow.of(p.measured()),
                    p.source());
        }
    }

    private record ClearanceRow(String name, BigDecimal allowanceMm, List<String> builtInRuleOf, String source) {
        static ClearanceRow of(Clearance c) {
            return new ClearanceRow(c.name(), Json.mm(c.allowance()), c.methods(), c.source());
        }
    }

    private record WireThicknessRow(String elements, BigDecimal thicknessMm, String source) {
        static WireThicknessRow of(WireThickness s) {
            return new WireThicknessRow(s.elements(), Json.mm(s.thickness()), s.source());
        }
    }
}
