// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.UnitsProblem;

/** Reads the fields of one recipe's draft; what calls for other recipes waits until they are. */
final class RecipeReader {

  /** What is taken: from the shelf, or what a recipe of this reference makes. */
  private record Taken(Optional<Material> material, String reference, Losses losses) {

    Optional<Ingredient> from(Map<String, Recipe> built) {
      return material.isPresent()
          ? material.map(Ingredient::of)
          : Optional.ofNullable(built.get(reference)).map(made -> Ingredient.of(made, losses));
    }
  }

  private record Line(Taken taken, StatedAmount amount) {}

  /** A recipe all of whose fields were read. */
  static final class Unmade {

    private final FieldReader at;
    private final String name;
    private final List<Line> lines;

    private Unmade(FieldReader at, String name, List<Line> lines) {
      this.at = at;
      this.name = name;
      this.lines = lines;
    }

    /** The recipe; empty if it or one that it needs has a problem. */
    Optional<Recipe> make(Map<String, Recipe> built) {
      List<RecipePart> parts =
          lines.stream()
              .flatMap(
                  line ->
                      line.taken.from(built).stream()
                          .map(ingredient -> new RecipePart(ingredient, line.amount)))
              .toList();
      return parts.size() < lines.size()
          ? Optional.empty()
          : at.attempt(() -> Recipe.of(name, parts));
    }
  }

  private static final Map<String, DensityBasis> STATES =
      Stream.of(DensityBasis.SOLID, DensityBasis.MELT, DensityBasis.BULK)
          .collect(toMap(b -> b.state().word(), b -> b, (a, b) -> a, LinkedHashMap::new));

  private final FieldReader at;
  private final MaterialLookup materials;
  private final Collection<String> recipes;
  private final Set<String> needs = new LinkedHashSet<>();

  /** Reads at a place; the recipes are those that lines may call for. */
  RecipeReader(FieldReader at, MaterialLookup materials, Collection<String> recipes) {
    this.at = at;
    this.materials = materials;
    this.recipes = recipes;
  }

  Optional<Recipe> alone(RecipeDraft draft) {
    return read(draft).flatMap(unmade -> unmade.make(Map.of()));
  }

  /** The references of the recipes that the lines read so far call for. */
  Set<String> needs() {
    return needs;
  }

  /** Reads all fields; empty if one of them has a problem. */
  Optional<Unmade> read(RecipeDraft draft) {
    Optional<String> name = at.value("name", draft.name());
    boolean both = draft.ratio() != null && draft.parts() != null;
    if (both) {
      String ratio = String.valueOf(draft.ratio());
      at.problems().add(Problem.of(BatchProblem.RATIO_OR_PARTS, ratio).under(at.path()));
    }
    List<Line> lines = draft.ratio() != null ? ofRatio(draft.ratio()) : ofParts(draft);
    return at.attempt(() -> new Unmade(at, name.orElse(""), lines));
  }

