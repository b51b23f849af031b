package io.bindprep.pdf.ink;

import org.apache.pdfbox.util.Matrix;

/** Graphics state that decides whether and where ink lands; copied at every q. */
public final class InkState {
    /** Below this opacity black itself may be too light to see; common practice, no source. */
    private static final double FAINT = 0.2;

    Clip clip;
    Matrix ctm = new Matrix();
    TextState text = new TextState();
    ColourSpace fillSpace = ColourSpace.GRAY;
    ColourSpace strokeSpace = ColourSpace.GRAY;
    Tone fill = Tone.INK;
    Tone stroke = Tone.INK;
    double fillAlpha = 1;
    double strokeAlpha = 1;
    boolean plainBlend = true;
    /** A soft mask is in force. */
    boolean masked;
    /** Belongs to what is masked, blended, knocked out or clipped by text as a whole: only a rendering can tell. */
    boolean doubtful;
    /** Belongs to a group that lets what lies below shine through. */
    boolean seeThrough;

    /** Keys of the colours: equal colours have equal keys; 0 for none. */
    int fillColour;

    int strokeColour;

    /** A transfer function gives white a tone. */
    boolean whiteInks;

    boolean overprintFill;
    boolean overprintStroke;
    boolean onlyInkedOverprint;
    double lineWidth = 1;
    int cap;
    int join;
    double miter = 10;
    double[] dash = {};
    double dashPhase;

    InkState(Clip clip) {
        this.clip = clip;
    }

    InkState copy() {
        InkState s = new InkState(clip);
        s.ctm = ctm;
        s.text = text.copy();
        s.fillSpace = fillSpace;
        s.strokeSpace = strokeSpace;
        s.fill = fill;
        s.stroke = stroke;
        s.fillAlpha = fillAlpha;
        s.strokeAlpha = strokeAlpha;
        s.plainBlend = plainBlend;
        s.masked = masked;
        s.doubtful = doubtful;
        s.seeThrough = seeThrough;
        s.whiteInks = whiteInks;
        s.fillColour = fillColour;
        s.strokeColour = strokeColour;
        s.overprintFill = overprintFill;
        s.overprintStroke = overprintStroke;
        s.onlyInkedOverprint = onlyInkedOverprint;
        s.lineWidth = lineWidth;
        s.cap = cap;
        s.join = join;
        s.miter = miter;
        s.dash = dash;
        s.dashPhase = dashPhase;
        return s;
    }

    /** Returns true if geometry alone can't tell what a paint of this opacity leaves on the paper. */
    boolean doubtfulAt(double alpha) {
        return doubtful || masked || !plainBlend || alpha < FAINT;
    }

    /** The state that the content of a transparency group starts with: ISO 32000-1:2008, 11.6.6. */
    InkState forGroup(boolean knockout) {
        InkState s = copy();
        s.doubtful = knockout || doubtfulAt(fillAlpha);
        s.seeThrough = seeThrough || s.doubtful || fillAlpha < 1;
        s.masked = false;
        s.plainBlend = true;
        s.fillAlpha = 1;
        s.strokeAlpha = 1;
        return s;
    }

    Tone fillTone() {
        return overprinted(fill, fillSpace, overprintFill);
    }

    Tone strokeTone() {
        return overprinted(stroke, strokeSpace, overprintStroke);
    }

    // 8.6.7: an overprinted nothing leaves what lies below as it is
    private Tone overprinted(Tone tone, ColourSpace space, boolean overprint) {
        if (tone == Tone.WHITE && overprint && space.leavesOthers(onlyInkedOverprint)) {
            return Tone.NOTHING;
        }
        if (tone == Tone.WHITE && whiteInks) {
            return Tone.INK;
        }
        return tone == Tone.WHITE && !plainBlend ? Tone.BLENDED_WHITE : tone;
    }

    /** A paint's effect on bare paper. */
    public enum Tone {
        INK,
        /** An ink beyond the process colours: its look on a screen is only a stand-in. */
        SPOT,
        /** A tiling or shading: somewhere in its outline there may be ink. */
        PATTERN,
        /** The paper's own white: shows only over ink. */
        WHITE,
        /** White that is blended with what lies below, which may darken it (ISO 32000-1:2008, 11.3.5). */
        BLENDED_WHITE,
        /** Paints nothing (the colorant None). */
        NOTHING
    }
}
