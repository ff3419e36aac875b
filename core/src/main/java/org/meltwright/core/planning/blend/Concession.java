// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;

/**
 * What a wish gave way, or would have to give way by itself, all others kept.
 *
 * <p>For example, two wishes that contradict each other:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * BlendPart medium = BlendPart.of("medium", Composition.ofParts(List.of(resin, wax), 1, 9));
 * BlendPart pure = BlendPart.of(wax);
 * Wish strong = Wish.share(ShareOf.RESIN, Wish.percent(12, 100));
 * BlendAnswer answer =
 *     BlendQuestion.of(List.of(medium, pure), List.of(strong)).closest(
 *         ShareTarget.ofPercent(ShareOf.RESIN, 12));
 * Concession only = ((BlendAnswer.Impossible) answer).conflict().get(0);
 * only.isEnough(); // true
 * only.to(); // 0.1
 * only.inWords(); // resin at least 12 % by mass: alone it would have to give way to 10 % by mass
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Concession {

  private final Wish wish;
  private final double from;
  private final double to;
  private final boolean isEnough;
  private final boolean isMade;

  private Concession(Wish wish, double from, double to, boolean isEnough, boolean isMade) {
    this.wish = wish;
    this.from = from;
    this.to = to;
    this.isEnough = isEnough;
    this.isMade = isMade;
  }

  static Concession made(Bounded wish, double from, double to) {
    return new Concession(wish, from, to, true, true);
  }

  static Concession wouldBe(Wish wish, double from, double to) {
    return new Concession(wish, from, to, true, false);
  }

  static Concession noHelp(Wish wish, double from) {
    return new Concession(wish, from, from, false, false);
  }

  /** {@return the wish as it was asked} */
  public Wish wish() {
    return wish;
  }

  /**
   * Returns the bound as it was asked.
   *
   * @return a share from 0 to 1, a mass in kg, money per kg, a volume in m³/kg for a density, or
   *     the figure's own unit
   */
  public double from() {
    return from;
  }

  /**
   * Returns the bound that can be kept.
   *
   * @return in the unit of {@link #from}; the same where giving way alone does not help, infinite
   *     where the wish would have to be left out
   */
  public double to() {
    return to;
  }

  /**
   * Tells whether giving way is enough, all other wishes kept.
   *
   * @return whether it helps; if not, another wish has to give way as well, or instead
   */
  public boolean isEnough() {
    return isEnough;
  }

  /**
   * Says it.
   *
   * @return one line
   */
  public Bilingual inWords() {
    String key =
        isMade
            ? "concession.made"
            : !isEnough
                ? "concession.no-help"
                : Double.isInfinite(to) ? "concession.left-out" : "concession.alone";
    return BlendTexts.text(key, "wish", wish.inWords(), "to", toInWords());
  }

  private Bilingual toInWords() {
    return wish instanceof Bounded bounded && Double.isFinite(to)
        ? bounded.figure().inWords(to)
        : Bilingual.of(Long.toString(Math.round(to)));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Concession that
        && wish.equals(that.wish)
        && from == that.from
        && to == that.to
        && isEnough == that.isEnough
        && isMade == that.isMade;
  }

  @Override
  public int hashCode() {
    return wish.hashCode() * 31 + Double.hashCode(to);
  }

  @Override
  public String toString() {
    return inWords().toString();
  }
}
