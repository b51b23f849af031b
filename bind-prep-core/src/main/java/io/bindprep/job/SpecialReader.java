package io.bindprep.job;

import io.bindprep.job.SpecialLeaves.FoldOut;
import io.bindprep.job.SpecialLeaves.OtherSize;
import io.bindprep.job.SpecialLeaves.Rotated;
import io.bindprep.job.SpecialLeaves.Tab;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.SheetSizes;
import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the leaves that are not like the others: lists of maps, or text with a semicolon between the items. */
final class SpecialReader {
    private static final int MOST = 1_000;
    private static final int MOST_PANELS = 8;
    private static final Length MOST_LENGTH = Length.ofMm(100);
    // common practice, no source
    private static final Length TAB = Length.ofInch(1, 2);

    private static final String PAGES = "pages";
    private static final String BEFORE = "before";
    private static final String STOCK = "stock";
    private static final String EXTENSION = "extension";
    private static final String PANELS = "panels";
    private static final String ALLOWANCE = "allowance";
    private static final String HEAD = "head";
    private static final String SIZE = "size";
    private static final String NONE = "none";

    private static final Pattern TAB_TEXT =
            pattern("(before\\s+)?([\\d\\s,.pages-]+?)\\s+on\\s+(.+?)(?:\\s+extending\\s+(.+))?");
    private static final Pattern FOLD_TEXT =
            pattern("([\\d\\s,.pages-]+?)\\s+in\\s+(\\d{1,3})\\s+panels?(?:\\s+on\\s+(.+?))?(?:\\s+allowing\\s+(.+))?");
    private static final Pattern TURN_TEXT = pattern("([\\d\\s,.pages-]+?)(?:\\s+head\\s+(\\S+))?");
    private static final Pattern SIZE_TEXT = pattern("([\\d\\s,.pages-]+?)\\s+at\\s+(.+)");

    /** One kind of item: its keys, how its text is parted into them, what to write. */
    private record Kind(List<String> keys, Pattern text, List<String> groups, String example) {}

    private static final Kind TABS = new Kind(
            List.of(BEFORE, PAGES, STOCK, EXTENSION),
            TAB_TEXT,
            List.of("", PAGES, STOCK, EXTENSION),
            "Write where and on what stock, for example \"before 5, 17, 33 on tag-150; 9 on index-110 extending 12 mm\".");
    private static final Kind FOLDS = new Kind(
            List.of(PAGES, PANELS, STOCK, ALLOWANCE),
            FOLD_TEXT,
            List.of(PAGES, PANELS, STOCK, ALLOWANCE),
            "Write pages and panels, for example \"7-8 in 2 panels; 21 in 3 panels on text-80\".");
    private static final Kind TURNS = new Kind(
            List.of(PAGES, HEAD),
            TURN_TEXT,
            List.of(PAGES, HEAD),
            "Write pages, for example \"12, 14-15; 20 head right\".");
    private static final Kind SIZES = new Kind(
            List.of(PAGES, SIZE),
            SIZE_TEXT,
            List.of(PAGES, SIZE),
            "Write pages and their size, for example \"9 at letter; 12-13 at 200 x 297 mm\".");

    private final StockReader stocks;
    private final SheetSizes sheets;

    /** A reader for whom names stand for what these tables say. */
    SpecialReader(StockReader stocks, SheetSizes sheets) {
        this.stocks = stocks;
        this.sheets = sheets;
    }

    private static Pattern pattern(String text) {
        return Pattern.compile(text, Pattern.CASE_INSENSITIVE);
    }

    List<Tab> tabs(String key, Object value) throws SettingException {
        List<Tab> tabs = new ArrayList<>();
        for (Item item : items(key, value, TABS)) {
            Object before = item.parts.get(BEFORE);
            Object pages = item.parts.get(PAGES);
            if ((before == null) == (pages == null)) {
                throw Scalars.wrong(
                        item.key,
                        item.given,
                        "needs either the pages it stands before or those it carries",
                        TABS.example);
            }
            Object extension = item.parts.get(EXTENSION);
            Length out = extension == null ? TAB : length(item, EXTENSION, extension, "1/2 in");
            for (PageRange range : ranges(item, before == null ? PAGES : BEFORE)) {
                if (before == null) {
                    tabs.add(new Tab(range, true, stocks.stock(item.at(STOCK), item.need(STOCK)), out));
                    continue;
                }
                for (int page = range.first(); page <= range.last(); page++) {
                    tabs.add(new Tab(
                            new PageRange(page, page), false, stocks.stock(item.at(STOCK), item.need(STOCK)), out));
                    bound(key, tabs);
                }
            }
        }
        return tabs;
    }

