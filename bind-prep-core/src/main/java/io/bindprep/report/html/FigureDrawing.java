package io.bindprep.report.html;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.check.PageReport;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Verdict;
import io.bindprep.picture.CloseUp;
import io.bindprep.picture.CloseUpWindow;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.Picture;
import io.bindprep.unit.Length;
import io.bindprep.wording.Counted;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.util.ArrayList;
import java.util.List;

/** Draws one page's holes, zones and marks over its pictures. */
final class FigureDrawing {
    /** A number's disc, and how far it keeps from the end of a close-up, millimetres. */
    private static final double TAG = 1.5;

    /** A rectangle without any width is not drawn (SVG 2, 10.2). */
    private static final double HAIR = 0.01;

    /** Between a mark and its outline, so that the outline does not cover it. */
    private static final double AIR = 0.25;

    private final Plan plan;
    private final PageReport page;
    private final EdgeFrame frame;
    private final Measures measures;

    FigureDrawing(Plan plan, PageReport page, Measures measures) {
        this.measures = measures;
        this.plan = plan;
        this.page = page;
        this.frame = EdgeFrame.of(page);
    }

    /** The whole page, its marks, and where the close-ups are. */
    Drawing whole(Picture picture, PagePicture of) {
        List<Drawing.Shape> shapes = new ArrayList<>(zones(new CloseUpWindow(0, frame.length())));
        for (Hit hit : hits()) {
            shapes.add(mark(hit));
        }
        List<Drawing.Tag> tags = new ArrayList<>();
        double size = Math.max(frame.width(), frame.height()) / 55;
        for (int i = 0; i < of.closeUps().size(); i++) {
            EdgeFrame.Rect r = frame.strip(of.closeUps().get(i).window(), of.depthMm());
            shapes.add(Drawing.Shape.of("window", false, r));
            // beside the frame, on the side away from the binding edge
            CloseUpWindow window = of.closeUps().get(i).window();
            EdgeFrame.Rect beside = frame.rect(
                    of.depthMm() + size, of.depthMm() + size, window.startMm() + size, window.startMm() + size);
            tags.add(tag(letter(i), beside));
        }
        EdgeFrame.Rect all = frame.rect(-of.beyondMm(), frame.depth(), 0, frame.length());
        if (of.beyondMm() > 0) {
            shapes.add(Drawing.Shape.of("trim", false, frame.rect(0, frame.depth(), 0, frame.length())));
        }
        return new Drawing(
                picture,
                box(all, 0.3),
                Drawing.Shape.of("paper", false, all),
                shapes,
                tags,
                Texts.number(size / TAG),
                wholeAlt(of));
    }

    /** An enlarged piece of the binding edge; of marks that lie close together only the first shows its number. */
    Drawing closeUp(CloseUp closeUp, double depthMm, int index) {
        CloseUpWindow window = closeUp.window();
        List<Drawing.Shape> shapes = new ArrayList<>(zones(window));
        List<Drawing.Tag> tags = new ArrayList<>();
        List<EdgeFrame.Rect> taken = new ArrayList<>();
        int number = 0;
        for (Hit hit : hits()) {
            number++;
            Mark m = hit.mark();
            if (window.meets(m.alongStartMm(), m.alongEndMm())) {
                shapes.add(mark(hit));
                EdgeFrame.Rect corner = beside(m, window, depthMm);
                if (taken.stream().noneMatch(r -> Math.hypot(r.x() - corner.x(), r.y() - corner.y()) < 2 * TAG)) {
                    taken.add(corner);
                    tags.add(tag(Integer.toString(number), corner));
                }
            }
        }
        EdgeFrame.Rect strip = frame.strip(window, depthMm);
        double bar = bar(measures).mm();
        shapes.add(Drawing.Shape.of(
                "scale",
                false,
                new EdgeFrame.Rect(strip.x() + strip.width() - bar - 1, strip.y() + strip.height() - 1.4, bar, 0.5)));
        return new Drawing(
                closeUp.picture(),
                box(strip, 0),
                Drawing.Shape.of("paper", false, strip),
                shapes,
                tags,
                "1",
                closeUpAlt(window, index));
    }

    private List<Hit> hits() {
        return page.verdict().hits();
    }

    /** Length of the bar in a close-up, in whole units of the paper. */
    static Length bar(Measures measures) {
        return measures.units() == Units.INCH ? Length.ofInch(1, 2) : Length.ofMm(10);
    }

    static String letter(int index) {
        return String.valueOf((char) ('A' + index));
    }

