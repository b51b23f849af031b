package io.bindprep.job;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Everything a job asks for, with built-in values filled in.
 *
 * @param copies how many books
 * @param trim expected page size; null to take the prevailing one
 * @param frontCover null for none
 * @param backCover null for none
 * @param special leaves and pages that are not like the others
 * @param pitch "3:1", "2:1" or a pattern's id; null to let the planner choose
 * @param punch the name of a punch of the catalogue; null for the pattern's generic one
 * @param depth a setting of the punch's depth stop, by name or by the distance it gives; null to let the planner choose
 * @param bindingMargin minimum distance of print from the binding edge; null for the pattern's own
 * @param punchingTolerance how far a hole may lie off its place, either way; null for what the punch was measured to, else 1 mm
 * @param clearance allowance of the element over the thickest likely stack; null to go by capacities in sheets, and by the
 *     method's usual allowance where none is known
 * @param minimumWeb least paper between a hole and the end of the sheet; null for the punch's own
 * @param hanger the gap in the row that a hanger needs; null for none
 * @param supply what a run is supplied with beyond its leaves
 * @param accepted findings that may pass
 * @param printLimits what a page needs apart from the binding
 * @param order whose job it is
 * @param units units that people are shown; null to go by the size of the paper
 * @param catalogue what names stand for: our tables with the shop's own rows
 */
public record Job(
        int copies,
        Sides sides,
        BindingEdge bindingEdge,
        @Nullable Trim trim,
        Stock stock,
        @Nullable Cover frontCover,
        @Nullable Cover backCover,
        List<Insert> inserts,
        SpecialLeaves special,
        Method binding,
        @Nullable String pitch,
        @Nullable String punch,
        @Nullable String depth,
        @Nullable Length bindingMargin,
        @Nullable Length punchingTolerance,
        @Nullable Length clearance,
        @Nullable Length minimumWeb,
        @Nullable Hanger hanger,
        Supply supply,
        FailOn failOn,
        List<Acceptance> accepted,
        PrintLimits printLimits,
        Order order,
        @Nullable Units units,
        Catalogue catalogue) {
    public Job {
        inserts = List.copyOf(inserts);
        accepted = List.copyOf(accepted);
    }

    /** The allowance of an element whose capacity is not known: the job's own, else the method's usual one. */
    public Length allowance() {
        return clearance != null ? clearance : Clearances.builtIn(binding).allowance();
    }

    /** Returns true if elements are chosen by size and the thickest likely stack, as a clearance asks; else by the nominal stack. */
    public boolean bySize() {
        return clearance != null;
    }

    /** Units of shown lengths: those that the job asks for, else those of the paper. */
    public Measures measures(Length width, Length height) {
        if (units != null) {
            return new Measures(units);
        }
        SheetSize known = catalogue.sizes().nearest(width, height);
        return known.matches(width, height)
                ? Measures.ofPaper(known.width(), known.height())
                : Measures.ofPaper(width, height);
    }

    /** This job with a pitch, or a pattern by its id. */
    public Job withPitch(String name) {
        return with(stock, sides, frontCover, backCover, inserts, special, name);
    }

    /** This job on another stock. */
    public Job withStock(Stock other) {
        return with(other, sides, frontCover, backCover, inserts, special, pitch);
    }

    /** The same job with its pages laid otherwise. */
    public Job laid(
            Sides sides, @Nullable Cover front, @Nullable Cover back, List<Insert> inserts, SpecialLeaves special) {
        return with(stock, sides, front, back, inserts, special, pitch);
    }

    /**
     * The job of a document whose pages have moved along.
     *
     * @param ranges where a range of pages is now; empty where it is gone
     */
    public Job renumbered(Sides sides, Function<PageRange, Optional<PageRange>> ranges) {
        return laid(
                sides,
                renumbered(frontCover, ranges),
                renumbered(backCover, ranges),
                inserts.stream()
                        .flatMap(i -> ranges.apply(i.pages()).map(r -> new Insert(r, i.stock())).stream())
                        .toList(),
                special.renumbered(ranges));
    }

    private static @Nullable Cover renumbered(@Nullable Cover cover, Function<PageRange, Optional<PageRange>> ranges) {
        PageRange printed = cover == null ? null : cover.printed();
        return cover == null || printed == null
                ? cover
                : new Cover(cover.stock(), ranges.apply(printed).orElse(null));
    }

    private Job with(
            Stock stock,
            Sides sides,
            @Nullable Cover front,
            @Nullable Cover back,
            List<Insert> inserts,
            SpecialLeaves special,
            @Nullable String pitch) {
        return new Job(
                copies,
                sides,
                bindingEdge,
                trim,
                stock,
                front,
                back,
                inserts,
                special,
                binding,
                pitch,
                punch,
                depth,
                bindingMargin,
                punchingTolerance,
                clearance,
                minimumWeb,
                hanger,
                supply,
                failOn,
                accepted,
                printLimits,
                order,
                units,
                catalogue);
    }
}
