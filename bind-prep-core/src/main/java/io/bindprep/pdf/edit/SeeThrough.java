package io.bindprep.pdf.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Tells whether anything among resources could let show what lies under it: opacity, blending, masks, overprint. */
final class SeeThrough {
    private static final int MOST_FORMS = 2_000;
    private static final List<COSName> OPACITIES = List.of(COSName.CA, COSName.CA_NS);
    private static final List<COSName> OVERPRINTS = List.of(COSName.OP, COSName.OP_NS);

    private SeeThrough() {}

    /** Returns true where something may, or there is too much to look at. */
    static boolean any(@Nullable COSDictionary resources) {
        Set<COSBase> met = Collections.newSetFromMap(new IdentityHashMap<>());
        List<COSDictionary> open = new ArrayList<>();
        add(resources, met, open);
        while (!open.isEmpty()) {
            COSDictionary next = open.remove(open.size() - 1);
            if (met.size() > MOST_FORMS || states(next) || objects(next, met, open)) {
                return true;
            }
        }
        return false;
    }

    private static void add(@Nullable COSDictionary resources, Set<COSBase> met, List<COSDictionary> open) {
        if (resources != null && met.add(resources)) {
            open.add(resources);
        }
    }

    private static boolean states(COSDictionary resources) {
        COSDictionary states = resources.getCOSDictionary(COSName.EXT_G_STATE);
        return states != null
                && states.keySet().stream()
                        .map(states::getDictionaryObject)
                        .anyMatch(s -> s instanceof COSDictionary state && state(state));
    }

    private static boolean state(COSDictionary state) {
        COSBase blend = state.getDictionaryObject(COSName.BM);
        boolean blends = blend instanceof COSArray
                || blend instanceof COSName n
                        && !n.equals(COSName.NORMAL)
                        && !n.getName().equals("Compatible");
        return blends
                || state.getDictionaryObject(COSName.SMASK) instanceof COSDictionary
                || OPACITIES.stream()
                        .anyMatch(k -> state.getDictionaryObject(k) instanceof COSNumber n && n.floatValue() < 1)
                || OVERPRINTS.stream().anyMatch(k -> state.getBoolean(k, false));
    }

    private static boolean objects(COSDictionary resources, Set<COSBase> met, List<COSDictionary> open) {
        COSDictionary objects = resources.getCOSDictionary(COSName.XOBJECT);
        for (COSName name : objects == null ? Set.<COSName>of() : objects.keySet()) {
            if (objects.getDictionaryObject(name) instanceof COSStream object) {
                if (object.containsKey(COSName.SMASK)
                        || object.containsKey(COSName.MASK)
                        || object.getBoolean(COSName.IMAGE_MASK, false)) {
                    return true;
                }
                add(object.getCOSDictionary(COSName.RESOURCES), met, open);
            }
        }
        return false;
    }
}
