package io.bindprep.pdf.ink;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;

/** Parts of a graphics state parameter dictionary that matter to ink (ISO 32000-1:2008, Table 58). */
final class ExtGState {
    private static final COSName TR2 = COSName.getPDFName("TR2");
    private static final int MOST_DASHES = 64;

    private ExtGState() {}

    static void apply(InkState ink, COSDictionary state) throws IOException {
        ink.fillAlpha = state.getFloat(COSName.CA_NS, (float) ink.fillAlpha);
        ink.strokeAlpha = state.getFloat(COSName.CA, (float) ink.strokeAlpha);
        ink.lineWidth = Math.abs(state.getFloat(COSName.LW, (float) ink.lineWidth));
        ink.cap = state.getInt(COSName.LC, ink.cap);
        ink.join = state.getInt(COSName.LJ, ink.join);
        ink.miter = state.getFloat(COSName.ML, (float) ink.miter);
        ink.overprintStroke = state.getBoolean(COSName.OP, ink.overprintStroke);
        ink.overprintFill = state.getBoolean(COSName.OP_NS, state.getBoolean(COSName.OP, ink.overprintFill));
        ink.onlyInkedOverprint = state.getInt(COSName.OPM, ink.onlyInkedOverprint ? 1 : 0) == 1;
        COSBase blend = state.getDictionaryObject(COSName.BM);
        if (blend != null) {
            COSBase first = blend instanceof COSArray several && several.size() > 0 ? several.getObject(0) : blend;
            ink.plainBlend = COSName.NORMAL.equals(first) || COSName.COMPATIBLE.equals(first);
        }
        COSBase mask = state.getDictionaryObject(COSName.SMASK);
        if (mask != null) {
            ink.masked = mask instanceof COSDictionary;
        }
        COSBase transfer = state.getDictionaryObject(TR2);
        transfer = transfer == null ? state.getDictionaryObject(COSName.TR) : transfer;
        if (transfer != null) {
            Transfer functions = Transfer.of(transfer);
            ink.whiteInks = functions != null && functions.inksWhite();
        }
        COSArray dash = state.getCOSArray(COSName.D);
        if (dash != null && dash.getObject(0) instanceof COSArray lengths) {
            dash(ink, lengths, dash.getObject(1) instanceof COSNumber phase ? phase.floatValue() : 0);
        }
    }

    static void dash(InkState ink, COSArray lengths, double phase) {
        double[] dash = new double[Math.min(lengths.size(), MOST_DASHES)];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = lengths.getObject(i) instanceof COSNumber n ? n.floatValue() : 0;
        }
        ink.dash = dash;
        ink.dashPhase = phase;
    }
}
