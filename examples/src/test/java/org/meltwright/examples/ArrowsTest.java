// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.safety.heating.HeatingRules;

/**
 * Data flows one way: units, core, safety, examples; inside core from what things are to what to
 * do.
 */
class ArrowsTest {

  private static final String RULES = "org.meltwright.safety.heating.rule";
  private static final String STANDARD_RULES = RULES + ".StandardRules";

  /** The steps of the stairs that DEVELOPERS.md draws, the lowest first. */
  private static final List<List<String>> STEPS =
      List.of(
          List.of("source"),
          List.of("material", "explain"),
          List.of("mixture", "equipment"),
          List.of("batch", "thermal"),
          List.of("cost", "measurement"),
          List.of("planning", "plausibility"));

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

  /** One look back: the standard set fetches the list of its rules. */
  @Test
  void packages_do_not_lean_on_each_other_in_circles() {
    slices()
        .assignedFrom(eachPackage())
        .should()
        .beFreeOfCycles()
        .ignoreDependency(HeatingRules.class.getName(), STANDARD_RULES)
        .check(HOUSE);
  }

  @Test
  void only_the_standard_set_looks_back_at_the_list_of_its_rules() {
    noClasses()
        .that()
        .resideOutsideOfPackage(RULES)
        .and()
        .areNotAssignableTo(HeatingRules.class)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(RULES)
        .check(HOUSE);
  }

  private static SliceAssignment eachPackage() {
    return new SliceAssignment() {
      @Override
      public SliceIdentifier getIdentifierOf(JavaClass type) {
        return SliceIdentifier.of(type.getPackageName());
      }

      @Override
      public String getDescription() {
        return "each package";
      }
    };
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
  void packages_of_core_lean_on_lower_steps_only() {
    for (int step = 0; step < STEPS.size(); step++) {
      List<String> notLower = new ArrayList<>();
      STEPS.subList(step, STEPS.size()).forEach(notLower::addAll);
      for (String name : STEPS.get(step)) {
        noClasses()
            .that()
            .resideInAPackage(core(name))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                notLower.stream()
                    .filter(other -> !other.equals(name))
                    .map(ArrowsTest::core)
                    .toArray(String[]::new))
            .allowEmptyShould(false)
            .check(HOUSE);
      }
    }
  }

  private static String core(String name) {
    return "org.meltwright.core." + name + "..";
  }

  /** What settles is a clump: the size of single grains is shown and goes into no calculation. */
  @Test
  void no_calculation_reads_the_size_of_single_grains() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(PropertyKey.class)
        .should()
        .accessField(PropertyKey.class, "PRIMARY_PARTICLE_SIZE")
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
  void only_cost_planning_and_plausibility_know_money() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "..core.cost..", "..core.planning..", "..core.plausibility..", "..examples..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.joda.money..")
        .check(HOUSE);
  }
}
