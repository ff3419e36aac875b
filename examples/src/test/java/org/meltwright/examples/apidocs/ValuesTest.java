// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every public class is a value, with equals, hashCode and a text for the log, or says in its API
 * docs that it is compared by identity, and why.
 */
class ValuesTest {

  private static final Pattern CLASS =
      Pattern.compile("(?m)^ *public (?:static |final |abstract |sealed )*(?:class|record) (\\w+)");

  @TempDir static Path classes;

  private static Map<Class<?>, String> docs;
  private static MadeTwice made;

  @BeforeAll
  static void makeTwiceWhatTheExamplesMake() throws Throwable {
    docs = docs();
    made = new MadeTwice(ValuesTest::isComparedByIdentity);
    CompiledExamples compiled = CompiledExamples.of(CompiledExamples.files(), classes);
    Stated.made();
    for (ApiExample example : compiled.examples()) {
      compiled.run(example);
      List<Object> once = Stated.made();
      compiled.run(example);
      made.compare(example.toString(), once, Stated.made());
    }
  }

  /** The API docs of each public class and record that can be made. */
  private static Map<Class<?>, String> docs() throws IOException {
    Map<Class<?>, String> docs = new HashMap<>();
    for (Path file : CompiledExamples.files()) {
      String text = Files.readString(file);
      Matcher type = CLASS.matcher(text);
      while (type.find()) {
        int end = text.lastIndexOf("*/", type.start());
        find(file, type.group(1))
            .forEach(c -> docs.put(c, text.substring(text.lastIndexOf("/**", end), end)));
      }
    }
    docs.keySet().removeIf(c -> Throwable.class.isAssignableFrom(c) || isHolderOfStatics(c));
    return docs;
  }

