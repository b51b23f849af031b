package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.catalogue.Method;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Cover;
import io.bindprep.job.FailOn;
import io.bindprep.job.Hanger;
import io.bindprep.job.Job;
import io.bindprep.job.Order;
import io.bindprep.job.Overs;
import io.bindprep.job.PageRange;
import io.bindprep.job.PressSheet;
import io.bindprep.job.Sides;
import io.bindprep.job.Trim;
import io.bindprep.paper.Stock;
import io.bindprep.wording.Units;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The job as it was understood, as JSON. */
record JsonJob(
        @JsonPropertyDescription("how many books") int copies,

        @JsonPropertyDescription("how leaves are printed") Sides sides,

        @JsonPropertyDescription("the edge of page 1 that is bound")
        BindingEdge bindingEdge,

        @JsonPropertyDescription("the page size expected; null for that of most pages") @Nullable
        Size trim,

        @JsonPropertyDescription("paper of the block") Paper stock,

        @JsonPropertyDescription("front and back cover") Covers covers,

        @JsonPropertyDescription("pages on other stock") List<Insert> inserts,

        @JsonPropertyDescription("what the book is bound with")
        Method binding,

        @JsonPropertyDescription("the pitch or pattern asked for; null to let it be chosen") @Nullable
        String pitch,

        @JsonPropertyDescription("the punch asked for; null for the pattern's own") @Nullable
        String punch,

        @JsonPropertyDescription("the setting of the depth stop asked for; null to let it be chosen") @Nullable
        String depth,

        @JsonPropertyDescription("minimum distance of print from the binding edge; null for the pattern's own")
        @Nullable
        BigDecimal bindingMarginMm,

        @JsonPropertyDescription("how far a hole may lie off its place, either way; null for the punch's own") @Nullable
        BigDecimal punchingToleranceMm,

        @JsonPropertyDescription(
                "how much wider the element is than the thickest likely stack; null to go by capacities in sheets")
        @Nullable
        BigDecimal clearanceMm,

        @JsonPropertyDescription("minimum paper between a hole and the end of the leaf; null for the punch's own")
        @Nullable
        BigDecimal minimumWebMm,

        @JsonPropertyDescription("the gap that a hanger needs; null for none") @Nullable
        HangerGap hanger,

        @JsonPropertyDescription("spare sheets") Spare overs,

        @JsonPropertyDescription("the sheet that leaves are cut from; null for sheets of the leaf's size") @Nullable
        Large pressSheet,

        @JsonPropertyDescription("leaves and pages that are not like the others")
        JsonSpecial special,

        @JsonPropertyDescription("dots an inch that a picture has at least as printed")
        int imagePpi,

        @JsonPropertyDescription("how far art that reaches the trim goes beyond it; 0 where leaves are not cut")
        BigDecimal bleedMm,

        @JsonPropertyDescription("minimum severity that fails the job")
        FailOn failOn,

        @JsonPropertyDescription("units that people are shown; null to go by the size of the paper") @Nullable
        Units units,

        @JsonPropertyDescription("whose job it is") JsonOrder order) {

    /** Whose job it is, in the shop's own words. */
    record JsonOrder(
            @JsonPropertyDescription("the shop's number of the job; null for none") @Nullable
            String number,

            @JsonPropertyDescription("who ordered it; null where nobody says") @Nullable
            String customer,

            @JsonPropertyDescription("when it must be ready, in free words; null where nobody says") @Nullable
            String due) {
        static JsonOrder of(Order order) {
            return new JsonOrder(order.number(), order.customer(), order.due());
        }
    }

    /** Spare sheets. */
    record Spare(
            @JsonPropertyDescription("of the sheets that are needed")
            BigDecimal percent,

            @JsonPropertyDescription("at least so many of each stock and use")
            int minimumSheets,

            @JsonPropertyDescription("who asks for them") String source) {
        static Spare of(Overs overs) {
            return new Spare(Json.rounded(overs.percent(), 3), overs.least(), overs.source());
        }
    }

    /** A press sheet. */
    record Large(
            @JsonPropertyDescription("as it was given") String name,

            @JsonPropertyDescription("its two sides") JsonPair sheetMm,

            @JsonPropertyDescription("printed beyond the trim of each leaf, all round")
            BigDecimal bleedMm,

            @JsonPropertyDescription("blank along the long edge")
            BigDecimal gripperMm) {
        static @Nullable Large of(@Nullable PressSheet sheet) {
            return sheet == null
                    ? null
                    : new Large(
                            sheet.name(),
                            JsonPair.of(sheet.width().mm(), sheet.height().mm()),
                            Json.mm(sheet.bleed()),
                            Json.mm(sheet.gripper()));
        }
    }

    /** A page size. */
    record Size(
            @JsonPropertyDescription("as it was given") String name,

            @JsonPropertyDescription("width as the reader sees it")
            BigDecimal widthMm,

            @JsonPropertyDescription("height as the reader sees it")
            BigDecimal heightMm) {
        static @Nullable Size of(@Nullable Trim trim) {
            return trim == null ? null : new Size(trim.name(), Json.mm(trim.width()), Json.mm(trim.height()));
        }
    }

    /** A hanger's gap. */
    record HangerGap(
            @JsonPropertyDescription("the stretch without holes in the middle of the binding edge")
            BigDecimal gapMm,

            @JsonPropertyDescription("the thumb cut along the binding edge and away from it; null for none") @Nullable
            JsonPair thumbCutMm) {
        static @Nullable HangerGap of(@Nullable Hanger hanger) {
            if (hanger == null) {
                return null;
            }
            Hanger.ThumbCut cut = hanger.thumbCut();
            return new HangerGap(
                    Json.mm(hanger.gap()),
                    cut == null
                            ? null
                            : JsonPair.of(cut.width().mm(), cut.depth().mm()));
        }
    }

    /** A stock. */
    record Paper(
            @JsonPropertyDescription("its id in the catalogue, or how the job describes it")
            String name,

            @JsonPropertyDescription("grams a square metre; null where only the caliper is known") @Nullable
            BigDecimal grammageGsm,

            @JsonPropertyDescription("thickness of one sheet")
            BigDecimal caliperUm,

            @JsonPropertyDescription("how far one lot may lie off, either way")
            BigDecimal toleranceUm,

            @JsonPropertyDescription("where the numbers come from")
            String source) {
        static Paper of(Stock stock) {
            BigDecimal grammage = stock.grammage();
            return new Paper(
                    stock.name(),
                    grammage == null ? null : Json.rounded(grammage, 3),
                    Json.rounded(stock.caliperUm(), 2),
                    Json.rounded(stock.toleranceUm(), 2),
                    stock.source());
        }
    }

    /** Both covers. */
    record Covers(
            @JsonPropertyDescription("null for none") @Nullable
            OneCover front,

            @JsonPropertyDescription("null for none") @Nullable
            OneCover back) {}

    /** A cover. */
    record OneCover(
            @JsonPropertyDescription("the pages it carries, as a range; null where it stays blank") @Nullable
            String pages,

            @JsonPropertyDescription("what it is made of") Paper stock) {
        static @Nullable OneCover of(@Nullable Cover cover) {
            if (cover == null) {
                return null;
            }
            PageRange printed = cover.printed();
            return new OneCover(printed == null ? null : range(printed), Paper.of(cover.stock()));
        }
    }

    /** Pages on their own stock. */
    record Insert(
            @JsonPropertyDescription("as a range") String pages,

            @JsonPropertyDescription("what they are printed on")
            Paper stock) {}

    static JsonJob of(Job job) {
        return new JsonJob(
                job.copies(),
                job.sides(),
                job.bindingEdge(),
                Size.of(job.trim()),
                Paper.of(job.stock()),
                new Covers(OneCover.of(job.frontCover()), OneCover.of(job.backCover())),
                job.inserts().stream()
                        .map(i -> new Insert(range(i.pages()), Paper.of(i.stock())))
                        .toList(),
                job.binding(),
                job.pitch(),
                job.punch(),
                job.depth(),
                Json.mmOrNull(job.bindingMargin()),
                Json.mmOrNull(job.punchingTolerance()),
                job.clearance() == null ? null : Json.mm(job.clearance()),
                Json.mmOrNull(job.minimumWeb()),
                HangerGap.of(job.hanger()),
                Spare.of(job.supply().overs()),
                Large.of(job.supply().pressSheet()),
                JsonSpecial.of(job.special()),
                job.printLimits().imagePpi(),
                Json.mm(job.printLimits().bleed()),
                job.failOn(),
                job.units(),
                JsonOrder.of(job.order()));
    }

    static String range(PageRange range) {
        return range.first() == range.last() ? Integer.toString(range.first()) : range.first() + "-" + range.last();
    }
}
