// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.meltwright.units.ProblemCode;

/**
 * The page of all problem codes is what the code says. To write it anew: {@code mvn test
 * -Dtest=ProblemPagesTest -Dsurefire.failIfNoSpecifiedTests=false -Dpages.write=true}.
 */
class ProblemPagesTest {

  private static final Path ROOT = Path.of("..");
  private static final Path PAGE = ROOT.resolve(Path.of("docs", "reference", "problems.md"));
  private static final List<String> MODULES = List.of("units", "core", "safety", "examples");

  private static final String HEAD =
      """
      # Problem codes

      Every problem that a caller or a reader of a file can meet, by package. The code is stable: an app may act on it, show its own words
      for it, or look it up here. A problem also carries the path to what was wrong and the value found; places such as `{found}` are
      filled with them. The page is written from the code and its texts, and a test holds it to them.

      """;

  private static List<Class<?>> enums() {
    return new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.meltwright")
            .stream()
            .filter(c -> c.isEnum() && c.isAssignableTo(ProblemCode.class))
            .<Class<?>>map(JavaClass::reflect)
            .sorted(
                Comparator.<Class<?>>comparingInt(ProblemPagesTest::layer)
                    .thenComparing(Class::getName))
            .toList();
  }

  private static int layer(Class<?> type) {
    return MODULES.indexOf(type.getPackageName().split("\\.", -1)[2]);
  }

  private static String page() {
    StringBuilder page = new StringBuilder(HEAD);
    enums().forEach(e -> page.append(section(e)).append('\n'));
    return page.toString().stripTrailing() + "\n";
  }

  private static String section(Class<?> type) {
    String source = source(type);
    StringBuilder text = new StringBuilder("## " + type.getPackageName() + "\n\n");
    text.append("`").append(type.getSimpleName()).append("`. ").append(summary(source, type));
    text.append("\n\n| code | arises from | English | German |\n|---|---|---|---|\n");
    Stream.of(type.getEnumConstants())
        .map(ProblemCode.class::cast)
        .forEach(code -> text.append(row(code, source)));
    return text.toString();
  }

  private static String row(ProblemCode code, String source) {
    String id = code.id();
    return "| <a id=\"%s\"></a>`%s` | %s | %s | %s |\n"
        .formatted(
            id,
            id,
            arisesFrom(code, source),
            words(code, Locale.ENGLISH),
            words(code, Locale.GERMAN));
  }

  private static String words(ProblemCode code, Locale locale) {
    ResourceBundle texts =
        ResourceBundle.getBundle(code.getClass().getPackageName() + ".messages", locale);
    boolean german = locale.equals(Locale.GERMAN);
    String key = "problem." + code.id() + ".";
    return cell(texts.getString(key + "what"))
        + labelled(german ? "erlaubt" : "allowed", texts.getString(key + "allowed"))
        + labelled(german ? "Abhilfe" : "remedy", texts.getString(key + "remedy"));
  }

  private static String labelled(String label, String text) {
    return text.isBlank() ? "" : "<br>*" + label + ":* " + cell(text);
  }

  private static String cell(String text) {
    String escaped = text.strip().replace("|", "\\|").replace("<", "&lt;").replace("*", "\\*");
    return escaped.replaceAll("\\{(?:[a-z]+:)?([a-zA-Z]+)}", "`{$1}`");
  }

  /** The doc comment of the constant, which says when the problem arises. */
  private static String arisesFrom(ProblemCode code, String source) {
    String constant = ((Enum<?>) code).name();
    Matcher doc =
        Pattern.compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*" + constant + "\\b", Pattern.DOTALL)
            .matcher(source);
    assertThat(doc.find()).as("doc comment of %s", code.id()).isTrue();
    return prose(doc.group(1));
  }

  private static String summary(String source, Class<?> type) {
    Matcher doc =
        Pattern.compile(
                "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+\\s*)*(?:public )?enum "
                    + type.getSimpleName(),
                Pattern.DOTALL)
            .matcher(source);
    assertThat(doc.find()).as("doc comment of %s", type).isTrue();
    return prose(doc.group(1).split("\\n[ *]*\\n", 2)[0]);
  }

  private static String prose(String doc) {
    return doc.replaceAll("(?m)^\\s*\\*", "")
        .replaceAll("<p>.*", "")
        .replaceAll("\\{@(?:code|link) #?([^}]*)}", "`$1`")
        .replaceAll("\\s+", " ")
        .strip()
        .replace("|", "\\|");
  }

  private static String source(Class<?> type) {
    String module = MODULES.get(layer(type));
    Path file =
        ROOT.resolve(Path.of(module, "src", "main", "java"))
            .resolve(type.getName().replace('.', '/') + ".java");
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void page_of_problem_codes_is_what_the_code_says() throws IOException {
    String page = page();
    if (Boolean.getBoolean("pages.write")) {
      Files.writeString(PAGE, page, StandardCharsets.UTF_8);
    }

    assertThat(PAGE).content(StandardCharsets.UTF_8).isEqualTo(page);
  }
}
