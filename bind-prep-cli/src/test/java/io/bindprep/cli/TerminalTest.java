package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class TerminalTest {
    private static final Map<String, String> XTERM = Map.of("TERM", "xterm");

    @Test
    void colourOnlyOnATerminalThatKnowsItAndNobodyObjects() {
        assertThat(new Terminal(true, true, XTERM).style().colour()).isTrue();
        assertThat(new Terminal(false, true, XTERM).style().colour()).isFalse();
        assertThat(new Terminal(true, true, Map.of("TERM", "dumb")).style().colour())
                .isFalse();
        assertThat(new Terminal(true, true, Map.of()).style().colour()).isFalse();
        assertThat(new Terminal(true, true, Map.of("TERM", "xterm", "NO_COLOR", "1"))
                        .style()
                        .colour())
                .isFalse();
        // the convention: an empty one says nothing
        assertThat(new Terminal(true, true, Map.of("TERM", "xterm", "NO_COLOR", ""))
                        .style()
                        .colour())
                .isTrue();
    }

    @Test
    void widthIsTheTerminalsOrEightyColumns() {
        assertThat(width("132")).isEqualTo(132);
        assertThat(width("10")).isEqualTo(40);
        for (String nonsense : new String[] {"", "0", "-5", "wide", "99999999999"}) {
            assertThat(width(nonsense)).as(nonsense).isEqualTo(80);
        }
        assertThat(new Terminal(false, false, Map.of()).style().width()).isEqualTo(80);
    }

    private static int width(String columns) {
        return new Terminal(true, true, Map.of("COLUMNS", columns)).style().width();
    }

    @Test
    void progressOnlyOnATerminal() {
        assertThat(new Terminal(false, true, XTERM).showsProgress()).isTrue();
        assertThat(new Terminal(true, false, XTERM).showsProgress()).isFalse();
        assertThat(new Terminal(true, true, Map.of("TERM", "dumb")).showsProgress())
                .isFalse();
    }

    @Test
    void progressWaitsAMomentCountsAndLeavesNothingBehind() {
        StringWriter err = new StringWriter();
        AtomicLong now = new AtomicLong();
        try (ProgressLine line = new ProgressLine(new PrintWriter(err), true, now::get)) {
            line.pages(1, 50);
            assertThat(err.toString()).isEmpty();
            now.set(1_000_000_000L);
            line.pages(20, 50);
            line.pages(21, 50);
        }
        assertThat(err.toString()).isEqualTo("\rpage 20 of 50\r" + " ".repeat(13) + "\r");
    }

    @Test
    void progressThatIsNotShownWritesNothing() {
        StringWriter err = new StringWriter();
        AtomicLong now = new AtomicLong();
        try (ProgressLine line = new ProgressLine(new PrintWriter(err), false, now::get)) {
            now.set(Long.MAX_VALUE / 2);
            line.pages(20, 50);
        }
        assertThat(err.toString()).isEmpty();
    }
}
