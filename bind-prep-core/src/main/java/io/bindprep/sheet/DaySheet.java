package io.bindprep.sheet;

import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.day.Amount;
import io.bindprep.day.Changes;
import io.bindprep.day.Day;
import io.bindprep.day.DayJob;
import io.bindprep.day.Quote;
import io.bindprep.day.Setting;
import io.bindprep.day.Supplies;
import io.bindprep.job.Order;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Counted;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Printable;
import io.bindprep.wording.Units;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Content of the list of a day, before it is laid out.
 *
 * @param summary sentences for its head
 * @param jobs in order
 * @param heldBack jobs that must not be punched, each with why
 * @param supplies rows of a table, its heading first
 * @param quote rows of a table, its heading first; empty where no rates were given
 * @param quoteNotes what time and cost rest on
 * @param safety what comes before all of it
 * @param sheets the sheet of each job, those held back last
 */
public record DaySheet(
        List<String> summary,
        List<Line> jobs,
        List<String> heldBack,
        List<List<String>> supplies,
        List<List<String>> quote,
        List<String> quoteNotes,
        String safety,
        List<JobSheet> sheets) {
    private static final int DECIMALS = 2;
    private static final String TIME = "Total time";
    private static final String COST = "Total cost";

    /**
     * A job in its place.
     *
     * @param work copies, lifts and strokes
     * @param settings what is set anew for it, one line each
     */
    public record Line(String name, String verdict, String work, List<String> settings) {
        public Line {
            settings = List.copyOf(settings);
        }
    }

    public DaySheet {
        summary = List.copyOf(summary);
        jobs = List.copyOf(jobs);
        heldBack = List.copyOf(heldBack);
        supplies = supplies.stream().map(List::copyOf).toList();
        quote = quote.stream().map(List::copyOf).toList();
        quoteNotes = List.copyOf(quoteNotes);
        sheets = List.copyOf(sheets);
    }

    /** The list of a day. */
    public static DaySheet of(Day day) {
        List<JobSheet> sheets = new ArrayList<>();
        day.list().forEach(e -> sheets.add(JobSheet.of(e.job().report())));
        day.heldBack().forEach(j -> sheets.add(JobSheet.of(j.report())));
        return new DaySheet(
                summary(day),
                day.list().stream().map(DaySheet::line).toList(),
                day.heldBack().stream().map(DaySheet::heldBack).toList(),
                supplies(day),
                quote(day),
                quoteNotes(day),
                SafetyLine.TEXT,
                sheets);
    }

    /** "3 jobs", the heading. */
    public String title() {
        return "Day at the punch: " + Counted.of(jobs.size(), "job");
    }

    private static List<String> summary(Day day) {
        List<String> lines = new ArrayList<>();
        if (!day.heldBack().isEmpty()) {
            lines.add(Counted.of(day.heldBack().size(), "job") + " held back: do not punch. No sum below counts "
                    + (day.heldBack().size() == 1 ? "it." : "them."));
        }
        if (day.list().isEmpty()) {
            lines.add("No job can be punched.");
            return lines;
        }
        long lifts = day.list().stream().mapToLong(DaySheet::lifts).sum();
        lines.add(Counted.of(day.strokes(), "stroke") + ", " + Counted.of(lifts, "lift") + " in all"
                + (day.strokes() < lifts ? ": covers of several copies go into the punch together." : "."));
        if (day.list().size() > 1) {
            lines.add("Changes between jobs in this order: " + changes(day.changes()) + ". In the order given: "
                    + changes(day.given()) + "."
                    + (day.least() ? " No order changes less." : " Too many different jobs to try every order."));
        }
        return lines;
    }

    private static String changes(Changes changes) {
        List<String> parts = new ArrayList<>();
        for (Setting setting : Setting.values()) {
            if (changes.of(setting) > 0) {
                parts.add(setting.label().toLowerCase(Locale.ROOT) + " " + changes.of(setting));
            }
        }
        return changes.total() + (parts.isEmpty() ? "" : " (" + String.join(", ", parts) + ")");
    }

    private static long lifts(Day.Entry entry) {
        Report report = entry.job().report();
        return (long) report.run().lifts().size() * report.job().copies();
    }

    private static Line line(Day.Entry entry) {
        Report report = entry.job().report();
        List<String> settings = new ArrayList<>();
        for (Day.Made made : entry.settings()) {
            String before = made.saidBefore();
            settings.add(made.setting().label() + ": " + made.said() + (before == null ? "" : " (was " + before + ")"));
        }
        if (entry.settings().isEmpty()) {
            settings.add("Nothing to change.");
        }
        if (entry.within().total() > 0) {
            settings.add("Between its volumes: " + changes(entry.within()) + "; see its sheet.");
        }
        String work =
                whose(report.job().order()) + Counted.of(report.run().lifts().size(), "lift") + " per copy, "
                        + (report.job().copies() == 1 ? "1 copy" : report.job().copies() + " copies") + ", "
                        + Counted.of(report.run().strokes(), "stroke");
        return new Line(entry.job().name(), VerdictSentence.of(report), work, settings);
    }

    /** Number, customer and due date, as far as the job says them. */
    private static String whose(Order order) {
        String said = Stream.of(
                        order.number() == null ? null : "job " + order.number(),
                        order.customer(),
                        order.due() == null ? null : "due " + order.due())
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
        return said.isEmpty() ? "" : said + ": ";
    }

    private static String heldBack(DayJob job) {
        String first = job.report().findings().stream()
                .filter(f -> f.severity() == Severity.ERROR)
                .map(f -> " " + f.message())
                .findFirst()
                .orElse("");
        return job.name() + ": " + VerdictSentence.of(job.report()) + first;
    }

    private static List<List<String>> supplies(Day day) {
        Supplies supplies = day.supplies();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("What", "Size", "Needed", "Overs", "Issue"));
        for (Supplies.Sheets s : supplies.sheets()) {
            String press = s.sheet();
            rows.add(List.of(
                    s.stock() + (s.cover() ? ", covers" : ""),
                    (press == null ? "" : "press sheet " + press + ", ") + area(day, s),
                    "" + s.needed(),
                    "" + s.overs(),
                    Counted.of(s.total(), "sheet")));
        }
        for (Supplies.Pieces p : supplies.elements()) {
            rows.add(List.of(
                    p.key(),
                    "pitch " + p.pitch(),
                    "" + p.pieces(),
                    "" + p.spares(),
                    Counted.of(p.total(), "piece")
                            + (p.loops() == 0 ? "" : ", " + Counted.of(p.loops(), "loop"))
                            + (p.spools() == 0 ? "" : ", " + Counted.of(p.spools(), "spool") + " of " + p.perSpool())));
        }
        if (supplies.knownG().signum() > 0) {
            rows.add(List.of(
                    "Weight without elements and overs",
                    "",
                    (supplies.weightWhole() ? "" : "at least ") + day.measures().weight(supplies.knownG()),
                    "",
                    ""));
        }
        return rows;
    }

    /** In the day's units, or in those of the sheet itself where the day has both. */
    private static String area(Day day, Supplies.Sheets s) {
        boolean both = day.measures().units() == Units.BOTH;
        return (both ? Measures.ofPaper(s.width(), s.height()) : day.measures()).area(s.width(), s.height());
    }

    private static List<List<String>> quote(Day day) {
        Quote quote = day.quote();
        if (quote == null) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("What", "Count", "Rate", "Sum"));
        quote.work().forEach(l -> rows.add(List.of(l.what(), l.count(), text(l.rate(), ""), minutes(l.sum()))));
        rows.add(List.of(TIME + least(quote), "", "", minutes(quote.minutes())));
        String currency = quote.currency().isEmpty() ? "" : " " + quote.currency();
        quote.supplies().forEach(l -> rows.add(row(l, currency)));
        rows.add(List.of(COST + least(quote), "", "", text(quote.cost(), currency)));
        return rows;
    }

    /** Returns true if a row of the quote is a total. */
    public static boolean total(List<String> row) {
        return row.get(0).startsWith(TIME) || row.get(0).startsWith(COST);
    }

    private static String least(Quote quote) {
        return quote.whole() ? "" : ", at least";
    }

    private static List<String> row(Quote.Line line, String unit) {
        return List.of(line.what(), line.count(), text(line.rate(), ""), text(line.sum(), unit));
    }

    /** Whole minutes, which is finer than anyone keeps them; tenths of a few. */
    private static String minutes(Amount amount) {
        return text(amount, amount.high().compareTo(BigDecimal.TEN) < 0 ? 1 : 0, " min");
    }

    private static String text(Amount amount, String unit) {
        return text(amount, DECIMALS, unit);
    }

    private static String text(Amount amount, int decimals, String unit) {
        String low = LengthText.plain(amount.low(), decimals);
        String high = LengthText.plain(amount.high(), decimals);
        return (low.equals(high) ? low : low + " to " + high) + unit;
    }

    private static List<String> quoteNotes(Day day) {
        Quote quote = day.quote();
        if (quote == null) {
            return List.of();
        }
        List<String> notes = new ArrayList<>();
        notes.add("Every rate is the shop's own, from " + quote.rates()
                + "; strokes, changes and supplies are those of this" + " list. Printing and cutting are not counted.");
        if (!quote.whole()) {
            notes.add("No rate for: " + String.join("; ", quote.missing()) + ". Not counted.");
        }
        return notes;
    }

    /** Time and cost as lines of text; none where no rates were given. */
    public List<String> quoteText() {
        List<String> lines = new ArrayList<>();
        table(lines, "Time and cost", quote);
        lines.addAll(quoteNotes);
        return lines.stream().map(Printable::of).toList();
    }

    /** The list as lines of text. */
    public List<String> text() {
        List<String> lines = new ArrayList<>();
        lines.add(title());
        lines.addAll(summary);
        heldBack.forEach(h -> lines.add("  HELD BACK  " + h));
        int number = 1;
        for (Line job : jobs) {
            lines.add("");
            lines.add(number++ + "  " + job.name() + ": " + job.work());
            lines.add("   " + job.verdict());
            job.settings().forEach(s -> lines.add("   " + s));
        }
        table(lines, "Supplies", supplies);
        lines.addAll(quoteText());
        lines.add("");
        lines.add(safety);
        return lines.stream().map(Printable::of).toList();
    }

    private static void table(List<String> lines, String heading, List<List<String>> rows) {
        if (rows.size() > 1) {
            lines.add("");
            lines.add(heading);
            rows.forEach(r -> lines.add("  "
                    + String.join(
                            " | ", r.stream().map(c -> c.isEmpty() ? "-" : c).toList())));
        }
    }
}
