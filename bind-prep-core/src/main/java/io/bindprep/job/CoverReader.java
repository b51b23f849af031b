package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.wording.Spelling;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads covers: a map or "front=..., back=..."; each a stock, or printed pages "page 1 on c1s-10pt". */
final class CoverReader {
    private static final String NONE = "none";
    private static final String FRONT = "front";
    private static final String BACK = "back";
    private static final String STOCK = "stock";
    private static final String PAGES = "pages";
    private static final List<String> SIDES = List.of(FRONT, BACK);

    // a stock's own text may hold commas and equals signs, so only these two words part the text
    private static final Pattern PART =
            Pattern.compile("(front|back)\\s*=\\s*(.*?)\\s*(?:,\\s*(?=(?:front|back)\\s*=)|$)");
    private static final Pattern PRINTED =
            Pattern.compile("(pages?\\s+[\\d\\s-]+?)\\s+on\\s+(.+)", Pattern.CASE_INSENSITIVE);

    private CoverReader() {}

    /** The covers by side, or null where the value has another shape, which {@link #covers} then reports. */
    @SuppressWarnings("unchecked")
    static @Nullable Map<String, Object> parts(Object value) {
        if (value instanceof Map<?, ?> map) {
            return (Map<String, Object>) map;
        }
        if (!(value instanceof String text)) {
            return null;
        }
        Map<String, Object> parts = new LinkedHashMap<>();
        Matcher m = PART.matcher(text.strip());
        int end = 0;
        while (m.find() && m.start() == end) {
            if (parts.put(m.group(1), m.group(2)) != null) {
                return null;
            }
            end = m.end();
        }
        return parts.isEmpty() || end != text.strip().length() ? null : parts;
    }

    /** The two covers, each null for none. */
    static @Nullable Cover[] covers(StockReader stocks, String key, Object value) throws SettingException {
        if (NONE.equals(value)) {
            return new @Nullable Cover[] {null, null};
        }
        Map<String, Object> parts = parts(value);
        if (parts == null) {
            throw Scalars.wrong(
                    key,
                    value,
                    "does not say which cover",
                    "Write front=STOCK, back=STOCK; for example \"front=film-75, back=coverboard-30\".");
        }
        checkKeys(key, parts.keySet(), SIDES);
        Object front = parts.get(FRONT);
        Object back = parts.get(BACK);
        return new @Nullable Cover[] {
            front == null ? null : cover(stocks, key + "." + FRONT, front),
            back == null ? null : cover(stocks, key + "." + BACK, back)
        };
    }

    private static @Nullable Cover cover(StockReader stocks, String key, Object value) throws SettingException {
        if (value instanceof Map<?, ?> map) {
            checkKeys(key, map.keySet(), List.of(STOCK, PAGES));
            Object stock = map.get(STOCK);
            if (stock == null) {
                throw Scalars.wrong(key, value, "has no stock", "Add a stock, for example stock: c1s-10pt.");
            }
            Object pages = map.get(PAGES);
            return new Cover(
                    stocks.stock(key + "." + STOCK, stock), pages == null ? null : printed(key + "." + PAGES, pages));
        }
        String text = Scalars.text(key, value);
        if (text.toLowerCase(Locale.ROOT).equals(NONE)) {
            return null;
        }
        Matcher m = PRINTED.matcher(text);
        return m.matches()
                ? new Cover(stocks.stock(key, m.group(2)), printed(key, m.group(1)))
                : new Cover(stocks.stock(key, text), null);
    }

    private static PageRange printed(String key, Object value) throws SettingException {
        PageRange pages = PageRange.read(key, value);
        if (pages.count() > 2) {
            throw Scalars.wrong(
                    key,
                    value,
                    "is more than the two sides of a cover",
                    "Name one page, or two that follow each other.");
        }
        return pages;
    }

    static void checkKeys(String key, Set<?> given, List<String> known) throws SettingException {
        for (Object name : given) {
            String text = String.valueOf(name);
            if (!known.contains(text)) {
                throw new SettingException(
                        key + "." + text, text, "there is no such setting", Spelling.remedy(text, known), known);
            }
        }
    }
}
