package io.bindprep.cli.job;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.report.catalogue.CatalogueSection;
import io.bindprep.report.catalogue.CatalogueText;
import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.ValueShape;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Words that a shell offers behind an option of the job: the names of the built-in tables, and the key's own words. */
final class ShellWords {
    private ShellWords() {}

    /** Words for a key, asked only where a shell is taught. */
    static List<String> of(KeyDescription row) {
        return Stream.concat(named(row.key()), words(row.shape()))
                .distinct()
                // a shell takes each word whole
                .filter(word -> !word.contains(" "))
                .toList();
    }

    private static Stream<String> named(String key) {
        return switch (key) {
            case "stock" -> names(CatalogueSection.STOCKS);
            // a shell minds case, and nobody types a size in capitals
            case "trim", "press-sheet" -> names(CatalogueSection.SIZES).map(name -> name.toLowerCase(Locale.ROOT));
            case "punch" -> names(CatalogueSection.PUNCHES);
            case "clearance" -> names(CatalogueSection.CLEARANCES);
            case "pitch" ->
                Stream.of(Method.values()).flatMap(method -> Catalogue.builtIn().patterns().known(method).stream());
            case "depth" ->
                Catalogue.builtIn().punches().all().stream()
                        .flatMap(punch -> punch.depths().stream())
                        .map(depth -> depth.name());
            default -> Stream.empty();
        };
    }

    private static Stream<String> names(CatalogueSection section) {
        return CatalogueText.names(Catalogue.builtIn(), List.of(section)).stream();
    }

    private static Stream<String> words(ValueShape shape) {
        if (shape instanceof ValueShape.Either either) {
            return either.shapes().stream().flatMap(ShellWords::words);
        }
        return shape instanceof ValueShape.Words words ? words.words().stream() : Stream.empty();
    }
}
