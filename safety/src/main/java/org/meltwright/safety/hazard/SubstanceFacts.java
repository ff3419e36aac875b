// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Everything of a substance that leads to an answer: two that say the same are one substance. */
final class SubstanceFacts {

  final HazardEvidence evidence;
  final List<HazardCategory> categories = new ArrayList<>();
  final List<SpecificLimit> specificLimits = new ArrayList<>();
  final Map<UptakeForm, Double> estimates = new EnumMap<>(UptakeForm.class);
  final Set<UptakeForm> inhaledAs = EnumSet.noneOf(UptakeForm.class);
  final Set<String> notes = new TreeSet<>();
  final List<String> supplements = new ArrayList<>();
  final Set<HazardClass> openClasses = EnumSet.noneOf(HazardClass.class);
  final Set<HazardClass> classesByTest = EnumSet.noneOf(HazardClass.class);
  @Nullable String indexNumber;
  @Nullable Double acuteFactor;
  @Nullable Double chronicFactor;
  @Nullable Double saturatedVapour;
  @Nullable String metal;
  @Nullable Double metalShare;
  boolean additive = true;
  boolean saysNone;
  boolean workplaceLimit;

  SubstanceFacts(HazardEvidence evidence) {
    this.evidence = evidence;
  }

  SubstanceFacts copy() {
    SubstanceFacts copy = new SubstanceFacts(evidence);
    copy.addAll(this);
    copy.setAll(this);
    return copy;
  }

  private void addAll(SubstanceFacts other) {
    categories.addAll(other.categories);
    specificLimits.addAll(other.specificLimits);
    estimates.putAll(other.estimates);
    inhaledAs.addAll(other.inhaledAs);
    notes.addAll(other.notes);
    supplements.addAll(other.supplements);
    openClasses.addAll(other.openClasses);
    classesByTest.addAll(other.classesByTest);
  }

  private void setAll(SubstanceFacts other) {
    indexNumber = other.indexNumber;
    acuteFactor = other.acuteFactor;
    chronicFactor = other.chronicFactor;
    saturatedVapour = other.saturatedVapour;
    metal = other.metal;
    metalShare = other.metalShare;
    additive = other.additive;
    saysNone = other.saysNone;
    workplaceLimit = other.workplaceLimit;
  }

  /** Whether a sheet says nothing of any class: that is not a word of harmlessness. */
  boolean isBlank() {
    return evidence == HazardEvidence.DATA_SHEET
        && !saysNone
        && categories.isEmpty()
        && specificLimits.isEmpty()
        && estimates.isEmpty()
        && classesByTest.isEmpty();
  }

  /** The class of a limit is one that the substance is in, though no category stands alone. */
  void addCategoriesOfLimits() {
    specificLimits.stream()
        .sorted(Comparator.comparing(SpecificLimit::category))
        .map(l -> HazardCategory.of(l.hazardClass(), l.category(), l.statement()))
        .forEach(this::addIfNew);
  }

  private void addIfNew(HazardCategory c) {
    if (!isIn(c.hazardClass())) {
      categories.add(c);
    }
  }

  /** Whether a category of the class is stated; what corrodes the skin damages the eye. */
  private boolean isIn(HazardClass c) {
    return categories.stream().anyMatch(known -> known.hazardClass() == c)
        || (c == HazardClass.EYE && categories.stream().anyMatch(SubstanceFacts::corrodes));
  }

  private static boolean corrodes(HazardCategory c) {
    return c.hazardClass() == HazardClass.SKIN && c.statement().equals("H314");
  }

  boolean areCategoriesAlone() {
    return specificLimits.isEmpty()
        && estimates.isEmpty()
        && notes.isEmpty()
        && supplements.isEmpty()
        && openClasses.isEmpty()
        && classesByTest.isEmpty()
        && acuteFactor == null
        && chronicFactor == null;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SubstanceFacts that
        && lists().equals(that.lists())
        && values().equals(that.values());
  }

  @Override
  public int hashCode() {
    return lists().hashCode();
  }

  private List<Object> lists() {
    return List.of(
        categories,
        specificLimits,
        estimates,
        inhaledAs,
        notes,
        supplements,
        openClasses,
        classesByTest);
  }

  private List<Object> values() {
    return List.of(
        evidence,
        additive,
        isBlank(),
        workplaceLimit,
        Optional.ofNullable(indexNumber),
        Arrays.asList(acuteFactor, chronicFactor, saturatedVapour),
        Optional.ofNullable(metal),
        Optional.ofNullable(metalShare));
  }
}
