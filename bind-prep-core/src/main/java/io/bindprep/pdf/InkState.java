package io.bindprep.pdf;

import org.apache.pdfbox.util.Matrix;

/** What of the graphics state decides whether and where ink lands; copied at every q. */
final class InkState {
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
    boolean overprint;
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
        s.overprint = overprint;
        s.lineWidth = lineWidth;
        s.cap = cap;
        s.join = join;
        s.miter = miter;
        s.dash = dash;
        s.dashPhase = dashPhase;
        return s;
    }

    /** A paint's effect on bare paper. */
    enum Tone {
        INK,
        /** The paper's own white: shows only over ink. */
        WHITE,
        /** Paints nothing (the colorant None). */
        NOTHING
    }
}
