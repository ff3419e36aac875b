// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * The record forms of an invented studio's results, kept as files: a change of a form or of a value
 * shows here. To write them anew: {@code mvn -pl examples -am test -Dtest=GoldenFilesTest
 * -Dsurefire.failIfNoSpecifiedTests=false -Dpages.write=true}; then read the difference.
 *
 * <p>Since files alone would keep a mistake as faithfully as a truth, sums, margins and order are
 * worked out again from what stands in them.
 */
class GoldenFilesTest {

  private static final Path FILES =
      Path.of("src", "test", "resources", "org", "meltwright", "examples", "data");

  /** The components that hold ids and codes, the same in all languages. */
  private static final Set<String> CODES =
      Set.of(
          "addition",
          "balance",
          "basis",
          "category",
          "code",
          "dustClass",
          "hazardClass",
          "id",
          "ingredient",
          "material",
          "path",
          "pigment",
          "property",
          "recipe",
          "ruleId",
          "ruleIds",
          "rules",
          "rulesDay",
          "severity",
          "statement",
          "worstSeverity");

  static List<Form> forms() {
    return Forms.all();
  }

  @BeforeAll
  static void write_if_asked() throws IOException {
    if (Boolean.getBoolean("pages.write")) {
      Files.createDirectories(FILES);
      for (Form form : forms()) {
        Files.writeString(file(form.name()), form.byJackson(), StandardCharsets.UTF_8);
      }
    }
  }

  private static Path file(String name) {
    return FILES.resolve(name + ".json");
  }

