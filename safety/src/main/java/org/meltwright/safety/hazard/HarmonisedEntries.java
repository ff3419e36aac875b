// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;

/** The table of harmonised entries as it applies on one day. */
final class HarmonisedEntries {

  private static final Source ABSENCE =
      Source.of(
              "clp-annex-vi",
              "Regulation (EC) No 1272/2008, Annex VI, published table up to the 23rd adaptation",
              SourceKind.REGULATION)
          .at("no entry under this CAS number")
          .ofYear("2025");

  private static final List<List<String>> ROWS = TextTable.rows("harmonised-entries.txt");

  private final Map<String, SubstanceHazards> byCas = new HashMap<>();
  private final Map<String, String> germanNames = new HashMap<>();
  private final Map<String, String> aliases = new HashMap<>();
  private final Map<String, SubstanceHazards> byIndex = new HashMap<>();
  private final Map<String, List<String>> casOfEc = new HashMap<>();
  private final Set<String> otherBoron = new HashSet<>();

  /** Entries need the names, members and vapours need the entries. */
  static HarmonisedEntries on(LocalDate day) {
    HarmonisedEntries entries = new HarmonisedEntries();
    each("german", r -> entries.germanNames.put(r.get(1), r.get(2)));
    each("entry", r -> entries.addEntry(r, day));
    each("none", entries::addAbsence);
    each("changed", entries::addUnread);
    each("member", entries::addMember);
    each("vapour", entries::addVapour);
    each("alias", r -> entries.aliases.put(r.get(1), r.get(2)));
    each("boron", r -> entries.otherBoron.add(r.get(1)));
    each("ec", r -> entries.casOfEc.put(r.get(1), TextTable.items(r.get(2), ",")));
    return entries;
  }

  private static void each(String kind, Consumer<List<String>> step) {
    ROWS.stream().filter(r -> r.get(0).equals(kind)).forEach(step);
  }

  private HarmonisedEntries() {}

  Optional<SubstanceHazards> find(String cas) {
    return Optional.ofNullable(byCas.get(cas));
  }

  /** What an EC number may mean: several substances may share one. */
  Stream<SubstanceHazards> ofEc(String number) {
    return casOfEc.getOrDefault(number, List.of()).stream().flatMap(cas -> find(cas).stream());
  }

  Optional<SubstanceHazards> alias(String name) {
    return Optional.ofNullable(aliases.get(name)).flatMap(this::find);
  }

  Optional<SubstanceHazards> byIndex(String number) {
    return Optional.ofNullable(byIndex.get(number));
  }

  /** An entry by its English or German name, whatever the case. */
  Optional<SubstanceHazards> named(String name) {
    return Stream.concat(byCas.values().stream(), byIndex.values().stream())
        .filter(s -> isCalled(s, name))
        .max(Comparator.comparingInt(s -> s.categories().size()));
  }

  private static boolean isCalled(SubstanceHazards s, String name) {
    return s.name().equalsIgnoreCase(name.strip())
        || s.germanName().filter(g -> g.equalsIgnoreCase(name.strip())).isPresent();
  }

  /** The entry that a substance falls under: as it says itself, else by its number. */
  Optional<SubstanceHazards> entryOf(SubstanceHazards s) {
    return s.indexNumber()
        .flatMap(this::byIndex)
        .or(() -> entryByNumber(s))
        .or(() -> onlyEntryWithNote12().filter(e -> s.notes().contains("12")));
  }

  private Optional<SubstanceHazards> entryByNumber(SubstanceHazards s) {
    return Stream.concat(
            s.casNumbers().stream().flatMap(cas -> find(cas).stream()),
            s.ecNumbers().stream().flatMap(this::ofEc))
        .flatMap(known -> known.indexNumber().stream())
        .flatMap(index -> byIndex(index).stream())
        .findFirst();
  }

  /** A sheet that prints note 12 without an entry can only mean the one that carries it. */
  private Optional<SubstanceHazards> onlyEntryWithNote12() {
    return byIndex.values().stream().filter(e -> e.notes().contains("12")).findFirst();
  }

  /** Whether a boron compound has an entry of its own that does not print note 11. */
  boolean isOtherBoron(SubstanceHazards entry) {
    return entry.indexNumber().filter(otherBoron::contains).isPresent();
  }

  List<SubstanceHazards> all() {
    return List.copyOf(byIndex.values());
  }

