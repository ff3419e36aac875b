// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Optional;

/**
 * Who hands the mixture over, as the label names them.
 *
 * <p>An invented studio:
 *
 * <pre>{@code
 * LabelSupplier studio =
 *     LabelSupplier.of("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123")
 *         .withElectronicAddress("fernhof.example");
 * LabelDetails details = LabelDetails.builder().supplier(studio).build();
 * details.supplier().postalAddress().orElseThrow(); // Mill Lane 1, Oldtown
 * LabelSupplier.UNSTATED.name().isEmpty(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name the name; empty if not stated
 * @param postalAddress the postal address; empty if not stated
 * @param telephone the telephone number; empty if not stated
 * @param electronicAddress the e-mail or web address; empty if not stated
 */
public record LabelSupplier(
    Optional<String> name,
    Optional<String> postalAddress,
    Optional<String> telephone,
    Optional<String> electronicAddress) {

  /** A supplier of whom nothing is stated. */
  public static final LabelSupplier UNSTATED = of("", "", "");

  /**
   * Returns a supplier.
   *
   * @param name the name; blank if not known yet
   * @param postalAddress the postal address; blank if not known yet
   * @param telephone the telephone number; blank if not known yet
   * @return the supplier without an electronic address
   */
  public static LabelSupplier of(String name, String postalAddress, String telephone) {
    return new LabelSupplier(
        HazardTexts.stated(name),
        HazardTexts.stated(postalAddress),
        HazardTexts.stated(telephone),
        Optional.empty());
  }

  /**
   * Returns the supplier with an electronic address.
   *
   * @param address the e-mail or web address
   * @return the supplier
   */
  public LabelSupplier withElectronicAddress(String address) {
    return new LabelSupplier(name, postalAddress, telephone, HazardTexts.stated(address));
  }
}
