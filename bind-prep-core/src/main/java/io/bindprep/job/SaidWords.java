package io.bindprep.job;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Words that people say for the words of a job: a printer's, a shop's, any case of letters. */
final class SaidWords {
    // a printer's "4/0" is four colours on the front and none on the back; IPP's words for two sides go by the edge
    // that the sheet turns on, which is not always the bound one, and are left to the reader
    private static final Map<String, Map<String, Pattern>> SAID = Map.of(
            JobKeys.SIDES,
            Map.of(
                    "one",
                    said("1|simplex|(?:1|one|single)-?(?:sided?)?|(?:front|recto)-only|[1-9][/+:]0"),
                    "two",
                    said("2|duplex|(?:2|two|double|both)-?(?:sided?|sides)?|recto-verso|front-and-back|back-to-back"
                            + "|head-to-head|[1-9][/+:][1-9]|k/k"),
                    "two-head-to-foot",
                    said("tumble|(?:duplex-)?tumble|head-to-(?:foot|toe|tail)")),
            JobKeys.BINDING,
            Map.of(
                    "wire", said("(?:(?:twin|double|wire)-?)*(?:wires?|loops?)(?:-(?:wires?|binding|bound))*"),
                    "coil", said("(?:(?:plastic|colou?r|spiral)-)*(?:coils?|spirals?)(?:-(?:binding|bound|coil))*"),
                    "comb", said("(?:plastic-)?combs?(?:-(?:binding|bound))?"),
                    "rings",
                            said(
                                    "(?:(?:[234]|two|three|four)-?)?(?:rings?|holes?)(?:-?(?:binders?|binding|punch|punched))?"
                                            + "|lever-arch(?:-file)?")),
            JobKeys.BINDING_EDGE,
            Map.of(
                    "left", said("l|lh|left(?:-(?:edge|side|hand|hand-side))?"),
                    "right", said("r|rh|right(?:-(?:edge|side|hand|hand-side))?"),
                    "top", said("(?:top|head)(?:-(?:edge|side))?")),
            JobKeys.UNITS,
            Map.of(
                    "metric", said("mm|millimet(?:er|re)s?"),
                    "inch", said("in|inch(?:es)?|imperial|us|english|\""),
                    "both", said("(?:mm|metric)-?(?:and|&|\\+|/)-?(?:in|inch|inches)")),
            JobKeys.FAIL_ON,
            Map.of("error", said("errors"), "warning", said("warnings"), "never", said("none|no|off|nothing")));

    private SaidWords() {}

    private static Pattern said(String words) {
        return Pattern.compile(words);
    }

    /** The word of a job for what was said; the value itself where it is none of them. */
    static Object plain(String key, Object value) {
        String said = String.valueOf(value).strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
        return SAID.getOrDefault(key, Map.of()).entrySet().stream()
                .filter(word -> word.getValue().matcher(said).matches())
                .<Object>map(Map.Entry::getKey)
                .findFirst()
                .orElse(value);
    }
}
