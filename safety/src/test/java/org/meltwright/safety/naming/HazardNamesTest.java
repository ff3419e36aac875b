// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.type;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.naming.NamedHazard.Evidence;
import org.meltwright.safety.naming.NamedHazard.Standing;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** What of a material is asked, and how numbers and words are weighed. */
class HazardNamesTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  private static Material.Builder named(String name) {
    return Material.builder("jar-7").names(name, "");
  }

  private int asked;

  private static NamedHazard one(Material material) {
    assertThat(HazardNames.of(material)).hasSize(1);
    return HazardNames.of(material).get(0);
  }

  @Nested
  class Asked {

    @ParameterizedTest
    @ValueSource(strings = {"Mennige", "Red lead", "Auripigment", "Orpiment", "Flake white"})
    void nameOfAnOwnMaterial(String name) {
      assertThat(one(named(name).build()).heatUse()).isEqualTo(HeatUse.NEVER_HEATED);
    }

    @Test
    void germanName_otherNameAndId() {
      assertThat(one(Material.builder("x").names("Old red", "Mennige").build()).found())
          .isEqualTo("Mennige");
      assertThat(one(named("Old red").otherName("minium de plomb").build()).listed())
          .isEqualTo("minium de plomb");
      assertThat(one(Material.builder("red-lead-of-1950").build()).found()).isEqualTo("red-lead");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"WAX", "RESIN", "OIL_PAINT", "PIGMENT", "SOLVENT", "DISPERSION", "OTHER"})
    void everyFamily(MaterialFamily family) {
      Material material = named("Bleiweiß").family(family, MaterialRole.BASE).build();
      assertThat(one(material).hazard().id()).isEqualTo("lead-white");
    }

    @Test
    void constituentsOfConstituents() {
      Material inner = Material.builder("inner").names("Scheeles Grün", "").build();
      Material outer = holding("outer", holding("middle", inner));
      assertThat(one(outer).hazard().id()).isEqualTo("scheeles-green");
    }

    private static Material holding(String id, Material part) {
      return Material.builder(id)
          .names(id, "")
          .constituent(part, MassFractionRange.of(MassFraction.ONE))
          .build();
    }

    @Test
    void whatItMayBe() {
      Material either =
          named("yellow")
              .alternative(Material.builder("a").names("Barytgelb", "").build())
              .alternative(CATALOGUE.require("yellow-ochre"))
              .build();
      assertThat(one(either).hazard().id()).isEqualTo("barium-yellow");
    }

    @Test
    void aThingThatIsThereTwice_once() {
      Material twice = named("Bleiweiß").otherName("lead white").otherName("Kremserweiß").build();
      assertThat(HazardNames.of(twice)).hasSize(1);
    }
  }

  @Nested
  class NotAsked {

    @Test
    void catalogueMaterial() {
      assertThat(HazardNames.of(CATALOGUE.require("gum-turpentine"))).isEmpty();
    }

    /** A hundred times slower than measured, on a busy machine. */
    @Test
    void catalogueMaterial_costsNothing() {
      Material wax = CATALOGUE.require("beeswax-yellow");
      assertTimeout(
          Duration.ofSeconds(10),
          () -> {
            for (int i = 0; i < 5_000_000; i++) {
              asked += HazardNames.of(wax).size();
            }
          });
    }

    @Test
    void catalogueIdWithOtherName_isAskedForThatName() {
      Material damar = CATALOGUE.require("damar");
      Material mislabelled =
          CATALOGUE.with(Material.builder("damar").otherName("Mennige").build()).require("damar");
      assertThat(HazardNames.of(damar)).isEmpty();
      assertThat(one(mislabelled).hazard().id()).isEqualTo("red-lead");
    }

    @Test
    void catalogueIdWithOtherNumber_isAskedForThatNumber() {
      Material white = Material.builder("titanium-white-rutile").cas("1319-46-6").build();
      assertThat(one(white).evidence()).isEqualTo(Evidence.CAS);
    }

    @Test
    void catalogueMaterialInAnOwnOne() {
      Material paste =
          named("paste")
              .constituent(CATALOGUE.require("lead-white"), MassFractionRange.of(MassFraction.ONE))
              .build();
      assertThat(HazardNames.of(paste)).isEmpty();
    }
  }

  @Nested
  class NumbersAndWords {

    @Test
    void casNumber_decidesBeforeAnAmbiguousName() {
      Material violet = named("cobalt violet").cas("13455-36-2").build();
      assertThat(one(violet).hazard().id()).isEqualTo("cobalt-violet-phosphate");
      assertThat(one(violet).evidence()).isEqualTo(Evidence.CAS);
      assertThat(one(violet).against()).isEmpty();
    }

    @Test
    void ambiguousName_withoutANumber_isTheWorst() {
      NamedHazard violet = one(named("cobalt violet").build());
      assertThat(violet.standing()).isEqualTo(Standing.AMBIGUOUS);
      assertThat(violet.heatUse()).isEqualTo(HeatUse.NEVER_HEATED);
      assertThat(violet.dust()).hasValue(DustClass.REFUSE_POWDER);
      assertThat(violet.isBinding()).isTrue();
      assertThat(violet.isAskedFor()).isTrue();
    }

    @Test
    void colourIndexName_decidesBeforeAnAmbiguousName_knownOrNot() {
      assertThat(HazardNames.of(named("lemon yellow").colourIndexName("PY3").build())).isEmpty();
      assertThat(HazardNames.of(named("lemon yellow").colourIndexName("PY175").build())).isEmpty();
      assertThat(one(named("lemon yellow").colourIndexName("PY31").build()).hazard().id())
          .isEqualTo("barium-yellow");
    }

    @Test
    void unknownCasNumber_decidesNothing() {
      Material yellow = named("Neapelgelb").cas("50-00-0").build();
      assertThat(one(yellow).standing()).isEqualTo(Standing.AMBIGUOUS);
    }

    @Test
    void wordThatSaysWorse_holds_andTheNumberIsTold() {
      NamedHazard white = one(named("Bleiweiß").cas("1314-13-2").build());
      assertThat(white.hazard().id()).isEqualTo("lead-white");
      assertThat(white.evidence()).isEqualTo(Evidence.WORD);
      assertThat(white.against()).hasValue("1314-13-2");
      assertThat(white.text(Locale.ENGLISH))
          .endsWith("1314-13-2 says something milder; the worse holds.");
    }

    @Test
    void wordThatSaysWorse_holdsAgainstAColourIndexName() {
      assertThat(one(named("Bleiweiß").colourIndexName("PW6").build()).against()).hasValue("PW6");
    }

    @Test
    void wordThatSaysNothingWorse_isNotTold() {
      Material red = named("cadmium orange").cas("58339-34-7").build();
      assertThat(one(red).hazard().id()).isEqualTo("cadmium-red");
    }

    @Test
    void genericWord_givesWayToANumberOfItsElement() {
      assertThat(one(named("manganese earth").cas("12713-03-0").build()).hazard().id())
          .isEqualTo("raw-umber");
      assertThat(HazardNames.of(named("barium white").cas("7727-43-7").build())).isEmpty();
      assertThat(one(named("lead powder").cas("7782-42-5").build()).against())
          .hasValue("7782-42-5");
    }

    @Test
    void casNumber_decidesBeforeAColourIndexName() {
      Material sienna = named("sienna").cas("1309-37-1").colourIndexName("PBr7").build();
      assertThat(HazardNames.of(sienna)).isEmpty();
    }

    @Test
    void colourIndexNameThatSaysWorse_holds() {
      NamedHazard white = one(named("white").cas("13463-67-7").colourIndexName("PW1").build());
      assertThat(white.evidence()).isEqualTo(Evidence.COLOUR_INDEX_NAME);
      assertThat(white.hazard().id()).isEqualTo("lead-white");
      assertThat(white.against()).hasValue("13463-67-7");
    }

    @Test
    void twoNumbers_areBothTold_theWorseFirst() {
      List<NamedHazard> told =
          HazardNames.of(named("red").cas("58339-34-7").cas("1344-48-5").build());
      assertThat(told).extracting(n -> n.hazard().id()).containsExactly("vermilion", "cadmium-red");
      assertThat(told.get(0).against()).hasValue("58339-34-7");
    }

    @Test
    void substitute_isAskedFor_untilANumberIsStated() {
      NamedHazard hue = one(named("lead white hue").build());
      assertThat(hue.isBinding()).isFalse();
      assertThat(hue.isAskedFor()).isTrue();
      assertThat(hue.heatUse()).isEqualTo(HeatUse.MELTED_ONLY);
      assertThat(hue.dust()).hasValue(DustClass.TOXIC_METAL);
      assertThat(HazardNames.of(named("lead white hue").colourIndexName("PW6").build())).isEmpty();
    }

    @Test
    void solventInTheName_isToldBesideTheNumberOfAPigment() {
      Material paste = named("cobalt blue in turpentine").cas("1345-16-0").build();
      assertThat(HazardNames.of(paste))
          .extracting(n -> n.hazard().id())
          .containsExactly("turpentine", "cobalt-blue");
    }

    @Test
    void numberInAName_countsAsANumber() {
      assertThat(one(named("Neapelgelb, PBr24").build()).evidence())
          .isEqualTo(Evidence.COLOUR_INDEX_NAME);
    }
  }

  /** The CAS numbers of an entry are those of members of its group. */
  @Nested
  class CasNumbersOfGroups {

    @ParameterizedTest
    @CsvSource({
      "9000-59-3, shellac itself",
      "9004-70-0, of lacquers",
      "9002-86-2, a plastic",
      "74-98-6, a propellant",
      "8001-26-1, a drying oil"
    })
    void areNotReadBackwards_ofLacquersPlasticsSpraysAndOils(String cas, String why) {
      assertThat(HazardNames.of(named("jar").cas(cas).build())).as(why).isEmpty();
    }

    @Test
    void ofASolvent_tellTheKind_butNoNameOfTheGroup() {
      NamedHazard solvent = one(named("thin stuff").cas("108-88-3").build());
      assertThat(solvent.hazard().kind()).isEqualTo(NameKind.SOLVENT);
      assertThat(solvent.listed()).isEqualTo("108-88-3");
      assertThat(solvent.text(Locale.ENGLISH)).startsWith("CAS number 108-88-3: a solvent");
    }
  }

  @Nested
  class Order {

    @Test
    void worstFirst_whatIsOnlyAskedForLast() {
      assertThat(HazardNames.ofName("cobalt blue hue, cadmium red, linseed oil, lead white"))
          .extracting(n -> n.hazard().id())
          .containsExactly("lead-white", "cadmium-red", "linseed-oil", "hue-of-a-metal");
    }
  }

  @Nested
  class UnknownNameInAFile {

    @Test
    void nameOfAHazard_isToldAsSuch_besideTheNearestNames() {
      assertThatThrownBy(() -> HazardNames.require(CATALOGUE, "Zinnobergrün"))
          .asInstanceOf(type(ProblemException.class))
          .satisfies(
              e -> {
                Problem problem = e.problems().get(0);
                assertThat(problem.code()).isEqualTo(NamingProblem.HAZARD_NAME);
                assertThat(problem.what(Locale.ENGLISH))
                    .isEqualTo(
                        "No material of the catalogue has this name, and it tells a hazard. “Zinnobergrün”: named like “Chrome green (lead chromate with iron blue)” (word; lead and chromium), never heated: ask for the CAS number or the Colour Index name.");
                assertThat(problem.what(Locale.GERMAN)).contains("nie erhitzen");
                assertThat(problem.details().get("nearest")).contains("vermilion");
              });
    }

    @Test
    void casNumber_isToldToo() {
      assertThatThrownBy(() -> HazardNames.require(CATALOGUE, "7758-97-6"))
          .asInstanceOf(type(ProblemException.class))
          .satisfies(
              e -> assertThat(e.problems().get(0).what(Locale.ENGLISH)).contains("Chrome yellow"));
    }

    @Test
    void otherUnknownName_isUnknown() {
      assertThatThrownBy(() -> HazardNames.require(CATALOGUE, "beeswacks"))
          .asInstanceOf(type(ProblemException.class))
          .satisfies(
              e -> assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.UNKNOWN));
    }

    @Test
    void knownName_givesTheMaterial() {
      assertThat(HazardNames.require(CATALOGUE, "Bleiweiß").id()).isEqualTo("lead-white");
    }

    @Test
    void nameThatSeveralShare_isAmbiguous() {
      assertThatThrownBy(() -> HazardNames.require(CATALOGUE, "PBr7"))
          .asInstanceOf(type(ProblemException.class))
          .satisfies(
              e -> assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.AMBIGUOUS));
    }
  }
}
