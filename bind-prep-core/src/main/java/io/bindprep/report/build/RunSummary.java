package io.bindprep.report.build;

import io.bindprep.report.words.SafetyLine;
import io.bindprep.wording.Counted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * A run over documents as one table in Markdown, for the page that a build server shows of a build: the worst first. Safe on
 * several threads; the same bytes whichever row comes first.
 */
public final class RunSummary {
    /** Ending of its file's name, the point included. */
    public static final String ENDING = ".summary.md";

    /** Its name in settings, beside those of the formats. */
    public static final String ID = "summary";

    // servers take a page of 1 MiB at most (common practice, no source); longer ones nobody reads
    private static final int MOST_ROWS = 200;

    /** A row and the place of its document in the run. */
    private record Placed(int place, SummaryRow row) {}

    private static final Comparator<Placed> WORST_FIRST =
            Comparator.comparing((Placed p) -> p.row().rank()).thenComparing(Placed::place);

    private final Map<SummaryRow.Rank, Integer> counts = new EnumMap<>(SummaryRow.Rank.class);
    // its head is the least of the worst, which goes where a worse one comes
    private final PriorityQueue<Placed> worst = new PriorityQueue<>(WORST_FIRST.reversed());
    private int rows;

    /**
     * Takes in a document.
     *
     * @param place its place in the run
     */
    public synchronized void add(int place, SummaryRow row) {
        counts.merge(row.rank(), 1, Integer::sum);
        worst.add(new Placed(place, row));
        if (worst.size() > MOST_ROWS) {
            worst.remove();
        }
        rows++;
    }

    /**
     * The summary, ending in a line feed.
     *
     * @param documents number of documents that the run was asked for; those without a row were not reached
     */
    public synchronized String text(int documents) {
        int unreached = Math.max(0, documents - rows);
        StringBuilder text = new StringBuilder("## Print and bind check\n\n");
        List<String> parts = new ArrayList<>();
        Map<SummaryRow.Rank, Integer> all = new EnumMap<>(counts);
        if (unreached > 0) {
            all.merge(SummaryRow.Rank.UNCHECKED, unreached, Integer::sum);
        }
        all.forEach((rank, count) -> parts.add(count + " " + rank.counted()));
        text.append(Counted.of(Math.max(documents, rows), "document"))
                .append(parts.isEmpty() ? "" : ": " + String.join(", ", parts))
                .append(".\n");
        if (unreached > 0) {
            text.append("\nThe run ended early: ")
                    .append(Counted.of(unreached, "document"))
                    .append(" not reached, so nothing is known of ")
                    .append(unreached == 1 ? "it" : "them")
                    .append(".\n");
        }
        if (rows > 0) {
            text.append("\n| Document | Verdict | Leaves | Worst finding | Reports |\n|---|---|--:|---|---|\n");
            worst.stream()
                    .sorted(WORST_FIRST)
                    .forEach(placed -> text.append(placed.row().text()).append('\n'));
        }
        if (rows > worst.size()) {
            text.append("\nAnd ")
                    .append(Counted.of(rows - worst.size(), "more document"))
                    .append(", none of them worse than the last one here.\n");
        }
        return text.append('\n').append(SafetyLine.TEXT).append('\n').toString();
    }
}
