package io.bindprep.day;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.setting.SettingFile;
import io.bindprep.wording.Spelling;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a shop's rates. */
final class RatesReader {
    private static final String KEY = "rates";
    private static final int MOST_LOOPS = 10_000_000;
    private static final String NUMBER = "(\\d{1,9}(?:\\.\\d{1,6})?)";
    private static final Pattern AMOUNT = Pattern.compile(NUMBER + "(?:\\s*(?:to|-)\\s*" + NUMBER + ")?");

    private final SettingFile file;
    private final String name;

    private RatesReader(SettingFile file, String name) {
        this.file = file;
        this.name = name;
    }

    static Rates read(String text, String name) throws SettingException {
        SettingFile file = SettingFile.read(KEY, text, name);
        try {
            return new RatesReader(file, name).rates();
        } catch (SettingException e) {
            String place = file.place(e.key()).orElse(name);
            throw new SettingException(
                    KEY, e.value(), e.key() + ": " + e.getMessage() + " (" + place + ")", e.remedy(), e.known());
        }
    }

    private Rates rates() throws SettingException {
        for (String key : file.values().keySet()) {
            checkKnown(key, key, RateKeys.ALL);
        }
        Object currency = file.values().get(RateKeys.CURRENCY);
        Amount strokes = amount(RateKeys.STROKES);
        if (strokes != null && strokes.low().signum() == 0) {
            throw Scalars.wrong(
                    RateKeys.STROKES, "0", "is no pace", "Write strokes in a minute, for example 20 to 30.");
        }
        return new Rates(
                name,
                currency == null ? "" : Scalars.text(RateKeys.CURRENCY, currency),
                strokes,
                setup(),
                amount(RateKeys.JOB),
                amount(RateKeys.BOOK),
                amount(RateKeys.HOUR),
                prices(RateKeys.SHEETS),
                prices(RateKeys.COVERS),
                prices(RateKeys.ELEMENTS),
                spools());
    }

    private static void checkKnown(String place, String key, List<String> known) throws SettingException {
        if (!known.contains(key)) {
            throw new SettingException(place, key, "there is no such setting", Spelling.remedy(key, known), known);
        }
    }

    private Map<Setting, Amount> setup() throws SettingException {
        Map<Setting, Amount> minutes = new EnumMap<>(Setting.class);
        List<String> known = Arrays.stream(Setting.values()).map(Scalars::word).toList();
        for (Map.Entry<String, Amount> e : prices(RateKeys.SETUP).entrySet()) {
            String place = RateKeys.SETUP + "." + e.getKey();
            checkKnown(place, e.getKey(), known);
            minutes.put(Scalars.choice(place, e.getKey(), Setting.class), e.getValue());
        }
        return minutes;
    }

    private Map<String, Integer> spools() throws SettingException {
        Map<String, Integer> loops = new LinkedHashMap<>();
        for (Map.Entry<String, Object> e : map(RateKeys.SPOOL).entrySet()) {
            loops.put(e.getKey(), Scalars.whole(RateKeys.SPOOL + "." + e.getKey(), e.getValue(), 1, MOST_LOOPS));
        }
        return loops;
    }

    private Map<String, Amount> prices(String key) throws SettingException {
        Map<String, Amount> prices = new LinkedHashMap<>();
        for (Map.Entry<String, Object> e : map(key).entrySet()) {
            prices.put(e.getKey(), amount(key + "." + e.getKey(), String.valueOf(e.getValue())));
        }
        return prices;
    }

    private Map<String, Object> map(String key) throws SettingException {
        Object value = file.values().get(key);
        Map<String, Object> map = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> lines) {
            lines.forEach((k, v) -> map.put(String.valueOf(k), v == null ? "" : v));
        } else if (value != null) {
            throw Scalars.wrong(
                    key, value, "is no map", "Write one line for each below it, its name, a colon and a number.");
        }
        return map;
    }

    private @Nullable Amount amount(String key) throws SettingException {
        Object value = file.values().get(key);
        return value == null ? null : amount(key, Scalars.text(key, value));
    }

    private static Amount amount(String key, String text) throws SettingException {
        Matcher m = AMOUNT.matcher(text.strip());
        if (m.matches()) {
            BigDecimal low = new BigDecimal(m.group(1));
            BigDecimal high = m.group(2) == null ? low : new BigDecimal(m.group(2));
            if (low.compareTo(high) <= 0) {
                return new Amount(low, high);
            }
        }
        throw Scalars.wrong(
                key,
                text,
                "is no rate",
                "Write a number, or two with \"to\" between them, the smaller first: 20 to 30.");
    }
}
