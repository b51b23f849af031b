package io.bindprep.gauge;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;

/** Refuses readings that cannot be, each by itself and one against the other, with the reason. */
final class Plausibility {
    // bounds of our own, no source: what lies beyond is a slip in reading, not a punch that stands badly
    private static final double MOST_DEPTH_OFF = 5;
    private static final double MOST_SKEW = 2;
    private static final double MOST_PRINT_OFF = 5;
    // of the size that the tables use: patterns publish ranges of up to 0.2 to 0.5 in, mixed ones hold the larger hole
    private static final double LEAST_HOLE = 0.4;
    private static final double MOST_HOLE = 1.7;
    // pins stand in one die to a few hundredths; what a row is off by is mostly the paper, which grows by up to 0.64 mm
    // on an 11 in edge (PrintWiki "Moisture Content", derived). 1 mm with room: our own, no source
    private static final double MOST_PITCH = 1;

    /** Tenths are no whole doubles: a limit itself is no error. */
    private static final double SLACK = 1e-9;

    private final TestSheet sheet;
    private final Readings readings;
    private final double error;
    private final double scale;

    private Plausibility(TestSheet sheet, Readings readings) {
        this.sheet = sheet;
        this.readings = readings;
        this.error = readings.error().mm();
        this.scale = readings.scale();
    }

    static void check(TestSheet sheet, Readings readings) throws SettingException {
        Plausibility check = new Plausibility(sheet, readings);
        Length across = sheet.pattern().holeAcross();
        check.hole(Readings.EDGE_FIRST, readings.edgeFirst(), across, "the binding edge", sheet.across());
        check.hole(Readings.EDGE_LAST, readings.edgeLast(), across, "the binding edge", sheet.across());
        check.hole(
                Readings.END_FIRST,
                readings.endFirst(),
                sheet.pattern().holeAlong(),
                "the end of the sheet",
                sheet.edge());
        check.depth(Readings.EDGE_FIRST, readings.edgeFirst());
        check.depth(Readings.EDGE_LAST, readings.edgeLast());
        check.oneDie();
        check.skew();
        check.end();
        check.row();
        check.print();
    }

    /** A whole hole of about the size of the pattern's, on the sheet. */
    private void hole(String key, Reading reading, Length nominal, String edge, Length sheetEnds)
            throws SettingException {
        Double read = reading.sizeMm();
        double size = read == null ? nominal.mm() : read * scale;
        if (size < LEAST_HOLE * nominal.mm() || size > MOST_HOLE * nominal.mm()) {
            throw wrong(
                    key,
                    text(reading),
                    "is a hole of " + mm(size) + ", where " + sheet.pattern().id() + " has one of " + said(nominal),
                    "read both sides of the same hole again");
        }
        double middle = reading.middleMm() * scale;
        if (middle - size / 2 <= 0) {
            throw wrong(
                    key,
                    text(reading),
                    "would cut the hole of " + mm(size) + " open at " + edge,
                    "read again from the edge of the paper; of a single length, the middle of the hole is meant");
        }
        if (middle + size / 2 > sheetEnds.mm()) {
            throw wrong(
                    key,
                    text(reading),
                    "lies off the sheet, which ends at " + said(sheetEnds),
                    "read again, with the unit");
        }
    }

    private void depth(String key, Reading reading) throws SettingException {
        double centre = sheet.settings().get(0).centre().mm();
        double off = reading.middleMm() * scale - centre;
        if (Math.abs(off) > MOST_DEPTH_OFF) {
            throw wrong(
                    key,
                    text(reading),
                    "lies " + mm(Math.abs(off)) + (off > 0 ? " deeper" : " shallower") + " than the "
                            + said(sheet.settings().get(0).centre()) + " of the setting "
                            + sheet.settings().get(0).name() + ", more than " + mm(MOST_DEPTH_OFF),
                    "read the middle or both sides of the hole again, or name the setting that was punched");
        }
    }

