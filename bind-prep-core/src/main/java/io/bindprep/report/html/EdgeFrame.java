package io.bindprep.report.html;

import io.bindprep.check.PageReport;
import io.bindprep.page.PageEdge;
import io.bindprep.picture.CloseUpWindow;

/**
 * From the binding-edge frame (distance from the binding edge, distance along it) to the page as the reader sees it, x to the
 * right and y down, millimetres.
 */
record EdgeFrame(PageEdge edge, double width, double height) {
    /** A rectangle in the reader's frame. */
    record Rect(double x, double y, double width, double height) {}

    static EdgeFrame of(PageReport page) {
        return new EdgeFrame(
                page.place().bindingEdge(),
                page.facts().trimWidth().mm(),
                page.facts().trimHeight().mm());
    }

    /** Length of the binding edge. */
    double length() {
        return edge.upright() ? height : width;
    }

    /** Extent of the page away from the binding edge. */
    double depth() {
        return edge.upright() ? width : height;
    }

    Rect rect(double near, double far, double start, double end) {
        return switch (edge) {
            case LEFT -> new Rect(near, start, far - near, end - start);
            case RIGHT -> new Rect(width - far, start, far - near, end - start);
            case TOP -> new Rect(start, near, end - start, far - near);
            case BOTTOM -> new Rect(start, height - far, end - start, far - near);
        };
    }

    Rect strip(CloseUpWindow window, double depthMm) {
        return rect(0, depthMm, window.startMm(), window.endMm());
    }

    /** Origin of lengths along the edge. */
    String origin() {
        return edge.upright() ? "the head" : "the left edge";
    }

    String name() {
        return Texts.lower(edge);
    }
}
