package io.bindprep.cli.console;

import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Options made by calls: a small check starts sooner than where annotations are read by reflection. */
public final class Choice {
    private Choice() {}

    /** An option with a value, null where it is not given. */
    public static OptionSpec of(Class<?> type, String name, String label, String description) {
        return OptionSpec.builder(name)
                .type(type)
                .paramLabel(label)
                .description(description)
                .build();
    }

    /** An option that stands for itself. */
    public static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build();
    }

    /** Returns true where that option is given. */
    public static boolean given(OptionSpec flag) {
        return Boolean.TRUE.equals(flag.<Boolean>getValue());
    }

    /** Values of what may be repeated, none where it is not given. */
    public static <T> List<T> all(ArgSpec arg) {
        List<T> values = arg.getValue();
        return values == null ? List.of() : values;
    }

    /** Options under a heading of their own. */
    public static ArgGroupSpec group(int order, String heading, OptionSpec... options) {
        ArgGroupSpec.Builder group =
                ArgGroupSpec.builder().validate(false).order(order).heading("%n" + heading + ":%n");
        for (OptionSpec option : options) {
            group.addArg(option);
        }
        return group.build();
    }
}
