// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.Vat;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What a supplier charges on an order beside the prices of the packages.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PackageOffer near = PackageOffer.of("near", "wax", Price.parse("16 EUR/1 kg"));
 * PackageOffer far = PackageOffer.of("far", "wax", Price.parse("14 EUR/1 kg"));
 * FreightTariff parcel = FreightTariff.perOrder(Money.parse("EUR 6.90"));
 * SupplierTerms shop = SupplierTerms.free("near", CurrencyUnit.EUR);
 * List<SupplierTerms> terms = List.of(shop, SupplierTerms.of("far", parcel));
 * // carriage makes the cheaper bag the dearer one: 32 against 34.90
 * List<Need> needs = List.of(Need.of("wax", kilograms(2)));
 * PurchaseQuestion.of(needs, List.of(near, far), terms, LocalDate.of(2026, 9, 1))
 *     .cheapest().total(); // EUR 32.00
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param supplier who it is
 * @param freight what carriage costs, in the currency of the offers
 * @param freightVat how tax stands in that
 * @param handling what each order costs in any case, tax borne included; zero or more
 * @param onGoods what comes on top of the packages and is borne: duty, insurance, import tax
 * @param onFreight what comes on top of carriage and is borne: duty and import tax
 * @param flatDuties what comes on top once for each kind of goods in the order
 */
public record SupplierTerms(
    String supplier,
    FreightTariff freight,
    Vat freightVat,
    ExactMoney handling,
    Rate onGoods,
    Rate onFreight,
    List<FlatDuty> flatDuties) {

  /**
   * Draws a problem if the fee is below zero, the currencies differ or a material stands in two
   * flat duties.
   */
  public SupplierTerms {
    flatDuties = List.copyOf(flatDuties);
    ExactMoney nothing = ExactMoney.zero(freight.currency());
    handling = nothing.plus(handling);
    if (handling.isNegative()) {
      throw PlanningProblem.exception(PlanningProblem.AMOUNT_NEGATIVE, handling);
    }
    flatDuties.forEach(d -> nothing.plus(d.amount()));
    List<Problem> twice =
        PlanningProblem.repeated(flatDuties.stream().flatMap(d -> d.materials().stream()));
    if (!twice.isEmpty()) {
      throw new ProblemException(twice);
    }
  }

  /**
   * Returns terms of carriage only.
   *
   * @param supplier who it is
   * @param freight what carriage costs, all in
   * @return the terms
   */
  public static SupplierTerms of(String supplier, FreightTariff freight) {
    ExactMoney nothing = ExactMoney.zero(freight.currency());
    return new SupplierTerms(supplier, freight, Vat.NONE, nothing, Rate.ZERO, Rate.ZERO, List.of());
  }

  /**
   * Returns terms of a supplier who asks nothing for carriage.
   *
   * @param supplier who it is
   * @param currency the currency of the offers
   * @return the terms
   */
  public static SupplierTerms free(String supplier, CurrencyUnit currency) {
    return of(supplier, FreightTariff.free(currency));
  }

  /**
   * Returns a copy that says how tax stands in the carriage.
   *
   * @param vat the tax
   * @return the new terms
   */
  public SupplierTerms withFreightVat(Vat vat) {
    return new SupplierTerms(supplier, freight, vat, handling, onGoods, onFreight, flatDuties);
  }

  /**
   * Returns a copy with a fee for each order.
   *
   * @param fee the fee, tax borne included
   * @return the new terms
   * @throws ProblemException if the fee is below zero or the currencies differ
   */
  public SupplierTerms withHandling(BigMoneyProvider fee) {
    return new SupplierTerms(
        supplier, freight, freightVat, ExactMoney.of(fee), onGoods, onFreight, flatDuties);
  }

  /**
   * Returns a copy with duty and import tax on top.
   *
   * <p>The packages of such a supplier are priced without the tax of the supplier's country: what
   * their {@linkplain org.meltwright.core.cost.Price#vat tax} says is borne is borne beside these.
   *
   * @param goods the rate on packages: with 6.5 % duty and 19 % tax on that, 26.735 %
   * @param carriage the rate on carriage
   * @return the new terms
   */
  public SupplierTerms withImport(Rate goods, Rate carriage) {
    return new SupplierTerms(supplier, freight, freightVat, handling, goods, carriage, flatDuties);
  }

  /**
   * Returns a copy with duties of one amount each for a kind of goods.
   *
   * @param duties the duties; no material stands in two of them
   * @return the new terms
   * @throws ProblemException if the currencies differ or a material stands in two of them
   */
  public SupplierTerms withFlatDuties(List<FlatDuty> duties) {
    return new SupplierTerms(supplier, freight, freightVat, handling, onGoods, onFreight, duties);
  }

  /** What one package costs the buyer, without carriage. */
  ExactMoney borne(PackageOffer offer) {
    ExactMoney price = offer.price().borne();
    return price.plus(onGoods.of(price));
  }

  /** What an amount of carriage costs the buyer. */
  ExactMoney borneFreight(ExactMoney carriage) {
    ExactMoney price = freightVat.borne(carriage);
    return price.plus(onFreight.of(price));
  }
}
