package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Skew;
import io.bindprep.check.Report;
import io.bindprep.day.DayJob;
import io.bindprep.day.Quote;
import io.bindprep.day.Rates;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.Stack;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.run.ElementNeed;
import io.bindprep.run.Materials;
import io.bindprep.run.StockNeed;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Every number of a plan worked by hand: 40 copies of 100 pages on 20 lb bond, A4, covers of 110 lb index, twin loop. Each
 * source stands beside its number; what a line derives from the ones before it names none.
 */
class WorkedPlanTest {
    private static final double MM = 0.0001;
    private static final String JOB =
            "trim: a4\nstock: bond-20\ncovers: {front: index-110, back: index-110}\ncopies: 40\n"
                    + "overs: 5 %, at least 10\n";

    private static Report plan(String job, int pages) throws Exception {
        return BindPrep.plan(
                new PlanRequest("Handbook", JobReader.toJob(JobSettings.read(job, "job.yaml")), Pile.ofPages(pages)));
    }

    /** Sheets are half the pages, rounded up; all of them where one side is printed. */
    @Test
    void leaves() throws Exception {
        assertThat(plan(JOB, 100).block().bodyLeaves()).isEqualTo(50);
        assertThat(plan(JOB, 99).block().bodyLeaves()).isEqualTo(50);
        assertThat(plan(JOB + "sides: one", 100).block().bodyLeaves()).isEqualTo(100);
        assertThat(plan(JOB, 100).block().leaves()).hasSize(52);
    }

    @Test
    void stack() throws Exception {
        Stack stack = plan(JOB, 100).stack();
        // JCP O-63: 20 lb 0.0037 +-0.0003 in; JCP K10: 110 lb 0.0091 +-0.0005 in. 50 and 2: 0.2032 +-0.016 in
        assertThat(stack.nominal()).isEqualTo(Length.ofInch(2032, 10_000));
        assertThat(stack.min()).isEqualTo(Length.ofInch(1872, 10_000));
        assertThat(stack.max()).isEqualTo(Length.ofInch(2192, 10_000));
        // 20 lb of 17 x 22 in are 75.1946 g/m2, 110 lb of 25.5 x 30.5 in 198.8754 (1 lb = 453.59237 g);
        // A4 is 0.06237 m2 (ISO 216): 50 x 4.68989 + 2 x 12.40386 g
        assertThat(stack.weightG().doubleValue()).isCloseTo(234.4944 + 24.8077, within(0.001));
    }

    @Test
    void element() throws Exception {
        Plan plan = plan(JOB, 100).plan();
        // 0.2032 / 0.0037 = 54.9 sheets of 20 lb bond: 41 to 60 go on 5/16 in (common practice, no source, from memory)
        assertThat(plan.element().name()).isEqualTo("5/16 in");
        assertThat(plan.chosen().sheets()).isEqualTo(55);
        // by a clearance the thickest counts: 0.2192 and 1/8 in (common practice, no source) are 0.3442 in
        assertThat(plan(JOB + "clearance: usual", 100).plan().element().name()).isEqualTo("3/8 in");
        assertThat(plan.pitchName()).isEqualTo("3:1");
        // XJDF 2.2 F.10
        assertThat(plan.pitch()).isEqualTo(Length.ofInch(1, 3));
        assertThat(plan.closer()).isEqualTo(Length.ofInch(5, 16));
        assertThat(plan.loops()).isEqualTo(34);
    }

    @Test
    void row() throws Exception {
        Plan plan = plan(JOB, 100).plan();
        // 34 on A4: German Wikipedia, "Drahtkammbindung"; (297 - 33 x 25.4 / 3) / 2 = 8.8
        assertThat(plan.row().holes()).hasSize(34);
        assertThat(plan.row().holes().get(0).centre().mm()).isCloseTo(8.8, within(MM));
        // holes of 5/32 in (XJDF 2.2 F.10): 8.8 - 3.96875 / 2
        assertThat(plan.row().minimumWeb().mm()).isCloseTo(6.8156, within(MM));
        // pin 35 at 296.67 mm is cut open by the end at 297, pin 36 begins 6.15 mm beyond it, pin 37 14.6 mm
        assertThat(plan.row().pulledPins()).containsExactly(35, 36);
        assertThat(plan.row().fixedPins()).isEmpty();
        // turned over, a centred row lies on itself
        assertThat(plan.sameEndToGuide()).isFalse();
    }

    @Test
    void depthAndMargins() throws Exception {
        Plan plan = plan(JOB, 100).plan();
        // 0.2 in (XJDF 2.2 F.10); 0.3 of 5/16 in is 2.38 mm, less than any deeper setting leaves outside the holes
        assertThat(plan.depth().setting().name()).isEqualTo("shallow");
        assertThat(plan.edgeDistance()).isEqualTo(Length.ofInch(1, 5));
        // 5.08 - 3.96875 / 2
        assertThat(plan.depth().outside().mm()).isCloseTo(3.0956, within(MM));
        // sqrt(7.9375^2 - 5.16128^2) = sqrt(63.0039 - 26.6388)
        assertThat(plan.depth().turnsBelow().mm()).isCloseTo(6.0303, within(MM));
        // 3/8 in at 3:1: G. Markovits, "Good Wire Work is a Balancing Act", Printing News
        assertThat(plan.bindingMargin()).isEqualTo(Length.ofInch(3, 8));
        // 1 mm: common practice, no source; 5.08 + 3.96875 / 2 + 1
        assertThat(plan.punchingTolerance()).isEqualTo(Length.ofMm(1));
        assertThat(plan.holeZone().mm()).isCloseTo(8.0644, within(MM));
        // a wire of 1.2 mm (common practice, no source) in a hole of 3.96875 mm, over 33 x 25.4 / 3
        Skew skew = plan.skew();
        assertThat(skew.rise().mm()).isCloseTo(2.7688, within(MM));
        assertThat(skew.over().mm()).isCloseTo(279.4, within(MM));
    }

