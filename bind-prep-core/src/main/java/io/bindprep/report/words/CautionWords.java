package io.bindprep.report.words;

import io.bindprep.run.Caution;
import io.bindprep.run.Caution.Load;
import io.bindprep.wording.Measures;
import java.math.BigDecimal;
import java.util.Objects;

/** English of the cautions; worded here, not quoted, and no legal advice. */
final class CautionWords {
    private static final BigDecimal KILOGRAM = BigDecimal.valueOf(1000);
    private static final String PRACTICE = "common practice, no source";

    private CautionWords() {}

    static String of(Caution caution, Measures measures) {
        return switch (caution.kind()) {
            case MANUAL ->
                "This sheet is no safety instruction. Local law, site rules and the machine's manual come first. Only"
                        + " trained people run punches, cutters and closers.";
            case GUARDS -> "Keep guards in place and hands out of the punch. Never reach past the point where it cuts.";
            case GUILLOTINE -> "Only trained, authorised people use a guillotine.";
            case ISOLATE -> "Switch off and isolate a powered punch before pins are changed or a jam is cleared.";
            case WASTE_FIRST ->
                "Punch a waste sheet of the stock first and lay it on a proof. Never exceed the lift that the punch's maker"
                        + " allows, whatever this sheet says.";
            case ENDS -> "Cut ends of wire and coil are sharp.";
            case CLOSER -> "Keep fingers out of the closer.";
            case RINGS -> "Rings snap shut. Keep fingers clear.";
            case LIFTING -> lifting(Objects.requireNonNull(caution.load(), "lifting has a load"), measures);
        };
    }

    private static String lifting(Load load, Measures measures) {
        String judged = "Judge the load before you lift or carry it. The run weighs " + weight(load, measures) + ".";
        return light(load) ? judged : judged + " Carry it in several loads.";
    }

    /** "about 12.5 kg", "at least 19 g". */
    static String weight(Load load, Measures measures) {
        return (load.atLeast() ? "at least " : "about ") + measures.weight(load.grams());
    }

    /** Returns true if a run is of less than a kilogram, which nobody parts in loads. */
    private static boolean light(Load load) {
        return load.grams().compareTo(KILOGRAM) < 0;
    }

    static String source(Caution caution) {
        return switch (caution.kind()) {
            case MANUAL -> "HSE, Safeguarding cutting machines in printing; 29 CFR 1910.212";
            case GUARDS -> "29 CFR 1910.212(a)(1) and (a)(3)(ii); BS EN 1010-3; OSHA 3170 (advisory)";
            case GUILLOTINE -> "HSE/PIAC guide on guillotines";
            case ISOLATE -> "29 CFR 1910.212; the machine's manual";
            case WASTE_FIRST, ENDS, RINGS -> PRACTICE;
            case CLOSER -> "29 CFR 1910.212(a)(1); the machine's manual";
            case LIFTING -> "HSE guidance on manual handling: the law sets no weight limit, each lift is assessed";
        };
    }
}
