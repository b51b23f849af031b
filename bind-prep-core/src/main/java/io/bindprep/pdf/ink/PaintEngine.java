package io.bindprep.pdf.ink;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/** Hands what is painted to the collector, with what is known of its opacity and of the operator that paints it. */
public abstract class PaintEngine extends TextEngine {
    private static final COSName SMASK_IN_DATA = COSName.getPDFName("SMaskInData");

    /** Winding rule by which the current path is to clip once it ends; negative where it is not. */
    int clipRule = -1;

    int glyphNested;

    @Nullable
    MarkKind forced;
    /** Count of the page's own operators that have run, and the last of them. */
    int operators;

    String lastOperator = "";

    @Nullable
    COSDictionary annotation;

    PaintEngine(Fonts fonts, Layers layers, Budget budget) {
        super(fonts, layers, budget);
    }

    /** Returns true if the current path is to clip once it ends. */
    boolean clips() {
        return clipRule >= 0;
    }

    final void paint(int fillRule, boolean strokes, boolean close) {
        if (close) {
            path.close();
        }
        try {
            boolean near = !path.isEmpty() && !isHidden();
            if (near && fillRule >= 0 && ink.fillAlpha > 0 && path.reaches(out, 0)) {
                Shape outline = path.flat() ? Strokes.hairline(path.outline(fillRule)) : path.outline(fillRule);
                emit(outline, ink.fillTone(), MarkKind.ART, Way.COVER, "");
            }
            if (near && fillRule >= 0 && ink.fillAlpha > 0 && path.reaches(basics)) {
                noteArt(path.bounds(), ink.fillTone());
            }
            if (near && strokes && ink.strokeAlpha > 0) {
                strokePath();
            }
            // without any path readers go on with the clip they have
            if (clipRule >= 0 && !path.isEmpty()) {
                ink.clip = ink.clip.narrowedTo(path.outline(clipRule));
            }
        } finally {
            clipRule = -1;
            path.clear();
        }
    }

    private void strokePath() {
        AffineTransform t = ctm().createAffineTransform();
        double reach = Strokes.reach(ink, t);
        if (path.reachesThin(out, reach)) {
            emit(
                    Strokes.outline(path.outline(Path2D.WIND_NON_ZERO), ink, t),
                    ink.strokeTone(),
                    MarkKind.LINE,
                    Way.STROKE,
                    "");
        }
    }

    @Override
    void emit(Shape outline, Tone tone, MarkKind kind, Way way, String words) {
        MarkKind shown = glyphNested > 0 ? MarkKind.TEXT : kind;
        double alpha = way == Way.STROKE ? ink.strokeAlpha : ink.fillAlpha;
        boolean doubtful = ink.doubtfulAt(alpha) || tone == Tone.PATTERN;
        // an ink that overprints lets others through; white that does so too is no tone at all by now
        boolean covers = way == Way.COVER
                        && ink.fillAlpha >= 1
                        && (!ink.overprintFill || tone == Tone.WHITE)
                        && tone != Tone.NOTHING
                || way == Way.STROKE && ink.strokeAlpha >= 1 && tone == Tone.WHITE;
        int colour = kind == MarkKind.IMAGE ? 0 : way == Way.STROKE ? ink.strokeColour : ink.fillColour;
        out.from(new StripCollector.Source(annotation == null ? operators : 0, lastOperator, annotation));
        out.add(
                outline,
                ink.clip,
                new StripCollector.Paint(
                        forced == null ? shown : forced,
                        tone,
                        colour,
                        way != Way.STROKE,
                        covers,
                        covers && !doubtful && !ink.seeThrough && forced == null,
                        doubtful,
                        kind == MarkKind.TEXT && estimated ? Stage.ESTIMATE : Stage.GEOMETRY,
                        words));
    }

    /** Art that may need bleed: what surely prints, of the page itself. */
    final void noteArt(Rectangle2D bounds, Tone tone) {
        boolean prints = tone != Tone.WHITE
                && tone != Tone.BLENDED_WHITE
                && tone != Tone.NOTHING
                && !ink.doubtfulAt(ink.fillAlpha);
        if (prints && forced == null && glyphNested == 0) {
            basics.art(bounds, ink.clip);
        }
    }

    final void shade(COSName name) {
        if (!(resource(COSName.SHADING, name) instanceof COSDictionary shading) || !Shadings.complete(shading)) {
            passedOver("the shading \"" + name.getName() + "\" is missing or incomplete");
            return;
        }
        if (isHidden() || ink.fillAlpha <= 0) {
            return;
        }
        noteArt(ink.clip.bounds(), Tone.PATTERN);
        if (out.reaches(ink.clip.bounds())) {
            emit(ink.clip.bounds(), Tone.PATTERN, MarkKind.ART, Way.COVER, "");
        }
    }

    final void image(COSDictionary image, COSName maskKey) {
        boolean stencil = image.getBoolean(COSName.IMAGE_MASK, maskKey, false);
        boolean whole = !stencil
                && !image.containsKey(COSName.SMASK)
                && !image.containsKey(COSName.MASK)
                && image.getInt(SMASK_IN_DATA, 0) == 0;
        Tone tone = stencil
                ? ink.fillTone()
                : ColourSpace.of(image.getDictionaryObject(COSName.COLORSPACE, COSName.CS), getResources())
                        .tone();
        if (!isHidden() && ink.fillAlpha > 0 && forced == null && glyphNested == 0) {
            AffineTransform matrix = ctm().createAffineTransform();
            basics.picture(
                    image.getInt(COSName.WIDTH, COSName.W), image.getInt(COSName.HEIGHT, COSName.H), matrix, ink.clip);
            if (whole) {
                noteArt(Outlines.unitSquare(matrix).getBounds2D(), tone);
            }
        }
        image(tone, whole ? Way.COVER : Way.FILL);
    }

    private void image(Tone tone, Way way) {
        if (isHidden() || ink.fillAlpha <= 0) {
            return;
        }
        Shape square = Outlines.unitSquare(ctm().createAffineTransform());
        if (out.reaches(square.getBounds2D())) {
            emit(square, tone, MarkKind.IMAGE, way, "");
        }
    }
}
