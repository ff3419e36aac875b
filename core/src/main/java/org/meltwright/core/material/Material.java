// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A material: names, family, role, identifiers, constituents and figures, each with its source.
 *
 * <p>Conflicting figures stand in order of preference; {@link #find} gives the first, {@link
 * #figures} all. A figure that nobody knows is absent: {@link #require} says so and never guesses.
 *
 * <p>Two materials are equal if their ids are equal. This class is immutable and thread-safe.
 */
public final class Material {

  private final String id;
  private final String englishName;
  private final String germanName;
  private final MaterialFamily family;
  private final MaterialRole role;
  private final Map<String, String> identifiers;
  private final List<Constituent> constituents;
  private final Map<PropertyKey<?>, List<Sourced<?>>> figures;

  /**
   * Starts a material.
   *
   * @param id the stable id, lower case and hyphens, for example {@code beeswax-yellow}
   * @return a builder
   */
  public static Builder builder(String id) {
    return new Builder(id);
  }

  private Material(Builder builder) {
    this.id = builder.id;
    this.englishName = builder.englishName;
    this.germanName = builder.germanName.isEmpty() ? builder.englishName : builder.germanName;
    this.family = builder.family;
    this.role = builder.role;
    this.identifiers = Map.copyOf(builder.identifiers);
    this.constituents = List.copyOf(builder.constituents);
    Map<PropertyKey<?>, List<Sourced<?>>> copy = new LinkedHashMap<>();
    builder.figures.forEach((key, list) -> copy.put(key, List.copyOf(list)));
    this.figures = Map.copyOf(copy);
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
    return locale.getLanguage().equals("de") ? germanName : englishName;
  }

  /**
   * Returns the family.
   *
   * @return the family
   */
  public MaterialFamily family() {
    return family;
  }

  /**
   * Returns what it does in a mix.
   *
   * @return the role
   */
  public MaterialRole role() {
    return role;
  }

  /**
   * Returns the CAS registry number.
   *
   * @return the number with hyphens; empty if there is none
   */
  public Optional<String> cas() {
    return Optional.ofNullable(identifiers.get("cas"));
  }

  /**
   * Returns the Colour Index generic name.
   *
   * @return for example "PW6"; empty if there is none
   */
  public Optional<String> colourIndexName() {
    return Optional.ofNullable(identifiers.get("colour-index-name"));
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
   * Returns the preferred figure of a property that is needed.
   *
   * @param <V> the type of the value
   * @param key the property
   * @return the figure
   * @throws ProblemException if nobody knows one; the problem names material and property
   */
  public <V> Sourced<V> require(PropertyKey<V> key) {
    return find(key)
        .orElseThrow(
            () ->
                new ProblemException(
                    Problem.of(MaterialProblem.PROPERTY_MISSING, id).with("property", key.id())));
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

    private final String id;
    private final Map<String, String> identifiers = new LinkedHashMap<>();
    private final List<Constituent> constituents = new ArrayList<>();
    private final Map<PropertyKey<?>, List<Sourced<?>>> figures = new LinkedHashMap<>();
    private String englishName;
    private String germanName = "";
    private MaterialFamily family = MaterialFamily.OTHER;
    private MaterialRole role = MaterialRole.BASE;

    private Builder(String id) {
      this.id = id;
      this.englishName = id;
    }

    /**
     * Sets the names.
     *
     * @param english the English name
     * @param german the German name
     * @return this builder
     */
    public Builder names(String english, String german) {
      englishName = english;
      germanName = german;
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
     * Sets the CAS registry number.
     *
     * @param number the number with hyphens
     * @return this builder
     */
    public Builder cas(String number) {
      identifiers.put("cas", number);
      return this;
    }

    /**
     * Sets the Colour Index generic name.
     *
     * @param name for example "PW6"
     * @return this builder
     */
    public Builder colourIndexName(String name) {
      identifiers.put("colour-index-name", name);
      return this;
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
     * Adds a figure, after those of the same property that are preferred to it.
     *
     * @param <V> the type of the value
     * @param key the property
     * @param figure the figure
     * @return this builder
     */
    public <V> Builder figure(PropertyKey<V> key, Sourced<V> figure) {
      figures.computeIfAbsent(key, k -> new ArrayList<>()).add(figure);
      return this;
    }

    /**
     * Returns the material.
     *
     * @return what was collected so far
     */
    public Material build() {
      return new Material(this);
    }
  }
}
