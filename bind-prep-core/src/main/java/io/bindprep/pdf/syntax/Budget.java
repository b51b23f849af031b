package io.bindprep.pdf.syntax;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.function.Supplier;

/**
 * Bounds on the work one page and one document may ask for, because input files are hostile.
 *
 * <p>The operator bound decides first and is the same on every machine; the clock only backs it up, and counts this
 * thread's own processor time so that a busy machine changes no verdict.
 */
public final class Budget {
    /** The busiest page of 14 books of 9,924 pages stayed under a tenth of this (measured). */
    private static final int OPERATORS_PER_PAGE = 3_000_000;

    private static final int GLYPHS_PER_PAGE = 3_000_000;
    /** Forms, drawn glyphs and patterns, each time they are drawn. */
    private static final int DRAWINGS_PER_PAGE = 200_000;

    private static final long BYTES_PER_PAGE = 256L * 1024 * 1024;
    private static final Duration PAGE_TIME = Duration.ofSeconds(8);
    private static final Duration DOCUMENT_TIME = Duration.ofSeconds(12);
    private static final Duration TIME_PER_PAGE_OVER = Duration.ofMillis(80);

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private long documentEnd;
    private long pageEnd;
    private int operators;
    private int glyphs;
    private int drawings;
    private long bytes;

    /** Thrown through the interpreter when a page asks for too much. */
    public static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public Spent(String what) {
            super(what, null, false, false);
        }
    }

    public Budget(int pages) {
        documentEnd = cpu()
                + DOCUMENT_TIME.plus(TIME_PER_PAGE_OVER.multipliedBy(pages)).toNanos();
        startPage();
    }

    public void startPage() {
        pageEnd = Math.min(documentEnd, cpu() + PAGE_TIME.toNanos());
        again();
    }

    /** Counts the page's instructions anew, in what is left of its time. */
    public void again() {
        operators = 0;
        glyphs = 0;
        drawings = 0;
        bytes = 0;
    }

    /** Does work that keeps to another budget and takes nothing of this one. */
    public <T> T aside(Supplier<T> work) {
        long begun = cpu();
        try {
            return work.get();
        } finally {
            documentEnd += cpu() - begun;
        }
    }

    private static long cpu() {
        return THREADS.isCurrentThreadCpuTimeSupported() ? THREADS.getCurrentThreadCpuTime() : System.nanoTime();
    }

    public void operator() {
        if (++operators > OPERATORS_PER_PAGE) {
            throw new Spent("it holds more than " + OPERATORS_PER_PAGE + " drawing operators");
        }
        if ((operators & 0xff) == 0) {
            clock();
        }
    }

    public void glyph() {
        if (++glyphs > GLYPHS_PER_PAGE) {
            throw new Spent("it shows more than " + GLYPHS_PER_PAGE + " characters");
        }
        if ((glyphs & 0xfff) == 0) {
            clock();
        }
    }

    /** Counts content inside the content: forms in forms multiply. */
    public void drawing() {
        if (++drawings > DRAWINGS_PER_PAGE) {
            throw new Spent("it draws more than " + DRAWINGS_PER_PAGE + " forms");
        }
    }

    /** Counts unpacked content, of forms and glyphs each time they are drawn. */
    void bytes(int n) {
        bytes += n;
        if (bytes > BYTES_PER_PAGE) {
            throw new Spent("its drawing instructions unpack to more than 256 MiB");
        }
        clock();
    }

    public void clock() {
        if (cpu() - pageEnd > 0) {
            throw new Spent("it takes too long to read");
        }
    }
}
