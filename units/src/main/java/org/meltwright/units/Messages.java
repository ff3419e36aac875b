// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one look-up of user-facing texts: English and German, from the bundle beside a class.
 *
 * <p>The bundle of a class is {@code messages_en.properties} and {@code messages_de.properties} in
 * its own package and module. A text holds named places such as {@code {found}}; a place without a
 * value is left out, and so is all that stands with it between {@code [[} and {@code ]]}. A place
 * such as {@code {kind:expected}} is filled with the bundle's own text for the value, under the key
 * {@code kind.<value>}, or with the value itself if there is none.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Messages words = Messages.beside(UnitsProblem.class);
 * words.text("kind.density", Locale.ENGLISH); // a density
 * words.text("kind.density", Locale.GERMAN); // eine Dichte
 * String key = "problem.text.too-long.what";
 * words.text(key, Locale.ENGLISH, Map.of("length", "120")); // The text is too long: 120 …
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 *
 * <p>Compared by identity: it reads one bundle for one class, which keeps it in a constant.
 */
public final class Messages {

  private static final Pattern PLACE = Pattern.compile("\\{(?:([a-z]+):)?([a-zA-Z]+)}");
  private static final Pattern OPTIONAL = Pattern.compile("\\[\\[(.*?)]]");

  private final Module module;
  private final String bundle;

  /**
   * Returns the texts that stand beside a class.
   *
   * @param anchor a class in the package that holds the bundle
   * @return the texts of that package
   */
  public static Messages beside(Class<?> anchor) {
    String within = anchor.getPackageName();
    return new Messages(anchor.getModule(), within.isEmpty() ? "messages" : within + ".messages");
  }

  private Messages(Module module, String bundle) {
    this.module = module;
    this.bundle = bundle;
  }

  /**
   * Returns a text with its places filled.
   *
   * @param key the key in the bundle
   * @param locale the reader's language: German for {@code de}, English for all others
   * @param values what stands in the places, by name
   * @return the text
   * @throws MissingResourceException if the bundle lacks the key, which is a defect of ours
   */
  public String text(String key, Locale locale, Map<String, String> values) {
    ResourceBundle texts = bundle(locale);
    String whole =
        OPTIONAL
            .matcher(texts.getString(key))
            .replaceAll(m -> Matcher.quoteReplacement(isSaid(m, values) ? m.group(1) : ""));
    return PLACE.matcher(whole).replaceAll(m -> Matcher.quoteReplacement(place(texts, m, values)));
  }

  /** Whether each place between the brackets has a value. */
  private static boolean isSaid(MatchResult optional, Map<String, String> values) {
    return PLACE
        .matcher(optional.group(1))
        .results()
        .noneMatch(place -> values.getOrDefault(place.group(2), "").isBlank());
  }

  private static String place(ResourceBundle texts, MatchResult place, Map<String, String> values) {
    String value = values.getOrDefault(place.group(2), "");
    String key = place.group(1) + "." + value;
    return place.group(1) != null && texts.containsKey(key) ? texts.getString(key) : value;
  }

  /**
   * Returns a text without places.
   *
   * @param key the key in the bundle
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the text
   * @throws MissingResourceException if the bundle lacks the key, which is a defect of ours
   */
  public String text(String key, Locale locale) {
    return text(key, locale, Map.of());
  }

  /**
   * Returns a text with its places filled, in both languages.
   *
   * @param key the key in the bundle
   * @param values what stands in the places, by name
   * @return the text in English and in German
   * @throws MissingResourceException if the bundle lacks the key, which is a defect of ours
   */
  public Bilingual both(String key, Map<String, Bilingual> values) {
    return Bilingual.of(
        reader -> {
          Map<String, String> said = new HashMap<>();
          values.forEach((place, value) -> said.put(place, value.in(reader)));
          return text(key, reader, said);
        });
  }

  /**
   * Looks for a text without places.
   *
   * @param key the key in the bundle
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the text; empty if there is no such text, or no bundle
   */
  public Optional<String> find(String key, Locale locale) {
    return find(key, locale, Map.of());
  }

  /**
   * Looks for a text and fills its places.
   *
   * @param key the key in the bundle
   * @param locale the reader's language: German for {@code de}, English for all others
   * @param values what stands in the places, by name
   * @return the text; empty if there is no such text, or no bundle
   */
  public Optional<String> find(String key, Locale locale, Map<String, String> values) {
    try {
      return Optional.of(text(key, locale, values));
    } catch (MissingResourceException e) {
      return Optional.empty();
    }
  }

  /** Only these two: else the JVM's own locale would decide for a reader whose language we lack. */
  private ResourceBundle bundle(Locale locale) {
    Locale language = Bilingual.isGerman(locale) ? Locale.GERMAN : Locale.ENGLISH;
    return ResourceBundle.getBundle(bundle, language, module);
  }
}
