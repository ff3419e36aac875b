// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.heating.PlainPot.Heat;
import org.meltwright.safety.heating.PlainPot.Method;

/**
 * The one temperature table and its limits a second time: written from the policy on plain numbers,
 * in °C and K, and sharing no code with the library.
 */
record TableModel(PlainPot pot, TableModel.Limits limits) {

  /** The figures of the limits. */
  record Limits(double target, double ceiling, double floor, double margin, double width) {

    static final Limits STANDARD = new Limits(90, 93.3, 110, 50, 5);

    /** What the youngest handles: under 7 hand-warm, under 12 softened, under 16 low heat. */
    Limits forYoungest(@Nullable Integer age, boolean adultsAlone) {
      if (age == null || adultsAlone || age >= 16) {
        return this;
      }
      double most = age < 7 ? 40 : age < 12 ? 45 : 75;
      double room = Math.max(0, width - Math.max(0, target - most)); // low heat is what it asks for
      return new Limits(Math.min(target, most), Math.min(ceiling, most), floor, margin, room);
    }

    double floorCaution() {
      return Math.min(ceiling, floor);
    }

    String words() {
      return target + " " + ceiling + " " + floor + " " + margin + " " + width;
    }
  }

  /**
   * What is to be said.
   *
   * @param found the rules of the table that find something
   * @param open the rules of the table that could not be judged in full
   * @param wax the temperature that the table binds
   * @param estimated whether it is an estimate
   * @param floor the floor of the pot
   * @param floorKnown whether it may not be hotter
   */
  record Answer(
      Set<String> found,
      Set<String> open,
      @Nullable Double wax,
      boolean estimated,
      @Nullable Double floor,
      boolean floorKnown) {

    /** With temperatures to a billionth of a kelvin: sums may end differently in the last bit. */
    Answer rounded() {
      return new Answer(found, open, rounded(wax), estimated, rounded(floor), floorKnown);
    }

    private static @Nullable Double rounded(@Nullable Double celsius) {
      return celsius == null ? null : (Double) (Math.rint(celsius * 1e9) / 1e9);
    }
  }

  /** The rules that this model restates: severity, and whether they block. */
  enum Rule {
    DARKENING("NOTICE", false),
    ABOVE_TARGET("CAUTION", false),
    HARD_CEILING("DANGER", true),
    FUME("DANGER", true),
    FLASH_MARGIN("DANGER", true),
    POT_FLOOR("CAUTION", false),
    POT_FLOOR_HOT("DANGER", true),
    ESTIMATED_TEMPERATURE("CAUTION", false),
    MISSING_TEMPERATURE("WARNING", false),
    WATER_BATH("CAUTION", false),
    READING_NOT_MOLTEN("CAUTION", false),
    READING_OTHER_SCALE("NOTICE", false),
    THERMOMETER_TOLERANCE("NOTICE", false),
    CEILING_WITHIN_TOLERANCE("WARNING", false),
    COLDER_THAN_WINDOW("NOTICE", false),
    WINDOW_CLOSED("CAUTION", true),
    WINDOW_MAY_BE_CLOSED("CAUTION", false),
    FLAME_UNDER_POT("DANGER", true),
    HOT_AIR_AT_POT("DANGER", true),
    OPEN_COIL_OR_GAS("WARNING", true),
    CHILDREN_NOTHING_HOT("DANGER", true);

    private final String severity;
    private final boolean blocks;

    Rule(String severity, boolean blocks) {
      this.severity = severity;
      this.blocks = blocks;
    }

    String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Rule of(String id) {
      return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    String rank() {
      return severity + (blocks ? " blocks" : "");
    }
  }

  static TableModel of(PlainPot pot, Limits own) {
    return new TableModel(pot, own.forYoungest(pot.age(), pot.adultsAlone()));
  }

  /** A limit is reached at its value, within a billionth of its kelvins. */
  static boolean reaches(double celsius, double limit) {
    return celsius + 273.15 >= (limit + 273.15) * (1 - 1e-9);
  }

  /** A limit that begins beyond its value is passed by more than a billionth of its kelvins. */
  static boolean exceeds(double celsius, double limit) {
    return celsius + 273.15 > (limit + 273.15) * (1 + 1e-9);
  }

  // --- what the readings are worth

  /** The lowest reading of the molten mix; null where any reading stands. */
  @Nullable Double moltenBound() {
    return switch (pot.mix().melting()) {
      case NO_WAX -> null;
      case UNKNOWN -> 40.0;
      case KNOWN -> pot.mix().clear().low() - 10;
      case OILY -> pot.mix().clear() == null ? 40 : Math.min(40, pot.mix().clear().low() - 10);
    };
  }

