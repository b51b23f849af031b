package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.binding.Gap;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.PackMeasure;
import io.bindprep.binding.Plan;
import io.bindprep.binding.Skew;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Method;
import io.bindprep.report.words.Sentences;
import io.bindprep.wording.Terms;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The plan as JSON. */
record JsonPlan(
        @JsonPropertyDescription("what the book is bound with")
        Method method,

        @JsonPropertyDescription("id of the hole pattern, that of XJDF where it has it")
        String pattern,

        @JsonPropertyDescription("the trade's name of the pitch, else the pattern's id")
        String pitchName,

        @JsonPropertyDescription("centre to centre; the first spacing where there are several")
        BigDecimal pitchMm,

        @JsonPropertyDescription("the punch it runs on") String punch,

        @JsonPropertyDescription("nominal inner diameter of the element; null where none takes the stack") @Nullable
        BigDecimal elementMm,

        @JsonPropertyDescription("its size as the trade writes it; null where none takes the stack") @Nullable
        String elementName,

        @JsonPropertyDescription("binding edge to hole centre")
        BigDecimal edgeDistanceMm,

        @JsonPropertyDescription("the setting of the depth stop that gives it")
        JsonDepth depth,

        @JsonPropertyDescription("the hole along the binding edge and away from it")
        JsonPair holeMm,

        @JsonPropertyDescription("the hole's shape") Shape holeShape,

        @JsonPropertyDescription("how many holes") int holes,

        @JsonPropertyDescription(
                "centre of the first hole from the head, or from the left where bound at top; null without" + " holes")
        @Nullable
        BigDecimal firstHoleMm,

        @JsonPropertyDescription("pins to take out, numbered from the side guide, from 1")
        List<Integer> pulledPins,

        @JsonPropertyDescription("pins that would cut a half hole and cannot be taken out")
        List<Integer> fixedPins,

        @JsonPropertyDescription("minimum paper between a hole and the end of the leaf")
        BigDecimal minimumWebMm,

        @JsonPropertyDescription("how far the holes of a leaf fed turned over lie off the others")
        BigDecimal turnedOffsetMm,

        @JsonPropertyDescription("whether every leaf must go in with the same end to the side guide")
        boolean sameEndToGuide,

        @JsonPropertyDescription(
                "how much too far from the side guide holes come where it is set by its own scale, as measured; 0 where that"
                        + " was not measured or the guide is fixed")
        BigDecimal sideGuideOffMm,

        @JsonPropertyDescription("the stretch kept free for a hanger; null for none") @Nullable
        HangerGap hangerGap,

        @JsonPropertyDescription("how skewed a sheet may sit in the punch; null where that is not known") @Nullable
        Slant skew,

        @JsonPropertyDescription("leaves in each lift of one copy, in order")
        List<Integer> lifts,

        @JsonPropertyDescription("loops of the element to cut; 0 where it has none")
        int loops,

        @JsonPropertyDescription("loops of each piece of the element: two pieces beside a hanger's gap")
        List<Integer> pieces,

        @JsonPropertyDescription("what the closer is set to; null where nothing is closed") @Nullable
        BigDecimal closerMm,

        @JsonPropertyDescription("minimum distance of print from the binding edge")
        BigDecimal bindingMarginMm,

        @JsonPropertyDescription("how far a hole may lie off its place, either way")
        BigDecimal punchingToleranceMm,

        @JsonPropertyDescription("binding edge to the far side of the holes, " + Terms.PUNCHING_TOLERANCE + " included")
        BigDecimal holeZoneMm,

        @JsonPropertyDescription("elements that the likely range of the stack lies between, smaller first")
        List<String> straddles,

        @JsonPropertyDescription(
                "what to measure where the range does not settle the element; null where it is settled")
        @Nullable
        Pack measure,

        @JsonPropertyDescription("each decision with its numbers and source")
        List<String> because) {

    /** Of a hole. */
    enum Shape {
        ROUND,
        RECTANGULAR
    }

    /** A hanger's gap. */
    record HangerGap(
            @JsonPropertyDescription("where it begins and ends along the binding edge")
            JsonPair alongMm,

            @JsonPropertyDescription("pins taken out for it")
            List<Integer> pulledPins,

            @JsonPropertyDescription("pins over it that cannot be taken out")
            List<Integer> fixedPins,

            @JsonPropertyDescription("the thumb cut along the binding edge and away from it; null for none") @Nullable
            JsonPair thumbCutMm) {
        static @Nullable HangerGap of(@Nullable Gap gap) {
            if (gap == null) {
                return null;
            }
            Gap.ThumbCut cut = gap.thumbCut();
            return new HangerGap(
                    JsonPair.of(gap.start().mm(), gap.end().mm()),
                    gap.pulledPins(),
                    gap.fixedPins(),
                    cut == null
                            ? null
                            : JsonPair.of(cut.width().mm(), cut.depth().mm()));
        }
    }

    /** Skew that a sheet may have. */
    record Slant(
            @JsonPropertyDescription("what the hole row may slant, first centre to last")
            BigDecimal riseMm,

            @JsonPropertyDescription("first centre to last centre")
            BigDecimal overMm,

            @JsonPropertyDescription("the same as an angle") BigDecimal degrees,

            @JsonPropertyDescription("wire thickness that passes the holes")
            BigDecimal wireThicknessMm,

            @JsonPropertyDescription("where that comes from")
            String wireThicknessSource) {
        static @Nullable Slant of(@Nullable Skew skew) {
            return skew == null
                    ? null
                    : new Slant(
                            Json.mm(skew.rise()),
                            Json.mm(skew.over()),
                            Json.rounded(skew.degrees()),
                            Json.mm(skew.wireThickness()),
                            skew.wireThicknessSource());
        }
    }

    /** A pack to measure. */
    record Pack(
            @JsonPropertyDescription("the thickest stack that the smaller element takes")
            BigDecimal stackAtMostMm,

            @JsonPropertyDescription("the stock of most leaves")
            String stock,

            @JsonPropertyDescription("how many sheets of it to measure together")
            int sheets,

            @JsonPropertyDescription("the thickest such pack with which the smaller element does; below 0 with none")
            BigDecimal packAtMostMm) {
        static @Nullable Pack of(@Nullable PackMeasure measure) {
            return measure == null
                    ? null
                    : new Pack(
                            Json.mm(measure.stackAtMost()),
                            measure.stock(),
                            measure.sheets(),
                            Json.mm(measure.packAtMost()));
        }
    }

    static JsonPlan of(Plan plan) {
        Element element = plan.element();
        HoleRow row = plan.row();
        return new JsonPlan(
                plan.method(),
                plan.pattern(),
                plan.pitchName(),
                Json.mm(plan.pitch()),
                plan.punch(),
                element == null ? null : Json.mm(element.size()),
                element == null ? null : element.name(),
                Json.mm(plan.edgeDistance()),
                JsonDepth.of(plan.depth()),
                JsonPair.of(plan.holeAlong().mm(), plan.holeAcross().mm()),
                plan.round() ? Shape.ROUND : Shape.RECTANGULAR,
                row.holes().size(),
                row.holes().isEmpty() ? null : Json.mm(row.holes().get(0).centre()),
                row.pulledPins(),
                row.fixedPins(),
                Json.mm(row.minimumWeb()),
                Json.mm(row.offset()),
                plan.sameEndToGuide(),
                Json.mm(row.guideOff()),
                HangerGap.of(row.gap()),
                Slant.of(plan.skew()),
                plan.lifts(),
                plan.loops(),
                plan.pieces(),
                Json.mmOrNull(plan.closer()),
                Json.mm(plan.bindingMargin()),
                Json.mm(plan.punchingTolerance()),
                Json.mm(plan.holeZone()),
                plan.chosen().straddles().stream().map(Element::name).toList(),
                Pack.of(plan.chosen().measure()),
                plan.because().stream().map(Sentences::of).toList());
    }
}