    List<FoldOut> foldOuts(String key, Object value) throws SettingException {
        List<FoldOut> folds = new ArrayList<>();
        for (Item item : items(key, value, FOLDS)) {
            int panels = Scalars.whole(item.at(PANELS), item.need(PANELS), 2, MOST_PANELS);
            Object allowance = item.parts.get(ALLOWANCE);
            Object stock = item.parts.get(STOCK);
            for (PageRange range : ranges(item, PAGES)) {
                folds.add(new FoldOut(
                        range,
                        panels,
                        allowance == null ? SpecialLeaves.FOLD_ALLOWANCE : length(item, ALLOWANCE, allowance, "3 mm"),
                        stock == null ? null : stocks.stock(item.at(STOCK), stock)));
            }
        }
        return bound(key, folds);
    }

    List<Rotated> rotated(String key, Object value) throws SettingException {
        List<Rotated> rotated = new ArrayList<>();
        for (Item item : items(key, value, TURNS)) {
            Object head = item.parts.get(HEAD);
            boolean left = head == null || Scalars.choice(item.at(HEAD), head, HeadSide.class) == HeadSide.LEFT;
            for (PageRange range : ranges(item, PAGES)) {
                rotated.add(new Rotated(range, left));
            }
        }
        return bound(key, rotated);
    }

    List<OtherSize> sizes(String key, Object value) throws SettingException {
        List<OtherSize> sizes = new ArrayList<>();
        for (Item item : items(key, value, SIZES)) {
            SheetSize size = sheets.parse(item.at(SIZE), Scalars.text(item.at(SIZE), item.need(SIZE)));
            for (PageRange range : ranges(item, PAGES)) {
                sizes.add(new OtherSize(range, new Trim(size.name(), size.width(), size.height())));
            }
        }
        return bound(key, sizes);
    }

    /** Side of the book at which a turned page's head lies. */
    enum HeadSide {
        LEFT,
        RIGHT
    }

    private record Item(String key, Object given, Map<String, Object> parts, Kind kind) {
        String at(String part) {
            return given instanceof Map ? key + "." + part : key;
        }

        Object need(String part) throws SettingException {
            Object value = parts.get(part);
            if (value == null) {
                throw Scalars.wrong(key, given, "does not say its " + part, kind.example);
            }
            return value;
        }
    }

    private static List<Item> items(String key, Object value, Kind kind) throws SettingException {
        if (NONE.equals(value)) {
            return List.of();
        }
        List<?> given = value instanceof List<?> list
                ? list
                : Arrays.asList((Object[]) Scalars.text(key, value).split("\\s*;\\s*"));
        bound(key, given);
        List<Item> items = new ArrayList<>();
        for (Object one : given) {
            items.add(item(key + "[" + (items.size() + 1) + "]", one, kind));
        }
        return items;
    }

    private static Item item(String key, Object given, Kind kind) throws SettingException {
        Map<String, Object> parts = new LinkedHashMap<>();
        if (given instanceof Map<?, ?> map) {
            CoverReader.checkKeys(key, map.keySet(), kind.keys);
            map.forEach((k, v) -> parts.put(String.valueOf(k), v));
            return new Item(key, given, parts, kind);
        }
        Matcher m = kind.text.matcher(PageRange.plain(Scalars.text(key, given)));
        if (!m.matches()) {
            throw Scalars.wrong(key, given, "cannot be read", kind.example);
        }
        for (int i = 0; i < kind.groups.size(); i++) {
            String text = m.group(i + 1);
            // the first group of a divider's text is its word "before"
            if (text != null && !kind.groups.get(i).isEmpty()) {
                boolean before = kind == TABS && kind.groups.get(i).equals(PAGES) && m.group(1) != null;
                parts.put(before ? BEFORE : kind.groups.get(i), text);
            }
        }
        return new Item(key, given, parts, kind);
    }

    /** "5, 17, 33-34", a number, or a list of those. */
    private static List<PageRange> ranges(Item item, String part) throws SettingException {
        Object value = item.need(part);
        List<?> each = value instanceof List<?> list
                ? list
                : Arrays.asList((Object[])
                        PageRange.plain(Scalars.text(item.at(part), value)).split("\\s*,\\s*"));
        List<PageRange> ranges = new ArrayList<>();
        for (Object one : each) {
            ranges.add(PageRange.read(item.at(part), one));
        }
        return bound(item.key, ranges);
    }

    private static Length length(Item item, String part, Object value, String example) throws SettingException {
        return NONE.equals(value) ? Length.ZERO : Scalars.length(item.at(part), value, MOST_LENGTH, example, NONE);
    }

    private static <T> List<T> bound(String key, List<T> items) throws SettingException {
        if (items.size() > MOST) {
            throw Scalars.wrong(key, items.size(), "is more than the " + MOST + " allowed", "Split the job.");
        }
        return items;
    }
}
