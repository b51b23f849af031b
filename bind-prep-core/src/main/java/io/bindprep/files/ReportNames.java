package io.bindprep.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    /**
     * For each document, in their order, a name that is the same wherever the run's folder stands: its path from there; for
     * one that lies elsewhere the name of its file, with as many folders before it as tell it from the others.
     *
     * @param documents paths, with slashes on every system
     * @param folder of the run, absolute, with slashes
     */
    public static List<String> portable(List<String> documents, String folder) {
        List<String> names = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        Set<Integer> open = new LinkedHashSet<>();
        for (String document : documents) {
            String name = within(document, folder);
            names.add(name);
            if (absolute(name)) {
                open.add(names.size() - 1);
            } else {
                taken.add(name);
            }
        }
        for (int folders = 0; !open.isEmpty(); folders++) {
            Map<String, Integer> counts = new HashMap<>();
            for (int i : open) {
                counts.merge(tail(names.get(i), folders), 1, Integer::sum);
            }
            for (Iterator<Integer> left = open.iterator(); left.hasNext(); ) {
                int i = left.next();
                String tail = tail(names.get(i), folders);
                boolean whole = tail.equals(names.get(i));
                if (whole || counts.getOrDefault(tail, 0) == 1 && taken.add(tail)) {
                    names.set(i, tail);
                    left.remove();
                }
            }
        }
        return names;
    }

    /** Path of a document from a folder; as it is where the document lies elsewhere. */
    public static String within(String document, String folder) {
        String before = folder.endsWith("/") ? folder : folder + "/";
        String name = document.startsWith(before) ? document.substring(before.length()) : document;
        return name.startsWith("./") ? name.substring(2) : name;
    }

    private static boolean absolute(String name) {
        return name.startsWith("/") || name.matches("[A-Za-z]:/.*");
    }

    private static String tail(String path, int folders) {
        int from = path.length();
        for (int i = 0; i <= folders && from >= 0; i++) {
            from = path.lastIndexOf('/', from - 1);
        }
        return from < 0 ? path : path.substring(from + 1);
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
