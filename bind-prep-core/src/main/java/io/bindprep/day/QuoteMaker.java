package io.bindprep.day;

import io.bindprep.check.Report;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Works out time and cost by a shop's rates. */
final class QuoteMaker {
    private static final int DECIMALS = 1;

    private final Rates rates;
    private final List<Quote.Line> work = new ArrayList<>();
    private final List<Quote.Line> money = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    private QuoteMaker(Rates rates) {
        this.rates = rates;
    }

    static Quote quote(Rates rates, List<Day.Entry> list, Changes changes, Supplies supplies) {
        QuoteMaker maker = new QuoteMaker(rates);
        maker.work(list, changes);
        Amount minutes = sum(maker.work);
        Amount hours = minutes.hours();
        maker.hours(hours);
        maker.supplies(supplies);
        return new Quote(
                rates.name(), rates.currency(), minutes, sum(maker.money), maker.work, maker.money, maker.missing);
    }

    private void work(List<Day.Entry> list, Changes changes) {
        for (Setting setting : Setting.values()) {
            boolean first = list.get(0).settings().stream()
                    .anyMatch(m -> m.setting() == setting && !PunchState.ALL_IN.equals(m.value()));
            long count = changes.of(setting) + (first ? 1 : 0);
            Amount minutes = rates.setupMinutes().get(setting);
            line(work, "Set " + setting.label().toLowerCase(Locale.ROOT), count, minutes, RateKeys.SETUP);
        }
        line(work, "Jobs", list.size(), rates.minutesPerJob(), RateKeys.JOB);
        long strokes = 0;
        long books = 0;
        for (Day.Entry entry : list) {
            Report report = entry.job().report();
            strokes += report.run().strokes();
            books += (long) report.job().copies() * Math.max(1, report.volumes().size());
        }
        Amount pace = rates.strokesPerMinute();
        if (pace == null) {
            missing.add(strokes + " strokes (" + RateKeys.STROKES + ")");
        } else {
            work.add(new Quote.Line("Strokes", "" + strokes, pace, pace.paced(BigDecimal.valueOf(strokes))));
        }
        line(work, "Books or volumes to bind", books, rates.minutesPerBook(), RateKeys.BOOK);
    }

    private void hours(Amount hours) {
        Amount hour = rates.costPerHour();
        if (hour == null) {
            missing.add("work (" + RateKeys.HOUR + ")");
        } else {
            String low = LengthText.plain(hours.low(), DECIMALS);
            String high = LengthText.plain(hours.high(), DECIMALS);
            money.add(new Quote.Line(
                    "Hours of work", low.equals(high) ? low : low + " to " + high, hour, hours.times(hour)));
        }
    }

    private void supplies(Supplies supplies) {
        for (Supplies.Sheets sheets : supplies.sheets()) {
            // a page of 210.01 mm is priced as A4
            String sized = sheets.stock() + ", " + Measures.METRIC.area(sheets.width(), sheets.height());
            String exact = sheets.stock() + ", " + LengthText.area(sheets.width(), sheets.height());
            Map<String, Amount> prices = sheets.cover() ? rates.pricePerCover() : rates.pricePerSheet();
            Amount price = Stream.of(exact, sized, sheets.stock())
                    .filter(prices::containsKey)
                    .map(prices::get)
                    .findFirst()
                    .orElse(null);
            String key = sheets.cover() ? RateKeys.COVERS : RateKeys.SHEETS;
            line(money, (sheets.cover() ? "Covers " : "Sheets ") + sized, sheets.total(), price, key);
        }
        for (Supplies.Pieces pieces : supplies.elements()) {
            Amount price = rates.pricePerElement().get(pieces.key());
            line(money, pieces.key(), pieces.total(), price, RateKeys.ELEMENTS);
        }
    }

    private void line(List<Quote.Line> lines, String what, long count, @Nullable Amount rate, String key) {
        if (count > 0 && rate == null) {
            missing.add(what + ", " + count + " (" + key + ")");
        } else if (count > 0 && rate != null) {
            lines.add(new Quote.Line(what, "" + count, rate, rate.times(BigDecimal.valueOf(count))));
        }
    }

    private static Amount sum(List<Quote.Line> lines) {
        return lines.stream().map(Quote.Line::sum).reduce(Amount.ZERO, Amount::plus);
    }
}
