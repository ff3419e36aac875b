// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Reads classifications, limits and estimates in the notation of the law. */
final class HazardNotation {

  private static final Pattern CATEGORY =
      Pattern.compile(
          "(?<name>[A-Za-z]+\\.?(?: [A-Za-z]+\\.?)?)(?: (?<category>[1-5][ABC]?))?(?<star> \\*{1,4})?"
              + " (?<statement>(?:EU)?H\\d{3}[A-Za-z]*)(?: \\*{2,4})?(?<details>(?: \\([^)]*\\))*)");

  private static final Pattern LIMIT =
      Pattern.compile("(?<category>.*H\\d{3}[A-Za-z]*) (?<from>[\\d.]+)(?: to (?<below>[\\d.]+))?");

  private static final Pattern DETAIL = Pattern.compile("\\(([^)]*)\\)");

  private static final Map<String, HazardClass> NAMES =
      Map.ofEntries(
          Map.entry("Skin Corr.", HazardClass.SKIN),
          Map.entry("Skin Irrit.", HazardClass.SKIN),
          Map.entry("Eye Dam.", HazardClass.EYE),
          Map.entry("Eye Irrit.", HazardClass.EYE),
          Map.entry("Resp. Sens.", HazardClass.RESPIRATORY_SENSITISATION),
          Map.entry("Skin Sens.", HazardClass.SKIN_SENSITISATION),
          Map.entry("Muta.", HazardClass.MUTAGENICITY),
          Map.entry("Carc.", HazardClass.CARCINOGENICITY),
          Map.entry("Repr.", HazardClass.REPRODUCTION),
          Map.entry("Lact.", HazardClass.LACTATION),
          Map.entry("STOT RE", HazardClass.STOT_REPEATED),
          Map.entry("Asp. Tox.", HazardClass.ASPIRATION),
          Map.entry("Aquatic Acute", HazardClass.AQUATIC_ACUTE),
          Map.entry("Aquatic Chronic", HazardClass.AQUATIC_CHRONIC),
          Map.entry("Ozone", HazardClass.OZONE),
          Map.entry("ED HH", HazardClass.ENDOCRINE_HUMAN),
          Map.entry("ED ENV", HazardClass.ENDOCRINE_ENVIRONMENT),
          Map.entry("PBT", HazardClass.PBT),
          Map.entry("vPvB", HazardClass.VPVB),
          Map.entry("PMT", HazardClass.PMT),
          Map.entry("vPvM", HazardClass.VPVM),
          Map.entry("Flam. Liq.", HazardClass.FLAMMABLE_LIQUID),
          Map.entry("Flam. Sol.", HazardClass.FLAMMABLE_SOLID),
          Map.entry("Ox. Sol.", HazardClass.OXIDISING),
          Map.entry("Ox. Liq.", HazardClass.OXIDISING),
          Map.entry("Water-react.", HazardClass.WATER_REACTIVE));

  private HazardNotation() {}

  static HazardCategory category(String text) {
    Matcher m = CATEGORY.matcher(text.trim().replace("Water-react.", "Waterreact."));
    if (!m.matches()) {
      throw unreadable(text);
    }
    String statement = m.group("statement");
    HazardClass hazardClass = hazardClass(m.group("name"), statement, text);
    String category = m.group("category") == null ? hazardClass.id() : m.group("category");
    return new HazardCategory(
        hazardClass,
        category,
        statement,
        details(m.group("details")),
        " *".equals(m.group("star")));
  }

  static SpecificLimit limit(String text) {
    Matcher m = LIMIT.matcher(text.trim());
    if (!m.matches()) {
      throw unreadable(text);
    }
    HazardCategory c = category(m.group("category"));
    String below = m.group("below");
    return new SpecificLimit(
        c.hazardClass(),
        c.category(),
        c.statement(),
        Double.parseDouble(m.group("from")),
        below == null ? Double.POSITIVE_INFINITY : Double.parseDouble(below));
  }

  private static HazardClass hazardClass(String name, String statement, String text) {
    if (name.equals("Acute Tox.")) {
      return acute(statement, text);
    }
    if (name.equals("STOT SE")) {
      return switch (statement) {
        case "H335" -> HazardClass.STOT_SINGLE_IRRITATION;
        case "H336" -> HazardClass.STOT_SINGLE_NARCOSIS;
        default -> HazardClass.STOT_SINGLE;
      };
    }
    HazardClass found = NAMES.get(name.equals("Waterreact.") ? "Water-react." : name);
    if (found == null) {
      throw unreadable(text);
    }
    return found;
  }

  private static HazardClass acute(String statement, String text) {
    return switch (statement.charAt(2)) {
      case '0' -> HazardClass.ACUTE_ORAL;
      case '1' -> HazardClass.ACUTE_DERMAL;
      case '3' -> HazardClass.ACUTE_INHALATION;
      default -> throw unreadable(text);
    };
  }

  private static List<String> details(String text) {
    List<String> details = new ArrayList<>();
    Matcher m = DETAIL.matcher(text);
    while (m.find()) {
      details.addAll(TextTable.items(m.group(1), ","));
    }
    return details;
  }

  static ProblemException unreadable(String text) {
    return new ProblemException(Problem.of(HazardProblem.NOTATION, text));
  }
}
