// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.jsoup.Jsoup;
import org.meltwright.core.batch.WeighingLine;
import org.meltwright.core.cost.CostLine;
import org.meltwright.examples.studio.day.BatchSheet;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.page.HtmlPage;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.TextPage;
import org.meltwright.examples.studio.sheet.ClassSheetPage;
import org.meltwright.examples.studio.sheet.SheetPage;

/** A blocked job keeps its weights to itself, on its own chapter and on every other. */
class WithheldProperties {

  private static final int JOBS = 6;
  private static final Pattern READING = Pattern.compile("\"reading\": \"\\d+ °C\"");
  private static final Pattern MAKE = Pattern.compile("\"make\": \\{[^}]*}");

  private static String demo() throws IOException {
    return Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8);
  }

  /** Replaces what is found for a job; the jobs come first in the file, in their order. */
  private static String inJob(int job, Pattern pattern, String text, String json) {
    Matcher found = pattern.matcher(json);
    for (int i = 0; i <= job; i++) {
      assertThat(found.find()).isTrue();
    }
    return json.substring(0, found.start()) + text + json.substring(found.end());
  }

  private static String blocked(int job) throws IOException {
    return inJob(job, READING, "\"reading\": \"97 °C\"", demo());
  }

  private static Sheet sheet(String json) throws IOException {
    return Sheet.of(
        StudioFile.read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8))),
        Say.ENGLISH);
  }

  /** All that can be read of a sheet: page, pictures' texts, print, cards, class sheet, JSON. */
  private static String allPages(Sheet sheet) {
    Page page = SheetPage.of(sheet, StudioText.EDITION);
    Page forClass = ClassSheetPage.of(sheet, sheet.forClass().orElseThrow(), StudioText.EDITION);
    return TextPage.of(page)
        + "\n"
        + Jsoup.parse(HtmlPage.of(page)).text()
        + "\n"
        + Jsoup.parse(HtmlPage.forPaper(forClass)).text()
        + "\n"
        + cards(sheet)
        + "\n"
        + Results.of(sheet, StudioText.EDITION).json();
  }

  private static String cards(Sheet sheet) {
    return IntStream.range(0, sheet.jobs().size())
        .mapToObj(i -> HtmlPage.of(SheetPage.card(sheet, StudioText.EDITION, i)))
        .map(html -> Jsoup.parse(html).text())
        .collect(Collectors.joining("\n"));
  }

  /** In kg as the results have them, of all jobs but those that others have too. */
  @Property(tries = JOBS)
  void no_result_holds_a_weight_cost_or_time_of_a_blocked_job(
      @ForAll @IntRange(max = JOBS - 1) int job) throws IOException {
    Results.RecipeResult result =
        Results.of(sheet(blocked(job)), StudioText.EDITION).recipes().get(job);

    assertThat(result.blocked()).isTrue();
    assertThat(result.review().blocking()).isTrue();
    assertThat(result.weighing()).isNull();
    assertThat(result.cakes()).isNull();
    assertThat(result.cost()).isNull();
    assertThat(result.times()).isEmpty();
  }

  /** The masses of a job as the sheet would print them. */
  private static Set<String> masses(JobSheet sheet) {
    BatchSheet job = sheet.batch().orElseThrow();
    Set<String> masses = new HashSet<>();
    for (WeighingLine line : job.weighing().lines()) {
      double interval = line.balance().intervalKilograms();
      masses.add(Say.ENGLISH.grams(line.rounded().printedKilograms(), interval));
      masses.add(Say.ENGLISH.grams(line.rounded().exactKilograms(), interval / 100));
      masses.add(Say.ENGLISH.grams(line.rounded().exactKilograms()));
    }
    addParts(job.cost().value().orElseThrow().root(), masses);
    masses.add(Say.ENGLISH.grams(job.weighing().printedTotalKilograms()));
    masses.add(Say.ENGLISH.grams(job.batch().net().massKilograms()));
    masses.add(Say.ENGLISH.grams(job.net().massKilograms()));
    return masses;
  }

  /** The demo weighs out all of its wax. */
  private static String stock(ShelfItem item) {
    return Say.ENGLISH.grams(item.stockKilograms(), item.balance().intervalKilograms());
  }

  private static void addParts(CostLine line, Set<String> masses) {
    if (line.massKilograms() > 0) {
      masses.add(Say.ENGLISH.grams(line.massKilograms()));
    }
    line.parts().forEach(part -> addParts(part, masses));
  }

  @Property(tries = JOBS)
  void no_page_prints_a_mass_of_a_blocked_job(@ForAll @IntRange(max = JOBS - 1) int job)
      throws IOException {
    Sheet sheet = sheet(blocked(job));
    Set<String> withheld = masses(sheet.jobs().get(job));
    List<JobSheet> others = new ArrayList<>(sheet.jobs());
    others.remove(job);
    others.forEach(other -> withheld.removeAll(masses(other)));
    sheet.studio().shelf().forEach(item -> withheld.remove(stock(item)));
    String pages = allPages(sheet);

    assertThat(sheet.jobs().get(job).isBlocked()).isTrue();
    assertThat(withheld).hasSizeGreaterThan(3);
    for (String mass : withheld) {
      assertThat(pages)
          .as("job %s prints %s", job, mass)
          .doesNotContainPattern("(?<![\\d.])" + Pattern.quote(mass) + "(?!\\w)");
    }
  }

  @Property(tries = 20)
  void nothing_tells_how_large_a_blocked_job_is_and_no_total_of_its_cost(
      @ForAll @IntRange(max = JOBS - 1) int job,
      @ForAll @DoubleRange(min = 150, max = 300) double one,
      @ForAll @DoubleRange(min = 150, max = 300) double other)
      throws IOException {
    assertThat(pagesOf(job, one))
        .as("job %s of %s g and of %s g", job, one, other)
        .isEqualTo(pagesOf(job, other));
  }

  private static String pagesOf(int job, double grams) throws IOException {
    String make = "\"make\": { \"total\": \"" + grams + " g\" }";
    return allPages(sheet(inJob(job, MAKE, make, blocked(job))));
  }

  @Example
  void who_calls_for_a_blocked_recipe_says_so_and_shows_none_of_its_parts() throws IOException {
    String print = TextPage.of(SheetPage.of(sheet(blocked(0)), StudioText.EDITION));
    Run run = new Run(0, print, "");
    String blue =
        run.card("Ultramarine from oil paint") + run.working("Ultramarine from oil paint");
    String black =
        run.card("Ivory black from oil paint, strong")
            + run.working("Ivory black from oil paint, strong");

    assertThat(blue)
        .contains("NEEDS A BLOCKED RECIPE  Medium 1:8 is blocked today", "What to weigh")
        .containsPattern("serves only if it is\\s+blocked")
        .contains("Medium 1:8, blocked today")
        .doesNotContain("made here", "· ");
    assertThat(black).contains("made here", "· ").doesNotContain("NEEDS A BLOCKED RECIPE");
    assertThat(print)
        .contains("SHORT  Medium 1:8: today's recipes take ")
        .contains("It is blocked today: do without.")
        .doesNotContain("or make more of it today");
  }

  /** One that may be made makes what the others call for. */
  @Example
  void a_recipe_that_is_blocked_once_and_made_once_is_made() throws IOException {
    String again =
        "\"today\": [ { \"recipe\": \"medium-8\", \"make\": { \"total\": \"600 g\" }, \"vessel\":"
            + " \"pot\", \"heatSource\": \"plate\", \"thermometer\": \"dip\", \"reading\": \"85"
            + " °C\" },";
    Sheet sheet = sheet(blocked(0).replace("\"today\": [", again));

    assertThat(sheet.jobs().get(1).isBlocked()).isTrue();
    assertThat(sheet.jobs().get(3).blockedRecipes()).isEmpty();
    assertThat(TextPage.of(SheetPage.of(sheet, StudioText.EDITION)))
        .contains("Medium 1:8, made here");
  }
}
