// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.meltwright.core.equipment.VesselMaterial.STAINLESS_STEEL;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.litres;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.equipment.CupShape;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.Vessel.Bottom;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingPlanBuilder;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.Room;
import org.meltwright.units.ProblemException;

/** What may be handed in at a public door, and what comes out, by the names and types there. */
class DoorsTest {

  private static final Material WAX = MaterialCatalogue.standard().require("beeswax-yellow");

  private static final String UNIT =
      "(?:kilograms?|grams?|milligrams?|mole|cubicMetres?|squareMetres?|metres?|centimetres"
          + "|millimetres?|squareMillimetres?|squareCentimetres|litres|millilitres?|inches|seconds?"
          + "|minutes|hours?|days|years?|kelvin|celsius|fahrenheit|fahrenheitDegrees|joules?|watts?"
          + "|kilowattHours|pascals?|pascalSeconds|amperes?|volts|percents?|ppm|partsPerMillion"
          + "|ounces|fluidOunces|pounds|airChanges|hundredGrams|squareMetreKelvin|metreKelvin"
          + "|kilogramKelvin|si)";

  /** A name is a unit, or ends in one: "metres", "lowCelsius", "viscosityPascalSeconds". */
  private static final Pattern ENDS_IN_A_UNIT =
      Pattern.compile("(?:^|.*(?=[A-Z]))(?i:" + UNIT + "|(?:" + UNIT + ")?per" + UNIT + ")");

  /** Words for what has no unit, anywhere. */
  private static final Pattern PURE_NUMBER =
      Pattern.compile(
          "(?i).*(?:share|fraction|fractions|factor|efficiency|parts|tolerance|biot|fourier"
              + "|stefan|lambda|exponent|spread|divisor)");

  /** Doubles that are neither, each with the reason. */
  private static final Map<String, String> PURE =
      Map.ofEntries(
          Map.entry("Recipe.Builder#part byMass", "parts by mass"),
          Map.entry("Composition#blend masses", "in any one unit: their ratios count"),
          Map.entry("Composition#ofVolumeParts volumes", "see above"),
          Map.entry("CompositionBuilder#part byMass", "parts by mass"),
          Map.entry("ShrinkRange#byVolume linear", "a share of a length"),
          Map.entry("BlendCertificate#new boundsMissed", "relative to what it is missed by"),
          Map.entry("BlendCertificate#new pricesMissed", "see above"),
          Map.entry("BlendCertificate#new gap", "relative to the aim"),
          Map.entry("CostItem#equipment used", "in the measure of the life, whatever that is"),
          Map.entry("CostItem#equipment life", "see above"),
          Map.entry("NumberRange#new low", "the unit is a component beside"),
          Map.entry("NumberRange#new high", "see above"),
          Map.entry("EstimateInput#new low", "the unit is that of the symbol beside"),
          Map.entry("EstimateInput#new high", "see above"),
          Map.entry("EstimateInput#new central", "see above"),
          Map.entry("Figure#new value", "the unit is a component beside"),
          Map.entry("Figure#of value", "in the unit of the symbol beside it"),
          Map.entry("Explanation.Builder#given value", "in the unit of the symbol beside it"),
          Map.entry("Explanation.Builder#stated value", "in the unit of the symbol beside it"),
          Map.entry("Explanation.Builder#step kept", "in the unit of the formula's result"),
          Map.entry("Expr.Constant#new value", "in the unit that the symbols around it ask for"),
          Map.entry("Expr#of value", "see above"),
          Map.entry("EstimateInput#of low", "in the unit of the symbol beside it"),
          Map.entry("EstimateInput#of high", "see above"),
          Map.entry("Drivers#needed halfWidth", "in the unit of the result"),
          Map.entry("Drivers.Needed#new asked", "the units of input and result stand beside"),
          Map.entry("Drivers.Needed#new halfWidth", "see above"),
          Map.entry("Drivers.Needed#new rest", "see above"),
          Map.entry("Drivers.Range#new low", "the unit is a component beside"),
          Map.entry("Drivers.Range#new high", "see above"),
          Map.entry("Drivers.Driver#new shrink", "a share of the width"),
          Map.entry("SuspensionViscosity#concentrated intrinsicViscosity", "volume by volume"),
          Map.entry("ViscosityCurve#of a", "the logarithm of a number"),
          Map.entry("CombinedExposure.Part#new value", "in the unit of the limit beside it"),
          Map.entry("CombinedExposure#eightHourAverage concentrations", "what goes in comes out"),
          Map.entry("CombinedExposure#limitOfVapourMixture limits", "what goes in comes out"),
          Map.entry("ExposureLimit#new value", "the unit is a component beside"),
          Map.entry("HazardMixtureBuilder#ph value", "the method is named for it"),
          Map.entry("SubstanceSheet#estimate value", "in the unit of the form of uptake beside it"),
          Map.entry("UptakeForm#fourHoursFromOne estimate", "in the unit of the form"),
          Map.entry("Working#new value", "a sum of shares, or in the unit of the form beside it"),
          Map.entry("HeatingPlanBuilder#fillLevel level", "where 1 is full"),
          Map.entry("Bilingual#of number", "a number of whatever unit is written behind it"),
          Map.entry("QuantityFormatter#format number", "see above"),
          Map.entry("Check#between value", "its name, beside it, names the unit"),
          Map.entry("Check#between low", "see above"),
          Map.entry("Check#between high", "see above"),
          Map.entry("Check#finite value", "see above"),
          Map.entry("Check#ordered low", "see above"),
          Map.entry("Check#ordered high", "see above"),
          Map.entry("Limit#exceeds value", "in the unit of the limit beside it"),
          Map.entry("Limit#exceeds limit", "see above"),
          Map.entry("Limit#reaches value", "see above"),
          Map.entry("Limit#reaches limit", "see above"),
          Map.entry("MassFraction#of value", "the type is a share"),
          Map.entry("VolumeFraction#of value", "the type is a share"),
          Map.entry("Quantities#of value", "in the unit beside it"),
          Map.entry("Reading#new value", "in the unit of what takes the reading, named there"),
          Map.entry("Reading#new uncertainty", "see above"),
          Map.entry("Reading#new freedom", "a number of readings"),
          Map.entry("Reading#of value", "in the unit of what takes the reading"),
          Map.entry("Reading#of standardUncertainty", "see above"),
          Map.entry("Reading#exact value", "see above"),
          Map.entry("Reading#within value", "see above"),
          Map.entry("Reading#within halfWidth", "see above"),
          Map.entry("Reading#nearlyWithin value", "see above"),
          Map.entry("Reading#nearlyWithin halfWidth", "see above"),
          Map.entry("Reading#shown value", "see above"),
          Map.entry("Reading#shown step", "see above"),
          Map.entry("Reading#certified value", "see above"),
          Map.entry("Reading#certified expanded", "see above"),
          Map.entry("Reading#repeated readings", "see above"),
          Map.entry("Reading#also standardUncertainty", "see above"),
          Map.entry("Measurement#of equation", "the units of inputs and figure stand beside"),
          Map.entry("Measurement.Contribution#new uncertainty", "in the unit of the figure"),
          Map.entry("TemperatureScale#point degrees", "of this scale"),
          Map.entry("TemperatureScale#difference degrees", "of this scale"));

