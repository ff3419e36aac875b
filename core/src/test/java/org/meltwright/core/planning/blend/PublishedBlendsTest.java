// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.units.MassFraction;

/**
 * Published blending problems that a maker could ask, through the doors; all of them by the solver
 * alone stand in {@code programmes.txt} of the package {@code linear}, with their sources.
 */
class PublishedBlendsTest {

  private static final Material REST = Material.builder("rest").build();

  private static Material holding(String id, List<Material> contents, double... shares) {
    Material.Builder builder = Material.builder(id);
    double rest = 1;
    for (int i = 0; i < shares.length; i++) {
      builder.constituent(contents.get(i), MassFractionRange.of(MassFraction.of(shares[i])));
      rest -= shares[i];
    }
    return builder
        .constituent(REST, MassFractionRange.of(MassFraction.of(Math.max(0, rest))))
        .build();
  }

  private static BlendPart part(Material material, String price) {
    return BlendPart.of(material).at(UnitPrice.parse(price));
  }

  private static ShareOf of(Material content) {
    return ShareOf.ofConstituents(content.id(), m -> m.isMeantBy(content));
  }

  private static Wish least(Material content, double share) {
    return Wish.share(of(content), new MassFractionRange(MassFraction.of(share), MassFraction.ONE));
  }

  private static Wish most(Material content, double share) {
    return Wish.share(
        of(content), new MassFractionRange(MassFraction.ZERO, MassFraction.of(share)));
  }

  private static List<Material> materials(String... ids) {
    List<Material> materials = new ArrayList<>();
    for (String id : ids) {
      materials.add(Material.builder(id).build());
    }
    return materials;
  }

  /** R package limSolve, example Blending; contents there are per cent of a per cent here. */
  @Test
  void feedOfThree() {
    List<Material> n = materials("A", "B", "C", "D");
    List<BlendPart> parts =
        List.of(
            part(holding("first", n, 0.1, 0.05, 0.04, 0.01), "40 EUR/kg"),
            part(holding("second", n, 0.2, 0.15, 0.01, 0), "60 EUR/kg"),
            part(holding("filler", n, 0, 0, 0, 0), "0 EUR/kg"));
    BlendAnswer.Found found =
        BlendQuestion.of(
                parts,
                List.of(
                    least(n.get(0), 0.08),
                    least(n.get(1), 0.05),
                    least(n.get(2), 0.025),
                    least(n.get(3), 0.005)))
            .cheapest()
            .require();
    assertThat(found.value()).isCloseTo(31.81818, within(5e-6));
    assertThat(found.line("first").share()).isCloseTo(13 / 22.0, within(1e-9));
    assertThat(found.line("second").share()).isCloseTo(3 / 22.0, within(1e-9));
    assertThat(found.line("filler").share()).isCloseTo(6 / 22.0, within(1e-9));
  }

  /** PuLP documentation, case study "A Blending Problem". */
  @Test
  void sixIngredients() {
    List<Material> n = materials("protein", "fat", "fibre", "salt");
    List<BlendPart> parts =
        List.of(
            part(holding("chicken", n, .100, .080, .001, .002), "13 EUR/kg"),
            part(holding("beef", n, .200, .100, .005, .005), "8 EUR/kg"),
            part(holding("mutton", n, .150, .110, .003, .007), "10 EUR/kg"),
            part(holding("rice", n, .000, .010, .100, .002), "2 EUR/kg"),
            part(holding("wheat", n, .040, .010, .150, .008), "5 EUR/kg"),
            part(holding("gel", n, 0, 0, 0, 0), "1 EUR/kg"));
    List<Wish> wishes =
        List.of(
            Wish.amount(grams(100)),
            least(n.get(0), 0.08),
            least(n.get(1), 0.06),
            most(n.get(2), 0.02),
            most(n.get(3), 0.004));
    BlendAnswer.Found found = BlendQuestion.of(parts, wishes).cheapest().require();
    assertThat(found.cost().orElseThrow().toMoney()).hasToString("EUR 0.52");
    assertThat(found.line("beef").kilograms()).isCloseTo(0.06, within(1e-12));
    assertThat(found.line("gel").kilograms()).isCloseTo(0.04, within(1e-12));
  }

  /** Taha, Operations Research, Example 2.2-2, in kilograms for pounds. */
  @Test
  void cornAndSoy() {
    List<Material> n = materials("protein", "fibre");
    List<BlendPart> parts =
        List.of(
            part(holding("corn", n, 0.09, 0.02), "0.30 EUR/kg"),
            part(holding("soy", n, 0.60, 0.06), "0.90 EUR/kg"));
    BlendAnswer.Found found =
        BlendQuestion.of(
                parts,
                List.of(Wish.amount(kilograms(800)), least(n.get(0), 0.3), most(n.get(1), 0.05)))
            .cheapest()
            .require();
    assertThat(found.line("corn").kilograms()).isCloseTo(470.5882353, within(1e-6));
    assertThat(found.line("soy").kilograms()).isCloseTo(329.4117647, within(1e-6));
    assertThat(found.cost().orElseThrow().toMoney()).hasToString("EUR 437.65");
  }

  /** Murtagh, Advanced Linear Programming, 1981: an alloy from the shelf, as plan.mps of GLPK. */
  @Test
  void alloyFromTheShelf() {
    List<Material> n = materials("fe", "cu", "mn", "mg", "al", "si");
    List<BlendPart> parts =
        List.of(
            bin("bin1", n, 0.03, 200, .15, .03, .02, .02, .70, .02),
            bin("bin2", n, 0.08, 2500, .04, .05, .04, .03, .75, .06),
            bin("bin3", n, 0.17, 800, .02, .08, .01, 0, .80, .08),
            bin("bin4", n, 0.12, 700, .04, .02, .02, 0, .75, .12),
            bin("bin5", n, 0.15, 1500, .02, .06, .02, .01, .80, .02),
            bin("alum", n, 0.21, 1e6, .01, .01, 0, 0, .97, .01),
            bin("silicon", n, 0.38, 1e6, .03, 0, 0, 0, 0, .97));
    List<Wish> wishes =
        List.of(
            Wish.amount(kilograms(2000)),
            most(n.get(0), 60 / 2000.0),
            most(n.get(1), 100 / 2000.0),
            most(n.get(2), 40 / 2000.0),
            most(n.get(3), 30 / 2000.0),
            least(n.get(4), 1500 / 2000.0),
            least(n.get(5), 250 / 2000.0),
            most(n.get(5), 300 / 2000.0),
            Wish.useAtLeast("bin3", kilograms(400)),
            Wish.useAtLeast("bin4", kilograms(100)));
    BlendAnswer.Found found = BlendQuestion.of(parts, wishes).cheapest().require();
    assertThat(found.value() * 2000).isCloseTo(296.216606, within(5e-7));
    Composition made = found.composition();
    assertThat(made.share(of(n.get(4))).low().value()).isGreaterThanOrEqualTo(0.75 - 1e-12);
  }

  private static BlendPart bin(
      String id, List<Material> n, double price, double stock, double... shares) {
    return part(holding(id, n, shares), price + " EUR/kg").withStock(kilograms(stock));
  }
}
