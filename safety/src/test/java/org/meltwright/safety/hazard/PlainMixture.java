// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A mixture in plain words and numbers, as {@link PlainRules} reads it: no type of the library is
 * used, so that a fault of one cannot hide in the other.
 *
 * <p>Printed on one line in the notation of the files of cases.
 */
record PlainMixture(Facts facts, List<Line> lines) {

  /** What is known of the whole; what is null was not measured. */
  record Facts(
      String state,
      boolean solidAt40,
      @Nullable Double viscosity,
      @Nullable Double ph,
      boolean phLifted,
      @Nullable Double flash,
      @Nullable Double boil) {

    @Override
    public String toString() {
      List<String> words = new ArrayList<>();
      words.add(state);
      words.add(solidAt40 ? "solid40" : "");
      words.add(viscosity == null ? "" : "viscosity " + viscosity);
      words.add(ph == null ? "" : "ph " + ph);
      words.add(phLifted ? "reserve-tested" : "");
      words.add(flash == null ? "" : "flash " + flash);
      words.add(boil == null ? "" : "boil " + boil);
      words.removeIf(String::isEmpty);
      return String.join(" ", words);
    }
  }

  /** A share by mass in per cent, from low to high, and what is known of it. */
  record Line(double low, double high, Known known) {

    @Override
    public String toString() {
      return (low == high ? number(high) : number(low) + "-" + number(high)) + " " + known;
    }
  }

  /** A category in the words of the law; the form is empty but for what is breathed in. */
  record Category(String name, String category, String statement, String form) {

    @Override
    public String toString() {
      String words = category.isEmpty() ? name : name + " " + category;
      return words + " " + statement + (form.isEmpty() ? "" : " (" + form + ")");
    }
  }

  /** A limit of its own, from a share and below another, in per cent; NaN if it is open above. */
  record Limit(String name, String category, String statement, double from, double below) {

    @Override
    public String toString() {
      String words = name + " " + category + " " + statement + " " + number(from);
      return Double.isNaN(below) ? words : words + " to " + number(below);
    }
  }

  /** What is known of a substance. */
  static final class Known {
    String id = "";
    boolean unknown;
    final List<Category> categories = new ArrayList<>();
    final List<Limit> limits = new ArrayList<>();
    final Map<String, Double> estimates = new TreeMap<>();
    double acuteM = 1;
    double chronicM = 1;
    boolean additive = true;

    /** Whether the Union has set a limit for workplaces. */
    boolean workplaceLimit;

    /** The share of the metal that note 1 counts; 1 without the note. */
    double metal = 1;

    final Set<String> notes = new TreeSet<>();

    /** The entry within which note 12 adds up. */
    String entry = "";

    /** The classes, by their ids, of which nothing is known. */
    final Set<String> open = new TreeSet<>();

    /** The CAS number under which the library's tables hold it; empty for a sheet of its own. */
    String cas = "";

    boolean has(String name) {
      return categories.stream().anyMatch(c -> c.name.equals(name));
    }

    boolean has(String name, String category) {
      return categories.stream().anyMatch(c -> c.name.equals(name) && c.category.equals(category));
    }

    /** Its category under a name of the law; empty if it has none. */
    String category(String name) {
      return categories.stream()
          .filter(c -> c.name.equals(name))
          .map(Category::category)
          .findFirst()
          .orElse("");
    }

    boolean isOpen(String hazardClass) {
      return unknown || open.contains(hazardClass);
    }

    @Override
    public String toString() {
      if (unknown) {
        return "unknown";
      }
      if (!cas.isEmpty()) {
        return "cas " + cas;
      }
      List<String> words = new ArrayList<>();
      if (!categories.isEmpty()) {
        words.add("{" + join(categories) + "}");
      }
      estimates.forEach((form, value) -> words.add(form + "=" + number(value)));
      if (!limits.isEmpty()) {
        words.add("[" + join(limits) + "]");
      }
      if (acuteM != 1 || chronicM != 1) {
        words.add("M " + number(acuteM) + "/" + number(chronicM));
      }
      words.add(additive ? "" : "not-additive");
      words.add(workplaceLimit ? "oel" : "");
      words.add(metal == 1 ? "" : "note 1 metal " + number(metal));
      notes.forEach(n -> words.add("note " + n));
      open.forEach(c -> words.add("open " + c));
      words.removeIf(String::isEmpty);
      return words.isEmpty() ? "none" : String.join(" ", words);
    }

    private static String join(List<?> items) {
      return items.stream().map(Object::toString).collect(joining("; "));
    }
  }

  private static String number(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  @Override
  public String toString() {
    return facts + " | " + lines.stream().map(Line::toString).collect(joining("; "));
  }
}
