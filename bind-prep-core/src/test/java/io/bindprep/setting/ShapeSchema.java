package io.bindprep.setting;

import io.bindprep.setting.ValueShape.Either;
import io.bindprep.setting.ValueShape.Items;
import io.bindprep.setting.ValueShape.Parts;
import io.bindprep.setting.ValueShape.Table;
import io.bindprep.setting.ValueShape.Text;
import io.bindprep.setting.ValueShape.Whole;
import io.bindprep.setting.ValueShape.Words;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Makes the JSON Schema (2020-12) of a file of settings from the description of its keys. */
final class ShapeSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final YAMLMapper YAML = new YAMLMapper();

    private ShapeSchema() {}

    static String of(String id, String title, List<KeyDescription> keys) {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", id);
        root.put("title", title);
        root.put("type", "object");
        ObjectNode properties = root.putObject("properties");
        ArrayNode required = NODES.arrayNode();
        for (KeyDescription key : keys) {
            ObjectNode property = properties.putObject(key.key());
            String form = key.form().isEmpty() ? "" : "; " + key.form();
            property.put("description", key.meaning() + form + " (" + key.unsaid() + ")");
            property.setAll(schema(key.shape()));
            if (key.builtIn() != null) {
                property.set("default", yaml(key.builtIn()));
            }
            ArrayNode examples = property.putArray("examples");
            key.examples().forEach(example -> examples.add(yaml(example)));
            if (key.required()) {
                required.add(key.key());
            }
        }
        if (!required.isEmpty()) {
            root.set("required", required);
        }
        root.put("additionalProperties", false);
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    static JsonNode yaml(String text) {
        return YAML.readTree(text);
    }

    private static ObjectNode schema(ValueShape shape) {
        ObjectNode node = NODES.objectNode();
        if (shape instanceof Words words) {
            words.words().forEach(node.putArray("enum")::add);
        } else if (shape instanceof Whole whole) {
            node.put("type", "integer").put("minimum", whole.least()).put("maximum", whole.most());
        } else if (shape instanceof Text text) {
            String pattern = text.pattern().isEmpty() ? "\\S" : "^(?:" + text.pattern() + ")$";
            node.put("type", "string").put("pattern", pattern);
        } else if (shape instanceof Items items) {
            node.put("type", "array").set("items", schema(items.item()));
        } else if (shape instanceof Table table) {
            node.put("type", "object").put("minProperties", 1).set("additionalProperties", schema(table.value()));
        } else if (shape instanceof Parts parts) {
            node.put("type", "object");
            ObjectNode properties = node.putObject("properties");
            parts.parts().forEach((name, part) -> properties.set(name, schema(part)));
            if (!parts.required().isEmpty()) {
                parts.required().forEach(node.putArray("required")::add);
            }
            node.put("additionalProperties", false);
        } else if (shape instanceof Either either) {
            ArrayNode any = node.putArray("anyOf");
            either.shapes().forEach(one -> any.add(schema(one)));
        }
        return node;
    }
}
