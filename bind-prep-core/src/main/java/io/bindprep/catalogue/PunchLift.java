package io.bindprep.catalogue;

import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Lift of a punch, as its file says it: one thickness, or that and limits by kind of stock. */
record PunchLift(Length thickness, Map<Stock.Kind, LiftLimit> limits) {
    private static final String KEY = PunchKeys.LIFT;
    private static final Length THICKEST = Length.ofMm(100);
    private static final Pattern SHEETS = Pattern.compile("(?:(.+?)\\s*,\\s*)?(\\d{1,4})\\s+sheets?");

    static PunchLift read(@Nullable Object value, Length builtIn) throws SettingException {
        if (value == null) {
            return new PunchLift(builtIn, Map.of());
        }
        if (!(value instanceof Map<?, ?> map)) {
            return new PunchLift(thickness(KEY, value), Map.of());
        }
        List<String> known = new ArrayList<>(List.of(PunchKeys.THICKNESS));
        known.addAll(PunchKeys.KINDS);
        for (Object key : map.keySet()) {
            PunchFile.checkKnown(KEY + "." + key, String.valueOf(key), known);
        }
        Object all = map.get(PunchKeys.THICKNESS);
        if (all == null) {
            throw Scalars.wrong(KEY, value, "has no thickness", "Write the thickest lift of any stock as thickness.");
        }
        Length thickness = thickness(KEY + "." + PunchKeys.THICKNESS, all);
        Map<Stock.Kind, LiftLimit> limits = new EnumMap<>(Stock.Kind.class);
        for (String kind : PunchKeys.KINDS) {
            Object limit = map.get(kind);
            if (limit != null) {
                limits.put(
                        Stock.Kind.valueOf(kind.toUpperCase(Locale.ROOT)), limit(KEY + "." + kind, limit, thickness));
            }
        }
        return new PunchLift(thickness, limits);
    }

    // "20 sheets", "1 mm", "1 mm, 3 sheets"; a thickness never above that of all
    private static LiftLimit limit(String key, Object value, Length all) throws SettingException {
        String text = Scalars.text(key, value);
        Matcher m = SHEETS.matcher(text);
        boolean counted = m.matches();
        String thick = counted ? m.group(1) : text;
        Length thickness = thick == null ? all : thickness(key, thick);
        if (thickness.compareTo(all) > 0) {
            throw Scalars.wrong(
                    key, value, "is thicker than the lift of any stock", "Write at most " + all.inMm() + ".");
        }
        Integer sheets = counted ? Integer.valueOf(m.group(2)) : null;
        if (sheets != null && sheets < 1) {
            throw Scalars.wrong(key, value, "takes no sheet", "Write at least 1 sheet.");
        }
        return new LiftLimit(thickness, sheets);
    }

    private static Length thickness(String key, Object value) throws SettingException {
        Length thickness = Scalars.length(key, value, THICKEST, "1.9 mm", "20 sheets");
        if (thickness.equals(Length.ZERO)) {
            throw Scalars.wrong(key, value, "takes nothing", "Write the thickest lift that goes in.");
        }
        return thickness;
    }
}
