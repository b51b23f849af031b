package io.bindprep.day;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * Settings of punch and closer for one book or volume: two that are exactly alike are set alike.
 *
 * @param values one for each setting, exactly
 * @param said the same as an operator reads them
 */
record PunchState(Map<Setting, String> values, Map<Setting, String> said) {
    static final String ALL_IN = "all in";

    private static final int MOST_RANGES = 8;

    /**
     * Lengths of a day, so that none reads as another one that it is not.
     *
     * @param measures units of all jobs
     */
    record Words(Measures measures, Collection<Length> centres, Collection<Length> firstHoles) {}

    PunchState {
        values = Map.copyOf(values);
        said = Map.copyOf(said);
    }

    /** The state for a plan that can be punched: it has holes and an element. */
    static PunchState of(Plan plan, boolean top, Words words) {
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
        String wire = plan.method().name().toLowerCase(Locale.ROOT) + " " + (element == null ? "none" : element.name());
        values.put(Setting.CLOSER, wire + (closer == null ? "" : ", closer at " + LengthText.both(closer)));
        Length first = plan.row().holes().get(0).centre();
        String from = " from the " + (top ? "left" : "head");
        values.put(Setting.SIDE_GUIDE, "first hole " + first.inMm() + from);
        Map<Setting, String> said = new EnumMap<>(values);
        String dial = plan.depth().setting().name();
        String centre = words.measures().set(plan.edgeDistance(), words.centres());
        // a dial's own name goes before its distance; "5 mm" is both
        said.put(Setting.DEPTH, dial.matches("fixed|[0-9].* (?:mm|cm|in|pt)") ? centre : dial + ", " + centre);
        boolean named = closer == null || element != null && closer.equals(element.size());
        said.put(
                Setting.CLOSER,
                named || closer == null
                        ? wire
                        : wire + ", closer at " + words.measures().size(closer));
        said.put(Setting.SIDE_GUIDE, "first hole " + words.measures().set(first, words.firstHoles()) + from);
        return new PunchState(values, said);
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
        return of(values, setting);
    }

    String said(Setting setting) {
        return of(said, setting);
    }

    private static String of(Map<Setting, String> settings, Setting setting) {
        String value = settings.get(setting);
        if (value == null) {
            throw new IllegalStateException(setting + " is not set");
        }
        return value;
    }
}
