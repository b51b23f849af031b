package io.bindprep.catalogue;

import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.ValueShape;
import io.bindprep.setting.ValueShape.Either;
import io.bindprep.setting.ValueShape.Items;
import io.bindprep.setting.ValueShape.Parts;
import io.bindprep.setting.ValueShape.Text;
import io.bindprep.setting.ValueShape.Whole;
import io.bindprep.wording.Terms;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Every key of a punch file, in the order of the file. */
final class PunchKeys {
    static final String ID = "id";
    static final String PATTERN = "pattern";
    static final String PINS = "pins";
    static final String FIRST_PIN = "first-pin";
    static final String PULLABLE = "pullable";
    static final String DEPTHS = "depths";
    static final String LIFT = "lift";
    static final String LONGEST_EDGE = "longest-edge";
    static final String MINIMUM_WEB = "minimum-web";
    static final String ELEMENTS = "elements";
    static final String PUNCHING_TOLERANCE = "punching-tolerance";
    static final String MEASURED = "measured";
    static final String SOURCE = "source";

    static final String THICKNESS = "thickness";
    static final List<String> KINDS = List.of("paper", "board", "film");
    static final List<String> ERRORS = List.of("depth", "side", "skew", "pitch");

    private static final ValueShape LIMIT = new Text(
            "\\s*(" + ValueShape.LENGTH + "|\\d{1,4} sheets?|" + ValueShape.LENGTH + "\\s*,\\s*\\d{1,4} sheets?)\\s*");
    private static final ValueShape ERROR =
            new Text("\\s*-?" + ValueShape.LENGTH + "\\s*(\\+-|\u00b1)\\s*" + ValueShape.LENGTH + "\\s*");
    private static final ValueShape PIN =
            new Either(List.of(new Whole(1, Punches.MOST_PINS), new Text("\\s*\\d{1,4}(-\\d{1,4})?\\s*")));

    static final List<KeyDescription> ALL = List.of(
            key(ID, "its name", null, "the name of the file", "", ValueShape.text(), "bench-3-1"),
            KeyDescription.required(
                    PATTERN,
                    "the hole pattern that it cuts",
                    "the id of a pattern",
                    ValueShape.text(),
                    List.of("W3_1i-square-0t")),
            KeyDescription.required(PINS, "how many pins it has", "", new Whole(1, Punches.MOST_PINS), List.of("34")),
            key(
                    FIRST_PIN,
                    "from the side guide to the middle of pin 1",
                    "movable",
                    "",
                    "a length where the guide is fixed; movable where a row can be centred by it",
                    ValueShape.either(ValueShape.words("movable"), ValueShape.length()),
                    "movable",
                    "1/6 in"),
            key(
                    PULLABLE,
                    "the pins that can be taken out, numbered from the side guide",
                    "all",
                    "",
                    "all, none, or pins and ranges of pins",
                    ValueShape.either(
                            new Text("\\s*(all|none|\\d{1,4}(-\\d{1,4})?([ ,]+\\d{1,4}(-\\d{1,4})?)*)\\s*"),
                            new Whole(1, Punches.MOST_PINS),
                            new Items(PIN)),
                    "all",
                    "1-2 33-34",
                    "[1, 2, 33-34]"),
            key(
                    DEPTHS,
                    "the settings of its depth stop: the name of each, and what it gives from the binding edge to the middle"
                            + " of the holes, in the middle of the row",
                    null,
                    "the pattern's own centre, fixed",
                    "a length, and where the stack decides the stack from which on it is taken",
                    new ValueShape.Table(ValueShape.either(
                            ValueShape.length(),
                            new Text("\\s*" + ValueShape.LENGTH + "\\s*,\\s*stack from\\s+" + ValueShape.LENGTH
                                    + "\\s*"))),
                    "{shallow: 4.5 mm, middle: 0.2 in, deep: 6 mm}",
                    "{shallow: 4.5 mm, middle: \"0.2 in, stack from 5/16 in\", deep: \"6 mm, stack from 9/16 in\"}"),
            key(
                    LIFT,
                    "the thickest lift that it takes, and what else holds for a kind of stock",
                    "1.9 mm",
                    "",
                    "a thickness for all, sheets or a thickness for a kind",
                    ValueShape.either(
                            ValueShape.length(),
                            new Parts(parts(THICKNESS, ValueShape.length(), KINDS, LIMIT), List.of(THICKNESS))),
                    "1.9 mm",
                    "{thickness: 1.9 mm, paper: 20 sheets, board: 2 sheets, film: \"0.5 mm, 3 sheets\"}"),
            key(
                    LONGEST_EDGE,
                    "the longest binding edge that it takes",
                    "17 in",
                    "",
                    "",
                    ValueShape.length(),
                    "14 in",
                    "330 mm"),
            key(
                    MINIMUM_WEB,
                    "minimum paper between a hole and the end of the leaf",
                    null,
                    "that of the pattern's generic punch",
                    "",
                    ValueShape.length(),
                    "3/16 in"),
            key(
                    ELEMENTS,
                    "the elements that its closer takes",
                    null,
                    "no bound is known",
                    "a range or a list",
                    ValueShape.either(
                            new Text("\\s*" + ValueShape.LENGTH + "(\\s+to\\s+" + ValueShape.LENGTH + ")?\\s*"),
                            new Items(ValueShape.length())),
                    "3/16 in to 9/16 in",
                    "[1/4 in, 5/16 in, 3/8 in]"),
            key(
                    PUNCHING_TOLERANCE,
                    "how far its holes were measured to lie off, either way",
                    null,
                    "not measured: the job's " + Terms.PUNCHING_TOLERANCE + " holds",
                    "",
                    ValueShape.length(),
                    "0.5 mm"),
            key(
                    MEASURED,
                    "how it was measured to stand, each error with how sure it is: depth (the middle of the row of pins deeper"
                            + " than the settings say), side (pin 1 too far from the side guide), skew (the last pin deeper"
                            + " than pin 1), pitch (the whole row too long); less than nothing for the other way",
                    null,
                    "not measured",
                    "",
                    new Parts(parts(ERRORS.get(0), ERROR, ERRORS.subList(1, 4), ERROR), List.of()),
                    "{depth: 0 mm +- 0.2 mm, side: 0.3 mm +- 0.1 mm, skew: -0.2 mm +- 0.1 mm, pitch: 0 mm +- 0.1 mm}"),
            key(
                    SOURCE,
                    "where these numbers come from",
                    null,
                    "the file",
                    "",
                    ValueShape.text(),
                    "\"measured on waste\""));

    private PunchKeys() {}

    static List<String> names() {
        return ALL.stream().map(KeyDescription::key).toList();
    }

    private static Map<String, ValueShape> parts(
            String first, ValueShape firstShape, List<String> others, ValueShape otherShape) {
        Map<String, ValueShape> parts = new LinkedHashMap<>();
        parts.put(first, firstShape);
        others.forEach(name -> parts.put(name, otherShape));
        return parts;
    }

    private static KeyDescription key(
            String key,
            String meaning,
            @Nullable String builtIn,
            String otherwise,
            String form,
            ValueShape shape,
            String... examples) {
        return new KeyDescription(key, "", meaning, builtIn, otherwise, form, List.of(examples), shape);
    }
}
