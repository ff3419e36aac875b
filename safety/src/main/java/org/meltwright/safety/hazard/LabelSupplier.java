// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * Who hands the mixture over, as the label names them; empty text where it is not yet known.
 *
 * <p>An invented studio:
 *
 * <pre>{@code
 * LabelSupplier studio =
 *     new LabelSupplier("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123", "fernhof.example");
 * LabelDetails details = LabelDetails.builder().supplier(studio).build();
 * details.supplier().postalAddress(); // Mill Lane 1, Oldtown
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name the name
 * @param postalAddress the postal address
 * @param telephone the telephone number
 * @param electronicAddress the e-mail or web address
 */
public record LabelSupplier(
    String name, String postalAddress, String telephone, String electronicAddress) {

  /** A supplier of whom nothing is stated. */
  public static final LabelSupplier UNSTATED = new LabelSupplier("", "", "", "");
}
