package io.bindprep.pdf.ink;

import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.syntax.Budget;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Colours, as far as they decide whether ink lands. */
public abstract class ColourEngine extends StateEngine {
    ColourEngine(Fonts fonts, Layers layers, Budget budget) {
        super(fonts, layers, budget);
    }

    /** Carries out an operator of colour; false where it is another. */
    final boolean colour(String name, List<COSBase> o) {
        switch (name) {
            case "g", "rg", "k", "G", "RG", "K", "cs", "CS", "sc", "scn", "SC", "SCN" -> {}
            default -> {
                return false;
            }
        }
        if (!coloursCount) {
            return true;
        }
        switch (name) {
            case "g" -> fill(ColourSpace.GRAY, o, 1);
            case "rg" -> fill(ColourSpace.GRAY, o, 3);
            case "k" -> fill(ColourSpace.CMYK, o, 4);
            case "G" -> stroke(ColourSpace.GRAY, o, 1);
            case "RG" -> stroke(ColourSpace.GRAY, o, 3);
            case "K" -> stroke(ColourSpace.CMYK, o, 4);
            case "cs" -> {
                if (isMissing(o.get(0))) {
                    return true;
                }
                ink.fillSpace = ColourSpace.of(o.get(0), getResources());
                ink.fill = ink.fillSpace.initial();
                ink.fillColour = 0;
            }
            case "CS" -> {
                if (isMissing(o.get(0))) {
                    return true;
                }
                ink.strokeSpace = ColourSpace.of(o.get(0), getResources());
                ink.stroke = ink.strokeSpace.initial();
                ink.strokeColour = 0;
            }
            case "sc", "scn" -> {
                ink.fill = paints(o) ? ink.fillSpace.tone(o) : Tone.NOTHING;
                ink.fillColour = ink.fillSpace.key(o);
            }
            default -> {
                ink.stroke = paints(o) ? ink.strokeSpace.tone(o) : Tone.NOTHING;
                ink.strokeColour = ink.strokeSpace.key(o);
            }
        }
        return true;
    }

    /** Returns false for a pattern that no reader draws, for it is not there or not whole (three tried). */
    private boolean paints(List<COSBase> o) {
        if (o.isEmpty() || !(o.get(o.size() - 1) instanceof COSName name)) {
            return true;
        }
        if (Shadings.drawn(resource(COSName.PATTERN, name) instanceof COSDictionary pattern ? pattern : null)) {
            return true;
        }
        passedOver("the pattern \"" + name.getName() + "\" is missing or incomplete");
        return false;
    }

    /** Returns true for a colour space that is not there: readers stay with the one before (three tried). */
    private boolean isMissing(COSBase space) {
        boolean missing = space instanceof COSName name
                && !ColourSpace.isBuiltIn(name)
                && resource(COSName.COLORSPACE, name) == null;
        if (missing) {
            passedOver("the colour space \"" + ((COSName) space).getName() + "\" is missing");
        }
        return missing;
    }

    private void fill(ColourSpace space, List<COSBase> o, int components) {
        o.get(components - 1); // fewer are passed over
        ink.fillSpace = space;
        ink.fill = space.tone(o);
        ink.fillColour = space.key(o);
    }

    private void stroke(ColourSpace space, List<COSBase> o, int components) {
        o.get(components - 1);
        ink.strokeSpace = space;
        ink.stroke = space.tone(o);
        ink.strokeColour = space.key(o);
    }
}
