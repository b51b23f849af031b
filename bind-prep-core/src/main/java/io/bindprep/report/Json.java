package io.bindprep.report;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Values as JSON: plain decimal numbers, lower-case words, line feeds. */
final class Json {
    private static final int DECIMALS = 4;

    // the printer's own default is the system's line end, which would change the bytes from machine to machine
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build()
            .writer()
            .with(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));

    private Json() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static String text(ObjectNode root) {
        return WRITER.writeValueAsString(root) + "\n";
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A measured number; fails on what is none, which JSON cannot say. */
    static BigDecimal rounded(double number) {
        return rounded(BigDecimal.valueOf(number), DECIMALS);
    }

    /** A number without needless zeros, but with one decimal, so that it reads as measured. */
    static BigDecimal rounded(BigDecimal number, int decimals) {
        BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 1 ? rounded.setScale(1, RoundingMode.UNNECESSARY) : rounded;
    }

    static void mm(ObjectNode node, String name, @Nullable Length length) {
        if (length == null) {
            node.putNull(name);
        } else {
            node.put(name, rounded(length.mm()));
        }
    }

    static void pair(ObjectNode node, String name, double first, double second) {
        node.putArray(name).add(rounded(first)).add(rounded(second));
    }

    static void strings(ObjectNode node, String name, List<String> texts) {
        ArrayNode array = node.putArray(name);
        texts.forEach(array::add);
    }

    static void integers(ObjectNode node, String name, List<Integer> numbers) {
        ArrayNode array = node.putArray(name);
        numbers.forEach(array::add);
    }
}
