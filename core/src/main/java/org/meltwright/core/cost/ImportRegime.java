// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import org.meltwright.core.source.Source;

/**
 * How a country builds the bases of duty and of import tax, as the caller states it: each country's
 * is its own.
 *
 * <p>For example:
 *
 * <pre>{@code
 * ImportRegime regime =
 *     ImportRegime.onDeliveredValue("delivered value", Rate.ofPercent("20"), Source.USER);
 * List<OrderLine> lines = List.of(OrderLine.of("wax", "wax", Price.parse("100 EUR/5 kg"), 1));
 * LandedCost cost =
 *     PurchaseOrder.of(lines, CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
 *         .withFreight(FreightTariff.perOrder(Money.parse("EUR 10")), Vat.NONE)
 *         .withImport(regime, List.of(Duty.percent("wax", Rate.ofPercent("5"))))
 *         .landed();
 * cost.customsValue(); // 110 EUR
 * cost.total(CostPart.DUTY); // EUR 5.50
 * cost.total(CostPart.TAX); // EUR 23.10
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the regime is called
 * @param dutyBase the parts that make the customs value, of which duty is taken
 * @param taxBase the parts of which import tax is taken; {@link CostPart#UPLIFT} among them adds
 *     {@code uplift} of the customs value
 * @param uplift the rate of the customs value that is added to the tax base; zero for most
 * @param taxRate the rate of import tax
 * @param isTaxRecoverable whether the buyer gets the import tax back
 * @param source where the rule stands
 */
public record ImportRegime(
    String name,
    Set<CostPart> dutyBase,
    Set<CostPart> taxBase,
    Rate uplift,
    Rate taxRate,
    boolean isTaxRecoverable,
    Source source) {

  /** What can be in a customs value: what is known before duty is. */
  private static final Set<CostPart> BEFORE_DUTY =
      Set.of(CostPart.GOODS, CostPart.FREIGHT, CostPart.INSURANCE, CostPart.HANDLING);

  /** Draws a problem if duty would be taken of duty, uplift or tax, or tax of tax. */
  public ImportRegime {
    dutyBase = Collections.unmodifiableSet(new TreeSet<>(dutyBase));
    taxBase = Collections.unmodifiableSet(new TreeSet<>(taxBase));
    if (!BEFORE_DUTY.containsAll(dutyBase) || taxBase.contains(CostPart.TAX)) {
      throw CostProblem.exception(CostProblem.BASE_CIRCULAR, name);
    }
  }

  /**
   * Returns a regime with duty on goods, freight and insurance, and tax on these and the duty.
   *
   * @param name what the regime is called
   * @param taxRate the rate of import tax
   * @param source where the rule stands
   * @return the regime; the tax is not recoverable
   */
  public static ImportRegime onDeliveredValue(String name, Rate taxRate, Source source) {
    return of(
        name,
        Set.of(CostPart.GOODS, CostPart.FREIGHT, CostPart.INSURANCE),
        Set.of(CostPart.GOODS, CostPart.FREIGHT, CostPart.INSURANCE, CostPart.DUTY),
        taxRate,
        source);
  }

  /**
   * Returns a regime without uplift.
   *
   * @param name what the regime is called
   * @param dutyBase the parts that make the customs value
   * @param taxBase the parts of which import tax is taken
   * @param taxRate the rate of import tax
   * @param source where the rule stands
   * @return the regime; the tax is not recoverable
   */
  public static ImportRegime of(
      String name, Set<CostPart> dutyBase, Set<CostPart> taxBase, Rate taxRate, Source source) {
    return new ImportRegime(name, dutyBase, taxBase, Rate.ZERO, taxRate, false, source);
  }

  /**
   * Returns a copy that adds a rate of the customs value to the tax base.
   *
   * @param rate the rate
   * @return the new regime, with {@link CostPart#UPLIFT} in its tax base
   */
  public ImportRegime withUplift(Rate rate) {
    Set<CostPart> lifted = EnumSet.of(CostPart.UPLIFT);
    lifted.addAll(taxBase);
    return new ImportRegime(name, dutyBase, lifted, rate, taxRate, isTaxRecoverable, source);
  }

  /**
   * Returns a copy for a buyer who gets the import tax back.
   *
   * @return the new regime
   */
  public ImportRegime recoverable() {
    return new ImportRegime(name, dutyBase, taxBase, uplift, taxRate, true, source);
  }
}
