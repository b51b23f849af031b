package io.bindprep.pdf.edit;

import io.bindprep.marks.MarkKind;
import io.bindprep.page.Box;
import io.bindprep.page.Move;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.edit.ContentPieces.Content;
import io.bindprep.pdf.ink.InkEngine;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Changes a page's content from within, and the forms that it draws; forms changed alike are written once. */
final class PageContent {
    private static final String FORM_NAME = "BindPrepForm";

    private final COSDocument document;
    private final InkEngine engine;
    private final Map<String, COSObject> made = new HashMap<>();

    PageContent(COSDocument document, InkEngine engine) {
        this.document = document;
        this.engine = engine;
    }

    /**
     * Changed content.
     *
     * @param bytes null where it stays as it is
     * @param added to the resources, by kind and name
     * @param dropped kinds of what was left out
     * @param stays whether something stays in its place
     */
    record Changed(
            byte @Nullable [] bytes, Map<COSName, Map<String, COSBase>> added, Set<MarkKind> dropped, boolean stays) {
        static final Changed NOT = new Changed(null, Map.of(), Set.of(), false);
    }

    /**
     * Content of a page that moves, with what stays and without what goes; the same where it cannot be read whole.
     *
     * @param keep its bleed; null where nothing lies beyond
     * @param stay whether what runs through the binding edge stays
     */
    Changed of(COSDictionary page, PageFacts facts, Move move, @Nullable Box keep, boolean stay) {
        try {
            ContentPieces pieces = ContentPieces.of(engine, page, facts, rectangle(facts.trim()));
            Content content = pieces == null ? null : pieces.page();
            if (pieces == null || content == null) {
                return Changed.NOT;
            }
            Backgrounds found = new Backgrounds(pieces, facts, move, keep);
            found.decide(stay);
            if (found.edits().isEmpty()) {
                return Changed.NOT;
            }
            Map<COSName, Map<String, COSBase>> added = new HashMap<>();
            added.put(COSName.PATTERN, found.patterns());
            Map<String, COSBase> forms = new TreeMap<>();
            added.put(COSName.XOBJECT, forms);
            Edits edits = new Edits(found.edits(), found::grows, move.inUserSpace(facts));
            byte[] bytes = changed(content, edits, forms, new ArrayList<>());
            return new Changed(bytes, added, found.dropped(), found.stays());
        } catch (IOException | NoninvertibleTransformException | RuntimeException | StackOverflowError e) {
            // the move itself needs none of it, and the check of the result tells what became of it
            return Changed.NOT;
        }
    }

    /**
     * Content in which single things are moved.
     *
     * @param by how far, in the user space of the page, by number as {@link LoneMarks#painted} counts
     * @param away where none of them is, in the user space of the page: what is there costs the most time
     * @param known what the page paints, where that was asked for before
     * @return null where it cannot be done
     */
    @Nullable
    Changed alone(
            COSDictionary page,
            PageFacts facts,
            Map<Integer, Point2D> by,
            Rectangle2D away,
            @Nullable PageThings known) {
        try {
            PageThings.Known found = known == null ? null : known.known(by.keySet(), engine, page);
            if (found == null) {
                ContentPieces all = ContentPieces.of(engine, page, facts, away);
                Content own = all == null ? null : all.page();
                if (all == null || own == null) {
                    return null;
                }
                found = new PageThings.Known(own, all.pieces());
            }
            LoneMarks marks = new LoneMarks();
            marks.move(found.pieces(), by);
            Map<String, COSBase> forms = new TreeMap<>();
            // a form's box grows to where its things come to lie
            Point2D most = Collections.max(
                    by.values(), Comparator.comparingDouble(p -> Math.abs(p.getX()) + Math.abs(p.getY())));
            AffineTransform back = AffineTransform.getTranslateInstance(-most.getX(), -most.getY());
            Edits edits = new Edits(marks.edits(), marks.edits()::containsKey, back);
            byte[] bytes = changed(found.page(), edits, forms, new ArrayList<>());
            return new Changed(bytes, Map.of(COSName.XOBJECT, forms), Set.of(), false);
        } catch (IOException | NoninvertibleTransformException | RuntimeException | StackOverflowError e) {
            return null;
        }
    }

    /**
     * Edits of contents.
     *
     * @param grow forms whose box grows
     * @param t inverse of what they grow by
     */
    private record Edits(Map<Content, ContentEdits> of, Predicate<Content> grow, AffineTransform t) {
        boolean touch(Content content) {
            return of.containsKey(content) || content.forms.stream().anyMatch(this::touch);
        }
    }

