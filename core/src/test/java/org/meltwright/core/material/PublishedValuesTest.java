// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** The catalogue against figures that standards, handbooks and papers publish. */
class PublishedValuesTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard().plus(reference());

  private static String reference() {
    try (InputStream in =
        PublishedValuesTest.class.getResourceAsStream("reference-substances.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Material material(String id) {
    return CATALOGUE.require(id);
  }

  private static TemperatureRange celsius(String id, PropertyKey<DefinedTemperature> key) {
    return material(id).require(key).value().range();
  }

  private static NumberRange number(String id, PropertyKey<NumberRange> key) {
    return material(id).require(key).value();
  }

  private static <Q extends Quantity<Q>> double middle(
      String id, PropertyKey<PropertyRange<Q>> key) {
    return material(id).require(key).value().range().middleSi();
  }

  /** IAPWS-95 at 101.325 kPa. */
  @ParameterizedTest
  @CsvSource({"4, 999.975", "20, 998.207", "80, 971.790"})
  void waterDensity_isThatOfIapws95(double celsius, double expected) {
    TemperatureRange at = TemperatureRange.ofCelsius(celsius, celsius);
    assertThat(material("water").figures(PropertyKey.LIQUID_DENSITY))
        .filteredOn(f -> f.value().at().equals(java.util.Optional.of(at)))
        .singleElement()
        .satisfies(f -> assertThat(f.value().range().middleSi()).isCloseTo(expected, within(0.01)));
  }

  /** CRC Handbook: 6010 J/mol by 18.015 g/mol; boiling at 373.124 K. */
  @Test
  void water_fusionAndBoiling_areThoseOfTheCrcHandbook() {
    assertThat(middle("water", PropertyKey.HEAT_OF_FUSION))
        .isCloseTo(6010 / 0.018015, withinPercentage(0.1));
    assertThat(celsius("water", PropertyKey.BOILING_RANGE).low().kelvin())
        .isCloseTo(373.124, withinPercentage(0.1));
  }

  /** USP-NF, White Wax: melting range 62–65 °C, acid value 17–24. */
  @Test
  void whiteBeeswax_overlapsTheLimitsOfTheUspNf() {
    assertThat(celsius("beeswax-bleached", PropertyKey.MELTING_RANGE))
        .isEqualTo(TemperatureRange.ofCelsius(62, 65));
    NumberRange acid = number("beeswax-bleached", PropertyKey.ACID_VALUE);
    assertThat(acid.low()).isLessThanOrEqualTo(24);
    assertThat(acid.high()).isGreaterThanOrEqualTo(17);
  }

  /** Ph. Eur. (restated): 87 − 17 = 70 and 102 − 22 = 80. */
  @Test
  void beeswaxEsterValue_isSaponificationLessAcid_endByEnd() {
    NumberRange ester = number("beeswax-yellow", PropertyKey.ESTER_VALUE);
    NumberRange saponification = number("beeswax-yellow", PropertyKey.SAPONIFICATION_VALUE);
    NumberRange acid = number("beeswax-yellow", PropertyKey.ACID_VALUE);
    assertThat(ester).isEqualTo(new NumberRange(70, 80, "mg KOH/g"));
    assertThat(saponification.low() - acid.low()).isEqualTo(ester.low());
    assertThat(saponification.high() - acid.high()).isEqualTo(ester.high());
  }

  /** JECFA 1998: 78 − 7 = 71 and 95 − 2 = 93. */
  @Test
  void carnaubaEsterValue_isSaponificationLessAcid_atTheExtremes() {
    NumberRange ester = number("carnauba", PropertyKey.ESTER_VALUE);
    NumberRange saponification = number("carnauba", PropertyKey.SAPONIFICATION_VALUE);
    NumberRange acid = number("carnauba", PropertyKey.ACID_VALUE);
    assertThat(ester).isEqualTo(new NumberRange(71, 93, "mg KOH/g"));
    assertThat(saponification.low() - acid.high()).isEqualTo(ester.low());
    assertThat(saponification.high() - acid.low()).isEqualTo(ester.high());
  }

  /** JECFA 1998 against The Merck Index. */
  @Test
  void carnaubaMelting_ofJecfa_containsThatOfTheMerckIndex() {
    TemperatureRange jecfa = celsius("carnauba", PropertyKey.MELTING_RANGE);
    TemperatureRange merck =
        material("carnauba")
            .find(PropertyKey.MELTING_RANGE, "merck-index")
            .orElseThrow()
            .value()
            .range();
    assertThat(jecfa).isEqualTo(TemperatureRange.ofCelsius(80, 86));
    assertThat(merck).isEqualTo(TemperatureRange.ofCelsius(82, 85.5));
    assertThat(jecfa.contains(merck.low()) && jecfa.contains(merck.high())).isTrue();
  }

  /** 21 CFR 172.890; Dassanayake et al. 2009 for the calorimeter's range inside it. */
  @Test
  void riceBranWax_isWithinTheLimitsOf21Cfr() {
    TemperatureRange limits = celsius("rice-bran-wax", PropertyKey.MELTING_RANGE);
    assertThat(limits).isEqualTo(TemperatureRange.ofCelsius(75, 80));
    assertThat(material("rice-bran-wax").find(PropertyKey.MELTING_RANGE, "dassanayake-2009"))
        .hasValueSatisfying(f -> assertThat(limits.contains(f.value().range().low())).isTrue());
    assertThat(number("rice-bran-wax", PropertyKey.SAPONIFICATION_VALUE))
        .isEqualTo(new NumberRange(75, 120, "mg KOH/g"));
    assertThat(number("rice-bran-wax", PropertyKey.IODINE_VALUE).high()).isEqualTo(20);
  }

  /** Dassanayake et al. 2009, abstract: 129 &lt; 137.6 &lt; 190.5 kJ/kg. */
  @Test
  void plantWaxes_heatsOfFusion_rankAsInDassanayake() {
    assertThat(
            List.of(
                middle("candelilla", PropertyKey.HEAT_OF_FUSION),
                middle("carnauba", PropertyKey.HEAT_OF_FUSION),
                middle("rice-bran-wax", PropertyKey.HEAT_OF_FUSION)))
        .isSorted()
        .containsExactly(129_000.0, 137_600.0, 190_500.0);
  }

  /** Ranges of a public page, USP-NF, WHO (restated), 21 CFR and JECFA. */
  @Test
  void waxes_rankByMelting() {
    assertThat(
            List.of("soy-wax", "beeswax-bleached", "candelilla", "rice-bran-wax", "carnauba")
                .stream()
                .map(id -> celsius(id, PropertyKey.MELTING_RANGE).middle().celsius())
                .toList())
        .isSorted()
        .doesNotHaveDuplicates();
  }

  /** CRC Handbook: 342.45 K, 61.2 kJ/mol, 0.9408 g/ml; acid value 56105.6 by 284.48. */
  @Test
  void stearicAcid_isThatOfTheCrcHandbook() {
    assertThat(celsius("stearic-acid", PropertyKey.MELTING_RANGE).low().celsius())
        .isCloseTo(69.3, withinPercentage(0.5));
    assertThat(middle("stearic-acid", PropertyKey.HEAT_OF_FUSION))
        .isCloseTo(61_200 / 0.28448, withinPercentage(0.5));
    assertThat(middle("stearic-acid", PropertyKey.SOLID_DENSITY))
        .isCloseTo(940.8, withinPercentage(0.5));
    assertThat(number("stearic-acid", PropertyKey.ACID_VALUE).middle())
        .isCloseTo(56105.6 / 284.48, withinPercentage(0.5));
  }

  /** 56105.6 by 480.85, inside USP-NF cetyl esters 109–120 (remembered). */
  @Test
  void cetylPalmitate_saponification_liesInsideThePharmacopoeia() {
    double value = number("cetyl-palmitate", PropertyKey.SAPONIFICATION_VALUE).middle();
    assertThat(value).isCloseTo(56105.6 / 480.85, within(0.05)).isBetween(109.0, 120.0);
  }

  /** CRC Handbook: n-hexacosane 56.1 °C, n-octacosane 61.3 °C. */
  @ParameterizedTest
  @CsvSource({
    "paraffin-52-54, ref-n-pentacosane",
    "paraffin-56-58, ref-n-hexacosane",
    "paraffin-60-62, ref-n-octacosane"
  })
  void paraffinGrade_meltsWithin3KOfItsAlkane(String grade, String alkane) {
    TemperatureRange range = celsius(grade, PropertyKey.MELTING_RANGE);
    TemperaturePoint pure = celsius(alkane, PropertyKey.MELTING_RANGE).low();
    assertThat(range.low().celsius()).isCloseTo(pure.celsius(), within(3.0));
    assertThat(range.high().celsius()).isCloseTo(pure.celsius(), within(3.0));
    double fusion = middle(alkane, PropertyKey.HEAT_OF_FUSION);
    var wax = material(grade).require(PropertyKey.HEAT_OF_FUSION).value().range();
    assertThat(fusion).isBetween(wax.lowSi(), wax.highSi());
  }

  /** Perry's correlations for n-eicosane at 80 °C: 744 kg/m³, 1.94 mPa s, 0.139 W/(m K). */
  @Test
  void paraffinMelt_isDenserAndThickerThanEicosane_andConductsAlike() {
    var eicosane = material("ref-n-eicosane");
    var melt = material("paraffin-52-54").require(PropertyKey.LIQUID_DENSITY).value().range();
    assertThat(melt.lowSi()).isGreaterThan(middle("ref-n-eicosane", PropertyKey.LIQUID_DENSITY));
    double kinematic = number("paraffin-52-54", PropertyKey.KINEMATIC_VISCOSITY).low() * 1e-6;
    assertThat(kinematic * melt.lowSi())
        .isGreaterThan(eicosane.require(PropertyKey.VISCOSITY).value().range().lowSi());
    var conductivity =
        material("paraffin").require(PropertyKey.LIQUID_CONDUCTIVITY).value().range();
    assertThat(middle("ref-n-eicosane", PropertyKey.LIQUID_CONDUCTIVITY))
        .isBetween(conductivity.lowSi(), conductivity.highSi());
  }

  /** Heater guide: 75 Btu/lb, 1.67 Btu in/(h ft² °F), 60 lb/ft³; factors by definition. */
  @Test
  void beeswax_inUsUnits_isThatOfTheHeaterGuide() {
    Material beeswax = material("beeswax-yellow");
    assertThat(
            beeswax
                .find(PropertyKey.HEAT_OF_FUSION, "heater-guide")
                .orElseThrow()
                .value()
                .range()
                .lowSi())
        .isCloseTo(75 * 2326, withinPercentage(0.05));
    double btuInchPerHourFootSquareFahrenheit = 1055.05585262 * 0.0254 / 3600 / 0.09290304 * 1.8;
    assertThat(middle("beeswax-yellow", PropertyKey.SOLID_CONDUCTIVITY))
        .isCloseTo(1.67 * btuInchPerHourFootSquareFahrenheit, withinPercentage(0.5));
    assertThat(
            beeswax
                .find(PropertyKey.SOLID_DENSITY, "heater-guide")
                .orElseThrow()
                .value()
                .range()
                .lowSi())
        .isCloseTo(60 * 0.45359237 / 0.028316846592, withinPercentage(0.05));
  }

  /** CRC Handbook, solid densities in g/ml. */
  @ParameterizedTest
  @CsvSource({
    "titanium-white-rutile, 4.17",
    "titanium-white-anatase, 3.9",
    "zinc-white, 5.60",
    "chalk, 2.71",
    "barite, 4.49",
    "red-iron-oxide, 5.25",
    "black-iron-oxide, 5.17",
    "chromium-oxide-green, 5.22",
    "cadmium-yellow-pure, 4.826",
    "vermilion, 8.17",
    "kaolin, 2.59",
  })
  void pigmentDensity_isWithinOnePerCentOfTheCrcHandbook(String id, double gramsPerMillilitre) {
    assertThat(middle(id, PropertyKey.SOLID_DENSITY))
        .isCloseTo(gramsPerMillilitre * 1000, withinPercentage(1));
  }

  /** Gettens and Stout 1942 against the CRC Handbook. */
  @ParameterizedTest
  @CsvSource({"titanium-white-rutile", "zinc-white", "chalk", "kaolin", "lead-white"})
  void twoHandbooks_agreeWithinSixPerCent(String id) {
    double stout = density(id, "gettens-stout");
    assertThat(density(id, "crc-handbook")).isCloseTo(stout, withinPercentage(6));
  }

  private static double density(String id, String source) {
    return material(id)
        .find(PropertyKey.SOLID_DENSITY, source)
        .orElseThrow()
        .value()
        .range()
        .lowSi();
  }

  /** Atomic weights: 3 × 207.2 by 775.6 and 200.59 by 232.66. */
  @Test
  void metalShares_followFromAtomicWeights() {
    assertThat(material("lead-white").require(PropertyKey.LEAD_CONTENT).value().low().value())
        .isCloseTo(0.8014, within(0.0005));
    assertThat(material("vermilion").require(PropertyKey.MERCURY_CONTENT).value().low().value())
        .isCloseTo(0.8622, within(0.0005));
  }

  /**
   * US Coast Guard, CHRIS, sheet TPT: 95 °F closed cup, 488 °F, 0.8 %; IEC 60079-20-1 and NFPA 497:
   * 308.15 K, 526.15 K.
   */
  @Test
  void turpentine_fireData_areThoseOfTheCoastGuard_andIec60079Agrees() {
    assertThat(celsius("gum-turpentine", PropertyKey.FLASH_POINT).low().fahrenheit())
        .isCloseTo(95, within(1e-9));
    assertThat(celsius("gum-turpentine", PropertyKey.AUTOIGNITION).low().fahrenheit())
        .isCloseTo(488, within(0.1));
    assertThat(material("gum-turpentine").find(PropertyKey.FLASH_POINT, "iec-60079-20-1"))
        .hasValueSatisfying(
            f -> assertThat(f.value().range().low().kelvin()).isCloseTo(308.15, within(1e-9)));
    assertThat(material("gum-turpentine").find(PropertyKey.AUTOIGNITION, "iec-60079-20-1"))
        .hasValueSatisfying(
            f -> assertThat(f.value().range().low().kelvin()).isCloseTo(526.15, within(1e-9)));
    assertThat(number("gum-turpentine", PropertyKey.LOWER_FLAMMABLE_LIMIT).low()).isEqualTo(0.8);
  }

  /** IEC 60079-20-1: n-decane 46 °C and 235 °C; DIPPR: n-undecane 65.9 °C. */
  @Test
  void mineralSpirits_flashBetweenTheirParts() {
    TemperatureRange spirits = celsius("odourless-mineral-spirits", PropertyKey.FLASH_POINT);
    assertThat(spirits.contains(celsius("ref-n-decane", PropertyKey.FLASH_POINT).low())).isTrue();
    assertThat(spirits.high().celsius()).isLessThan(65.9);
    assertThat(
            material("odourless-mineral-spirits")
                .find(PropertyKey.AUTOIGNITION, "iec-60079-20-1")
                .orElseThrow()
                .value()
                .range())
        .isEqualTo(celsius("ref-n-decane", PropertyKey.AUTOIGNITION));
  }

  /** US Coast Guard, CHRIS, sheets in °F: item 4.1 (flash point) and item 4.7 (autoignition). */
  @ParameterizedTest
  @CsvSource({
    "paraffin, 390, 473",
    "carnauba, 540,",
    "stearic-acid, 365, 743",
    "linseed-oil, 403, 650",
    "white-spirit, 104, 410",
    "petrolatum, 360,"
  })
  void fireData_areThoseOfTheCoastGuard(String id, double flash, Double ignition) {
    assertThat(celsius(id, PropertyKey.FLASH_POINT).low().fahrenheit())
        .isCloseTo(flash, within(0.1));
    if (ignition != null) {
      assertThat(celsius(id, PropertyKey.AUTOIGNITION).low().fahrenheit())
          .isCloseTo(ignition, within(0.1));
    }
  }

  /** Same sheets: heat capacities in Btu/(lb °F), by definition 4186.8 J/(kg K). */
  @ParameterizedTest
  @CsvSource({"paraffin, 0.607", "linseed-oil, 0.461", "safflower-oil, 0.480"})
  void liquidHeats_areThoseOfTheCoastGuard(String id, double btuPerPoundFahrenheit) {
    assertThat(middle(id, PropertyKey.LIQUID_SPECIFIC_HEAT))
        .isCloseTo(btuPerPoundFahrenheit * 4186.8, withinPercentage(0.3));
  }

  /** P is the poise, 0.1 Pa s: grades P20 to P100. */
  @Test
  void standOil_runsFromP20ToP100() {
    var viscosity = material("stand-oil").require(PropertyKey.VISCOSITY).value().range();
    assertThat(viscosity.lowSi()).isCloseTo(20 * 0.1, within(1e-12));
    assertThat(viscosity.highSi()).isCloseTo(100 * 0.1, within(1e-12));
  }

  /** CRC Handbook: alpha-pinene 0.8539 g/ml at 25 °C. */
  @Test
  void turpentineDensity_liesBetween085And088() {
    assertThat(material("gum-turpentine").figures(PropertyKey.LIQUID_DENSITY))
        .allMatch(f -> f.value().range().lowSi() >= 850 && f.value().range().highSi() <= 880);
    assertThat(material("gum-turpentine").find(PropertyKey.LIQUID_DENSITY, "crc-handbook"))
        .hasValueSatisfying(f -> assertThat(f.value().range().lowSi()).isEqualTo(853.9));
  }

  /** ASTM D281-12, section 5.5. */
  @Test
  void rawLinseedOil_isThatOfAstmD281() {
    var density = material("linseed-oil").require(PropertyKey.LIQUID_DENSITY).value().range();
    assertThat(density.lowSi()).isEqualTo(926);
    assertThat(density.highSi()).isEqualTo(931);
    assertThat(number("linseed-oil", PropertyKey.SAPONIFICATION_VALUE))
        .isEqualTo(new NumberRange(185, 196, "mg KOH/g"));
    assertThat(number("linseed-oil", PropertyKey.ACID_VALUE))
        .isEqualTo(new NumberRange(2, 4, "mg KOH/g"));
    assertThat(number("linseed-oil", PropertyKey.IODINE_VALUE))
        .isEqualTo(new NumberRange(170, Double.POSITIVE_INFINITY, "g I2/100 g"));
  }

  /** The Merck Index (safflower), Gooch 2011 (walnut), Textbook of Materia Medica (poppy). */
  @Test
  void dryingOils_lieBetween092And0935_andLinseedTakesMostIodine() {
    double linseed = number("linseed-oil", PropertyKey.IODINE_VALUE).low();
    for (String id : List.of("linseed-oil", "walnut-oil", "poppy-oil", "safflower-oil")) {
      assertThat(material(id).figures(PropertyKey.LIQUID_DENSITY))
          .as(id)
          .allMatch(f -> f.value().range().lowSi() >= 920 && f.value().range().highSi() <= 935);
      if (!id.equals("linseed-oil")) {
        assertThat(number(id, PropertyKey.IODINE_VALUE).high()).isLessThan(linseed);
      }
    }
    assertThat(number("safflower-oil", PropertyKey.IODINE_VALUE))
        .isEqualTo(new NumberRange(140, 150, "g I2/100 g"));
    assertThat(number("safflower-oil", PropertyKey.REFRACTIVE_INDEX))
        .isEqualTo(new NumberRange(1.472, 1.475, ""));
  }

  /** Typical ASTM D281 values of one list, 2022. */
  @Test
  void oilAbsorption_ofOneList_ranksAsPrinted() {
    assertThat(
            List.of(
                    "lead-white",
                    "chalk",
                    "zinc-white",
                    "kaolin",
                    "phthalo-blue",
                    "prussian-blue",
                    "carbon-black")
                .stream()
                .map(id -> material(id).find(PropertyKey.OIL_ABSORPTION, "coatings-blog-2022"))
                .map(f -> f.map(Sourced::value).orElseThrow().middle())
                .toList())
        .isSorted()
        .containsExactly(10.5, 17.0, 18.5, 30.0, 34.0, 51.0, 124.0);
  }

  /** Massey: pigment to oil 7.5, 5 and 1 by weight. */
  @ParameterizedTest
  @CsvSource({
    "oil-paint-lead-white, 7.5, 11.8",
    "oil-paint-zinc-white, 5, 16.7",
    "oil-paint-ivory-black, 1, 50",
    "oil-paint-ultramarine, 2.3, 30.3",
    "oil-paint-phthalo-blue, 0.4, 71.4"
  })
  void mulledPaint_holdsOneIn1PlusRatioOfOil(String id, double ratio, double percent) {
    assertThat(100 / (1 + ratio)).isCloseTo(percent, within(0.05));
    assertThat(material(id).find(PropertyKey.OIL_CONTENT, "massey-1967"))
        .hasValueSatisfying(
            f -> assertThat(f.value().low().percent()).isCloseTo(percent, within(1e-9)));
  }

  /** Gardner 1911: 9 % and 50 % of oil in the paste. */
  @ParameterizedTest
  @CsvSource({"lead-white, 9, 9.9", "prussian-blue, 50, 100"})
  void paste_ofPPerCentOil_takes100POver100LessP(String id, double percent, double demand) {
    assertThat(100 * percent / (100 - percent)).isCloseTo(demand, within(0.05));
    assertThat(material(id).find(PropertyKey.OIL_DEMAND, "gardner-1911"))
        .hasValueSatisfying(f -> assertThat(f.value().low()).isEqualTo(demand));
  }

  /** Polymer Science Learning Center: 2.71, 2.55, 2.01, 1.65. */
  @Test
  void whites_rankByRefractiveIndex() {
    assertThat(
            List.of("titanium-white-rutile", "titanium-white-anatase", "zinc-white", "chalk")
                .stream()
                .map(id -> material(id).find(PropertyKey.REFRACTIVE_INDEX, "pslc").orElseThrow())
                .map(f -> f.value().middle())
                .toList())
        .containsExactly(2.71, 2.55, 2.01, 1.65);
  }

  /** By definition of the scales. */
  @Test
  void temperatures_convertByDefinition() {
    assertThat(PropertyKey.FLASH_POINT.parse("200 °F, not-stated").range().low().celsius())
        .isCloseTo(93.33, within(0.01));
    assertThat(TemperaturePoint.ofCelsius(90).fahrenheit()).isCloseTo(194, within(1e-9));
    assertThat(PropertyKey.FLASH_POINT.parse("308.15 K, not-stated").range().low().celsius())
        .isCloseTo(35, within(0.01));
  }

  /** PMC11876593, table 2: 1.2–3.4 % linear from 70 to 9 °C; Britannica 1911: melt 0.822. */
  @Test
  void castBeeswax_shrinksThreeToTenPerCent_andItsMeltTakesAFifthMoreAtMost() {
    NumberRange linear = number("beeswax-yellow", PropertyKey.LINEAR_SHRINKAGE);
    assertThat(volumeLoss(linear.low())).isCloseTo(3.6, within(0.05));
    assertThat(volumeLoss(linear.high())).isCloseTo(9.9, within(0.05));
    double growth =
        middle("beeswax-yellow", PropertyKey.SOLID_DENSITY)
                / middle("beeswax-yellow", PropertyKey.LIQUID_DENSITY)
            - 1;
    assertThat(growth).isBetween(0.14, 0.17);
  }

  private static double volumeLoss(double linearPercent) {
    return 100 * (1 - Math.pow(1 - linearPercent / 100, 3));
  }

  /** Tristearin: 3 × 56105.6 by 891.5. */
  @Test
  void soyWax_bracketsTristearin() {
    NumberRange soy = number("soy-wax", PropertyKey.SAPONIFICATION_VALUE);
    assertThat(3 * 56105.6 / 891.5).isCloseTo(188.8, within(0.05)).isBetween(soy.low(), soy.high());
  }
}
