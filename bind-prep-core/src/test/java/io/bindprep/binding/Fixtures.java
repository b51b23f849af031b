package io.bindprep.binding;

import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Cover;
import io.bindprep.job.FailOn;
import io.bindprep.job.Hanger;
import io.bindprep.job.Job;
import io.bindprep.job.Order;
import io.bindprep.job.PrintLimits;
import io.bindprep.job.Sides;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.Supply;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.paper.Stock;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A job whose settings a test changes one at a time. */
record Fixtures(
        Method method,
        String pitch,
        String punch,
        Length bindingMargin,
        Length punchingTolerance,
        @Nullable Length clearance,
        String stock,
        String cover,
        Length minimumWeb,
        Hanger hanger,
        String depth) {
    static final Length A4 = Length.ofMm(297);
    static final Length LETTER = Length.ofInch(11, 1);
    static final Length A5 = Length.ofMm(210);

    /** Reasons that a plan gives for a topic. */
    static List<String> reasons(Plan plan, Reason.Topic topic) {
        return plan.because().stream()
                .filter(r -> r.topic() == topic)
                .map(Sentences::of)
                .toList();
    }

    static Fixtures of(Method method) {
        return new Fixtures(
                method,
                null,
                null,
                null,
                Length.ofMm(1),
                method == Method.COMB ? null : Length.ofInch(1, 8),
                "bond-20",
                null,
                null,
                null,
                null);
    }

    Fixtures pitch(String value) {
        return new Fixtures(
                method,
                value,
                punch,
                bindingMargin,
                punchingTolerance,
                clearance,
                stock,
                cover,
                minimumWeb,
                hanger,
                depth);
    }

    Fixtures punch(String value) {
        return new Fixtures(
                method,
                pitch,
                value,
                bindingMargin,
                punchingTolerance,
                clearance,
                stock,
                cover,
                minimumWeb,
                hanger,
                depth);
    }

    Fixtures bindingMargin(Length value) {
        return new Fixtures(
                method, pitch, punch, value, punchingTolerance, clearance, stock, cover, minimumWeb, hanger, depth);
    }

    Fixtures punchingTolerance(Length value) {
        return new Fixtures(
                method, pitch, punch, bindingMargin, value, clearance, stock, cover, minimumWeb, hanger, depth);
    }

    Fixtures clearance(@Nullable Length value) {
        return new Fixtures(
                method, pitch, punch, bindingMargin, punchingTolerance, value, stock, cover, minimumWeb, hanger, depth);
    }

    Fixtures stocks(String text, String covers) {
        return new Fixtures(
                method,
                pitch,
                punch,
                bindingMargin,
                punchingTolerance,
                clearance,
                text,
                covers,
                minimumWeb,
                hanger,
                depth);
    }

    Fixtures minimumWeb(Length value) {
        return new Fixtures(
                method, pitch, punch, bindingMargin, punchingTolerance, clearance, stock, cover, value, hanger, depth);
    }

    Fixtures hanger(Hanger value) {
        return new Fixtures(
                method,
                pitch,
                punch,
                bindingMargin,
                punchingTolerance,
                clearance,
                stock,
                cover,
                minimumWeb,
                value,
                depth);
    }

    Fixtures depth(String value) {
        return new Fixtures(
                method,
                pitch,
                punch,
                bindingMargin,
                punchingTolerance,
                clearance,
                stock,
                cover,
                minimumWeb,
                hanger,
                value);
    }

    Job job() {
        Cover blank = cover == null ? null : new Cover(named(cover), null);
        return new Job(
                1,
                Sides.TWO,
                BindingEdge.LEFT,
                null,
                named(stock),
                blank,
                blank,
                List.of(),
                SpecialLeaves.NONE,
                method,
                pitch,
                punch,
                depth,
                bindingMargin,
                punchingTolerance,
                clearance,
                minimumWeb,
                hanger,
                Supply.BUILT_IN,
                FailOn.ERROR,
                List.of(),
                PrintLimits.USUAL,
                Order.NONE,
                null,
                Catalogue.builtIn());
    }

    Block block(int textLeaves) throws Exception {
        return BlockBuilder.build(job(), textLeaves * 2);
    }

    Stack stack(int textLeaves) throws Exception {
        List<Stock> stocks =
                block(textLeaves).leaves().stream().map(Leaf::stock).toList();
        return StackEstimator.estimate(stocks, Length.ofMm(210), Length.ofMm(297));
    }

    Plan plan(int textLeaves, Length edge) throws Exception {
        return Planner.plan(job(), block(textLeaves), stack(textLeaves), edge);
    }

    Plan plan(int textLeaves, Length edge, Punch own) throws Exception {
        return Planner.plan(job(), block(textLeaves), stack(textLeaves), edge, own);
    }

    Plan planOf(Stack stack, Length edge) throws Exception {
        return Planner.plan(job(), block(10), stack, edge);
    }

    PlanChoices choicesOf(Stack stack, Length edge) throws Exception {
        return Planner.choices(job(), block(10), stack, edge);
    }

    static Stack exactly(Length thickness) {
        return new Stack(thickness, thickness, thickness, null, List.of());
    }

    private static Stock named(String id) {
        return Catalogue.builtIn().stocks().byId(id).orElseThrow();
    }
}
