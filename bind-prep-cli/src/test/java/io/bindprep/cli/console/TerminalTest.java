package io.bindprep.cli.console;

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

    @Test
    void ofManyFilesProgressTellsCountRateAndTimeLeft() {
        StringWriter err = new StringWriter();
        AtomicLong now = new AtomicLong();
        BatchProgress progress = new BatchProgress(new PrintWriter(err), true, now::get, 40, 1_000);
        progress.ofFile().pages(100, 100);
        progress.file(10, true);
        assertThat(err.toString()).isEmpty();
        now.set(4_000_000_000L);
        progress.file(40, false);
        // 50 of 1,000 bytes in 4 s leave 950 for 76 s
        assertThat(err.toString()).isEqualTo("\r2 of 40 files (1 not good), 25 pages/s, about 1 min left");
        progress.pause();
        now.set(8_000_000_000L);
        progress.file(450, true);
        assertThat(err.toString()).endsWith(" \r");
        progress.resume();
        now.set(12_000_000_000L);
        progress.ofFile().pages(20, 30);
        assertThat(err.toString()).endsWith("\r3 of 40 files (1 not good), 10 pages/s, about 12 s left");
    }
}
