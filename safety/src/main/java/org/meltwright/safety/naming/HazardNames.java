// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.lang.ref.WeakReference;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.source.Sourced;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Asks names whether they tell a hazard: some four thousand names in English, German, French,
 * Italian and Spanish of what is never heated, only melted, or asked for first.
 *
 * <p>Only names that are none of the standard catalogue's own are asked: a catalogue material with
 * its own names is judged by its figures, and costs nothing here. The list is read when the first
 * other name comes.
 *
 * <ul>
 *   <li>A CAS number decides before a Colour Index name, and both before a word; where the weaker
 *       says worse, the worse holds and it is said ({@link NamedHazard#against()}).
 *   <li>A false friend is cut out and the rest is asked: "gebleicht" holds the German word of lead,
 *       and "gebleichtes Wachs mit Bleiweiß" is lead all the same.
 *   <li>What a name has by "-free", "-frei", "sans", "ohne" or "without" directly at a word is not
 *       told of that word.
 *   <li>"Hue", "imitation", "Ersatz", "-ton" say that a colour is made of something else: asked
 *       for, nothing refused by the word alone. A name of several things is the worst of them until
 *       a number says which.
 * </ul>
 *
 * <p>For example, an old jar that nobody would find in a catalogue, and one that only sounds alike:
 *
 * <pre>{@code
 * Material jar = Material.builder("jar-7").names("Old yellow", "Neapelgelb, echt").build();
 * NamedHazard worst = HazardNames.of(jar).get(0);
 * worst.hazard().id(); // naples-yellow-genuine
 * worst.heatUse(); // NEVER_HEATED
 * HazardNames.ofName("Bienenwachs, gebleicht, Bleistift").isEmpty(); // true
 * Material wax = MaterialCatalogue.standard().require("beeswax-bleached");
 * HazardNames.of(wax).isEmpty(); // true
 * }</pre>
 *
 * <p>An empty answer is no word of safety: a name that the list does not know is not assessed.
 *
 * <p>Not instantiable; thread-safe. Answers take time linear to the length of the names, and any
 * text is a name.
 */
public final class HazardNames {

  private static final AnswerCache ANSWERS = new AnswerCache();

  /** The materials of the standard catalogue, as objects and by id. */
  private static final class Own {

    static final Set<Material> MATERIALS = identitySet();
    static final Map<String, Material> BY_ID = new HashMap<>();

    static {
      for (Material material : MaterialCatalogue.standard().all()) {
        MATERIALS.add(material);
        BY_ID.put(material.id(), material);
      }
    }
  }

  private static Set<Material> identitySet() {
    return Collections.newSetFromMap(new IdentityHashMap<>());
  }

  private HazardNames() {}

  /**
   * Asks a material: its id, names, numbers and Colour Index names, and those of what it holds or
   * may be.
   *
   * <p>What the standard catalogue says under the same id is not asked again, so that a catalogue
   * material with figures of one's own draws nothing, and one with another name is asked for that
   * name. Worked out once for each material.
   *
   * @param material the material
   * @return the hazards that its names tell, the worst first; empty if they tell none
   */
  public static List<NamedHazard> of(Material material) {
    return isOwn(material) ? List.of() : ANSWERS.get(material, HazardNames::ask);
  }

  /**
   * Asks a name, as it stands in a file or on a jar; a CAS number or a Colour Index name in it
   * counts as such.
   *
   * @param name the name, any text
   * @return the hazards that it tells, the worst first; empty if it tells none
   */
  public static List<NamedHazard> ofName(String name) {
    return new Enquiry().name(name).answer();
  }

  /**
   * Returns the material with an id, a name or a number, as the catalogue does; of an unknown name
   * that tells a hazard the problem says so, beside the nearest names.
   *
   * @param catalogue the catalogue
   * @param idOrName the id or name
   * @return the material
   * @throws ProblemException if none has that name, or several share it
   */
  public static Material require(MaterialCatalogue catalogue, String idOrName) {
    if (!catalogue.matches(idOrName).isEmpty()) {
      return catalogue.require(idOrName);
    }
    List<NamedHazard> told = ofName(idOrName);
    if (told.isEmpty()) {
      return catalogue.require(idOrName);
    }
    List<String> nearest = catalogue.nearest(idOrName);
    throw new ProblemException(
        Problem.of(NamingProblem.HAZARD_NAME, idOrName)
            .with("english", told.get(0).text(Locale.ENGLISH))
            .with("german", told.get(0).text(Locale.GERMAN))
            .with("nearest", nearest.isEmpty() ? "–" : String.join(", ", nearest)));
  }

  /**
   * Tells whether a material bears the name of a powder that the list knows as no hazard,
   * "Krapplack" or "pencil lead", and nothing that it says tells one. What heat it stands is not
   * told by that.
   *
   * @param material the material
   * @return whether a name of it, apart from a shade, is such a name
   */
  public static boolean isFalseFriend(Material material) {
    return harmless(material).findAny().isPresent();
  }

  /**
   * Returns the ordinary pigment whose name a material bears, "ochre" or "Marmormehl", where
   * nothing that it says tells a hazard. Where names tell several, it is the one that stands least
   * heat.
   *
   * @param material the material
   * @return the pigment; empty if no name of it, apart from shades, is that of one
   */
  public static Optional<PigmentHazard> ordinaryPigment(Material material) {
    return harmless(material)
        .filter(hazard -> hazard.kind() == NameKind.ORDINARY_PIGMENT)
        .flatMap(hazard -> hazard.pigment().stream())
        .min(Comparator.comparing(PigmentHazard::heatUse));
  }

  private static Stream<ListedHazard> harmless(Material material) {
    return isOwn(material) || !of(material).isEmpty()
        ? Stream.empty()
        : names(material).stream()
            .flatMap(
                name -> NameSearch.harmless(FoldedText.of(name), NameList.standard()).stream());
  }

  private static boolean isOwn(Material material) {
    return Own.MATERIALS.contains(material);
  }

  private static List<NamedHazard> ask(Material material) {
    Map<ListedHazard, NamedHazard> told = new LinkedHashMap<>();
    for (Material part : parts(material)) {
      for (NamedHazard named : askOne(part)) {
        told.merge(
            named.hazard(), named, (a, b) -> NamedHazard.WORST_FIRST.compare(a, b) <= 0 ? a : b);
      }
    }
    return told.values().stream().sorted(NamedHazard.WORST_FIRST).toList();
  }

  /** A material, what it may be and all that it holds, each once, without the catalogue's own. */
  private static List<Material> parts(Material material) {
    Set<Material> seen = identitySet();
    List<Material> parts = new ArrayList<>();
    Deque<Material> open = new ArrayDeque<>(List.of(material));
    while (!open.isEmpty()) {
      Material next = open.pop();
      if (!isOwn(next) && seen.add(next)) {
        parts.add(next);
        open.addAll(next.alternatives());
        next.constituents().stream()
            .filter(c -> c.share().high().value() > 0)
            .map(Constituent::material)
            .forEach(open::add);
      }
    }
    return parts;
  }

  private static List<NamedHazard> askOne(Material material) {
    @Nullable Material own = Own.BY_ID.get(material.id());
    Set<String> names = names(material);
    Set<String> numbers = numbers(material);
    Set<String> known = own == null ? Set.of() : numbers(own);
    if (own != null) {
      names.removeAll(names(own));
    }
    if (names.isEmpty() && known.containsAll(numbers)) {
      return List.of();
    }
    Enquiry enquiry = new Enquiry();
    if (material.family() == MaterialFamily.PIGMENT) {
      enquiry.pigment();
    }
    names.forEach(enquiry::name);
    values(material, IdentifierScheme.CAS).forEach(enquiry::cas);
    values(material, IdentifierScheme.COLOUR_INDEX_NAME).forEach(enquiry::colourIndexName);
    known.forEach(enquiry::known);
    return enquiry.answer();
  }

  private static Set<String> names(Material material) {
    Set<String> names = new LinkedHashSet<>();
    names.add(material.name(Locale.ENGLISH));
    names.add(material.name(Locale.GERMAN));
    names.addAll(material.otherNames());
    names.add(material.id());
    return names;
  }

  private static Set<String> numbers(Material material) {
    return Stream.concat(
            values(material, IdentifierScheme.CAS),
            values(material, IdentifierScheme.COLOUR_INDEX_NAME))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Stream<String> values(Material material, IdentifierScheme scheme) {
    return material.identifiers(scheme).stream().map(Sourced::value);
  }

  /**
   * The answers of the materials asked of late. A material is known by being the same object; none
   * is held, no more than a fixed number of answers is kept, and nobody waits: two that ask at once
   * work it out twice.
   */
  static final class AnswerCache {

    /** A power of two. */
    private static final int SLOTS = 512;

    private final AtomicReferenceArray<Slot> slots = new AtomicReferenceArray<>(SLOTS);

    private record Slot(WeakReference<Material> material, List<NamedHazard> answer) {}

    List<NamedHazard> get(Material material, Function<Material, List<NamedHazard>> work) {
      int place = System.identityHashCode(material) & (SLOTS - 1);
      Slot slot = slots.getAcquire(place);
      if (slot != null && slot.material().refersTo(material)) {
        return slot.answer();
      }
      List<NamedHazard> answer = work.apply(material);
      slots.setRelease(place, new Slot(new WeakReference<>(material), answer));
      return answer;
    }
  }
}
