package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A JSON Schema (draft 2020-12) of what the JSON records are written as: each a definition that lets no other member
 * pass; every component a member, required unless it is left out where there is nothing to say, null where it may be.
 */
final class RecordSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    private RecordSchema() {}

    /** A schema of one of the records, or of an array of them. */
    static ObjectNode of(String id, String title, Class<?>... records) {
        RecordSchema schema = new RecordSchema();
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", id);
        root.put("title", title);
        ArrayNode one = NODES.arrayNode();
        for (Class<?> type : records) {
            one.add(schema.type(type));
        }
        root.putArray("oneOf")
                .add(NODES.objectNode().put("$ref", "#/$defs/file"))
                .add(NODES.objectNode()
                        .put("type", "array")
                        .put("description", "several files, in their order")
                        .set("items", NODES.objectNode().put("$ref", "#/$defs/file")));
        schema.definitions.put("file", NODES.objectNode().set("oneOf", one));
        ObjectNode defs = root.putObject("$defs");
        schema.definitions.forEach(defs::set);
        return root;
    }

    /** A schema of one record. */
    static ObjectNode ofOne(String id, String title, Class<?> record) {
        RecordSchema schema = new RecordSchema();
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", id);
        root.put("title", title);
        root.put("$ref", "#/$defs/" + schema.define(record));
        ObjectNode defs = root.putObject("$defs");
        schema.definitions.forEach(defs::set);
        return root;
    }

    private ObjectNode type(Type type) {
        if (type instanceof ParameterizedType map && map.getRawType() == Map.class) {
            return NODES.objectNode()
                    .put("type", "object")
                    .set("additionalProperties", type(map.getActualTypeArguments()[1]));
        }
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            return NODES.objectNode().put("type", "array").set("items", type(list.getActualTypeArguments()[0]));
        }
        Class<?> c = (Class<?>) type;
        if (c == JsonPair.class) {
            ObjectNode pair = NODES.objectNode().put("type", "array");
            return pair.<ObjectNode>set("items", NODES.objectNode().put("type", "number"))
                    .put("minItems", 2)
                    .put("maxItems", 2);
        }
        if (c.isRecord()) {
            return NODES.objectNode().put("$ref", "#/$defs/" + define(c));
        }
        if (c.isEnum()) {
            ObjectNode words = NODES.objectNode();
            ArrayNode all = words.putArray("enum");
            Arrays.stream(c.getEnumConstants()).forEach(e -> all.add(Json.word((Enum<?>) e)));
            return words;
        }
        return NODES.objectNode().put("type", plain(c));
    }

    private static String plain(Class<?> c) {
        if (c == String.class) {
            return "string";
        }
        if (c == BigDecimal.class) {
            return "number";
        }
        if (c == int.class || c == long.class || c == Integer.class) {
            return "integer";
        }
        if (c == boolean.class || c == Boolean.class) {
            return "boolean";
        }
        throw new AssertionError("the schema knows no " + c + "; add it here");
    }

    private String define(Class<?> record) {
        String name = name(record);
        if (definitions.containsKey(name)) {
            return name;
        }
        ObjectNode node = NODES.objectNode().put("type", "object");
        definitions.put(name, node);
        ObjectNode properties = NODES.objectNode();
        ArrayNode required = NODES.arrayNode();
        for (RecordComponent component : record.getRecordComponents()) {
            // Jackson's annotations pass on to the accessor
            boolean leftOut = component.getAccessor().isAnnotationPresent(JsonInclude.class);
            boolean nullable = !leftOut && component.getAnnotatedType().isAnnotationPresent(Nullable.class);
            ObjectNode value = type(component.getGenericType());
            ObjectNode member = nullable ? orNull(value) : value;
            member.put("description", description(component));
            properties.set(component.getName(), member);
            if (!leftOut) {
                required.add(component.getName());
            }
        }
        node.set("properties", properties);
        node.set("required", required);
        node.put("additionalProperties", false);
        return name;
    }

    private static ObjectNode orNull(ObjectNode value) {
        ObjectNode either = NODES.objectNode();
        either.putArray("anyOf").add(value).add(NODES.objectNode().put("type", "null"));
        return either;
    }

    private static String description(RecordComponent component) {
        JsonPropertyDescription text = component.getAccessor().getAnnotation(JsonPropertyDescription.class);
        if (text == null) {
            throw new AssertionError(component.getDeclaringRecord().getSimpleName() + "." + component.getName()
                    + " has no @JsonPropertyDescription: say what the member is");
        }
        return text.value();
    }

    // JsonJob.Paper is jobPaper, so that no two definitions share a name
    private static String name(Class<?> record) {
        Class<?> outer = record.getEnclosingClass();
        String name =
                outer == null ? record.getSimpleName().replaceFirst("^Json", "") : name(outer) + record.getSimpleName();
        return name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1);
    }
}
