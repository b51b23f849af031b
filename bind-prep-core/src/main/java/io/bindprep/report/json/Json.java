package io.bindprep.report.json;

import io.bindprep.unit.Length;
import io.bindprep.wording.Printable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** Values as JSON: plain decimal numbers, lower-case words, line feeds; members in the order of a record's components. */
public final class Json {
    private static final int DECIMALS = 4;

    private static final ObjectWriter LINE = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .addModule(new SimpleModule().addSerializer(new Words()))
            .build()
            .writer();

    // the printer's own default is the system's line end, which would change the bytes from machine to machine
    private static final ObjectWriter WRITER =
            LINE.with(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));

    private Json() {}

    /** A record or tree, indented, ending in a line feed. */
    public static String text(Object root) {
        return Printable.json(WRITER.writeValueAsString(root)) + "\n";
    }

    /** A record or tree on one line, ending in a line feed. */
    static String line(Object root) {
        return Printable.json(LINE.writeValueAsString(root)) + "\n";
    }

    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A measured number; fails on what is none, which JSON cannot say. */
    public static BigDecimal rounded(double number) {
        return rounded(BigDecimal.valueOf(number), DECIMALS);
    }

    /** A measured number where there is one. */
    static @Nullable BigDecimal roundedOrNull(@Nullable Double number) {
        return number == null ? null : rounded(number);
    }

    /** A number without needless zeros, but with one decimal, so that it reads as measured. */
    public static BigDecimal rounded(BigDecimal number, int decimals) {
        BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 1 ? rounded.setScale(1, RoundingMode.UNNECESSARY) : rounded;
    }

    public static BigDecimal mm(Length length) {
        return rounded(length.mm());
    }

    /** Millimetres where there is a length. */
    public static @Nullable BigDecimal mmOrNull(@Nullable Length length) {
        return length == null ? null : mm(length);
    }

    /** Constants as words. */
    private static final class Words extends StdSerializer<Enum<?>> {
        Words() {
            super(Enum.class);
        }

        @Override
        public void serialize(Enum<?> constant, JsonGenerator out, SerializationContext context) {
            out.writeString(word(constant));
        }
    }
}
