// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;

/** The general limits of one class, as a rule file states them. */
final class ClassRule {

  /** How the shares of several ingredients combine. */
  enum Mode {
    ADDITIVE,
    HIGHEST,
    ACUTE,
    FLAMMABLE,
    TEST;

    /** Whether a class can be reckoned this way. */
    boolean fits(HazardClass c) {
      return switch (this) {
        case ACUTE -> UptakeForm.of(c).findAny().isPresent();
        case FLAMMABLE -> c == HazardClass.FLAMMABLE_LIQUID;
        case TEST -> !c.isComputed();
        case ADDITIVE, HIGHEST -> !ACUTE.fits(c) && !FLAMMABLE.fits(c) && !TEST.fits(c);
      };
    }

    static Optional<Mode> find(String id) {
      return Stream.of(values())
          .filter(m -> m.name().toLowerCase(Locale.ROOT).equals(id))
          .findFirst();
    }
  }

  private final HazardClass hazardClass;
  private final Mode mode;
  private final List<Category> levels;
  private final double openFromPercent;
  private final String paragraph;
  private final Knowledge knowledge;
  private final Map<LimitKey, Double> numbers = new HashMap<>();

  ClassRule(RuleRow row) {
    hazardClass = HazardClass.ofId(row.cell(0));
    mode = Mode.find(row.cell(1)).orElseThrow();
    levels = TextTable.items(row.cell(2), ",").stream().map(Category::of).toList();
    openFromPercent = row.number(3);
    paragraph = row.paragraph();
    knowledge = row.knowledge();
  }

  void add(RuleRow row) {
    numbers.put(row.limitKey(), Double.parseDouble(row.lastCell()));
  }

  HazardClass hazardClass() {
    return hazardClass;
  }

  Mode mode() {
    return mode;
  }

  boolean isAdditive() {
    return mode == Mode.ADDITIVE;
  }

  /** Whether only a test of the mixture can tell. */
  boolean needsTest() {
    return mode == Mode.TEST;
  }

  /** The categories, most severe first. */
  List<Category> levels() {
    return levels;
  }

  int rank(Category level) {
    return levels.indexOf(level);
  }

  /**
   * A category as these rules know it: 2A and 2B of the UN system are 2 where they are not known.
   */
  Category asKnown(Category category) {
    if (rank(category) >= 0) {
      return category;
    }
    return switch (category) {
      case TWO_A, TWO_B -> Category.TWO;
      case TWO -> rank(Category.TWO_A) >= 0 ? Category.TWO_A : Category.TWO;
      default -> category;
    };
  }

  double openFromPercent() {
    return openFromPercent;
  }

  String paragraph() {
    return paragraph;
  }

  Knowledge knowledge() {
    return knowledge;
  }

  /** The general limit of an ingredient of a category for reaching a level, in per cent. */
  OptionalDouble limit(Category category, Category level, @Nullable PhysicalState state) {
    OptionalDouble ofGas = get(LimitKey.Kind.LIMIT_GAS, category, level);
    return state == PhysicalState.GAS && ofGas.isPresent()
        ? ofGas
        : get(LimitKey.Kind.LIMIT, category, level);
  }

  OptionalDouble nonAdditive(Category category, Category level) {
    return get(LimitKey.Kind.NON_ADDITIVE, category, level);
  }

  double cutOff(Category category) {
    return get(LimitKey.Kind.CUT_OFF, category, category).orElse(0);
  }

  OptionalDouble elicitation(Category category) {
    return get(LimitKey.Kind.ELICITATION, category, category);
  }

  OptionalDouble get(LimitKey.Kind kind, Category of) {
    return get(kind, of, of);
  }

  private OptionalDouble get(LimitKey.Kind kind, Category of, Category reached) {
    Double value = numbers.get(new LimitKey(kind, of, reached));
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
