// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.safety.heating.HeatingRules;

/** The pages' own words are data: one file for each language, and none of them in code. */
class PageWordsTest {

  private static final Path STUDIO =
      Path.of("src", "main", "java", "org", "meltwright", "examples", "studio");
  private static final Path LOOKS =
      Path.of("src", "main", "resources", "org", "meltwright", "examples", "studio", "page");

  /** What reads the file, and the command line with its help, speak through bundles of problems. */
  private static final Pattern SPEAKS_ON_NO_PAGE =
      Pattern.compile(
          "(?:.*Binder|.*Draft|.*Schema|.*File|Studio(?:Problem|Recipes|Sheet)|SheetFiles|Leaves|"
              + "Bounds|Entries|Portions|Currencies|Words|Results|package-info|Studio|PrintedSheets|Lettering|Vocabulary)"
              + "\\.java");

  private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\])*)\"");
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|//[^\\n]*");

  /** What a programmer is told of a defect, and no reader. */
  private static final Pattern DEFECT =
      Pattern.compile("new (?:IllegalArgument|MissingResource)Exception\\([^;]*;");

  private static final Pattern PLACE = Pattern.compile("\\{([a-zA-Z]+)}");
  private static final Set<String> UNITS =
      Set.of("g", "kg", "oz", "ml", "s", "min", "h", "m²", "K");

  private static Properties words(String language) throws IOException {
    Properties words = new Properties();
    try (InputStream in =
        PageWordsTest.class.getResourceAsStream("words_" + language + ".properties")) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return words;
  }

  private static Set<String> places(String text) {
    return PLACE.matcher(text).results().map(p -> p.group(1)).collect(Collectors.toSet());
  }

  @Test
  void both_languages_have_the_same_keys_and_places() throws IOException {
    Properties english = words("en");
    Properties german = words("de");

    assertThat(german.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
    for (String key : english.stringPropertyNames()) {
      assertThat(places(german.getProperty(key)))
          .as(key)
          .isEqualTo(places(english.getProperty(key)));
    }
  }

  /** What a reader could take for an all-clear; "never safe" is none. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void no_word_says_that_all_is_well(String language) throws IOException {
    for (Object text : words(language).values()) {
      assertThat(((String) text).replace("never safe", "").replace("nie sicher", ""))
          .doesNotContainPattern("(?i)\\b(safe|ok|okay|all clear|sicher|unbedenklich|harmlos)\\b");
    }
  }

  @Test
  void each_word_of_the_file_is_used() throws IOException {
    String code = sources(false).stream().map(PageWordsTest::read).collect(Collectors.joining());
    Set<String> unused = new TreeSet<>();
    for (String key : words("en").stringPropertyNames()) {
      if (!isUsed(key, code)) {
        unused.add(key);
      }
    }

    assertThat(unused).isEmpty();
  }

  /** By its whole, or by a part before or after a dot that code completes. */
  private static boolean isUsed(String key, String code) {
    if (code.contains("\"" + key + "\"")) {
      return true;
    }
    for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
      String stem = key.substring(0, dot);
      if (code.contains("\"" + stem + ".\"") || code.contains("\"" + stem + "\"")) {
        return true;
      }
    }
    return key.startsWith("panel-kind."); // said by the name of its constant
  }

  /**
   * A literal is a key, a place, a look, a rule, a unit or an element, and nothing that is read.
   */
  @Test
  void no_word_of_a_page_stands_in_code() throws IOException {
    Set<String> known = known();
    List<String> said = new ArrayList<>();
    for (Path source : sources(true)) {
      String code = DEFECT.matcher(COMMENT.matcher(read(source)).replaceAll("")).replaceAll("");
      for (MatchResult literal : LITERAL.matcher(code).results().toList()) {
        String text = literal.group(1);
        if (isSaid(text, known)) {
          said.add(source.getFileName() + ": " + text);
        }
      }
    }

    assertThat(said).isEmpty();
  }

  private static boolean isSaid(String text, Set<String> known) {
    if (text.contains("<")
        || text.contains("=\\\"")
        || text.startsWith("&")
        || text.startsWith("/")
        || known.contains(text)) {
      return false; // markup, or what is known
    }
    return Stream.of(text.split("[^\\p{L}\\p{N}.²-]+"))
        .filter(w -> w.matches(".*\\p{L}{2,}.*"))
        .anyMatch(w -> !known.contains(w));
  }

  private static Set<String> known() throws IOException {
    Set<String> known = new HashSet<>(UNITS);
    Properties english = words("en");
    for (String key : english.stringPropertyNames()) {
      known.add(key);
      known.addAll(places(english.getProperty(key)));
      for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
        known.add(key.substring(0, dot));
        known.add(key.substring(0, dot + 1));
        known.add(key.substring(dot));
        known.add(key.substring(dot + 1));
      }
    }
    HeatingRules.standard().rules().forEach(rule -> known.add(rule.info().id()));
    for (String sheet : List.of("page.css", "card.css", "paper.css")) {
      known.addAll(List.of(read(LOOKS.resolve(sheet)).split("[^a-zA-Z0-9-]+")));
    }
    known.addAll(List.of("card.css", "page.css", "paper.css", "words_", ".properties", "en"));
    known.addAll(List.of("polygon", "polyline", "circle", "rect", "path", "text", "css"));
    known.addAll(List.of("rule.", "reason", ".reason", "rule.unattended.remedy"));
    known.addAll(List.of("picture-", "card-", "dash-", "cx", "cy")); // names of elements
    known.addAll(List.of("(\\\\S+) to (\\\\S+)", " at ")); // what a materials file writes
    known.addAll(List.of("8050-09-7", "damar", "beeswax")); // whom a remark is about
    return known;
  }

  private static List<Path> sources(boolean isOnPages) throws IOException {
    try (Stream<Path> all = Files.walk(STUDIO)) {
      return all.filter(p -> p.toString().endsWith(".java"))
          .filter(
              p -> !isOnPages || !SPEAKS_ON_NO_PAGE.matcher(p.getFileName().toString()).matches())
          .toList();
    }
  }

  private static String read(Path source) {
    try {
      return Files.readString(source, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void a_language_without_a_file_is_not_there_and_english_stands_in() {
    assertThat(Say.find("xx")).isEmpty();
    assertThat(Say.find("../en")).isEmpty();
    assertThat(Say.in(Locale.JAPANESE).words("none")).isEqualTo("none");
  }
}
