// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.grams;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.CupShape;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.TemperatureScale;
import org.meltwright.units.VolumeFraction;

/**
 * All that is written for a German reader is German: no word of it is also in the English text, but
 * for those that both languages share, which a list names with their reason.
 */
class GermanReaderTest {

  private static final Path ROOT = Path.of("..");
  private static final Path SHARED =
      Path.of(
          "src",
          "test",
          "resources",
          "org",
          "meltwright",
          "examples",
          "words-of-both-languages.txt");
  private static final Path GOLDEN =
      Path.of("src", "test", "resources", "org", "meltwright", "examples", "data");
  private static final List<String> MODULES = List.of("units", "core", "safety", "examples");

  /** Ids of materials and properties, which programs and files say, and a person's own names. */
  private static final Pattern IDS =
      Pattern.compile(
          "beeswax-yellow|damar|bienenwax|Malmittel|Wachs|Platte|1 gremm|1"
              + " Tasse|„gremm“|„Tasse“|NaN|\\([a-z-]+\\)");

  private static final Pattern WORD = Pattern.compile("[\\p{L}]{3,}");
  private static final Pattern GUARD_TAKEN =
      Pattern.compile("import static ([a-z.]+)\\.(\\w+)\\.CHECK;");
  private static final Pattern BESIDE = Pattern.compile("Check\\.beside\\((\\w+)\\.class\\)");
  private static final Pattern GUARD =
      Pattern.compile("\\bCHECK\\s*\\.(?:between|finite|named|ordered|reversed|name)\\(");

  /** The studio file guards its numbers by bounds of its own. */
  private static final Pattern BOUNDS = Pattern.compile("\\brequire\\(");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

  private static Set<String> shared() throws IOException {
    return Files.readAllLines(SHARED, StandardCharsets.UTF_8).stream()
        .filter(line -> !line.startsWith("#"))
        .flatMap(line -> Stream.of(line.split(",")))
        .map(String::strip)
        .collect(Collectors.toSet());
  }

