package io.bindprep.report.words;

import io.bindprep.run.Caution;
import io.bindprep.run.Caution.Load;
import io.bindprep.wording.LengthText;
import java.math.BigDecimal;
import java.util.Objects;

/** English of the cautions; worded here, not quoted, and no legal advice. */
final class CautionWords {
    private static final BigDecimal KILOGRAM = BigDecimal.valueOf(1000);
    private static final String PRACTICE = "common practice, no source";

    private CautionWords() {}

    static String of(Caution caution) {
        return switch (caution.kind()) {
            case MANUAL ->
                "This sheet is no safety instruction: local law, site rules and the machine's manual come first, and only"
                        + " trained people run punches, cutters and closers.";
            case GUARDS -> "Keep guards in place and hands out of the punch; never reach past the point where it cuts.";
            case GUILLOTINE -> "Only trained, authorised people use a guillotine.";
            case ISOLATE -> "Switch off and isolate a powered punch before pins are changed or a jam is cleared.";
            case WASTE_FIRST ->
                "Punch a waste sheet of the stock first and lay it on a proof; never exceed the lift that the punch's maker"
                        + " allows, whatever stands here.";
            case ENDS -> "Cut ends of wire and coil are sharp.";
            case CLOSER -> "Keep fingers out of the closer.";
            case RINGS -> "Rings snap shut: mind fingers.";
            case LIFTING -> lifting(Objects.requireNonNull(caution.load(), "lifting has a load"));
        };
    }

    private static String lifting(Load load) {
        String judged = "Judge the load before you lift or carry it. The run weighs " + weight(load) + ".";
        return light(load) ? judged : judged + " Carry it in several loads.";
    }

    /** "about 12.5 kg", or "about 19 g" below a kilogram. */
    static String weight(Load load) {
        return (load.atLeast() ? "at least " : "about ")
                + (light(load)
                        ? LengthText.plain(load.grams(), 0) + " g"
                        : LengthText.plain(load.grams().movePointLeft(3), 1) + " kg");
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