  private static final List<Class<?>> DOORS =
      new ClassFileImporter()
              .withImportOption(new ImportOption.DoNotIncludeTests())
              .importPackages("org.meltwright")
              .stream()
              .filter(c -> !c.getPackageName().matches(".*[.](?:examples|rule|numeric)\\b.*"))
              .<Class<?>>map(JavaClass::reflect)
              .filter(DoorsTest::isPublic)
              .toList();

  private static boolean isPublic(Class<?> type) {
    return Modifier.isPublic(type.getModifiers())
        && (type.getDeclaringClass() == null || isPublic(type.getDeclaringClass()));
  }

  private static <M extends Member> Stream<M> shown(M[] members) {
    return Arrays.stream(members)
        .filter(m -> Modifier.isPublic(m.getModifiers()) && !m.isSynthetic());
  }

  private static Stream<Parameter> parameters() {
    return DOORS.stream()
        .flatMap(
            c -> Stream.concat(shown(c.getDeclaredConstructors()), shown(c.getDeclaredMethods())))
        .flatMap(e -> Arrays.stream(e.getParameters()));
  }

  private static String name(Executable door) {
    String type =
        door.getDeclaringClass()
            .getName()
            .substring(door.getDeclaringClass().getPackageName().length() + 1)
            .replace('$', '.');
    return type + "#" + (door instanceof Constructor<?> ? "new" : door.getName());
  }

  private static String name(Parameter parameter) {
    return name(parameter.getDeclaringExecutable()) + " " + parameter.getName();
  }

  private static boolean isOfDoubles(Parameter parameter) {
    String type = parameter.getParameterizedType().getTypeName();
    return type.matches(
        "(?s).*\\b(?:double|java[.]lang[.]Double|java[.]util[.]OptionalDouble)\\b.*");
  }

