package io.bindprep.maven;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.codehaus.plexus.configuration.PlexusConfiguration;

/**
 * The {@code <job>} element as the map a job file would be: {@code <bindingEdge>} and {@code <binding-edge>} are both the key
 * {@code binding-edge}; {@code <inserts>} that holds only {@code <insert>} elements is a list.
 */
final class JobElement {
    /** The key that is a list by whatever name its elements go. */
    private static final String ACCEPT = "accept";

    private JobElement() {}

    static Map<String, Object> settings(PlexusConfiguration element) {
        Map<String, Object> settings = new LinkedHashMap<>();
        for (PlexusConfiguration child : element.getChildren()) {
            settings.put(key(child.getName()), value(child));
        }
        return settings;
    }

    private static Object value(PlexusConfiguration element) {
        PlexusConfiguration[] children = element.getChildren();
        if (children.length == 0) {
            String text = element.getValue("");
            return text == null ? "" : text.strip();
        }
        if (!isList(element.getName(), children)) {
            return settings(element);
        }
        List<Object> items = new ArrayList<>();
        for (PlexusConfiguration child : children) {
            items.add(value(child));
        }
        return items;
    }

    private static boolean isList(String name, PlexusConfiguration[] children) {
        if (name.equals(ACCEPT)) {
            return true;
        }
        for (PlexusConfiguration child : children) {
            if (!name.equals(child.getName() + "s")) {
                return false;
            }
        }
        return true;
    }

    private static String key(String element) {
        return element.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }

    /** The elements that a job key is set by: {@code covers.front} is {@code <job><covers><front>}. */
    static String named(String key) {
        StringBuilder elements = new StringBuilder("<job>");
        for (String part : key.split("\\.")) {
            int index = part.indexOf('[');
            elements.append('<')
                    .append(camelCase(index < 0 ? part : part.substring(0, index)))
                    .append('>');
            elements.append(index < 0 ? "" : part.substring(index));
        }
        return elements.toString();
    }

    private static String camelCase(String key) {
        StringBuilder name = new StringBuilder();
        for (String word : key.split("-")) {
            name.append(name.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return name.toString();
    }
}
