// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;

/**
 * Data flows one way: units, core, safety, examples; inside core from what things are to what to
 * do.
 */
class ArrowsTest {

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.meltwright");

  @Test
  void modules_lean_on_the_ones_before_them_only() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("units")
        .definedBy("org.meltwright.units..")
        .layer("core")
        .definedBy("org.meltwright.core..")
        .layer("safety")
        .definedBy("org.meltwright.safety..")
        .layer("examples")
        .definedBy("org.meltwright.examples..")
        .whereLayer("units")
        .mayOnlyBeAccessedByLayers("core", "safety", "examples")
        .whereLayer("core")
        .mayOnlyBeAccessedByLayers("safety", "examples")
        .whereLayer("safety")
        .mayOnlyBeAccessedByLayers("examples")
        .whereLayer("examples")
        .mayNotBeAccessedByAnyLayer()
        .check(HOUSE);
  }

  @Test
  void packages_of_core_do_not_lean_on_each_other_in_circles() {
    slices().matching("org.meltwright.core.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void packages_of_safety_do_not_lean_on_each_other_in_circles() {
    slices().matching("org.meltwright.safety.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void materials_and_mixtures_know_nothing_of_batches_heat_cost_and_plans() {
    noClasses()
        .that()
        .resideInAnyPackage("..core.source..", "..core.material..", "..core.mixture..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "..core.batch..", "..core.thermal..", "..core.cost..", "..core.planning..")
        .check(HOUSE);
  }

  @Test
  void no_field_holds_a_quantity() {
    ArchRuleDefinition.fields().should(notHoldAQuantity()).check(HOUSE);
  }

  private static ArchCondition<JavaField> notHoldAQuantity() {
    return new ArchCondition<>("not hold a quantity") {
      @Override
      public void check(JavaField field, ConditionEvents events) {
        if (field.getRawType().isAssignableTo(Quantity.class)) {
          events.add(SimpleConditionEvent.violated(field, field.getFullName() + " is a Quantity"));
        }
      }
    };
  }

  @Test
  void only_cost_and_planning_know_money() {
    noClasses()
        .that()
        .resideOutsideOfPackages("..core.cost..", "..core.planning..", "..examples..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.joda.money..")
        .check(HOUSE);
  }
}
