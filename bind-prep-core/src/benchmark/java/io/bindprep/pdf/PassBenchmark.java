package io.bindprep.pdf;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import io.bindprep.problem.UnreadableInputException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Milliseconds of each pass over whole documents, with the launcher's settings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"})
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 4, time = 1)
public class PassBenchmark {
    /** Of the fixtures: text, and pictures that run through the binding edge. */
    @Param({"cookbook-letter.pdf", "planner-a5.pdf", "members-handbook-a4.pdf"})
    public String file;

    private OpenedPdf pdf;

    @Setup(Level.Trial)
    public void open() throws UnreadableInputException {
        pdf = opened();
    }

    @TearDown(Level.Trial)
    public void close() {
        pdf.close();
    }

    private OpenedPdf opened() throws UnreadableInputException {
        return Intake.open(new PdfSource(Path.of(System.getProperty("bindprep.root", ".."), "fixtures", file), file, null));
    }

    /** Reading the file, its page tree and its boxes. */
    @Benchmark
    public int intake() throws UnreadableInputException {
        try (OpenedPdf opened = opened()) {
            return opened.facts().pages().size();
        }
    }

    /** The first stage alone: nothing in doubt is near enough to be drawn. */
    @Benchmark
    public int outlines() {
        return marks(0);
    }

    /** Both stages. */
    @Benchmark
    public int outlinesAndDrawing() {
        return marks(15);
    }

    private int marks(double drawnMm) {
        int marks = 0;
        for (int page = 1; page <= pdf.facts().pages().size(); page++) {
            PageMarks found = pdf.scan(page, page % 2 == 1 ? PageEdge.LEFT : PageEdge.RIGHT, 15, drawnMm);
            marks += found.marks().size();
        }
        return marks;
    }

    /** Runs them all; system property {@code bindprep.root} names the checkout. */
    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder()
                        .include(PassBenchmark.class.getName())
                        .jvmArgsAppend("-Dbindprep.root=" + System.getProperty("bindprep.root", ".."))
                        .build())
                .run();
    }
}
