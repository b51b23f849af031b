package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads inserts: a list of {pages, stock}, or "5-8 on tag-150; 20 on index-110". */
final class InsertReader {
    private static final int MOST = 10_000;
    private static final String STOCK = "stock";
    private static final String PAGES = "pages";
    private static final String EXAMPLE = "Write PAGES on STOCK, for example \"5-8 on tag-150; 20 on index-110\".";
    private static final Pattern TEXT = Pattern.compile("([^;]+?)\\s+on\\s+(.+)", Pattern.CASE_INSENSITIVE);

    private InsertReader() {}

    static List<Insert> inserts(StockReader stocks, String key, Object value) throws SettingException {
        if ("none".equals(value)) {
            return List.of();
        }
        List<?> items = value instanceof List<?> list
                ? list
                : Arrays.asList((Object[]) Scalars.text(key, value).split("\\s*;\\s*"));
        if (items.size() > MOST) {
            throw Scalars.wrong(key, items.size(), "is more inserts than the " + MOST + " allowed", "Split the job.");
        }
        List<Insert> inserts = new ArrayList<>();
        for (Object item : items) {
            inserts.add(insert(stocks, key + "[" + (inserts.size() + 1) + "]", item));
        }
        inserts.sort(Comparator.comparingInt(i -> i.pages().first()));
        return inserts;
    }

    private static Insert insert(StockReader stocks, String key, Object item) throws SettingException {
        if (item instanceof Map<?, ?> map) {
            CoverReader.checkKeys(key, map.keySet(), List.of(PAGES, STOCK));
            Object pages = map.get(PAGES);
            Object stock = map.get(STOCK);
            if (pages == null || stock == null) {
                throw Scalars.wrong(
                        key, item, "lacks its pages or its stock", "Give both: pages: 5-8, stock: tag-150.");
            }
            return new Insert(PageRange.read(key + "." + PAGES, pages), stocks.stock(key + "." + STOCK, stock));
        }
        String text = Scalars.text(key, item);
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            throw Scalars.wrong(key, item, "does not name pages and their stock", EXAMPLE);
        }
        return new Insert(PageRange.read(key, m.group(1)), stocks.stock(key, m.group(2)));
    }

    /** No page can lie on two leaves. */
    static void checkApart(List<Insert> inserts, SpecialLeaves special, @Nullable Cover front, @Nullable Cover back)
            throws SettingException {
        List<PageRange> taken = new ArrayList<>();
        for (Insert insert : inserts) {
            checkFree(JobKeys.INSERTS, insert.pages(), taken);
            taken.add(insert.pages());
        }
        for (SpecialLeaves.FoldOut fold : special.foldOuts()) {
            checkFree(JobKeys.FOLD_OUTS, fold.pages(), taken);
            taken.add(fold.pages());
        }
        for (SpecialLeaves.Tab tab : special.tabs()) {
            if (tab.printed()) {
                checkFree(JobKeys.TABS, tab.pages(), taken);
                taken.add(tab.pages());
            }
        }
        for (Cover cover : new @Nullable Cover[] {front, back}) {
            PageRange printed = cover == null ? null : cover.printed();
            if (printed != null) {
                checkFree(JobKeys.COVERS, printed, taken);
                taken.add(printed);
            }
        }
    }

    private static void checkFree(String key, PageRange pages, List<PageRange> taken) throws SettingException {
        for (PageRange other : taken) {
            if (pages.first() <= other.last() && other.first() <= pages.last()) {
                throw Scalars.wrong(
                        key,
                        pages.first() + "-" + pages.last(),
                        "takes a page that " + other.first() + "-" + other.last() + " already takes",
                        "Give each page to one cover, insert, fold-out or tab.");
            }
        }
    }
}
