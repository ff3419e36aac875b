// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;

/** Materials of the user's own, judged by what they hold and by what they are called. */
class OwnMaterialsTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  @ParameterizedTest
  @CsvSource({
    "oil-paint-ultramarine, 0.10, 0.15, oil-paint-noted",
    "oil-paint-ultramarine, 0.10, 0.20, oil-paint-soft",
    "oil-paint-ultramarine, 0.10, 0.31, oil-paint-too-much",
    "damar, 0.10, 0.25, brittle-resin-share",
    "carnauba, 0.04, 0.06, hard-wax-share"
  })
  void share_counts_constituents_at_the_high_end(
      String part, double low, double high, String rule) {
    assertThat(review(nested(cake(part, low, high)), 1).finding(rule)).isPresent();
    assertThat(review(nested(cake(part, 0, low / 2)), 1).finding(rule)).isEmpty();
  }

  @Test
  void paint_without_constituents_inside_a_cake_leaves_the_free_oil_unassessed() {
    Material paint =
        Material.builder("tube").family(MaterialFamily.OIL_PAINT, MaterialRole.COLOURANT).build();
    HeatingReview review = review(holding(paint, 0.5, 0.5), 1);
    assertThat(review.finding("oil-paint-too-much")).isPresent();
    assertThat(review.isNotAssessed("oil-paint-too-much")).isTrue();
    assertThat(review.isNotAssessed("lead")).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "white-3, Alkyd white, '', alkyd, true",
    "white-3, White, Alkydharzfarbe weiß, alkyd, true",
    "white-3, White, alkydfreies Weiß, alkyd, false",
    "gloss-1, Final varnish, '', varnish, true",
    "gloss-1, Gloss, Dammarfirnis, varnish, true",
    "gloss-1, Gloss, ohne Firnis, varnish, false",
    "paste-2, Cold wax medium, '', solvent-thinned-wax, true",
    "paste-2, Paste, Kaltwachspaste, solvent-thinned-wax, true",
    "cold-pressed-wax, Cold pressed wax, '', solvent-thinned-wax, false",
    "wax-4, Beeswax (bleached), '', bleached-wax, true",
    "wax-4, Beeswax, gebleichtes Bienenwachs, bleached-wax, true",
    "unbleached-wax, Unbleached wax, Ungebleichtes Wachs, bleached-wax, false",
    "wax-4, Wax un-bleached, nicht gebleicht, bleached-wax, false",
    "blue-5, Water-mixable blue, '', water-mixable-oil, true",
    "blue-5, Blue, Wasservermalbare Ölfarbe, water-mixable-oil, true",
    "blue-5, Blue, Ölfarbe, water-mixable-oil, false"
  })
  void wording_counts_whole_words_of_id_and_names(
      String id, String english, String german, String rule, boolean found) {
    Material material = Material.builder(id).names(english, german).build();
    assertThat(review(material, 0.5).finding(rule).isPresent()).isEqualTo(found);
    Material other = Material.builder("mine").otherName(german + " " + english).build();
    assertThat(review(other, 0.5).finding(rule).isPresent()).isEqualTo(found);
  }

  @Test
  void colourant_of_no_family_is_asked_for_its_pigment() {
    Material unknown =
        Material.builder("blue-cake").family(MaterialFamily.OTHER, MaterialRole.COLOURANT).build();
    assertThat(review(unknown, 0.1).isNotAssessed("lead")).isTrue();
    assertThat(review(holding(unknown, 0.1, 0.2), 0.1).isNotAssessed("lead")).isTrue();
    assertThat(review(holding(pigment("PB74"), 0.1, 0.2), 0.1).isNotAssessed("lead")).isTrue();
    assertThat(review(holding(pigment("PB29"), 0.1, 0.2), 0.1).isNotAssessed("lead")).isFalse();
    assertThat(review(Material.builder("plain").build(), 0.1).isNotAssessed("lead")).isFalse();
  }

  private static Material pigment(String name) {
    return Material.builder("my-pigment")
        .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT)
        .colourIndexName(name)
        .build();
  }

  private static Material cake(String part, double low, double high) {
    return holding(CATALOGUE.require(part), low, high);
  }

  /** A cake inside a material of its own, so that the count has to go two levels down. */
  private static Material nested(Material cake) {
    return Material.builder("parcel")
        .constituent(cake, MassFractionRange.of(MassFraction.ONE))
        .build();
  }

  private static Material holding(Material part, double low, double high) {
    return Material.builder("cake")
        .constituent(part, range(low, high))
        .constituent(CATALOGUE.require("beeswax-yellow"), range(1 - high, 1 - low))
        .build();
  }

  private static MassFractionRange range(double low, double high) {
    return new MassFractionRange(MassFraction.of(low), MassFraction.of(high));
  }

  private static HeatingReview review(Material own, double share) {
    Composition mix =
        Composition.ofParts(
            List.of(own, CATALOGUE.require("beeswax-yellow")), new double[] {share, 1 - share});
    return HeatingRules.standard().review(HeatingPlan.of(mix));
  }
}
