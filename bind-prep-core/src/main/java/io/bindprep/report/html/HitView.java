package io.bindprep.report.html;

import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Stage;
import io.bindprep.unit.LengthText;

/**
 * A mark that is punched or tight, as a row of its page's table.
 *
 * @param number ties it to the picture
 * @param pin the pin whose hole meets it; "" for none
 * @param decided what decided: its outline or its pixels
 */
public record HitView(
        int number, String verdict, String kind, String words, String near, String along, String pin, String decided) {
    static HitView of(int number, Hit hit) {
        Mark m = hit.mark();
        Integer pin = hit.pin();
        return new HitView(
                number,
                Texts.lower(hit.verdict()),
                Texts.lower(m.kind()),
                Texts.clean(m.words()),
                LengthText.mm(m.nearMm()),
                LengthText.mm(m.alongStartMm(), m.alongEndMm()),
                pin == null ? "" : pin.toString(),
                m.stage() == Stage.GEOMETRY ? "outline" : "pixels");
    }
}
