package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what a run is supplied with: overs as "5 %, at least 10" or {percent, minimum}. */
final class SupplyReader {
    private static final String PERCENT = "percent";
    private static final String LEAST = "minimum";
    private static final int MOST_PERCENT = 100;
    private static final int MOST_LEAST = 100_000;
    private static final String EXAMPLE = "Write a percentage, a number of sheets or both, for example"
            + " \"5 %, at least 10\", \"3 %\", \"at least 20\" or \"none\".";
    private static final Pattern TEXT = Pattern.compile(
            "(?:(\\d{1,9}(?:\\.\\d{1,9})?)\\s*(?:%|percent|per cent))?\\s*,?\\s*(?:at least\\s+(\\d{1,9})(?:\\s+sheets?)?|(\\d{1,9})\\s+sheets?)?",
            Pattern.CASE_INSENSITIVE);

    private SupplyReader() {}

    static Overs overs(String key, Object value) throws SettingException {
        String source = "as the job says";
        if ("none".equals(value)) {
            return new Overs(BigDecimal.ZERO, 0, source);
        }
        if (value instanceof Map<?, ?> map) {
            CoverReader.checkKeys(key, map.keySet(), List.of(PERCENT, LEAST));
            Object percent = map.get(PERCENT);
            Object least = map.get(LEAST);
            return new Overs(
                    percent == null ? BigDecimal.ZERO : percent(key + "." + PERCENT, percent),
                    least == null ? 0 : Scalars.whole(key + "." + LEAST, least, 0, MOST_LEAST),
                    source);
        }
        String text = Length.withPoint(Scalars.text(key, value));
        Matcher m = TEXT.matcher(text);
        if (!m.matches() || !text.matches(".*\\d.*")) {
            throw Scalars.wrong(key, value, "is no percentage of overs and no minimum number", EXAMPLE);
        }
        return new Overs(
                m.group(1) == null ? BigDecimal.ZERO : percent(key, m.group(1)),
                least(key, m.group(2) == null ? m.group(3) : m.group(2)),
                source);
    }

    private static int least(String key, @Nullable String number) throws SettingException {
        return number == null ? 0 : Scalars.whole(key, number, 0, MOST_LEAST);
    }

    private static BigDecimal percent(String key, Object value) throws SettingException {
        String text = Scalars.text(key, value);
        String number =
                text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text;
        if (number.matches("\\d{1,9}(\\.\\d{1,9})?")) {
            BigDecimal percent = new BigDecimal(number);
            if (percent.compareTo(BigDecimal.valueOf(MOST_PERCENT)) <= 0) {
                return percent;
            }
        }
        throw Scalars.wrong(key, value, "is not a percentage from 0 to " + MOST_PERCENT, EXAMPLE);
    }
}
