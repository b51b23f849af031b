package io.bindprep.day;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import java.util.EnumMap;
import java.util.Map;

/**
 * Settings of punch and closer for one book or volume, as text: two that read alike are set alike.
 *
 * @param values one for each setting
 */
record PunchState(Map<Setting, String> values) {
    static final String ALL_IN = "all in";

    private static final int MOST_RANGES = 8;

    PunchState {
        values = Map.copyOf(values);
    }

    /** The state for a plan that can be punched: it has holes and an element. */
    static PunchState of(Plan plan, boolean top) {
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        String pattern =
                plan.pitchName().equals(plan.pattern()) ? plan.pattern() : plan.pitchName() + ", " + plan.pattern();
        values.put(
                Setting.DIE,
                plan.punch().equals("generic-" + plan.pattern()) ? pattern : pattern + " on " + plan.punch());
        values.put(Setting.DEPTH, LengthText.both(plan.edgeDistance()));
        values.put(
                Setting.PINS,
                plan.row().pulledPins().isEmpty()
                        ? ALL_IN
                        : "pull " + PageLists.compact(plan.row().pulledPins(), MOST_RANGES));
        Element element = plan.element();
        Length closer = plan.closer();
        values.put(
                Setting.CLOSER,
                plan.method().name().toLowerCase(java.util.Locale.ROOT) + " "
                        + (element == null ? "none" : element.name())
                        + (closer == null ? "" : ", closer at " + LengthText.both(closer)));
        values.put(
                Setting.SIDE_GUIDE,
                "first hole " + plan.row().holes().get(0).centre().inMm() + " from the " + (top ? "left" : "head"));
        return new PunchState(values);
    }

    /** Returns true if the setting must be made anew after the other state; a new die comes with all pins in. */
    boolean changes(Setting setting, PunchState before) {
        String now = value(setting);
        if (setting == Setting.PINS && !value(Setting.DIE).equals(before.value(Setting.DIE))) {
            return !now.equals(ALL_IN);
        }
        return !now.equals(before.value(setting));
    }

    String value(Setting setting) {
        String value = values.get(setting);
        if (value == null) {
            throw new IllegalStateException(setting + " is not set");
        }
        return value;
    }
}
