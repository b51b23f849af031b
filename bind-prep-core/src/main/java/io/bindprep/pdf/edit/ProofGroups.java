package io.bindprep.pdf.edit;

import io.bindprep.wording.Terms;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.jspecify.annotations.Nullable;

/**
 * The layers of a proof, put into the document's own list: ISO 32000-1:2008, 8.11. Seen on the screen; not printed, so
 * that no holes get onto a sheet by mistake.
 */
final class ProofGroups {
    private static final COSName USAGE = COSName.getPDFName("Usage");
    private static final COSName VIEW = COSName.getPDFName("View");
    private static final COSName VIEW_STATE = COSName.getPDFName("ViewState");
    private static final COSName PRINT_STATE = COSName.getPDFName("PrintState");
    private static final COSName EVENT = COSName.getPDFName("Event");
    private static final COSName CATEGORY = COSName.getPDFName("Category");

    private final COSObject holes = group("binding: holes");
    private final COSObject margin = group("binding: " + Terms.BINDING_MARGIN);
    private final COSObject hits = group("binding: hits");

    COSObject holes() {
        return holes;
    }

    COSObject margin() {
        return margin;
    }

    COSObject hits() {
        return hits;
    }

    private static COSObject group(String name) {
        COSDictionary view = new COSDictionary();
        view.setItem(VIEW_STATE, COSName.ON);
        COSDictionary print = new COSDictionary();
        print.setItem(PRINT_STATE, COSName.OFF);
        COSDictionary usage = new COSDictionary();
        usage.setItem(VIEW, view);
        usage.setItem(COSName.PRINT, print);
        COSDictionary group = new COSDictionary();
        group.setItem(COSName.TYPE, COSName.OCG);
        group.setString(COSName.NAME, name);
        group.setItem(USAGE, usage);
        return new COSObject(group);
    }

    /** Adds them to what the document has; its own layers stay as they are. */
    void install(COSDictionary catalog) {
        COSDictionary properties = copy(catalog.getCOSDictionary(COSName.OCPROPERTIES));
        COSDictionary config = copy(properties.getCOSDictionary(COSName.D));
        properties.setItem(COSName.OCGS, withAll(properties.getCOSArray(COSName.OCGS)));
        config.setItem(COSName.ORDER, withAll(config.getCOSArray(COSName.ORDER)));
        config.setItem(COSName.ON, withAll(config.getCOSArray(COSName.ON)));
        COSArray automatic = array(config.getCOSArray(COSName.AS));
        automatic.add(usage(VIEW));
        automatic.add(usage(COSName.PRINT));
        config.setItem(COSName.AS, automatic);
        properties.setItem(COSName.D, config);
        catalog.setItem(
                COSName.OCPROPERTIES, new COSObject(properties)); // packed with other objects, as catalogues are not
    }

    private COSDictionary usage(COSName event) {
        COSArray category = new COSArray();
        category.add(event);
        COSDictionary usage = new COSDictionary();
        usage.setItem(EVENT, event);
        usage.setItem(CATEGORY, category);
        usage.setItem(COSName.OCGS, withAll(null));
        return usage;
    }

    private COSArray withAll(@Nullable COSArray before) {
        COSArray all = array(before);
        List.of(holes, margin, hits).forEach(all::add);
        return all;
    }

    private static COSArray array(@Nullable COSArray from) {
        COSArray array = new COSArray();
        for (int i = 0; from != null && i < from.size(); i++) {
            COSBase item = from.get(i);
            array.add(item);
        }
        return array;
    }

    private static COSDictionary copy(@Nullable COSDictionary from) {
        return from == null ? new COSDictionary() : new COSDictionary(from);
    }
}
