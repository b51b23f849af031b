package io.bindprep.pdf.edit;

import io.bindprep.marks.Verdict;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.syntax.Budget;
import io.bindprep.proof.Comment;
import io.bindprep.proof.Outline;
import io.bindprep.proof.ProofPage;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.HashMap;
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
    private static final COSName NAME = COSName.getPDFName("NM");
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
        // shared with other pages as a rule: only this page's copy gets the drawings
        COSBase shared = inherited instanceof COSObject reference ? reference.getObject() : inherited;
        COSDictionary resources = shared instanceof COSDictionary d ? new COSDictionary(d) : new COSDictionary();
        COSDictionary own = resources.getCOSDictionary(COSName.XOBJECT);
        COSDictionary objects = own == null ? new COSDictionary() : new COSDictionary(own);
        StringBuilder draw = new StringBuilder(after);
        use(objects, draw, "BindingHoles", forms.holes(proof.strip()));
        use(objects, draw, "BindingMargin", forms.margin(proof.strip()));
        if (!proof.comments().isEmpty()) {
            use(objects, draw, "BindingHits", forms.hits(proof));
        }
        resources.setItem(COSName.XOBJECT, objects);
        page.setItem(COSName.RESOURCES, resources);
        COSArray contents = new COSArray();
        if (!before.isEmpty()) {
            contents.add(stream(before));
        }
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSArray several) {
            several.forEach(contents::add);
        } else if (page.getItem(COSName.CONTENTS) != null) {
            contents.add(page.getItem(COSName.CONTENTS));
        }
        contents.add(stream(draw.append("Q\n").toString()));
        page.setItem(COSName.CONTENTS, contents);
    }

    private static void use(COSDictionary objects, StringBuilder draw, String wanted, COSObject form) {
        COSName name = COSName.getPDFName(wanted);
        for (int i = 2; objects.containsKey(name); i++) {
            name = COSName.getPDFName(wanted + i);
        }
        objects.setItem(name, form);
        draw.append('/').append(name.getName()).append(" Do\n");
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
        int number = 0;
        for (Comment comment : proof.comments()) {
            number++;
            annotations.add(new COSObject(annotation(page, toUser, proof.page() + "-" + number, comment)));
        }
        page.setItem(COSName.ANNOTS, annotations);
    }

    private COSDictionary annotation(COSDictionary page, AffineTransform toUser, String id, Comment comment) {
        COSArray rect = rect(toUser, comment.place());
        boolean hit = comment.verdict() == Verdict.HIT;
        COSDictionary a = new COSDictionary();
        a.setItem(COSName.TYPE, COSName.ANNOT);
        a.setItem(COSName.SUBTYPE, COSName.getPDFName("Square"));
        a.setItem(COSName.RECT, rect);
        a.setString(COSName.CONTENTS, comment.words());
        a.setString(COSName.T, AUTHOR);
        a.setString(NAME, AUTHOR + "-" + id);
        a.setInt(COSName.F, 0); // no flag set: shown, not printed (Table 165)
        a.setItem(COSName.C, numbers(hit ? HIT : TIGHT));
        a.setItem(BORDER, noBorder);
        a.setItem(COSName.OC, groups.hits());
        a.setItem(COSName.AP, nothing);
        a.setItem(COSName.P, page);
        return a;
    }

    private static COSArray rect(AffineTransform toUser, Outline o) {
        Rectangle2D r = toUser.createTransformedShape(new Rectangle2D.Double(
                        o.nearMm() - AROUND,
                        o.startMm() - AROUND,
                        o.farMm() - o.nearMm() + 2 * AROUND,
                        o.endMm() - o.startMm() + 2 * AROUND))
                .getBounds2D();
        return numbers(tenth(r.getMinX()), tenth(r.getMinY()), tenth(r.getMaxX()), tenth(r.getMaxY()));
    }

    /** A thirtieth of a millimetre. */
    private static double tenth(double points) {
        return Math.round(points * 10) / 10.0;
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
