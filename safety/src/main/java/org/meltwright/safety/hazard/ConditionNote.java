// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A note of Annex VI, Part 1, whose condition lifts a class when the supplier states it is met. */
enum ConditionNote {
  J(true),
  K(true, "P102", "P210", "P403"),
  L(false),
  M(false),
  N(false),
  P(true, "P102", "P260", "P262", "P301+P310", "P331");

  private final boolean liftsMutagenicity;

  @SuppressWarnings("ImmutableEnumChecker") // a List.of does not change
  private final List<String> precautions;

  ConditionNote(boolean liftsMutagenicity, String... precautions) {
    this.liftsMutagenicity = liftsMutagenicity;
    this.precautions = List.of(precautions);
  }

  static Optional<ConditionNote> of(String mark) {
    return Stream.of(values()).filter(n -> n.name().equals(mark)).findFirst();
  }

  /** The notes of a substance whose condition was stated to be met. */
  static Set<ConditionNote> met(SubstanceHazards s) {
    Set<ConditionNote> met = EnumSet.noneOf(ConditionNote.class);
    Stream.of(values()).filter(n -> s.notes().contains(n.metMark())).forEach(met::add);
    return met;
  }

  boolean lifts(HazardClass c) {
    return c == HazardClass.CARCINOGENICITY || (liftsMutagenicity && c == HazardClass.MUTAGENICITY);
  }

  /** How a sheet remembers that the condition is met. */
  String metMark() {
    return name() + "-met";
  }

  /** The statements that the note itself then asks for. */
  List<String> precautions() {
    return precautions;
  }
}
