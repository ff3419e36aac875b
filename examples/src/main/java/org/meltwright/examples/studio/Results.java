// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.WeighingSheetData;
import org.meltwright.core.cost.CostTreeData;
import org.meltwright.core.planning.PurchasePlanData;
import org.meltwright.examples.studio.day.BatchSheet;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.Provisions;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.Times;
import org.meltwright.examples.studio.day.Verdict;
import org.meltwright.examples.studio.page.Edition;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingReviewData;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a sheet says, as data for other programs; what is withheld on the sheet is absent here.
 *
 * @param language the language of its texts
 * @param day the day it was written on, as ISO 8601 has it
 * @param studio the studio's name
 * @param file the name of the studio file
 * @param blocked whether a recipe or the class must not be done as planned
 * @param recipes a result for each job, in the order of the file
 * @param course the class; absent if none is held
 */
record Results(
    String language,
    String day,
    String studio,
    String file,
    boolean blocked,
    List<RecipeResult> recipes,
    @Nullable CourseResult course) {

  /**
   * One job.
   *
   * @param name the recipe
   * @param blocked whether it must not be made as planned
   * @param verdict what the review comes to, in one line
   * @param review the review of its heating
   * @param weighing what to weigh; absent if withheld or not known
   * @param cakes the cakes; absent if withheld, not known or not cast
   * @param times the times that decide; empty if withheld
   * @param cost what it costs; absent if withheld or not known
   * @param reasons why so much of each, where it was found for wishes; else empty
   */
  record RecipeResult(
      String name,
      boolean blocked,
      String verdict,
      HeatingReviewData review,
      @Nullable WeighingSheetData weighing,
      @Nullable CakesResult cakes,
      List<TimeResult> times,
      @Nullable CostTreeData cost,
      List<String> reasons) {}

  /**
   * What is cast.
   *
   * @param whole how many whole cakes
   * @param cakeKilograms the mass of one, in kg
   * @param partKilograms the mass of the part cake, in kg
   */
  record CakesResult(long whole, double cakeKilograms, double partKilograms) {}

  /**
   * A time, as an estimate in s; absent ends are without end.
   *
   * @param name what it is until
   * @param low the low end
   * @param central the middle
   * @param high the high end
   * @param basis what was taken
   */
  record TimeResult(
      String name,
      @Nullable Double low,
      @Nullable Double central,
      @Nullable Double high,
      String basis) {}

  /**
   * A class.
   *
   * @param title its title
   * @param day its day
   * @param blocked whether it must not be held as planned
   * @param purchase what to buy; absent if withheld, not known or nothing
   */
  record CourseResult(
      String title, String day, boolean blocked, @Nullable PurchasePlanData purchase) {}

  static Results of(Sheet sheet, Edition edition) {
    Say say = edition.say();
    return new Results(
        say.locale().toLanguageTag(),
        edition.day().toString(),
        sheet.studio().about().name(),
        edition.file(),
        sheet.isBlocked(),
        sheet.jobs().stream().map(job -> recipe(job, sheet, say)).toList(),
        sheet.forClass().map(Results::course).orElse(null));
  }

  /** The results as a JSON text. */
  String json() {
    return JsonMapper.builder()
        .enable(SerializationFeature.INDENT_OUTPUT)
        .changeDefaultPropertyInclusion(any -> any.withValueInclusion(Include.NON_NULL))
        .build()
        .writeValueAsString(this);
  }

  private static RecipeResult recipe(JobSheet job, Sheet sheet, Say say) {
    Locale reader = say.locale();
    Optional<BatchSheet> batch = job.allowed();
    return new RecipeResult(
        job.name(),
        job.isBlocked(),
        new Verdict(job, say).line(),
        HeatingReviewData.of(job.review(), reader),
        batch.map(b -> WeighingSheetData.of(b.weighing(), reader)).orElse(null),
        batch.flatMap(BatchSheet::casting).flatMap(Known::value).map(Results::cakes).orElse(null),
        batch.map(b -> times(job, b, sheet, say)).orElse(List.of()),
        batch.flatMap(b -> b.cost().value()).map(CostTreeData::of).orElse(null),
        job.chosen().map(c -> c.reasons(say)).orElse(List.of()));
  }

  private static CakesResult cakes(Casting casting) {
    return new CakesResult(
        casting.wholeCakes(), casting.cakeKilograms(), casting.partCakeKilograms());
  }

  private static List<TimeResult> times(JobSheet job, BatchSheet batch, Sheet sheet, Say say) {
    return Times.of(job.job(), batch.batch(), job.pot(), sheet.studio().plans().brushing()).stream()
        .flatMap(
            line ->
                line.time().value().stream()
                    .map(
                        t ->
                            new TimeResult(
                                say.words(line.name()),
                                finite(t.lowSi()),
                                finite(t.centralSi()),
                                finite(t.highSi()),
                                say.words(line.basis()))))
        .toList();
  }

  private static @Nullable Double finite(double seconds) {
    return Double.isFinite(seconds) ? seconds : null;
  }

  private static CourseResult course(ClassSheet sheet) {
    return new CourseResult(
        sheet.day().about().title(),
        sheet.day().about().date().toString(),
        sheet.isBlocked(),
        sheet.isBlocked()
            ? null
            : sheet
                .provisions()
                .value()
                .flatMap(Provisions::toBuy)
                .map(PurchasePlanData::of)
                .orElse(null));
  }
}
