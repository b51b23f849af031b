package io.bindprep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageBasics;
import io.bindprep.marks.Stage;
import io.bindprep.paper.Sheet;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Records that write their equality out compare every component, as the language says of a record (JLS 17, 8.10.3). */
class RecordEqualityTest {
    private static final Mark MARK = mark("one");
    private static final Stock STOCK = stock("one");

    /** Two values of each type of component. */
    private static final Map<Class<?>, List<Object>> VALUES = Map.ofEntries(
            Map.entry(String.class, List.of("one", "other")),
            Map.entry(int.class, List.of(1, 2)),
            Map.entry(long.class, List.of(1L, 2L)),
            Map.entry(double.class, List.of(1.0, 2.0)),
            Map.entry(boolean.class, List.of(false, true)),
            Map.entry(BigDecimal.class, List.of(BigDecimal.ONE, BigDecimal.TEN)),
            Map.entry(Length.class, List.of(Length.ZERO, Length.ofMm(1))),
            Map.entry(List.class, List.of(List.of(), List.of(1))),
            Map.entry(Shape.class, List.of(new Rectangle2D.Double(0, 0, 1, 1), new Rectangle2D.Double(0, 0, 1, 2))),
            Map.entry(Mark.class, List.of(MARK, mark("other"))),
            Map.entry(Stock.class, List.of(STOCK, stock("other"))),
            Map.entry(Sheet.class, List.of(sheet(1), sheet(2))),
            Map.entry(PageBasics.class, List.of(PageBasics.NONE, new PageBasics(List.of("a font"), null, null))));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "io.bindprep.unit.Length",
                "io.bindprep.paper.Stock",
                "io.bindprep.paper.Sheet",
                "io.bindprep.paper.StackEstimator$Layered",
                "io.bindprep.paper.StackReason$Size",
                "io.bindprep.marks.Mark",
                "io.bindprep.marks.Hit",
                "io.bindprep.marks.PageVerdict",
                "io.bindprep.run.MaterialCount$Key",
                "io.bindprep.run.MaterialCount$Size"
            })
    void everyComponentCounts(String name) throws ReflectiveOperationException {
        Class<?> type = Class.forName(name);
        RecordComponent[] components = type.getRecordComponents();
        Constructor<?> constructor = type.getDeclaredConstructor(
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        constructor.setAccessible(true);
        Object[] values =
                Arrays.stream(components).map(component -> value(component, 0)).toArray();
        Object one = constructor.newInstance(values);

        assertEquals(one, constructor.newInstance(values));
        assertEquals(one.hashCode(), constructor.newInstance(values).hashCode());
        assertNotEquals(one, null);
        assertNotEquals(one, "one");
        for (int i : IntStream.range(0, components.length).toArray()) {
            Object[] changed = values.clone();
            changed[i] = value(components[i], 1);
            assertNotEquals(one, constructor.newInstance(changed), components[i]::getName);
        }
    }

    private static Object value(RecordComponent component, int which) {
        Class<?> type = component.getType();
        Object[] words = type.getEnumConstants();
        return words == null ? VALUES.get(type).get(which) : words[which];
    }

    private static Mark mark(String words) {
        return new Mark(MarkKind.values()[0], Stage.values()[0], new Rectangle2D.Double(), 0, 0, 0, 0, words);
    }

    private static Stock stock(String name) {
        return new Stock(name, Stock.Kind.PAPER, null, BigDecimal.ONE, BigDecimal.ONE, "", false);
    }

    private static Sheet sheet(int layers) {
        return new Sheet(STOCK, layers, Length.ZERO, Length.ZERO);
    }
}
