// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A material as a file states it, before its parts are looked up. */
final class MaterialEntry {

  final String id;
  final String path;
  final Material.Builder builder;
  final List<Part> parts = new ArrayList<>();
  final List<Part> alternatives = new ArrayList<>();

  MaterialEntry(String id, String path) {
    this.id = id;
    this.path = path;
    this.builder = Material.builder(id);
  }

  /** By what a catalogue keeps it: the id, and the lot if one is named. */
  String key() {
    return builder.content.key();
  }

  /** Another material by its id, and its share where it is a part. */
  record Part(String id, @Nullable MassFractionRange share, String path) {}
}
