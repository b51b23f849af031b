package io.bindprep.report.html;

import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Stage;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;

/**
 * A mark that is punched or tight, as a row of its page's table.
 *
 * @param number ties it to the picture
 * @param pin the pins whose holes meet it; "" for none
 * @param decided what decided: its outline or its pixels
 */
public record HitView(
        int number, String verdict, String kind, String words, String near, String along, String pin, String decided) {
    static HitView of(int number, Hit hit, Measures measures) {
        Mark m = hit.mark();
        return new HitView(
                number,
                Texts.lower(hit.verdict()),
                Texts.lower(m.kind()),
                Texts.clean(m.words()),
                measures.mark(m.nearMm()),
                measures.marks(m.alongStartMm(), m.alongEndMm()),
                PageLists.compact(hit.pins()),
                m.stage() == Stage.GEOMETRY ? "outline" : "pixels");
    }
}
