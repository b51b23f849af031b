package io.bindprep.cli.batch;

import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/** Results of many files: counts by outcome, and the worst by name. */
public final class Summary {
    private static final int MOST_NAMED = 12;

    /** One that is not good, and its place among the files. */
    private record Bad(Answer answer, int place) {}

    private static final Comparator<Bad> WORST_FIRST = Comparator.comparing(
                    (Bad b) -> b.answer().kind())
            .thenComparing(b -> -b.answer().weight())
            .thenComparing(Bad::place);

    private final Map<Answer.Kind, Integer> counts = new EnumMap<>(Answer.Kind.class);
    // its head is the least of the worst, which goes where a worse one comes
    private final PriorityQueue<Bad> worst = new PriorityQueue<>(WORST_FIRST.reversed());
    private int files;

    /** Number of files taken in. */
    public int files() {
        return files;
    }

    /** Takes in a file. */
    public void add(Answer answer) {
        counts.merge(answer.kind(), 1, Integer::sum);
        if (answer.kind() != Answer.Kind.GOOD) {
            worst.add(new Bad(answer.brief(), files));
            if (worst.size() > MOST_NAMED) {
                worst.remove();
            }
        }
        files++;
    }

    /**
     * Lines that end in a line feed.
     *
     * @param asked number of files that were to be checked
     */
    public String text(int asked) {
        List<String> parts = new ArrayList<>();
        int bad = 0;
        for (Map.Entry<Answer.Kind, Integer> count : counts.entrySet()) {
            boolean good = count.getKey() == Answer.Kind.GOOD;
            bad += good ? 0 : count.getValue();
            parts.add(count.getValue() + " " + count.getKey().counted());
        }
        StringBuilder text = new StringBuilder();
        text.append(files)
                .append(files == 1 ? " file" : " files")
                .append(parts.isEmpty() ? "" : ": " + String.join(", ", parts))
                .append('\n');
        if (files < asked) {
            text.append("Not checked: ")
                    .append(asked - files)
                    .append(" of ")
                    .append(asked)
                    .append(" files, as the run ended early; nothing is known of them\n");
        }
        List<Bad> named = new ArrayList<>(worst);
        named.sort(WORST_FIRST);
        for (Bad one : named) {
            text.append("  ")
                    .append(one.answer().kind().column())
                    .append(Printable.of(
                            one.answer().name() + ": " + one.answer().gist()))
                    .append('\n');
        }
        if (bad > named.size()) {
            text.append("  and ").append(bad - named.size()).append(" more that are not good\n");
        }
        return text.toString();
    }
}
