package io.bindprep.setting;

import java.util.List;
import java.util.Map;

/** Form of a value in a file, in the terms of JSON. */
public sealed interface ValueShape {
    /** One of a few words. */
    record Words(List<String> words) implements ValueShape {
        public Words {
            words = List.copyOf(words);
        }
    }

    /** A whole number, both ends included. */
    record Whole(int least, int most) implements ValueShape {}

    /**
     * Text.
     *
     * @param pattern what the whole of it matches, a regular expression of both ECMA-262 and Java; "" for any text
     */
    record Text(String pattern) implements ValueShape {}

    /**
     * A map.
     *
     * @param parts what may stand in it, in the order to write it
     * @param required the parts that must
     */
    record Parts(Map<String, ValueShape> parts, List<String> required) implements ValueShape {
        public Parts {
            // Map.copyOf would lose the order
            parts = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(parts));
            required = List.copyOf(required);
        }
    }

    /** A map with names of the writer's own, all of one shape. */
    record Table(ValueShape value) implements ValueShape {}

    /** A list of any length. */
    record Items(ValueShape item) implements ValueShape {}

    /** Any of several shapes. */
    record Either(List<ValueShape> shapes) implements ValueShape {
        public Either {
            shapes = List.copyOf(shapes);
        }
    }

    /** One of a few words. */
    static ValueShape words(String... words) {
        return new Words(List.of(words));
    }

    /** Any text that is not blank. */
    static ValueShape text() {
        return new Text("");
    }

    /** Any of several shapes. */
    static ValueShape either(ValueShape... shapes) {
        return new Either(List.of(shapes));
    }

    /** A length with its unit, as {@code unit.Length} reads it. */
    static ValueShape length() {
        return new Text("\\s*" + LENGTH + "\\s*");
    }

    /** A length that may be negative. */
    static ValueShape signedLength() {
        return new Text("\\s*-?" + LENGTH + "\\s*");
    }

    /** The pattern of a length with its unit. */
    String LENGTH = "(\\d{1,6}([.,]\\d{1,9})?|(\\d{1,6}[ -])?\\d{1,6}/\\d{1,6})\\s*"
            + "([mM][mM]|[cC][mM]|[uU\\u00b5][mM]|[iI][nN]|\"|[mM][iI][lL]|[pP][tT])";
}
