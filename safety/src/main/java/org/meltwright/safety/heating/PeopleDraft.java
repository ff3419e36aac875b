// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * {@link People} as they are written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * People evening =
 *     new PeopleDraft(1, 8, 2, 15, null).toPeople(QuantityParser.localeFree());
 * evening.hasMinors(); // true
 * evening.potHandledByAdults(); // false
 * evening.equals(evening.toDraft().toPeople(QuantityParser.localeFree())); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param teachers how many teach or supervise
 * @param adults how many other adults work
 * @param minors how many under 18 work
 * @param youngest the age of the youngest in years; absent if it is not stated
 * @param potsHandledByAdults whether adults alone handle the pots; absent if it is not stated
 */
public record PeopleDraft(
    @Nullable Integer teachers,
    @Nullable Integer adults,
    @Nullable Integer minors,
    @Nullable Integer youngest,
    @Nullable Boolean potsHandledByAdults) {

  static PeopleDraft of(People people) {
    OptionalInt age = people.youngest();
    return new PeopleDraft(
        people.teachers(),
        people.adults(),
        people.minors(),
        age.isPresent() ? age.getAsInt() : null,
        people.potHandledByAdults() ? true : null);
  }

  /**
   * Returns the people.
   *
   * @param parser the parser of the file; no field of people needs one
   * @return the people
   * @throws ProblemException if a number is missing or wrong; it carries all problems found, each
   *     at its field
   */
  public People toPeople(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<Integer> teach = at.read("teachers", teachers, People::checkedTeachers);
    Optional<Integer> others = at.read("adults", adults, People::checkedAdults);
    Optional<Integer> young = at.read("minors", minors, People::checkedMinors);
    Optional<Integer> age = at.optional().read("youngest", youngest, People::checkedAge);
    return at.make(
        () ->
            new People(
                teach.get(),
                others.get(),
                young.get(),
                age.map(OptionalInt::of).orElse(OptionalInt.empty()),
                Boolean.TRUE.equals(potsHandledByAdults)));
  }
}
