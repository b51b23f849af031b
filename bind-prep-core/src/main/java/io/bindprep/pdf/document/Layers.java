package io.bindprep.pdf.document;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/** Optional content that prints: ISO 32000-1:2008, 8.11, default configuration, event Print. */
public final class Layers {
    private static final int MOST_NESTED = 16;
    private static final COSName PRINT_STATE = COSName.getPDFName("PrintState");
    private static final COSName EVENT = COSName.getPDFName("Event");
    private static final COSName CATEGORY = COSName.getPDFName("Category");
    private static final COSName USAGE = COSName.getPDFName("Usage");
    private static final COSName VE = COSName.getPDFName("VE");

    private final Set<COSBase> on = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<COSBase> off = Collections.newSetFromMap(new IdentityHashMap<>());
    private boolean offByDefault;

    public Layers(COSDictionary catalog) {
        COSDictionary properties = catalog.getCOSDictionary(COSName.OCPROPERTIES);
        COSDictionary config = properties == null ? null : properties.getCOSDictionary(COSName.D);
        if (config == null) {
            return;
        }
        offByDefault = COSName.OFF.equals(config.getCOSName(COSName.BASE_STATE));
        addAll(config.getCOSArray(COSName.ON), on);
        addAll(config.getCOSArray(COSName.OFF), off);
        COSArray automatic = config.getCOSArray(COSName.AS);
        for (int i = 0; automatic != null && i < automatic.size(); i++) {
            if (automatic.getObject(i) instanceof COSDictionary usage) {
                applyUsage(usage);
            }
        }
    }

    private static void addAll(@Nullable COSArray groups, Set<COSBase> into) {
        for (int i = 0; groups != null && i < groups.size(); i++) {
            into.add(groups.getObject(i));
        }
    }

    private void applyUsage(COSDictionary usage) {
        COSArray categories = usage.getCOSArray(CATEGORY);
        COSArray groups = usage.getCOSArray(COSName.OCGS);
        if (!"Print".equals(usage.getNameAsString(EVENT))
                || categories == null
                || groups == null
                || !categories.toCOSNameStringList().contains("Print")) {
            return;
        }
        for (int i = 0; i < groups.size(); i++) {
            if (groups.getObject(i) instanceof COSDictionary group) {
                COSDictionary own = group.getCOSDictionary(USAGE);
                COSDictionary print = own == null ? null : own.getCOSDictionary(COSName.PRINT);
                String state = print == null ? null : print.getNameAsString(PRINT_STATE);
                if (state != null) {
                    (state.equals("OFF") ? off : on).add(group);
                    (state.equals("OFF") ? on : off).remove(group);
                }
            }
        }
    }

    /** Returns true if content that belongs to a group or membership dictionary prints; true for null. */
    public boolean prints(@Nullable COSBase membership) {
        return prints(membership, 0);
    }

    private boolean prints(@Nullable COSBase base, int depth) {
        if (!(base instanceof COSDictionary dictionary) || depth > MOST_NESTED) {
            return true;
        }
        if (!"OCMD".equals(dictionary.getNameAsString(COSName.TYPE))) {
            return !(off.contains(dictionary) || offByDefault && !on.contains(dictionary));
        }
        COSArray expression = dictionary.getCOSArray(VE);
        if (expression != null) {
            return holds(expression, depth + 1);
        }
        COSBase groups = dictionary.getDictionaryObject(COSName.OCGS);
        if (groups instanceof COSArray array) {
            return policy(array, dictionary.getNameAsString(COSName.P, "AnyOn"), depth + 1);
        }
        boolean shown = prints(groups, depth + 1);
        return dictionary.getNameAsString(COSName.P, "AnyOn").endsWith("Off") != shown;
    }

    private boolean policy(COSArray groups, String policy, int depth) {
        boolean wantOn = !policy.endsWith("Off");
        boolean all = policy.startsWith("All");
        boolean seen = false;
        for (int i = 0; i < groups.size(); i++) {
            if (groups.getObject(i) instanceof COSDictionary group) {
                seen = true;
                if ((prints(group, depth) == wantOn) != all) {
                    return !all;
                }
            }
        }
        return !seen || all;
    }

    private boolean holds(COSArray expression, int depth) {
        String operator = expression.getName(0, "");
        if (depth > MOST_NESTED) {
            return true;
        }
        if (operator.equals("Not")) {
            return !term(expression, 1, depth);
        }
        boolean and = operator.equals("And");
        for (int i = 1; i < expression.size(); i++) {
            if (term(expression, i, depth) != and) {
                return !and;
            }
        }
        return and || expression.size() < 2;
    }

    private boolean term(COSArray expression, int index, int depth) {
        COSBase term = expression.getObject(index);
        return term instanceof COSArray nested ? holds(nested, depth + 1) : prints(term, depth + 1);
    }
}
