package io.bindprep.pdf.ink;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Contents of forms that are not interpreted, told by their resources: fonts that are not in the file, and pictures. */
final class FormContents {
    private static final int MOST_NESTED = 8;

    private final Map<COSStream, Contents> known = new IdentityHashMap<>();

    /** Of a form with the forms in it. */
    record Contents(List<COSDictionary> fontsMissing, boolean pictures) {}

    Contents of(COSStream form) {
        Contents contents = known.get(form);
        if (contents == null) {
            List<COSDictionary> fonts = new ArrayList<>();
            boolean pictures = look(form, fonts, Collections.newSetFromMap(new IdentityHashMap<>()), 0);
            contents = new Contents(fonts, pictures);
            known.put(form, contents);
        }
        return contents;
    }

    private static boolean look(COSStream form, List<COSDictionary> missing, Set<COSStream> seen, int depth) {
        COSDictionary resources = form.getCOSDictionary(COSName.RESOURCES);
        if (resources == null || depth > MOST_NESTED || !seen.add(form)) {
            return false;
        }
        for (COSDictionary font : entries(resources.getCOSDictionary(COSName.FONT))) {
            if (!Embedding.holds(font)) {
                missing.add(font);
            }
        }
        boolean pictures = false;
        for (COSDictionary object : entries(resources.getCOSDictionary(COSName.XOBJECT))) {
            if (object instanceof COSStream stream) {
                boolean image = COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE));
                pictures |= image || look(stream, missing, seen, depth + 1);
            }
        }
        return pictures;
    }

    private static List<COSDictionary> entries(@Nullable COSDictionary of) {
        List<COSDictionary> entries = new ArrayList<>();
        if (of != null) {
            for (COSName key : of.keySet()) {
                if (of.getDictionaryObject(key) instanceof COSDictionary entry) {
                    entries.add(entry);
                }
            }
        }
        return entries;
    }
}