  private static boolean saysItsUnit(Parameter parameter) {
    return ENDS_IN_A_UNIT.matcher(parameter.getName()).matches()
        || parameter.getDeclaringExecutable() instanceof Method m
            && ENDS_IN_A_UNIT.matcher(m.getName()).matches();
  }

  @Test
  void double_saysItsUnit_orIsAPureNumber() {
    Set<String> used = new HashSet<>();
    assertThat(parameters().filter(DoorsTest::isOfDoubles))
        .hasSizeGreaterThan(300)
        .filteredOn(p -> !saysItsUnit(p) && !PURE_NUMBER.matcher(p.getName()).matches())
        .extracting(p -> name(p))
        .filteredOn(used::add)
        .containsExactlyInAnyOrderElementsOf(PURE.keySet());
  }

  /** A name that only begins with a unit, or holds it as a part of a word, is none. */
  @Test
  void nameThatEndsInAUnit_isToldFromOneThatDoesNot() {
    for (String good : List.of("metres", "lowCelsius", "kilogramsPerMole", "volumeCubicMetres")) {
      assertThat(good).matches(ENDS_IN_A_UNIT);
    }
    for (String bad : List.of("mass", "depth", "metresOrSo", "diameters", "density", "heat")) {
      assertThat(bad).doesNotMatch(ENDS_IN_A_UNIT);
    }
  }

  /** Records hold what they are made of; what is shared out in whole coins is counted in coins. */
  @Test
  void money_isTakenAsWhateverIsMoney() {
    assertThat(parameters())
        .filteredOn(
            p -> Set.of(Money.class, BigMoney.class, ExactMoney.class).contains(p.getType()))
        .filteredOn(p -> p.getDeclaringExecutable() instanceof Method)
        .extracting(p -> name(p))
        .containsExactlyInAnyOrder("ExactMoney#compareTo other", "LargestRemainder#allocate total");
  }

  /** What is made of more is made of groups; records are forms, whose components have names. */
  @Test
  void constructor_takesSevenThingsAtMost_butThatOfARecord() {
    assertThat(DOORS)
        .filteredOn(c -> !c.isRecord())
        .flatExtracting(c -> shown(c.getDeclaredConstructors()).toList())
        .hasSizeGreaterThan(5)
        .filteredOn(c -> c.getParameterCount() > 7)
        .isEmpty();
  }

  @Test
  void builder_isStartedByAMethodOfThatName() {
    List<Method> all =
        DOORS.stream().flatMap(c -> shown(c.getDeclaredMethods())).filter(isStart()).toList();

    assertThat(all).hasSizeGreaterThan(5).extracting(Method::getName).containsOnly("builder");
    assertThat(DOORS)
        .filteredOn(c -> c.getSimpleName().endsWith("Builder"))
        .flatExtracting(c -> shown(c.getDeclaredConstructors()).toList())
        .isEmpty();
  }

  private static Predicate<Method> isStart() {
    return m ->
        Modifier.isStatic(m.getModifiers())
            && m.getReturnType().getSimpleName().endsWith("Builder");
  }

  @Test
  void find_answersAnOptional() {
    assertThat(DOORS)
        .flatExtracting(c -> shown(c.getDeclaredMethods()).toList())
        .filteredOn(m -> m.getName().equals("find"))
        .hasSizeGreaterThan(15)
        .filteredOn(m -> m.getReturnType() != Optional.class)
        .isEmpty();
  }

  @Test
  void cupOfMetres_roomOfLitres_andVesselSeventyTimesFull_areRefused() {
    HeatingPlanBuilder plan = HeatingPlan.builder(Composition.of(WAX));

    assertThat(refused(() -> new CupShape.Frustum(7, 5, 3))).contains("Found: 7");
    assertThat(refused(() -> Room.of(litres(60)))).contains("Found: 60 l").contains("1000 l");
    assertThat(refused(() -> plan.fillLevel(70)))
        .contains("The fill level (1 is full) lies outside")
        .contains("Found: 70. Allowed: 0 to 2");
  }

  @Test
  void vesselThatIsFilledBeyondReason_isReviewedNotRefused() {
    Vessel pot =
        Vessel.of("pot", STAINLESS_STEEL, Lining.NONE, Bottom.FLAT, litres(1.5), grams(600));
    HeatingPlan plan = HeatingPlan.builder(Composition.of(WAX)).filled(pot, litres(105)).build();

    assertThat(plan.fillLevel()).hasValue(70);
    assertThat(plan.toBuilder().build()).isEqualTo(plan);
    assertThat(HeatingRules.standard().review(plan).finding("vessel-overflows")).isPresent();
  }

  private static String refused(ThrowingCallable door) {
    return catchThrowableOfType(ProblemException.class, door).problems().get(0).toString();
  }
}
