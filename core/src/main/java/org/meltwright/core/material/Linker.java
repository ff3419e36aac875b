// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;

/** Turns entries of a file into materials and puts the catalogue's own materials in as parts. */
final class Linker {

  private static final double SLACK = 1e-9;

  private final Map<String, Material> known;
  private final Map<String, MaterialEntry> entries;
  private final Map<String, Material> linked = new LinkedHashMap<>();
  private final Set<String> open = new HashSet<>();
  private final List<Problem> problems;

  Linker(Map<String, Material> known, Map<String, MaterialEntry> entries, List<Problem> problems) {
    this.known = known;
    this.entries = entries;
    this.problems = problems;
  }

  /** All materials, those already known in their old order first. */
  Map<String, Material> link() {
    Map<String, Material> all = new LinkedHashMap<>();
    for (String id : known.keySet()) {
      all.put(id, material(id));
    }
    for (String id : entries.keySet()) {
      all.put(id, material(id));
    }
    return all;
  }

  private Material material(String id) {
    Material done = linked.get(id);
    if (done == null) {
      open.add(id);
      done = build(id);
      open.remove(id);
      linked.put(id, done);
    }
    return done;
  }

  private Material build(String id) {
    MaterialEntry entry = entries.get(id);
    Material old = known.get(id);
    if (old == null && entry != null) {
      old = ofAllLots(entry);
    }
    Material fresh = entry == null ? old : overridden(build(entry), old);
    if (fresh == null) {
      return Material.builder(id).build();
    }
    boolean alone = fresh.constituents().isEmpty() && fresh.alternatives().isEmpty();
    return alone || old == null ? fresh : relinked(fresh);
  }

  /** What is known of the material whatever its lot, where this is one lot of it. */
  private @Nullable Material ofAllLots(MaterialEntry entry) {
    return entry.key().equals(entry.id) || !isHere(entry.id) ? null : material(entry.id);
  }

  private boolean isHere(String id) {
    return known.containsKey(id) || entries.containsKey(id);
  }

  private Material relinked(Material mix) {
    Material.Builder builder = mix.toBuilder();
    MaterialContent content = builder.content;
    content.constituents.replaceAll(c -> new Constituent(current(c.material()), c.share()));
    content.alternatives.replaceAll(this::current);
    return builder.build();
  }

  private static Material overridden(Material fresh, @Nullable Material old) {
    return old == null ? fresh : Overriding.over(fresh, old);
  }

  /**
   * The catalogue's material of this id, and behind its figures those that only the part states, so
   * that none is lost; else the part itself, which may stand in no catalogue.
   */
  private Material current(Material part) {
    String key = isHere(part.toString()) ? part.toString() : part.id();
    if (!isHere(key) || open.contains(key)) {
      return part;
    }
    Material own = material(key);
    Material both = Overriding.over(own, part);
    Material whole = both.equals(own) ? own : both;
    return part.lot().map(whole::withLot).orElse(whole);
  }

  private Material build(MaterialEntry entry) {
    Material.Builder builder = entry.builder;
    List<Constituent> parts = new ArrayList<>();
    for (MaterialEntry.Part part : entry.parts) {
      if (part.share() != null && exists(part)) {
        parts.add(new Constituent(material(part.id()), part.share()));
      }
    }
    if (isWhole(entry, parts)) {
      builder.content.constituents.addAll(parts);
    }
    for (MaterialEntry.Part candidate : entry.alternatives) {
      if (exists(candidate)) {
        builder.alternative(material(candidate.id()));
      }
    }
    return builder.build();
  }

  private boolean exists(MaterialEntry.Part part) {
    if (open.contains(part.id())) {
      problems.add(Problem.of(MaterialProblem.CYCLE, part.id()).under(part.path()));
      return false;
    }
    if (!isHere(part.id())) {
      problems.add(Problem.of(MaterialProblem.PART, part.id()).under(part.path()));
      return false;
    }
    return true;
  }

  /** All parts are there and their middles sum to one; a missing part is a problem already. */
  private boolean isWhole(MaterialEntry entry, List<Constituent> parts) {
    double middle = 0;
    for (Constituent part : parts) {
      middle += part.share().middle().value();
    }
    boolean complete = entry.parts.size() == parts.size();
    boolean sums = parts.isEmpty() || Math.abs(middle - 1) <= SLACK;
    if (complete && !sums) {
      problems.add(
          Problem.of(MaterialProblem.PARTS_SUM, Bilingual.of(middle * 100).plus(" %"))
              .under(entry.path));
    }
    return complete && sums;
  }
}
