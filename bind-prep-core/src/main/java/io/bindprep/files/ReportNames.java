package io.bindprep.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Names for the reports of several documents, so that none overwrites another, on a file system that ignores case too. */
public final class ReportNames {
    private ReportNames() {}

    /**
     * For each document, in their order, the name of its reports without ending: that of its file without {@code .pdf};
     * where several files share one, their paths with {@code _} for each slash; a number behind it where even that is
     * taken.
     *
     * @param documents paths, with slashes on every system
     */
    public static List<String> of(List<String> documents) {
        Set<String> once = new HashSet<>();
        Set<String> shared = new HashSet<>();
        for (String document : documents) {
            String plain = caseless(plain(document));
            if (!once.add(plain)) {
                shared.add(plain);
            }
        }
        List<String> names = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (String document : documents) {
            String wanted = plain(document);
            if (shared.contains(caseless(wanted))) {
                wanted = withoutEnding(document).replace('/', '_').replace(':', '_');
            }
            String name = wanted;
            for (int n = 2; !taken.add(caseless(name)); n++) {
                name = wanted + "-" + n;
            }
            names.add(name);
        }
        return names;
    }

    private static String plain(String document) {
        String name = withoutEnding(document.substring(document.lastIndexOf('/') + 1));
        return name.isEmpty() ? "report" : name;
    }

    private static String withoutEnding(String name) {
        return caseless(name).endsWith(".pdf") ? name.substring(0, name.length() - 4) : name;
    }

    private static String caseless(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
