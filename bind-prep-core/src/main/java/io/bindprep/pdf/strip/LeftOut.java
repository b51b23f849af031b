package io.bindprep.pdf.strip;

import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;

/**
 * Parts of a page left out of a drawing.
 *
 * @param operators the page's own operators by their number from 1, with their names to make sure
 * @param annotations compared by identity
 */
public record LeftOut(Map<Integer, String> operators, Set<COSDictionary> annotations) {
    public static final LeftOut NOTHING = new LeftOut(Map.of(), Set.of());

    int size() {
        return operators.size() + annotations.size();
    }
}
