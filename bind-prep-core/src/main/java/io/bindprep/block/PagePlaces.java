package io.bindprep.block;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Sides;
import io.bindprep.job.SpecialLeaves.Rotated;
import io.bindprep.page.PageEdge;

/** Finds which edge of a page is bound, by turning leaves in the mind. */
final class PagePlaces {
    private PagePlaces() {}

    static PagePlace place(Job job, int page, boolean recto) {
        PagePlace upright = upright(job, page, recto);
        Rotated rotated = job.special().rotated(page).orElse(null);
        return rotated == null ? upright : turn(upright, rotated.headLeft());
    }

    private static PagePlace upright(Job job, int page, boolean recto) {
        boolean headToFoot = job.sides() == Sides.TWO_HEAD_TO_FOOT;
        PageEdge edge = switch (job.bindingEdge()) {
            case LEFT -> PageEdge.LEFT;
            case RIGHT -> PageEdge.RIGHT;
            case TOP -> PageEdge.TOP;
        };
        if (recto) {
            return new PagePlace(page, true, edge, false);
        }
        boolean atTop = job.bindingEdge() == BindingEdge.TOP;
        if (headToFoot) {
            // bound at a side, a head-to-foot back has its head at the recto's foot and the same edge bound: it runs
            // against bound at top, it is read after tumbling, its foot in the binding, left behind left: it runs along
            return atTop ? new PagePlace(page, false, PageEdge.BOTTOM, false) : new PagePlace(page, false, edge, true);
        }
        // bound at a side, the leaf turns like a book's: heads stay up, the other edge is bound, it runs along
        // bound at top and head to head, the leaf seen from behind has left and right changed over: it runs against
        return atTop
                ? new PagePlace(page, false, PageEdge.TOP, true)
                : new PagePlace(page, false, edge == PageEdge.LEFT ? PageEdge.RIGHT : PageEdge.LEFT, false);
    }

    /**
     * The place of a page that lies rotated 90 degrees where an upright one would stand.
     *
     * <p>Head left: the page's top is at the place's left, its left at the foot, so that along a side it runs from foot to
     * head, along top or foot from left to right. Head right the other way round in both.
     */
    private static PagePlace turn(PagePlace upright, boolean headLeft) {
        PageEdge bound = switch (upright.bindingEdge()) {
            case LEFT -> headLeft ? PageEdge.TOP : PageEdge.BOTTOM;
            case RIGHT -> headLeft ? PageEdge.BOTTOM : PageEdge.TOP;
            case TOP -> headLeft ? PageEdge.RIGHT : PageEdge.LEFT;
            case BOTTOM -> headLeft ? PageEdge.LEFT : PageEdge.RIGHT;
        };
        boolean flips = upright.bindingEdge().upright() == headLeft;
        return new PagePlace(upright.page(), upright.recto(), bound, upright.mirrored() != flips);
    }
}
