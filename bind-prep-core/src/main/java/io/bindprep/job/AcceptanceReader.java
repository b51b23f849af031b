package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads accepted findings: a list of {finding, pages, reason, who, seen}. */
final class AcceptanceReader {
    private static final int MOST = 1_000;
    static final String FINDING = "finding";
    static final String PAGES = "pages";
    static final String REASON = "reason";
    static final String WHO = "who";
    static final String SEEN = "seen";
    static final List<String> REQUIRED = List.of(FINDING, REASON, WHO, SEEN);
    private static final List<String> KNOWN = List.of(FINDING, PAGES, REASON, WHO, SEEN);
    private static final String REMEDY = "Let \"bind-prep check --accept-into\" write it, which knows all its parts.";

    private AcceptanceReader() {}

    static List<Acceptance> acceptances(String key, Object value) throws SettingException {
        if ("none".equals(value)) {
            return List.of();
        }
        if (!(value instanceof List<?> items)) {
            throw Scalars.wrong(key, value, "is not a list of accepted findings", REMEDY);
        }
        if (items.size() > MOST) {
            throw Scalars.wrong(
                    key, items.size(), "is more accepted findings than the " + MOST + " allowed", "Split the job.");
        }
        List<Acceptance> acceptances = new ArrayList<>();
        for (Object item : items) {
            acceptances.add(acceptance(key + "[" + (acceptances.size() + 1) + "]", item));
        }
        return acceptances;
    }

    private static Acceptance acceptance(String key, Object item) throws SettingException {
        if (!(item instanceof Map<?, ?> map)) {
            throw Scalars.wrong(key, item, "is not an accepted finding", REMEDY);
        }
        CoverReader.checkKeys(key, map.keySet(), KNOWN);
        for (String part : REQUIRED) {
            if (map.get(part) == null) {
                throw Scalars.wrong(key, item, "lacks its " + part, REMEDY);
            }
        }
        return new Acceptance(
                text(key, map, FINDING),
                text(key, map, PAGES),
                text(key, map, REASON),
                text(key, map, WHO),
                text(key, map, SEEN));
    }

    private static String text(String key, Map<?, ?> map, String part) throws SettingException {
        Object value = map.get(part);
        return value == null ? "" : Scalars.text(key + "." + part, value);
    }
}
