// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Materials by name, and the bibliography of their figures.
 *
 * <p>{@link #standard()} is what ships with the library. A studio puts its own data sheets on top:
 * {@link #plus(String)} and {@link #with(Material)} return a new catalogue in which the new figures
 * stand first and the old ones stay visible behind them.
 *
 * <p>A name that several materials share, such as the Colour Index name PBr7, is found by {@link
 * #matches} only: {@link #find} does not guess.
 *
 * <p>For example, with a figure of your own on top of the four that are in print:
 *
 * <pre>{@code
 * String own = "material: beeswax-yellow\n  solid-density: 0.962 g/ml | user, March | read";
 * MaterialCatalogue studio = MaterialCatalogue.standard().plus(own);
 * Material wax = studio.require("Cera flava");
 * wax.require(PropertyKey.SOLID_DENSITY).value().range().middleSi(); // 962 kg/m³
 * wax.figures(PropertyKey.SOLID_DENSITY).size(); // 5
 * studio.matches("PBr7").size(); // 4
 * studio.require("beeswacks"); // throws ProblemException
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class MaterialCatalogue {

  private static final List<String> FILES =
      List.of(
          "sources.txt",
          "waxes.txt",
          "resins.txt",
          "oils-and-solvents.txt",
          "fats.txt",
          "pigments.txt",
          "oil-paints.txt");

  private final Map<String, Material> materials;
  private final Map<String, Source> sources;
  private volatile @Nullable NameIndex index;

  /** Read on first use and kept. */
  private static final class Standard {

    static final MaterialCatalogue CATALOGUE = read();

    private static MaterialCatalogue read() {
      MaterialsReader reader = new MaterialsReader(Map.of());
      for (String name : FILES) {
        reader.read(name, resource(name));
      }
      return catalogue(reader, Map.of());
    }

    private static byte[] resource(String name) {
      try (InputStream stream = MaterialCatalogue.class.getResourceAsStream(name)) {
        if (stream == null) {
          throw new IllegalStateException("the library lacks its data file " + name);
        }
        return stream.readAllBytes();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Returns the catalogue that ships with the library, read on first use.
   *
   * @return the catalogue
   */
  public static MaterialCatalogue standard() {
    return Standard.CATALOGUE;
  }

  /**
   * Returns a catalogue without materials.
   *
   * @return the empty catalogue
   */
  public static MaterialCatalogue empty() {
    return new MaterialCatalogue(Map.of(), Map.of());
  }

  /**
   * Returns the catalogue that a materials file holds, by itself.
   *
   * @param text the file
   * @return the catalogue
   * @throws ProblemException with all problems of the file, each with the path of its line
   */
  public static MaterialCatalogue parse(String text) {
    return empty().plus(text);
  }

  private static MaterialCatalogue catalogue(MaterialsReader reader, Map<String, Material> known) {
    List<Problem> problems = new ArrayList<>(reader.problems());
    Map<String, Material> all = new Linker(known, reader.entries(), problems).link();
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    return new MaterialCatalogue(all, reader.sources());
  }

  private MaterialCatalogue(Map<String, Material> materials, Map<String, Source> sources) {
    this.materials = materials;
    this.sources = sources;
  }

  /**
   * Returns all materials.
   *
   * @return the materials, in the order of the files
   */
  public List<Material> all() {
    return List.copyOf(materials.values());
  }

  /**
   * Returns the materials of a family.
   *
   * @param family the family
   * @return the materials, in the order of the files
   */
  public List<Material> byFamily(MaterialFamily family) {
    return materials.values().stream().filter(m -> m.family() == family).toList();
  }

  /**
   * Returns the materials that have a figure of a property.
   *
   * @param key the property
   * @return the materials, in the order of the files
   */
  public List<Material> having(PropertyKey<?> key) {
    return materials.values().stream().filter(m -> !m.figures(key).isEmpty()).toList();
  }

  /**
   * Returns the material with an id, a name, a CAS or EC number, or a Colour Index name.
   *
   * <p>Case, punctuation and the two spellings of German letters make no difference.
   *
   * @param idOrName the id or name
   * @return the material; empty if none has that name, or several share it
   */
  public Optional<Material> find(String idOrName) {
    List<Material> found = matches(idOrName);
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /**
   * Returns all materials that answer to a name or number.
   *
   * @param idOrName the id or name, as in {@link #find}
   * @return the materials; one alone if it is an id
   */
  public List<Material> matches(String idOrName) {
    Material own = materials.get(idOrName);
    return own == null ? index().matches(idOrName) : List.of(own);
  }

  /**
   * Returns the material with an id, a name or a number, that is needed.
   *
   * @param idOrName the id or name, as in {@link #find}
   * @return the material
   * @throws ProblemException if none has that name, with the nearest names; or if several share it
   */
  public Material require(String idOrName) {
    return find(idOrName).orElseThrow(() -> notFound(idOrName));
  }

  private ProblemException notFound(String name) {
    List<Material> several = matches(name);
    if (several.isEmpty()) {
      List<String> nearest = nearest(name);
      String names = nearest.isEmpty() ? "–" : String.join(", ", nearest);
      return new ProblemException(Problem.of(MaterialProblem.UNKNOWN, name).with("nearest", names));
    }
    String ids = several.stream().map(Material::id).collect(Collectors.joining(", "));
    return new ProblemException(Problem.of(MaterialProblem.AMBIGUOUS, name).with("ids", ids));
  }

  /**
   * Returns the ids of the materials whose names are nearest to a text.
   *
   * @param text what was looked for
   * @return at most three ids, the nearest first; empty if nothing is near
   */
  public List<String> nearest(String text) {
    return index().nearest(text);
  }

  private NameIndex index() {
    NameIndex made = index;
    if (made == null) {
      made = new NameIndex(materials.values());
      index = made;
    }
    return made;
  }

  /**
   * Returns all figures, by material, property and preference.
   *
   * @return the figures
   */
  public List<CatalogueFigure<?>> figures() {
    List<CatalogueFigure<?>> figures = new ArrayList<>();
    for (Material material : materials.values()) {
      material.properties().forEach(key -> addFigures(figures, material, key));
    }
    return figures;
  }

  private static <V> void addFigures(
      List<CatalogueFigure<?>> target, Material material, PropertyKey<V> key) {
    int rank = 0;
    for (var sourced : material.figures(key)) {
      target.add(new CatalogueFigure<>(material, key, ++rank, sourced));
    }
  }

  /**
   * Returns the figures that rest on one kind of source.
   *
   * @param kind the kind
   * @return the figures
   */
  public List<CatalogueFigure<?>> figures(SourceKind kind) {
    return figuresWhere(f -> f.sourced().source().kind() == kind);
  }

  /**
   * Returns the figures that are known in one way.
   *
   * @param knowledge how they came to us
   * @return the figures
   */
  public List<CatalogueFigure<?>> figures(Knowledge knowledge) {
    return figuresWhere(f -> f.sourced().knowledge() == knowledge);
  }

  private List<CatalogueFigure<?>> figuresWhere(Predicate<CatalogueFigure<?>> condition) {
    return figures().stream().filter(condition).toList();
  }

  /**
   * Returns the bibliography.
   *
   * @return the sources, in the order of the files, those that every catalogue has first
   */
  public List<Source> bibliography() {
    return List.copyOf(sources.values());
  }

  /**
   * Returns a catalogue with a material added, or put on top of the one with its id.
   *
   * <p>What the new material states stands first; all figures of the old one stay behind it. A
   * material that is made of others takes what the catalogue knows of them; figures that only the
   * part states stay behind those.
   *
   * <p>A lot is kept beside its material and found as "beeswax-yellow, lot 7": what is known of one
   * is not true of all. Behind its figures stand those of the material.
   *
   * @param material the material, or one lot of it
   * @return the new catalogue
   */
  public MaterialCatalogue with(Material material) {
    Map<String, Material> more = new LinkedHashMap<>(materials);
    Material old = more.getOrDefault(material.toString(), more.get(material.id()));
    more.put(material.toString(), old == null ? material : Overriding.over(material, old));
    return new MaterialCatalogue(new Linker(more, Map.of(), new ArrayList<>()).link(), sources);
  }

  /**
   * Returns a catalogue with the materials of a file added, or put on top of those with their ids.
   *
   * @param text the file, in the format of the catalogue's own files
   * @return the new catalogue
   * @throws ProblemException with all problems of the file, each with the path of its line
   */
  public MaterialCatalogue plus(String text) {
    return plus("materials", text);
  }

  /**
   * Returns a catalogue with the materials of a file added, or put on top of those with their ids.
   *
   * @param file the file, in UTF-8
   * @return the new catalogue
   * @throws ProblemException if it cannot be read, or with all problems of the file
   */
  public MaterialCatalogue plus(Path file) {
    try {
      return plus(String.valueOf(file.getFileName()), Files.readString(file));
    } catch (IOException e) {
      throw new ProblemException(Problem.of(MaterialProblem.FILE, file.toString()));
    }
  }

  /**
   * Returns this catalogue as a file, in the format of the catalogue's own files.
   *
   * <p>For one material of yours: {@code MaterialCatalogue.empty().with(material).toText()}.
   *
   * @return the text; {@link #parse} makes equal materials of it
   * @throws ProblemException if a file cannot hold them: a text has a line break or a sign that the
   *     format needs, a part is no material of this catalogue, or two sources have one id
   */
  public String toText() {
    String text = new MaterialsWriter(sources).write(materials.values());
    MaterialCatalogue again = parse(text);
    for (Material material : materials.values()) {
      if (!material.equals(again.materials.get(material.toString()))) {
        throw new ProblemException(Problem.of(MaterialProblem.NOT_WRITABLE, material.toString()));
      }
    }
    return text;
  }

  private MaterialCatalogue plus(String name, String text) {
    MaterialsReader reader = new MaterialsReader(sources);
    reader.read(name, text.getBytes(StandardCharsets.UTF_8));
    return catalogue(reader, materials);
  }

  @Override
  public String toString() {
    return materials.size() + " materials";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MaterialCatalogue that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(materials, sources);
  }
}
