// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.meltwright.core.cost.Price;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.examples.studio.day.ByVolume;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * Reads what is left of a material and what its packages cost: by mass, or by volume, which counts
 * with the density that the entry states or else with the low end of the catalogue's. So no more is
 * taken to be there, and a kilogram to be no cheaper, than it is.
 */
final class PackReader {

  private final StudioCurrency currency;
  private final Material material;
  private final Optional<Double> stated;
  private final List<ByVolume> byVolume = new ArrayList<>();

  PackReader(StudioCurrency currency, Material material, Optional<Double> statedDensity) {
    this.currency = currency;
    this.material = material;
    this.stated = statedDensity;
  }

  /** The volumes read so far, each with the mass that it counts as. */
  List<ByVolume> byVolume() {
    return byVolume;
  }

  /** Reads what is left, which may be nothing, in kg. */
  double stock(QuantityParser parser, String text) {
    return isVolume(parser, text)
        ? counted(text, Bounds.amountOrNone(QuantityKind.VOLUME).apply(parser, text))
        : Bounds.amountOrNone(QuantityKind.MASS).apply(parser, text);
  }

  /** Reads the price of a package. */
  Price price(QuantityParser parser, String text) {
    int slash = text.lastIndexOf('/');
    String pack = text.substring(slash + 1).strip();
    if (slash < 0 || !isVolume(parser, pack)) {
      return currency.price(parser, text);
    }
    Money money = currency.money(parser, text.substring(0, slash).strip());
    double litres = Bounds.amount(QuantityKind.VOLUME).apply(parser, pack);
    return Price.of(money, QuantityKind.MASS.ofSi(counted(pack, litres)));
  }

  private static boolean isVolume(QuantityParser parser, String text) {
    try {
      parser.parseVolume(text);
      return true;
    } catch (ProblemException e) {
      return false;
    }
  }

  private double counted(String text, double cubicMetres) {
    double density = stated.or(this::lowest).orElseThrow(() -> unknown(text));
    byVolume.add(new ByVolume(text, cubicMetres * density, density, stated.isPresent()));
    return cubicMetres * density;
  }

  private Optional<Double> lowest() {
    return DensityBasis.SOLID
        .find(material)
        .or(() -> DensityBasis.MELT.find(material))
        .map(range -> range.lowSi());
  }

  private ProblemException unknown(String text) {
    return new ProblemException(
        Problem.of(StudioProblem.DENSITY_NEEDED, text)
            .with("material", Bilingual.of(material::name)));
  }
}
