// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * The limits that a heating is held against. They can be tightened, with a reason, and never
 * loosened; 85 °C (darkening) and 110 °C (fume) are facts of {@link TemperatureTable} and no
 * limits.
 *
 * <table>
 * <caption>The figures</caption>
 * <tr><th>figure</th><th>standard</th><th>stricter is</th></tr>
 * <tr><td>target</td><td>90.0 °C</td><td>lower</td></tr>
 * <tr><td>hard ceiling</td><td>93.3 °C</td><td>lower; the target is never above it</td></tr>
 * <tr><td>floor limit of a pot</td><td>110 °C</td><td>lower; its caution begins at the hard ceiling,
 * or at the floor limit where that is lower</td></tr>
 * <tr><td>margin below the lowest flash point</td><td>50 K</td><td>larger</td></tr>
 * <tr><td>least width of the working window</td><td>5 K</td><td>larger</td></tr>
 * </table>
 *
 * <p>For example, a school that works with low heat:
 *
 * <pre>{@code
 * HeatingLimits school = HeatingLimits.standard().withHardCeiling(ofCelsius(80));
 * school.target(); // 80.0 °C
 * HeatingRules rules = HeatingRules.standard().withLimits(school, "house rule 3");
 * rules.limits().reasons(HeatingLimits.Figure.HARD_CEILING); // [house rule 3]
 * HeatingLimits.forYoungest(13).hardCeiling(); // 75.0 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatingLimits {

  /** One figure of the limits. */
  public enum Figure {
    /** The target ceiling of the wax. */
    TARGET,
    /** The hard ceiling of the wax. */
    HARD_CEILING,
    /** The limit of a pot's floor. */
    FLOOR_LIMIT,
    /** The margin below the lowest flash point. */
    FLASH_MARGIN,
    /** The least width of the working window. */
    LEAST_WIDTH;

    /**
     * Returns the stable id.
     *
     * @return lower case and hyphens, for example {@code hard-ceiling}
     */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Returns its name.
     *
     * @param locale the reader's language: German for {@code de}, English for all others
     * @return for example "hard ceiling"
     */
    public String name(Locale locale) {
      return Messages.beside(HeatingLimits.class).text("limit." + id(), locale);
    }

    /** Larger is stricter. */
    private double strictness(HeatingLimits limits) {
      return switch (this) {
        case TARGET -> -limits.target.kelvin();
        case HARD_CEILING -> -limits.hardCeiling.kelvin();
        case FLOOR_LIMIT -> -limits.floorLimit.kelvin();
        case FLASH_MARGIN -> limits.flashMargin.kelvin();
        case LEAST_WIDTH -> limits.leastWidth.kelvin();
      };
    }

    private boolean isStricter(HeatingLimits one, HeatingLimits other) {
      return strictness(one) > strictness(other);
    }
  }

  private static final Comparator<Bilingual> BY_WORDS =
      Comparator.comparing(Bilingual::english).thenComparing(Bilingual::german);

  private static final HeatingLimits STANDARD =
      new HeatingLimits(
          TemperaturePoint.ofCelsius(90),
          TemperaturePoint.ofCelsius(93.3),
          TemperaturePoint.ofCelsius(110),
          TemperatureDifference.ofKelvin(50),
          TemperatureDifference.ofKelvin(5),
          Map.of());

  private final TemperaturePoint target;
  private final TemperaturePoint hardCeiling;
  private final TemperaturePoint floorLimit;
  private final TemperatureDifference flashMargin;
  private final TemperatureDifference leastWidth;
  private final Map<Figure, List<Bilingual>> reasons;

  /**
   * Returns the limits that hold for adults.
   *
   * @return the limits of the table above; common practice, the hard ceiling after health
   *     departments' 200 °F
   */
  public static HeatingLimits standard() {
    return STANDARD;
  }

  /**
   * Returns the limits for what the youngest who works handles: guidance and common practice, no
   * standard for hot wax is known.
   *
   * <p>Under 7 hand-warm wax of 40 °C at most, from 7 on 45 °C, from 12 on 75 °C, each as target
   * and hard ceiling; from 16 on those for adults. Under 3 nothing hot at all: a rule of its own
   * blocks.
   *
   * @param age the age in years, not negative
   * @return the limits, with their reason where they are tightened
   * @throws ProblemException if the age is negative
   */
  public static HeatingLimits forYoungest(int age) {
    return AgeBand.of(age).limits(age);
  }

  HeatingLimits(
      TemperaturePoint target,
      TemperaturePoint hardCeiling,
      TemperaturePoint floorLimit,
      TemperatureDifference flashMargin,
      TemperatureDifference leastWidth,
      Map<Figure, List<Bilingual>> reasons) {
    this.target = target;
    this.hardCeiling = hardCeiling;
    this.floorLimit = floorLimit;
    this.flashMargin = flashMargin;
    this.leastWidth = leastWidth;
    this.reasons = reasons;
  }

  /**
   * Returns the target ceiling: wax is kept up to and including this temperature.
   *
   * @return 90.0 °C or less
   */
  public TemperaturePoint target() {
    return target;
  }

  /**
   * Returns the hard ceiling of the wax, reached at its value.
   *
   * @return 93.3 °C or less, not below the target
   */
  public TemperaturePoint hardCeiling() {
    return hardCeiling;
  }

  /**
   * Returns the limit of a pot's floor, reached at its value.
   *
   * @return 110 °C or less
   */
  public TemperaturePoint floorLimit() {
    return floorLimit;
  }

  /**
   * Returns from which temperature on a pot's floor draws a caution.
   *
   * @return the hard ceiling, or the floor limit where that is lower
   */
  public TemperaturePoint floorCaution() {
    return floorLimit.isBelow(hardCeiling) ? floorLimit : hardCeiling;
  }

  /**
   * Returns how far below the lowest usable flash point wax must stay.
   *
   * @return 50 K or more
   */
  public TemperatureDifference flashMargin() {
    return flashMargin;
  }

  /**
   * Returns the least room between clear point with margin and target that can be worked in.
   *
   * @return 5 K or more
   */
  public TemperatureDifference leastWidth() {
    return leastWidth;
  }

  /**
   * Tells whether a figure is stricter than the standard one.
   *
   * @param figure the figure
   * @return whether it is tightened
   */
  public boolean isTightened(Figure figure) {
    return figure.isStricter(this, STANDARD);
  }

  /**
   * Returns why a figure is tightened.
   *
   * @param figure the figure
   * @return the reasons, in order of their English words; empty if it is not tightened or nobody
   *     said why
   */
  public List<Bilingual> reasons(Figure figure) {
    return reasons.getOrDefault(figure, List.of());
  }

  /**
   * Returns a copy with another target.
   *
   * @param limit the target, above 0 °C, not above the standard one nor above the hard ceiling
   * @return the new limits
   * @throws ProblemException if it is looser than that
   */
  public HeatingLimits withTarget(TemperaturePoint limit) {
    requireBelow(
        Figure.TARGET, limit, hardCeiling.isBelow(STANDARD.target) ? hardCeiling : STANDARD.target);
    return changed(limit, hardCeiling, floorLimit, flashMargin, leastWidth);
  }

  /**
   * Returns a copy with another hard ceiling; a target above it comes down with it.
   *
   * @param limit the hard ceiling, above 0 °C, not above the standard one
   * @return the new limits
   * @throws ProblemException if it is looser than that
   */
  public HeatingLimits withHardCeiling(TemperaturePoint limit) {
    requireBelow(Figure.HARD_CEILING, limit, STANDARD.hardCeiling);
    TemperaturePoint lower = target.isAbove(limit) ? limit : target;
    return changed(lower, limit, floorLimit, flashMargin, leastWidth);
  }

  /**
   * Returns a copy with another limit of a pot's floor.
   *
   * @param limit the limit, above 0 °C, not above the standard one
   * @return the new limits
   * @throws ProblemException if it is looser than that
   */
  public HeatingLimits withFloorLimit(TemperaturePoint limit) {
    requireBelow(Figure.FLOOR_LIMIT, limit, STANDARD.floorLimit);
    return changed(target, hardCeiling, limit, flashMargin, leastWidth);
  }

  /**
   * Returns a copy with another margin below the lowest flash point.
   *
   * @param margin the margin, not below the standard one, 1000 K at most
   * @return the new limits
   * @throws ProblemException if it is looser than that
   */
  public HeatingLimits withFlashMargin(TemperatureDifference margin) {
    requireWide(Figure.FLASH_MARGIN, margin, STANDARD.flashMargin, 1000);
    return changed(target, hardCeiling, floorLimit, margin, leastWidth);
  }

  /**
   * Returns a copy with another least width of the working window.
   *
   * @param width the width, not below the standard one, 200 K at most
   * @return the new limits
   * @throws ProblemException if it is looser than that
   */
  public HeatingLimits withLeastWidth(TemperatureDifference width) {
    requireWide(Figure.LEAST_WIDTH, width, STANDARD.leastWidth, 200);
    return changed(target, hardCeiling, floorLimit, flashMargin, width);
  }

  /** A figure that changes drops the reason of the old one. */
  private HeatingLimits changed(
      TemperaturePoint newTarget,
      TemperaturePoint newCeiling,
      TemperaturePoint newFloor,
      TemperatureDifference newMargin,
      TemperatureDifference newWidth) {
    HeatingLimits plain =
        new HeatingLimits(newTarget, newCeiling, newFloor, newMargin, newWidth, Map.of());
    Map<Figure, List<Bilingual>> kept = new EnumMap<>(Figure.class);
    reasons.forEach(
        (figure, why) -> {
          if (!figure.isStricter(this, plain) && !figure.isStricter(plain, this)) {
            kept.put(figure, why);
          }
        });
    return plain.withReasons(kept);
  }

  private static void requireBelow(Figure figure, TemperaturePoint found, TemperaturePoint most) {
    boolean fits = found.celsius() > 0 && !found.isAbove(most);
    Bilingual to = Bilingual.of(most);
    Bilingual below =
        new Bilingual("above 0 °C, to " + to.english(), "über 0 °C, bis " + to.german());
    require(fits, figure, Bilingual.of(found), below);
  }

  private static void requireWide(
      Figure figure, TemperatureDifference found, TemperatureDifference least, int mostKelvin) {
    boolean fits = found.kelvin() >= least.kelvin() && found.kelvin() <= mostKelvin;
    Bilingual range = Bilingual.range(kelvin(least), Bilingual.of(mostKelvin).plus(" K"));
    require(fits, figure, kelvin(found), range);
  }

  private static void require(boolean fits, Figure figure, Bilingual found, Bilingual allowed) {
    if (!fits) {
      throw new ProblemException(
          Problem.of(HeatingProblem.LIMIT_LOOSER, found)
              .with("figure", figure.id())
              .with("allowed", allowed));
    }
  }

  /**
   * Returns a copy in which each tightened figure without a reason has one.
   *
   * @param reason why
   * @return the new limits
   * @throws ProblemException if the reason is blank
   */
  public HeatingLimits because(Bilingual reason) {
    CHECK.named(reason.english(), "reason");
    CHECK.named(reason.german(), "reason");
    Map<Figure, List<Bilingual>> more = new EnumMap<>(Figure.class);
    more.putAll(reasons);
    for (Figure figure : Figure.values()) {
      if (isTightened(figure)) {
        more.putIfAbsent(figure, List.of(reason));
      }
    }
    return withReasons(more);
  }

  private HeatingLimits withReasons(Map<Figure, List<Bilingual>> more) {
    return new HeatingLimits(
        target,
        hardCeiling,
        floorLimit,
        flashMargin,
        leastWidth,
        Collections.unmodifiableMap(more));
  }

  /**
   * Returns the stricter of each figure, with its reasons; whatever the order.
   *
   * @param other the other limits
   * @return the new limits
   */
  public HeatingLimits tightened(HeatingLimits other) {
    if (other.equals(this) || other.equals(STANDARD)) {
      return this;
    } else if (equals(STANDARD)) {
      return other;
    }
    return new HeatingLimits(
            stricter(Figure.TARGET, other).target,
            stricter(Figure.HARD_CEILING, other).hardCeiling,
            stricter(Figure.FLOOR_LIMIT, other).floorLimit,
            stricter(Figure.FLASH_MARGIN, other).flashMargin,
            stricter(Figure.LEAST_WIDTH, other).leastWidth,
            Map.of())
        .withReasons(reasonsOfStricter(other));
  }

  private HeatingLimits stricter(Figure figure, HeatingLimits other) {
    return figure.isStricter(other, this) ? other : this;
  }

  private Map<Figure, List<Bilingual>> reasonsOfStricter(HeatingLimits other) {
    Map<Figure, List<Bilingual>> kept = new EnumMap<>(Figure.class);
    for (Figure figure : Figure.values()) {
      TreeSet<Bilingual> both = new TreeSet<>(BY_WORDS);
      both.addAll(figure.isStricter(other, this) ? List.of() : reasons(figure));
      both.addAll(figure.isStricter(this, other) ? List.of() : other.reasons(figure));
      if (!both.isEmpty()) {
        kept.put(figure, List.copyOf(new ArrayList<>(both)));
      }
    }
    return kept;
  }

  /** Reports each figure of these limits that is looser than the other's. */
  List<Problem> looserThan(HeatingLimits own) {
    List<Problem> problems = new ArrayList<>();
    for (Figure figure : Figure.values()) {
      if (figure.isStricter(own, this)) {
        problems.add(
            Problem.of(HeatingProblem.LIMIT_LOOSER, shown(figure))
                .with("figure", figure.id())
                .with("allowed", own.shown(figure)));
      }
    }
    return problems;
  }

  private Bilingual shown(Figure figure) {
    return switch (figure) {
      case TARGET -> Bilingual.of(target);
      case HARD_CEILING -> Bilingual.of(hardCeiling);
      case FLOOR_LIMIT -> Bilingual.of(floorLimit);
      case FLASH_MARGIN -> kelvin(flashMargin);
      case LEAST_WIDTH -> kelvin(leastWidth);
    };
  }

  private static Bilingual kelvin(TemperatureDifference difference) {
    return Bilingual.of(difference.kelvin()).plus(" K");
  }

  /**
   * Compares all figures and their reasons.
   *
   * @param other the other object
   * @return whether both are the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatingLimits that
        && target.equals(that.target)
        && hardCeiling.equals(that.hardCeiling)
        && floorLimit.equals(that.floorLimit)
        && flashMargin.equals(that.flashMargin)
        && leastWidth.equals(that.leastWidth)
        && reasons.equals(that.reasons);
  }

  @Override
  public int hashCode() {
    return Objects.hash(target, hardCeiling, floorLimit, flashMargin, leastWidth, reasons);
  }

  /**
   * Returns all figures, locale-free.
   *
   * @return for example "target 90.0 °C, hard ceiling 93.3 °C, floor limit 110.0 °C, …"
   */
  @Override
  public String toString() {
    return "target "
        + target
        + ", hard ceiling "
        + hardCeiling
        + ", floor limit "
        + floorLimit
        + ", flash margin "
        + flashMargin
        + ", least width "
        + leastWidth;
  }
}
