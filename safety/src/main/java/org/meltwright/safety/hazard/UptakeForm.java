// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * How a poison is taken up, which decides the unit of its acute toxicity estimate.
 *
 * <p>Dust measured over one hour, as some data sheets do:
 *
 * <pre>{@code
 * UptakeForm.DUST.fourHoursFromOne(8); // 2 mg/l
 * UptakeForm.DUST.unit(); // mg/l
 * UptakeForm.ORAL.hazardClass(); // ACUTE_ORAL
 * UptakeForm.ORAL.fourHoursFromOne(8); // throws ProblemException
 * }</pre>
 */
public enum UptakeForm {
  /** Swallowed; mg per kg of body weight. */
  ORAL("oral", "mg/kg", HazardClass.ACUTE_ORAL),
  /** Through the skin; mg per kg of body weight. */
  DERMAL("dermal", "mg/kg", HazardClass.ACUTE_DERMAL),
  /** Inhaled as gas; parts per million by volume over four hours. */
  GAS("gas", "ppmV", HazardClass.ACUTE_INHALATION),
  /** Inhaled as vapour; mg per litre over four hours. */
  VAPOUR("vapour", "mg/l", HazardClass.ACUTE_INHALATION),
  /** Inhaled as dust or mist; mg per litre over four hours. */
  DUST("dust", "mg/l", HazardClass.ACUTE_INHALATION);

  private final String id;
  private final String unit;
  private final HazardClass hazardClass;

  UptakeForm(String id, String unit, HazardClass hazardClass) {
    this.id = id;
    this.unit = unit;
    this.hazardClass = hazardClass;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code oral}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the unit of its estimates.
   *
   * @return for example "mg/kg"
   */
  public String unit() {
    return unit;
  }

  /**
   * Returns the class that it belongs to.
   *
   * @return the class of acute toxicity
   */
  public HazardClass hazardClass() {
    return hazardClass;
  }

  /**
   * Returns the estimate for four hours from one measured over one hour.
   *
   * <p>Half of it for gases and vapours, a quarter for dusts and mists (OECD integrated document,
   * acute toxicity chapter, note a): 8 mg/l of dust over one hour is 2 mg/l over four.
   *
   * @param estimate the lethal concentration over one hour, in {@link #unit()}, above 0
   * @return that over four hours, in the same unit
   * @throws ProblemException for what is not inhaled, or if the estimate is not a number above 0
   */
  public double fourHoursFromOne(double estimate) {
    if (!(estimate > 0 && estimate < Double.POSITIVE_INFINITY)) {
      throw new ProblemException(
          Problem.of(HazardProblem.ESTIMATE, Bilingual.of(estimate))
              .with("name", Bilingual.of(hazardClass::name)));
    }
    return switch (this) {
      case GAS, VAPOUR -> estimate / 2;
      case DUST -> estimate / 4;
      case ORAL, DERMAL -> throw new ProblemException(Problem.of(HazardProblem.NOT_INHALED, id));
    };
  }

  boolean isInhaled() {
    return hazardClass == HazardClass.ACUTE_INHALATION;
  }

  /** The forms by which a class is met. */
  static Stream<UptakeForm> of(HazardClass hazardClass) {
    return Stream.of(values()).filter(f -> f.hazardClass == hazardClass);
  }

  /** The form that a detail of a category names, such as "vapour" or "dust". */
  static Optional<UptakeForm> inhaled(String detail) {
    return detail.equals("mist")
        ? Optional.of(DUST)
        : Stream.of(values()).filter(f -> f.isInhaled() && f.id.equals(detail)).findFirst();
  }

  static Optional<UptakeForm> find(String id) {
    return Stream.of(values()).filter(f -> f.id.equals(id)).findFirst();
  }

  static UptakeForm ofId(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException(id));
  }
}
