// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.units.ProblemException;

class PigmentHazardsTest {

  private static final Set<String> NEVER_HEATED =
      Set.of("lead", "chromate", "mercury", "arsenic", "radioactive");

  @ParameterizedTest
  @CsvSource({
    "1319-46-6, NEVER_HEATED, REFUSE_POWDER",
    "8012-00-8, NEVER_HEATED, REFUSE_POWDER",
    "1344-37-2, NEVER_HEATED, REFUSE_POWDER",
    "1344-48-5, NEVER_HEATED, REFUSE_POWDER",
    "1306-23-6, MELTED_ONLY, TOXIC_METAL",
    "8048-07-5, MELTED_ONLY, TOXIC_METAL",
    "58339-34-7, MELTED_ONLY, TOXIC_METAL",
    "14038-43-8, MELTED_ONLY, HARMFUL",
    "1345-16-0, FLAME_FREE, TOXIC_METAL",
    "1314-13-2, FLAME_FREE, HARMFUL",
    "147-14-8, FLAME_FREE, FINE",
    "57455-37-5, NO_LIMIT_KNOWN, FINE"
  })
  void byCas_givesHeatAndDust(String cas, HeatUse heat, DustClass dust) {
    assertThat(PigmentHazards.byCas(cas))
        .hasValueSatisfying(
            p -> {
              assertThat(p.heatUse()).isEqualTo(heat);
              assertThat(p.dust()).isEqualTo(dust);
            });
  }

