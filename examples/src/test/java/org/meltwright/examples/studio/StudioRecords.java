// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.function.BiConsumer;
import org.meltwright.examples.studio.file.StudioDraft;
import tools.jackson.databind.JsonNode;

/** The records that a studio file is made of, and what is said of their fields. */
final class StudioRecords {

  private static final String PACKAGE = StudioDraft.class.getPackageName();

  private StudioRecords() {}

  /** All records, the file first. */
  static Set<Class<?>> all() {
    Set<Class<?>> found = new LinkedHashSet<>();
    collect(StudioDraft.class, found);
    return found;
  }

  private static void collect(Type type, Set<Class<?>> found) {
    Class<?> record = record(type);
    if (record.isRecord() && found.add(record)) {
      for (RecordComponent component : record.getRecordComponents()) {
        collect(component.getGenericType(), found);
      }
    }
  }

  private static Class<?> record(Type type) {
    return type instanceof ParameterizedType list
        ? (Class<?>) list.getActualTypeArguments()[0]
        : (Class<?>) type;
  }

  static boolean isNeeded(String field) {
    String record = field.substring(0, field.indexOf('.'));
    ResourceBundle needed = ResourceBundle.getBundle(PACKAGE + ".needed");
    return needed.containsKey(record)
        && List.of(needed.getString(record).split(" "))
            .contains(field.substring(record.length() + 1));
  }

  /** The table of the reference page. */
  static String table(Class<?> record) {
    ResourceBundle fields = ResourceBundle.getBundle(PACKAGE + ".fields");
    StringBuilder table = new StringBuilder("| field | meaning | needed |\n|---|---|---|\n");
    for (RecordComponent component : record.getRecordComponents()) {
      String key = record.getSimpleName() + "." + component.getName();
      table
          .append("| `" + component.getName() + "` | " + fields.getString(key) + " | ")
          .append((isNeeded(key) ? "yes" : "") + " |\n");
    }
    return table.toString();
  }

  /** Walks each field that a file states: its JSON pointer and its name, as Record.field. */
  static void walk(JsonNode file, BiConsumer<String, String> each) {
    walk(file, StudioDraft.class, "", each);
  }

  private static void walk(
      JsonNode node, Class<?> type, String pointer, BiConsumer<String, String> each) {
    if (!type.isRecord()) {
      return;
    }
    for (RecordComponent component : type.getRecordComponents()) {
      JsonNode value = node.get(component.getName());
      String at = pointer + "/" + component.getName();
      if (value != null) {
        each.accept(at, type.getSimpleName() + "." + component.getName());
        Class<?> inside = record(component.getGenericType());
        for (int i = 0; value.isArray() && i < value.size(); i++) {
          walk(value.get(i), inside, at + "/" + i, each);
        }
        if (value.isObject()) {
          walk(value, inside, at, each);
        }
      }
    }
  }
}
