package io.bindprep.report.html;

import io.bindprep.wording.LengthText;
import io.bindprep.wording.Printable;
import java.math.BigDecimal;
import java.util.Locale;

/** Small wording that the views share. */
public final class Texts {
    private Texts() {}

    /** A coordinate in a drawing, millimetres to a hundredth. */
    static String number(double mm) {
        return LengthText.plain(BigDecimal.valueOf(mm), 2);
    }

    /** A document's words without what could turn the text around them or hide in it. */
    static String clean(String words) {
        return Printable.line(words);
    }

    static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
