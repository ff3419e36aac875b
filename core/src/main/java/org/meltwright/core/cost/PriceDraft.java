// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Price} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PriceDraft draft = new PriceDraft("14,90 €/500 g", "19 %", true, null);
 * Price wax = draft.toPrice(QuantityParser.withDecimalComma());
 * wax.net().toMoney(); // EUR 12.52
 * wax.toDraft().price(); // 14.90 EUR/500 g
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param price money per package, such as "14.90 EUR/500 g"; the grammar of {@link UnitPrice#parse}
 * @param tax the rate of tax, such as "19 %"; absent for none
 * @param taxIncluded whether the tax is in the price; absent or no if it comes on top
 * @param taxRecoverable whether the buyer gets the tax back; absent is no
 */
public record PriceDraft(
    @Nullable String price,
    @Nullable String tax,
    @Nullable Boolean taxIncluded,
    @Nullable Boolean taxRecoverable) {

  static PriceDraft of(Price price) {
    Vat vat = price.vat();
    return new PriceDraft(
        price.toString(),
        vat.equals(Vat.NONE) ? null : vat.rate().toString(),
        vat.isIncluded() ? true : null,
        vat.isRecoverable() ? true : null);
  }

  /**
   * Returns the price.
   *
   * @param parser reads money, mass and rate
   * @return the price
   * @throws ProblemException if the price is missing, a field is wrong, or it is said how a tax
   *     stands and not which; it carries all problems found, each at its field
   */
  public Price toPrice(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<Price> stated = at.parse("price", price, (p, t) -> Price.parse(t, p));
    boolean included = Boolean.TRUE.equals(taxIncluded);
    boolean recoverable = Boolean.TRUE.equals(taxRecoverable);
    FieldReader rateAt = included || recoverable ? at : at.optional();
    Optional<Rate> rate = rateAt.parse("tax", tax, (p, t) -> Rate.parse(t, p));
    return at.make(
        () -> stated.get().withVat(new Vat(included, rate.orElse(Rate.ZERO), recoverable)));
  }
}
