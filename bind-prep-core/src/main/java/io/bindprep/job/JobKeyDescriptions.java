package io.bindprep.job;

import io.bindprep.catalogue.Method;
import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.Scalars;
import io.bindprep.setting.ValueShape;
import io.bindprep.setting.ValueShape.Items;
import io.bindprep.setting.ValueShape.Parts;
import io.bindprep.setting.ValueShape.Text;
import io.bindprep.setting.ValueShape.Whole;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every key of a job, in the order of the job file; a key that is not here is no key. Long, as it is one table in the order
 * that people read.
 */
final class JobKeyDescriptions {
    private static final ValueShape PAGES = ValueShape.either(
            new Whole(1, 1_000_000), new Text("\\s*([pP][aA][gG][eE][sS]?\\s+)?\\d{1,7}(\\s*-\\s*\\d{1,7})?\\s*"));
    private static final ValueShape PAGE_LIST = ValueShape.either(PAGES, ValueShape.text(), new Items(PAGES));
    private static final ValueShape LENGTH_OR_NONE = ValueShape.either(ValueShape.length(), ValueShape.words("none"));
    private static final ValueShape NUMBER = ValueShape.either(new Whole(0, 1_000_000), new Text("\\s*[\\d.]+.*"));
    private static final ValueShape STOCK = ValueShape.either(ValueShape.text(), stockParts());
    private static final ValueShape COVER =
            ValueShape.either(ValueShape.text(), new Parts(ordered("stock", STOCK, "pages", PAGES), List.of("stock")));

