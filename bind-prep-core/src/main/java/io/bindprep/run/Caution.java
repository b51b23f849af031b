package io.bindprep.run;

/**
 * Caution: a thing that can hurt someone or spoil the run.
 *
 * @param source what it rests on; it is worded here, not quoted, and is no legal advice
 */
public record Caution(String text, String source) {
    static final Caution MANUAL = new Caution(
            "This sheet is no safety instruction: local law, site rules and the machine's manual come first, and only"
                    + " trained people run punches, cutters and closers.",
            "HSE, Safeguarding cutting machines in printing; 29 CFR 1910.212");
    static final Caution GUARDS = new Caution(
            "Keep guards in place and hands out of the punch; never reach past the point where it cuts.",
            "29 CFR 1910.212(a)(1) and (a)(3)(ii); BS EN 1010-3; OSHA 3170 (advisory)");
    static final Caution GUILLOTINE =
            new Caution("Only trained, authorised people use a guillotine.", "HSE/PIAC guide on guillotines");
    static final Caution ISOLATE = new Caution(
            "Switch off and isolate a powered punch before pins are changed or a jam is cleared.",
            "29 CFR 1910.212; the machine's manual");
    static final Caution WASTE_FIRST = new Caution(
            "Punch a waste sheet of the stock first and lay it on a proof; never exceed the lift that the punch's maker"
                    + " allows, whatever stands here.",
            "common practice, no source");
    static final Caution ENDS = new Caution("Cut ends of wire and coil are sharp.", "common practice, no source");
    static final Caution CLOSER =
            new Caution("Keep fingers out of the closer.", "29 CFR 1910.212(a)(1); the machine's manual");

    static Caution lifting(String weight) {
        return new Caution(
                "Judge the load before you lift or carry it. The run weighs " + weight + ". Carry it in several loads.",
                "HSE guidance on manual handling: the law sets no weight limit, each lift is assessed");
    }
}
