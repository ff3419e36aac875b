// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A material: names, family, role, identifiers, constituents and figures, each with its source.
 * Conflicting figures stand in order of preference; {@link #find} gives the first, {@link #figures}
 * all. A figure that nobody knows is absent: {@link #require} says so. For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("Bienenwachs, gelb");
 * wax.name(Locale.ENGLISH); // Beeswax, yellow
 * wax.require(PropertyKey.MELTING_RANGE).value(); // 62.0–65.0 °C (CAPILLARY_RANGE)
 * }</pre>
 *
 * <p>Two materials are equal if their ids are equal. This class is immutable and thread-safe.
 */
public final class Material {

  private final String id;
  private final @Nullable String englishName;
  private final @Nullable String germanName;
  private final List<String> otherNames;
  private final @Nullable MaterialFamily family;
  private final @Nullable MaterialRole role;
  private final Map<IdentifierScheme, List<Sourced<String>>> identifiers;
  private final List<Constituent> constituents;
  private final List<Material> alternatives;
  private final Map<PropertyKey<?>, List<Sourced<?>>> figures;
  private final Map<PropertyKey<?>, String> absences;

  /**
   * Starts a material.
   *
   * @param id the stable id, lower case and hyphens, for example {@code beeswax-yellow}
   * @return a builder
   * @throws ProblemException if the id is blank
   */
  public static Builder builder(String id) {
    return new Builder(CHECK.named(id, "id of a material"));
  }

  private Material(Builder builder) {
    this.id = builder.id;
    this.englishName = builder.englishName;
    this.germanName = builder.germanName;
    this.otherNames = List.copyOf(builder.otherNames);
    this.family = builder.family;
    this.role = builder.role;
    this.identifiers = ListsByKey.copy(new EnumMap<>(IdentifierScheme.class), builder.identifiers);
    this.constituents = List.copyOf(builder.constituents);
    this.alternatives = List.copyOf(builder.alternatives);
    this.figures = ListsByKey.copy(new LinkedHashMap<>(), builder.figures);
    this.absences = new LinkedHashMap<>(builder.absences);
    Envelope.add(alternatives, figures);
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code beeswax-yellow}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the name.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "Beeswax, yellow"
   */
  public String name(Locale locale) {
    String english = englishName == null ? id : englishName;
    boolean german = locale.getLanguage().equals(Locale.GERMAN.getLanguage());
    return german && germanName != null && !germanName.isEmpty() ? germanName : english;
  }

  /**
   * Returns the other names that the trade uses, in any language.
   *
   * @return the names, without the two of {@link #name}
   */
  public List<String> otherNames() {
    return otherNames;
  }

  /**
   * Returns the family.
   *
   * @return the family; {@link MaterialFamily#OTHER} if none was stated
   */
  public MaterialFamily family() {
    return family == null ? MaterialFamily.OTHER : family;
  }

  /**
   * Returns what it does in a mix.
   *
   * @return the role; {@link MaterialRole#BASE} if none was stated
   */
  public MaterialRole role() {
    return role == null ? MaterialRole.BASE : role;
  }

  /**
   * Returns the identifiers of a scheme, the preferred one first.
   *
   * @param scheme the scheme
   * @return the identifiers with their sources; empty if it has none
   */
  public List<Sourced<String>> identifiers(IdentifierScheme scheme) {
    return identifiers.getOrDefault(scheme, List.of());
  }

  /**
   * Returns the CAS registry number.
   *
   * @return the number with hyphens; empty if there is none
   */
  public Optional<String> cas() {
    return first(IdentifierScheme.CAS);
  }

  /**
   * Returns the EC number.
   *
   * @return the number with hyphens; empty if there is none
   */
  public Optional<String> ec() {
    return first(IdentifierScheme.EC);
  }

  /**
   * Returns the Colour Index generic name.
   *
   * @return for example "PW6"; empty if there is none
   */
  public Optional<String> colourIndexName() {
    return first(IdentifierScheme.COLOUR_INDEX_NAME);
  }

  private Optional<String> first(IdentifierScheme scheme) {
    return identifiers(scheme).stream().findFirst().map(Sourced::value);
  }

  /**
   * Returns what it is made of, where it is itself a mix.
   *
   * @return the parts; empty for what is not a mix
   */
  public List<Constituent> constituents() {
    return constituents;
  }

  /**
   * Returns what it may be, where its name fits more than one material.
   *
   * <p>Its figures then span those of all of them: the safe end of a range is that of the worse.
   *
   * @return the candidates, at least two; empty for what is decided
   */
  public List<Material> alternatives() {
    return alternatives;
  }

  /**
   * Returns the properties that have a figure.
   *
   * @return the keys, in the order of {@link PropertyKey#all()}
   */
  public List<PropertyKey<?>> properties() {
    return PropertyKey.all().stream()
        .<PropertyKey<?>>map(k -> k)
        .filter(figures::containsKey)
        .toList();
  }

  /**
   * Returns all figures of a property, in order of preference.
   *
   * @param <V> the type of the value
   * @param key the property
   * @return the figures; empty if nobody knows one
   */
  @SuppressWarnings("unchecked") // the builder took figures of this key's type only
  public <V> List<Sourced<V>> figures(PropertyKey<V> key) {
    return (List<Sourced<V>>) (List<?>) figures.getOrDefault(key, List.of());
  }

  /**
   * Returns the figures of a property that a rule may use, in order of preference.
   *
   * @param <V> the type of the value
   * @param key the property
   * @return the figures that nothing bars
   */
  public <V> List<Sourced<V>> usableFigures(PropertyKey<V> key) {
    return figures(key).stream().filter(Sourced::isUsableForRules).toList();
  }

  /**
   * Returns the preferred figure of a property.
   *
   * @param <V> the type of the value
   * @param key the property
   * @return the figure; empty if nobody knows one
   */
  public <V> Optional<Sourced<V>> find(PropertyKey<V> key) {
    return figures(key).stream().findFirst();
  }

  /**
   * Returns the first figure that one source gives for a property.
   *
   * @param <V> the type of the value
   * @param key the property
   * @param sourceId the id of the source in the bibliography
   * @return the figure; empty if that source gives none
   */
  public <V> Optional<Sourced<V>> find(PropertyKey<V> key, String sourceId) {
    return figures(key).stream().filter(f -> f.source().id().equals(sourceId)).findFirst();
  }

  /**
   * Returns the preferred figure of a property that is needed.
   *
   * @param <V> the type of the value
   * @param key the property
   * @return the figure
   * @throws ProblemException if nobody knows one; the problem names material and property
   */
  public <V> Sourced<V> require(PropertyKey<V> key) {
    return find(key).orElseThrow(() -> missing(MaterialProblem.PROPERTY_MISSING, key, ""));
  }

  private ProblemException missing(MaterialProblem code, PropertyKey<?> key, String sourceId) {
    return new ProblemException(
        Problem.of(code, id)
            .with("property", key.inWords())
            .with("source", sourceId)
            .with("because", absence(key).map(CHECK::name).orElse(Bilingual.of(""))));
  }

  /**
   * Returns why a property has no figure, if somebody looked for one in vain.
   *
   * @param key the property
   * @return the reason; empty if there is a figure or nobody looked
   */
  public Optional<String> absence(PropertyKey<?> key) {
    return figures.containsKey(key) ? Optional.empty() : Optional.ofNullable(absences.get(key));
  }

  /**
   * Returns the properties that somebody looked for in vain.
   *
   * @return the keys
   */
  public List<PropertyKey<?>> absences() {
    return absences.keySet().stream()
        .<PropertyKey<?>>map(k -> k)
        .filter(k -> !figures.containsKey(k))
        .toList();
  }

  /**
   * Returns a copy in which the figures of one source stand first, all others behind them.
   *
   * @param <V> the type of the value
   * @param key the property
   * @param sourceId the id of the source in the bibliography
   * @return the copy
   * @throws ProblemException if that source gives no figure of the property
   */
  public <V> Material preferring(PropertyKey<V> key, String sourceId) {
    Sourced<V> forced =
        find(key, sourceId)
            .orElseThrow(() -> missing(MaterialProblem.NO_FIGURE_OF_SOURCE, key, sourceId));
    List<Sourced<?>> order = new ArrayList<>();
    order.add(forced.preferred("chosen by the caller"));
    figures(key).stream().filter(f -> f != forced).forEach(order::add);
    Builder builder = toBuilder();
    builder.figures.put(key, order);
    return builder.build();
  }

  /** A builder that holds all that was stated, without what follows from the alternatives. */
  Builder toBuilder() {
    Builder builder = new Builder(id);
    builder.englishName = englishName;
    builder.germanName = germanName;
    builder.otherNames.addAll(otherNames);
    builder.family = family;
    builder.role = role;
    identifiers.forEach((k, list) -> builder.identifiers.put(k, new ArrayList<>(list)));
    builder.constituents.addAll(constituents);
    builder.alternatives.addAll(alternatives);
    figures.forEach((k, list) -> builder.figures.put(k, new ArrayList<>(list)));
    builder.figures.values().removeIf(list -> list.size() == 1 && Envelope.made(list.get(0)));
    builder.absences.putAll(absences);
    return builder;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Material that && id.equals(that.id);
  }

  @Override
  public int hashCode() {
    return id.hashCode();
  }

  @Override
  public String toString() {
    return id;
  }

  /** Collects the parts of a material; not thread-safe. */
  public static final class Builder {

    final String id;
    final List<String> otherNames = new ArrayList<>();
    final Map<IdentifierScheme, List<Sourced<String>>> identifiers =
        new EnumMap<>(IdentifierScheme.class);
    final Map<PropertyKey<?>, List<Sourced<?>>> figures = new LinkedHashMap<>();
    final Map<PropertyKey<?>, String> absences = new LinkedHashMap<>();
    List<Constituent> constituents = new ArrayList<>();
    List<Material> alternatives = new ArrayList<>();
    @Nullable String englishName;
    @Nullable String germanName;
    @Nullable MaterialFamily family;
    @Nullable MaterialRole role;

    private Builder(String id) {
      this.id = id;
    }

    /**
     * Sets the names.
     *
     * @param english the English name
     * @param german the German name; empty if there is none
     * @return this builder
     * @throws ProblemException if the English name is blank
     */
    public Builder names(String english, String german) {
      englishName = CHECK.named(english, "name", id);
      germanName = german;
      return this;
    }

    /**
     * Adds another name that the trade uses.
     *
     * @param name the name, in any language
     * @return this builder
     * @throws ProblemException if the name is blank
     */
    public Builder otherName(String name) {
      otherNames.add(CHECK.named(name, "name", id));
      return this;
    }

    /**
     * Sets family and role.
     *
     * @param family the family
     * @param role what it does in a mix
     * @return this builder
     */
    public Builder family(MaterialFamily family, MaterialRole role) {
      this.family = family;
      this.role = role;
      return this;
    }

    /**
     * Adds an identifier, after those of the same scheme that are preferred to it.
     *
     * @param scheme the scheme
     * @param identifier the number or name with its source
     * @return this builder
     * @throws ProblemException if it is not well formed or its check digit is wrong
     */
    public Builder identifier(IdentifierScheme scheme, Sourced<String> identifier) {
      scheme.require(identifier.value());
      ListsByKey.add(identifiers, scheme, identifier);
      return this;
    }

    /**
     * Adds a CAS registry number that the user states.
     *
     * @param number the number with hyphens
     * @return this builder
     * @throws ProblemException if its check digit is wrong
     */
    public Builder cas(String number) {
      return identifier(IdentifierScheme.CAS, Sourced.of(number, Source.USER, Knowledge.READ));
    }

    /**
     * Adds a Colour Index generic name that the user states.
     *
     * @param name for example "PW6"
     * @return this builder
     * @throws ProblemException if it is not well formed
     */
    public Builder colourIndexName(String name) {
      return identifier(
          IdentifierScheme.COLOUR_INDEX_NAME, Sourced.of(name, Source.USER, Knowledge.READ));
    }

    /**
     * Adds a constituent.
     *
     * @param material what the part is
     * @param share its share by mass
     * @return this builder
     */
    public Builder constituent(Material material, MassFractionRange share) {
      constituents.add(new Constituent(material, share));
      return this;
    }

    /**
     * Adds a material that this one may be.
     *
     * @param candidate what it may be
     * @return this builder
     */
    public Builder alternative(Material candidate) {
      alternatives.add(candidate);
      return this;
    }

    /**
     * Adds a figure, after those of the same property that are preferred to it.
     *
     * @param <V> the type of the value
     * @param key the property
     * @param figure the figure
     * @return this builder
     * @throws ProblemException if the property cannot have such a value
     */
    public <V> Builder figure(PropertyKey<V> key, Sourced<V> figure) {
      key.require(figure.value());
      ListsByKey.add(figures, key, figure);
      return this;
    }

    /**
     * Says that a figure was looked for in vain.
     *
     * @param key the property
     * @param reason what was found instead
     * @return this builder
     */
    public Builder absent(PropertyKey<?> key, String reason) {
      absences.put(key, reason);
      return this;
    }

    /**
     * Returns the material.
     *
     * @return what was collected so far
     * @throws ProblemException if no choice of shares within their ranges sums to one
     */
    public Material build() {
      Constituent.requireWhole(id, constituents);
      return new Material(this);
    }
  }
}