    static final List<KeyDescription> ALL = List.of(
            value(JobKeys.COPIES, "NUMBER", "number of books", "1", "", new Whole(1, 1_000_000), "40"),
            words(JobKeys.SIDES, "SIDES", "printed sides of a leaf", "two", Sides.values()),
            words(JobKeys.BINDING_EDGE, "EDGE", "binding edge of page 1", "left", BindingEdge.values()),
            open(
                    JobKeys.TRIM,
                    "SIZE",
                    "page size of the book",
                    "that of most pages",
                    "a size by name, landscape added where it lies on its side, or width x height",
                    ValueShape.text(),
                    "a4",
                    "a4 landscape",
                    "210 x 297 mm",
                    "8.5 x 11 in"),
            value(
                    JobKeys.STOCK,
                    "STOCK",
                    "paper of the leaves",
                    "bond-20",
                    "a stock by name, or by numbers; a measured pack overrides the caliper",
                    STOCK,
                    "80 gsm 104 um",
                    "bond-20",
                    "80 gsm bulk 1.3",
                    "20 lb 17x22 in 4 mil",
                    "\"bond-20; 25 sheets = 2.6 mm\""),
            value(
                    JobKeys.COVERS,
                    "COVERS",
                    "front and back cover",
                    "none",
                    "each a stock, with the pages of the PDF that it carries where it is printed",
                    ValueShape.either(ValueShape.text(), new Parts(ordered("front", COVER, "back", COVER), List.of())),
                    "front=film-75, back=coverboard-30",
                    "{front: pages 1-2 on c1s-10pt, back: coverboard-30}"),
            value(
                    JobKeys.INSERTS,
                    "INSERTS",
                    "pages on other stock",
                    "none",
                    "pages and their stock; each insert begins a fresh leaf",
                    ValueShape.either(
                            ValueShape.text(),
                            new Items(ValueShape.either(
                                    ValueShape.text(),
                                    new Parts(ordered("pages", PAGES, "stock", STOCK), List.of("pages", "stock"))))),
                    "5-8 on tag-150; 20 on index-110",
                    "[{pages: 9-12, stock: tag-150}]"),
            value(
                    JobKeys.TABS,
                    "TABS",
                    "tab dividers, blank before a page or printed",
                    "none",
                    "the page that follows or the pages printed on it, its stock, the extension of its tab (1/2 in)",
                    ValueShape.either(
                            ValueShape.text(),
                            new Items(ValueShape.either(
                                    ValueShape.text(),
                                    new Parts(
                                            parts(
                                                    "before",
                                                    PAGE_LIST,
                                                    "pages",
                                                    PAGE_LIST,
                                                    "stock",
                                                    STOCK,
                                                    "extension",
                                                    LENGTH_OR_NONE),
                                            List.of("stock"))))),
                    "before 5, 17 on tag-150; 33 on index-110 extending 12 mm",
                    "[{before: 5, stock: tag-150, extension: 12 mm}]"),
            value(
                    JobKeys.FOLD_OUTS,
                    "FOLDS",
                    "pages on leaves that fold out",
                    "none",
                    "pages and panels; a stock of their own; distance of folds from trim and holes (3 mm)",
                    ValueShape.either(
                            ValueShape.text(),
                            new Items(ValueShape.either(
                                    ValueShape.text(),
                                    new Parts(
                                            parts(
                                                    "pages",
                                                    PAGE_LIST,
                                                    "panels",
                                                    new Whole(2, 8),
                                                    "stock",
                                                    STOCK,
                                                    "allowance",
                                                    LENGTH_OR_NONE),
                                            List.of("pages", "panels"))))),
                    "7-8 in 2 panels; 21 in 3 panels on text-80",
                    "[{pages: 7-8, panels: 2, allowance: 5 mm}]"),
            value(
                    JobKeys.ROTATED,
                    "PAGES",
                    "pages that lie rotated 90 degrees in the book",
                    "none",
                    "pages, and the side their head lies at (left)",
                    ValueShape.either(
                            new Whole(1, 1_000_000),
                            ValueShape.text(),
                            new Items(ValueShape.either(
                                    new Whole(1, 1_000_000),
                                    ValueShape.text(),
                                    new Parts(
                                            ordered("pages", PAGE_LIST, "head", ValueShape.words("left", "right")),
                                            List.of("pages"))))),
                    "12, 14-15; 20 head right",
                    "[{pages: 12, head: left}]"),
            value(
                    JobKeys.OTHER_SIZES,
                    "SIZES",
                    "pages whose leaves are cut to another size",
                    "none",
                    "pages and their size; aligned with the others at the binding edge and the head",
                    ValueShape.either(
                            ValueShape.text(),
                            new Items(ValueShape.either(
                                    ValueShape.text(),
                                    new Parts(
                                            ordered("pages", PAGE_LIST, "size", ValueShape.text()),
                                            List.of("pages", "size"))))),
                    "9 at letter; 12-13 at 200 x 297 mm",
                    "[{pages: 9, size: letter}]"),
            words(JobKeys.BINDING, "METHOD", "binding method", "wire", Method.values()),
            open(
                    JobKeys.PITCH,
                    "PITCH",
                    "pitch of the holes",
                    "what suits the stack",
                    "a pitch or the id of a hole pattern",
                    ValueShape.text(),
                    "3:1",
                    "2:1",
                    "W3_1i-square-0t"),
            open(
                    JobKeys.PUNCH,
                    "PUNCH",
                    "punch to use",
                    "the pattern's own",
                    "a punch by name, or a file that describes one (.yaml, .yml, .json)",
                    ValueShape.text(),
                    "generic-W3_1i-square-0t",
                    "shop-punch.yaml"),
            open(
                    JobKeys.DEPTH,
                    "DEPTH",
                    "setting of the punch's depth stop",
                    "what suits stack and content",
                    "a setting by name, or the distance from the binding edge to the hole centre",
                    ValueShape.text(),
                    "shallow",
                    "5 mm"),
            open(
                    JobKeys.BINDING_MARGIN,
                    "LENGTH",
                    "margin at the binding edge that stays free of print",
                    "the pattern's own",
                    "",
                    ValueShape.length(),
                    "10 mm",
                    "3/8 in"),
            open(
                    JobKeys.PUNCHING_TOLERANCE,
                    "LENGTH",
                    "deviation of a hole from its place, either way",
                    "the punch's own, else 1 mm",
                    "",
                    ValueShape.length(),
                    "1 mm",
                    "0.5 mm",
                    "1/32 in"),
            open(
                    JobKeys.CLEARANCE,
                    "LENGTH",
                    "clearance of the element over the thickest stack, instead of its capacity in sheets",
                    "by its capacity",
                    "a rule by name or a length of your own",
                    ValueShape.either(ValueShape.length(), clearances()),
                    "usual",
                    "none",
                    "close",
                    "ample",
                    "3 mm"),
            open(
                    JobKeys.MINIMUM_WEB,
                    "LENGTH",
                    "minimum paper between a hole and the end of the leaf",
                    "the punch's own",
                    "",
                    ValueShape.length(),
                    "3 mm",
                    "1/8 in"),
            value(
                    JobKeys.HANGER,
                    "GAP",
                    "gap without holes for a calendar's hanger",
                    "none",
                    "length of the gap in the middle of the binding edge; size of a thumb cut",
                    ValueShape.either(
                            ValueShape.text(),
                            new Parts(
                                    ordered("gap", ValueShape.length(), "thumb-cut", ValueShape.text()),
                                    List.of("gap"))),
                    "90 mm",
                    "{gap: 90 mm, thumb-cut: 60 x 20 mm}"),
            value(
                    JobKeys.OVERS,
                    "OVERS",
                    "overs: spare sheets of each stock",
                    "5 %, at least 10",
                    "a percentage of the sheets needed, a minimum number of sheets, or both",
                    ValueShape.either(
                            ValueShape.words("none"),
                            new Text("\\s*(\\d.*%)?[\\s,]*([aA][tT] [lL][eE][aA][sS][tT]\\s+\\d+.*)?\\s*"),
                            new Parts(ordered("percent", NUMBER, "minimum", new Whole(0, 100_000)), List.of())),
                    "3 %",
                    "at least 20",
                    "{percent: 3, minimum: 20}"),
            value(
                    JobKeys.PRESS_SHEET,
                    "SHEET",
                    "sheet that leaves are printed on and cut from",
                    "none",
                    "its size, the bleed round each leaf (3 mm), the gripper edge (10 mm); none: sheets of the leaf's size",
                    ValueShape.either(
                            ValueShape.text(),
                            new Parts(
                                    parts(
                                            "size",
                                            ValueShape.text(),
                                            "bleed",
                                            LENGTH_OR_NONE,
                                            "gripper",
                                            LENGTH_OR_NONE),
                                    List.of("size"))),
                    "sra3",
                    "\"450 x 320 mm, bleed 2 mm, gripper 8 mm\"",
                    "{size: sra3, bleed: none, gripper: 10 mm}"),
            value(
                    JobKeys.IMAGE_PPI,
                    "NUMBER",
                    "minimum image resolution, in ppi at printed size",
                    "150",
                    "",
                    new Whole(1, 2_400),
                    "200"),
            value(
                    JobKeys.BLEED,
                    "LENGTH",
                    "bleed required of art at the trim",
                    "3 mm",
                    "none if leaves are not trimmed",
                    ValueShape.either(ValueShape.length(), ValueShape.words("none")),
                    "1/8 in",
                    "none"),
            words(JobKeys.FAIL_ON, "SEVERITY", "minimum severity that fails the check", "error", FailOn.values()),
            new KeyDescription(
                    JobKeys.UNITS,
                    "UNITS",
                    "units of lengths on screen and sheet",
                    null,
                    "those of the paper size",
                    "",
                    List.of("metric", "inch", "both"),
                    ValueShape.words("metric", "inch", "both")),
            note(JobKeys.JOB_NUMBER, "NUMBER", "the shop's number of this job, for the job sheet", "2026-0417"),
            note(JobKeys.CUSTOMER, "NAME", "customer, for the job sheet", "Marrowby Library"),
            note(JobKeys.DUE, "DATE", "due date in free words, for the job sheet", "Friday noon"),
            value(
                    JobKeys.ACCEPT,
                    "",
                    "findings that may pass as long as they stay what was seen",
                    "none",
                    "written by check --accept-into: finding, pages, reason, who, and what was seen",
                    ValueShape.either(
                            ValueShape.words("none"),
                            new Items(new Parts(
                                    parts(
                                            AcceptanceReader.FINDING,
                                            ValueShape.text(),
                                            AcceptanceReader.PAGES,
                                            ValueShape.either(new Whole(1, 1_000_000), ValueShape.text()),
                                            AcceptanceReader.REASON,
                                            ValueShape.text(),
                                            AcceptanceReader.WHO,
                                            ValueShape.text(),
                                            AcceptanceReader.SEEN,
                                            ValueShape.text()),
                                    AcceptanceReader.REQUIRED))),
                    "[{finding: text-tight, pages: 14, reason: a rule, who: J. Doe, seen: 0a1b2c3d4e5f6071}]"),
            value(
                    JobKeys.TABLES,
                    "FILES",
                    "tables of the shop's own stocks, sizes, patterns, elements, punches",
                    "none",
                    "CSV files; their rows add to the built-in tables or replace rows of the same id",
                    ValueShape.either(ValueShape.text(), new Items(ValueShape.text())),
                    "shop-stocks.csv; shop-punches.csv",
                    "[shop-stocks.csv]"));