  private boolean counts(double reading) {
    return exceeds(reading, limits.target())
        || reaches(reading, limits.ceiling())
        || moltenBound() == null
        || reaches(reading, moltenBound());
  }

  private @Nullable Double molten() {
    return pot.liquid() != null && counts(pot.liquid()) ? pot.liquid() : null;
  }

  /** Whether the number would fit on the other scale. */
  private boolean fitsOtherScale() {
    double number = pot.liquid();
    double least = moltenBound() == null ? 40 : moltenBound();
    if (reaches(number, limits.ceiling())) {
      double read = (number - 32) * 5 / 9;
      return reaches(read, least) && !reaches(read, limits.ceiling());
    }
    return !reaches(number, least) && reaches(number * 9 / 5 + 32, least);
  }

  private boolean reliable() {
    return pot.surface() != null && (pot.method() == Method.PROBE || pot.method() == Method.MATT);
  }

  private @Nullable Double stated() {
    return pot.set() == null || pot.overshoot() == null ? null : pot.set() + pot.overshoot();
  }

  /** Nothing under the pot states degrees: its numbers share out time. */
  private boolean hasDegrees() {
    return pot.heat() != Heat.NUMBERS;
  }

  private static @Nullable Double max(@Nullable Double... values) {
    Double max = null;
    for (Double value : values) {
      max = value != null && (max == null || value > max) ? value : max;
    }
    return max;
  }

  // --- floor and wax

  /** Where nobody says what heats, a surface that was read counts as the floor. */
  private boolean hasFloor() {
    return pot.heat() != Heat.PALETTE && pot.heat() != Heat.BATH;
  }

  /** What is switched high and low, or on and off, is not asked for degrees. */
  private boolean hasDial() {
    return switch (pot.heat()) {
      case UNSTATED, COOKER, TORCH, RING, LAMP -> false;
      default -> true;
    };
  }

  /**
   * The higher of what is stated and what was read; a reading that cannot be trusted counts
   * upwards.
   */
  private @Nullable Double floor() {
    return hasFloor() ? max(pot.set(), stated(), pot.surface()) : null;
  }

  /** Known: by set point and overshoot, or by a reliable reading that neither contradicts. */
  private boolean isFloorKnown() {
    if (floor() == null || !hasDegrees()) {
      return false;
    }
    boolean read = pot.surface() != null && pot.surface().equals(floor());
    return read ? reliable() : stated() != null;
  }

  /** The temperature that the table binds. */
  private @Nullable Double wax() {
    return switch (pot.heat()) {
      case BATH -> molten();
      case PALETTE -> max(pot.set(), stated(), pot.surface(), molten());
      default -> isBelieved() ? molten() : max(waxByPlate(), molten());
    };
  }

  /** A reading that counts at a ceiling and is too cold for molten wax counts upwards only. */
  private boolean isBelieved() {
    return molten() != null && (moltenBound() == null || reaches(molten(), moltenBound()));
  }

  private @Nullable Double waxByPlate() {
    Double plate = max(pot.set(), pot.surface());
    return plate != null && pot.offset() != null ? (Double) (plate + pot.offset()) : floor();
  }

  private boolean isMeasured() {
    return pot.heat() == Heat.PALETTE ? isPaletteKnown() : isBelieved();
  }

  /**
   * A reliable reading over one cycle, neither below a bare set point nor 15 K below one with
   * overshoot.
   */
  private boolean isPaletteKnown() {
    if (!reliable() || pot.set() == null) {
      return reliable();
    }
    double below = pot.set() - pot.surface();
    return below <= (pot.overshoot() == null ? 0 : 15);
  }

  // --- the answer

  Answer answer() {
    Set<String> found = new TreeSet<>();
    Set<String> open = new TreeSet<>();
    for (Rule rule : Rule.values()) {
      if (isFound(rule)) {
        found.add(rule.id());
      } else if (isOpen(rule)) {
        open.add(rule.id());
      }
    }
    if (pot.mix().burnsWithoutFigure()) {
      open.add(Rule.FLASH_MARGIN.id());
    }
    return new Answer(found, open, wax(), wax() != null && !isMeasured(), floor(), isFloorKnown());
  }

