package io.bindprep.check;

import java.util.List;

/** Remedies of pages that could not be checked, by the reason: each names an export or a setting that mends it. */
final class UncheckedRemedies {
    /** For a reason that no line below knows. */
    static final String OTHER =
            "Ask the client for a fresh PDF export, or compare these pages by eye with a test punch.";

    private static final String SIMPLER =
            "Ask for an export with the artwork of these pages simplified, or as one picture of at least 300 ppi.";
    private static final String ANEW =
            "Ask for a fresh export from the program that made it, sent as an archive so that it arrives whole.";
    private static final String PICTURES =
            "Ask for an export with all pictures packed as JPEG or ZIP, not as JPEG 2000 or JBIG2.";
    private static final String JPEG_2000 = PICTURES
            + " Or add an ImageIO reader of JPEG 2000: the command takes a folder with its jar (--image-readers), the Maven"
            + " plugin a dependency.";

    private record Remedy(String partOfReason, String what) {}

    /** The first that fits holds. */
    private static final List<Remedy> REMEDIES = List.of(
            new Remedy("a JPEG 2000 picture in it cannot be decoded", JPEG_2000),
            new Remedy("a picture in it cannot be decoded", PICTURES),
            new Remedy("a picture in it unpacks", "Ask for an export with pictures of 300 ppi at their printed size."),
            new Remedy("more memory than there is", "Give the check more memory, or check this file alone."),
            new Remedy("its font", "Ask for an export with all fonts embedded, or with text turned into outlines."),
            new Remedy("annotation", "Ask for an export with forms and comments flattened."),
            new Remedy(
                    "MediaBox",
                    "Ask for an export with the page size set: these pages name no paper that can be used."),
            new Remedy("UserUnit", "Ask for an export at 100 % scale, without a unit of its own."),
            new Remedy("its Rotate of", "Ask for an export with these pages rotated by 90 degrees or not at all."),
            new Remedy("larger than any sheet", "Ask for an export at the trimmed size and 100 % scale."),
            new Remedy("its binding edge is too long", "Ask for an export at the trimmed size and 100 % scale."),
            new Remedy("a shading in it", "Ask for an export with gradients turned into pictures."),
            new Remedy("more than", SIMPLER),
            new Remedy("nested too deep", SIMPLER),
            new Remedy("too long", SIMPLER),
            new Remedy("break", ANEW),
            new Remedy("missing from the file", ANEW),
            new Remedy("cannot be read", ANEW),
            new Remedy("cannot be carried out", ANEW),
            new Remedy("cannot be drawn", ANEW),
            new Remedy("could not be drawn", ANEW));

    private UncheckedRemedies() {}

    static String of(String reason) {
        return REMEDIES.stream()
                .filter(r -> reason.contains(r.partOfReason()))
                .map(Remedy::what)
                .findFirst()
                .orElse(OTHER);
    }
}
