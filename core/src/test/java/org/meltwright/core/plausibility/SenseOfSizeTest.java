// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.millimetres;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

class SenseOfSizeTest {

  private static final Path PAGE = Path.of("..", "docs", "reference", "usual-sizes.md");
  private static final MaterialCatalogue SHELF = MaterialCatalogue.standard();

  private final SenseOfSize sense = SenseOfSize.standard();

  private static Material shelf(String id) {
    return SHELF.require(id);
  }

  @ParameterizedTest
  @CsvSource({
    "beeswax-yellow, 1420 EUR/kg, 14.2 EUR/kg",
    "beeswax-bleached, 0.14 EUR/kg, 14 EUR/kg",
    "damar, 2.6 EUR/kg, 26 EUR/kg",
    "ivory-black, 44000 EUR/kg, 44 EUR/kg",
  })
  void price_withASlip_isAskedBack(String material, String price, String meant) {
    assertThat(sense.ofPrice(shelf(material), UnitPrice.parse(price)).flatMap(Remark::meant))
        .hasValueSatisfying(likely -> assertThat(likely.english()).isEqualTo(meant));
  }

  @ParameterizedTest
  @CsvSource({
    "beeswax-yellow, 9.80 EUR/kg",
    "beeswax-yellow, 54 EUR/kg",
    "carnauba, 22 EUR/kg",
    "ultramarine, 2100 EUR/kg",
    "oil-paint-titanium-white, 210 EUR/kg",
  })
  void price_dearOrCheapButPossible_drawsNothing(String material, String price) {
    assertThat(sense.ofPrice(shelf(material), UnitPrice.parse(price))).isEmpty();
  }

  @Test
  void gift_isNotJudged() {
    UnitPrice nothing = UnitPrice.parse("0 EUR/kg");
    Material wax = shelf("beeswax-yellow");

    assertThat(sense.ofPrice(wax, nothing)).isEmpty();
    assertThat(sense.ofPriceBeside(wax, nothing, List.of(UnitPrice.parse("14 EUR/kg")))).isEmpty();
  }

  @Test
  void price_inAnotherCurrency_isNotJudged() {
    assertThat(sense.ofPrice(shelf("damar"), UnitPrice.parse("4000 JPY/kg"))).isEmpty();
  }

  @Test
  void price_twentyTimesTheOtherOffers_isAskedBack() {
    List<UnitPrice> others =
        List.of(UnitPrice.parse("14.20 EUR/kg"), UnitPrice.parse("1.80 EUR/100 g"));
    Material wax = shelf("beeswax-yellow");

    assertThat(sense.ofPriceBeside(wax, UnitPrice.parse("365 EUR/kg"), others)).isPresent();
    assertThat(sense.ofPriceBeside(wax, UnitPrice.parse("355 EUR/kg"), others)).isEmpty();
    assertThat(sense.ofPriceBeside(wax, UnitPrice.parse("0.70 EUR/kg"), others)).isPresent();
    assertThat(sense.ofPriceBeside(wax, UnitPrice.parse("365 USD/kg"), others)).isEmpty();
    assertThat(sense.ofPriceBeside(wax, UnitPrice.parse("365 EUR/kg"), List.of())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "200 mm, 200 µm",
    "0.3 µm, 300 µm",
    "3 cm, 300 µm",
  })
  void film_withASlip_isAskedBack(String film, String meant) {
    assertThat(sense.of(SizeOf.FILM, QuantityParser.localeFree().parseLength(film)))
        .flatMap(Remark::meant)
        .hasValueSatisfying(likely -> assertThat(likely.english()).isEqualTo(meant));
  }

  @Test
  void size_farOff_withoutALikelySlip_saysWhatIsUsualOnly() {
    Remark remark = sense.of(SizeOf.BATCH, kilograms(1_000_000)).orElseThrow();

    assertThat(remark.meant()).isEmpty();
    assertThat(remark.text(Locale.ENGLISH))
        .isEqualTo("mass of a batch: 1000000 kg. Usual is 50 g to 20 kg (own policy).");
  }

