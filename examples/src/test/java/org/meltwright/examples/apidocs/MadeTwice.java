// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.meltwright.units.ProblemException;

/**
 * Two of everything, made by the same code run twice: held to be equal, and all that they tell too.
 */
final class MadeTwice {

  /** How many of one class are looked into; more of the same show nothing new. */
  private static final int MOST_OF_A_CLASS = 40;

  private final Predicate<Class<?>> isComparedByIdentity;
  private final Map<Class<?>, List<Object>> met = new HashMap<>();
  private final Map<Class<?>, String> unequal = new HashMap<>();

  MadeTwice(Predicate<Class<?>> isComparedByIdentity) {
    this.isComparedByIdentity = isComparedByIdentity;
  }

  /** The classes that were met, and some of each. */
  Map<Class<?>, List<Object>> met() {
    return met;
  }

  /** The first of each class whose two were not equal, with what was wrong. */
  Map<Class<?>, String> unequal() {
    return unequal;
  }

  void compare(String path, Object one, Object other) {
    if (one instanceof Optional<?> found && other instanceof Optional<?> again) {
      compareAll(path, found.stream().toList(), again.stream().toList());
    } else if (one instanceof List<?> all && other instanceof List<?> others) {
      compareAll(path, all, others);
    } else if (one instanceof Map<?, ?> map && other instanceof Map<?, ?> again) {
      compareAll(path, List.copyOf(map.values()), List.copyOf(again.values()));
      assertThat(again.keySet()).as(path).isEqualTo(map.keySet());
    } else if (one != null && isOurs(one.getClass()) && isNew(one)) {
      compareValues(path, one, other);
    }
  }

  private void compareAll(String path, List<?> ones, List<?> others) {
    assertThat(others).as(path).hasSameSizeAs(ones);
    for (int i = 0; i < ones.size(); i++) {
      compare(path + "[" + i + "]", ones.get(i), others.get(i));
    }
  }

  private static boolean isOurs(Class<?> type) {
    return type.getName().startsWith("org.meltwright.") && !type.isEnum();
  }

  private boolean isNew(Object one) {
    List<Object> some = met.computeIfAbsent(one.getClass(), c -> new ArrayList<>());
    if (some.size() >= MOST_OF_A_CLASS) {
      return false;
    }
    some.add(one);
    return true;
  }

  private void compareValues(String path, Object one, Object other) {
    if (!isComparedByIdentity.test(one.getClass())) {
      try {
        assertThat(other).as(path).isEqualTo(one).hasSameHashCodeAs(one).hasToString("" + one);
        assertThat("" + one).as(path).isNotBlank().doesNotContainPattern("\\w@[0-9a-f]{5,}");
      } catch (AssertionError e) {
        unequal.putIfAbsent(one.getClass(), e.getMessage());
      }
    }
    for (Method asked : asked(one.getClass())) {
      compare(path + "." + asked.getName(), answer(asked, one), answer(asked, other));
    }
  }

  /** What a value tells without being told more. */
  private static List<Method> asked(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(m -> m.getParameterCount() == 0 && !Modifier.isStatic(m.getModifiers()))
        .filter(m -> isOurs(m.getDeclaringClass()) && Modifier.isPublic(type.getModifiers()))
        .filter(m -> !Set.of("toString", "hashCode").contains(m.getName()))
        .sorted(Comparator.comparing(Method::getName))
        .toList();
  }

  /** What it answers; a problem if it cannot. */
  private static Object answer(Method asked, Object of) {
    try {
      return asked.invoke(of);
    } catch (InvocationTargetException e) {
      assertThat(e.getCause()).as(asked.toString()).isInstanceOf(ProblemException.class);
      return e.getCause().getMessage();
    } catch (IllegalAccessException e) {
      throw new AssertionError(asked.toString(), e);
    }
  }
}
