package io.bindprep.pdf.edit;

import io.bindprep.page.BleedStrip;
import io.bindprep.page.Box;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.ink.InkEngine;
import io.bindprep.pdf.ink.StripContent;
import io.bindprep.pdf.syntax.Budget;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/**
 * Draws what a page paints at its edge once more beyond it, mirrored where the art ends: a form of only what paints there,
 * in the same inks and as sharp. Page boxes grow as far as the bleed; the trim stays.
 */
final class BleedMirror {
    private static final String NAME = "BindPrepBleed";
    /** Over the last dots of bleed that there is, which renderers blend with the paper. */
    private static final double OVERLAP_MM = 0.05;
    /** Nothing is drawn over what lies within the trim, by whatever rounding. */
    private static final double TRIM_MM = -0.001;
    /**
     * Bleed that lies under the art: two edges that only meet show a hair of paper between them on the screen. Less than art
     * may end beside the trim.
     */
    private static final double UNDER_MM = 0.1;

    private final COSDocument document;
    private final InkEngine engine;
    private final Budget budget;

    BleedMirror(COSDocument document, InkEngine engine, Budget budget) {
        this.document = document;
        this.engine = engine;
        this.budget = budget;
    }

    /**
     * Makes the bleed of one page.
     *
     * @param whole content and resources
     * @return whether it could be; else the page is as it was
     */
    boolean extend(
            COSDictionary page,
            COSDictionary whole,
            PageFacts f,
            PageEdge edge,
            double wantMm,
            List<BleedStrip> strips) {
        try {
            AffineTransform frame = f.toBindingEdge(edge);
            AffineTransform back = frame.createInverse();
            ContentEnd end = ContentEnd.of(whole.getDictionaryObject(COSName.CONTENTS), budget);
            String after = end.after();
            if (after == null || end.broken()) {
                return false;
            }
            COSDictionary resources = whole.getCOSDictionary(COSName.RESOURCES);
            COSDictionary known = resources == null ? null : resources.getCOSDictionary(COSName.XOBJECT);
            StringBuilder draw = new StringBuilder(after).append("/Artifact BMC\n");
            StringBuilder under = new StringBuilder("/Artifact BMC\n");
            boolean covered = !SeeThrough.any(resources);
            Map<String, COSBase> forms = new TreeMap<>();
            for (BleedStrip strip : strips) {
                double to = Math.min(TRIM_MM, strip.endMm() + OVERLAP_MM);
                double from = Math.max(to, strip.endMm());
                Rectangle2D source = back.createTransformedShape(new Rectangle2D.Double(
                                from, strip.fromMm(), strip.sourceMm(), strip.toMm() - strip.fromMm()))
                        .getBounds2D();
                COSStream form = form(whole, f, source, resources);
                if (form == null) {
                    return false;
                }
                String name = NAME + (forms.size() + 1);
                while (known != null && known.containsKey(name)) {
                    name += "a";
                }
                forms.put(name, new COSObject(form));
                double stretch = (wantMm + to) / strip.sourceMm();
                double at = to + stretch * from;
                draw(draw, back, new AffineTransform(-stretch, 0, 0, 1, at, 0), frame, name);
                double deep = Math.max(0, strip.endMm()) + UNDER_MM;
                draw(under, back, new AffineTransform(-stretch, 0, 0, 1, at + deep, 0), frame, name);
            }
            String before = covered ? under.append("EMC\n") + end.before() : end.before();
            around(page, before, draw.append("EMC\n").toString());
            page.setItem(
                    COSName.RESOURCES,
                    PageContent.with(
                            resources == null ? new COSDictionary() : resources, Map.of(COSName.XOBJECT, forms)));
            grow(page, f, f.beyond(edge, wantMm));
            return true;
        } catch (IOException | NoninvertibleTransformException | RuntimeException | StackOverflowError e) {
            return false;
        }
    }

    private static void draw(
            StringBuilder out, AffineTransform back, AffineTransform mirror, AffineTransform frame, String name) {
        AffineTransform t = new AffineTransform(back);
        t.concatenate(mirror);
        t.concatenate(frame);
        out.append("q\n")
                .append(ContentEnd.operator(t))
                .append('/')
                .append(name)
                .append(" Do\nQ\n");
    }

    private @Nullable COSStream form(
            COSDictionary whole, PageFacts f, Rectangle2D source, @Nullable COSDictionary resources)
            throws IOException {
        Box m = f.media();
        StripContent near = engine.near(whole, new Rectangle2D.Double(m.x0(), m.y0(), m.width(), m.height()), source);
        if (near == null) {
            return null;
        }
        COSStream form = document.createCOSStream();
        form.setItem(COSName.TYPE, COSName.XOBJECT);
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        try (OutputStream out = form.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(near.bytes());
        }
        form.setItem(
                COSName.BBOX,
                NewObjects.numbers(source.getMinX(), source.getMinY(), source.getMaxX(), source.getMaxY()));
        if (resources != null) {
            form.setItem(COSName.RESOURCES, resources);
        }
        ContentEnd end = ContentEnd.of(form, budget);
        return end.before().isEmpty() ? null : form;
    }

    private void around(COSDictionary page, String before, String after) {
        COSArray contents = new COSArray();
        contents.add(NewObjects.stream(document, before));
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSArray several) {
            several.forEach(contents::add);
        } else {
            contents.add(page.getItem(COSName.CONTENTS));
        }
        contents.add(NewObjects.stream(document, after));
        page.setItem(COSName.CONTENTS, contents);
    }

    /** Boxes that hold the bleed; one that is not declared follows those that are (ISO 32000-1:2008, 14.11.2). */
    private static void grow(COSDictionary page, PageFacts f, Box reach) {
        if (page.getItem(COSName.TRIM_BOX) == null) {
            page.removeItem(COSName.ART_BOX); // PDF/X wants one of the two
        }
        set(page, COSName.TRIM_BOX, f.trim());
        set(page, COSName.BLEED_BOX, with(f.bleed(), reach));
        set(page, COSName.MEDIA_BOX, with(f.media(), reach));
        set(page, COSName.CROP_BOX, with(f.crop(), reach));
    }

    private static Box with(Box box, Box more) {
        return new Box(
                Math.min(box.x0(), more.x0()),
                Math.min(box.y0(), more.y0()),
                Math.max(box.x1(), more.x1()),
                Math.max(box.y1(), more.y1()));
    }

    private static void set(COSDictionary page, COSName key, Box box) {
        page.setItem(key, NewObjects.numbers(box.x0(), box.y0(), box.x1(), box.y1()));
    }
}