  private static JsonNode golden(String name) throws IOException {
    return Form.tree(Files.readString(file(name), StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @MethodSource("forms")
  void file_holds_the_tree_of_the_result(Form form) throws IOException {
    assertThat(Form.tree(form.byJackson())).isEqualTo(golden(form.name()));
  }

  @Test
  void no_file_stands_without_a_result() throws IOException {
    List<String> names = forms().stream().map(f -> f.name() + ".json").toList();
    try (Stream<Path> files = Files.list(FILES)) {
      assertThat(files.map(f -> f.getFileName().toString())).hasSameElementsAs(names);
    }
  }

  @Test
  void cost_of_each_line_is_the_sum_of_its_parts_and_of_its_leaves() throws IOException {
    JsonNode root = golden("cost-tree");

    assertThat(leaves(root).map(GoldenFilesTest::money).reduce(BigDecimal::add))
        .contains(money(root));
    assertPartsAddUp(root);
    assertThat(money(root)).isEqualTo(Forms.cost().total().getAmount());
  }

  private static void assertPartsAddUp(JsonNode line) {
    if (!line.get("parts").isEmpty()) {
      assertThat(
              line.get("parts").valueStream().map(GoldenFilesTest::money).reduce(BigDecimal::add))
          .contains(money(line));
      line.get("parts").forEach(GoldenFilesTest::assertPartsAddUp);
    }
  }

  private static Stream<JsonNode> leaves(JsonNode line) {
    return line.get("parts").isEmpty()
        ? Stream.of(line)
        : line.get("parts").valueStream().flatMap(GoldenFilesTest::leaves);
  }

  private static BigDecimal money(JsonNode holder) {
    return digits(holder.get("amount"));
  }

  private static BigDecimal digits(JsonNode money) {
    assertThat(money.get("currency").asString()).isEqualTo("EUR");
    return new BigDecimal(money.get("amount").asString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"make-or-buy", "buy-and-not-make"})
  void saving_is_the_cheapest_offer_less_the_own_cost(String name) throws IOException {
    JsonNode choice = golden(name);
    BigDecimal saving = digits(choice.get("savingPerKilogram"));
    BigDecimal own = digits(choice.get("ownPerKilogram"));
    List<BigDecimal> offers =
        choice.get("offers").valueStream().map(o -> digits(o.get("landedPerKilogram"))).toList();

    assertThat(offers).isSorted();
    assertThat(saving).isCloseTo(offers.get(0).subtract(own), within(new BigDecimal("0.01")));
    assertThat(choice.get("makingCheaper").asBoolean()).isEqualTo(saving.signum() > 0);
    assertThat(choice.get("breakEvenKilogramsPerYear").isNull()).isEqualTo(saving.signum() < 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"weighing-sheet.en", "weighing-sheet.de"})
  void weights_add_up_and_are_whole_steps_of_their_balances(String name) throws IOException {
    JsonNode sheet = golden(name);
    List<JsonNode> lines = sheet.get("lines").valueStream().toList();
    double coarsest =
        lines.stream().mapToDouble(l -> number(l, "intervalKilograms")).max().orElse(0);

    assertThat(sum(lines, "exactKilograms"))
        .isCloseTo(number(sheet, "exactTotalKilograms"), within(1e-12));
    assertThat(sum(lines, "printedKilograms"))
        .isCloseTo(number(sheet, "printedTotalKilograms"), within(1e-12));
    assertThat(number(sheet, "printedTotalKilograms"))
        .isCloseTo(number(sheet, "exactTotalKilograms"), within(coarsest / 2 * (1 + 1e-9)));
    assertThat(number(sheet, "exactNetKilograms")).isCloseTo(0.48, within(1e-12));
    for (JsonNode line : lines) {
      double steps = number(line, "printedKilograms") / number(line, "intervalKilograms");
      assertThat(steps).isCloseTo(Math.rint(steps), within(1e-6));
    }
  }

  private static double number(JsonNode holder, String name) {
    return holder.get(name).asDouble();
  }

  private static double sum(List<JsonNode> lines, String name) {
    return lines.stream().mapToDouble(l -> number(l, name)).sum();
  }

  @ParameterizedTest
  @ValueSource(strings = {"composition-solid", "composition-melt"})
  void shares_make_up_the_whole_and_density_lies_in_its_range(String name) throws IOException {
    JsonNode mix = golden(name);
    List<JsonNode> shares = mix.get("shares").valueStream().toList();

    assertThat(sum(shares, "massFraction")).isCloseTo(1, within(1e-12));
    assertThat(sum(shares, "volumeFraction")).isCloseTo(1, within(1e-12));
    assertThat(number(shares.get(0), "massFraction")).isCloseTo(1.0 / 9, within(1e-12));
    assertThat(number(mix, "densityKilogramsPerCubicMetre"))
        .isBetween(
            number(mix, "lowDensityKilogramsPerCubicMetre"),
            number(mix, "highDensityKilogramsPerCubicMetre"));
    assertThat(mix.get("basis").asString())
        .isEqualTo(name.equals("composition-melt") ? "liquid" : "solid");
  }

  @Test
  void class_needs_plain_and_coloured_mass_for_its_area() throws IOException {
    JsonNode plan = golden("class-plan");
    double perSquareMetre = 0.00015 * 8 * 970 / 0.8;
    double total = (2.88 * perSquareMetre + 12 * 0.06) * 1.1;

    assertThat(number(plan, "squareMetres")).isCloseTo(12 * 6 * 0.04, within(1e-12));
    assertThat(number(plan, "totalKilograms")).isCloseTo(total, within(1e-9));
    assertThat(number(plan, "plainKilograms")).isCloseTo(0.6 * total, within(1e-9));
    assertThat(sum(plan.get("colours").valueStream().toList(), "massKilograms"))
        .isCloseTo(0.4 * total, within(1e-9));
  }

  @Test
  void orders_add_up_and_cover_the_needs() throws IOException {
    JsonNode plan = golden("purchase-plan");
    BigDecimal all = BigDecimal.ZERO;
    for (JsonNode order : plan.get("orders")) {
      BigDecimal goods =
          order
              .get("lines")
              .valueStream()
              .map(GoldenFilesTest::money)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      BigDecimal whole =
          Stream.of("freight", "handling", "flatDuty")
              .map(name -> digits(order.get(name)))
              .reduce(goods, BigDecimal::add);
      assertThat(digits(order.get("total"))).isEqualTo(whole);
      all = all.add(whole);
    }

    assertThat(plan.get("orders").valueStream().map(o -> digits(o.get("flatDuty"))))
        .contains(new BigDecimal("3.00"));
    assertThat(digits(plan.get("total"))).isEqualTo(all);
    assertThat(digits(plan.get("lowerBound"))).isEqualTo(all);
    assertThat(plan.get("provedOptimal").asBoolean()).isTrue();
    for (JsonNode left : plan.get("leftOver")) {
      double need = left.get("material").asString().equals("damar") ? 0.55 : 4.4;
      assertThat(number(left, "boughtKilograms") - number(left, "massKilograms"))
          .isCloseTo(need, within(1e-9));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "heating-review-blocked.en",
        "heating-review-blocked.de",
        "heating-review-allowed.en",
        "heating-review-allowed.de"
      })
  void margins_agree_with_the_temperatures_and_blocking_with_the_findings(String name)
      throws IOException {
    JsonNode review = golden(name);
    JsonNode wax = review.get("wax");
    List<Boolean> blocking =
        review.get("findings").valueStream().map(f -> f.get("blocking").asBoolean()).toList();

    assertThat(number(wax, "marginToTargetKelvin"))
        .isCloseTo(90 - number(wax, "celsius"), within(1e-9));
    assertThat(number(wax, "marginToHardCeilingKelvin"))
        .isCloseTo(93.3 - number(wax, "celsius"), within(1e-9));
    assertThat(review.get("blocking").asBoolean())
        .isEqualTo(blocking.contains(true))
        .isEqualTo(name.contains("blocked"));
    assertThat(blocking).isSortedAccordingTo((a, b) -> Boolean.compare(b, a));
    assertThat(review.get("standingAdvice")).hasSizeGreaterThan(5);
    assertThat(review.get("notAsked").asString())
        .startsWith(name.endsWith(".de") ? "Nicht gefragt" : "Not asked");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "heating-review-blocked",
        "heating-review-allowed",
        "hazard-review",
        "label-complete",
        "label-incomplete",
        "weighing-sheet",
        "problems"
      })
  void languages_differ_in_words_and_in_nothing_else(String name) throws IOException {
    JsonNode english = golden(name + ".en");
    JsonNode german = golden(name + ".de");

    assertThat(german).isNotEqualTo(english);
    assertThat(wordless(german, "")).isEqualTo(wordless(english, ""));
  }

  /** What a tree holds beside words: its shape, numbers, ids and codes. */
  private static String wordless(JsonNode node, String key) {
    if (node.isObject()) {
      return node.propertyStream()
          .map(e -> e.getKey() + ":" + wordless(e.getValue(), e.getKey()))
          .collect(Collectors.joining(",", "{", "}"));
    } else if (node.isArray()) {
      return node.valueStream()
          .map(v -> wordless(v, key))
          .collect(Collectors.joining(",", "[", "]"));
    }
    return node.isString() && !CODES.contains(key) ? "word" : node.toString();
  }

  @Test
  void unknown_pigment_leaves_classes_open_and_names_itself() throws IOException {
    JsonNode review = golden("hazard-review.en");

    assertThat(review.get("open").isEmpty()).isFalse();
    for (JsonNode open : review.get("open")) {
      assertThat(open.get("insufficientData").asBoolean()).isTrue();
      assertThat(open.get("ingredients").toString()).contains("Cadmium red");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"label-complete.en", "label-incomplete.de"})
  void label_is_complete_if_nothing_is_missing_and_no_class_is_open(String name)
      throws IOException {
    JsonNode label = golden(name);
    boolean complete = label.get("complete").asBoolean();

    assertThat(complete)
        .isEqualTo(label.get("gaps").isEmpty())
        .isEqualTo(name.contains("-complete"));
    assertThat(!complete || label.get("review").get("open").isEmpty()).isTrue();
    assertThat(
            label.get("composition").valueStream().mapToDouble(s -> number(s, "highPercent")).sum())
        .isCloseTo(100, within(1e-9));
  }
}
