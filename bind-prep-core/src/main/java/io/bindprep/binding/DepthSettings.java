package io.bindprep.binding;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The settings of a depth stop that there are to choose from, and which of them a job means. */
final class DepthSettings {
    // lengths are shown to a hundredth of a millimetre, so that one copied from a report must match
    private static final Length SHOWN = Length.ofMm("0.005");
    // what lies above is a slip of the unit
    private static final Length DEEPEST = Limits.DEEPEST.value();

    private DepthSettings() {}

    /**
     * The punch's settings, shallow to deep. Where the job names no punch, so that no stop is known, any length it gives
     * is one more setting.
     *
     * @throws SettingException where the job's depth is none of them, or no depth at all
     */
    static List<DepthSetting> of(Job job, Pattern pattern, Punch punch) throws SettingException {
        String asked = job.depth();
        if (asked == null || punch.depths().stream().anyMatch(d -> means(asked, d))) {
            return punch.depths();
        }
        Length length = length(asked)
                .filter(l -> job.punch() == null)
                .orElseThrow(() ->
                        unknown(asked, punch, "\"" + asked + "\" is no depth setting of the punch " + punch.id()));
        if (length.compareTo(pattern.holeAcross().half()) <= 0 || length.compareTo(DEEPEST) > 0) {
            throw unknown(
                    asked,
                    punch,
                    "holes whose centre lies " + length.inMm() + " from the binding edge "
                            + (length.compareTo(DEEPEST) > 0
                                    ? "are deeper than any punch cuts them"
                                    : "of " + pattern.holeAcross().inMm() + " would be open at it"));
        }
        List<DepthSetting> settings = new ArrayList<>(punch.depths());
        settings.add(new DepthSetting(length.inMm(), length, "as the job says"));
        settings.sort(Comparator.comparing(DepthSetting::centre));
        return settings;
    }

    /** Which of these plans stands at the setting that a job means; it is one of them. */
    static int indexOf(String asked, List<Plan> plans) {
        return IntStream.range(0, plans.size())
                .filter(i -> means(asked, plans.get(i).depth().setting()))
                .findFirst()
                .orElseThrow();
    }

    static boolean means(String asked, DepthSetting setting) {
        return setting.name().equalsIgnoreCase(asked)
                || length(asked)
                        .filter(l -> l.minus(setting.centre()).abs().compareTo(SHOWN) <= 0)
                        .isPresent();
    }

    private static Optional<Length> length(String text) {
        try {
            return Optional.of(Length.parse(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static SettingException unknown(String asked, Punch punch, String message) {
        return new SettingException(
                "depth",
                asked,
                message,
                "use one of its settings, by name or by the distance from the binding edge to the hole centre, or leave depth out",
                punch.depths().stream()
                        .map(d -> d.name() + " at " + d.centre().inMm())
                        .toList());
    }
}
