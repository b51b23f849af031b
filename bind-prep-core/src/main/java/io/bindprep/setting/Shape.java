package io.bindprep.setting;

import java.util.List;
import java.util.Map;

/** How a value is written in a file, in the terms of JSON. */
public sealed interface Shape {
    /** One of a few words. */
    record Words(List<String> words) implements Shape {
        public Words {
            words = List.copyOf(words);
        }
    }

    /** A whole number, both ends included. */
    record Whole(int least, int most) implements Shape {}

    /**
     * Text.
     *
     * @param pattern what the whole of it matches, a regular expression of both ECMA-262 and Java; "" for any text
     */
    record Text(String pattern) implements Shape {}

    /**
     * A map.
     *
     * @param parts what may stand in it, in the order to write it
     * @param required the parts that must
     */
    record Parts(Map<String, Shape> parts, List<String> required) implements Shape {
        public Parts {
            // Map.copyOf would lose the order
            parts = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(parts));
            required = List.copyOf(required);
        }
    }

    /** A map with names of the writer's own, all of one shape. */
    record Table(Shape value) implements Shape {}

    /** A list of any length. */
    record Items(Shape item) implements Shape {}

    /** Any of several shapes. */
    record Either(List<Shape> shapes) implements Shape {
        public Either {
            shapes = List.copyOf(shapes);
        }
    }

    /** One of a few words. */
    static Shape words(String... words) {
        return new Words(List.of(words));
    }

    /** Any text that is not blank. */
    static Shape text() {
        return new Text("");
    }

    /** Any of several shapes. */
    static Shape either(Shape... shapes) {
        return new Either(List.of(shapes));
    }

    /** A length with its unit, as {@code unit.Length} reads it. */
    static Shape length() {
        return new Text("\\s*" + LENGTH + "\\s*");
    }

    /** A length that may be negative. */
    static Shape signedLength() {
        return new Text("\\s*-?" + LENGTH + "\\s*");
    }

    /** The pattern of a length with its unit. */
    String LENGTH = "(\\d{1,6}(\\.\\d{1,9})?|(\\d{1,6}[ -])?\\d{1,6}/\\d{1,6})\\s*"
            + "([mM][mM]|[cC][mM]|[uU\\u00b5][mM]|[iI][nN]|\"|[mM][iI][lL]|[pP][tT])";
}
