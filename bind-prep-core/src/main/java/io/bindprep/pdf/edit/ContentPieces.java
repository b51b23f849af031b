package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.page.Box;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.ink.ContentFollower;
import io.bindprep.pdf.ink.InkEngine;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Takes down what a page's content and its forms paint and clip, piece by piece, with the bytes that do it. */
final class ContentPieces implements ContentFollower {
    private static final int MOST_PIECES = 200_000;
    private static final int MOST_CONTENTS = 2_000;
    private static final Set<String> FILLS = Set.of("f", "F", "f*", "B", "B*", "b", "b*");
    private static final Set<String> TEXTS = Set.of("Tj", "TJ", "'", "\"");
    private static final Pattern LAST_NAME = Pattern.compile("/([^\\s/\\[\\]()<>{}%]+)\\s+scn?$");

    /** Way of painting; a path may only be filled, or also lined. */
    enum Way {
        FILL,
        LINE,
        TEXT,
        OBJECT
    }

    /**
     * One painting operator with its operands, or its path.
     *
     * @param number place among all operators that are told, the same however much of the page is looked at
     * @param box bounds in the user space of the page
     * @param operator offset where the operator itself begins, its operands behind it
     * @param pattern name of the pattern that fills; empty for none
     * @param text place of text that it shows; null for none
     */
    record Piece(
            int number,
            Content in,
            Way way,
            Rectangle2D box,
            int start,
            int operator,
            int end,
            AffineTransform ctm,
            MarkKind kind,
            boolean prints,
            boolean masked,
            boolean clips,
            int textMode,
            String pattern,
            @Nullable TextPlace text) {
        /** The same piece of another reading of its content. */
        Piece in(Content other) {
            return new Piece(
                    number, other, way, box, start, operator, end, ctm, kind, prints, masked, clips, textMode, pattern,
                    text);
        }
    }

    /** One path that clips and paints nothing. */
    record ClipPiece(Content in, Rectangle2D box, boolean rectangle, int start, int end, AffineTransform ctm) {}

    /** Content of the page or of one drawing of a form. */
    static final class Content {
        final byte[] bytes;
        final @Nullable COSStream form;
        final COSDictionary resources;
        final @Nullable Content outer;
        final List<Content> forms = new ArrayList<>();
        /** Operator of the content around it that draws it. */
        int drawnFrom;

        int drawnTo;
        boolean masked;
        final AffineTransform ctm;

        private int pathStart = -1;
        private final Deque<String> colours = new ArrayDeque<>();
        private String pattern = "";

        Content(
                byte[] bytes,
                @Nullable COSStream form,
                COSDictionary resources,
                AffineTransform ctm,
                @Nullable Content outer) {
            this.ctm = ctm;
            this.bytes = bytes;
            this.form = form;
            this.resources = resources;
            this.outer = outer;
        }

        /** Returns true if a soft mask lies over it, or over what it is drawn in. */
        boolean isMasked() {
            return masked || outer != null && outer.isMasked();
        }
    }

    private final List<Piece> pieces = new ArrayList<>();
    private final List<ClipPiece> clips = new ArrayList<>();
    private @Nullable Content content;
    private @Nullable Content page;
    private @Nullable Content ended;
    private int contents;
    private int steps;

    /**
     * Everything that a page paints; null where it cannot be read whole.
     *
     * @param page with its resources
     * @param inland where characters and lines are of no interest
     */
    static @Nullable ContentPieces of(InkEngine engine, COSDictionary page, PageFacts facts, Rectangle2D inland)
            throws IOException {
        Box media = facts.media();
        Rectangle2D visible = new Rectangle2D.Double(media.x0(), media.y0(), media.width(), media.height());
        ContentPieces pieces = new ContentPieces();
        return engine.follow(page, visible, inland, pieces) ? pieces : null;
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<ClipPiece> clips() {
        return clips;
    }

    /** The page's own content; null where none was read. */
    @Nullable
    Content page() {
        return page;
    }

    @Override
    public void begin(byte[] bytes, @Nullable COSStream form, COSDictionary resources, AffineTransform ctm) {
        if (++contents > MOST_CONTENTS) {
            throw new IllegalStateException("more forms than are taken apart");
        }
        content = new Content(bytes, form, resources, ctm, content);
        page = page == null ? content : page;
        ended = null;
    }

    @Override
    public void end() {
        if (content != null) {
            ended = content;
            content = content.outer;
        }
    }

    @Override
    public void step(Step s) {
        Content in = content;
        steps++;
        if (in == null) {
            return;
        }
        switch (s.name()) {
            case "q" -> in.colours.push(in.pattern);
            case "Q" -> in.pattern = in.colours.isEmpty() ? in.pattern : in.colours.pop();
            case "g", "rg", "k", "cs" -> in.pattern = "";
            case "sc", "scn" -> in.pattern = pattern(in, s);
            case "m", "re" -> in.pathStart = in.pathStart < 0 ? s.start() : in.pathStart;
            case "Do" -> object(in, s);
            case "sh", "BI" -> add(in, s, Way.OBJECT, s.start());
            default -> {
                if (TEXTS.contains(s.name())) {
                    add(in, s, Way.TEXT, s.start());
                } else {
                    path(in, s);
                }
            }
        }
    }

    private static String pattern(Content in, Step s) {
        String bytes = new String(in.bytes, s.start(), s.end() - s.start(), StandardCharsets.ISO_8859_1);
        Matcher name = LAST_NAME.matcher(bytes);
        return name.find() ? name.group(1) : "";
    }

    private void object(Content in, Step s) {
        Content form = ended;
        ended = null;
        if (form != null && form.outer == in) {
            form.drawnFrom = s.start();
            form.drawnTo = s.end();
            form.masked = s.masked();
            in.forms.add(form);
        } else {
            add(in, s, Way.OBJECT, s.start());
        }
    }

    private void path(Content in, Step s) {
        int start = in.pathStart < 0 ? s.start() : in.pathStart;
        in.pathStart = -1;
        Rectangle2D path = s.path();
        if (s.clip() != null && path != null && s.name().equals("n")) {
            clips.add(new ClipPiece(in, path, s.clip() == ClipPath.RECTANGLE, start, s.end(), s.ctm()));
        } else {
            add(in, s, FILLS.contains(s.name()) ? Way.FILL : Way.LINE, start);
        }
    }

    private void add(Content in, Step s, Way way, int start) {
        Rectangle2D painted = s.painted();
        MarkKind kind = s.kind();
        if (painted == null || kind == null) {
            return;
        }
        if (pieces.size() == MOST_PIECES) {
            throw new IllegalStateException("more pieces than are taken apart");
        }
        pieces.add(new Piece(
                steps,
                in,
                way,
                painted,
                start,
                s.end() - s.name().length(),
                s.end(),
                s.ctm(),
                kind,
                s.prints(),
                s.masked(),
                s.clip() != null,
                s.textMode(),
                in.pattern,
                s.text()));
    }
}