  @Test
  void ownPigment_whoseReasonHasNoText_isRefused() {
    PigmentHazard red = PigmentHazards.byId("cadmium-red").orElseThrow();

    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> withReason(red, "house-rule"))
        .satisfies(
            e -> assertThat(e.problems().get(0).code()).isEqualTo(HazardProblem.PIGMENT_REASON));
    assertThat(withReason(red, red.reasonKey())).isEqualTo(red);
  }

  private static PigmentHazard withReason(PigmentHazard pigment, String key) {
    return new PigmentHazard(
        pigment.id(),
        pigment.name(),
        pigment.colourIndexNames(),
        pigment.casNumbers(),
        pigment.elements(),
        pigment.heatUse(),
        pigment.dust(),
        key,
        pigment.source(),
        pigment.knowledge());
  }

  @Test
  void byColourIndexName_understandsSuffixes() {
    assertThat(PigmentHazards.byColourIndexName("PB15:3"))
        .map(PigmentHazard::id)
        .hasValue("phthalo-blue");
  }

  @Test
  void sharedColourIndexName_givesTheStrictest() {
    assertThat(PigmentHazards.byColourIndexName("PBr7"))
        .map(PigmentHazard::dust)
        .hasValue(DustClass.HARMFUL);
  }

  @Test
  void of_findsByIdThenNumberThenName() {
    Material undecided = Material.builder("cadmium-yellow").build();
    Material byNumber = Material.builder("my-red").cas("58339-34-7").build();
    Material byName = Material.builder("my-green").colourIndexName("PG36").build();
    assertThat(PigmentHazards.of(undecided))
        .map(PigmentHazard::heatUse)
        .hasValue(HeatUse.MELTED_ONLY);
    assertThat(PigmentHazards.of(byNumber)).map(PigmentHazard::id).hasValue("cadmium-red");
    assertThat(PigmentHazards.of(byName)).map(PigmentHazard::id).hasValue("phthalo-green");
  }

  @Test
  void of_takesTheStricterOfIdAndNumber() {
    Material mislabelled = Material.builder("titanium-white-rutile").cas("1319-46-6").build();
    assertThat(PigmentHazards.of(mislabelled)).map(PigmentHazard::id).hasValue("lead-white");
  }

  @Test
  void unknownPigment_hasNoAnswer() {
    assertThat(PigmentHazards.of(Material.builder("moon-dust").build())).isEmpty();
  }

  @Test
  void everyRow_hasTextsInBothLanguagesAndUniqueId() {
    assertThat(PigmentHazards.all()).extracting(PigmentHazard::id).doesNotHaveDuplicates();
    assertThat(PigmentHazards.all())
        .allSatisfy(
            p -> {
              for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
                assertThat(p.name(locale)).isNotBlank();
                assertThat(p.reason(locale)).endsWith(".");
                assertThat(p.dustAdvice(locale)).endsWith(".");
              }
            });
  }

  @Test
  void leadMercuryAndArsenic_areNeverHeated() {
    assertThat(PigmentHazards.all())
        .filteredOn(p -> p.holds("Pb") || p.holds("Hg") || p.holds("As"))
        .isNotEmpty()
        .allMatch(p -> p.heatUse() == HeatUse.NEVER_HEATED);
  }

  @Test
  void nothingElse_isNeverHeated() {
    assertThat(PigmentHazards.all())
        .filteredOn(p -> p.heatUse() == HeatUse.NEVER_HEATED)
        .allMatch(p -> NEVER_HEATED.contains(p.reasonKey()));
  }

  @ParameterizedTest
  @CsvSource({"7789-06-2", "10294-40-3", "13530-65-9", "11103-86-9", "13765-19-0"})
  void chromates_areNeverHeated(String cas) {
    assertThat(PigmentHazards.byCas(cas))
        .map(PigmentHazard::heatUse)
        .hasValue(HeatUse.NEVER_HEATED);
  }

  @Test
  void leadTinYellow_isLead() {
    assertThat(PigmentHazards.byCas("12036-31-6")).map(p -> p.holds("Pb")).hasValue(true);
  }

  @ParameterizedTest
  @CsvSource({
    "PY157, REFUSE_POWDER",
    "PBr7,  HARMFUL",
    "PG18,  HARMFUL",
    "PG17,  HARMFUL",
    "PY35:1, TOXIC_METAL"
  })
  void dust_followsTheListOfNames(String colourIndexName, DustClass dust) {
    assertThat(PigmentHazards.byColourIndexName(colourIndexName))
        .map(PigmentHazard::dust)
        .hasValue(dust);
  }

  @Test
  void cobaltViolet_isTheArsenateUntilANumberSettlesIt() {
    Material.Builder unsettled = Material.builder("cobalt-violet");
    assertThat(PigmentHazards.of(unsettled.build()))
        .map(PigmentHazard::heatUse)
        .hasValue(HeatUse.NEVER_HEATED);
    assertThat(PigmentHazards.of(Material.builder("cobalt-violet").cas("13455-36-2").build()))
        .map(PigmentHazard::id)
        .hasValue("cobalt-violet-phosphate");
    assertThat(PigmentHazards.of(Material.builder("cobalt-violet").colourIndexName("PV14").build()))
        .map(PigmentHazard::heatUse)
        .hasValue(HeatUse.FLAME_FREE);
    assertThat(PigmentHazards.of(Material.builder("cobalt-violet").cas("13463-67-7").build()))
        .map(PigmentHazard::heatUse)
        .hasValue(HeatUse.NEVER_HEATED);
  }

  @Test
  void colourIndexNameOfAWorsePigment_prevailsOverTheNumber() {
    Material contradicted =
        Material.builder("my-white").cas("13463-67-7").colourIndexName("PW1").build();
    Material sienna =
        Material.builder("my-sienna").cas("1309-37-1").colourIndexName("PBr7").build();
    assertThat(PigmentHazards.of(contradicted)).map(PigmentHazard::id).hasValue("lead-white");
    assertThat(PigmentHazards.of(sienna)).map(PigmentHazard::dust).hasValue(DustClass.FINE);
  }

  @Test
  void casNumbers_haveTheirCheckDigit() {
    assertThat(PigmentHazards.all())
        .flatExtracting(PigmentHazard::casNumbers)
        .allSatisfy(cas -> assertThat(hasCheckDigit((String) cas)).as("%s", cas).isTrue());
  }

  private static boolean hasCheckDigit(String cas) {
    String digits = cas.replace("-", "");
    int sum = 0;
    for (int i = 1; i < digits.length(); i++) {
      sum += i * Character.digit(digits.charAt(digits.length() - 1 - i), 10);
    }
    return sum % 10 == Character.digit(digits.charAt(digits.length() - 1), 10);
  }

  @Test
  void everyPigmentOfTheCatalogue_isInTheTable() {
    assertThat(MaterialCatalogue.standard().byFamily(MaterialFamily.PIGMENT))
        .filteredOn(m -> !m.id().equals("pigment-unspecified"))
        .isNotEmpty()
        .allSatisfy(m -> assertThat(PigmentHazards.of(m)).as(m.id()).isPresent());
  }
}
