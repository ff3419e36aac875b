// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.drafts;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A draft in which one place is another: the path of the place, and the draft. */
record Damage(String path, Object damaged) {

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "-",
          "§§§",
          "7",
          "7 s",
          "7 kg",
          "-7 g",
          "-1 %",
          "1e400 g",
          "NaN",
          "1,5 g",
          "∞ ml",
          "7 g".repeat(1000),
          "\u0000",
          "null",
          "1:8",
          "0 ml",
          "-300 °C",
          "7 K");
  private static final List<Integer> NUMBERS =
      List.of(-1, 0, 1, Integer.MIN_VALUE, Integer.MAX_VALUE);

  /** Every place of a draft in turn, with everything that may be wrong there. */
  static List<Damage> of(Object value) {
    List<Damage> all = new ArrayList<>();
    if (value instanceof Record draft) {
      fields(draft, all);
    } else if (value instanceof List<?> list) {
      entries(list, all);
    } else if (value instanceof String) {
      TEXTS.forEach(text -> all.add(new Damage("", text)));
    } else if (value instanceof Integer) {
      NUMBERS.forEach(number -> all.add(new Damage("", number)));
    }
    return all;
  }

  private static void fields(Record draft, List<Damage> all) {
    RecordComponent[] components = draft.getClass().getRecordComponents();
    for (int i = 0; i < components.length; i++) {
      Object[] values = values(draft);
      String path = "/" + components[i].getName();
      Object before = values[i];
      values[i] = null;
      all.add(new Damage(path, make(draft, values)));
      for (Damage inner : of(before == null ? instead(components[i].getType()) : before)) {
        values[i] = inner.damaged;
        all.add(new Damage(path + inner.path, make(draft, values)));
      }
    }
  }

  /** What may stand where nothing does. */
  private static Object instead(Class<?> type) {
    return type == String.class ? "" : type == Integer.class ? (Object) 0 : Boolean.TRUE;
  }

  private static void entries(List<?> list, List<Damage> all) {
    List<Object> more = new ArrayList<>(list);
    more.add(null);
    all.add(new Damage("/" + list.size(), more));
    all.add(new Damage("", List.of()));
    for (int i = 0; i < list.size(); i++) {
      for (Damage inner : of(list.get(i))) {
        List<Object> other = new ArrayList<>(list);
        other.set(i, inner.damaged);
        all.add(new Damage("/" + i + inner.path, other));
      }
    }
  }

  /** The values of a draft, in the order of its components. */
  static Object[] values(Record draft) {
    return Arrays.stream(draft.getClass().getRecordComponents())
        .map(component -> value(draft, component))
        .toArray();
  }

  private static Object value(Record draft, RecordComponent component) {
    try {
      return component.getAccessor().invoke(draft);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  /** A draft like another with other values. */
  static Record make(Record draft, Object[] values) {
    try {
      return (Record) draft.getClass().getConstructors()[0].newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}
