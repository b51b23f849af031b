package io.bindprep.binding;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.BindingErrors;
import io.bindprep.wording.Sources;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The settings of a depth stop that there are to choose from, and which of them a job means. */
final class DepthSettings {
    // lengths are shown to a hundredth of a millimetre, so that one copied from a report must match
    private static final Length SHOWN = Length.ofMm("0.005");

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
        List<String> known = punch.depths().stream()
                .map(d -> BindingErrors.setting(d.name(), d.centre()))
                .toList();
        Length length = length(asked)
                .filter(l -> job.punch() == null)
                .orElseThrow(() -> BindingErrors.noDepth(asked, punch.id(), known));
        if (length.compareTo(job.catalogue().limits().deepest().length()) > 0) {
            throw BindingErrors.tooDeep(asked, length, known);
        }
        if (length.compareTo(pattern.holeAcross().half()) <= 0) {
            throw BindingErrors.holesOpen(asked, length, pattern.holeAcross(), known);
        }
        List<DepthSetting> settings = new ArrayList<>(punch.depths());
        settings.add(new DepthSetting(length.inMm(), length, Sources.JOB));
        settings.sort(Comparator.comparing(DepthSetting::centre));
        return settings;
    }

    /** The one of these plans that stands at the setting that a job means. */
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
}
