// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.batch.LossesDraft;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** What every written form of the library keeps. */
class DraftsTest {

  private static final int MANY = 300;
  private static final int FEW = 8;
  private static final Set<Class<?>> LEAVES = Set.of(String.class, Integer.class, Boolean.class);

  static List<Form<?, ?>> forms() {
    return Forms.all();
  }

  private static List<?> things(Form<?, ?> form, int count) {
    return form.things().list().ofSize(count).sample();
  }

  @Test
  void draft_everyOneOfTheLibrary_isHeldToThisTest() {
    Set<String> held = new TreeSet<>();
    reachable().stream()
        .filter(type -> type != Forms.Book.class)
        .forEach(type -> held.add(type.getName()));
    assertThat(held)
        .containsExactlyElementsOf(
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPackages("org.meltwright.core", "org.meltwright.safety")
                    .stream()
                    .filter(c -> c.isRecord() && c.getSimpleName().endsWith("Draft"))
                    .map(JavaClass::getName)
                    .collect(Collectors.toCollection(TreeSet::new)));
  }

  /** The drafts of the forms and those that lie in them. */
  private static Set<Class<?>> reachable() {
    Set<Class<?>> found = new HashSet<>();
    forms().forEach(form -> reach(form.type(), found));
    return found;
  }

  private static void reach(Class<?> draft, Set<Class<?>> found) {
    if (draft.isRecord() && found.add(draft)) {
      leaves(draft).forEach(leaf -> reach((Class<?>) leaf.getType(), found));
    }
  }

  /** The types of the components; of a list, that of its entries. */
  private static Stream<AnnotatedType> leaves(Class<?> draft) {
    return Stream.of(draft.getRecordComponents())
        .map(RecordComponent::getAnnotatedType)
        .map(
            type ->
                type instanceof AnnotatedParameterizedType list
                    ? list.getAnnotatedActualTypeArguments()[0]
                    : type);
  }

  @Test
  void draft_holdsTextWholeNumbersYesOrNoListsAndDrafts_whichMayBeMissing() {
    for (Class<?> draft : reachable()) {
      for (RecordComponent component : draft.getRecordComponents()) {
        assertThat(component.getAnnotatedType().isAnnotationPresent(Nullable.class))
            .as(component.toString())
            .isTrue();
        assertThat(component.getType() == List.class || allowed(component.getType()))
            .as(component.toString())
            .isTrue();
      }
      assertThat(leaves(draft).map(AnnotatedType::getType))
          .as(draft.getName())
          .allMatch(DraftsTest::allowed);
    }
  }

  private static boolean allowed(java.lang.reflect.Type type) {
    return LEAVES.contains(type) || (type instanceof Class<?> draft && draft.isRecord());
  }

  @Test
  void draft_hasNoAnnotationOfALibraryThatReadsOrChecksIt() {
    for (Class<?> draft : reachable()) {
      assertThat(draft.getAnnotations()).as(draft.getName()).isEmpty();
      for (RecordComponent component : draft.getRecordComponents()) {
        assertThat(component.getAnnotations()).as(component.toString()).isEmpty();
        assertThat(component.getAnnotatedType().getAnnotations())
            .as(component.toString())
            .allMatch(annotation -> annotation.annotationType() == Nullable.class);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("forms")
  void thing_writtenAndReadAgain_isEqual(Form<?, ?> form) {
    for (Object thing : things(form, MANY)) {
      assertThat(form.again(thing)).as(() -> "" + form.draft(thing)).isEqualTo(thing);
    }
  }

  @ParameterizedTest
  @MethodSource("forms")
  void draft_readAndWrittenAgain_isTheSame(Form<?, ?> form) {
    for (Object thing : things(form, MANY)) {
      Record draft = form.draft(thing);
      assertThat(form.draft(form.readAny(draft))).isEqualTo(draft);
    }
  }

  /** A problem of two fields stands at the draft that holds both, or at what names the one. */
  @ParameterizedTest
  @MethodSource("forms")
  void draft_damagedAtOnePlace_hasItsProblemsThere(Form<?, ?> form) {
    int told = 0;
    for (Object thing : things(form, FEW)) {
      for (Damage damage : Damage.of(form.draft(thing))) {
        List<Problem> problems = problems(form, (Record) damage.damaged());
        told += problems.size();
        assertThat(problems)
            .as(() -> damage.path() + ": " + damage.damaged())
            .allMatch(problem -> isAt(problem.path(), damage.path()));
      }
    }
    assertThat(told).as("problems of " + form).isGreaterThan(FEW * 10);
  }

  private static boolean isAt(String path, String place) {
    return place.equals(path)
        || place.startsWith(path + "/")
        || path.startsWith(place + "/")
        || path.endsWith("/of");
  }

  private static List<Problem> problems(Form<?, ?> form, Record draft) {
    try {
      form.readAny(draft);
      return List.of();
    } catch (ProblemException e) {
      return e.problems();
    }
  }

  @ParameterizedTest
  @MethodSource("forms")
  void list_withAnEmptyEntry_hasAProblemAtTheEntry(Form<?, ?> form) {
    for (Object thing : things(form, FEW)) {
      for (Damage damage : Damage.of(form.draft(thing))) {
        if (lastIsNull((Record) damage.damaged(), damage.path()).orElse(false)) {
          assertThat(problems(form, (Record) damage.damaged()))
              .as(() -> damage.path() + ": " + damage.damaged())
              .extracting(Problem::path)
              .contains(damage.path());
        }
      }
    }
  }

  /** Whether a path leads to an entry of a list that is null. */
  private static Optional<Boolean> lastIsNull(Object draft, String path) {
    Object at = draft;
    boolean inList = false;
    for (String step : path.substring(1).split("/", -1)) {
      inList = at instanceof List<?>;
      at = at == null ? null : step(at, step);
    }
    return Optional.of(inList && at == null);
  }

  private static @Nullable Object step(Object at, String step) {
    if (at instanceof List<?> list) {
      return list.get(Integer.parseInt(step));
    }
    RecordComponent[] components = at.getClass().getRecordComponents();
    for (int i = 0; i < components.length; i++) {
      if (components[i].getName().equals(step)) {
        return Damage.values((Record) at)[i];
      }
    }
    throw new AssertionError(step);
  }

  @ParameterizedTest
  @MethodSource("forms")
  void draft_ofNothing_hasAProblemAtAField(Form<?, ?> form) {
    Record draft = form.draft(form.things().sample());
    List<Problem> problems =
        problems(form, Damage.make(draft, new Object[Damage.values(draft).length]));
    assertThat(problems).noneMatch(problem -> problem.path().isEmpty());
    assertThat(problems.isEmpty()).isEqualTo(form.type() == LossesDraft.class); // nothing is lost
  }
}
