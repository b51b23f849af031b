package io.bindprep.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Pins as people write them: "all", "none", or numbers and ranges, "1-2 35". */
final class PinRanges {
    private static final Pattern RANGE = Pattern.compile("(\\d{1,4})(?:-(\\d{1,4}))?");

    private PinRanges() {}

    /**
     * Number of pins.
     *
     * @throws IllegalArgumentException where it is no whole number from 1 to the most
     */
    static int count(String text, int most) {
        if (!text.matches("\\d{1,5}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > most) {
            throw new IllegalArgumentException("is no whole number from 1 to " + most);
        }
        return Integer.parseInt(text);
    }

    /**
     * The pins, in order, each once; null for all.
     *
     * @throws IllegalArgumentException where the text names a pin that is not there, or none
     */
    static @Nullable List<Integer> parse(String text, int most) {
        if (text.equals("all")) {
            return null;
        }
        List<Integer> pins = new ArrayList<>();
        if (text.equals("none")) {
            return pins;
        }
        for (String part : text.strip().split("[ ,]+", -1)) {
            Matcher m = RANGE.matcher(part);
            if (!m.matches()) {
                throw new IllegalArgumentException("is not all, none, or pins by number such as \"1-2 35\"");
            }
            int first = Integer.parseInt(m.group(1));
            int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
            if (first < 1 || last < first || last > most) {
                throw new IllegalArgumentException("has pin " + part + " where pins are 1 to " + most);
            }
            for (int pin = first; pin <= last; pin++) {
                pins.add(pin);
            }
        }
        return pins.stream().distinct().sorted().toList();
    }

    /** The text that {@link #parse} reads. */
    static String text(@Nullable List<Integer> pins) {
        if (pins == null) {
            return "all";
        }
        if (pins.isEmpty()) {
            return "none";
        }
        List<int[]> ranges = new ArrayList<>();
        for (int pin : pins) {
            int[] last = ranges.isEmpty() ? null : ranges.get(ranges.size() - 1);
            if (last != null && last[1] == pin - 1) {
                last[1] = pin;
            } else {
                ranges.add(new int[] {pin, pin});
            }
        }
        return ranges.stream()
                .map(r -> r[0] == r[1] ? String.valueOf(r[0]) : r[0] + "-" + r[1])
                .collect(Collectors.joining(" "));
    }
}
