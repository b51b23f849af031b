package io.bindprep.sheet;

import io.bindprep.run.Step;
import io.nayuki.qrcodegen.QrCode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A job sheet as its HTML template needs it.
 *
 * @param code the modules of the QR code as an SVG path, one unit a module
 * @param codeSize modules on a side
 */
public record SheetView(JobSheet sheet, List<PartView> parts, String code, int codeSize) {
    /** Length of a piece of the edge, to fit between the margins of A4 and Letter at true size. */
    private static final double ROOM_MM = 180;

    /** Leaves bound as one, with their edge in pieces. */
    public record PartView(
            String name,
            String heading,
            List<OperatorSetting> settings,
            List<Piece> pieces,
            String face,
            String start,
            String caption,
            List<String> lifts,
            long strokes,
            List<Step> steps) {
        public PartView {
            settings = List.copyOf(settings);
            lifts = List.copyOf(lifts);
            steps = List.copyOf(steps);
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * A piece of the binding edge.
     *
     * @param svg its elements, in millimetres
     */
    public record Piece(String svg, String widthMm, String heightMm) {}

    public SheetView {
        parts = List.copyOf(parts);
    }

    static SheetView of(JobSheet sheet) {
        QrCode code = QrCode.encodeText(sheet.code(), QrCode.Ecc.MEDIUM);
        return new SheetView(sheet, sheet.parts().stream().map(SheetView::part).toList(), path(code), code.size);
    }

    private static PartView part(JobSheet.VolumeSettings part) {
        EdgePainter painter = new EdgePainter(part.edge(), ROOM_MM);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < painter.pieces(); i++) {
            SvgPen pen = new SvgPen();
            try {
                painter.paint(pen, i, 0, 0);
            } catch (IOException e) {
                throw new UncheckedIOException("a drawing in memory cannot fail", e);
            }
            pieces.add(new Piece(pen.elements(), SvgPen.number(ROOM_MM), SvgPen.number(painter.pieceHeight())));
        }
        String heading = part.name().isEmpty() ? "Settings, in this order" : part.name() + ": settings, in this order";
        return new PartView(
                part.name(),
                heading,
                part.settings(),
                pieces,
                part.edge().face(),
                part.edge().start(),
                part.edge().caption(),
                part.lifts(),
                part.strokes(),
                part.steps());
    }

    /** Length of the bar that shows whether the page was printed at full size, millimetres. */
    public double barMm() {
        return sheet.bar().mm();
    }

    /** The same in words: "100 mm", "4 in". */
    public String bar() {
        return sheet.barWords();
    }

    private static String path(QrCode code) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                path.append(code.getModule(x, y) ? "M" + x + " " + y + "h1v1h-1z" : "");
            }
        }
        return path.toString();
    }

    /** The name of a step, "Print". */
    public static String name(Step step) {
        return JobSheet.name(step);
    }
}
