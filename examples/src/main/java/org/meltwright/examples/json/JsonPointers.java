// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import jakarta.validation.Path;

/** JSON pointers as RFC 6901 writes them. */
final class JsonPointers {

  private JsonPointers() {}

  /** Returns a step to a key: "/" and the key, with "~" and "/" escaped. */
  static String step(String key) {
    return "/" + key.replace("~", "~0").replace("/", "~1");
  }

  /** Returns the pointer to what a validator's path names. */
  static String of(Path path) {
    StringBuilder pointer = new StringBuilder();
    for (Path.Node node : path) {
      if (node.getIndex() != null) {
        pointer.append('/').append(node.getIndex());
      } else if (node.getKey() != null) {
        pointer.append(step(node.getKey().toString()));
      }
      if (node.getName() != null && !node.getName().startsWith("<")) {
        pointer.append(step(node.getName()));
      }
    }
    return pointer.toString();
  }
}
