// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.List;
import java.util.ResourceBundle;
import org.meltwright.examples.json.RecordSchema;

/** Prints the JSON Schema of the studio file, generated from the draft records. */
public final class StudioSchema {

  private StudioSchema() {}

  /**
   * Prints the schema.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.print(text());
  }

  /**
   * Returns the schema.
   *
   * @return the schema, indented, ending with a line break
   */
  public static String text() {
    return RecordSchema.of(
        StudioDraft.class, "Studio file", StudioSchema::field, StudioSchema::isNeeded);
  }

  /** Returns what a field means, asked as {@code RecordName.field}. */
  static String field(String key) {
    return ResourceBundle.getBundle("org.meltwright.examples.studio.file.fields").getString(key);
  }

  /** Returns whether a field has to be there, asked as {@code RecordName.field}. */
  static boolean isNeeded(String key) {
    String[] names = key.split("\\.", 2);
    ResourceBundle needed = ResourceBundle.getBundle("org.meltwright.examples.studio.file.needed");
    return needed.containsKey(names[0])
        && List.of(needed.getString(names[0]).split(" ")).contains(names[1]);
  }
}
