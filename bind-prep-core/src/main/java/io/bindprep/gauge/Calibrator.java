package io.bindprep.gauge;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Deviation;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Turns the readings of one punched test sheet into the errors of its punch.
 *
 * <p>With each reading off by at most e: the edge distance is the mean of the first and last hole's (e), the skew their
 * difference (2 e), the side offset the first hole's place less where it should be (e), the pitch error the measured row
 * less that of the pattern (2 e, and the row's share of the error of the bar). A file holds errors over the whole row of
 * pins, the sheet has the holes that it takes: values and tolerances grow with the row.
 */
public final class Calibrator {
    private static final String SOURCE = "measured with a test sheet";
    // words that the reader of punch files appends by itself
    private static final Pattern FILE = Pattern.compile("(?:^|; )punch file .*$");
    private static final int FINEST = 100;

    private final TestSheet sheet;
    private final Readings readings;
    private final double error;
    private final double scale;
    private final double scaleError;

    private Calibrator(TestSheet sheet, Readings readings) {
        this.sheet = sheet;
        this.readings = readings;
        this.error = readings.error().mm();
        this.scale = readings.scale();
        this.scaleError = readings.scaleError();
    }

    /**
     * Holds readings against the sheet of a job that names its punch and the setting that was punched.
     *
     * @param afresh whether what was measured before is dropped, as the punch was set anew
     * @throws SettingException where the job names no punch or setting, where a reading cannot be, or where readings
     *     contradict each other or what was measured before; the message says which
     */
    public static Calibration calibrate(Job job, Readings readings, boolean afresh) throws SettingException {
        if (job.punch() == null) {
            throw new SettingException(
                    "punch",
                    "",
                    "the punch that was measured is not named",
                    "name its file, or the built-in one to begin with",
                    List.of());
        }
        TestSheet sheet = TestSheet.of(job);
        if (sheet.settings().size() > 1) {
            throw new SettingException(
                    "depth",
                    "",
                    "the punch " + sheet.punch().id()
                            + " has several depth settings, and the one that was punched is not named",
                    "name it as it stands on the test sheet",
                    sheet.settings().stream().map(DepthSetting::name).toList());
        }
        Plausibility.check(sheet, readings);
        return new Calibrator(sheet, readings).calibration(afresh);
    }

    private Calibration calibration(boolean afresh) throws SettingException {
        double first = readings.edgeFirst().middleMm() * scale;
        double last = readings.edgeLast().middleMm() * scale;
        double end = readings.endFirst().middleMm() * scale;
        double row = readings.rowMm();
        double edgeOff = error + scaleError * Math.max(first, last);
        double skewOff = 2 * error + scaleError * Math.abs(last - first);
        double sideOff = error + scaleError * end;
        double pitchOff = readings.rowErrorMm();
        double skew = last - first;
        double side = end - sheet.first().centre().mm();
        double pitch = row - sheet.span().mm();

        double whole = span(sheet.punch().pins());
        double before = span(sheet.first().pin());
        double grow = whole / sheet.span().mm();
        // from the middle of the holes to that of the whole row of pins, for which a setting stands
        double off =
                (whole - before - span(sheet.last().pin())) / 2 / sheet.span().mm();
        Deviation depth = rounded((first + last) / 2 + skew * off, edgeOff + skewOff * Math.abs(off));
        MeasuredErrors now = new MeasuredErrors(
                new Deviation(Length.ZERO, depth.tolerance()),
                rounded(
                        side - pitch * before / sheet.span().mm(),
                        sideOff + pitchOff * before / sheet.span().mm()),
                rounded(skew * grow, skewOff * grow),
                rounded(pitch * grow, pitchOff * grow));
        Punch punch = punch(depth.value(), now, afresh ? null : sheet.punch().measured());
        return new Calibration(
                punch,
                sheet.settings().get(0),
                rounded((first + last) / 2, edgeOff),
                rounded(side, sideOff),
                rounded(skew, skewOff),
                rounded(pitch, pitchOff),
                sheet.span(),
                sheet.punched().leftOpen(punch),
                readings.error(),
                readings.byRule(),
                sheet.measures());
    }

    private double span(int pin) {
        return sheet.pattern().span(pin).mm();
    }

    private Punch punch(Length centre, MeasuredErrors now, @Nullable MeasuredErrors earlier) throws SettingException {
        Deviation deeper = earlier == null ? null : earlier.depth();
        MeasuredErrors errors = earlier == null
                ? now
                : new MeasuredErrors(
                        deeper == null ? now.depth() : new Deviation(deeper.value(), wider(deeper, now.depth())),
                        both("side offset", earlier.side(), now.side()),
                        both("skew", earlier.skew(), now.skew()),
                        both("pitch error", earlier.pitch(), now.pitch()));
        Punch punch = sheet.punch();
        String source = FILE.matcher(punch.source()).replaceFirst("");
        source = source.isEmpty() ? SOURCE : source.contains(SOURCE) ? source : source + "; " + SOURCE;
        DepthSetting measured = sheet.settings().get(0);
        List<DepthSetting> settings = new ArrayList<>();
        for (DepthSetting setting : punch.depths()) {
            boolean punched = setting.equals(measured);
            settings.add(
                    punched
                            ? new DepthSetting(
                                    setting.name(), deeper == null ? centre : centre.minus(deeper.value()), source)
                            : setting);
        }
        return punch.measured(settings, errors, source);
    }

    private static Length wider(Deviation one, @Nullable Deviation other) {
        return other == null ? one.tolerance() : one.tolerance().max(other.tolerance());
    }

    /**
     * Errors after two measurements, which may have been of two depth settings: all that either allows.
     *
     * @throws SettingException where they exclude each other
     */
    private static @Nullable Deviation both(String what, @Nullable Deviation earlier, @Nullable Deviation now)
            throws SettingException {
        if (earlier == null || now == null) {
            return now;
        }
        Length apart = earlier.value().minus(now.value()).abs();
        if (apart.compareTo(earlier.tolerance().plus(now.tolerance())) > 0) {
            throw new SettingException(
                    "punch",
                    text(now),
                    "the " + what + " over the whole row of pins comes out as " + text(now)
                            + ", where the punch's file has " + text(earlier) + " from before: not both are true",
                    "read again; where the punch was set anew since, drop what was measured before (afresh)",
                    List.of());
        }
        Length low = earlier.value().minus(earlier.tolerance()).min(now.value().minus(now.tolerance()));
        Length high = earlier.value().plus(earlier.tolerance()).max(now.value().plus(now.tolerance()));
        return rounded((low.mm() + high.mm()) / 2, (high.mm() - low.mm()) / 2);
    }

    private static String text(Deviation deviation) {
        return deviation.value().inMm() + " +- " + deviation.tolerance().inMm();
    }

    /** To 0.01 mm, the tolerance up, so that it still holds what it held. */
    private static Deviation rounded(double valueMm, double toleranceMm) {
        long value = Math.round(valueMm * FINEST);
        double lost = Math.abs(valueMm - (double) value / FINEST);
        // a double's own last digit is no hundredth more
        long tolerance = (long) Math.ceil((toleranceMm + lost) * FINEST - 1e-6);
        return new Deviation(hundredths(value), hundredths(tolerance));
    }

    private static Length hundredths(long hundredths) {
        return new Length(Math.multiplyExact(hundredths, Length.ofMm(1).units() / FINEST));
    }
}
