// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.meltwright.safety.hazard.CopiedSheet.Remark;
import org.meltwright.safety.hazard.SheetEntry.Factor;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Decides for which hazard to water an M-factor counts. */
final class SheetFactors {

  private final SheetEntry entry;
  private final SheetFindings findings;
  private final Map<ClassName, Double> values = new HashMap<>();
  private Optional<Problem> problem = Optional.empty();

  SheetFactors(SheetEntry entry, SheetFindings findings) {
    this.entry = entry;
    this.findings = findings;
  }

  /** Sets the factors of a sheet; gives a problem if one cannot be. */
  Optional<Problem> set(SubstanceSheet sheet) {
    entry.factors.stream().filter(f -> !targets(f).isEmpty()).forEach(f -> put(f, targets(f)));
    entry.factors.stream().filter(f -> targets(f).isEmpty()).forEach(this::putForBoth);
    attempt(() -> ifStated(ClassName.AQUATIC_ACUTE, sheet::acuteFactor));
    attempt(() -> ifStated(ClassName.AQUATIC_CHRONIC, sheet::chronicFactor));
    return problem;
  }

  private void ifStated(ClassName name, java.util.function.DoubleConsumer setter) {
    Double value = values.get(name);
    if (value != null) {
      setter.accept(value);
    }
  }

  private void attempt(Runnable step) {
    try {
      step.run();
    } catch (ProblemException e) {
      e.problems()
          .forEach(
              p ->
                  problem =
                      Optional.of(findings.problem(p, entry.factors.get(0).factor().first())));
    }
  }

  /** By its word, else by the class behind which it stands. */
  private List<ClassName> targets(Factor f) {
    if (f.factor().acute() || f.factor().chronic()) {
      return List.of(ClassName.AQUATIC_ACUTE, ClassName.AQUATIC_CHRONIC).stream()
          .filter(n -> n == ClassName.AQUATIC_ACUTE ? f.factor().acute() : f.factor().chronic())
          .toList();
    }
    if (f.claim() == null || (!f.attached() && isForAll(f))) {
      return List.of();
    }
    return f.claim().names().stream()
        .filter(n -> n == ClassName.AQUATIC_ACUTE || n == ClassName.AQUATIC_CHRONIC)
        .limit(1)
        .toList();
  }

  /** A single factor apart from the classes, below both. */
  private boolean isForAll(Factor f) {
    long before =
        entry.claims.stream()
            .filter(c -> c.first.start() < f.factor().first().start())
            .flatMap(c -> c.names().stream())
            .filter(n -> n == ClassName.AQUATIC_ACUTE || n == ClassName.AQUATIC_CHRONIC)
            .distinct()
            .count();
    return entry.factors.size() == 1 && before == 2;
  }

  private void put(Factor f, List<ClassName> names) {
    for (ClassName name : names) {
      Double other = values.putIfAbsent(name, f.factor().value());
      if (other != null && other != f.factor().value()) {
        problem =
            Optional.of(
                findings.problem(
                    SheetProblem.CONTRADICTION, f.factor().first(), f.factor().last()));
      }
    }
  }

  private void putForBoth(Factor f) {
    findings.remark(Remark.Kind.FACTOR_FOR_BOTH, f.factor().first(), f.factor().last());
    values.putIfAbsent(ClassName.AQUATIC_ACUTE, f.factor().value());
    values.putIfAbsent(ClassName.AQUATIC_CHRONIC, f.factor().value());
  }
}
