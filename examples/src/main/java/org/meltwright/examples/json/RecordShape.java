// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import static java.util.Objects.requireNonNull;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Nearest;
import org.meltwright.units.Problem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The shape that a draft record asks a JSON tree to have.
 *
 * <p>Components are text, integers, booleans, lists, maps from text, and further records. What does
 * not fit is reported and taken out of the tree, so that the rest can still be read and checked.
 */
final class RecordShape {

  /**
   * Marks that embed, override, isolate or hint a direction; a mass after one may read reversed.
   */
  private static final String DIRECTION_MARKS =
      "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069";

  /** What is written where a type of JSON is asked for. */
  private static final Map<String, String> IN_WORDS =
      Map.of(
          "object", "fields in curly brackets",
          "array", "a list in square brackets",
          "string", "a text in quotation marks",
          "integer", "a whole number without quotation marks",
          "number", "a number that is not whole",
          "boolean", "true or false without quotation marks",
          "null", "nothing");

  private final List<Problem> problems = new ArrayList<>();

  private RecordShape() {}

  /**
   * Takes out of a tree what does not fit the record, and returns the problems.
   *
   * <p>A field may hold null for nothing; the tree itself may not.
   */
  static List<Problem> prune(JsonNode tree, Class<? extends Record> type) {
    RecordShape shape = new RecordShape();
    if (tree.isNull()) {
      shape.problems.add(wrongType(tree, jsonType(type)));
    } else {
      shape.fits(tree, type, "");
    }
    return shape.problems;
  }

  /** Makes the record of a tree that fits it; what is not there is null. */
  static <T extends Record> T bind(JsonNode tree, Class<T> type) {
    return type.cast(record(tree, type));
  }

  private static @Nullable Object value(@Nullable JsonNode node, Type type) {
    Class<?> raw = raw(type);
    if (node == null || node.isNull()) {
      return null;
    } else if (raw == List.class) {
      List<@Nullable Object> values = new ArrayList<>();
      node.forEach(element -> values.add(value(element, element(type))));
      return Collections.unmodifiableList(values);
    } else if (raw == Map.class) {
      Map<String, @Nullable Object> values = new LinkedHashMap<>();
      node.forEachEntry((key, below) -> values.put(key, value(below, element(type))));
      return Collections.unmodifiableMap(values);
    } else if (raw == Integer.class) {
      return node.intValue();
    } else if (raw == Boolean.class) {
      return node.booleanValue();
    }
    return raw.isRecord() ? record(node, raw) : node.asString();
  }