  private List<Line> ofRatio(String text) {
    Optional<MixingRatio> ratio = at.parse("ratio", text, QuantityParser::parseMixingRatio);
    return ratio.stream()
        .flatMap(
            r ->
                Stream.of(
                    side(r.firstSide(), r.firstParts()), side(r.secondSide(), r.secondParts())))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Line> side(String reference, double parts) {
    return at.read(
        "ratio",
        reference,
        side ->
            new Line(taken(side, Optional.empty(), Losses.NONE, false), StatedAmount.parts(parts)));
  }

  private List<Line> ofParts(RecipeDraft draft) {
    List<RecipeDraft.PartDraft> parts = draft.parts() == null ? List.of() : draft.parts();
    FieldReader list = at.field("parts");
    at.each("parts", parts, Function.identity());
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) != null) {
        line(list.field("" + i), parts.get(i)).ifPresent(lines::add);
      }
    }
    return lines;
  }

  private Optional<Line> line(FieldReader part, RecipeDraft.PartDraft draft) {
    FieldReader may = part.optional();
    Optional<Losses> losses =
        may.read("losses", draft.losses(), d -> d.toLosses(at.parser(), materials));
    Optional<String> lot = may.value("lot", draft.lot());
    Optional<Taken> taken =
        part.read(
            "of",
            draft.of(),
            of -> taken(of, lot, losses.orElse(Losses.NONE), draft.losses() != null));
    Optional<StatedAmount> amount = amount(part, draft);
    return part.attempt(() -> new Line(taken.get(), amount.get()));
  }

  private Taken taken(String of, Optional<String> lot, Losses losses, boolean made) {
    if (lot.isEmpty() && recipes.contains(of)) {
      needs.add(of);
      return new Taken(Optional.empty(), of, losses);
    }
    if (made) {
      throw new ProblemException(
          Problem.of(BatchProblem.UNKNOWN_RECIPE, of)
              .with("known", String.join(", ", recipes.stream().limit(12).toList())));
    }
    Material material = materials.require(of);
    return new Taken(Optional.of(lot.map(material::withLot).orElse(material)), of, Losses.NONE);
  }

  /** Reads how much a line takes. */
  static Optional<StatedAmount> amount(FieldReader part, RecipeDraft.PartDraft draft) {
    Optional<DensityBasis> stated = part.optional().oneOf("state", draft.state(), STATES);
    DensityBasis basis = stated.orElse(DensityBasis.SOLID);
    boolean byVolume = stated.isPresent();
    FieldReader may = part.optional();
    Optional<StatedAmount> amount =
        Stream.<Supplier<Optional<StatedAmount>>>of(
                () -> may.parse("parts", draft.parts(), (p, t) -> parts(p, t, stated)),
                () -> may.parse("share", draft.share(), (p, t) -> share(p, t, basis, byVolume)),
                () -> may.parse("amount", draft.amount(), (p, t) -> amount(p, t, basis, byVolume)),
                () ->
                    may.parse(
                        "inEach",
                        draft.inEach(),
                        (p, t) -> StatedAmount.inEach(p.parseDensity(t), basis)),
                () -> may.parse("upTo", draft.upTo(), (p, t) -> upTo(p, t, basis, byVolume)),
                () ->
                    Boolean.TRUE.equals(draft.rest())
                        ? Optional.of(StatedAmount.rest())
                        : Optional.empty())
            .flatMap(reader -> reader.get().stream())
            .reduce((first, second) -> first);
    if (stated(draft) != 1) {
      part.problems().add(Problem.of(BatchProblem.AMOUNT_ONCE, "").under(part.path()));
    }
    return amount;
  }

  private static long stated(RecipeDraft.PartDraft draft) {
    long texts =
        Stream.of(draft.parts(), draft.share(), draft.amount(), draft.inEach(), draft.upTo())
            .filter(text -> text != null && !text.isBlank())
            .count();
    return texts + (Boolean.TRUE.equals(draft.rest()) ? 1 : 0);
  }

  private static StatedAmount parts(
      QuantityParser parser, String text, Optional<DensityBasis> basis) {
    double number = parser.parseNumber(text).doubleValue();
    return basis
        .map(b -> StatedAmount.volumeParts(number, b))
        .orElseGet(() -> StatedAmount.parts(number));
  }

  private static StatedAmount share(
      QuantityParser parser, String text, DensityBasis basis, boolean byVolume) {
    return either(
        byVolume,
        text,
        t -> StatedAmount.of(parser.parseMassFraction(t)),
        t -> StatedAmount.of(parser.parseVolumeFraction(t), basis));
  }

  private static StatedAmount amount(
      QuantityParser parser, String text, DensityBasis basis, boolean byVolume) {
    return either(
        byVolume,
        text,
        t -> StatedAmount.of(parser.parseMass(t)),
        t -> StatedAmount.of(parser.parseVolume(t), basis));
  }

  private static StatedAmount upTo(
      QuantityParser parser, String text, DensityBasis basis, boolean byVolume) {
    return either(
        byVolume,
        text,
        t -> StatedAmount.upTo(parser.parseMass(t)),
        t -> StatedAmount.upTo(parser.parseVolume(t), basis));
  }

  /** By volume where a state is stated; else by mass, unless the text says a volume. */
  private static StatedAmount either(
      boolean byVolume,
      String text,
      Function<String, StatedAmount> mass,
      Function<String, StatedAmount> volume) {
    if (byVolume) {
      return volume.apply(text);
    }
    try {
      return mass.apply(text);
    } catch (ProblemException noMass) {
      try {
        return volume.apply(text);
      } catch (ProblemException noVolume) {
        throw isOfAnotherKind(noMass) ? noVolume : noMass;
      }
    }
  }

  private static boolean isOfAnotherKind(ProblemException e) {
    ProblemCode code = e.problems().get(0).code();
    return code == UnitsProblem.WRONG_KIND || code == UnitsProblem.FRACTION_WRONG_BASIS;
  }
}
