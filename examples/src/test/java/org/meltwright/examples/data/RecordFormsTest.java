// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.data;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each record form of a result owes to any JSON library. */
class RecordFormsTest {

  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.meltwright.units", "org.meltwright.core", "org.meltwright.safety");

  private static final Set<Class<?>> LEAVES =
      Set.of(String.class, boolean.class, int.class, long.class, double.class);
  private static final Set<Class<?>> LEAVES_THAT_MAY_BE_ABSENT =
      Set.of(Boolean.class, Integer.class, Long.class, Double.class);

  static List<Form> forms() {
    return Forms.all();
  }

  /** The record forms that stand in the library, with the records nested in them. */
  static Set<Class<?>> records() {
    Set<Class<?>> all = new LinkedHashSet<>();
    LIBRARY.stream()
        .filter(RecordFormsTest::isForm)
        .map(JavaClass::reflect)
        .filter(c -> c.getEnclosingClass() == null)
        .forEach(c -> collect(c, all));
    return all;
  }

  private static boolean isForm(JavaClass c) {
    return outermost(c).getSimpleName().endsWith("Data");
  }

  private static JavaClass outermost(JavaClass c) {
    return c.getEnclosingClass().map(RecordFormsTest::outermost).orElse(c);
  }

  private static void collect(Class<?> type, Set<Class<?>> found) {
    if (type.isRecord() && found.add(type)) {
      for (RecordComponent component : type.getRecordComponents()) {
        collect(element(component.getGenericType()), found);
      }
    }
  }

  private static Class<?> element(Type type) {
    return type instanceof ParameterizedType p
        ? (Class<?>) p.getActualTypeArguments()[0]
        : (Class<?>) type;
  }

  @ParameterizedTest
  @MethodSource("forms")
  void two_json_libraries_write_the_same_tree(Form form) {
    assertThat(Form.tree(form.byJackson())).isEqualTo(Form.tree(form.byGson()));
  }

  @ParameterizedTest
  @MethodSource("forms")
  void each_library_reads_back_what_the_other_wrote(Form form) {
    assertThat(form.readByJackson(form.byGson())).isEqualTo(form.value());
    assertThat(form.readByGson(form.byJackson())).isEqualTo(form.value());
  }

  @ParameterizedTest
  @MethodSource("forms")
  void absent_values_may_be_left_out_of_the_text(Form form) {
    String dense = new com.google.gson.Gson().toJson(form.value(), form.type());

    assertThat(form.readByJackson(dense)).isEqualTo(form.value());
  }

  @ParameterizedTest
  @MethodSource("forms")
  void nothing_is_written_that_is_no_number(Form form) {
    assertThat(form.byJackson()).doesNotContain("NaN", "Infinity");
  }

  @Test
  void every_record_form_of_the_library_has_a_case_here() {
    Set<Class<?>> covered = new LinkedHashSet<>();
    forms().forEach(f -> collect(element(f.type()), covered));

    assertThat(records()).isNotEmpty().allMatch(covered::contains);
  }

  @ParameterizedTest
  @MethodSource("records")
  void components_are_plain(Class<?> type) {
    assertThat(Modifier.isPublic(type.getModifiers())).isTrue();
    for (RecordComponent component : type.getRecordComponents()) {
      assertThat(isPlain(component)).as(type.getSimpleName() + "." + component.getName()).isTrue();
    }
  }

  private static boolean isPlain(RecordComponent component) {
    Class<?> type = component.getType();
    if (LEAVES_THAT_MAY_BE_ABSENT.contains(type)) {
      return component.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }
    Class<?> element = element(component.getGenericType());
    boolean list = type == List.class;
    return (list || type == element) && (element.isRecord() || LEAVES.contains(element));
  }

  @ParameterizedTest
  @MethodSource("records")
  void no_annotation_stands_on_it_beside_those_on_null(Class<?> type) {
    List<AnnotatedElement> elements = new ArrayList<>(List.of(type));
    elements.addAll(Arrays.asList(type.getDeclaredFields()));
    elements.addAll(Arrays.asList(type.getDeclaredMethods()));
    elements.addAll(Arrays.asList(type.getDeclaredConstructors()));
    for (RecordComponent component : type.getRecordComponents()) {
      elements.addAll(List.of(component, component.getAnnotatedType()));
    }
    Stream<Annotation> all = elements.stream().flatMap(e -> Stream.of(e.getAnnotations()));

    assertThat(all.map(a -> a.annotationType().getPackageName()))
        .allMatch("org.jspecify.annotations"::equals);
  }

  @ParameterizedTest
  @MethodSource("records")
  void nothing_but_its_components_looks_like_a_property(Class<?> type) {
    assertThat(type.getDeclaredMethods())
        .filteredOn(m -> Modifier.isPublic(m.getModifiers()))
        .noneMatch(m -> m.getName().matches("(get|is)\\p{Lu}.*"));
  }

  @Test
  void results_do_not_know_their_record_forms() {
    DescribedPredicate<JavaClass> form =
        DescribedPredicate.describe("a record form", RecordFormsTest::isForm);

    noClasses()
        .that(DescribedPredicate.not(form))
        .should()
        .dependOnClassesThat(form)
        .check(LIBRARY);
  }
}