    private JobKeyDescriptions() {}

    /** A key with one line of free text, blank on the sheet where nothing is said. */
    private static KeyDescription note(String key, String label, String meaning, String example) {
        return open(key, label, meaning, "left blank", "one line of at most 80 characters", ValueShape.text(), example);
    }

    private static ValueShape clearances() {
        return new ValueShape.Words(
                Clearances.all().stream().map(Clearances.Clearance::name).toList());
    }

    private static Parts stockParts() {
        Map<String, ValueShape> parts = new LinkedHashMap<>();
        parts.put("name", ValueShape.text());
        for (String number : List.of("grammage", "bulk", "caliper", "basis-weight")) {
            parts.put(number, NUMBER);
        }
        parts.put("basis-sheet", ValueShape.text());
        parts.put("measured", ValueShape.text());
        parts.put("tolerance", ValueShape.text());
        parts.put("kind", ValueShape.words("paper", "board", "film"));
        return new Parts(parts, List.of());
    }

    /** Names and shapes by turns. */
    private static Map<String, ValueShape> parts(Object... namesAndShapes) {
        Map<String, ValueShape> parts = new LinkedHashMap<>();
        for (int i = 0; i < namesAndShapes.length; i += 2) {
            parts.put((String) namesAndShapes[i], (ValueShape) namesAndShapes[i + 1]);
        }
        return parts;
    }

    private static Map<String, ValueShape> ordered(
            String first, ValueShape firstShape, String second, ValueShape secondShape) {
        Map<String, ValueShape> parts = new LinkedHashMap<>();
        parts.put(first, firstShape);
        parts.put(second, secondShape);
        return parts;
    }

    /** A key with one of a few words. */
    private static KeyDescription words(String key, String label, String meaning, String builtIn, Enum<?>[] values) {
        List<String> words = Arrays.stream(values).map(Scalars::word).toList();
        return new KeyDescription(key, label, meaning, builtIn, "", "", words, new ValueShape.Words(words));
    }

    /** A key for which a value is built in. */
    private static KeyDescription value(
            String key,
            String label,
            String meaning,
            String builtIn,
            String form,
            ValueShape shape,
            String... examples) {
        return new KeyDescription(key, label, meaning, builtIn, "", form, List.of(examples), shape);
    }

    /** A key for which no one value is built in. */
    private static KeyDescription open(
            String key,
            String label,
            String meaning,
            String otherwise,
            String form,
            ValueShape shape,
            String... examples) {
        return new KeyDescription(key, label, meaning, null, otherwise, form, List.of(examples), shape);
    }
}
