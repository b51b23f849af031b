package io.bindprep.wording;

import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;

/** Settings that a plan refuses, each with its sentence and remedy. */
public final class BindingErrors {
    private BindingErrors() {}

    /** A punch that nobody knows. */
    public static SettingException noPunch(String named, List<String> known) {
        return new SettingException(
                "punch",
                named,
                "no punch \"" + named + "\" is known",
                "name one of the known punches, or a punch file that ends in .yaml, .yml or .json",
                known);
    }

    /** A punch for another method. */
    public static SettingException punchOfOtherMethod(String punch, String pattern, String method, List<String> known) {
        return new SettingException(
                "punch",
                punch,
                "the punch " + punch + " cuts " + pattern + ", which is not for " + method,
                "name a punch for " + method + ", or change the binding",
                known);
    }

    /** A punch of another pitch. */
    public static SettingException punchOfOtherPitch(String punch, String pattern, String pitch, List<String> known) {
        return new SettingException(
                "punch",
                punch,
                "the punch " + punch + " cuts " + pattern + ", the job's pitch is " + pitch,
                "name a punch of that pitch, or leave one of the two out",
                known);
    }

    /** A pitch that a method does not have. */
    public static SettingException noPitch(String pitch, String method, List<String> known) {
        return new SettingException(
                "pitch",
                pitch,
                "no pitch or pattern \"" + pitch + "\" is known for " + method,
                "use one of the known ones or leave it out",
                known);
    }

    /** A pitch that several patterns of a method have. */
    public static SettingException severalPitches(String pitch, String method, List<String> meant) {
        return new SettingException(
                "pitch",
                pitch,
                "\"" + pitch + "\" can be several patterns of " + method + ": say which",
                "name one of them",
                meant);
    }

    /** A depth that is no setting of the punch. */
    public static SettingException noDepth(String asked, String punch, List<String> known) {
        return depth(asked, "\"" + asked + "\" is no depth setting of the punch " + punch, known);
    }

    /** A depth that no punch reaches. */
    public static SettingException tooDeep(String asked, Length centre, List<String> known) {
        return depth(asked, holes(centre) + "are deeper than any punch cuts them", known);
    }

    /** A depth at which holes are open at the edge. */
    public static SettingException holesOpen(String asked, Length centre, Length holeAcross, List<String> known) {
        return depth(asked, holes(centre) + "of " + holeAcross.inMm() + " would be open at it", known);
    }

    private static String holes(Length centre) {
        return "holes whose centre lies " + centre.inMm() + " from the binding edge ";
    }

    private static SettingException depth(String asked, String message, List<String> known) {
        return new SettingException(
                "depth",
                asked,
                message,
                "use one of its settings, by name or by the distance from the binding edge to the hole centre, or leave depth out",
                known);
    }

    /** "deep at 6 mm": a setting as one of those known. */
    public static String setting(String name, Length centre) {
        return name + " at " + centre.inMm();
    }

    /** A binding edge longer than the punch takes. */
    public static SettingException edgeTooLong(String punch, Length edge, Length longest) {
        return new SettingException(
                "punch",
                punch,
                "the binding edge of " + edge.inMm() + " is longer than the punch " + punch + " takes ("
                        + longest.inMm() + ")",
                "bind at a shorter edge or name a punch that takes it",
                List.of());
    }

    /**
     * A binding edge on which no hole of the pattern keeps its web.
     *
     * @param key the setting that is at fault
     * @param web what the ends must keep
     */
    public static SettingException noHoleFits(
            String key, String value, String pattern, Length edge, Length web, String punch, List<String> known) {
        boolean webAsked = key.equals("minimum-web");
        return new SettingException(
                key,
                value,
                pattern + " does not fit a binding edge of " + edge.inMm() + " with " + web.inMm()
                        + " of web at the ends on the punch " + punch,
                "choose another pitch, punch" + (webAsked ? ", minimum-web" : "") + " or binding edge",
                known);
    }

    /** A hanger on rings. */
    public static SettingException hangerOnRings(Length gap) {
        return new SettingException(
                "hanger",
                gap.inMm(),
                "a hanger sits in a gap between loops, which ring holes do not have",
                "leave hanger out, or bind by wire, coil or comb",
                List.of());
    }

    /** A hanger's gap that leaves too few holes beside it. */
    public static SettingException gapTooWide(Length gap, Length width, Length edge, int leastHoles) {
        return new SettingException(
                "hanger",
                gap.inMm(),
                "a gap of " + width.inMm() + " in a binding edge of " + edge.inMm() + " leaves fewer than " + leastHoles
                        + " holes on a side",
                "make the gap smaller",
                List.of());
    }
}