    @Test
    void liftsAndStrokes() throws Exception {
        Report report = plan(JOB, 100);
        // 1.9 mm (common practice, no source) / 0.09398 = 20 sheets: 50 in 3 lifts of like thickness, each cover by
        // itself
        assertThat(report.plan().lifts()).hasSize(5).startsWith(1).endsWith(1).contains(17, 16);
        assertThat(report.run().lifts().get(1).thickness().mm()).isCloseTo(17 * 0.09398, within(MM));
        // 1.9 / 0.23114 = 8 covers at once: 80 of them take 10 strokes, the rest 3 a copy
        assertThat(report.run().strokes()).isEqualTo(40 * 3 + 10);
    }

    @Test
    void supplies() throws Exception {
        Materials materials = plan(JOB, 100).run().materials();
        // 5 % of 2000 are 100; of 40 covers 2, but at least 10
        assertThat(materials.stocks())
                .extracting(n -> n.stock().name(), StockNeed::sheets, StockNeed::overs)
                .containsExactly(
                        tuple("index-110", 40L, 10L), tuple("bond-20", 2000L, 100L), tuple("index-110", 40L, 10L));
        ElementNeed wire = materials.elements().get(0);
        assertThat(wire.pieces()).isEqualTo(40);
        assertThat(wire.spares()).isEqualTo(2);
        assertThat(wire.totalLoops()).isEqualTo(34 * 42);
        // 34 pitches of 25.4 / 3
        assertThat(wire.length().mm()).isCloseTo(287.8667, within(MM));
        assertThat(materials.runG().doubleValue()).isCloseTo(40 * 259.302, within(0.1));
    }

    /**
     * Rates are invented. Minutes: 5 + 1 + 2 + 1 + 1 to set up, 5 for the job, 130 strokes at 10 are 13, 40 books at 1 to 2: 68
     * to 108. Money: as much at 60 an hour, 2100 x 0.01, 100 covers x 0.1, 42 wires x 0.2: 107.4 to 147.4.
     */
    @Test
    void quote() throws Exception {
        Rates rates = Rates.read("""
                strokes-per-minute: 10
                setup-minutes: {die: 5, depth: 1, pins: 2, closer: 1, side-guide: 1}
                minutes-per-job: 5
                minutes-per-book: 1 to 2
                cost-per-hour: 60
                price-per-sheet: {bond-20: 0.01}
                price-per-cover: {index-110: 0.1}
                price-per-element: {wire 5/16 in: 0.2}
                """, "rates.yaml");
        Quote quote = BindPrep.day(List.of(new DayJob("Handbook", plan(JOB, 100))), rates)
                .quote();
        assertThat(quote.whole()).isTrue();
        assertThat(quote.minutes().low().doubleValue()).isCloseTo(68, within(MM));
        assertThat(quote.minutes().high().doubleValue()).isCloseTo(108, within(MM));
        assertThat(quote.cost().low().doubleValue()).isCloseTo(107.4, within(MM));
        assertThat(quote.cost().high().doubleValue()).isCloseTo(147.4, within(MM));
    }

    /** JCP A55 and L70: 100 leaves of 60 lb offset and two covers of 10 pt C1S are 0.490 in, 0.4384 to 0.5416 in. */
    @Test
    void aComb() throws Exception {
        Report report =
                plan("trim: a4\nbinding: comb\nstock: offset-60\ncovers: {front: c1s-10pt, back: c1s-10pt}\n", 200);
        assertThat(report.stack().nominal()).isEqualTo(Length.ofInch(49, 100));
        assertThat(report.stack().min()).isEqualTo(Length.ofInch(4384, 10_000));
        assertThat(report.stack().max()).isEqualTo(Length.ofInch(5416, 10_000));
        Plan plan = report.plan();
        // 0.490 / 0.0037 = 132.4 sheets of 20 lb bond: 126 to 150 go on 3/4 in (Wikipedia, "Comb binding")
        assertThat(plan.element().name()).isEqualTo("3/4 in");
        // 21 rings on A4 (Wikipedia); (297 - 20 x 14.2875) / 2 = 5.625; less half of 5/16 in (XJDF 2.2 F.9) 1.65625
        assertThat(plan.row().holes()).hasSize(21);
        assertThat(plan.row().holes().get(0).centre().mm()).isCloseTo(5.625, within(MM));
        assertThat(plan.row().minimumWeb().mm()).isCloseTo(1.6563, within(MM));
    }

    /** 30 holes of 9.5 mm on 297 mm: RFC 3806, 4.2.1; (297 - 29 x 9.5) / 2 = 10.75. */
    @Test
    void aCoil() throws Exception {
        Plan plan = plan("trim: a4\nbinding: coil\npitch: 9.5 mm\nstock: bond-20\n", 100)
                .plan();
        assertThat(plan.row().holes()).hasSize(30);
        assertThat(plan.row().holes().get(0).centre().mm()).isCloseTo(10.75, within(MM));
        // 50 x 0.09398 mm and 1/8 in are 7.87; but 8 mm of paper outside: sqrt(8^2 + 4.699^2) = 9.28
        assertThat(plan.element().name()).isEqualTo("10 mm");
    }
}
