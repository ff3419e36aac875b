// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** All holders' units, asked one after the other, so that the later ones load only when needed. */
final class UnitTables {

  private UnitTables() {}

  /** The unit of a spelling in the tables' form, whatever its case, hyphens and dots. */
  static @Nullable UnitDefinition<?> find(String key) {
    UnitDefinition<?> found = listed(key);
    return found != null || key.isEmpty() ? found : UnitSpelling.find(key);
  }

  /** The unit of a spelling that stands in a table as it is. */
  static @Nullable UnitDefinition<?> listed(String key) {
    UnitDefinition<?> found = MetricUnits.TABLE.find(key);
    if (found == null) {
      found = UsCustomaryUnits.TABLE.find(key);
    }
    return found == null ? ImperialUnits.TABLE.find(key) : found;
  }

  /** The units that share a bare name such as "cup", in lower case; empty if it is none. */
  static List<UnitDefinition<?>> choices(String name) {
    List<UnitDefinition<?>> choices = new ArrayList<>();
    tables().forEach(table -> choices.addAll(table.choices(name)));
    return choices;
  }

  /** All units, metric first. */
  static List<UnitDefinition<?>> all() {
    List<UnitDefinition<?>> all = new ArrayList<>();
    tables().forEach(table -> table.definitions().forEach(all::add));
    return all;
  }

  static Stream<UnitTable> tables() {
    return Stream.of(MetricUnits.TABLE, UsCustomaryUnits.TABLE, ImperialUnits.TABLE);
  }
}