    private List<Drawing.Shape> zones(CloseUpWindow window) {
        double start = window.startMm();
        double end = window.endMm();
        List<Drawing.Shape> shapes = new ArrayList<>();
        double zone = plan.holeZone().mm();
        shapes.add(Drawing.Shape.of("zone", false, frame.rect(0, zone, start, end)));
        double margin = plan.bindingMargin().mm();
        shapes.add(Drawing.Shape.of("margin", false, frame.rect(margin, margin + HAIR, start, end)));
        double centre = plan.edgeDistance().mm();
        double halfAlong = plan.holeAlong().mm() / 2;
        double halfAcross = plan.holeAcross().mm() / 2;
        double reg = plan.punchingTolerance().mm();
        for (Hole hole : plan.row().holes()) {
            double at = at(hole);
            if (window.meets(at - halfAlong - reg, at + halfAlong + reg)) {
                shapes.add(hole("reach", centre, at, halfAcross + reg, halfAlong + reg));
                shapes.add(hole("hole", centre, at, halfAcross, halfAlong));
            }
        }
        return shapes;
    }

    private Drawing.Shape hole(String css, double centre, double at, double halfAcross, double halfAlong) {
        return Drawing.Shape.of(
                css,
                plan.round(),
                frame.rect(centre - halfAcross, centre + halfAcross, at - halfAlong, at + halfAlong));
    }

    private double at(Hole hole) {
        double centre = hole.centre().mm();
        return page.place().mirrored() ? frame.length() - centre : centre;
    }

    private Drawing.Shape mark(Hit hit) {
        Mark m = hit.mark();
        return Drawing.Shape.of(
                hit.verdict() == Verdict.HIT ? "mark hit" : "mark tight",
                false,
                frame.rect(m.nearMm() - AIR, m.farMm() + AIR, m.alongStartMm() - AIR, m.alongEndMm() + AIR));
    }

    /** A mark's corner away from the binding edge, within the close-up: there its number covers little of it. */
    private EdgeFrame.Rect beside(Mark m, CloseUpWindow window, double depthMm) {
        double away = Math.min(m.farMm() + TAG / 2, depthMm - TAG);
        double along = Math.max(window.startMm() + TAG, Math.min(m.alongStartMm() - TAG / 2, window.endMm() - TAG));
        return frame.rect(away, away, along, along);
    }

    private static Drawing.Tag tag(String text, EdgeFrame.Rect at) {
        return new Drawing.Tag(text, Texts.number(at.x()), Texts.number(at.y()));
    }

    private static String box(EdgeFrame.Rect r, double around) {
        return Texts.number(r.x() - around) + " " + Texts.number(r.y() - around) + " "
                + Texts.number(r.width() + 2 * around) + " " + Texts.number(r.height() + 2 * around);
    }

    private String wholeAlt(PagePicture of) {
        StringBuilder alt = new StringBuilder("Page ")
                .append(page.facts().page())
                .append(" with ")
                .append(Counted.of(plan.row().holes().size(), "hole"))
                .append(" along its ")
                .append(frame.name())
                .append(" edge; ")
                .append(Counted.of(hits().size(), "mark"))
                .append(" outlined");
        if (!of.closeUps().isEmpty()) {
            alt.append("; ").append(Counted.of(of.closeUps().size(), "frame")).append(" enlarged beside it");
        }
        return alt.append('.').toString();
    }

    private String closeUpAlt(CloseUpWindow window, int index) {
        StringBuilder alt = new StringBuilder("Close-up ")
                .append(letter(index))
                .append(" of the binding edge, ")
                .append(measures.marks(window.startMm(), window.endMm()))
                .append(" from ")
                .append(frame.origin());
        List<Integer> pins = plan.row().holes().stream()
                .filter(h -> window.meets(at(h), at(h)))
                .map(Hole::pin)
                .sorted()
                .toList();
        if (!pins.isEmpty()) {
            alt.append(", with the holes of pins ")
                    .append(pins.get(0))
                    .append(" to ")
                    .append(pins.get(pins.size() - 1));
        }
        int number = 0;
        for (Hit hit : hits()) {
            number++;
            Mark m = hit.mark();
            if (window.meets(m.alongStartMm(), m.alongEndMm())) {
                alt.append("; mark ")
                        .append(number)
                        .append(", ")
                        .append(Texts.lower(m.kind()))
                        .append(", ")
                        .append(Texts.lower(hit.verdict()));
            }
        }
        return alt.append('.').toString();
    }
}
