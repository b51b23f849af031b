package io.bindprep.setting;

import io.bindprep.problem.SettingException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/** Reads one file of settings token by token, so that every setting knows its line and nothing is read twice or expanded. */
final class SettingText {
    private static final int MOST_CHARACTERS = 1_000_000;
    private static final int MOST_VALUES = 50_000;
    private static final int DEEPEST = 16;
    private static final StreamReadConstraints BOUNDS = StreamReadConstraints.builder()
            .maxNestingDepth(DEEPEST)
            .maxStringLength(100_000)
            .maxNumberLength(100)
            .build();

    private final String key;
    private final String name;
    private final JsonParser parser;
    private final Map<String, String> places = new LinkedHashMap<>();
    private int values;

    private SettingText(String key, String name, JsonParser parser) {
        this.key = key;
        this.name = name;
        this.parser = parser;
    }

    static SettingFile read(String key, String text, String name) throws SettingException {
        if (text.length() > MOST_CHARACTERS) {
            throw problem(
                    key,
                    name,
                    null,
                    "is longer than " + MOST_CHARACTERS + " characters, which no " + key + " needs",
                    "Give the " + key + " file itself, not the document.");
        }
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        boolean json = name.toLowerCase(Locale.ROOT).endsWith(".json");
        try (JsonParser parser = json ? json(body) : yaml(body)) {
            return new SettingText(key, name, parser).settings();
        } catch (JacksonException e) {
            String kind = json ? "JSON" : "YAML";
            throw problem(
                    key,
                    name,
                    e.getLocation(),
                    "is not well-formed " + kind + ": " + reason(e),
                    "Correct that line; values with a colon followed by a blank, or that begin with a mark of "
                            + kind
                            + ", go in double quotes.");
        }
    }

    private static JsonParser json(String text) {
        return JsonFactory.builder()
                .streamReadConstraints(BOUNDS)
                .build()
                .createParser(ObjectReadContext.empty(), text);
    }

    private static JsonParser yaml(String text) {
        return YAMLFactory.builder()
                .streamReadConstraints(BOUNDS)
                .build()
                .createParser(ObjectReadContext.empty(), text);
    }

    private SettingFile settings() throws SettingException {
        JsonToken first = parser.nextToken();
        // a file of nothing but comments reads as no token or as null
        if (first == null || first == JsonToken.VALUE_NULL) {
            return new SettingFile(Map.of(), Map.of());
        }
        if (first != JsonToken.START_OBJECT) {
            throw here("holds no settings by key", "Write one setting a line, a key and its value: KEY: VALUE");
        }
        Map<String, Object> map = map("");
        if (parser.nextToken() != null) {
            throw here("holds more than one document", "Keep one " + key + " in one file.");
        }
        return new SettingFile(map, places);
    }

    private Map<String, Object> map(String path) throws SettingException {
        Map<String, Object> map = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String part = parser.currentName();
            String full = path.isEmpty() ? part : path + "." + part;
            if (map.containsKey(part)) {
                throw here("gives " + full + " twice", "Keep one of the two.");
            }
            parser.nextToken();
            map.put(part, value(full));
        }
        return Collections.unmodifiableMap(map);
    }

    private List<Object> list(String path) throws SettingException {
        List<Object> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(value(path + "[" + (list.size() + 1) + "]"));
        }
        return Collections.unmodifiableList(list);
    }

    private Object value(String path) throws SettingException {
        if (++values > MOST_VALUES) {
            throw here("holds more than " + MOST_VALUES + " values", "Give the " + key + " file itself.");
        }
        places.put(path, place(name, parser.currentTokenLocation()));
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            throw here("refers to another value by *" + parser.getString(), "Write the value out where it is needed.");
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> map(path);
            case START_ARRAY -> list(path);
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            case VALUE_NUMBER_INT -> parser.getBigIntegerValue();
            case VALUE_NUMBER_FLOAT -> parser.isNaN() ? parser.getString() : parser.getDecimalValue();
            case VALUE_NULL -> throw valueless(path);
            default -> {
                String text = parser.getString();
                if (text.isBlank()) {
                    throw valueless(path);
                }
                yield text;
            }
        };
    }

    private SettingException valueless(String path) {
        return here("gives no value for " + path, "Write a value, or leave the key out for the built-in one.");
    }

    private SettingException here(String what, String remedy) {
        return problem(key, name, parser.currentTokenLocation(), what, remedy);
    }

    private static SettingException problem(
            String key, String name, @Nullable TokenStreamLocation at, String what, String remedy) {
        String where = at == null ? name : place(name, at);
        return new SettingException(key, name, "the " + key + " file " + what + " (" + where + ")", remedy, List.of());
    }

    private static String place(String name, TokenStreamLocation at) {
        return name + ", line " + Math.max(1, at.getLineNr()) + ", column " + Math.max(1, at.getColumnNr());
    }

    // the parser's message repeats the place and quotes the file over several lines
    private static String reason(JacksonException e) {
        String message = e.getOriginalMessage();
        if (message == null) {
            return "it cannot be read";
        }
        StringBuilder kept = new StringBuilder();
        for (String line : message.split("\\R")) {
            if (!line.startsWith(" ") && !line.isBlank()) {
                kept.append(kept.isEmpty() ? "" : ", ").append(line.strip());
            }
        }
        return kept.length() > 200 ? kept.substring(0, 200) : kept.toString();
    }
}
