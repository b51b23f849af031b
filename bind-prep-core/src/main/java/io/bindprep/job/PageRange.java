package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pages first to last, both included, numbered from 1. */
public record PageRange(int first, int last) {
    private static final int LAST_PAGE = 1_000_000;
    private static final Pattern PAGES =
            Pattern.compile("(?:(?:pages?|pp?\\.?)\\s*)?(\\d{1,7})(?:\\s*-\\s*(\\d{1,7}))?");

    private static final Pattern DASH =
            Pattern.compile("(?<=\\d)\\s*(?:[\u2010-\u2015\u2212]|\\.{2,3}|\\bto\\b|\\bthrough\\b)\\s*(?=\\d)");
    private static final Pattern AND = Pattern.compile("(?<=\\d)\\s*,?\\s*(?:\\band\\b|&)\\s*(?=\\d)");

    /** Number of pages. */
    public int count() {
        return last - first + 1;
    }

    /** Returns true if a page is among them. */
    public boolean holds(int page) {
        return page >= first && page <= last;
    }

    /**
     * Pages and ranges with commas between, as "1, 84" or "1-4, 84".
     *
     * @throws SettingException where one of them cannot be read
     */
    public static List<PageRange> readAll(String key, String text) throws SettingException {
        List<PageRange> all = new ArrayList<>();
        for (String one : plain(text).split(",", -1)) {
            all.add(read(key, one.strip()));
        }
        return all;
    }

    /** A text whose pages stand as a job writes them: "5\u20138" and "5 to 8" are "5-8", "5 and 7" is "5, 7". */
    static String plain(String text) {
        return DASH.matcher(AND.matcher(text).replaceAll(", ")).replaceAll("-");
    }

    /** A page or a range as a job writes it: 5, "5-8", "pages 5-8", "pp. 5\u20138". */
    static PageRange read(String key, Object value) throws SettingException {
        String text = plain(Scalars.text(key, value));
        Matcher m = PAGES.matcher(text.toLowerCase(Locale.ROOT));
        if (m.matches()) {
            int first = Integer.parseInt(m.group(1));
            int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
            if (first >= 1 && first <= last && last <= LAST_PAGE) {
                return new PageRange(first, last);
            }
        }
        throw Scalars.wrong(
                key,
                value,
                "is not a page or a range of pages counted from 1",
                "Write it as 5 or as 5-8, the smaller number first.");
    }
}