  private boolean isFound(Rule rule) {
    return switch (rule) {
      case DARKENING -> wax() != null && exceeds(wax(), 85);
      case ABOVE_TARGET -> wax() != null && exceeds(wax(), limits.target()) && !isAtCeiling();
      case HARD_CEILING -> isAtCeiling();
      case FUME -> wax() != null && reaches(wax(), 110);
      case FLASH_MARGIN -> isAtFlashMargin();
      case POT_FLOOR -> isFloorTooHot() && !reaches(floor(), limits.floor());
      case POT_FLOOR_HOT -> floor() != null && reaches(floor(), limits.floor());
      case ESTIMATED_TEMPERATURE -> wax() != null && !isMeasured();
      case MISSING_TEMPERATURE -> isMissing();
      case WATER_BATH -> pot.heat() == Heat.BATH && !isBelieved();
      case READING_NOT_MOLTEN -> pot.liquid() != null && molten() == null;
      case READING_OTHER_SCALE ->
          molten() != null && reaches(pot.liquid(), limits.ceiling()) && fitsOtherScale();
      case THERMOMETER_TOLERANCE ->
          (hides(Rule.ABOVE_TARGET) || hides(Rule.FUME)) && !hides(Rule.HARD_CEILING);
      case CEILING_WITHIN_TOLERANCE -> hides(Rule.HARD_CEILING);
      case COLDER_THAN_WINDOW ->
          wax() != null
              && pot.mix().isBrushed()
              && !isFloorTooHot()
              && hasWindow()
              && !isShut()
              && wax() < pot.mix().clear().low() + 10;
      case WINDOW_CLOSED -> hasWindow() && isShut() && !pot.mix().manyGrades();
      case WINDOW_MAY_BE_CLOSED ->
          hasWindow()
              && (isShut() ? pot.mix().manyGrades() : !leavesRoom(pot.mix().clear().high()));
      case HOT_AIR_AT_POT -> pot.heat() == Heat.GUN;
      case FLAME_UNDER_POT -> pot.heat() == Heat.TORCH;
      case OPEN_COIL_OR_GAS -> pot.heat() == Heat.RING;
      case CHILDREN_NOTHING_HOT -> pot.age() != null && pot.age() < 3;
    };
  }

  /** What is not found stays open where the wax or the floor may be hotter, or nothing tells it. */
  private boolean isOpen(Rule rule) {
    return switch (rule) {
      case DARKENING, HARD_CEILING, FUME -> !isMeasured() || wax() == null;
      case FLASH_MARGIN -> wax() == null || (!isMeasured() && pot.mix().flash() != null);
      case ABOVE_TARGET -> !isAtCeiling() && (!isMeasured() || wax() == null);
      case COLDER_THAN_WINDOW ->
          pot.mix().isBrushed() && !isFloorTooHot() && (!isMeasured() || wax() == null);
      case ESTIMATED_TEMPERATURE -> wax() == null && !isMissing();
      case POT_FLOOR -> isFloorOpen() && !isFound(Rule.POT_FLOOR_HOT);
      case POT_FLOOR_HOT -> isFloorOpen();
      case THERMOMETER_TOLERANCE, CEILING_WITHIN_TOLERANCE -> !isMeasured() || wax() == null;
      default -> false;
    };
  }

  /** Where nobody says what heats, or it has no dial, that is not asked. */
  private boolean isFloorOpen() {
    return hasFloor() && !isFloorKnown() && (floor() != null || hasDial());
  }

  private boolean isFloorTooHot() {
    return floor() != null && reaches(floor(), limits.floorCaution());
  }

  private boolean isAtCeiling() {
    return wax() != null && reaches(wax(), limits.ceiling());
  }

  private boolean isAtFlashMargin() {
    Double flash = pot.mix().flash();
    return wax() != null && flash != null && reaches(wax(), flash - limits.margin());
  }

  /** With numbers instead of degrees only a probe in the wax counts. */
  private boolean isMissing() {
    boolean hasItsOwnRule =
        switch (pot.heat()) {
          case BATH, NUMBERS, COOKER -> true;
          default -> false;
        };
    return wax() == null && !hasItsOwnRule;
  }

  /** What a thermometer read, in the liquid or on the palette. */
  private @Nullable Double measured() {
    return isMeasured() ? wax() : molten();
  }

  private boolean hides(Rule limit) {
    Double read = measured();
    return read != null
        && pot.tolerance() != null
        && !isPassed(limit, read)
        && isPassed(limit, read + pot.tolerance());
  }

  private boolean isPassed(Rule limit, double celsius) {
    return switch (limit) {
      case ABOVE_TARGET -> exceeds(celsius, limits.target());
      case FUME -> reaches(celsius, 110);
      default -> reaches(celsius, limits.ceiling());
    };
  }

  private boolean hasWindow() {
    return pot.mix().clear() != null && !pot.mix().isRubbedIn();
  }

  private boolean isShut() {
    return !leavesRoom(pot.mix().clear().low());
  }

  /** Whether the least width lies between clear point, with 10 K for the brush, and the target. */
  private boolean leavesRoom(double clear) {
    return limits.target() - (clear + 10) >= limits.width() * (1 - 1e-9);
  }
}
