package io.bindprep.job;

import io.bindprep.catalogue.Method;
import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.Scalars;
import io.bindprep.setting.Shape;
import io.bindprep.setting.Shape.Items;
import io.bindprep.setting.Shape.Parts;
import io.bindprep.setting.Shape.Text;
import io.bindprep.setting.Shape.Whole;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every key of a job, in the order of the job file; a key that is not here is no key. */
final class JobKeyDescriptions {
    private static final Shape PAGES = Shape.either(
            new Whole(1, 1_000_000), new Text("\\s*([pP][aA][gG][eE][sS]?\\s+)?\\d{1,7}(\\s*-\\s*\\d{1,7})?\\s*"));
    private static final Shape NUMBER = Shape.either(new Whole(0, 1_000_000), new Text("\\s*[\\d.]+.*"));
    private static final Shape STOCK = Shape.either(Shape.text(), stockParts());
    private static final Shape COVER =
            Shape.either(Shape.text(), new Parts(ordered("stock", STOCK, "pages", PAGES), List.of("stock")));

    static final List<KeyDescription> ALL = List.of(
            value(JobKeys.COPIES, "NUMBER", "how many books", "1", "", new Whole(1, 1_000_000), "40"),
            words(JobKeys.SIDES, "SIDES", "how leaves are printed", "two", Sides.values()),
            words(JobKeys.BOUND_EDGE, "EDGE", "the edge of page 1 that is bound", "left", BoundEdge.values()),
            open(
                    JobKeys.TRIM,
                    "SIZE",
                    "page size expected",
                    "that of most pages",
                    "a size by name, landscape added where it lies on its side, or width x height",
                    Shape.text(),
                    "a4",
                    "a4 landscape",
                    "210 x 297 mm",
                    "8.5 x 11 in"),
            value(
                    JobKeys.STOCK,
                    "STOCK",
                    "paper of the block",
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
                    Shape.either(Shape.text(), new Parts(ordered("front", COVER, "back", COVER), List.of())),
                    "front=film-75, back=coverboard-30",
                    "{front: pages 1-2 on c1s-10pt, back: coverboard-30}"),
            value(
                    JobKeys.INSERTS,
                    "INSERTS",
                    "pages on other stock",
                    "none",
                    "pages and their stock; they begin a fresh leaf",
                    Shape.either(
                            Shape.text(),
                            new Items(Shape.either(
                                    Shape.text(),
                                    new Parts(ordered("pages", PAGES, "stock", STOCK), List.of("pages", "stock"))))),
                    "5-8 on tag-150; 20 on index-110",
                    "[{pages: 9-12, stock: tag-150}]"),
            words(JobKeys.BINDING, "METHOD", "what holds the leaves", "wire", Method.values()),
            open(
                    JobKeys.PITCH,
                    "PITCH",
                    "pitch of the holes",
                    "what suits the stack",
                    "a pitch or the id of a hole pattern",
                    Shape.text(),
                    "3:1",
                    "2:1",
                    "W3_1i-square-0t"),
            open(
                    JobKeys.PUNCH,
                    "PUNCH",
                    "the punch it runs on",
                    "the pattern's own",
                    "a punch by name",
                    Shape.text(),
                    "generic-W3_1i-square-0t"),
            open(
                    JobKeys.CLEAR_MARGIN,
                    "LENGTH",
                    "what print keeps from the bound edge",
                    "the pattern's own",
                    "",
                    Shape.length(),
                    "10 mm",
                    "3/8 in"),
            value(
                    JobKeys.REGISTRATION,
                    "LENGTH",
                    "how far a hole may lie off, either way",
                    "1 mm",
                    "",
                    Shape.length(),
                    "0.5 mm",
                    "1/32 in"),
            value(
                    JobKeys.CLEARANCE,
                    "LENGTH",
                    "what the element is wider than the stack",
                    "1/8 in",
                    "a rule by name or a length of your own",
                    Shape.either(Shape.length(), clearances()),
                    "usual",
                    "none",
                    "close",
                    "ample",
                    "3 mm"),
            open(
                    JobKeys.LEAST_WEB,
                    "LENGTH",
                    "paper between a hole and the end of the sheet",
                    "the punch's own",
                    "",
                    Shape.length(),
                    "3 mm",
                    "1/8 in"),
            value(
                    JobKeys.HANGER,
                    "GAP",
                    "free stretch for a calendar's hanger",
                    "none",
                    "the stretch without holes in the middle of the bound edge; the notch for the thumb where there is one",
                    Shape.either(
                            Shape.text(),
                            new Parts(ordered("gap", Shape.length(), "thumb-cut", Shape.text()), List.of("gap"))),
                    "90 mm",
                    "{gap: 90 mm, thumb-cut: 60 x 20 mm}"),
            words(JobKeys.FAIL_ON, "SEVERITY", "least severity that fails", "error", FailOn.values()),
            value(
                    JobKeys.TABLES,
                    "FILES",
                    "the shop's own stocks, sizes, patterns, elements, punches",
                    "none",
                    "CSV files that add rows to the built-in tables or replace those of the same id",
                    Shape.either(Shape.text(), new Items(Shape.text())),
                    "shop-stocks.csv; shop-punches.csv",
                    "[shop-stocks.csv]"));

    private JobKeyDescriptions() {}

    private static Shape clearances() {
        return new Shape.Words(
                Clearances.all().stream().map(Clearances.Clearance::name).toList());
    }

    private static Parts stockParts() {
        Map<String, Shape> parts = new LinkedHashMap<>();
        parts.put("name", Shape.text());
        for (String number : List.of("grammage", "bulk", "caliper", "basis-weight")) {
            parts.put(number, NUMBER);
        }
        parts.put("basis-sheet", Shape.text());
        parts.put("measured", Shape.text());
        parts.put("tolerance", Shape.text());
        parts.put("kind", Shape.words("paper", "board", "film"));
        return new Parts(parts, List.of());
    }

    private static Map<String, Shape> ordered(String first, Shape firstShape, String second, Shape secondShape) {
        Map<String, Shape> parts = new LinkedHashMap<>();
        parts.put(first, firstShape);
        parts.put(second, secondShape);
        return parts;
    }

    /** A key with one of a few words. */
    private static KeyDescription words(String key, String label, String meaning, String builtIn, Enum<?>[] values) {
        List<String> words = Arrays.stream(values).map(Scalars::word).toList();
        return new KeyDescription(key, label, meaning, builtIn, "", "", words, new Shape.Words(words));
    }

    /** A key for which a value is built in. */
    private static KeyDescription value(
            String key, String label, String meaning, String builtIn, String form, Shape shape, String... examples) {
        return new KeyDescription(key, label, meaning, builtIn, "", form, List.of(examples), shape);
    }

    /** A key for which no one value is built in. */
    private static KeyDescription open(
            String key, String label, String meaning, String otherwise, String form, Shape shape, String... examples) {
        return new KeyDescription(key, label, meaning, null, otherwise, form, List.of(examples), shape);
    }
}
