package io.bindprep.check;

import io.bindprep.job.Trim;
import io.bindprep.page.PageFacts;
import io.bindprep.page.PrevailingSize;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.SheetSizes;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.util.List;

/** The size that pages should have and how far each side may lie off. */
record ExpectedSize(String name, Length width, Length height, Length toleranceWidth, Length toleranceHeight) {
    /** The size the job names. */
    static ExpectedSize of(SheetSizes sizes, Trim trim) {
        try {
            SheetSize known = sizes.parse("trim", trim.name());
            return new ExpectedSize(
                    trim.name(), trim.width(), trim.height(), known.toleranceWidth(), known.toleranceHeight());
        } catch (SettingException e) {
            // a size of the caller's own making: the tolerance goes by its sides
            return bySides(sizes, trim.name(), trim.width(), trim.height());
        }
    }

    /** The size most pages have, the one that the holes are planned for. */
    static ExpectedSize prevailing(SheetSizes sizes, List<PageFacts> pages) {
        PrevailingSize size = PrevailingSize.of(pages);
        return bySides(sizes, knownName(sizes, size.width(), size.height()), size.width(), size.height());
    }

    // a known size brings its own tolerance, any other goes by its sides as ISO 216:2007, 7.1 has them
    private static ExpectedSize bySides(SheetSizes sizes, String name, Length width, Length height) {
        SheetSize known = sizes.nearest(width, height);
        return known.matches(width, height)
                ? new ExpectedSize(name, width, height, known.toleranceWidth(), known.toleranceHeight())
                : new ExpectedSize(name, width, height, iso(width), iso(height));
    }

    private static Length iso(Length side) {
        if (side.compareTo(Length.ofMm(150)) <= 0) {
            return Length.ofMm("1.5");
        }
        return side.compareTo(Length.ofMm(600)) <= 0 ? Length.ofMm(2) : Length.ofMm(3);
    }

    /** Returns true if a page has this size. */
    boolean fits(Length w, Length h) {
        return within(w, width, toleranceWidth) && within(h, height, toleranceHeight);
    }

    /** Returns true if a page's binding edge has the length that this size has there. */
    boolean fitsAlong(PageFacts p, boolean boundAtTop) {
        return boundAtTop
                ? within(p.trimWidth(), width, toleranceWidth)
                : within(p.trimHeight(), height, toleranceHeight);
    }

    /** Returns true if a page has this size, standing out at the edge opposite the bound one. */
    boolean fitsWith(PageFacts p, Length extension, boolean boundAtTop) {
        return boundAtTop
                ? fits(p.trimWidth(), p.trimHeight().minus(extension))
                : fits(p.trimWidth().minus(extension), p.trimHeight());
    }

    private static boolean within(Length side, Length expected, Length tolerance) {
        return side.minus(expected).abs().compareTo(tolerance) <= 0;
    }

    /** The side that lies off most, in millimetres either way. */
    double deviationMm(PageFacts p) {
        return Math.max(
                p.trimWidth().minus(width).abs().mm(),
                p.trimHeight().minus(height).abs().mm());
    }

    /** The tolerance of the side that lies off most. */
    double toleranceMm(PageFacts p) {
        Length w = p.trimWidth().minus(width).abs();
        Length h = p.trimHeight().minus(height).abs();
        return (w.compareTo(h) >= 0 ? toleranceWidth : toleranceHeight).mm();
    }

    /** "A4, 210 x 297 mm". */
    String text(Measures measures) {
        return text(measures, name, width, height);
    }

    /** A page's own size, with its name where it has one: "letter, 215.9 x 279.4 mm". */
    static String text(Measures measures, SheetSizes sizes, PageFacts p) {
        return text(measures, knownName(sizes, p.trimWidth(), p.trimHeight()), p.trimWidth(), p.trimHeight());
    }

    private static String text(Measures measures, String name, Length width, Length height) {
        String size = measures.area(width, height);
        return name.isEmpty() || name.equals(size) ? size : name + ", " + size;
    }

    private static String knownName(SheetSizes sizes, Length width, Length height) {
        SheetSize known = sizes.nearest(width, height);
        return known.matches(width, height) ? known.name() : "";
    }
}
