// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Bilingual;
import org.meltwright.units.ProblemException;

/**
 * A material: names, family, role, identifiers, constituents and figures, each with its source.
 * Conflicting figures stand in order of preference; {@link #find} gives the first, {@link #figures}
 * all. A figure that nobody knows is absent: {@link #require} says so.
 *
 * <p>Two materials are equal if all that is stated of them is, the lot and every figure included.
 * The catalogue's beeswax and the same with a flash point of your own are two versions of one
 * material: {@link #isSameMaterial} compares ids alone, {@link #isMeantBy} a question with what is
 * there. For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("Bienenwachs, gelb");
 * wax.name(Locale.ENGLISH); // Beeswax, yellow
 * wax.require(PropertyKey.MELTING_RANGE).value(); // 62.0–65.0 °C (CAPILLARY_RANGE)
 * Material bag = wax.withLot("7");
 * bag; // beeswax-yellow (lot 7)
 * bag.equals(wax); // false
 * bag.isMeantBy(wax); // true
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class Material {

  private final MaterialContent content;

  /** What {@link PerMaterial} worked out; no part of what the material is. */
  final Map<PerMaterial<?>, Object> workedOut = new ConcurrentHashMap<>();

  /**
   * Starts a material.
   *
   * @param id the stable id, lower case and hyphens, for example {@code beeswax-yellow}
   * @return a builder
   * @throws ProblemException if the id is blank
   */
  public static Builder builder(String id) {
    return new Builder(new MaterialContent(CHECK.named(id, "id of a material")));
  }

  private Material(MaterialContent content) {
    this.content = content;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code beeswax-yellow}
   */
  public String id() {
    return content.id;
  }

  /** {@return the supplier's lot or your own number of the bag; empty if none is named} */
  public Optional<String> lot() {
    return Optional.ofNullable(content.lot);
  }

  /**
   * Returns this material as one lot of it.
   *
   * @param name the supplier's lot or your own number of the bag, for example "7"
   * @return the same material with all its figures, of that lot
   * @throws ProblemException if the name is blank
   */
  public Material withLot(String name) {
    Builder builder = toBuilder();
    builder.content.lot = CHECK.named(name, "lot", content.id);
    return builder.build();
  }

  /**
   * Tells whether another is the same material: one id, whatever the lot and the figures.
   *
   * @param other the other material
   * @return whether the ids are equal
   */
  public boolean isSameMaterial(Material other) {
    return content.id.equals(other.content.id);
  }

  /**
   * Tells whether who asks for a material means this one: the same material, and of the lot asked
   * for where one is. All that is asked by material goes by this: share, mass, loss, price, stock.
   *
   * @param asked the material asked for
   * @return whether this one is meant
   */
  public boolean isMeantBy(Material asked) {
    return isSameMaterial(asked)
        && (asked.content.lot == null || asked.content.lot.equals(content.lot));
  }

  /**
   * Returns the name.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "Beeswax, yellow"
   */
  public String name(Locale locale) {
    String english = content.englishName == null ? content.id : content.englishName;
    String german = content.germanName == null ? english : content.germanName;
    return new Bilingual(english, german).in(locale);
  }

  /**
   * Returns the other names that the trade uses, in any language.
   *
   * @return the names, without the two of {@link #name}
   */
  public List<String> otherNames() {
    return content.otherNames;
  }

  /** {@return the family; {@link MaterialFamily#OTHER} if none was stated} */
  public MaterialFamily family() {
    return content.family == null ? MaterialFamily.OTHER : content.family;
  }

  /** {@return what it does in a mix; {@link MaterialRole#BASE} if none was stated} */
  public MaterialRole role() {
    return content.role == null ? MaterialRole.BASE : content.role;
  }

  /**
   * Returns the identifiers of a scheme, the preferred one first.
   *
   * @param scheme the scheme
   * @return the identifiers with their sources; empty if it has none
   */
  public List<Sourced<String>> identifiers(IdentifierScheme scheme) {
    return content.identifiers.getOrDefault(scheme, List.of());
  }

  /** {@return the CAS registry number with hyphens; empty if there is none} */
  public Optional<String> cas() {
    return first(IdentifierScheme.CAS);
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
    return content.constituents;
  }

  /**
   * Returns what it may be, where its name fits more than one material.
   *
   * <p>Its figures then span those of all of them: the safe end of a range is that of the worse.
   *
   * @return the candidates, at least two; empty for what is decided
   */
  public List<Material> alternatives() {
    return content.alternatives;
  }

  /**
   * Returns the properties that have a figure.
   *
   * @return the keys, in the order of {@link PropertyKey#all()}
   */
  public List<PropertyKey<?>> properties() {
    return content.keys();
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
    return (List<Sourced<V>>) (List<?>) content.figures.getOrDefault(key, List.of());
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
    return find(key).orElseThrow(() -> content.missing(MaterialProblem.PROPERTY_MISSING, key, ""));
  }

  /**
   * Returns why a property has no figure, if somebody looked for one in vain.
   *
   * @param key the property
   * @return the reason; empty if there is a figure or nobody looked
   */
  public Optional<String> absence(PropertyKey<?> key) {
    return content.absence(key);
  }

  /**
   * Returns the properties that somebody looked for in vain.
   *
   * @return the keys
   */
  public List<PropertyKey<?>> absences() {
    return List.copyOf(content.openAbsences().keySet());
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
            .orElseThrow(() -> content.missing(MaterialProblem.NO_FIGURE_OF_SOURCE, key, sourceId));
    Builder builder = toBuilder();
    builder.content.prefer(key, forced);
    return builder.build();
  }

  /**
   * Returns a copy in which a figure of one's own stands before the others of its property.
   *
   * @param <V> the type of the value
   * @param key the property
   * @param figure the figure, such as a measurement of this lot
   * @return the copy
   * @throws ProblemException if the property cannot have such a value, or is never measured at home
   */
  public <V> Material withFirst(PropertyKey<V> key, Sourced<V> figure) {
    Material own = builder(id()).figure(key, figure).build();
    Material both = Overriding.over(own, this);
    return content.lot == null ? both : both.withLot(content.lot);
  }

  /** A builder that holds all that was stated, without what follows from the alternatives. */
  Builder toBuilder() {
    return new Builder(content.changeable());
  }

  MaterialContent content() {
    return content;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Material that && new MaterialContent.SameContent().of(this, that));
  }

  /**
   * Returns the hash of id and lot: two versions of one material share it. It costs no walk through
   * the figures and is the same in every run, so that no order of a hash table changes with it.
   */
  @Override
  public int hashCode() {
    String lot = content.lot;
    return lot == null ? content.id.hashCode() : content.id.hashCode() * 31 + lot.hashCode();
  }

  /**
   * Returns the id, and the lot if one is named.
   *
   * @return for example "beeswax-yellow" or "beeswax-yellow (lot 7)"
   */
  @Override
  public String toString() {
    return content.key();
  }

  /**
   * Collects the parts of a material; not thread-safe.
   *
   * <p>Compared by identity: a builder changes.
   */
  public static final class Builder {

    final MaterialContent content;

    private Builder(MaterialContent content) {
      this.content = content;
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
      content.englishName = CHECK.named(english, "name", content.id);
      content.germanName = german.isEmpty() ? null : german;
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
      content.otherNames.add(CHECK.named(name, "name", content.id));
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
      content.family = family;
      content.role = role;
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
      ListsByKey.add(content.identifiers, scheme, identifier);
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
      content.constituents.add(new Constituent(material, share));
      return this;
    }

    /**
     * Adds a material that this one may be.
     *
     * @param candidate what it may be
     * @return this builder
     */
    public Builder alternative(Material candidate) {
      content.alternatives.add(candidate);
      return this;
    }

    /**
     * Adds a figure, after those of the same property that are preferred to it.
     *
     * @param <V> the type of the value
     * @param key the property
     * @param figure the figure
     * @return this builder
     * @throws ProblemException if the property cannot have such a value, or is never measured at
     *     home and this is a measurement of one's own
     */
    public <V> Builder figure(PropertyKey<V> key, Sourced<V> figure) {
      key.require(figure.value());
      key.requireNotMeasuredAtHome(figure);
      ListsByKey.add(content.figures, key, figure);
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
      content.absences.put(key, reason);
      return this;
    }

    /**
     * Returns the material.
     *
     * @return what was collected so far
     * @throws ProblemException if no choice of shares within their ranges sums to one
     */
    public Material build() {
      Constituent.requireWhole(content.id, content.constituents);
      return new Material(content.kept());
    }
  }
}
