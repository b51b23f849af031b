package io.bindprep.binding;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.catalogue.Element;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Elements by the sheet-count charts that hang beside punches, for plain books of 20 lb bond on Letter. */
class CapacityTest {
    private static Plan plan(String yaml, int leaves) throws Exception {
        Job job = JobReader.toJob(JobSettings.read(yaml, "job.yaml"));
        Block block = BlockBuilder.build(job, 2 * leaves);
        Stack stack = StackEstimator.estimate(
                block.leaves().stream().map(Leaf::stock).toList(), Length.ofInch(17, 2), Length.ofInch(11, 1));
        return Planner.plan(job, block, stack, Length.ofInch(11, 1));
    }

    private static String element(String yaml, int leaves) throws Exception {
        Element element = plan(yaml, leaves).element();
        return element == null ? "none" : element.name();
    }

    /** The twin-loop chart a second time: common practice, no source, from memory. */
    @Test
    void twinLoopByItsChart() throws Exception {
        int[] most = {25, 40, 60, 75, 90, 110, 130, 150, 190, 215, 240, 275};
        String[] names = {
            "3/16 in",
            "1/4 in",
            "5/16 in",
            "3/8 in",
            "7/16 in",
            "1/2 in",
            "9/16 in",
            "5/8 in",
            "3/4 in",
            "7/8 in",
            "1 in",
            "1-1/4 in"
        };
        List<String> wrong = new ArrayList<>();
        int row = 0;
        for (int sheets = 1; sheets <= 275; sheets++) {
            row += sheets > most[row] ? 1 : 0;
            Plan plan = plan("stock: bond-20", sheets);
            String found = plan.element() == null ? "none" : plan.element().name();
            if (!found.equals(names[row]) || !plan.pitchName().equals(sheets <= 130 ? "3:1" : "2:1")) {
                wrong.add(sheets + ": " + found + " " + plan.pitchName() + ", not " + names[row]);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(element("stock: bond-20", 276)).isEqualTo("none");
    }

    /** Wikipedia, "Comb binding": capacity in sheets of 20 lb bond by nominal size. */
    @ParameterizedTest
    @CsvSource({
        "16,3/16 in", "25,1/4 in", "40,5/16 in", "55,3/8 in", "70,7/16 in", "85,1/2 in", "100,9/16 in", "125,5/8 in",
        "150,3/4 in", "175,7/8 in", "200,1 in", "250,1-1/8 in", "275,1-1/4 in", "325,1-1/2 in", "375,1-3/4 in",
                "425,2 in"
    })
    void combsByTheirPublishedCapacity(int sheets, String size) throws Exception {
        assertThat(element("stock: bond-20\nbinding: comb", sheets)).isEqualTo(size);
        assertThat(element("stock: bond-20\nbinding: comb", sheets + 1)).isNotEqualTo(size);
    }

    /** German Wikipedia, "Drahtkammbindung": about 120 sheets of 80 g/m2 on 3:1; a sheet at bulk 1.25 is 0.1 mm. */
    @Test
    void aboutAHundredAndTwentySheetsOf80Grams() throws Exception {
        Plan plan = plan("stock: 80 gsm bulk 1.25", 120);
        assertThat(plan.pitchName()).isEqualTo("3:1");
        assertThat(plan.element().name()).isEqualTo("9/16 in");
        assertThat(plan("stock: 80 gsm bulk 1.25", 125).pitchName()).isEqualTo("2:1");
    }

    /** Covers count by their thickness: 56 x 0.0037 in and two of 0.010 in (JCP L70) are 61.4 sheets of 20 lb bond. */
    @Test
    void coversCountByTheirThickness() throws Exception {
        assertThat(element("stock: bond-20", 56)).isEqualTo("5/16 in");
        assertThat(element("stock: bond-20\ncovers: front=c1s-10pt, back=c1s-10pt", 56))
                .isEqualTo("3/8 in");
    }

    /** The charts differ from 55 to 60 sheets on 5/16 in: common practice, no source, from memory. */
    @Test
    void nearTheLimitFromWhereChartsDiffer() throws Exception {
        assertThat(plan("stock: bond-20", 54).chosen().nearLimit()).isFalse();
        assertThat(plan("stock: bond-20", 55).chosen().nearLimit()).isTrue();
        assertThat(plan("stock: bond-20", 60).chosen().sheets()).isEqualTo(60);
    }

    /** A job's clearance asks for the size: 42 x 0.0040 in (JCP O-63, thickest) and 3/16 in are 0.3555 in. */
    @Test
    void aClearanceAsksForTheSize() throws Exception {
        assertThat(element("stock: bond-20", 42)).isEqualTo("5/16 in");
        assertThat(element("stock: bond-20\nclearance: ample", 42)).isEqualTo("3/8 in");
        assertThat(element("stock: bond-20\nbinding: comb\nclearance: none", 42))
                .isEqualTo("3/16 in");
    }

    /** A measured pack leaves nothing to measure: 25 sheets of 2.35 mm are those of 20 lb bond. */
    @Test
    void aMeasuredPackLeavesNothingToMeasure() throws Exception {
        assertThat(plan("stock: bond-20", 59).chosen().straddles()).hasSize(2);
        assertThat(plan("stock: \"25 sheets = 2.35 mm\"", 59).chosen().straddles())
                .isEmpty();
    }

    /** 250 sheets of 2:1 wire close in 1-1/4 in however thick the lot; a lot of board may not. */
    @Test
    void aStackThatMayNotClose() throws Exception {
        assertThat(plan("stock: bond-20", 250).chosen().mayNotClose()).isFalse();
        // ten sheets of 1 mm, up to 1.5: 10 mm go by the chart on 1/2 in, 15 do not close in it
        assertThat(plan("stock: 1 mm tolerance 0.5 mm", 10).chosen().mayNotClose())
                .isTrue();
    }
}
