package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.catalogue.Method;
import io.bindprep.day.Amount;
import io.bindprep.day.Changes;
import io.bindprep.day.Day;
import io.bindprep.day.DayJob;
import io.bindprep.day.Quote;
import io.bindprep.day.Setting;
import io.bindprep.day.Supplies;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a day as JSON, each job with its whole report. {@code io/bindprep/schema/day.schema.json} describes every member. */
public final class JsonDay {
    private static final int DECIMALS = 2;

    private JsonDay() {}

    /** The day, indented, ending in a line feed; the same bytes for the same day everywhere. */
    public static String write(Day day) {
        return Json.text(Root.of(day));
    }

    /** The whole of it. */
    record Root(
            @JsonPropertyDescription("version of this format, that of the reports in it")
            int schemaVersion,

            @JsonPropertyDescription("jobs in the order in which they are punched")
            List<Entry> jobs,

            @JsonPropertyDescription("jobs that must not be punched as they are; in no sum")
            List<HeldBack> heldBack,

            @JsonPropertyDescription("settings made anew between jobs and volumes, in this order")
            Map<String, Integer> changes,

            @JsonPropertyDescription("the same in the order given")
            Map<String, Integer> changesAsGiven,

            @JsonPropertyDescription("whether no order changes less")
            boolean least,

            @JsonPropertyDescription("strokes of the punch for the list")
            long strokes,

            @JsonPropertyDescription("what the list uses up")
            Needs supplies,

            @JsonPropertyDescription("time and cost by the shop's rates; null where none were given") @Nullable
            Costs quote) {
        static Root of(Day day) {
            Quote quote = day.quote();
            return new Root(
                    JsonReport.SCHEMA_VERSION,
                    day.list().stream().map(Entry::of).toList(),
                    day.heldBack().stream().map(HeldBack::of).toList(),
                    counts(day.changes()),
                    counts(day.given()),
                    day.least(),
                    day.strokes(),
                    Needs.of(day.supplies()),
                    quote == null ? null : Costs.of(quote));
        }

        private static Map<String, Integer> counts(Changes changes) {
            Map<String, Integer> counts = new LinkedHashMap<>();
            for (Setting setting : Setting.values()) {
                counts.put(Json.word(setting), changes.of(setting));
            }
            return counts;
        }
    }

    /** A job in its place. */
    record Entry(
            @JsonPropertyDescription("how the list calls it")
            String name,

            @JsonPropertyDescription("settings made anew for it; for the first all that there are")
            List<Made> settings,

            @JsonPropertyDescription("settings made anew between its own volumes")
            Map<String, Integer> within,

            @JsonPropertyDescription("its report, without its clear pages")
            JsonChecked report) {
        static Entry of(Day.Entry e) {
            return new Entry(
                    e.job().name(),
                    e.settings().stream()
                            .map(m -> new Made(m.setting(), m.value(), m.before()))
                            .toList(),
                    Root.counts(e.within()),
                    JsonChecked.of(e.job().report(), false));
        }
    }

    /** A setting. */
    record Made(
            @JsonPropertyDescription("what is set") Setting setting,

            @JsonPropertyDescription("what it is set to") String value,

            @JsonPropertyDescription("what stood before; null where nothing did") @Nullable
            String before) {}

    /** A job that must not be punched. */
    record HeldBack(
            @JsonPropertyDescription("how the list calls it")
            String name,

            @JsonPropertyDescription("its report, without its clear pages")
            JsonChecked report) {
        static HeldBack of(DayJob j) {
            return new HeldBack(j.name(), JsonChecked.of(j.report(), false));
        }
    }

