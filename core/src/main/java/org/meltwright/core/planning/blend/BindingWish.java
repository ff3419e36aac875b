// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;

/**
 * A wish that holds the aim back, and what a little less of it would be worth.
 *
 * <p>For example, the resin that a medium must have, at 32 against 12.50 EUR/kg:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * List<BlendPart> parts =
 *     List.of(
 *         BlendPart.of(resin).at(UnitPrice.parse("32 EUR/kg")),
 *         BlendPart.of(wax).at(UnitPrice.parse("12.50 EUR/kg")));
 * Wish hard = Wish.share(ShareOf.RESIN, Wish.percent(11, 14));
 * BlendAnswer answer = BlendQuestion.of(parts, List.of(hard)).cheapest();
 * BindingWish dear = ((BlendAnswer.Found) answer).binding().get(0);
 * dear.worth(); // 0.195
 * dear.inWords().english(); // resin between 11 % by mass and 14 % by mass binds …
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class BindingWish {

  private final Bounded wish;
  private final double bound;
  private final boolean more;
  private final double worth;
  private final double from;
  private final double to;
  private final boolean isLinear;
  private final BlendAim aim;

  BindingWish(
      Bounded wish,
      double bound,
      boolean more,
      double worth,
      double from,
      double to,
      boolean isLinear,
      BlendAim aim) {
    this.wish = wish;
    this.bound = bound;
    this.more = more;
    this.worth = worth;
    this.from = from;
    this.to = to;
    this.isLinear = isLinear;
    this.aim = aim;
  }

  /** {@return the wish that binds} */
  public Wish wish() {
    return wish;
  }

  /**
   * Returns the bound that is reached.
   *
   * @return a share from 0 to 1, a mass in kg, money per kg, a volume in m³/kg for a density, or
   *     the figure's own unit
   */
  public double bound() {
    return bound;
  }

  /**
   * Returns what one step of giving way is worth: one point of a share, 100 g, one of the currency
   * a kilogram, 10 kg/m³, a tenth of a ratio.
   *
   * @return money per kg, kg, or a share from 0 to 1, as the aim counts; above zero
   */
  public double worth() {
    return worth;
  }

  /**
   * Returns from where on that holds.
   *
   * @return the bound, in the unit of {@link #bound}; infinite if there is no end
   */
  public double from() {
    return from;
  }

  /**
   * Returns up to where that holds.
   *
   * @return the bound, in the unit of {@link #bound}; infinite if there is no end
   */
  public double to() {
    return to;
  }

  /**
   * Says it.
   *
   * @return one line, such as "resin at least 11 % by mass binds at 11 % by mass: one point less
   *     would save 0.195 EUR/kg; that holds from 0 % by mass to 100 % by mass"
   */
  public Bilingual inWords() {
    Bilingual step =
        BlendTexts.text("step." + wish.figure().step().key() + (more ? ".more" : ".less"));
    Bilingual gain = BlendTexts.text("gain." + aim.key(), "worth", aim.inWords(worth));
    String key =
        !isLinear
            ? "binding.step"
            : Double.isInfinite(from) && Double.isInfinite(to)
                ? "binding.always"
                : Double.isInfinite(from)
                    ? "binding.up-to"
                    : Double.isInfinite(to) ? "binding.from" : "binding.between";
    return BlendTexts.text(
        key,
        "wish",
        wish.inWords(),
        "bound",
        wish.figure().inWords(bound),
        "step",
        step,
        "gain",
        gain,
        "from",
        wish.figure().inWords(Double.isInfinite(from) ? bound : from),
        "to",
        wish.figure().inWords(Double.isInfinite(to) ? bound : to));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BindingWish that
        && wish.equals(that.wish)
        && bound == that.bound
        && more == that.more
        && worth == that.worth
        && from == that.from
        && to == that.to
        && isLinear == that.isLinear
        && aim.equals(that.aim);
  }

  @Override
  public int hashCode() {
    return Objects.hash(wish, bound, worth);
  }

  @Override
  public String toString() {
    return inWords().toString();
  }
}
