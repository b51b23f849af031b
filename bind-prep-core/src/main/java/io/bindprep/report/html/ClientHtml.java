package io.bindprep.report.html;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.marks.Hit;
import io.bindprep.marks.MarkKind;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.Picture;
import io.bindprep.report.words.ClientMessage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a message to a designer as one HTML file, with a small picture of each page to change. */
public final class ClientHtml {
    private ClientHtml() {}

    /**
     * Picture of a page with the margin to keep free and what stands in it, millimetres from its upper left corner.
     *
     * @param source a data URI
     */
    public record Sketch(String source, String width, String height, Box margin, List<Box> marks) {
        public Sketch {
            marks = List.copyOf(marks);
        }
    }

    /** A rectangle, its numbers as they stand in a drawing. */
    public record Box(String x, String y, String width, String height) {}

    /** Changes of some pages with their picture. */
    public record Entry(ClientMessage.Moves moves, @Nullable Sketch sketch) {}

    /**
     * The message.
     *
     * @param pictures of pages that are not clear, as {@code BindPrep.pictures} gives them; may be empty
     */
    public static String write(Report report, List<PagePicture> pictures) {
        ClientMessage message = ClientMessage.of(report);
        Map<Integer, PagePicture> byPage = new HashMap<>();
        pictures.forEach(p -> byPage.put(p.page(), p));
        double margin =
                report.plan().bindingMargin().max(report.plan().holeZone()).mm();
        List<Entry> entries = new ArrayList<>();
        for (ClientMessage.Moves moves : message.pages()) {
            PagePicture picture = byPage.get(moves.first());
            Picture whole = picture == null ? null : picture.whole();
            entries.add(new Entry(
                    moves, whole == null ? null : sketch(report.pages().get(moves.first() - 1), whole, margin)));
        }
        return rendered(message, entries);
    }

    /** The message on a file that could not be opened. */
    public static String unreadable(ClientMessage message) {
        return rendered(message, List.of());
    }

    private static String rendered(ClientMessage message, List<Entry> entries) {
        return Templates.rendered("client.jte", Map.of("message", message, "entries", entries));
    }

    private static Sketch sketch(PageReport page, Picture picture, double margin) {
        EdgeFrame frame = EdgeFrame.of(page);
        List<Box> marks = new ArrayList<>();
        for (Hit hit : page.verdict().hits()) {
            if (hit.mark().kind() != MarkKind.BACKGROUND) {
                marks.add(box(frame.rect(
                        hit.mark().nearMm(),
                        hit.mark().farMm(),
                        hit.mark().alongStartMm(),
                        hit.mark().alongEndMm())));
            }
        }
        return new Sketch(
                "data:" + picture.mediaType() + ";base64," + picture.base64(),
                Texts.number(frame.width()),
                Texts.number(frame.height()),
                box(frame.rect(0, margin, 0, frame.length())),
                marks);
    }

    private static Box box(EdgeFrame.Rect r) {
        return new Box(Texts.number(r.x()), Texts.number(r.y()), Texts.number(r.width()), Texts.number(r.height()));
    }
}
