// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * An offer of the finished product as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * ReadyMade cakes =
 *     new ReadyMadeDraft("ready-made cakes", "32.50 EUR/500 g")
 *         .toReadyMade(QuantityParser.localeFree());
 * cakes.landed().perKilogram(); // 65 EUR
 * cakes.toDraft().price(); // 32.50 EUR/500 g
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param label who offers what
 * @param price its price per net mass, such as "32.50 EUR/500 g", with freight, duty and tax
 */
public record ReadyMadeDraft(@Nullable String label, @Nullable String price) {

  static ReadyMadeDraft of(ReadyMade offer) {
    return new ReadyMadeDraft(offer.label(), offer.landed().toString());
  }

  /**
   * Returns the offer.
   *
   * @param parser reads money and mass
   * @return the offer
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public ReadyMade toReadyMade(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<String> who = at.value("label", label);
    Optional<UnitPrice> landed = at.parse("price", price, (p, t) -> UnitPrice.parse(t, p));
    return at.make(() -> new ReadyMade(who.get(), landed.get()));
  }
}
