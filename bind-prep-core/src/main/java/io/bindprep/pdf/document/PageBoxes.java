package io.bindprep.pdf.document;

import io.bindprep.page.Box;
import io.bindprep.page.PageFacts;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.jspecify.annotations.Nullable;

/**
 * A page's boxes as declared, read from its dictionary because PDFBox falls back silently (a missing MediaBox becomes
 * Letter).
 */
public final class PageBoxes {
    private static final Box LETTER = new Box(0, 0, 612, 792);
    /** 200 in at a user unit of 1: the largest page of ISO 32000-1:2008, Annex C; ten times that for a user unit. */
    private static final double MOST_POINTS = 144_000;

    private PageBoxes() {}

    /**
     * A page's facts and what is wrong with them.
     *
     * @param problem why the page's size or turn cannot be trusted; null where it can
     */
    public record Read(PageFacts facts, @Nullable String problem) {}

    public static Read read(int number, COSDictionary page) {
        String problem = null;
        Box media = box(page, COSName.MEDIA_BOX);
        if (media == null) {
            media = LETTER;
            problem = "it declares no usable MediaBox";
        }
        double unit = page.getFloat(COSName.USER_UNIT, 1);
        if (!(unit > 0) || unit > 75_000) {
            unit = 1;
            problem = "its UserUnit is no positive number";
        }
        Box crop = within(box(page, COSName.CROP_BOX), media, media);
        Box bleed = within(box(page, COSName.BLEED_BOX), crop, media);
        Box declared = box(page, COSName.TRIM_BOX);
        Box trim = within(declared, crop, media);
        boolean trimDeclared = declared != null && declared.cutTo(media).hasArea();
        int rotate = Math.floorMod(page.getInt(COSName.ROTATE, 0), 360);
        if (rotate % 90 != 0) {
            problem = "its Rotate of " + rotate + " is no quarter turn";
            rotate = 0;
        }
        if (Math.max(trim.width(), trim.height()) * unit > MOST_POINTS) {
            problem = "it is larger than any sheet";
        }
        return new Read(new PageFacts(number, media, crop, bleed, trim, trimDeclared, rotate, unit), problem);
    }

    private static Box within(@Nullable Box box, Box fallback, Box media) {
        Box cut = box == null ? fallback : box.cutTo(media);
        return cut.hasArea() ? cut : fallback;
    }

    private static @Nullable Box box(COSDictionary page, COSName key) {
        COSArray array = page.getCOSArray(key);
        if (array == null || array.size() < 4) {
            return null;
        }
        double[] v = new double[4];
        for (int i = 0; i < 4; i++) {
            COSBase n = array.getObject(i);
            if (!(n instanceof COSNumber number) || !Float.isFinite(number.floatValue())) {
                return null;
            }
            v[i] = number.floatValue();
        }
        Box box = Box.ofCorners(v[0], v[1], v[2], v[3]);
        return box.hasArea() ? box : null;
    }
}
