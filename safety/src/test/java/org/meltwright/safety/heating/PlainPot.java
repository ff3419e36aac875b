// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A plan on plain numbers, in °C and K, as far as the temperature table asks. What is not stated is
 * null.
 */
record PlainPot(
    Mix mix,
    Heat heat,
    @Nullable Double set,
    @Nullable Double overshoot,
    @Nullable Double liquid,
    @Nullable Double surface,
    Method method,
    @Nullable Double offset,
    @Nullable Double tolerance,
    @Nullable Integer age,
    boolean adultsAlone) {

  /** What keeps the melt hot. */
  enum Heat {
    UNSTATED,
    PLATE,
    COOKER,
    PALETTE,
    BATH,
    NUMBERS,
    RING,
    TORCH,
    GUN,
    LAMP
  }

  /** How a surface was read. */
  enum Method {
    UNSTATED,
    PROBE,
    MATT,
    METAL
  }

  /**
   * What is in the pot.
   *
   * @param words the mix in the grammar of plans
   * @param flash the lowest usable flash point
   * @param burnsWithoutFigure whether something burns of which no flash point is known
   * @param clear the clear point of the mix, low and high
   * @param melting what is known of its melting
   * @param manyGrades whether what melts highest is sold in grades more than 15 K apart
   */
  record Mix(
      String words,
      @Nullable Double flash,
      boolean burnsWithoutFigure,
      @Nullable Range clear,
      Melting melting,
      boolean manyGrades) {

    private static final Set<String> WAXES =
        Set.of("beeswax-yellow", "paraffin", "microcrystalline", "carnauba");

    /** With less than half of it known as wax it is a balm or unknown, not something brushed. */
    boolean isBrushed() {
      return partsOf(WAXES) >= partsOfAll() / 2 && !isRubbedIn();
    }

    /** With a tenth of oil it is a balm or a polish. */
    boolean isRubbedIn() {
      return partsOf(Set.of("linseed-oil")) >= partsOfAll() / 10;
    }

    private double partsOfAll() {
      return Stream.of(words.split(", ")).mapToDouble(Mix::parts).sum();
    }

    private double partsOf(Set<String> names) {
      return Stream.of(words.split(", "))
          .filter(part -> names.contains(part.split(" ")[0]))
          .mapToDouble(Mix::parts)
          .sum();
    }

    private static double parts(String part) {
      String[] sides = part.split(" ");
      return sides.length > 1 ? Double.parseDouble(sides[1]) : 1;
    }
  }

  record Range(double low, double high) {}

  /** What the lowest reading of a molten mix follows from. */
  enum Melting {
    /** No wax: any reading stands. */
    NO_WAX,
    /** Its own clear point. */
    KNOWN,
    /** A tenth or more is liquid at room temperature. */
    OILY,
    /** Nothing is known. */
    UNKNOWN
  }

  PlainPot withSet(double celsius) {
    return with(celsius, liquid, surface, offset);
  }

  PlainPot withLiquid(@Nullable Double celsius) {
    return with(set, celsius, surface, offset);
  }

  /** With the reading of the surface at another value, if there is one. */
  PlainPot withSurface(double celsius) {
    return with(set, liquid, surface == null ? null : (Double) celsius, offset);
  }

  PlainPot withOffset(double kelvin) {
    return with(set, liquid, surface, kelvin);
  }

  private PlainPot with(
      @Nullable Double newSet,
      @Nullable Double newLiquid,
      @Nullable Double newSurface,
      @Nullable Double newOffset) {
    return new PlainPot(
        mix,
        heat,
        newSet,
        overshoot,
        newLiquid,
        newSurface,
        method,
        newOffset,
        tolerance,
        age,
        adultsAlone);
  }

  /** The plan in the grammar of plans. */
  String words() {
    List<String> words = new ArrayList<>(List.of("mix " + mix.words()));
    if (heat != Heat.UNSTATED) {
      words.add(heatWord() + said(" ", set) + said(" +", overshoot));
    }
    if (surface != null) {
      words.add("surface " + surface + methodWord());
    }
    words.add(said("liquid ", liquid));
    words.add(said("offset ", offset));
    words.add(said("thermometer ", tolerance));
    if (age != null) {
      words.add("people 1 1 1 " + age + (adultsAlone ? " adults" : ""));
    }
    words.removeIf(String::isEmpty);
    return String.join("; ", words);
  }

  private String heatWord() {
    return switch (heat) {
      case TORCH, GUN, LAMP -> "heat-" + heat.name().toLowerCase(Locale.ROOT);
      default -> heat.name().toLowerCase(Locale.ROOT);
    };
  }

  private String methodWord() {
    return method == Method.UNSTATED ? "" : " " + method.name().toLowerCase(Locale.ROOT);
  }

  private static String said(String word, @Nullable Object value) {
    return value == null ? "" : word + value;
  }
}
