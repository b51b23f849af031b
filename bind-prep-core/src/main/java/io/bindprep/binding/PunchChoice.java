package io.bindprep.binding;

import io.bindprep.catalogue.Limits;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Patterns;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import io.bindprep.wording.BindingErrors;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Choice of pattern and punch: the job's own, else by the method and the stack. */
record PunchChoice(Pattern pattern, Punch punch, Reason because) {
    static PunchChoice of(Job job, Stack stack, Length edge) throws SettingException {
        String named = job.punch();
        if (named != null) {
            Punch punch = job.catalogue()
                    .punches()
                    .byId(named)
                    .orElseThrow(() -> BindingErrors.noPunch(named, punchesFor(job)));
            return of(job, punch);
        }
        String pitch = job.pitch();
        if (pitch != null) {
            Pattern pattern = forced(job, pitch);
            return new PunchChoice(
                    pattern, job.catalogue().punches().generic(pattern), new Reason.PitchAsked(pattern.pitchName()));
        }
        return chosen(job, stack, edge);
    }

    static PunchChoice of(Job job, Punch punch) throws SettingException {
        Pattern pattern = job.catalogue().patterns().byId(punch.pattern()).orElseThrow();
        if (pattern.method() != job.binding()) {
            throw BindingErrors.punchOfOtherMethod(punch.id(), pattern.id(), word(job.binding()), punchesFor(job));
        }
        String pitch = job.pitch();
        if (pitch != null) {
            Pattern asked = forced(job, pitch);
            boolean same = pitch.equalsIgnoreCase(asked.id())
                    ? asked.id().equals(pattern.id())
                    : asked.pitchName().equals(pattern.pitchName());
            if (!same) {
                throw BindingErrors.punchOfOtherPitch(punch.id(), pattern.id(), pitch, punchesFor(job));
            }
        }
        return new PunchChoice(pattern, punch, new Reason.PitchOfPunch(pattern.pitchName(), punch.id()));
    }

    /** The other pitch that a method is bound at, on its generic punch; empty where it has no other. */
    Optional<PunchChoice> other(Job job) {
        String pitch = switch (pattern.method()) {
            case WIRE -> pattern.pitchName().equals("3:1") ? "2:1" : "3:1";
            case COIL -> pattern.pitchName().equals("4:1") ? "5:1" : "4:1";
            case COMB -> pattern.pitchName().equals("9/16 in") ? "12 mm" : "9/16 in";
            case RINGS -> "";
        };
        return job.catalogue()
                .patterns()
                .find(job.binding(), pitch)
                .map(p -> new PunchChoice(
                        p, job.catalogue().punches().generic(p), new Reason.PitchCompared(p.pitchName())));
    }

    private static Pattern forced(Job job, String pitch) throws SettingException {
        Method method = job.binding();
        Patterns patterns = job.catalogue().patterns();
        Optional<Pattern> found = patterns.find(method, pitch);
        if (found.isPresent()) {
            return found.get();
        }
        List<String> told =
                patterns.told(method, pitch).stream().map(Pattern::id).toList();
        throw told.isEmpty()
                ? BindingErrors.noPitch(pitch, word(method), patterns.known(method))
                : BindingErrors.severalPitches(pitch, word(method), told);
    }

    private static PunchChoice chosen(Job job, Stack stack, Length edge) {
        String id;
        Reason because;
        switch (job.binding()) {
            case WIRE -> {
                Pattern fine = pattern(job, "W3_1i-square-0t");
                Sizing sizing = Sizing.of(job, fine, Length.ZERO, null);
                boolean thin = sizing.smallest(sizing.decides(stack)).isPresent();
                id = thin ? fine.id() : "W2_1i-square-0t";
                because = new Reason.PitchByStack(sizing.decides(stack), thin);
            }
            case COMB -> {
                id = "P16_9i-rect-0t";
                because = new Reason.CombPitch();
            }
            case COIL -> {
                id = "C4_1i-round";
                because = new Reason.CoilPitch();
            }
            default -> {
                Limits limits = job.catalogue().limits();
                Length cut = limits.cut().length();
                boolean us = limits.usEdges().stream()
                        .anyMatch(e -> e.minus(edge).abs().compareTo(cut) <= 0);
                id = us ? "R3i-US" : "R2m-ISO";
                because = new Reason.RingsByEdge(edge, us);
            }
        }
        Pattern pattern = pattern(job, id);
        return new PunchChoice(pattern, job.catalogue().punches().generic(pattern), because);
    }

    private static Pattern pattern(Job job, String id) {
        return job.catalogue().patterns().byId(id).orElseThrow();
    }

    private static List<String> punchesFor(Job job) {
        return job.catalogue().punches().all().stream()
                .filter(p -> pattern(job, p.pattern()).method() == job.binding())
                .map(Punch::id)
                .toList();
    }

    static String word(Method method) {
        return method.name().toLowerCase(Locale.ROOT);
    }
}
