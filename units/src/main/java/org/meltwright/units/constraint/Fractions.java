// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintDeclarationException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.VolumeFraction;

/** The fractions of an object, read from its properties. */
final class Fractions {

  private static final double TOLERANCE = 1e-9;

  private final List<String> names;
  private boolean known = true;
  private boolean byMass;
  private boolean byVolume;
  private double sum;

  static Fractions of(Object object, FractionsSumToOne declared, QuantityParser parser) {
    List<String> names =
        declared.properties().length == 0
            ? components(object.getClass())
            : Arrays.asList(declared.properties());
    Fractions fractions = new Fractions(names);
    for (String name : names) {
      fractions.add(name, property(object, name), declared.basis(), parser);
    }
    return fractions;
  }

  private Fractions(List<String> names) {
    this.names = names;
  }

  private static List<String> components(Class<?> type) {
    List<String> names = new ArrayList<>();
    if (type.isRecord()) {
      for (RecordComponent component : type.getRecordComponents()) {
        if (component.getType() == MassFraction.class
            || component.getType() == VolumeFraction.class) {
          names.add(component.getName());
        }
      }
    }
    if (names.isEmpty()) {
      throw new ConstraintDeclarationException("name the fractions of " + type.getName());
    }
    return names;
  }

  private static @Nullable Object property(Object object, String name) {
    try {
      Method accessor = accessor(object.getClass(), name);
      accessor.trySetAccessible();
      return accessor.invoke(object);
    } catch (ReflectiveOperationException e) {
      throw new ConstraintDeclarationException(
          "cannot read " + name + " of " + object.getClass().getName(), e);
    }
  }

  private static Method accessor(Class<?> type, String name) throws NoSuchMethodException {
    try {
      return type.getMethod(name);
    } catch (NoSuchMethodException e) {
      String capital = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
      return type.getMethod("get" + capital);
    }
  }

  private void add(String name, @Nullable Object value, TextKind basis, QuantityParser parser) {
    Object fraction = value instanceof CharSequence text ? read(text, basis, parser) : value;
    if (fraction == null) {
      known = false;
    } else if (fraction instanceof MassFraction mass) {
      byMass = true;
      sum += mass.value();
    } else if (fraction instanceof VolumeFraction volume) {
      byVolume = true;
      sum += volume.value();
    } else {
      throw new ConstraintDeclarationException(name + " is not a fraction");
    }
  }

  private static @Nullable Object read(CharSequence text, TextKind basis, QuantityParser parser) {
    try {
      return basis.read(parser, text);
    } catch (ProblemException e) {
      return null;
    }
  }

  /** What is wrong with the sum; nothing where not all fractions are there to be judged. */
  Optional<Problem> problem() {
    if (!known) {
      return Optional.empty();
    }
    if (byMass && byVolume) {
      return Optional.of(Problem.of(ConstraintProblem.MIXED_BASES, names()));
    }
    return Math.abs(sum - 1) <= TOLERANCE
        ? Optional.empty()
        : Optional.of(
            Problem.of(ConstraintProblem.SUM_NOT_ONE, sumInPercent()).with("names", names()));
  }

  /** Digits enough to see why the sum is not 100 %. */
  private Bilingual sumInPercent() {
    double percent =
        BigDecimal.valueOf(sum).movePointRight(2).round(new MathContext(12)).doubleValue();
    return Bilingual.of(percent).plus(" %");
  }

  private String names() {
    return String.join(", ", names);
  }
}
