// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.data;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.reflect.TypeToken;
import java.lang.reflect.Type;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * A result in its record form, or a list of them, with the name of the golden file it is kept in.
 */
record Form(String name, Object value, Type type) {

  private static final JsonMapper JACKSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  /** With nulls written, as the other library does; without its escapes for HTML. */
  private static final Gson GSON =
      new GsonBuilder().serializeNulls().disableHtmlEscaping().create();

  static Form of(String name, Record value) {
    return new Form(name, value, value.getClass());
  }

  static Form of(String name, List<? extends Record> values) {
    Type type = TypeToken.getParameterized(List.class, values.get(0).getClass()).getType();
    return new Form(name, values, type);
  }

  static JsonNode tree(String json) {
    return JACKSON.readTree(json);
  }

  String byJackson() {
    return JACKSON.writeValueAsString(value) + "\n";
  }

  String byGson() {
    return GSON.toJson(value, type);
  }

  Object readByJackson(String json) {
    return JACKSON.readValue(json, JACKSON.constructType(type));
  }

  Object readByGson(String json) {
    return GSON.fromJson(json, type);
  }

  @Override
  public String toString() {
    return name;
  }
}