  private static Object record(JsonNode node, Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    @Nullable Object[] values = new @Nullable Object[components.length];
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < components.length; i++) {
      values[i] = value(node.get(components[i].getName()), components[i].getGenericType());
      types[i] = components[i].getType();
    }
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true); // a record of an app may be private
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type.getName(), e); // a draft's constructor takes anything
    }
  }

  /** Returns the components of a record by name, in order. */
  static Map<String, Type> components(Class<?> type) {
    Map<String, Type> components = new LinkedHashMap<>();
    for (RecordComponent component : type.getRecordComponents()) {
      components.put(component.getName(), component.getGenericType());
    }
    return components;
  }

  /** Returns the JSON type that a Java type is read from. */
  static String jsonType(Type type) {
    Class<?> raw = raw(type);
    if (raw == List.class) {
      return "array";
    } else if (raw == Map.class || raw.isRecord()) {
      return "object";
    } else if (raw == Integer.class) {
      return "integer";
    }
    return raw == Boolean.class ? "boolean" : "string";
  }

  /** Returns the type of a list's elements or a map's values. */
  static Type element(Type type) {
    Type[] arguments = ((ParameterizedType) type).getActualTypeArguments();
    return arguments[arguments.length - 1];
  }

  static Class<?> raw(Type type) {
    return type instanceof ParameterizedType p ? (Class<?>) p.getRawType() : (Class<?>) type;
  }

  private boolean fits(JsonNode node, Type type, String path) {
    String wanted = jsonType(type);
    if (node.isNull()) {
      return true;
    }
    if (!wanted.equals(typeOf(node))) {
      problems.add(wrongType(node, wanted).under(path));
      return false;
    }
    if (node.isString() && node.asString().chars().anyMatch(RecordShape::steers)) {
      problems.add(
          Problem.of(JsonProblem.INVALID_VALUE, shown(node))
              .with(
                  "message",
                  JsonProblem.CHECK.name(
                      "text on one line, without control characters or direction marks"))
              .under(path));
      return false;
    }
    if (node instanceof ArrayNode array) {
      elements(array, element(type), path);
    } else if (node instanceof ObjectNode object) {
      fields(object, type, path);
    }
    return true;
  }

  private void elements(ArrayNode array, Type element, String path) {
    for (int i = 0; i < array.size(); i++) {
      if (!fits(array.get(i), element, path + "/" + i)) {
        array.setNull(i);
      }
    }
  }

  private void fields(ObjectNode object, Type type, String path) {
    boolean free = raw(type) == Map.class;
    Map<String, Type> components = free ? Map.of() : components(raw(type));
    for (String key : List.copyOf(object.propertyNames())) {
      String below = path + JsonPointers.step(key);
      Type component = free ? element(type) : components.get(key);
      if (component == null) {
        unknown(object, key, components, path);
      } else if (!fits(object.get(key), component, below)) {
        object.remove(key);
      }
    }
  }

  /** A misspelt field is told once, and read as what it was meant to be. */
  private void unknown(ObjectNode object, String key, Map<String, Type> components, String path) {
    JsonNode value = object.remove(key);
    Optional<String> meant = nearest(key, components.keySet()).filter(n -> !object.has(n));
    problems.add(
        Problem.of(JsonProblem.UNKNOWN_FIELD, key)
            .with("fields", String.join(", ", components.keySet()))
            .with("nearest", meant.orElse(""))
            .under(path + JsonPointers.step(key)));
    meant
        .filter(
            name ->
                fits(value, requireNonNull(components.get(name)), path + JsonPointers.step(name)))
        .ifPresent(name -> object.set(name, value));
  }

  /** The nearest of names that are written with capitals inside. */
  private static Optional<String> nearest(String key, Set<String> names) {
    Map<String, String> byLower = new LinkedHashMap<>();
    names.forEach(name -> byLower.put(name.toLowerCase(Locale.ROOT), name));
    return Nearest.of(key, byLower.keySet()).map(byLower::get);
  }

  private static Bilingual inWords(String type) {
    return JsonProblem.CHECK.name(requireNonNull(IN_WORDS.get(type)));
  }

  private static Problem wrongType(JsonNode node, String wanted) {
    return Problem.of(JsonProblem.WRONG_TYPE, shown(node))
        .with("wanted", inWords(wanted))
        .with("got", inWords(typeOf(node)));
  }

  private static String typeOf(JsonNode node) {
    return switch (node.getNodeType()) {
      case ARRAY -> "array";
      case OBJECT -> "object";
      case STRING -> "string";
      case BOOLEAN -> "boolean";
      case NUMBER -> node.isInt() ? "integer" : "number";
      default -> "null";
    };
  }

  /** Control characters, line ends, and marks that turn the direction of what follows. */
  private static boolean steers(int character) {
    int type = Character.getType(character);
    return Character.isISOControl(character)
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || DIRECTION_MARKS.indexOf(character) >= 0;
  }

  /** A value as it was written; what steers the text around it is shown as a replacement mark. */
  private static String shown(JsonNode node) {
    return shown(node.toString());
  }

  /** A text as it was written, cut where it is long. */
  static String shown(String written) {
    StringBuilder seen = new StringBuilder();
    written.chars().forEach(c -> seen.append(steers(c) ? '\ufffd' : (char) c));
    String text = seen.toString();
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }
}
