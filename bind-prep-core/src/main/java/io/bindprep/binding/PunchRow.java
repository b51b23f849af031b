package io.bindprep.binding;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.unit.Length;
import java.util.List;

/**
 * A punch over a binding edge, as if its pins stood where its pattern says.
 *
 * @param settings those of its depth stop, shallow to deep; only the one that the job names, where it names one
 * @param row the holes; none where none fits
 */
public record PunchRow(Pattern pattern, Punch punch, List<DepthSetting> settings, HoleRow row) {
    public PunchRow {
        settings = List.copyOf(settings);
    }

    /**
     * Worst error of the places of this row's holes, for all that was measured of a punch.
     *
     * @param measured a punch of the same pattern
     */
    public Length leftOpen(Punch measured) {
        return new MeasuredPins(pattern, measured).leftOpen(row);
    }
}
