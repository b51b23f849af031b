package io.bindprep.binding;

import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Patterns;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which pattern on which punch: the job's own, else by the method and the stack. */
record PunchChoice(Pattern pattern, Punch punch, String because) {
    private static final List<Length> US_EDGES =
            List.of(Length.ofInch(11, 1), Length.ofInch(14, 1), Length.ofInch(17, 1));

    static PunchChoice of(Job job, Stack stack, Length edge) throws SettingException {
        String named = job.punch();
        if (named != null) {
            Punch punch = job.catalogue()
                    .punches()
                    .byId(named)
                    .orElseThrow(() -> new SettingException(
                            "punch",
                            named,
                            "no punch \"" + named + "\" is known",
                            "name one of the known punches, or a punch file that ends in .yaml, .yml or .json",
                            punchesFor(job)));
            return of(job, punch);
        }
        String pitch = job.pitch();
        if (pitch != null) {
            Pattern pattern = forced(job, pitch);
            return new PunchChoice(
                    pattern,
                    job.catalogue().punches().generic(pattern),
                    "pitch " + pattern.pitchName() + " as the job says");
        }
        return chosen(job, stack, edge);
    }

    static PunchChoice of(Job job, Punch punch) throws SettingException {
        Pattern pattern = job.catalogue().patterns().byId(punch.pattern()).orElseThrow();
        if (pattern.method() != job.binding()) {
            throw new SettingException(
                    "punch",
                    punch.id(),
                    "the punch " + punch.id() + " cuts " + pattern.id() + ", which is not for " + word(job.binding()),
                    "name a punch for " + word(job.binding()) + ", or change the binding",
                    punchesFor(job));
        }
        String pitch = job.pitch();
        if (pitch != null) {
            Pattern asked = forced(job, pitch);
            boolean same = pitch.equalsIgnoreCase(asked.id())
                    ? asked.id().equals(pattern.id())
                    : asked.pitchName().equals(pattern.pitchName());
            if (!same) {
                throw new SettingException(
                        "punch",
                        punch.id(),
                        "the punch " + punch.id() + " cuts " + pattern.id() + ", the job's pitch is " + pitch,
                        "name a punch of that pitch, or leave one of the two out",
                        punchesFor(job));
            }
        }
        return new PunchChoice(
                pattern, punch, "pitch " + pattern.pitchName() + ", which the punch " + punch.id() + " cuts");
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
                        p, job.catalogue().punches().generic(p), "pitch " + p.pitchName() + " to compare with"));
    }

    private static Pattern forced(Job job, String pitch) throws SettingException {
        Method method = job.binding();
        Patterns patterns = job.catalogue().patterns();
        return patterns.find(method, pitch)
                .orElseThrow(() -> new SettingException(
                        "pitch",
                        pitch,
                        "no pitch or pattern \"" + pitch + "\" is known for " + word(method),
                        "use one of the known ones or leave it out",
                        patterns.known(method)));
    }

    private static PunchChoice chosen(Job job, Stack stack, Length edge) {
        String id;
        String because;
        switch (job.binding()) {
            case WIRE -> {
                Pattern fine = pattern(job, "W3_1i-square-0t");
                Sizing sizing = Sizing.of(job, fine, Length.ZERO, null);
                boolean thin = sizing.smallest(sizing.decides(stack)).isPresent();
                id = thin ? fine.id() : "W2_1i-square-0t";
                because = "pitch " + (thin ? "3:1" : "2:1") + ": the stack of "
                        + sizing.decides(stack).inMm() + (thin ? " goes" : " does not go")
                        + " on the largest 3:1 wire of 9/16 in (common practice, no source)";
            }
            case COMB -> {
                id = "P16_9i-rect-0t";
                because = "pitch 9/16 in: the comb of XJDF 2.2 F.9 and RFC 3806";
            }
            case COIL -> {
                id = "C4_1i-round";
                because =
                        "pitch 4:1: usual for coil (Printing Impressions, Feb 2005); hole and centre are common practice,"
                                + " no source";
            }
            default -> {
                boolean us = US_EDGES.stream().anyMatch(e -> e.minus(edge).abs().compareTo(Limits.CUT.value()) <= 0);
                id = us ? "R3i-US" : "R2m-ISO";
                because = us
                        ? "three rings R3i-US (XJDF 2.2 F.3): the binding edge of " + edge.inMm()
                                + " is that of a US sheet"
                        : "two rings R2m-ISO (ISO 838:1974): the binding edge of " + edge.inMm()
                                + " is not that of a US sheet";
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
