// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Quantities, temperatures, fractions, ratios, text and problems: what a person says becomes a
 * value, exactly, or a clear problem.
 *
 * <p>The door of the house: everything else leans on this module, and it leans on nothing of ours.
 *
 * <ol>
 *   <li>{@link org.meltwright.units} — values, text to value and back, problems.
 *   <li>{@link org.meltwright.units.constraint} — Bean Validation for input objects.
 * </ol>
 */
@org.jspecify.annotations.NullMarked
module org.meltwright.units {
  requires transitive java.measure;
  requires transitive org.jspecify;
  requires tech.units.indriya;
  requires static org.apiguardian.api;
  requires transitive jakarta.validation;
  requires static org.hibernate.validator;

  exports org.meltwright.units;
  exports org.meltwright.units.constraint;

  provides jakarta.validation.ConstraintValidator with
      org.meltwright.units.constraint.PositiveQuantityValidator;
}
