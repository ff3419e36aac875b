// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON Schema (draft 2020-12) of a draft record, so that schema and code cannot differ.
 *
 * <p>What a draft asks for is required; no fields are allowed but those of the record.
 */
public final class RecordSchema {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final UnaryOperator<String> description;
  private final Predicate<String> isNeeded;

  /**
   * Returns the schema of a draft record.
   *
   * @param type the draft record's class
   * @param title the title of the schema
   * @param description gives the text of a field, asked as {@code RecordName.field}
   * @param isNeeded whether a field has to be there, asked in the same way
   * @return the schema as indented JSON, ending with a line break
   */
  public static String of(
      Class<? extends Record> type,
      String title,
      UnaryOperator<String> description,
      Predicate<String> isNeeded) {
    ObjectNode root = NODES.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", title);
    root.setAll(new RecordSchema(description, isNeeded).schema(type));
    return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root)
        + "\n";
  }

  private RecordSchema(UnaryOperator<String> description, Predicate<String> isNeeded) {
    this.description = description;
    this.isNeeded = isNeeded;
  }

  private ObjectNode schema(Type type) {
    Class<?> raw = RecordShape.raw(type);
    ObjectNode node = NODES.objectNode();
    node.put("type", RecordShape.jsonType(type));
    if (raw == java.util.List.class) {
      node.set("items", schema(RecordShape.element(type)));
    } else if (raw == java.util.Map.class) {
      node.set("additionalProperties", schema(RecordShape.element(type)));
    } else if (raw.isRecord()) {
      fields(node, raw);
    }
    return node;
  }

  private void fields(ObjectNode node, Class<?> type) {
    ObjectNode properties = node.putObject("properties");
    ArrayNode required = NODES.arrayNode();
    for (RecordComponent component : type.getRecordComponents()) {
      ObjectNode field = schema(component.getGenericType());
      String key = type.getSimpleName() + "." + component.getName();
      field.put("description", description.apply(key));
      properties.set(component.getName(), field);
      if (isNeeded.test(key)) {
        required.add(component.getName());
      }
    }
    node.set("required", required);
    node.put("additionalProperties", false);
  }
}
