package io.bindprep.gauge;

import io.bindprep.binding.Hole;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Planner;
import io.bindprep.binding.PunchRow;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Trim;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Test sheet of a punch, and the places that its readings are held against: where every hole falls if the
 * punch stands as its description says.
 *
 * @param edge length of the binding edge
 * @param across the sheet's other side
 * @param punched the punch over that edge, at least two holes from the end at the side guide
 * @param clearance what an element's size has over the stack it takes
 * @param elements every size of the method, those that go with the pattern first; empty where none is known
 * @param measures units of its words and scales
 */
public record TestSheet(
        Length edge,
        Length across,
        PunchRow punched,
        Length clearance,
        List<Elements.Entry> elements,
        Measures measures) {
    // ISO 216 A4
    private static final Length WIDTH = Length.ofMm(210);
    private static final Length HEIGHT = Length.ofMm(297);

    // the bar of 100 mm or 4 in with its margins; the row, the readings and the bar under each other
    private static final Length LEAST_EDGE = Length.ofMm(127);
    private static final Length LEAST_ACROSS = Length.ofMm(90);

    public TestSheet {
        elements = List.copyOf(elements);
    }

    /**
     * The sheet of a job: its trim, A4 where it names none; its punch, else the generic one of its pitch; each setting of
     * the depth stop, or the one that it names.
     *
     * @throws SettingException where punch, pitch, depth and trim do not go together, or the sheet is too small to read
     */
    public static TestSheet of(Job job) throws SettingException {
        Trim trim = job.trim();
        Length width = trim == null ? WIDTH : trim.width();
        Length height = trim == null ? HEIGHT : trim.height();
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        Length edge = top ? width : height;
        Length across = top ? height : width;
        PunchRow punched = Planner.unmeasured(job, edge);
        Measures measures = job.measures(width, height);
        String size = measures.area(width, height);
        if (punched.row().holes().size() < 2) {
            throw wrong(
                    size, "takes fewer than two holes of " + punched.pattern().id() + " at its binding edge");
        }
        if (edge.compareTo(LEAST_EDGE) < 0 || across.compareTo(LEAST_ACROSS) < 0) {
            throw wrong(
                    size,
                    "is too small to read: its binding edge must be at least " + measures.size(LEAST_EDGE)
                            + ", its other side " + measures.size(LEAST_ACROSS));
        }
        return new TestSheet(
                edge, across, punched, job.allowance(), elements(job.catalogue(), punched.pattern()), measures);
    }

    private static List<Elements.Entry> elements(Catalogue catalogue, Pattern pattern) {
        Set<String> groups = new LinkedHashSet<>(List.of(pattern.elements()));
        catalogue.patterns().all().stream()
                .filter(p -> p.method() == pattern.method())
                .forEach(p -> groups.add(p.elements()));
        return groups.stream()
                .flatMap(group -> catalogue.elements().all().stream()
                        .filter(e -> e.group().equals(group)))
                .toList();
    }

    private static SettingException wrong(String size, String what) {
        return new SettingException(
                "trim",
                size,
                "a test sheet of " + size + " " + what,
                "name a larger trim, or another binding edge",
                List.of());
    }

    Ruler ruler() {
        return Ruler.of(measures);
    }

    Pattern pattern() {
        return punched.pattern();
    }

    Punch punch() {
        return punched.punch();
    }

    /** The settings of the depth stop to try, shallow to deep; at least one. */
    List<DepthSetting> settings() {
        return punched.settings();
    }

    HoleRow row() {
        return punched.row();
    }

    Hole first() {
        return row().holes().get(0);
    }

    Hole last() {
        return row().holes().get(row().holes().size() - 1);
    }

    /** First centre to last centre. */
    Length span() {
        return last().centre().minus(first().centre());
    }
}
