// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.meltwright.safety.hazard.PlainParts.NEVER;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.PlainMixture.Category;
import org.meltwright.safety.hazard.PlainMixture.Facts;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainMixture.Limit;
import org.meltwright.safety.hazard.PlainMixture.Line;

/**
 * Draws mixtures in which limits are hit: shares at, just below and just above round values, limits
 * of their own, factors, unknowns, ranges, notes.
 */
final class RandomMixtures {

  /** Each line is one hazard class: of a substance it is drawn at most once. */
  private static final String CLASSES =
      """
      Acute Tox. 1 H300; Acute Tox. 2 H300; Acute Tox. 3 H301; Acute Tox. 4 H302
      Acute Tox. 1 H310; Acute Tox. 2 H310; Acute Tox. 3 H311; Acute Tox. 4 H312
      Acute Tox. 1 H330; Acute Tox. 2 H330; Acute Tox. 3 H331; Acute Tox. 4 H332
      Skin Corr. 1 H314; Skin Corr. 1A H314; Skin Corr. 1B H314; Skin Corr. 1C H314; Skin Irrit. 2 H315
      Eye Dam. 1 H318; Eye Irrit. 2 H319
      Resp. Sens. 1 H334; Resp. Sens. 1A H334; Resp. Sens. 1B H334
      Skin Sens. 1 H317; Skin Sens. 1A H317; Skin Sens. 1B H317
      Muta. 1A H340; Muta. 1B H340; Muta. 2 H341
      Carc. 1A H350; Carc. 1B H350; Carc. 1B H350i; Carc. 2 H351
      Repr. 1A H360FD; Repr. 1B H360; Repr. 1B H360D; Repr. 1B H360F; Repr. 1B H360Df; Repr. 1B H360Fd; Repr. 2 H361; Repr. 2 H361d; Repr. 2 H361f; Repr. 2 H361fd
      Lact.  H362
      STOT SE 1 H370; STOT SE 2 H371
      STOT SE 3 H335
      STOT SE 3 H336
      STOT RE 1 H372; STOT RE 2 H373
      Asp. Tox. 1 H304
      Aquatic Acute 1 H400
      Aquatic Chronic 1 H410; Aquatic Chronic 2 H411; Aquatic Chronic 3 H412; Aquatic Chronic 4 H413
      Ozone 1 H420
      ED HH 1 EUH380; ED HH 2 EUH381
      ED ENV 1 EUH430; ED ENV 2 EUH431
      PBT  EUH440
      vPvB  EUH441
      PMT  EUH450
      vPvM  EUH451
      """;

  private static final double[] ROUND = {
    0.0015, 0.01, 0.03, 0.1, 0.25, 0.3, 0.5, 1, 2, 2.5, 3, 5, 10, 15, 20, 25, 30, 50
  };
  private static final double[] FACTORS = {1, 1, 10, 100, 1000};
  private static final double[] ESTIMATES = {
    0.005, 0.05, 0.1, 0.5, 1, 1.5, 3, 5, 11, 20, 50, 100, 300, 500, 700, 1100, 2000, 2500, 5000
  };
  private static final double[] VISCOSITIES = {0.4, 7, 20.4, 20.5, 20.51, 21, 60};
  private static final double[] PH = {1.9, 2, 2.01, 4, 7, 11.49, 11.5, 13};
  private static final double[] FLASH = {-18, 22.9, 23, 35, 60, 60.1, 80};
  private static final double[] BOIL = {30, 35, 35.1, 80};

  private final Random random;
  private final List<Known> entries;
  private final List<List<Category>> classes = new ArrayList<>();

  /** Draws from a seed, with substances that stand in the tables among the others. */
  RandomMixtures(long seed, List<Known> entries) {
    this.random = new Random(seed);
    this.entries = entries;
    CLASSES
        .lines()
        .forEach(
            line ->
                classes.add(
                    TextTable.items(line, ";").stream().map(RandomMixtures::category).toList()));
  }

