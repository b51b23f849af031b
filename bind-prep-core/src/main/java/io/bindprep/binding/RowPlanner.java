package io.bindprep.binding;

import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Hanger;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.BindingErrors;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Plans the hole row: how many holes, where, which pins to pull, how a sheet must be fed, how skewed it may sit. */
final class RowPlanner {
    private final Job job;
    private final Pattern pattern;
    private final Punch punch;
    private final Length edge;
    private final Length minimumWeb;
    private final Consumer<Reason> because;

    RowPlanner(Job job, Pattern pattern, Punch punch, Length edge, Consumer<Reason> because) {
        this.job = job;
        this.pattern = pattern;
        this.punch = punch;
        this.edge = edge;
        this.because = because;
        Length asked = Objects.requireNonNullElse(job.minimumWeb(), punch.minimumWeb());
        // a hole that touches the end is cut open, whatever little is asked for
        this.minimumWeb = asked.max(new Length(1));
    }

    HoleRow row() throws SettingException {
        // a size that only the document asks for is a finding about the document, not a wrong setting
        boolean asked = job.pitch() != null || job.punch() != null || job.trim() != null;
        if (edge.compareTo(punch.longestEdge()) > 0) {
            if (!asked) {
                return noRow(new Reason.EdgeTooLong(edge, punch.longestEdge()));
            }
            throw BindingErrors.edgeTooLong(punch.id(), edge, punch.longestEdge());
        }
        HoleRow whole = new RowMaker(pattern, punch, edge, minimumWeb, null).row();
        if (whole.holes().isEmpty() || (!pattern.repeating() && whole.holes().size() < punch.pins())) {
            if (!asked && job.minimumWeb() == null) {
                return noRow(new Reason.EdgeTooShort(edge));
            }
            throw misfit();
        }
        because.accept(new Reason.WholeRow(
                whole.holes().size(),
                edge,
                whole.holes().get(0).centre(),
                whole.minimumWeb(),
                minimumWeb,
                job.minimumWeb() != null,
                punch.firstPin() != null));
        Hanger hanger = job.hanger();
        HoleRow row = hanger == null ? whole : hung(hanger, whole);
        pins(row);
        measured(row);
        return row;
    }

    private HoleRow hung(Hanger hanger, HoleRow whole) throws SettingException {
        if (job.binding() == Method.RINGS) {
            throw BindingErrors.hangerOnRings(hanger.gap());
        }
        HoleRow row = new RowMaker(pattern, punch, edge, minimumWeb, hanger).row();
        Length width = RowMaker.width(hanger, minimumWeb);
        int least = job.catalogue().limits().hangerRun();
        if (row.runs().stream().anyMatch(n -> n < least)) {
            throw BindingErrors.gapTooWide(hanger.gap(), width, edge, least);
        }
        boolean wider = width.compareTo(hanger.gap()) > 0;
        because.accept(new Reason.HangerGap(
                width,
                wider ? minimumWeb : null,
                whole.holes().size() - row.holes().size(),
                row.runs()));
        return row;
    }

    private HoleRow noRow(Reason why) {
        because.accept(why);
        return new HoleRow(edge, List.of(), List.of(), List.of(), Length.ZERO);
    }

    private SettingException misfit() {
        String key = job.minimumWeb() != null
                ? "minimum-web"
                : job.pitch() == null && job.punch() != null ? "punch" : "pitch";
        return BindingErrors.noHoleFits(
                key,
                job.minimumWeb() != null ? minimumWeb.inMm() : pattern.pitchName(),
                pattern.id(),
                edge,
                minimumWeb,
                punch.id(),
                key.equals("minimum-web") ? List.of() : fitting());
    }

    private void pins(HoleRow row) {
        Gap gap = row.gap();
        List<Integer> ends = row.pulledPins().stream()
                .filter(pin -> gap == null || !gap.pulledPins().contains(pin))
                .toList();
        if (!ends.isEmpty()) {
            because.accept(new Reason.EndPins(ends));
        }
        if (gap != null && !gap.pulledPins().isEmpty()) {
            because.accept(new Reason.GapPins(gap.pulledPins()));
        }
        if (row.pulledPins().isEmpty() && row.fixedPins().isEmpty()) {
            because.accept(new Reason.NoPins());
        }
        fixed(row.fixedPins(), false);
        fixed(gap == null ? List.of() : gap.fixedPins(), true);
    }

    private void fixed(List<Integer> pins, boolean atGap) {
        if (!pins.isEmpty()) {
            because.accept(new Reason.FixedPins(pins, punch.id(), atGap));
        }
    }

    private void measured(HoleRow row) {
        MeasuredPins stand = new MeasuredPins(pattern, punch);
        Length off = row.guideOff();
        if (!off.equals(Length.ZERO)) {
            because.accept(new Reason.GuideOff(
                    row.holes().get(0).centre().minus(off), off, stand.side().tolerance()));
        } else if (!stand.side().value().equals(Length.ZERO)) {
            because.accept(
                    new Reason.FirstPinOff(stand.side().value(), stand.side().tolerance()));
        }
        Length stretch = stand.pitch().value();
        if (!stretch.equals(Length.ZERO)) {
            because.accept(new Reason.RowStretched(
                    stretch, pattern.span(punch.pins()), stand.pitch().tolerance()));
        }
    }

    /** Skew that a sheet may have; null where the wire thickness is not known or one hole cannot slant. */
    @Nullable
    Skew skew(HoleRow row, Length centre, Length punchingTolerance) {
        WireThicknesses.WireThickness wireThickness =
                WireThicknesses.of(pattern).orElse(null);
        if (wireThickness == null || row.holes().size() < 2) {
            because.accept(new Reason.SkewUnknown(wireThickness == null ? pattern.elements() : null));
            return null;
        }
        Length over = row.holes()
                .get(row.holes().size() - 1)
                .centre()
                .minus(row.holes().get(0).centre());
        Length through = pattern.holeAcross().minus(wireThickness.thickness());
        Length outside = centre.minus(pattern.holeAcross().half());
        Length rise = through.min(outside).max(Length.ZERO);
        Skew skew = new Skew(rise, over, wireThickness.thickness(), wireThickness.source());
        because.accept(
                new Reason.MostSkew(skew, pattern.holeAcross(), through, outside, punchingTolerance, row.slant()));
        return skew;
    }

    private List<String> fitting() {
        return job.catalogue().patterns().all().stream()
                .filter(p -> p.method() == job.binding())
                .filter(p -> {
                    Punch generic = job.catalogue().punches().generic(p);
                    return RowMaker.count(p, edge, generic.minimumWeb(), generic.pins()) > 0;
                })
                .map(Pattern::id)
                .toList();
    }
}
