package io.bindprep.pdf.edit;

import io.bindprep.marks.Verdict;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.proof.Comment;
import io.bindprep.proof.Outline;
import io.bindprep.proof.ProofPage;
import io.bindprep.proof.Strip;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.jspecify.annotations.Nullable;

/**
 * Draws a proof over pages: layers behind the content's own streams, which stay as they are, and an annotation for each
 * thing found. Annotations do not print.
 */
final class ProofPainter {
    private static final String AUTHOR = "bind-prep";
    private static final COSName BORDER = COSName.getPDFName("BS");
    /** Room for a pointer around a thin line, millimetres. */
    private static final double AROUND = 0.5;

    private static final double[] HIT = {0.7, 0, 0.18};
    private static final double[] TIGHT = {0.54, 0.29, 0};

    private final COSDocument document;
    private final Budget budget;
    private final ProofGroups groups = new ProofGroups();
    private final ProofForms forms;
    private final Map<String, COSObject> streams = new HashMap<>();
    private final Map<COSDictionary, Map<Strip, Over>> drawn = new IdentityHashMap<>();
    /** Shared by all annotations. */
    private final COSObject noBorder;

    private final COSObject nothing;

    ProofPainter(COSDocument document, COSDictionary catalog, Budget budget) {
        this.document = document;
        this.budget = budget;
        this.forms = new ProofForms(document, groups);
        COSDictionary border = new COSDictionary();
        border.setInt(COSName.W, 0); // the layer outlines what is found
        this.noBorder = new COSObject(border);
        COSDictionary appearance = new COSDictionary();
        appearance.setItem(COSName.N, forms.empty());
        this.nothing = new COSObject(appearance);
        groups.install(catalog);
    }

    /**
     * Draws over one page.
     *
     * @param inherited its resources, its own or those above it
     * @return whether the layers could be drawn; the annotations always are
     */
    boolean paint(COSDictionary page, PageFacts f, @Nullable COSBase inherited, ProofPage proof) {
        AffineTransform toUser;
        try {
            toUser = f.toBindingEdge(proof.edge()).createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a page has a size", e);
        }
        annotate(page, toUser, proof);
        budget.startPage();
        try {
            ContentEnd end = ContentEnd.of(page.getDictionaryObject(COSName.CONTENTS), budget);
            String after = end.after();
            if (after == null || end.broken()) {
                return false;
            }
            layers(page, inherited, proof, end.before(), after + "q\n" + ContentEnd.operator(toUser));
            return true;
        } catch (Budget.Spent | IOException e) {
            return false;
        }
    }

    private void layers(COSDictionary page, @Nullable COSBase inherited, ProofPage proof, String before, String after) {
        Over over = over(inherited, proof.strip());
        page.setItem(COSName.RESOURCES, over.resources());
        COSArray contents = new COSArray();
        if (!before.isEmpty()) {
            contents.add(stream(before));
        }
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSArray several) {
            several.forEach(contents::add);
        } else if (page.getItem(COSName.CONTENTS) != null) {
            contents.add(page.getItem(COSName.CONTENTS));
        }
        String holes = after + "/" + over.holes() + " Do\n";
        if (proof.comments().isEmpty()) {
            contents.add(stream(holes + "Q\n"));
        } else {
            contents.add(stream(holes + ProofForms.beforeHits(over.hits(), proof.comments())));
            contents.add(forms.hits(proof.comments()));
        }
        page.setItem(COSName.CONTENTS, contents);
    }

    /** Resources with what the layers need; pages that share theirs share these, so that a page need not name them. */
    private Over over(@Nullable COSBase inherited, Strip strip) {
        COSBase shared = inherited instanceof COSObject reference ? reference.getObject() : inherited;
        COSDictionary before = shared instanceof COSDictionary d ? d : new COSDictionary();
        return drawn.computeIfAbsent(before, d -> new HashMap<>()).computeIfAbsent(strip, s -> {
            COSDictionary resources = new COSDictionary(before);
            String holes = add(resources, COSName.XOBJECT, "BindingHoles", forms.strip(s));
            String hits = add(resources, COSName.PROPERTIES, "BindingHits", groups.hits());
            return new Over(resources, holes, hits);
        });
    }

    private record Over(COSDictionary resources, String holes, String hits) {}

    /** Name under which a thing is added; a name that is taken is left alone. */
    private static String add(COSDictionary resources, COSName kind, String wanted, COSObject thing) {
        COSDictionary own = resources.getCOSDictionary(kind);
        COSDictionary all = own == null ? new COSDictionary() : new COSDictionary(own);
        COSName name = COSName.getPDFName(wanted);
        for (int i = 2; all.containsKey(name); i++) {
            name = COSName.getPDFName(wanted + i);
        }
        all.setItem(name, thing);
        resources.setItem(kind, all);
        return name.getName();
    }

    private void annotate(COSDictionary page, AffineTransform toUser, ProofPage proof) {
        if (proof.comments().isEmpty()) {
            return;
        }
        COSArray annotations = new COSArray();
        COSArray before = page.getCOSArray(COSName.ANNOTS);
        if (before != null) {
            before.forEach(annotations::add);
        }
        for (Comment comment : proof.comments()) {
            annotations.add(new COSObject(annotation(toUser, comment)));
        }
        page.setItem(COSName.ANNOTS, annotations);
    }

    /** Entries that a comment can do without are left out: there may be thousands. */
    private COSDictionary annotation(AffineTransform toUser, Comment comment) {
        COSDictionary a = new COSDictionary();
        a.setItem(COSName.TYPE, COSName.ANNOT);
        a.setItem(COSName.SUBTYPE, COSName.getPDFName("Square"));
        a.setItem(COSName.RECT, rect(toUser, comment.place()));
        a.setString(COSName.CONTENTS, comment.words());
        a.setString(COSName.T, AUTHOR); // no flags: shown, not printed (Table 165)
        a.setItem(COSName.C, numbers(comment.verdict() == Verdict.HIT ? HIT : TIGHT));
        a.setItem(BORDER, noBorder);
        a.setItem(COSName.OC, groups.hits());
        a.setItem(COSName.AP, nothing);
        return a;
    }

    private static COSArray rect(AffineTransform toUser, Outline o) {
        Rectangle2D r = toUser.createTransformedShape(new Rectangle2D.Double(
                        o.nearMm() - AROUND,
                        o.startMm() - AROUND,
                        o.farMm() - o.nearMm() + 2 * AROUND,
                        o.endMm() - o.startMm() + 2 * AROUND))
                .getBounds2D();
        return numbers(
                Math.floor(r.getMinX()), Math.floor(r.getMinY()), Math.ceil(r.getMaxX()), Math.ceil(r.getMaxY()));
    }

    private static COSArray numbers(double... values) {
        COSArray array = NewObjects.numbers(values);
        array.setDirect(true); // a number of its own for each would be longer than what it holds
        return array;
    }

    /** Most pages begin and end alike, so the streams around their content are shared. */
    private COSObject stream(String operators) {
        return streams.computeIfAbsent(operators, one -> NewObjects.stream(document, one));
    }
}
