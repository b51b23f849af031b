import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Adds up the lines of a jacoco.csv: {@code java LineCoverage.java NAME FILE}. */
class LineCoverage {
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[1]);
        if (!Files.exists(file)) {
            return; // the parent has no code
        }
        List<String> rows = Files.readAllLines(file);
        List<String> columns = List.of(rows.get(0).split(","));
        long missed = sum(rows, columns.indexOf("LINE_MISSED"));
        long covered = sum(rows, columns.indexOf("LINE_COVERED"));
        System.out.printf(
                Locale.ROOT,
                "%s: tests run through %.1f %% of the lines, %d of %d%n",
                args[0],
                100.0 * covered / (missed + covered),
                covered,
                missed + covered);
    }

    private static long sum(List<String> rows, int column) {
        return rows.stream()
                .skip(1)
                .mapToLong(row -> Long.parseLong(row.split(",")[column]))
                .sum();
    }
}
