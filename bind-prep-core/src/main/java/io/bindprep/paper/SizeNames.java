package io.bindprep.paper;

import io.bindprep.wording.SizeErrors;
import io.bindprep.wording.Spelling;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A sheet size as people name it: "DIN A4 quer", "B5 (JIS)", "demy 8vo", "US letter size".
 *
 * @param size the one size meant; null where none or several can be
 * @param onItsSide whether the text says so
 * @param near sizes of the table that come near, where none is meant
 * @param several whether any of those near can be meant
 */
record SizeNames(@Nullable SheetSize size, boolean onItsSide, List<SheetSize> near, boolean several) {
    private static final Set<String> ON_ITS_SIDE =
            Set.of("landscape", "quer", "querformat", "oblong", "horizontal", "paysage", "apaisado", "orizzontale");
    private static final Set<String> UPRIGHT =
            Set.of("portrait", "hoch", "hochformat", "upright", "vertical", "tall", "verticale");
    private static final Set<String> SAID_BESIDES = Set.of(
            "us",
            "din",
            "iso",
            "north",
            "american",
            "british",
            "uk",
            "metric",
            "size",
            "sized",
            "sheet",
            "sheets",
            "paper",
            "format",
            "page",
            "pages");

    // names of the trade for sizes of the table: ASME Y14.1, PWG 5101.1, the British book trade; half of A4 is A5 (ISO
    // 216)
    private static final Map<String, String> SAID = Map.ofEntries(
            Map.entry("ledger", "tabloid"),
            Map.entry("ansi-b", "tabloid"),
            Map.entry("ansi-a", "letter"),
            Map.entry("ltr", "letter"),
            Map.entry("carta", "letter"),
            Map.entry("lgl", "legal"),
            Map.entry("statement", "half-letter"),
            Map.entry("invoice", "half-letter"),
            Map.entry("digest", "half-letter"),
            Map.entry("folio", "foolscap"),
            Map.entry("foolscap-folio", "foolscap"),
            Map.entry("fanfold-german-legal", "foolscap"),
            Map.entry("govt-letter", "government-letter"),
            Map.entry("trade", "us-trade"),
            Map.entry("b5-jis", "JIS-B5"),
            Map.entry("b4-jis", "JIS-B4"),
            Map.entry("b6-jis", "JIS-B6"),
            Map.entry("jb5", "JIS-B5"),
            Map.entry("jb4", "JIS-B4"),
            Map.entry("half-a3", "A4"),
            Map.entry("half-a4", "A5"),
            Map.entry("half-a5", "A6"),
            Map.entry("a4/2", "A5"));

    // envelopes and cards take the size they hold (ISO 269; UPU): C5 an A5, a postcard is A6; 8.5 x 13.4 in is no size
    // of ours
    private static final Map<String, String> NEAR = Map.of(
            "c4",
            "A4",
            "c5",
            "A5",
            "c6",
            "A6",
            "postcard",
            "A6",
            "oficio",
            "foolscap",
            "junior-legal",
            "half-letter",
            "government-legal",
            "foolscap",
            "a4r",
            "A4",
            "a4l",
            "A4");

    /** Reads a name in small letters. */
    static SizeNames of(String lower, List<SheetSize> all) {
        List<String> words = Arrays.stream(lower.replace("u.s.", "us")
                        .replaceAll("\\bus-trade\\b", "trade")
                        .replaceAll("^(din|iso|us)(?=[ab]\\d)", "$1 ")
                        .replaceAll("\\b([ab]) (\\d)\\b", "$1$2")
                        .replaceAll("^b[ -]format\\b", "large-crown-octavo")
                        .replaceAll("\\b8(?:vo|\u00b0)", "octavo")
                        .replaceAll("\\b4(?:to|\u00b0)", "quarto")
                        .split("[\\s,()_-]+"))
                .filter(w -> !w.isEmpty())
                .toList();
        boolean onItsSide = words.stream().anyMatch(ON_ITS_SIDE::contains);
        List<String> naming = words.stream()
                .filter(w -> !ON_ITS_SIDE.contains(w) && !UPRIGHT.contains(w) && !SAID_BESIDES.contains(w))
                .toList();
        String name = String.join("-", naming);
        SheetSize own = byName(String.join("-", words), all);
        SheetSize size = own == null ? byName(SAID.getOrDefault(name, name), all) : own;
        if (size != null) {
            return new SizeNames(size, own == null && onItsSide, List.of(), false);
        }
        List<SheetSize> having = all.stream()
                .filter(s -> !naming.isEmpty()
                        && Arrays.asList(plain(s.name()).split("-")).containsAll(naming))
                .toList();
        return having.isEmpty()
                ? new SizeNames(null, onItsSide, near(name, naming, all), false)
                : new SizeNames(null, onItsSide, having, having.size() > 1);
    }

    /** The size known by this name; hyphens may be left out. */
    private static @Nullable SheetSize byName(String name, List<SheetSize> all) {
        return all.stream()
                .filter(s -> plain(s.name()).replace("-", "").equals(plain(name).replace("-", "")))
                .findFirst()
                .orElse(null);
    }

    private static List<SheetSize> near(String name, List<String> naming, List<SheetSize> all) {
        Set<String> names = new TreeSet<>();
        String known = NEAR.get(name);
        String first = naming.isEmpty() ? "" : beginning(naming.get(0), all);
        if (known != null) {
            names.add(known);
        } else if (!first.isEmpty()) {
            names.add(first);
        } else if (name.length() > 2) {
            String spelt =
                    Spelling.nearest(name, all.stream().map(SheetSize::name).toList());
            names.addAll(spelt == null || spelt.charAt(0) != name.charAt(0) ? Set.of() : Set.of(spelt));
        }
        return names.stream().map(n -> byName(n, all)).filter(s -> s != null).collect(Collectors.toList());
    }

    /** The name of the table that a word begins with, "a4+"; empty for none. */
    private static String beginning(String word, List<SheetSize> all) {
        for (int end = word.length(); end > 1; end--) {
            if (byName(word.substring(0, end), all) != null) {
                return word.substring(0, end);
            }
        }
        return "";
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
    }

    /** Reason why the text is no size, with the nearest. */
    String reason(String given) {
        return several ? SizeErrors.several(given, named()) : SizeErrors.neither(given, named());
    }

    private List<String> named() {
        return near.stream()
                .map(s -> SizeErrors.named(s.name(), s.width(), s.height()))
                .toList();
    }
}
