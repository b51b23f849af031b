package io.bindprep.pdf.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Digital signatures in form fields (ISO 32000-1:2008, 12.7.4.5); they cover the file's bytes, so any change voids them. */
final class Signatures {
    private static final int MOST_FIELDS = 100_000;
    private static final COSName SIG_FLAGS = COSName.getPDFName("SigFlags");

    private Signatures() {}

    static int count(COSDictionary catalog) {
        return signed(catalog).size();
    }

    static void drop(COSDictionary catalog) {
        signed(catalog).forEach(field -> field.removeItem(COSName.V));
        catalog.removeItem(COSName.PERMS);
        catalog.removeItem(COSName.getPDFName("DSS"));
        COSDictionary form = catalog.getCOSDictionary(COSName.ACRO_FORM);
        if (form != null) {
            form.removeItem(SIG_FLAGS);
        }
    }

    private static List<COSDictionary> signed(COSDictionary catalog) {
        List<COSDictionary> found = new ArrayList<>();
        COSDictionary form = catalog.getCOSDictionary(COSName.ACRO_FORM);
        COSArray fields = form == null ? null : form.getCOSArray(COSName.FIELDS);
        Deque<COSBase> open = new ArrayDeque<>();
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        if (fields != null) {
            open.push(fields);
        }
        while (!open.isEmpty() && seen.size() < MOST_FIELDS) {
            COSBase next = open.pop();
            if (!seen.add(next)) {
                continue;
            }
            if (next instanceof COSArray array) {
                for (int i = array.size() - 1; i >= 0; i--) {
                    COSBase field = array.getObject(i);
                    if (field != null) {
                        open.push(field);
                    }
                }
            } else if (next instanceof COSDictionary field) {
                // a value with ByteRange is a signature whatever the field says it is
                COSDictionary value = field.getCOSDictionary(COSName.V);
                if (value != null && value.containsKey(COSName.BYTERANGE)) {
                    found.add(field);
                }
                COSArray kids = field.getCOSArray(COSName.KIDS);
                if (kids != null) {
                    open.push(kids);
                }
            }
        }
        return found;
    }
}
