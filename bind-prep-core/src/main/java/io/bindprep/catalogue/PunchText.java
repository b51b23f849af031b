package io.bindprep.catalogue;

import io.bindprep.paper.Stock;
import io.bindprep.setting.FileText;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Writes a punch as the file that {@link PunchFile} reads, each key with its meaning as a comment above it. */
public final class PunchText {
    private static final String INTRODUCTION = """
            The description of one punch, for the key punch of a job.
            Lengths have their unit: mm or in, fractions too.
            Test it on waste first. The machine's manual comes before any number here.""";

    private PunchText() {}

    /** The file of a punch, YAML, ending in a line feed; read again it gives the same punch. */
    public static String of(Punch punch) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put(PunchKeys.ID, punch.id());
        values.put(PunchKeys.PATTERN, punch.pattern());
        values.put(PunchKeys.PINS, String.valueOf(punch.pins()));
        values.put(PunchKeys.FIRST_PIN, punch.firstPin() == null ? "movable" : LengthText.exact(punch.firstPin()));
        values.put(PunchKeys.PULLABLE, PinRanges.text(punch.pullable()));
        Map<String, String> depths = new LinkedHashMap<>();
        punch.depths().forEach(d -> {
            Length stack = d.fromStack();
            String from = stack == null ? "" : ", stack from " + LengthText.exact(stack);
            depths.put(d.name(), LengthText.exact(d.centre()) + from);
        });
        values.put(PunchKeys.DEPTHS, depths);
        values.put(PunchKeys.LIFT, lift(punch));
        values.put(PunchKeys.LONGEST_EDGE, LengthText.exact(punch.longestEdge()));
        values.put(PunchKeys.MINIMUM_WEB, LengthText.exact(punch.minimumWeb()));
        ElementSizes elements = punch.elements();
        if (elements != null) {
            values.put(PunchKeys.ELEMENTS, elements(elements));
        }
        Length punchingTolerance = punch.punchingTolerance();
        if (punchingTolerance != null) {
            values.put(PunchKeys.PUNCHING_TOLERANCE, LengthText.exact(punchingTolerance));
        }
        MeasuredErrors measured = punch.measured();
        if (measured != null) {
            values.put(PunchKeys.MEASURED, measured(measured));
        }
        values.put(PunchKeys.SOURCE, punch.source());
        return FileText.of(INTRODUCTION, PunchKeys.ALL, values);
    }

    private static Object lift(Punch punch) {
        String thickness = LengthText.exact(punch.capacity());
        if (punch.limits().isEmpty()) {
            return thickness;
        }
        Map<String, String> lift = new LinkedHashMap<>();
        lift.put(PunchKeys.THICKNESS, thickness);
        for (Stock.Kind kind : Stock.Kind.values()) {
            LiftLimit limit = punch.limits().get(kind);
            if (limit != null) {
                String sheets = limit.sheets() == null ? "" : ", " + limit.sheets() + " sheets";
                lift.put(kind.name().toLowerCase(Locale.ROOT), LengthText.exact(limit.thickness()) + sheets);
            }
        }
        return lift;
    }

    private static Object elements(ElementSizes sizes) {
        return sizes.listed().isEmpty()
                ? LengthText.exact(sizes.smallest()) + " to " + LengthText.exact(sizes.largest())
                : sizes.listed().stream().map(LengthText::exact).toList();
    }

    private static Map<String, String> measured(MeasuredErrors errors) {
        Map<String, String> measured = new LinkedHashMap<>();
        errors.byName()
                .forEach((name, error) -> measured.put(
                        name, LengthText.exact(error.value()) + " +- " + LengthText.exact(error.tolerance())));
        return measured;
    }
}
