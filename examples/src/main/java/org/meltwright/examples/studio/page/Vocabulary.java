// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pages' own words in one language, from the one file that holds them. */
final class Vocabulary {

  private static final Pattern PLACE = Pattern.compile("\\{([a-zA-Z]+)}");
  private static final Map<String, Optional<Vocabulary>> READ = new ConcurrentHashMap<>();

  private final String file;
  private final Properties words;

  /** The words of a language; empty if there is no file of them. */
  static Optional<Vocabulary> find(String language) {
    return READ.computeIfAbsent("words_" + language + ".properties", Vocabulary::read);
  }

  private static Optional<Vocabulary> read(String file) {
    try (InputStream in = Vocabulary.class.getResourceAsStream(file)) {
      if (in == null) {
        return Optional.empty();
      }
      Properties words = new Properties();
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return Optional.of(new Vocabulary(file, words));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Vocabulary(String file, Properties words) {
    this.file = file;
    this.words = words;
  }

  /** The words of a key, as written. */
  String words(String key) {
    String found = words.getProperty(key);
    if (found == null) {
      throw new MissingResourceException(file + " lacks " + key, file, key);
    }
    return found;
  }

  /** The words of a key with their places filled. */
  String words(String key, Map<String, String> places) {
    return PLACE
        .matcher(words(key))
        .replaceAll(place -> Matcher.quoteReplacement(filled(key, place.group(1), places)));
  }

  private static String filled(String key, String place, Map<String, String> places) {
    String value = places.get(place);
    if (value == null) {
      throw new IllegalArgumentException("nothing stands for {" + place + "} of " + key);
    }
    return value;
  }
}
