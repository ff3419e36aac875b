// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.HazardReviewData.Coded;
import org.meltwright.units.TemperaturePoint;

/**
 * A label as plain data, in the reader's language, with the review behind it: any JSON library
 * writes it.
 *
 * <p>A label with gaps is not finished; print them, or do not print the label.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 11, 25));
 * HazardMixture mix =
 *     HazardMixture.builder(rules)
 *         .cas("8012-89-3", 70)
 *         .cas("1314-13-2", 30)
 *         .state(PhysicalState.SOLID)
 *         .build();
 * LabelDetails details = LabelDetails.builder().productName("Cake", "Block").build();
 * HazardLabel label = HazardLabel.of(HazardReview.of(mix, rules), details);
 *
 * HazardLabelData data = HazardLabelData.of(label, Locale.GERMAN);
 * data.signalWord().text(); // Achtung
 * data.complete(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param complete whether nothing is missing
 * @param gaps what is to be completed, and by whom; empty if the label is complete
 * @param productName the product's name; absent if not stated
 * @param nominalKilograms the nominal mass, in kg, above zero; absent if not stated
 * @param batch the batch number or date; absent if not stated
 * @param ufi the unique formula identifier; absent if not stated
 * @param supplier who hands it over
 * @param pictograms the pictograms by their codes, each with what it shows
 * @param signalWord the signal word; absent if no category asks for one
 * @param hazardStatements H and EUH codes that follow from the classes, with their texts
 * @param supplementalStatements EUH codes that follow from single ingredients, with their texts
 * @param contains the names of the ingredients that the label must name
 * @param restriction that it is for professional users only; absent if it is not
 * @param remarks what stands beside the statements: that no class was reached, what is not known
 * @param precautionaryStatements the chosen P codes, with their finished texts
 * @param precautions what became of every precautionary statement that the classes offer
 * @param untilTested what the label says at least until a class that lacks a test is settled
 * @param packaging what the pack for the public must have besides its label
 * @param composition the mixture as it was declared
 * @param maximumCelsius the highest temperature to heat it to, in °C; absent if not stated, or not
 *     to be advised
 * @param advice how to use it with care, a sentence or two each
 * @param review the classification behind the label
 */
public record HazardLabelData(
    boolean complete,
    List<Coded> gaps,
    @Nullable String productName,
    @Nullable Double nominalKilograms,
    @Nullable String batch,
    @Nullable String ufi,
    SupplierData supplier,
    List<Coded> pictograms,
    @Nullable Coded signalWord,
    List<Coded> hazardStatements,
    List<Coded> supplementalStatements,
    List<String> contains,
    @Nullable String restriction,
    List<String> remarks,
    List<Coded> precautionaryStatements,
    List<PrecautionData> precautions,
    List<Coded> untilTested,
    List<Coded> packaging,
    List<Share> composition,
    @Nullable Double maximumCelsius,
    List<String> advice,
    HazardReviewData review) {

  /**
   * Who hands the mixture over.
   *
   * @param name the name; absent if not stated
   * @param postalAddress the postal address; absent if not stated
   * @param telephone the telephone number; absent if not stated
   * @param electronicAddress the e-mail or web address; absent if not stated
   */
  public record SupplierData(
      @Nullable String name,
      @Nullable String postalAddress,
      @Nullable String telephone,
      @Nullable String electronicAddress) {

    private static SupplierData of(LabelSupplier supplier) {
      return new SupplierData(
          supplier.name().orElse(null),
          supplier.postalAddress().orElse(null),
          supplier.telephone().orElse(null),
          supplier.electronicAddress().orElse(null));
    }
  }

  /**
   * What became of a precautionary statement, and why.
   *
   * @param code the code, for example "P210"
   * @param verdict the id of what became of it, for example {@code no-room}
   * @param printed whether it stands on the label, unless it lacks what only the maker can state
   * @param reason why, part of a sentence
   */
  public record PrecautionData(String code, String verdict, boolean printed, String reason) {

    private static PrecautionData of(Precaution p, Locale locale) {
      return new PrecautionData(
          p.code(), p.verdict().id(), p.verdict().isPrinted(), p.reason(locale));
    }
  }

  /**
   * A line of the composition by mass.
   *
   * @param name the name, with the Colour Index name if there is one
   * @param lowPercent the low end of its share by mass, in per cent
   * @param highPercent the high end, in per cent; the low end again if the share is known
   */
  public record Share(String name, double lowPercent, double highPercent) {

    private static Share of(DeclaredShare share, Locale locale) {
      return new Share(share.name(locale), share.lowPercent(), share.highPercent());
    }
  }

  public HazardLabelData {
    gaps = List.copyOf(gaps);
    pictograms = List.copyOf(pictograms);
    hazardStatements = List.copyOf(hazardStatements);
    supplementalStatements = List.copyOf(supplementalStatements);
    contains = List.copyOf(contains);
    remarks = List.copyOf(remarks);
    precautionaryStatements = List.copyOf(precautionaryStatements);
    precautions = List.copyOf(precautions);
    untilTested = List.copyOf(untilTested);
    packaging = List.copyOf(packaging);
    composition = List.copyOf(composition);
    advice = List.copyOf(advice);
  }

  /**
   * Returns a label as data.
   *
   * @param label the label
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return what stands on the label, and the review behind it
   */
  public static HazardLabelData of(HazardLabel label, Locale locale) {
    LabelDetails details = label.details();
    LabelText texts = new LabelText(label, locale);
    return new HazardLabelData(
        label.isComplete(),
        label.gaps().stream().map(g -> new Coded(g.id(), g.text(locale))).toList(),
        details.productName(locale).orElse(null),
        details.massKilograms().isPresent() ? details.massKilograms().getAsDouble() : null,
        details.batch().orElse(null),
        details.ufi().orElse(null),
        SupplierData.of(details.supplier()),
        label.pictograms().stream().map(p -> new Coded(p.name(), p.symbol(locale))).toList(),
        label.signalWord().map(w -> new Coded(w.id(), w.word(locale))).orElse(null),
        statements(label, label.hazardStatements(), locale),
        statements(label, label.supplementalStatements(), locale),
        label.namedIngredients().stream().map(i -> i.name(locale)).distinct().toList(),
        label.restriction(locale).orElse(null),
        texts.remarks(),
        statements(label, label.precautionaryStatements(), locale),
        label.precautions().stream().map(p -> PrecautionData.of(p, locale)).toList(),
        statements(label, label.untilTested(), locale),
        label.packaging().stream().map(p -> new Coded(p.id(), p.text(locale))).toList(),
        label.review().mixture().declared().stream().map(s -> Share.of(s, locale)).toList(),
        label.highestTemperature().map(TemperaturePoint::celsius).orElse(null),
        texts.advice(),
        HazardReviewData.of(label.review(), locale));
  }

  private static List<Coded> statements(HazardLabel label, List<String> codes, Locale locale) {
    return codes.stream().map(code -> new Coded(code, label.text(code, locale))).toList();
  }
}
