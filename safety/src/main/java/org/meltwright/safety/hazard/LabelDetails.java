// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/**
 * What the maker states for a label: name, mass, batch, supplier, highest temperature, disposal.
 *
 * <p>What is not stated leaves the label incomplete; nothing is made up.
 *
 * <p>What a maker knows of a cake of 40 g; the supplier is not stated and stays a gap of the label:
 *
 * <pre>{@code
 * LabelDetails details =
 *     LabelDetails.builder()
 *         .productName("Zinc white cake", "Zinkweiß-Block")
 *         .nominalMass(grams(40))
 *         .batch("2026-11-A")
 *         .maximumTemperature(ofCelsius(90))
 *         .build();
 * details.productName(Locale.GERMAN).orElseThrow(); // Zinkweiß-Block
 * details.massKilograms(); // 0.04 kg
 * details.supplier().name().isEmpty(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class LabelDetails {

  /** Digits, and the letters that are not mistaken for others. */
  private static final Pattern UFI =
      Pattern.compile("[0-9AC-HJKMNP-Y]{4}(?:-[0-9AC-HJKMNP-Y]{4}){3}");

  private final BothLanguages name;
  private final @Nullable Double massKilograms;
  private final @Nullable String batch;
  private final @Nullable String ufi;
  private final LabelSupplier supplier;
  private final @Nullable TemperaturePoint maximumTemperature;
  private final BothLanguages disposal;
  private final BothLanguages extinguisher;
  private final boolean forThePublic;
  private final @Nullable ProductUse use;

  /**
   * Starts the details of a label for the public.
   *
   * @return a builder
   */
  public static Builder builder() {
    return new Builder();
  }

  private LabelDetails(Builder b) {
    this.name = b.name;
    this.massKilograms = b.massKilograms;
    this.batch = b.batch;
    this.ufi = b.ufi;
    this.supplier = b.supplier;
    this.maximumTemperature = b.maximumTemperature;
    this.disposal = b.disposal;
    this.extinguisher = b.extinguisher;
    this.forThePublic = b.forThePublic;
    this.use = b.use;
  }

  /**
   * Returns the product's name.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the name; empty if not stated
   */
  public Optional<String> productName(Locale locale) {
    return name.in(locale);
  }

  /**
   * Returns the nominal mass.
   *
   * @return the mass in kilograms; empty if not stated
   */
  public OptionalDouble massKilograms() {
    return massKilograms == null ? OptionalDouble.empty() : OptionalDouble.of(massKilograms);
  }

  /**
   * Returns the batch.
   *
   * @return the batch number or date; empty if not stated
   */
  public Optional<String> batch() {
    return Optional.ofNullable(batch);
  }

  /**
   * Returns the unique formula identifier, under which the poison centres find the mixture.
   *
   * @return for example "MWA1-C2D3-E4F5-G6H7"; empty if not stated
   */
  public Optional<String> ufi() {
    return Optional.ofNullable(ufi);
  }

  /**
   * Returns the supplier.
   *
   * @return the supplier
   */
  public LabelSupplier supplier() {
    return supplier;
  }

  /**
   * Returns the highest temperature that the mixture is to be heated to.
   *
   * @return the temperature; empty if not stated
   */
  public Optional<TemperaturePoint> maximumTemperature() {
    return Optional.ofNullable(maximumTemperature);
  }

  BothLanguages disposal() {
    return disposal;
  }

  BothLanguages extinguisher() {
    return extinguisher;
  }

  BothLanguages productName() {
    return name;
  }

  /**
   * Returns where contents and container are to be taken.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return a phrase, for example "a hazardous-waste collection point"; empty if not stated
   */
  public Optional<String> disposal(Locale locale) {
    return disposal.in(locale);
  }

  /**
   * Returns what puts its fire out.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return a phrase, for example "dry powder or foam"; empty if not stated
   */
  public Optional<String> extinguisher(Locale locale) {
    return extinguisher.in(locale);
  }

  /**
   * Tells whether the mixture goes to the public, by sale or gift.
   *
   * @return whether it does
   */
  public boolean isForThePublic() {
    return forThePublic;
  }

  /**
   * Returns what the product is meant for.
   *
   * @return the use; empty if not stated, and the label then says that it is not for cosmetics
   */
  public Optional<ProductUse> use() {
    return Optional.ofNullable(use);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LabelDetails that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(
        name,
        massKilograms,
        batch,
        ufi,
        supplier,
        maximumTemperature,
        disposal,
        extinguisher,
        forThePublic,
        use);
  }

  @Override
  public String toString() {
    return name.toString();
  }

  /**
   * Collects the details of a label; not thread-safe.
   *
   * <p>Compared by identity: a builder changes.
   */
  public static final class Builder {

    private BothLanguages name = BothLanguages.UNSTATED;
    private @Nullable Double massKilograms;
    private @Nullable String batch;
    private @Nullable String ufi;
    private LabelSupplier supplier = LabelSupplier.UNSTATED;
    private @Nullable TemperaturePoint maximumTemperature;
    private BothLanguages disposal = BothLanguages.UNSTATED;
    private BothLanguages extinguisher = BothLanguages.UNSTATED;
    private boolean forThePublic = true;
    private @Nullable ProductUse use;

    private Builder() {}

    /**
     * Sets the product's name.
     *
     * @param english the English name
     * @param german the German name
     * @return this builder
     */
    public Builder productName(String english, String german) {
      name = new BothLanguages(english, german);
      return this;
    }

    /**
     * Sets the nominal mass.
     *
     * @param mass the mass
     * @return this builder
     */
    public Builder nominalMass(Quantity<Mass> mass) {
      massKilograms = QuantityKind.MASS.toSi(mass);
      return this;
    }

    /**
     * Sets the batch.
     *
     * @param text the batch number or date
     * @return this builder
     */
    public Builder batch(String text) {
      batch = text.isBlank() ? null : text;
      return this;
    }

    /**
     * Sets the unique formula identifier (Annex VIII of the law); its check digits are not worked
     * out here.
     *
     * @param code four blocks of four digits and capitals, with hyphens, for example
     *     "MWA1-C2D3-E4F5-G6H7"; blank for none
     * @return this builder
     * @throws ProblemException if it is not written so
     */
    public Builder ufi(String code) {
      if (!code.isBlank() && !UFI.matcher(code).matches()) {
        throw new ProblemException(Problem.of(HazardProblem.UFI, code));
      }
      ufi = code.isBlank() ? null : code;
      return this;
    }

    /**
     * Sets the supplier.
     *
     * @param who the supplier
     * @return this builder
     */
    public Builder supplier(LabelSupplier who) {
      supplier = who;
      return this;
    }

    /**
     * Sets the highest temperature that the mixture is to be heated to.
     *
     * @param value the temperature
     * @return this builder
     */
    public Builder maximumTemperature(TemperaturePoint value) {
      maximumTemperature = value;
      return this;
    }

    /**
     * Sets where contents and container are to be taken, by local rules.
     *
     * @param english a phrase that follows "dispose of … to", for example "a hazardous-waste
     *     collection point"
     * @param german a phrase in the dative before "zuführen", for example "einer
     *     Schadstoffsammelstelle"
     * @return this builder
     */
    public Builder disposal(String english, String german) {
      disposal = new BothLanguages(english, german);
      return this;
    }

    /**
     * Sets what puts its fire out.
     *
     * @param english for example "dry powder or foam"
     * @param german for example "Löschpulver oder Schaum"
     * @return this builder
     */
    public Builder extinguisher(String english, String german) {
      extinguisher = new BothLanguages(english, german);
      return this;
    }

    /**
     * Says that the mixture goes to professionals only.
     *
     * @return this builder
     */
    public Builder forProfessionals() {
      forThePublic = false;
      return this;
    }

    /**
     * Sets what the product is meant for.
     *
     * @param value the use; on the skin it is a cosmetic, and no label here is for it
     * @return this builder
     */
    public Builder use(ProductUse value) {
      use = value;
      return this;
    }

    /**
     * Returns the details.
     *
     * @return what was collected so far
     */
    public LabelDetails build() {
      return new LabelDetails(this);
    }
  }
}
