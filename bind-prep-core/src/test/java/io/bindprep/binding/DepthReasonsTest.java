package io.bindprep.binding;

import static io.bindprep.binding.Fixtures.A4;
import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.binding.Depth.Decider;
import io.bindprep.catalogue.Method;
import io.bindprep.report.words.Sentences;
import io.bindprep.unit.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Reasons of a depth: at 3:1 holes of 3.97 mm lie 5.08, 5.3 or 6 mm off (XJDF 2.2 F.10; the deeper ones common
 * practice, no source), so 3.1, 3.32 or 4.02 mm of paper outside them; limits are sqrt(D^2 - t^2) by hand.
 */
class DepthReasonsTest {
    private static String suggests(String element, String setting, String share) {
        return "by the element. " + element + ", suggests " + setting + ". That is the deepest with at most " + share
                + " of paper outside the holes, 0.3 of the element's size. Otherwise it is the shallowest (a bigger element wants"
                + " a deeper punch (G. Markovits, Printing News); the share: common practice, no source). ";
    }

    private static final String UNSEEN = ". Content: not checked";

    private static Plan plan(Fixtures job, String stack) throws Exception {
        return job.planOf(Fixtures.exactly(Length.parse(stack)), A4);
    }

    private static Fixtures wire() {
        return Fixtures.of(Method.WIRE).clearance(Length.ZERO);
    }

    private static String why(Plan plan) {
        List<String> texts = plan.because().stream()
                .filter(r -> r.topic() == Reason.Topic.DEPTH)
                .map(Sentences::of)
                .toList();
        assertThat(texts).hasSize(1);
        return texts.get(0);
    }

    private static String turns(String outside, String limit, String element, String stack) {
        return "Pages turn freely: " + outside + " of paper outside the holes, limit " + limit
                + ". The limit is sqrt(D^2 - t^2) for an element of " + element + " and a thickest likely stack of "
                + stack
                + " (derived)";
    }

    private static String binds(String outside, String limit, String element, String stack) {
        return "Pages turn stiffly: " + outside + " of paper outside the holes, limit " + limit
                + ". The limit is sqrt(D^2 - t^2) for an element of " + element + " and a thickest likely stack of "
                + stack
                + " (derived)";
    }

    @Test
    void byTheElement() throws Exception {
        // 3/16 in: sqrt(4.7625^2 - 1) = 4.656
        Plan plan = plan(wire(), "1 mm");
        assertThat(why(plan))
                .isEqualTo("depth shallow, holes 5.08 mm (0.2 in) from the binding edge (the centre of the pattern), "
                        + suggests("The element, 4.76 mm (3/16 in)", "shallow", "1.43 mm")
                        + turns("3.1 mm", "4.66 mm", "4.76 mm", "1 mm") + UNSEEN);
        assertThat(plan.depth().decidedBy()).isEqualTo(Decider.ELEMENT);
    }

    @Test
    void byTheTurningOfPages() throws Exception {
        // 7/16 in and 10.65 mm: sqrt(123.4877 - 113.4225) = 3.173, between the 3.1 of shallow and the 3.32 of middle
        Plan shallower = plan(wire(), "10.65 mm");
        assertThat(why(shallower))
                .endsWith(suggests("The element, 11.11 mm (7/16 in)", "middle", "3.33 mm") + "At middle: "
                        + binds("3.32 mm", "3.17 mm", "11.11 mm", "10.65 mm")
                        + ". " + turns("3.1 mm", "3.17 mm", "11.11 mm", "10.65 mm") + UNSEEN);
        assertThat(shallower.depth().decidedBy()).isEqualTo(Decider.TURNING);
        // 9.1 mm: sqrt(90.7256 - 82.81) = 2.81, less than any setting leaves
        Plan none = plan(wire(), "9.1 mm");
        assertThat(why(none))
                .endsWith(suggests("The element, 9.53 mm (3/8 in)", "shallow", "2.86 mm")
                        + binds("3.1 mm", "2.81 mm", "9.53 mm", "9.1 mm") + ". It is the shallowest setting" + UNSEEN);
        assertThat(none.depth().decidedBy()).isEqualTo(Decider.TURNING);
        // 3/16 in and 4.7 mm: sqrt(22.6814 - 22.09) = 0.77; the shallowest was suggested, and is said once
        Plan thin = plan(wire(), "4.7 mm");
        assertThat(why(thin))
                .endsWith(suggests("The element, 4.76 mm (3/16 in)", "shallow", "1.43 mm")
                        + binds("3.1 mm", "0.77 mm", "4.76 mm", "4.7 mm") + ". It is the shallowest setting" + UNSEEN);
        assertThat(thin.depth().decidedBy()).isEqualTo(Decider.TURNING);
        assertThat(thin.depth().binds()).isTrue();
    }

    @Test
    void byAVolumeOfABookThatNoElementTakes() throws Exception {
        // the largest 3:1 wire of 9/16 in (common practice, no source) takes as much where no clearance is asked for
        Plan book = plan(wire().pitch("3:1"), "40 mm");
        assertThat(why(book))
                .isEqualTo("depth deep, holes 6 mm (0.236 in) from the binding edge (common practice, no source), "
                        + suggests(
                                "No element takes the whole stack; the largest, 14.29 mm (9/16 in)", "deep", "4.29 mm")
                        + "Turning of pages: not known without an element" + UNSEEN);
        assertThat(book.depth().binds()).isFalse();
        assertThat(book.depth().turnsFreely()).isFalse();
    }

    @Test
    void byTheContent() throws Exception {
        PlanChoices choices = Fixtures.of(Method.WIRE).choicesOf(Fixtures.exactly(Length.ofInch(5, 16)), A4);
        Plan clear = choices.settle(List.of(new PageCount(0, 3, 0), new PageCount(0, 3, 0), new PageCount(9, 9, 9)))
                .plan();
        assertThat(why(clear)).endsWith(". Pages: shallow 0 hit, 3 tight; middle 0 hit, 3 tight");
        assertThat(clear.depth().decidedBy()).isEqualTo(Decider.ELEMENT);
        Plan hit = choices.settle(List.of(new PageCount(0, 3, 2), new PageCount(4, 0, 2), new PageCount(9, 9, 9)))
                .plan();
        assertThat(why(hit))
                .startsWith("depth shallow, ")
                .endsWith(". Pages: shallow 0 hit, 3 tight; middle 4 hit, 0 tight; 2 not checked");
        assertThat(hit.depth().decidedBy()).isEqualTo(Decider.CONTENT);
    }

    @Test
    void byTheJobThePunchAndThePattern() throws Exception {
        assertThat(why(plan(wire().depth("deep"), "1 mm")))
                .isEqualTo(
                        "depth deep, holes 6 mm (0.236 in) from the binding edge (common practice, no source), as the job"
                                + " says. " + turns("4.02 mm", "4.66 mm", "4.76 mm", "1 mm"));
        // ISO 838:1974: 12 mm off, holes of 6 mm; rings of 16 mm: sqrt(256 - 1) = 15.97
        assertThat(why(plan(Fixtures.of(Method.RINGS), "1 mm")))
                .endsWith(", the only setting of the punch. " + turns("9 mm", "15.97 mm", "16 mm", "1 mm"));
        assertThat(why(plan(Fixtures.of(Method.RINGS).pitch("R2m-DIN"), "1 mm")))
                .endsWith(", where ring mechanisms have their rings");
    }
}