  private static Set<String> words(String text) {
    return WORD.matcher(text)
        .results()
        .map(word -> word.group().toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The English words left in German texts, each with a text it stands in. */
  private static Map<String, String> english(Map<String, String> germanByEnglish)
      throws IOException {
    Set<String> shared = shared();
    Map<String, String> left = new TreeMap<>();
    germanByEnglish.forEach(
        (english, german) -> {
          Set<String> both = words(german);
          both.retainAll(words(english));
          both.removeAll(shared);
          both.forEach(word -> left.put(word, german));
        });
    return left;
  }

  private static Map<String, String> spoken(Stream<Function<Locale, String>> texts) {
    Map<String, String> spoken = new TreeMap<>();
    texts.forEach(text -> spoken.put(text.apply(Locale.ENGLISH), text.apply(Locale.GERMAN)));
    return spoken;
  }

  @Test
  void texts_of_the_bundles() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    for (Path bundle : files("messages_de.properties")) {
      String name = packageOf(bundle) + ".messages";
      ResourceBundle english = ResourceBundle.getBundle(name, Locale.ENGLISH);
      ResourceBundle german = ResourceBundle.getBundle(name, Locale.GERMAN);
      english.keySet().forEach(key -> texts.put(plain(english, key), plain(german, key)));
    }

    assertThat(texts).hasSizeGreaterThan(700);
    assertThat(english(texts)).isEmpty();
  }

  private static String plain(ResourceBundle bundle, String key) {
    return bundle.getString(key).replaceAll("\\{[^}]*}", " ");
  }

  private static List<Path> files(String name) throws IOException {
    List<Path> found = new ArrayList<>();
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main"))) {
        files.filter(file -> file.getFileName().toString().endsWith(name)).forEach(found::add);
      }
    }
    return found;
  }

  private static String packageOf(Path file) {
    String path = file.getParent().toString().replace('\\', '/');
    return path.substring(path.indexOf("org/meltwright")).replace('/', '.');
  }

  /** The package whose words a file's guards say: that of the class that they stand beside. */
  private static String packageThatSays(Path file, String code) throws IOException {
    Matcher taken = GUARD_TAKEN.matcher(code);
    if (taken.find()) {
      Path from = file.getParent();
      while (!from.endsWith("java")) {
        from = from.getParent();
      }
      Path guard =
          from.resolve((taken.group(1) + "." + taken.group(2)).replace('.', '/') + ".java");
      return Files.exists(guard)
          ? packageThatSays(guard, Files.readString(guard, StandardCharsets.UTF_8))
          : taken.group(1);
    }
    Matcher beside = BESIDE.matcher(code);
    Matcher anchor =
        Pattern.compile("import ([a-z.]+)\\." + (beside.find() ? beside.group(1) : "-") + ";")
            .matcher(code);
    return anchor.find() ? anchor.group(1) : packageOf(file);
  }

  /** Every name that a guard says stands in German in the bundle of the package that says it. */
  @Test
  void names_that_guards_say() throws IOException {
    Map<String, String> names = new TreeMap<>();
    List<String> missing = new ArrayList<>();
    for (Path file : files(".java")) {
      String code = Files.readString(file, StandardCharsets.UTF_8);
      Set<String> said = namesSaid(code, GUARD);
      if (file.getParent().endsWith(Path.of("studio", "file"))) {
        said.addAll(namesSaid(code, BOUNDS));
      }
      if (!said.isEmpty()) {
        ResourceBundle german =
            ResourceBundle.getBundle(packageThatSays(file, code) + ".messages", Locale.GERMAN);
        for (String name : said) {
          String key = "what." + name.replace(' ', '-');
          if (german.containsKey(key)) {
            names.put(name, german.getString(key));
          } else {
            missing.add(file.getFileName() + ": " + name);
          }
        }
      }
    }

    assertThat(missing).isEmpty();
    assertThat(names).hasSizeGreaterThan(150);
    assertThat(english(names)).isEmpty();
  }

  private static Set<String> namesSaid(String code, Pattern guard) {
    Set<String> names = new TreeSet<>();
    Matcher guards = guard.matcher(code);
    while (guards.find()) {
      LITERAL
          .matcher(call(code, guards.end()))
          .results()
          .map(literal -> literal.group(1))
          .filter(text -> text.matches("\\p{L}.*\\p{L}{2,}.*"))
          .forEach(names::add);
    }
    return names;
  }

  /** The arguments of a call, from behind its first parenthesis to the one that closes it. */
  private static String call(String code, int from) {
    int depth = 1;
    int i = from;
    while (depth > 0) {
      char c = code.charAt(i++);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
    }
    return code.substring(from, i);
  }

  @Test
  void names_of_kinds_and_properties() throws IOException {
    assertThat(english(spoken(QuantityKind.all().stream().map(kind -> kind::name)))).isEmpty();
    Map<String, String> properties = new TreeMap<>();
    PropertyKey.all()
        .forEach(
            key ->
                properties.put(
                    key.id().replace('-', ' '),
                    key.inWords().german().replace("(" + key.id() + ")", "")));
    assertThat(english(properties)).isEmpty();
  }

  @Test
  void values_that_the_formatter_writes() {
    QuantityFormatter german = QuantityFormatter.exact().withLocale(Locale.GERMANY);

    assertThat(german.format(MassFraction.ofPercent(12.5))).isEqualTo("12,5 Masse-%");
    assertThat(german.format(VolumeFraction.ofPercent(12.5))).isEqualTo("12,5 Vol.-%");
    assertThat(german.format(TemperatureRange.ofCelsius(62.5, 65), TemperatureScale.CELSIUS))
        .isEqualTo("62,5–65 °C");
    assertThat(german.format(0.04)).isEqualTo("0,04");
    QuantityParser parser = QuantityParser.forLocale(Locale.GERMANY);
    assertThat(parser.parseMassFraction("12,5 Masse-%")).isEqualTo(MassFraction.ofPercent(12.5));
    assertThat(parser.parseVolumeFraction("12,5 Vol.-%")).isEqualTo(VolumeFraction.ofPercent(12.5));
  }

  /** Guards and refusals of many doors, as a German reader is told. */
  @Test
  void problems_of_the_doors() throws IOException {
    List<Problem> problems = problems();
    Map<String, String> texts = new TreeMap<>();
    for (Problem problem : problems) {
      for (Function<Locale, String> part : parts(problem)) {
        texts.put(part.apply(Locale.ENGLISH), part.apply(Locale.GERMAN));
      }
    }

    assertThat(problems).hasSizeGreaterThan(25);
    texts.replaceAll((english, german) -> IDS.matcher(german).replaceAll(" "));
    assertThat(english(texts)).isEmpty();
    assertThat(texts.values())
        .filteredOn(text -> text.matches(".*\\d\\.\\d.*"))
        .containsExactly("ein Dezimalpunkt, wie in 1.5");
  }

  private static List<Function<Locale, String>> parts(Problem problem) {
    return List.of(
        locale -> problem.what(locale),
        locale -> problem.found(locale),
        locale -> problem.allowed(locale),
        locale -> problem.remedy(locale));
  }

  private static List<Problem> problems() {
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    Material resin = MaterialCatalogue.standard().require("damar");
    Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
    Mixture pot = Mixture.of(medium, grams(900.5));
    Recipe recipe = Recipe.builder("Malmittel").part(resin, 1).part(wax, 8).build();
    List<Runnable> doors =
        List.of(
            () -> grams(Double.NaN),
            () -> MassFraction.ofPercent(120.5),
            () -> TemperatureRange.ofCelsius(65.5, 62.5),
            () -> TemperaturePoint.ofCelsius(-300.5),
            () -> new QuantityRange<>(QuantityKind.MASS, 2.5, 1.5),
            () -> QuantityParser.localeFree().parseMass("8 fl oz"),
            () -> QuantityParser.localeFree().parseMass("1 gremm"),
            () -> QuantityParser.localeFree().parseVolume("1 Tasse"),
            () -> QuantityParser.localeFree().parseMassFraction("120,5"),
            () -> CostItem.material("Wachs", grams(-1.5), UnitPrice.parse("1 EUR/kg")),
            () -> CostItem.equipment("Platte", Money.parse("EUR 90"), -0.5, 200),
            () ->
                CostItem.counted(CostKind.OTHER, "Glas", Money.parse("EUR 1.50"), BigDecimal.ONE)
                    .times(-0.5),
            () -> ExactMoney.parse("12,50", QuantityParser.forLocale(Locale.GERMANY)),
            () -> Rate.ofPercent(new BigDecimal("-1.5")),
            () -> new RecipePart(Ingredient.of(resin), -1.5),
            () -> Batch.ofTotal(recipe, grams(-1.5), Losses.NONE),
            () ->
                Batch.ofTotal(
                    recipe, grams(1.5), Losses.NONE.withFilm(grams(3.5), MassFraction.ZERO)),
            () -> Balance.of("Waage", grams(200.5), grams(500.5)),
            () -> CupShape.weighedWithWater(grams(-0.5)),
            () -> CupShape.weighedWithWater(grams(50.5)).cubicMetresTo(0.0015),
            () -> Composition.ofPercents(List.of(wax), 49.5),
            () -> medium.replacing(wax, resin, MassFraction.ofPercent(95.5), MassFraction.ONE),
            () ->
                medium.replacing(
                    wax, resin, MassFraction.ofPercent(50.5), MassFraction.ofPercent(12.5)),
            () -> pot.minus(resin, grams(500.5)),
            () -> Correction.toShare(pot, ShareOf.FREE_OIL, MassFraction.ofPercent(5.5), medium),
            () -> wax.require(PropertyKey.AUTOIGNITION),
            () -> resin.require(PropertyKey.FLASH_POINT),
            () -> PropertyKey.SOLID_DENSITY.parse("-0.5 g/ml"),
            () -> MaterialCatalogue.standard().require("bienenwax"));
    List<Problem> problems = new ArrayList<>();
    for (Runnable door : doors) {
      try {
        door.run();
      } catch (ProblemException refused) {
        problems.addAll(refused.problems());
      }
    }
    return problems;
  }
}
