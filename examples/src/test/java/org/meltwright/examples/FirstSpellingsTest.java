// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An engineer who had not seen the API wrote down how each task would be spelled; three of four
 * spellings compile (24 of 32).
 */
class FirstSpellingsTest {

  private static final Path FILE =
      Path.of("src", "test", "resources", "org", "meltwright", "examples", "first-spellings.txt");

  /** Spellings that do not compile, and what is written instead, with the reason. */
  private static final Map<String, String> OTHERWISE =
      Map.of(
          "difference of two temperatures in kelvin",
          "difference.kelvin(): as point.celsius(), point.kelvin()",
          "a ratio 1:8 of resin to wax",
          "new MixingRatio(1, 8, \"resin\", \"wax\"): 1:8 and 8:1 must not be mistaken",
          "recipe from the ratio",
          "Recipe.ofRatio(name, ratio, Map.of(\"resin\", resin, \"wax\", wax)): sides by name",
          "share of damar in the composition",
          "medium.massFraction(resin): the name tells the basis",
          "a price 12.50 EUR per kg",
          "UnitPrice.perKilogram(Money.of(EUR, new BigDecimal(\"12.50\"))): no double is money",
          "print a mass in German",
          "QuantityFormatter.ofSignificantDigits(4).withLocale(Locale.GERMANY).format(mass, GRAM)",
          "look a material up in the standard catalogue",
          "MaterialCatalogue.standard().require(id): the one that throws, beside find(id)",
          "print all findings",
          "review.findings(): no accessor of this library begins with get");

  /** What a task takes as given, and imports that an editor adds. */
  private static final String FRAME =
      """
      import java.util.*;
      import javax.measure.Quantity;
      import javax.measure.quantity.*;
      import org.meltwright.core.batch.*;
      import org.meltwright.core.cost.*;
      import org.meltwright.core.equipment.*;
      import org.meltwright.core.material.*;
      import org.meltwright.core.mixture.*;
      import org.meltwright.safety.heating.*;
      import org.meltwright.units.*;
      import static org.meltwright.units.MetricUnits.*;
      class Spelling%d {
        void spelled(
            Material resin, Material wax, Quantity<Mass> mass, Composition medium,
            Recipe recipe, Batch batch, HeatingReview review) {
          %s
        }
      }
      """;

  @TempDir Path classes;

  private static Map<String, String> spellings() throws IOException {
    String text = Files.readString(FILE, StandardCharsets.UTF_8);
    return Arrays.stream(text.split("(?m)^# "))
        .skip(1)
        .map(task -> task.split("\n", 2))
        .collect(Collectors.toMap(task -> task[0].strip(), task -> task[1].strip()));
  }

  @Test
  void three_of_four_compile() throws IOException {
    Map<String, String> spellings = spellings();

    List<String> others = new ArrayList<>();
    spellings.forEach(
        (task, code) -> {
          if (!compiles(others.size(), code)) {
            others.add(task);
          }
        });

    assertThat(spellings).hasSizeGreaterThanOrEqualTo(20);
    assertThat(others).containsExactlyInAnyOrderElementsOf(OTHERWISE.keySet());
    assertThat(4 * others.size()).isLessThanOrEqualTo(spellings.size());
  }

  private boolean compiles(int number, String code) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<String> options =
        List.of(
            "-proc:none", "-d", classes.toString(), "-cp", System.getProperty("java.class.path"));
    Source source = new Source("Spelling" + number, FRAME.formatted(number, code));
    return compiler.getTask(new StringWriter(), null, null, options, null, List.of(source)).call();
  }

  private static final class Source extends SimpleJavaFileObject {

    private final String text;

    Source(String name, String text) {
      super(URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