    private static Rectangle2D rectangle(Box b) {
        return new Rectangle2D.Double(b.x0(), b.y0(), b.width(), b.height());
    }

    private byte[] changed(Content content, Edits edits, Map<String, COSBase> forms, List<String> keys)
            throws NoninvertibleTransformException, IOException {
        ContentEdits own = edits.of().getOrDefault(content, new ContentEdits());
        COSDictionary known = content.resources.getCOSDictionary(COSName.XOBJECT);
        for (Content inner : content.forms) {
            if (inner.form == null || !edits.touch(inner)) {
                continue;
            }
            String name = FORM_NAME + (forms.size() + 1);
            while (known != null && known.containsKey(name)) {
                name += "a";
            }
            String key = form(inner, inner.form, edits);
            keys.add(key);
            forms.put(name, made.get(key));
            own.takeOut(inner.drawnFrom, inner.drawnTo);
            own.before(inner.drawnFrom, "/" + name + " Do\n");
        }
        return own.made(content.bytes);
    }

    /** Makes a changed copy of a form; returns the key it is known by. */
    private String form(Content content, COSStream form, Edits edits)
            throws NoninvertibleTransformException, IOException {
        Map<String, COSBase> forms = new TreeMap<>();
        List<String> keys = new ArrayList<>();
        byte[] bytes = changed(content, edits, forms, keys);
        COSArray box = edits.grow().test(content) ? grown(form, content, edits.t()) : form.getCOSArray(COSName.BBOX);
        String key = digest(bytes, System.identityHashCode(form) + " " + numbers(box) + keys);
        if (!made.containsKey(key)) {
            COSStream copy = document.createCOSStream();
            try (OutputStream out = copy.createOutputStream(COSName.FLATE_DECODE)) {
                out.write(bytes);
            }
            for (COSName entry : new ArrayList<>(form.keySet())) {
                if (!entry.equals(COSName.LENGTH)
                        && !entry.equals(COSName.FILTER)
                        && !entry.equals(COSName.DECODE_PARMS)) {
                    copy.setItem(entry, form.getItem(entry));
                }
            }
            if (box != null) {
                copy.setItem(COSName.BBOX, box);
            }
            copy.setItem(COSName.RESOURCES, with(content.resources, Map.of(COSName.XOBJECT, forms)));
            made.put(key, new COSObject(copy));
        }
        return key;
    }

    /** Box of a form, and where it would have to be for what stays in it. */
    private static @Nullable COSArray grown(COSStream form, Content content, AffineTransform t)
            throws NoninvertibleTransformException {
        COSArray box = form.getCOSArray(COSName.BBOX);
        AffineTransform ctm = content.ctm;
        if (box == null || box.size() < 4) {
            return box;
        }
        AffineTransform x = ctm.createInverse();
        x.concatenate(t.createInverse());
        x.concatenate(ctm);
        double[] c = new double[4];
        for (int i = 0; i < 4; i++) {
            c[i] = box.getObject(i) instanceof COSNumber n ? n.floatValue() : 0;
        }
        Rectangle2D was = new Rectangle2D.Double(
                Math.min(c[0], c[2]), Math.min(c[1], c[3]), Math.abs(c[2] - c[0]), Math.abs(c[3] - c[1]));
        Rectangle2D is = was.createUnion(x.createTransformedShape(was).getBounds2D());
        return NewObjects.numbers(is.getMinX(), is.getMinY(), is.getMaxX(), is.getMaxY());
    }

    private static String numbers(@Nullable COSArray box) {
        return box == null ? "" : box.toList().toString();
    }

    /** Resources with more in them. */
    static COSDictionary with(COSDictionary resources, Map<COSName, Map<String, COSBase>> added) {
        COSDictionary all = new COSDictionary(resources);
        added.forEach((kind, entries) -> {
            if (!entries.isEmpty()) {
                COSDictionary old = resources.getCOSDictionary(kind);
                COSDictionary of = old == null ? new COSDictionary() : new COSDictionary(old);
                entries.forEach((name, value) -> of.setItem(COSName.getPDFName(name), value));
                all.setItem(kind, of);
            }
        });
        return all;
    }

    private static String digest(byte[] bytes, String more) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            sha.update(more.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sha.digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
