// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.util.List;
import java.util.function.Function;
import org.joda.money.BigMoneyProvider;
import org.meltwright.units.ProblemException;

/**
 * Products that sell in a fixed proportion, such as three small cakes with each big one: how many
 * of each cover the fixed costs.
 *
 * <p>One set holds each product as often as its count says; the break-even is that of sets. A
 * product that costs more than it brings in may be among them as long as the set does not.
 *
 * <p>For example:
 *
 * <pre>{@code
 * SalesMix mix =
 *     SalesMix.of(
 *         List.of(
 *             SalesMix.Product.of("small", 3, Money.parse("EUR 6"), Money.parse("EUR 4")),
 *             SalesMix.Product.of("big", 1, Money.parse("EUR 20"), Money.parse("EUR 12"))));
 * BreakEven sets = mix.breakEven(Money.parse("EUR 420"));
 * sets.contribution(); // 14 EUR
 * sets.wholeUnits(); // 30
 * mix.counts(sets.wholeUnits()); // [90, 30]
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param products the products with their counts in one set, at least one
 */
public record SalesMix(List<Product> products) {

  /** Draws a problem if there is no product or the currencies differ. */
  public SalesMix {
    products = List.copyOf(products);
    if (products.isEmpty()) {
      throw CostProblem.exception(CostProblem.NO_LINES, "");
    }
    for (Product product : products) {
      CostProblem.requireSame(products.get(0).price.currency(), product.price.currency());
    }
  }

  /**
   * Returns products in a fixed proportion.
   *
   * @param products the products with their counts in one set
   * @return the mix
   * @throws ProblemException if there is no product or the currencies differ
   */
  public static SalesMix of(List<Product> products) {
    return new SalesMix(products);
  }

  /**
   * Returns how many sets cover the fixed costs.
   *
   * @param fixed what it costs however many are sold, zero or more
   * @return the break-even, with a set as its unit
   * @throws ProblemException if the fixed costs are below zero, in another currency, or a set
   *     brings in no more than it costs
   */
  public BreakEven breakEven(BigMoneyProvider fixed) {
    return BreakEven.of(ExactMoney.of(fixed), total(Product::price), total(Product::perUnit));
  }

  private ExactMoney total(Function<Product, ExactMoney> amount) {
    return products.stream()
        .map(p -> amount.apply(p).times(p.count))
        .reduce(ExactMoney.zero(products.get(0).price.currency()), ExactMoney::plus);
  }

  /**
   * Returns how many of each product are in a number of sets.
   *
   * @param sets the number of sets, 0 to 10⁹
   * @return the counts, in the order of the products
   * @throws ProblemException if the number is below zero or above 10⁹
   */
  public List<Long> counts(long sets) {
    CHECK.between((double) sets, 0, 1e9, "number of units");
    return products.stream().map(p -> Math.multiplyExact(p.count, sets)).toList();
  }

  /**
   * One product of the mix.
   *
   * @param label what it is
   * @param count how many of it sell with one set, 1 to 10⁹
   * @param price what one brings in, once tax and fees are off
   * @param perUnit what one more costs
   */
  public record Product(String label, long count, ExactMoney price, ExactMoney perUnit) {

    /** Draws a problem if the count is below one or the currencies differ. */
    public Product {
      CHECK.between((double) count, 1, 1e9, "number of units", label);
      CostProblem.requireSame(price.currency(), perUnit.currency());
    }

    /**
     * Returns a product.
     *
     * @param label what it is
     * @param count how many of it sell with one set, 1 to 10⁹
     * @param price what one brings in, once tax and fees are off
     * @param perUnit what one more costs
     * @return the product
     * @throws ProblemException if the count is below one or the currencies differ
     */
    public static Product of(
        String label, long count, BigMoneyProvider price, BigMoneyProvider perUnit) {
      return new Product(label, count, ExactMoney.of(price), ExactMoney.of(perUnit));
    }
  }
}
