package io.bindprep.cli.console;

import io.bindprep.report.text.TextStyle;
import java.util.Map;

/**
 * Kinds of the two output streams.
 *
 * @param out whether results go to a terminal
 * @param err whether the rest goes to a terminal
 * @param variables the environment
 */
public record Terminal(boolean out, boolean err, Map<String, String> variables) {
    private static final int USUAL_WIDTH = 80;
    private static final int LEAST_WIDTH = 40;

    public Terminal {
        variables = Map.copyOf(variables);
    }

    /**
     * As the launcher saw it: "out", "err" or both in the property {@code bindprep.terminal}. Java itself cannot tell the
     * two streams apart, so that without the launcher neither is taken for a terminal.
     */
    public static Terminal ofProcess() {
        String seen = System.getProperty("bindprep.terminal", "");
        return new Terminal(seen.contains("out"), seen.contains("err"), System.getenv());
    }

    /** Colour only on a terminal that knows it, and only where nobody objects (the NO_COLOR convention). */
    public TextStyle style() {
        boolean objected = !variables.getOrDefault("NO_COLOR", "").isEmpty();
        return new TextStyle(out && !objected && !dumb(), width());
    }

    /** Returns true if a line that rewrites itself may be shown. */
    public boolean showsProgress() {
        return err && !dumb();
    }

    private boolean dumb() {
        return variables.getOrDefault("TERM", "dumb").equals("dumb");
    }

    private int width() {
        String columns = variables.getOrDefault("COLUMNS", "");
        if (!columns.matches("[1-9][0-9]{0,3}")) {
            return USUAL_WIDTH;
        }
        return Math.max(LEAST_WIDTH, Integer.parseInt(columns));
    }
}