    /** Two holes that one die cut across are of one size. */
    private void oneDie() throws SettingException {
        Double first = readings.edgeFirst().sizeMm();
        Double last = readings.edgeLast().sizeMm();
        // each side of each hole is a reading
        if (first != null && last != null && Math.abs(first - last) * scale > 4 * error + SLACK) {
            throw wrong(
                    Readings.EDGE_LAST,
                    text(readings.edgeLast()),
                    "makes the last hole " + mm(last * scale) + " across and the first " + mm(first * scale)
                            + ", which one die does not cut and a reading error of "
                            + said(readings.error())
                            + " does not explain",
                    "read both sides of both holes again");
        }
    }

    private void skew() throws SettingException {
        double skew = (readings.edgeLast().middleMm() - readings.edgeFirst().middleMm()) * scale;
        if (Math.abs(skew) > MOST_SKEW + 2 * error + SLACK) {
            throw wrong(
                    Readings.EDGE_LAST,
                    text(readings.edgeLast()),
                    "makes the last hole " + mm(Math.abs(skew)) + (skew > 0 ? " deeper" : " shallower")
                            + " than the first: the sheet did not lie against the back stop",
                    "punch another sheet, square against the back stop, and read that");
        }
    }

    /** Nearer to the place of the first hole than to any other. */
    private void end() throws SettingException {
        double off =
                readings.endFirst().middleMm() * scale - sheet.first().centre().mm();
        if (Math.abs(off) >= spacing() / 2) {
            throw wrong(
                    Readings.END_FIRST,
                    text(readings.endFirst()),
                    "lies " + mm(Math.abs(off)) + " off the "
                            + said(sheet.first().centre())
                            + " of the first hole, half the way to another or more: another hole was read, or the other end"
                            + " of the sheet lay at the side guide",
                    "read the first hole from the end that the sheet calls SIDE GUIDE, or punch again");
        }
    }

    private void row() throws SettingException {
        double row = readings.rowMm();
        double off = row - sheet.span().mm();
        String holes = "first to last hole is " + said(sheet.span()) + " by "
                + sheet.pattern().id();
        if (Math.abs(off) >= spacing() / 2) {
            throw wrong(
                    Readings.ROW,
                    text(readings.row()),
                    "is " + mm(row) + ", but " + holes + ": other holes were read",
                    "read the same side of the first and of the last hole of the row");
        }
        if (Math.abs(off) > MOST_PITCH + readings.rowErrorMm() + SLACK) {
            throw wrong(
                    Readings.ROW,
                    text(readings.row()),
                    "is " + mm(row) + ", but " + holes + ": no pins in a die stand " + mm(Math.abs(off)) + " off",
                    "read the same side of both holes again, and the bar");
        }
    }

    /** Shows, where the scale was used, the first hole near where the paper's end does. */
    private void print() throws SettingException {
        if (readings.row().to() == null) {
            return;
        }
        Double read = readings.endFirst().sizeMm();
        double size = read == null ? sheet.pattern().holeAlong().mm() : read;
        double side = readings.endFirst().middleMm() - size / 2;
        double off = (readings.row().from().mm() - side) * scale;
        if (Math.abs(off) > MOST_PRINT_OFF) {
            throw wrong(
                    Readings.ROW,
                    text(readings.row()),
                    "has the left side of the first hole at "
                            + said(readings.row().from()) + " of the scale, which is "
                            + mm(Math.abs(off)) + " off where it lies from the end of the paper ("
                            + text(readings.endFirst())
                            + ")",
                    "read the left side of the first hole again, or print the sheet in its place on the paper");
        }
    }

    private double spacing() {
        return sheet.pattern().spacings().stream().mapToDouble(Length::mm).min().orElseThrow();
    }

    private String mm(double mm) {
        return said(Length.ofMeasuredMm(mm));
    }

    private String text(Reading reading) {
        Length to = reading.to();
        return to == null ? said(reading.from()) : said(reading.from()) + " to " + said(to);
    }

    private String said(Length length) {
        return sheet.measures().fine(length);
    }

    private static SettingException wrong(String key, String value, String what, String remedy) {
        return new SettingException(key, value, "\"" + value + "\" " + what, remedy, List.of());
    }
}