  private static Stream<Class<?>> find(Path file, String simpleName) {
    String name =
        file.toString()
            .replaceAll(".*src.main.java.", "")
            .replaceAll("\\.java$", "")
            .replaceAll("[/\\\\]", ".");
    try {
      Class<?> outer = Class.forName(name);
      return Stream.concat(Stream.of(outer), Arrays.stream(outer.getDeclaredClasses()))
          .filter(c -> c.getSimpleName().equals(simpleName));
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  private static boolean isHolderOfStatics(Class<?> type) {
    return !type.isRecord()
        && Arrays.stream(type.getDeclaredMethods())
            .noneMatch(m -> !Modifier.isStatic(m.getModifiers()));
  }

  private static boolean isComparedByIdentity(Class<?> type) {
    String doc = docs.getOrDefault(type, "").replaceAll("\\s*\\*\\s*|\\s+", " ");
    return doc.toLowerCase(Locale.ROOT).contains("compared by identity: ");
  }

  @Test
  void publicClass_hasEqualsHashCodeAndText_orSaysThatItIsComparedByIdentity() {
    List<String> neither = new ArrayList<>();
    for (Class<?> type : docs.keySet()) {
      boolean equal = has(type, "equals", Object.class) && has(type, "hashCode");
      boolean told = has(type, "toString");
      if (isComparedByIdentity(type) ? equal : !(equal && told)) {
        neither.add(type.getName());
      }
    }
    assertThat(neither).isEmpty();
  }

  private static boolean has(Class<?> type, String name, Class<?>... parameters) {
    try {
      return type.getMethod(name, parameters).getDeclaringClass() != Object.class;
    } catch (NoSuchMethodException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void valuesMadeTwice_areEqual_andHaveOneText() {
    assertThat(made.unequal()).isEmpty();
  }

  /** What a record is made of is compared by it, save arrays. */
  @Test
  void record_holdsNoArray() {
    assertThat(docs.keySet())
        .filteredOn(Class::isRecord)
        .flatExtracting(c -> List.of(c.getRecordComponents()))
        .filteredOn(component -> component.getType().isArray())
        .isEmpty();
  }

  /** The examples of the API docs make, or lead to, one of each, so that none is left unheld. */
  @Test
  void valueOfEachClass_wasMadeTwiceAndWasEqual() {
    assertThat(docs.keySet())
        .filteredOn(c -> !isComparedByIdentity(c) && !c.isRecord())
        .filteredOn(c -> !made.met().containsKey(c))
        .extracting(Class::getName)
        .isEmpty();
  }

  /** 14.00 EUR/kg is 14 EUR/kg: one value may be written in two ways, but not all in one class. */
  @Test
  void valuesOfDifferentTexts_areNotAllEqual() {
    made.met().keySet().removeIf(c -> isComparedByIdentity(c));
    for (Collection<Object> some : made.met().values()) {
      if (some.stream().map(Object::toString).distinct().count() > 1) {
        assertThat(new HashSet<>(some)).as(some.toString()).hasSizeGreaterThan(1);
      }
    }
  }

  /** What a value works out from what it was made of, at once or when first asked. */
  private static final Set<String> WORKED_OUT =
      Set.of(
          "Batch.net",
          "BatchLedger.byCake",
          "BatchRecord.charge",
          "BlendQuestion.coefficients",
          "CakeSetting.conduction",
          "CakeSetting.plank",
          "Contents.materials",
          "Correction.aim", // tells how it came about
          "Correction.result",
          "HazardLabel.choice",
          "HazardLabel.elements",
          "HazardLabel.filling",
          "HazardReview.announced",
          "HazardReview.assumptions",
          "HazardReview.elicitors",
          "HazardReview.findings",
          "HazardReview.notices",
          "HazardReview.onRequest",
          "HazardReview.supplements",
          "HazardReview.toCheck",
          "HeatingPlan.contents",
          "HeatingPlan.kinds",
          "HeatingPlan.table",
          "HeatingPlan.tools",
          "LandedCost.customsValue",
          "LandedCost.lines",
          "LandedCost.taxBase",
          "Measurement.freedom",
          "Measurement.uncertainty",
          "Material.workedOut",
          "MaterialCatalogue.index",
          "OpenTime.central",
          "OpenTime.conduction",
          "OpenTime.high",
          "OpenTime.low",
          "OpenTime.thickness",
          "Problem.kept", // its own form for a stream of bytes
          "Recipe.contents", // by composition and by what was strained: IngredientTest
          "Recipe.masses",
          "Recipe.parts", // a recipe says so: by name and composition
          "RuleSet.acuteLimits",
          "RuleSet.bounds",
          "RuleSet.entries",
          "RuleSet.rules",
          "ScaleInterval.step",
          "Symbol.sign", // how it is written, not what it is
          "VolumeView.density",
          "VolumeView.volumes");

  /** What the examples make one of, or none, so that no second content is at hand. */
  private static final Set<String> NOT_CHANGED =
      Set.of(
          "BatchPrices.labels",
          "BindingWish.aim",
          "BindingWish.wish",
          "BlendQuestion.window",
          "Contents.flashPoints",
          "EnergyUse.model", // a function
          "Found.proved",
          "HeatAssumptions.fusion",
          "HeatAssumptions.mineral",
          "HeatAssumptions.organic",
          "HeatingAction.reading",
          "HeatingPlan.temperatures",
          "LabelDetails.disposal",
          "LabelDetails.extinguisher",
          "PurchaseOrder.freight", // with goods and handling: LandedCostTest
          "PurchaseOrder.goods",
          "PurchaseOrder.handling",
          "RuleSet.head",
          "ShareOf.counted",
          "Symbol.anchor", // its package counts
          "ThermometerCalibration.line",
          "UnitCost.hours");

  /** Each field of each class in turn, but what is worked out from the others. */
  @Test
  void valueOfWhichOneFieldIsAnother_isAnother() throws ReflectiveOperationException {
    OneChanged changed = new OneChanged(made.met());
    Set<String> told = new TreeSet<>();
    Set<String> equal = new TreeSet<>();
    Set<String> unchanged = new TreeSet<>();
    for (Class<?> type : made.met().keySet()) {
      if (!type.isRecord() && !isComparedByIdentity(type)) {
        for (Field field : OneChanged.fields(type)) {
          List<Object> some = made.met().get(type);
          Boolean tells = changed.tells(some, field).orElse(null);
          (tells == null ? unchanged : tells ? told : equal).add(name(field));
        }
      }
    }
    assertThat(equal).containsExactlyInAnyOrderElementsOf(WORKED_OUT);
    assertThat(unchanged).containsExactlyInAnyOrderElementsOf(NOT_CHANGED);
    assertThat(told).hasSizeGreaterThan(200);
  }

  private static String name(Field field) {
    return field.getDeclaringClass().getSimpleName() + "." + field.getName();
  }
}
