package io.bindprep.pdf.edit;

import io.bindprep.page.Box;
import io.bindprep.page.PageFacts;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Puts a transform before a page's content streams, which stay as they are. */
final class ContentWrap {
    /** Bleed where none is declared; common practice, no source. */
    private static final double BLEED_MM = 3;
    /** With less than this beyond the bleed there is no room for a printer's mark; common practice, no source. */
    private static final double MARK_MM = 2;

    private static final int DECIMALS = 6;

    private final COSDocument document;
    private final Map<String, COSObject> made = new HashMap<>();

    ContentWrap(COSDocument document) {
        this.document = document;
    }

    /**
     * Wraps a page.
     *
     * @param first operators before all, which leave the state as it is
     * @param keep what of the content may show, in its own coordinates; null for all
     */
    void wrap(COSDictionary page, String first, AffineTransform t, @Nullable Box keep) {
        COSBase contents = page.getItem(COSName.CONTENTS);
        if (contents == null) {
            return;
        }
        COSArray all = new COSArray();
        all.add(made.computeIfAbsent(first + operators(t, keep), one -> NewObjects.stream(document, one)));
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSArray several) {
            for (int i = 0; i < several.size(); i++) {
                all.add(several.get(i));
            }
        } else {
            all.add(contents);
        }
        page.setItem(COSName.CONTENTS, all);
    }

    /** As {@link #wrap(COSDictionary, String, AffineTransform, Box)}, with other content, which becomes one stream of the page's own. */
    void wrap(COSDictionary page, String first, AffineTransform t, @Nullable Box keep, byte[] content) {
        replace(page, first + operators(t, keep), content);
    }

    /** Gives a page other content, as one stream of its own. */
    void replace(COSDictionary page, byte[] content) {
        replace(page, "", content);
    }

    private void replace(COSDictionary page, String first, byte[] content) {
        COSStream stream = document.createCOSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(first.getBytes(StandardCharsets.US_ASCII));
            out.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException("content that was read whole", e);
        }
        page.setItem(COSName.CONTENTS, new COSObject(stream));
    }

    /**
     * No q before and no Q behind: a page that restores more states than it saved would take the transform back with them,
     * and nothing follows that would mind it.
     */
    private static String operators(AffineTransform t, @Nullable Box keep) {
        String cm = number(t.getScaleX()) + " 0 0 " + number(t.getScaleY()) + " " + number(t.getTranslateX()) + " "
                + number(t.getTranslateY()) + " cm\n";
        if (keep == null) {
            return cm;
        }
        return cm + number(keep.x0()) + " " + number(keep.y0()) + " " + number(keep.width()) + " "
                + number(keep.height()) + " re W n\n";
    }

    static String number(double v) {
        return BigDecimal.valueOf(v)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Returns true if the page goes on so far beyond its bleed that printer's marks may stand there. */
    static boolean hasRoomForMarks(PageFacts f) {
        if (!f.trimDeclared() && f.bleed().equals(f.crop())) {
            return false;
        }
        double room = MARK_MM / f.mmPerUnit();
        return !grown(bleed(f), room).contains(f.media(), 0);
    }

    /** Reach of art: the declared bleed, or what is usual round a declared trim, or the trim. */
    static Box bleed(PageFacts f) {
        double usual = BLEED_MM / f.mmPerUnit();
        boolean declared = !f.bleed().equals(f.crop());
        if (declared) {
            return f.bleed();
        }
        return f.trimDeclared() ? grown(f.trim(), usual).cutTo(f.media()) : f.trim();
    }

    /** A box and where it would have to be to come out as it is: what may show of content that partly stays. */
    static Box staying(Box keep, AffineTransform t) {
        double x0 = (keep.x0() - t.getTranslateX()) / t.getScaleX();
        double y0 = (keep.y0() - t.getTranslateY()) / t.getScaleY();
        double x1 = (keep.x1() - t.getTranslateX()) / t.getScaleX();
        double y1 = (keep.y1() - t.getTranslateY()) / t.getScaleY();
        return new Box(
                Math.min(keep.x0(), x0), Math.min(keep.y0(), y0), Math.max(keep.x1(), x1), Math.max(keep.y1(), y1));
    }

    private static Box grown(Box b, double by) {
        return new Box(b.x0() - by, b.y0() - by, b.x1() + by, b.y1() + by);
    }
}
