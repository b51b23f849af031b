package io.bindprep.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.report.json.JsonDay;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.sheet.DaySheet;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DayTest {
    private static final String RATES = """
            currency: EUR
            strokes-per-minute: 10 to 20
            setup-minutes: {die: 6, depth: 1 to 2, pins: 1, closer: 1, side-guide: 1}
            minutes-per-job: 5
            minutes-per-book: 1 to 2
            cost-per-hour: 60
            price-per-sheet: {bond-20: 0.02}
            price-per-cover: {index-110: 0.5}
            """;

    private static DayJob job(String name, int leaves, Map<String, ?> more) throws SettingException {
        Map<String, Object> settings = new HashMap<>(Map.of("trim", "a4", "stock", "bond-20", "overs", "none"));
        settings.putAll(more);
        return new DayJob(
                name,
                BindPrep.plan(new PlanRequest(name, JobReader.toJob(JobSettings.of(settings)), Pile.ofLeaves(leaves))));
    }

    private static List<DayJob> alternating() throws SettingException {
        return List.of(
                job("wire 1", 10, Map.of("copies", 10, "pitch", "3:1")),
                job("coil 1", 10, Map.of("copies", 5, "binding", "coil", "pitch", "4:1")),
                job("wire 2", 10, Map.of("copies", 20, "pitch", "3:1")),
                job("coil 2", 10, Map.of("copies", 5, "binding", "coil", "pitch", "4:1")));
    }

    /**
     * By hand: wire, coil, wire, coil changes the die three times; wire, wire, coil, coil once. Each time the pins, the element
     * and the side guide change with it, the depth of 0.2 in (XJDF 2.2 F.10; coil: common practice, no source) does not.
     */
    @Test
    void theOrderGivenWouldHaveChangedTheDieThreeTimes() throws Exception {
        Day day = BindPrep.day(alternating(), null);
        assertThat(day.list().stream().map(e -> e.job().name()))
                .containsExactly("wire 1", "wire 2", "coil 1", "coil 2");
        assertThat(day.given().of(Setting.DIE)).isEqualTo(3);
        assertThat(day.changes().of(Setting.DIE)).isEqualTo(1);
        assertThat(day.given().total()).isEqualTo(12);
        assertThat(day.changes().total()).isEqualTo(4);
        assertThat(day.least()).isTrue();
        assertThat(day.list().get(0).settings()).hasSize(5).allMatch(m -> m.before() == null);
        assertThat(day.list().get(1).settings()).isEmpty();
        assertThat(day.list().get(2).settings()).extracting(Day.Made::setting).contains(Setting.DIE, Setting.CLOSER);
        assertThat(day.list().get(3).settings()).isEmpty();
    }

    /** 5.08 and 5.15 mm both are 5 mm by a ruler; a stop that moves is told, and no two settings read the same. */
    @Test
    void depthsThatRoundAlikeAreToldApart() throws Exception {
        Day day = BindPrep.day(
                List.of(
                        job("a", 10, Map.of("pitch", "3:1", "depth", "5.08 mm")),
                        job("b", 10, Map.of("pitch", "3:1", "depth", "5.15 mm"))),
                null);
        assertThat(day.changes().of(Setting.DEPTH)).isEqualTo(1);
        assertThat(day.list().get(1).settings()).singleElement().satisfies(made -> {
            assertThat(made.setting()).isEqualTo(Setting.DEPTH);
            assertThat(made.value()).startsWith("5.15 mm");
            assertThat(made.said()).isEqualTo("5.2 mm");
            assertThat(made.saidBefore()).isEqualTo("shallow, 5.1 mm");
        });
        assertThat(JsonDay.write(day)).contains("5.15 mm");
    }

    /** A PDF's A4 is 210.01 mm wide; the shop's price names 210. Minutes are whole. */
    @Test
    void pagesAHairWiderArePricedByTheirSize() throws Exception {
        String rates = RATES.replace("{bond-20: 0.02}", "{\"bond-20, 210 x 297 mm\": 0.5}");
        Day day = BindPrep.day(List.of(job("a", 7, Map.of("trim", "210.01 x 297 mm"))), Rates.read(rates, "r.yaml"));
        List<String> text = DaySheet.of(day).text();
        assertThat(text)
                .anyMatch(l -> l.contains("Sheets bond-20, 210 x 297 mm | 7 | 0.5 | 3.5 EUR"))
                .noneMatch(l -> l.matches(".*\\d\\d\\.\\d+ min.*|.*\\d\\.\\d\\d+ min.*"));
    }

    /** A day of one paper is in its units; one of both has both, so that a change is told in one of them. */
    @Test
    void aDayIsToldInTheUnitsOfItsPaper() throws Exception {
        Map<String, Object> letter = Map.of("pitch", "3:1", "trim", "letter");
        Day inches = BindPrep.day(List.of(job("a", 10, letter), job("b", 20, letter)), null);
        assertThat(String.join("\n", DaySheet.of(inches).text()))
                .contains("Depth: shallow, 3/16 in", "8-1/2 x 11 in", "Closer: wire 3/16 in")
                .doesNotContain(" mm");
        Day both = BindPrep.day(List.of(job("a", 10, letter), job("b", 10, Map.of("pitch", "2:1"))), null);
        assertThat(String.join("\n", DaySheet.of(both).text()))
                .contains("(was shallow, 5 mm (3/16 in))", "8-1/2 x 11 in", "210 x 297 mm");
        Day metric = BindPrep.day(List.of(job("a", 10, Map.of("pitch", "3:1"))), null);
        assertThat(String.join("\n", DaySheet.of(metric).text()))
                .contains("Depth: shallow, 5 mm", "first hole 9 mm from the head")
                .doesNotContain("5.08", "8.8 mm");
    }

    /** By hand: 10 leaves in 10 + 5 + 20 + 5 copies are 400 sheets; one lift a copy is 40 strokes; a piece for each copy. */
    @Test
    void suppliesAreThoseOfAllJobs() throws Exception {
        Day day = BindPrep.day(alternating(), null);
        assertThat(day.strokes()).isEqualTo(40);
        assertThat(day.supplies().sheets()).singleElement().satisfies(s -> {
            assertThat(s.needed()).isEqualTo(400);
            assertThat(s.overs()).isZero();
        });
        assertThat(day.supplies().elements())
                .extracting(Supplies.Pieces::pieces)
                .containsExactly(30L, 10L);
        // 75.195 g/m2 (JCP O-63, 20 lb) on 210 x 297 mm is 4.690 g a leaf; 400 are 1876 g
        assertThat(day.supplies().knownG().doubleValue()).isBetween(1875.0, 1877.0);
        assertThat(day.supplies().weightWhole()).isTrue();
    }

    /** By hand: 5 % of 100 sheets are 5, but at least 10; two such jobs need 220. Covers are counted apart. */
    @Test
    void oversAndCoversAreCounted() throws Exception {
        Map<String, Object> settings = Map.of(
                "copies", 10, "overs", "5 %, at least 10", "covers", Map.of("front", "index-110", "back", "index-110"));
        Day day = BindPrep.day(List.of(job("a", 10, settings), job("b", 10, settings)), null);
        assertThat(day.supplies().sheets()).hasSize(2);
        Supplies.Sheets text = day.supplies().sheets().stream()
                .filter(s -> !s.cover())
                .findFirst()
                .orElseThrow();
        assertThat(text.needed()).isEqualTo(200);
        assertThat(text.total()).isEqualTo(220);
        Supplies.Sheets covers = day.supplies().sheets().stream()
                .filter(Supplies.Sheets::cover)
                .findFirst()
                .orElseThrow();
        assertThat(covers.needed()).isEqualTo(40);
    }

    /**
     * By hand, one job of 10 leaves in 10 copies, A4, wire at 3:1 (pins are pulled: 297 mm is no whole row): set-up 6 + 1..2 + 1
     * + 1 + 1 = 10..11 min, job 5, 10 strokes at 10..20 a minute 0.5..1, 10 books at 1..2 10..20: 25.5..37 min. At 60 an hour
     * 25.5..37; 100 sheets at 0.02 are 2: 27.5..39.
     */
    @Test
    void timeAndCostAreARange() throws Exception {
        DayJob one = alternating().get(0);
        assertThat(one.report().plan().row().pulledPins()).isNotEmpty();
        Quote quote =
                BindPrep.day(List.of(one), Rates.read(RATES, "rates.yaml")).quote();
        assertThat(quote).isNotNull();
        assertThat(quote.minutes().low()).isEqualByComparingTo("25.5");
        assertThat(quote.minutes().high()).isEqualByComparingTo("37");
        assertThat(quote.cost().low().setScale(6, java.math.RoundingMode.HALF_UP))
                .isEqualByComparingTo("27.5");
        assertThat(quote.cost().high().setScale(6, java.math.RoundingMode.HALF_UP))
                .isEqualByComparingTo("39");
        assertThat(quote.whole()).isFalse();
        assertThat(quote.missing())
                .singleElement()
                .asString()
                .startsWith("wire ")
                .contains("10 (price-per-element)");
    }

    @Test
    void withoutRatesNothingIsInvented() throws Exception {
        assertThat(BindPrep.day(alternating(), null).quote()).isNull();
        Quote quote = BindPrep.day(alternating(), Rates.read("currency: EUR", "r.yaml"))
                .quote();
        assertThat(quote).isNotNull();
        assertThat(quote.minutes().high()).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(quote.cost().high()).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(quote.missing()).anyMatch(m -> m.contains("strokes")).anyMatch(m -> m.contains("bond-20"));
    }

    @Test
    void whatCannotBeBoundIsHeldBackAndCountedNowhere() throws Exception {
        DayJob thick = job("thick", 5000, Map.of());
        DayJob good = alternating().get(0);
        Day day = BindPrep.day(List.of(thick, good), null);
        assertThat(day.heldBack()).containsExactly(thick);
        assertThat(day.list()).extracting(e -> e.job().name()).containsExactly("wire 1");
        assertThat(day.strokes()).isEqualTo(10);
        assertThat(day.supplies().sheets()).extracting(Supplies.Sheets::needed).containsExactly(100L);
    }

    @Test
    void wrongRatesSayWhatIsKnown() {
        assertThatThrownBy(() -> Rates.read("strokes: 3", "r.yaml"))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.known()).contains("strokes-per-minute", "price-per-element");
                    assertThat(e).hasMessageContaining("r.yaml, line 1");
                });
        assertThatThrownBy(() -> Rates.read("setup-minutes: {dye: 3}", "r.yaml"))
                .isInstanceOfSatisfying(
                        SettingException.class,
                        e -> assertThat(e.known()).contains("die", "depth", "pins", "closer", "side-guide"));
        for (String bad : List.of("30 to 20", "-1", "1e9", "fast", "0")) {
            assertThatThrownBy(() -> Rates.read("strokes-per-minute: \"" + bad + "\"", "r.yaml"))
                    .as(bad)
                    .isInstanceOf(SettingException.class);
        }
    }

    @Test
    void jsonSaysThatNoDocumentWasChecked() throws Exception {
        String json = JsonDay.write(BindPrep.day(alternating(), Rates.read(RATES, "rates.yaml")));
        assertThat(json).contains("\"documentChecked\" : false", "\"changesAsGiven\"", "\"missing\"");
        assertThat(json).doesNotContain("\"outcome\" : \"good\"");
        assertThat(json).isEqualTo(JsonDay.write(BindPrep.day(alternating(), Rates.read(RATES, "rates.yaml"))));
    }
}
