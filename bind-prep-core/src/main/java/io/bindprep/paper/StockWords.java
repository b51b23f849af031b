package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes a stock as people say it, "24 lb. bond", "90 gr", "7 mil clear", "250 microns", with the signs of {@link StockParser}. */
final class StockWords {
    private static final Pattern POUNDS =
            Pattern.compile("(?<=\\d)[ -]*(?:pounds?\\b\\.?|lbs?\\b\\.?|#)(?=$|[\\s,;a-z])\\s*");
    // a ream is 500 sheets (ISO 4046)
    private static final Pattern REAM = Pattern.compile("^(?:1 |one |a )?ream(?=\\s*(?:=|:|is\\b|of\\b|\\d))");
    private static final Pattern PACK =
            Pattern.compile("(\\d\\s*(?:sheets?|leaves))\\s*(?:=|:|is|are|measures?)?\\s+(?=[\\d.])");
    private static final Pattern WEIGHT = Pattern.compile(
            "(?<=\\d)\\s*(?:g(?:r|rs|ms?|rams?)?\\s*/\\s*(?:m2|m²|m\\^2|qm|sqm|sm)|gr|grs|gms?|grams?)(?=$|[\\s,;])");
    private static final Pattern MICRONS = Pattern.compile("(?<=\\d)\\s*(?:microns?|mic|mu)(?=$|[\\s,;])");
    private static final Pattern POINTS = Pattern.compile("(?<=\\d)\\s*-?points?(?=$|[\\s,;])");
    private static final Pattern BARE_POINT = Pattern.compile("(?<![\\d.])\\.(?=\\d)");
    private static final Pattern CLEAR =
            Pattern.compile("^(\\d{1,2})\\s*-?mil\\s+clear(?:\\s+(?:film|cover))?(?=$|[\\s,;])");
    private static final Pattern BOARD = Pattern.compile("\\b(?:gr[ae]y|chip|binder'?s?|cover)[ -]?board(?=$|[\\s,;])");

    private StockWords() {}

    /** The text in small letters, its units as the parser knows them. */
    static String plain(String given) {
        String text = Length.withPoint(given.toLowerCase(Locale.ROOT));
        text = BARE_POINT.matcher(text).replaceAll("0.");
        text = POUNDS.matcher(text).replaceAll(" lb ").strip();
        text = REAM.matcher(text).replaceFirst("500 sheets");
        text = PACK.matcher(text).replaceFirst("$1 = ");
        text = WEIGHT.matcher(text).replaceAll(" gsm");
        text = MICRONS.matcher(text).replaceAll(" um");
        text = POINTS.matcher(text).replaceAll(" pt");
        text = CLEAR.matcher(text).replaceFirst("clear-$1mil");
        // behind a thickness it says the kind
        return text.matches("\\d.*(?:um|mm|mil|in|\").*") ? BOARD.matcher(text).replaceAll("board") : text;
    }
}
