package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.edit.ContentPieces.Content;
import io.bindprep.pdf.edit.ContentPieces.Piece;
import io.bindprep.pdf.ink.InkEngine;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * Things that a page paints, kept packed, and of those near the edge that is bound where in the page's content they are
 * painted, so that they can be moved without the content being carried out again.
 */
public final class PageThings {
    /** Depth in which single things are most often moved; others are found anew. */
    private static final double NEAR_MM = 25;

    /** Pages with more are text up to the edge, where nothing is moved alone. */
    private static final int MOST_NEAR = 64;

    /** Room of one place in things, which take 21 bytes each. */
    private static final int ROOM_OF_NEAR = 16;

    /** Drawing of a form whose name is written plainly. */
    private static final Pattern DRAWN = Pattern.compile("/([^\\s/\\[\\]()<>{}%#]+)\\s+Do$");

    private static final MarkKind[] KINDS = MarkKind.values();
    private static final int PRINTS = 16;
    private static final int FIXED = 32;

    private final int[] numbers;
    private final float[] boxes;
    private final byte[] kinds;
    private final List<Near> near;

    /** Content that is not kept: the page's own, or that of a form drawn by an operator of the content around it. */
    private record Place(@Nullable Place outer, int from, int to, int length, AffineTransform ctm) {
        static Place of(Content content, Map<Content, Place> known) {
            Place place = known.get(content);
            if (place == null) {
                Place outer = content.outer == null ? null : of(content.outer, known);
                place = new Place(outer, content.drawnFrom, content.drawnTo, content.bytes.length, content.ctm);
                known.put(content, place);
            }
            return place;
        }
    }

    private record Near(Piece piece, Place place) {}

    /** Pieces of a page, and the page's own content. */
    record Known(Content page, List<Piece> pieces) {}

    private PageThings(List<Piece> pieces, List<Painted> things) {
        numbers = new int[things.size()];
        boxes = new float[4 * things.size()];
        kinds = new byte[things.size()];
        for (int i = 0; i < kinds.length; i++) {
            Painted p = things.get(i);
            numbers[i] = p.number();
            boxes[4 * i] = (float) p.box().getMinX();
            boxes[4 * i + 1] = (float) p.box().getMinY();
            boxes[4 * i + 2] = (float) p.box().getMaxX();
            boxes[4 * i + 3] = (float) p.box().getMaxY();
            kinds[i] = (byte) (p.kind().ordinal() | (p.prints() ? PRINTS : 0) | (p.fixed() ? FIXED : 0));
        }
        near = near(pieces, things);
    }

    /**
     * Things of a page in the frame of an edge that is bound; null where its content cannot be read whole.
     *
     * @param page with its resources
     */
    public static @Nullable PageThings of(InkEngine engine, COSDictionary page, PageFacts facts, PageEdge edge) {
        try {
            ContentPieces pieces = ContentPieces.of(engine, page, facts, InkEngine.NOWHERE);
            if (pieces == null || pieces.page() == null) {
                return null;
            }
            return new PageThings(pieces.pieces(), LoneMarks.painted(pieces, facts.toBindingEdge(edge)));
        } catch (IOException | RuntimeException | StackOverflowError e) {
            return null;
        }
    }

    private static List<Near> near(List<Piece> pieces, List<Painted> things) {
        Content none = new Content(new byte[0], null, new COSDictionary(), new AffineTransform(), null);
        Map<Content, Place> places = new IdentityHashMap<>();
        List<Near> near = new ArrayList<>();
        for (int i = 0; i < pieces.size() && near.size() <= MOST_NEAR; i++) {
            if (things.get(i).box().getMinX() < NEAR_MM) {
                near.add(new Near(pieces.get(i).in(none), Place.of(pieces.get(i).in(), places)));
            }
        }
        return near.size() > MOST_NEAR ? List.of() : List.copyOf(near);
    }

    /** Room that it takes, in things. */
    public int room() {
        return kinds.length + ROOM_OF_NEAR * near.size();
    }

    /** The things, with single precision. */
    public List<Painted> painted() {
        List<Painted> things = new ArrayList<>(kinds.length);
        for (int i = 0; i < kinds.length; i++) {
            double x = boxes[4 * i];
            double y = boxes[4 * i + 1];
            Rectangle2D box = new Rectangle2D.Double(x, y, boxes[4 * i + 2] - x, boxes[4 * i + 3] - y);
            int kind = kinds[i];
            things.add(new Painted(numbers[i], KINDS[kind % PRINTS], box, (kind & PRINTS) != 0, (kind & FIXED) != 0));
        }
        return things;
    }

    /**
     * Pieces by their numbers, with their content read anew.
     *
     * @return null where one of them is not known, or the content is another
     */
    @Nullable
    Known known(Set<Integer> wanted, InkEngine engine, COSDictionary page) throws IOException {
        List<Piece> pieces = new ArrayList<>();
        Map<Place, Content> read = new IdentityHashMap<>();
        Content own = null;
        for (Near one : near) {
            if (wanted.contains(one.piece.number())) {
                Content content = read(one.place, engine, page, read);
                if (content == null) {
                    return null;
                }
                pieces.add(one.piece.in(content));
                for (own = content; own.outer != null; ) {
                    own = own.outer;
                }
            }
        }
        return own == null || pieces.size() < wanted.size() ? null : new Known(own, pieces);
    }

    private static @Nullable Content read(Place place, InkEngine engine, COSDictionary page, Map<Place, Content> known)
            throws IOException {
        Content content = known.get(place);
        if (content != null) {
            return content;
        }
        Content outer = place.outer == null ? null : read(place.outer, engine, page, known);
        COSStream form = outer == null ? null : form(outer, place);
        if (place.outer != null && form == null) {
            return null;
        }
        COSDictionary resources = (form == null ? page : form).getCOSDictionary(COSName.RESOURCES);
        byte[] bytes = engine.content(form == null ? page.getDictionaryObject(COSName.CONTENTS) : form);
        if (bytes.length != place.length || resources == null) {
            return null;
        }
        content = new Content(bytes, form, resources, place.ctm, outer);
        content.drawnFrom = place.from;
        content.drawnTo = place.to;
        if (outer != null) {
            outer.forms.add(content);
        }
        known.put(place, content);
        return content;
    }

    private static @Nullable COSStream form(Content outer, Place place) {
        Matcher name =
                DRAWN.matcher(new String(outer.bytes, place.from, place.to - place.from, StandardCharsets.ISO_8859_1));
        COSDictionary all = outer.resources.getCOSDictionary(COSName.XOBJECT);
        return all == null || !name.find() ? null : all.getCOSStream(COSName.getPDFName(name.group(1)));
    }
}
