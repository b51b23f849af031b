package io.bindprep.job;

import java.util.Locale;
import java.util.Map;

/** Words that people say for the words of a job: a printer's, a shop's, any case of letters. */
final class SaidWords {
    private static final Map<String, Map<String, String>> SAID = Map.of(
            JobKeys.SIDES,
            Map.ofEntries(
                    Map.entry("1", "one"),
                    Map.entry("simplex", "one"),
                    Map.entry("single", "one"),
                    Map.entry("single-sided", "one"),
                    Map.entry("one-sided", "one"),
                    Map.entry("2", "two"),
                    Map.entry("duplex", "two"),
                    Map.entry("both", "two"),
                    Map.entry("double", "two"),
                    Map.entry("double-sided", "two"),
                    Map.entry("two-sided", "two"),
                    Map.entry("tumble", "two-head-to-foot"),
                    Map.entry("head-to-foot", "two-head-to-foot"),
                    Map.entry("head-to-toe", "two-head-to-foot")),
            JobKeys.BINDING,
            Map.ofEntries(
                    Map.entry("twin-loop", "wire"),
                    Map.entry("double-loop", "wire"),
                    Map.entry("spiral", "coil"),
                    Map.entry("plastic-coil", "coil"),
                    Map.entry("spiral-coil", "coil"),
                    Map.entry("plastic-comb", "comb"),
                    Map.entry("ring", "rings"),
                    Map.entry("ring-binder", "rings"),
                    Map.entry("3-ring", "rings")),
            JobKeys.BINDING_EDGE,
            Map.of("head", "top", "top-edge", "top", "left-edge", "left", "right-edge", "right"),
            JobKeys.UNITS,
            Map.of("mm", "metric", "in", "inch", "inches", "inch", "imperial", "inch", "us", "inch"));

    private SaidWords() {}

    /** The word of a job for what was said; the value itself where it is none of them. */
    static Object plain(String key, Object value) {
        String said = String.valueOf(value).strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
        String plain = SAID.getOrDefault(key, Map.of()).get(said);
        return plain == null ? value : plain;
    }
}
