// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * Copies of a value, each with one field changed: no guard is asked, so that a field is seen alone.
 * A record that leaves its equality to the language compares all it is made of and is not copied.
 */
final class OneChanged {

  private static final int DEEPEST = 2;

  /** Two of each, so that one of them is another. */
  private static final Map<Class<?>, List<Object>> BY_TYPE =
      Map.ofEntries(
          Map.entry(double.class, List.of(1.0, 2.0)),
          Map.entry(Double.class, List.of(1.0, 2.0)),
          Map.entry(int.class, List.of(1, 2)),
          Map.entry(long.class, List.of(1L, 2L)),
          Map.entry(String.class, List.of("one", "another")),
          Map.entry(OptionalDouble.class, List.of(OptionalDouble.empty(), OptionalDouble.of(1))),
          Map.entry(Optional.class, List.of(Optional.empty(), Optional.of("one"))),
          Map.entry(List.class, List.of(List.of(), List.of("one"))),
          Map.entry(Set.class, List.of(Set.of(), Set.of("one"))),
          Map.entry(Map.class, List.of(Map.of(), Map.of("one", "one"))),
          Map.entry(BigDecimal.class, List.of(BigDecimal.ONE, BigDecimal.TEN)),
          Map.entry(LocalDate.class, List.of(LocalDate.MIN, LocalDate.EPOCH)),
          Map.entry(Instant.class, List.of(Instant.MIN, Instant.EPOCH)),
          Map.entry(Duration.class, List.of(Duration.ZERO, Duration.ofDays(1))),
          Map.entry(CurrencyUnit.class, List.of(CurrencyUnit.EUR, CurrencyUnit.GBP)));

  private final Map<Class<?>, List<Object>> known;

  /** Others of a kind are taken from the values known. */
  OneChanged(Map<Class<?>, List<Object>> known) {
    this.known = known;
  }

  static List<Field> fields(Class<?> type) {
    List<Field> fields = new ArrayList<>();
    for (Class<?> c = type; c != Object.class; c = c.getSuperclass()) {
      fields.addAll(Arrays.asList(c.getDeclaredFields()));
    }
    fields.removeIf(f -> Modifier.isStatic(f.getModifiers()) || f.isSynthetic());
    fields.forEach(f -> f.setAccessible(true));
    return fields;
  }

  /** Whether no value equals its copy with another content; empty if none could be copied. */
  Optional<Boolean> tells(List<Object> values, Field field) throws ReflectiveOperationException {
    Optional<Boolean> tells = Optional.empty();
    for (Object value : values) {
      Optional<Object> copy = copy(value, field, DEEPEST);
      if (copy.isPresent()) {
        boolean equal = areEqual(value, copy.get());
        tells = Optional.of(!equal && tells.orElse(true));
      }
    }
    return tells;
  }

  /** The value with another content of one field; empty if none is known. */
  private Optional<Object> copy(Object value, Field field, int deep)
      throws ReflectiveOperationException {
    Object now = field.get(value);
    Optional<Object> other =
        Stream.of(others(value.getClass(), field), made(field.getType(), now), deeper(now, deep))
            .flatMap(s -> s)
            .filter(o -> o != null && !areEqual(o, now))
            .findFirst();
    return other.isEmpty() ? other : Optional.of(with(value, field, other.get()));
  }

  /** Whether two are equal; a copy that no guard would let through may fail to tell, and is not. */
  private static boolean areEqual(@Nullable Object one, @Nullable Object other) {
    try {
      return Objects.deepEquals(one, other);
    } catch (IndexOutOfBoundsException | ClassCastException e) {
      return false;
    }
  }

  /** What the field holds in others, and others of the type that it holds. */
  private Stream<Object> others(Class<?> type, Field field) throws ReflectiveOperationException {
    List<Object> found = new ArrayList<>();
    for (Object one : known.getOrDefault(type, List.of())) {
      found.add(field.get(one));
    }
    known.entrySet().stream()
        .filter(
            e -> field.getType() != Object.class && field.getType().isAssignableFrom(e.getKey()))
        .forEach(e -> found.addAll(e.getValue()));
    return found.stream();
  }

  /** What differs from a number, a text, a list or a choice. */
  private static Stream<Object> made(Class<?> type, @Nullable Object now) {
    List<Object> others = new ArrayList<>(BY_TYPE.getOrDefault(type, List.of()));
    if (now instanceof Boolean is) {
      others.add(!is);
    } else if (type.isEnum()) {
      others.addAll(List.of(type.getEnumConstants()));
    } else if (now instanceof double[] numbers && numbers.length > 0) {
      others.add(Arrays.stream(numbers).map(d -> d + 1).toArray());
    }
    return others.stream();
  }

  /** The content itself with a field of its own changed. */
  private Stream<Object> deeper(@Nullable Object now, int deep)
      throws ReflectiveOperationException {
    List<Object> found = new ArrayList<>();
    if (deep > 0 && now != null && isPlain(now.getClass())) {
      for (Field inner : fields(now.getClass())) {
        copy(now, inner, deep - 1).ifPresent(found::add);
      }
    }
    return found.stream();
  }

  private static boolean isPlain(Class<?> type) {
    return type.getName().startsWith("org.meltwright.")
        && !type.isRecord()
        && !type.isEnum()
        && !type.isHidden();
  }

  private static Object with(Object value, Field changed, Object content)
      throws ReflectiveOperationException {
    Object copy = bare(value.getClass()).newInstance();
    for (Field field : fields(value.getClass())) {
      field.set(copy, field.equals(changed) ? content : field.get(value));
    }
    return copy;
  }

  /** A constructor that runs nothing, as for what is read from a stream of bytes. */
  private static Constructor<?> bare(Class<?> type) throws ReflectiveOperationException {
    Class<?> factory = Class.forName("sun.reflect.ReflectionFactory");
    Object one = factory.getMethod("getReflectionFactory").invoke(null);
    return (Constructor<?>)
        factory
            .getMethod("newConstructorForSerialization", Class.class, Constructor.class)
            .invoke(one, type, Object.class.getDeclaredConstructor());
  }
}