    /** Supplies. */
    record Needs(
            @JsonPropertyDescription("by stock and size, in the order of the list")
            List<Sheets> sheets,

            @JsonPropertyDescription("by method and size") List<Pieces> elements,

            @JsonPropertyDescription("grams of all leaves whose grammage is known, without elements and overs")
            BigDecimal knownWeightG,

            @JsonPropertyDescription("whether the weight of every job is known")
            boolean weightWhole) {
        static Needs of(Supplies s) {
            return new Needs(
                    s.sheets().stream().map(Sheets::of).toList(),
                    s.elements().stream().map(Pieces::of).toList(),
                    Json.rounded(s.knownG(), 1),
                    s.weightWhole());
        }
    }

    /** Sheets of one stock and size. */
    record Sheets(
            @JsonPropertyDescription("name of the stock") String stock,

            @JsonPropertyDescription("whether they are covers")
            boolean cover,

            @JsonPropertyDescription("the press sheet's name; null where sheets are of the leaf's size") @Nullable
            String pressSheet,

            @JsonPropertyDescription("width and height") JsonPair sizeMm,

            @JsonPropertyDescription("sheets without overs") long needed,

            @JsonPropertyDescription("spare sheets on top") long overs) {
        static Sheets of(Supplies.Sheets s) {
            return new Sheets(
                    s.stock(),
                    s.cover(),
                    s.sheet(),
                    JsonPair.of(s.width().mm(), s.height().mm()),
                    s.needed(),
                    s.overs());
        }
    }

    /** Elements of one size. */
    record Pieces(
            @JsonPropertyDescription("what kind") Method method,

            @JsonPropertyDescription("nominal size as the trade writes it")
            String size,

            @JsonPropertyDescription("pitch of the holes that they fit")
            String pitch,

            @JsonPropertyDescription("loops in all, spares included; 0 where it is not cut by loops")
            long loops,

            @JsonPropertyDescription("pieces without spares")
            long pieces,

            @JsonPropertyDescription("spare pieces on top") long spares,

            @JsonPropertyDescription("loops that a spool holds, as the shop's file says; null where it says nothing")
            @Nullable
            Integer loopsPerSpool,

            @JsonPropertyDescription("spools to issue; 0 where it comes in pieces")
            long spools) {
        static Pieces of(Supplies.Pieces p) {
            return new Pieces(
                    p.method(), p.name(), p.pitch(), p.loops(), p.pieces(), p.spares(), p.perSpool(), p.spools());
        }
    }

    /** Time and cost. */
    record Costs(
            @JsonPropertyDescription("the file of the rates")
            String rates,

            @JsonPropertyDescription("as that file writes it; empty where it does not")
            String currency,

            @JsonPropertyDescription("minimum and maximum minutes of work")
            JsonPair minutes,

            @JsonPropertyDescription("minimum and maximum of work and supplies")
            JsonPair cost,

            @JsonPropertyDescription("each kind of work, in minutes")
            List<Sum> work,

            @JsonPropertyDescription("each supply and the work, in money")
            List<Sum> supplies,

            @JsonPropertyDescription("what no rate was given for, so that it is in no sum")
            List<String> missing) {
        static Costs of(Quote q) {
            return new Costs(
                    q.rates(),
                    q.currency(),
                    ends(q.minutes()),
                    ends(q.cost()),
                    q.work().stream().map(Sum::of).toList(),
                    q.supplies().stream().map(Sum::of).toList(),
                    q.missing());
        }
    }

    /** One line of a sum. */
    record Sum(
            @JsonPropertyDescription("what it is for") String what,

            @JsonPropertyDescription("how many") String count,

            @JsonPropertyDescription("minimum and maximum for each")
            JsonPair rate,

            @JsonPropertyDescription("minimum and maximum in all")
            JsonPair sum) {
        static Sum of(Quote.Line l) {
            return new Sum(l.what(), l.count(), ends(l.rate()), ends(l.sum()));
        }
    }

    private static JsonPair ends(Amount amount) {
        return new JsonPair(List.of(Json.rounded(amount.low(), DECIMALS), Json.rounded(amount.high(), DECIMALS)));
    }
}