  private static Category category(String text) {
    String statement = text.substring(text.lastIndexOf(' ') + 1);
    String rest = text.substring(0, text.lastIndexOf(' ')).strip();
    int space = rest.lastIndexOf(' ');
    boolean divided = space > 0 && Character.isDigit(rest.charAt(space + 1));
    return new Category(
        divided ? rest.substring(0, space) : rest,
        divided ? rest.substring(space + 1) : "",
        statement,
        "");
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  private double of(double... values) {
    return values[random.nextInt(values.length)];
  }

  private <T> T of(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  /** The next mixture; its shares make up the whole. */
  PlainMixture next() {
    List<Line> lines = new ArrayList<>();
    int wanted = 1 + random.nextInt(6);
    double left = 100;
    for (int i = 0; i < wanted; i++) {
      double share = share(left);
      if (share > 0 && share < left) {
        lines.addAll(lines(share, known(i)));
        left -= share;
      }
    }
    double low = lines.stream().mapToDouble(Line::low).sum();
    double high = lines.stream().mapToDouble(Line::high).sum();
    Known rest = chance(0.95) ? new Known() : lines.isEmpty() ? sheet() : lines.get(0).known();
    rest.id = rest.id.isEmpty() ? "rest" : rest.id;
    lines.add(new Line(rounded(100 - high), rounded(100 - low), rest));
    return new PlainMixture(facts(), List.copyOf(lines));
  }

  private static double rounded(double share) {
    return Math.rint(share * 1e8) / 1e8;
  }

  /** A share at a round value or a hair beside it, or anything. */
  private double share(double left) {
    if (chance(0.5)) {
      return rounded(of(ROUND) * of(1, 1, 0.999, 1.001) / of(1, 1, 1, 10));
    }
    double any = Math.exp(Math.log(0.003) + random.nextDouble() * Math.log(left / 0.003));
    return rounded(Math.rint(any * 1000) / 1000);
  }

  private List<Line> lines(double share, Known known) {
    if (chance(0.15)) {
      return List.of(new Line(rounded(share * random.nextDouble()), share, known));
    }
    if (chance(0.08)) {
      double part = rounded(share * of(0.25, 0.5));
      return List.of(
          new Line(part, part, known),
          new Line(rounded(share - part), rounded(share - part), known));
    }
    return List.of(new Line(share, share, known));
  }

  private Known known(int place) {
    Known k;
    double kind = random.nextDouble();
    if (kind < 0.1) {
      k = new Known();
      k.unknown = true;
    } else if (kind < 0.25) {
      return of(entries);
    } else {
      k = sheet();
    }
    k.id = "substance " + place;
    return k;
  }

  private Known sheet() {
    Known k = new Known();
    int wanted = 1 + random.nextInt(5);
    for (int i = 0; i < wanted; i++) {
      Category c = of(of(classes));
      boolean fresh = k.categories.stream().noneMatch(o -> sameClass(o, c));
      if (fresh) {
        k.categories.add(withForm(c));
        limits(k, c);
      }
    }
    k.acuteM = k.has("Aquatic Acute") ? of(FACTORS) : 1;
    k.chronicM = "1".equals(k.category("Aquatic Chronic")) ? of(FACTORS) : 1;
    k.additive = chance(0.85);
    estimates(k);
    notes(k);
    k.workplaceLimit = chance(0.08);
    if (chance(0.05)) {
      open(k);
    }
    return k;
  }

  private boolean sameClass(Category a, Category b) {
    return classes.stream()
        .filter(line -> line.contains(new Category(a.name(), a.category(), a.statement(), "")))
        .anyMatch(line -> line.contains(b));
  }

  private Category withForm(Category c) {
    boolean inhaled = c.statement().startsWith("H33") && c.name().equals("Acute Tox.");
    String form = of(List.of("", "dust", "vapour", "gas"));
    return new Category(c.name(), c.category(), c.statement(), inhaled ? form : "");
  }

  /** Estimates that agree with the categories, or stand without one. */
  private void estimates(Known k) {
    for (List<String> route :
        List.of(List.of("oral"), List.of("dermal"), List.of("dust", "vapour", "gas"))) {
      String form = of(route);
      Optional<Category> stated = k.categories.stream().filter(c -> isRoute(c, route)).findFirst();
      if (chance(stated.isPresent() ? 0.3 : 0.06)) {
        String said = stated.map(Category::form).filter(f -> !f.isEmpty()).orElse(form);
        estimate(said, stated.map(c -> Integer.parseInt(c.category())).orElse(0))
            .ifPresent(value -> k.estimates.put(said, value));
      }
    }
  }

  private static boolean isRoute(Category c, List<String> route) {
    String codes = route.contains("oral") ? "H30" : route.contains("dermal") ? "H31" : "H33";
    return c.name().equals("Acute Tox.") && c.statement().startsWith(codes);
  }

  /** Between the bounds of a category, which are those of Table 3.1.1; 0 for any. */
  private Optional<Double> estimate(String form, int category) {
    double[] bounds = PlainAcute.bounds(form);
    double low = category <= 1 ? 0 : bounds[category - 2];
    double high = category == 0 ? NEVER : bounds[category - 1];
    List<Double> fitting =
        Arrays.stream(ESTIMATES).filter(v -> v > low && v <= high).boxed().toList();
    return fitting.isEmpty() ? Optional.empty() : Optional.of(of(fitting));
  }

  private void notes(Known k) {
    if (chance(0.1)) {
      k.metal = of(0.1, 0.25, 0.5, 0.8);
    }
    if (k.has("Repr.") && chance(0.25)) {
      k.notes.add("11");
    } else if (k.has("Repr.") && chance(0.25)) {
      k.notes.add("12");
      k.entry = "607-230-00-6";
    }
  }

  private void open(Known k) {
    String hazardClass =
        of(
            List.of(
                "acute-oral",
                "skin",
                "eye",
                "skin-sensitisation",
                "carcinogenicity",
                "reproduction",
                "aspiration",
                "aquatic-acute",
                "aquatic-chronic"));
    boolean estimated = hazardClass.equals("acute-oral") && k.estimates.containsKey("oral");
    if (!estimated && k.categories.stream().noneMatch(c -> PlainBridge.id(c).equals(hazardClass))) {
      k.open.add(hazardClass);
    }
  }

  /** Each category with a graver one of its name. */
  private static final Map<String, String> GRAVER =
      Map.ofEntries(
          Map.entry("Skin Corr. 1B", "1A"),
          Map.entry("Skin Corr. 1C", "1B"),
          Map.entry("Resp. Sens. 1", "1A"),
          Map.entry("Resp. Sens. 1B", "1A"),
          Map.entry("Skin Sens. 1", "1A"),
          Map.entry("Skin Sens. 1B", "1A"),
          Map.entry("STOT SE 2", "1"),
          Map.entry("STOT RE 2", "1"),
          Map.entry("Carc. 2", "1B"),
          Map.entry("Muta. 2", "1B"));

  private static final Map<String, String> STATEMENTS =
      Map.of("H371", "H370", "H373", "H372", "H351", "H350", "H341", "H340");

  /** At times a limit of its own of a graver category alone, which says nothing of its own. */
  private boolean graverLimit(Known k, Category c) {
    String graver = GRAVER.get(c.name() + " " + c.category());
    boolean drawn = graver != null && chance(0.1);
    if (drawn) {
      String statement = STATEMENTS.getOrDefault(c.statement(), c.statement());
      limit(k, c.name(), graver, statement, of(ROUND), Double.NaN);
    }
    return drawn;
  }

  /** Limits of its own, for the category and, at times, for the milder ones below it. */
  private void limits(Known k, Category c) {
    if (graverLimit(k, c) || !chance(0.3)) {
      return;
    }
    double from = of(ROUND);
    boolean more = chance(0.5);
    switch (c.name()) {
      case "Skin Corr." -> {
        limit(k, c.name(), c.category(), c.statement(), from, Double.NaN);
        if (c.category().equals("1A") && more) {
          limit(k, c.name(), "1B", c.statement(), from * 0.4, from);
        }
        if (chance(0.5)) {
          limit(k, "Skin Irrit.", "2", "H315", from * 0.1, from * (more ? 0.4 : 1));
        }
      }
      case "Eye Dam." -> {
        limit(k, c.name(), "1", "H318", from, Double.NaN);
        if (more) {
          limit(k, "Eye Irrit.", "2", "H319", from * 0.25, from);
        }
      }
      case "STOT SE", "STOT RE" -> {
        limit(k, c.name(), c.category(), c.statement(), from, Double.NaN);
        if (c.category().equals("1") && more) {
          String milder = c.name().equals("STOT SE") ? "H371" : "H373";
          limit(k, c.name(), "2", milder, from * 0.1, from);
        }
      }
      case "Repr." -> {
        boolean fertilityOnly = c.statement().endsWith("Df") && more;
        String category = fertilityOnly ? "2" : c.category();
        limit(k, c.name(), category, fertilityOnly ? "H361f" : c.statement(), from, Double.NaN);
      }
      case "Skin Irrit.", "Eye Irrit.", "Resp. Sens.", "Skin Sens.", "Muta.", "Carc." ->
          limit(k, c.name(), c.category(), c.statement(), from, Double.NaN);
      default -> {}
    }
  }

  private static void limit(
      Known k, String name, String category, String statement, double from, double below) {
    if (from < below || Double.isNaN(below)) {
      k.limits.add(new Limit(name, category, statement, rounded(from), rounded(below)));
    }
  }

  private Facts facts() {
    String state = of(List.of("", "liquid", "liquid", "solid", "gas"));
    boolean liquid = state.equals("liquid");
    boolean flash = liquid && chance(0.8);
    return new Facts(
        state,
        state.equals("solid") && chance(0.5),
        liquid ? measured(0.8, VISCOSITIES) : null,
        measured(0.25, PH),
        chance(0.2),
        flash ? of(FLASH) : null,
        flash ? of(BOIL) : null);
  }

  private @Nullable Double measured(double probability, double... values) {
    return chance(probability)
        ? Arrays.stream(values).boxed().toList().get(random.nextInt(values.length))
        : null;
  }
}