  private void addEntry(List<String> row, LocalDate day) {
    boolean applies =
        !day.isBefore(LocalDate.parse(row.get(4)))
            && (row.get(5).isEmpty() || !day.isAfter(LocalDate.parse(row.get(5))));
    if (!applies) {
      return;
    }
    SubstanceSheet entry = entry(row);
    List<String> casNumbers = TextTable.items(row.get(2), ",");
    casNumbers.forEach(cas -> byCas.put(cas, entry.copy().cas(cas).build()));
    casNumbers.forEach(entry::cas);
    byIndex.put(row.get(1), entry.build());
  }

  private SubstanceSheet entry(List<String> row) {
    SubstanceSheet b =
        new SubstanceSheet(row.get(3), HazardEvidence.HARMONISED)
            .entry(row.get(1))
            .classified(row.get(6))
            .limits(row.get(7))
            .notes(row.get(13))
            .supplements(row.get(14))
            .source(act(row.get(1), row.get(15)), Knowledge.RESTATED);
    Optional.ofNullable(germanNames.get(row.get(1))).ifPresent(b::germanName);
    HazardTexts.stated(row.get(8)).map(Double::valueOf).ifPresent(b::acuteFactor);
    HazardTexts.stated(row.get(9)).map(Double::valueOf).ifPresent(b::chronicFactor);
    for (String item : TextTable.items(row.get(10), ";")) {
      String[] words = item.split(" ", -1);
      b.estimate(UptakeForm.ofId(words[0]), Double.parseDouble(words[1]));
    }
    HazardTexts.stated(row.get(11)).map(UptakeForm::ofId).ifPresent(b::inhaledAs);
    return row.get(12).isEmpty() ? b : b.notAdditive();
  }

  private static Source act(String index, String celex) {
    return Source.of(
            "eu-" + celex,
            "Regulation (EC) No 1272/2008, Annex VI, as made by act CELEX " + celex,
            SourceKind.REGULATION)
        .at("entry " + index)
        .ofYear(celex.substring(1, 5));
  }

  /** A member of a group, or the metal share of an entry's own substance. */
  private void addMember(List<String> row) {
    SubstanceHazards entry = byIndex.get(row.get(2));
    String cas = row.get(1);
    boolean ownEntryPrevails = byCas.containsKey(cas) && !entryOf(cas).equals(row.get(2));
    if (entry == null || ownEntryPrevails) {
      return;
    }
    SubstanceHazards base = byCas.getOrDefault(cas, entry);
    SubstanceSheet b = byCas.containsKey(cas) ? base.toBuilder() : base.toBuilder().cas(cas);
    HazardTexts.stated(row.get(3)).ifPresent(b::metal);
    HazardTexts.stated(row.get(4))
        .ifPresent(share -> b.metal(row.get(3), Double.parseDouble(share)));
    HazardTexts.stated(row.get(6)).ifPresent(b::remark);
    byCas.put(cas, b.build());
  }

  private void addVapour(List<String> row) {
    double milligramsPerLitre = Double.parseDouble(row.get(2));
    byCas.computeIfPresent(
        row.get(1), (cas, s) -> s.toBuilder().saturatedVapour(milligramsPerLitre).build());
  }

  private String entryOf(String cas) {
    return find(cas).flatMap(SubstanceHazards::indexNumber).orElse("");
  }

  /** A change of the law that was not read in full: what is known counts, all else stays open. */
  private void addUnread(List<String> row) {
    byCas.put(
        row.get(1),
        new SubstanceSheet(row.get(2), HazardEvidence.NOT_LOOKED_UP)
            .cas(row.get(1))
            .classified(row.get(4))
            .supplements(row.get(5))
            .source(act("of " + row.get(2), row.get(3)), Knowledge.valueOf(row.get(6)))
            .remark(row.get(7))
            .build());
  }

  private void addAbsence(List<String> row) {
    boolean presumed = row.get(3).equals("presumed-none");
    SubstanceSheet none =
        new SubstanceSheet(
                row.get(2), presumed ? HazardEvidence.PRESUMED_NONE : HazardEvidence.NO_ENTRY)
            .cas(row.get(1))
            .source(ABSENCE, Knowledge.valueOf(row.get(4)));
    HazardTexts.stated(row.get(5)).ifPresent(none::remark);
    row.stream().skip(6).forEach(none::supplements);
    byCas.put(row.get(1), none.build());
  }
}