  @Test
  void ratioReadTheWrongWay_isAskedBack_inBothLanguages() {
    Composition turned =
        Composition.ofParts(List.of(shelf("damar"), shelf("beeswax-yellow")), 7, 1);
    Remark remark = sense.ofMedium(turned).orElseThrow();

    assertThat(remark.text(Locale.ENGLISH))
        .isEqualTo(
            "resin in wax and resin: 87.5 %. Usual is 9 % to 20 % (common practice)."
                + " Was the ratio the other way round, 12.5 % resin meant?");
    assertThat(remark.text(Locale.GERMAN))
        .isEqualTo(
            "Harz in Wachs und Harz: 87,5 %. Üblich ist 9 % bis 20 % (Brauch des Handwerks)."
                + " War das Verhältnis andersherum, 12,5 % Harz gemeint?");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 4, 12.5, 25, 50})
  void medium_ofAnyCraft_drawsNothing(double percentResin) {
    Composition mix =
        Composition.ofPercents(
            List.of(shelf("damar"), shelf("beeswax-yellow")), percentResin, 100 - percentResin);
    assertThat(sense.ofMedium(mix)).isEmpty();
  }

  @Test
  void mixWithoutWax_isNoMedium() {
    assertThat(sense.ofMedium(Composition.of(shelf("damar")))).isEmpty();
  }

  @Property
  void whatIsUsual_neverDrawsARemark(@ForAll @DoubleRange(min = 0.1, max = 1) double film) {
    assertThat(sense.of(SizeOf.FILM, millimetres(film))).isEmpty();
  }

  @Property
  void whatWasMeant_isUsual(@ForAll @DoubleRange(min = 0.01, max = 1e9) double batch) {
    Optional<Remark> remark = sense.of(SizeOf.BATCH, grams(batch));

    assertThat(remark.isPresent()).isEqualTo(batch < 5 || batch > 200_000);
    remark
        .flatMap(Remark::meant)
        .ifPresent(
            meant ->
                assertThat(
                        sense.of(
                            SizeOf.BATCH, QuantityParser.localeFree().parseMass(meant.english())))
                    .isEmpty());
  }

  @Test
  void listOfOnesOwn_tellsAllThatIsWrongAtOnce() {
    String own =
        """
        film | 0.1 mm | 1 mm | 5 | own policy
        film | 0.1 mm | 2 mm | 5 | own policy
        film-of-wax | 0.1 mm | 1 mm | 5 | own policy
        batch | 2 kg | 1 kg | 5 | own policy
        cup | 5 g | 1 kg | 5 | own policy
        vessel | 1 l | 20 l | 0.5 | own policy
        power | 1 W | 20 W | 5 | somebody said so
        price damar | 5 USD/kg | 20 USD/kg | 5 | own policy
        panel-side | 5 cm
        """;

    assertThatThrownBy(() -> SenseOfSize.parse(own))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems())
                    .allMatch(problem -> problem.code() == PlausibilityProblem.MALFORMED)
                    .extracting(Problem::path)
                    .containsExactly("/2", "/3", "/4", "/5", "/6", "/7", "/8", "/9"));
  }

  @Test
  void page_isWhatTheDataSay() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf("| size |");
    String expected = page.substring(0, from) + table();
    if (Boolean.getBoolean("pages.write")) {
      Files.writeString(PAGE, expected);
    } else {
      assertThat(page).as("%s is older than the data", PAGE).isEqualTo(expected);
    }
  }

  private static String table() throws IOException {
    StringBuilder table =
        new StringBuilder(
            "| size | usual from | to | times outside without a word | known by |\n"
                + "|---|---|---|---|---|\n");
    try (InputStream in = SenseOfSize.class.getResourceAsStream("usual-sizes.txt")) {
      new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> "| " + line.replaceAll(" *\\| *", " | ") + " |\n")
          .forEach(table::append);
    }
    return table.toString();
  }
}
