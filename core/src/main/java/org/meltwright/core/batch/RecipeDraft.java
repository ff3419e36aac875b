// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Recipe} as it is written down, not checked yet: its lines name materials and other
 * recipes.
 *
 * <p>Drafts may contradict each other or themselves; {@link RecipeBook} turns them into recipes, or
 * says all that is wrong.
 *
 * <p>For example, as a ratio and as it is written back:
 *
 * <pre>{@code
 * MaterialLookup catalogue = MaterialCatalogue.standard()::require;
 * RecipeDraft draft = new RecipeDraft("medium", "Medium", "1:8 damar:beeswax-yellow", null);
 * Recipe medium = draft.toRecipe(QuantityParser.localeFree(), catalogue);
 * medium; // Medium = 1.0 damar + 8.0 beeswax-yellow
 * medium.toDraft().parts().get(1).parts(); // 8
 * }</pre>
 *
 * <p>Immutable if its list is.
 *
 * @param id what other recipes call it; its name if absent
 * @param name the name of the recipe
 * @param ratio two sides by mass, such as "1:8 damar:beeswax-yellow"; absent if there are lines
 * @param parts its lines; absent if there is a ratio
 */
public record RecipeDraft(
    @Nullable String id,
    @Nullable String name,
    @Nullable String ratio,
    @Nullable List<PartDraft> parts) {

  /** The draft; what recipes are called is asked by their names. */
  static RecipeDraft of(Recipe recipe, UnaryOperator<String> referenceOf) {
    DraftOrder.requireOneReference(
        recipe.parts().stream().map(RecipePart::ingredient), referenceOf);
    String reference = referenceOf.apply(recipe.name());
    return new RecipeDraft(
        reference.equals(recipe.name()) ? null : reference,
        recipe.name(),
        null,
        PartDraft.of(recipe, referenceOf));
  }

  /**
   * Returns the recipe, if it calls for materials alone; what calls for other recipes is read by
   * {@link RecipeBook}.
   *
   * @param parser reads the amounts
   * @param materials finds the materials
   * @return the recipe
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Recipe toRecipe(QuantityParser parser, MaterialLookup materials) {
    Problems problems = new Problems();
    Optional<Recipe> recipe =
        new RecipeReader(FieldReader.of(parser, problems), materials, List.of()).alone(this);
    problems.throwIfAny();
    return recipe.orElseThrow();
  }

  /** What other recipes call it; empty if nobody can. */
  Optional<String> reference() {
    return Stream.of(Optional.ofNullable(id), Optional.ofNullable(name))
        .flatMap(Optional::stream)
        .filter(text -> !text.isBlank())
        .findFirst();
  }

  /**
   * A line of a recipe as it is written down, not checked yet: what is taken, and how much of it.
   *
   * <p>Exactly one of parts, share, amount, inEach, upTo and rest says how much.
   *
   * <p>For example, a share by volume, and a line whose amount was forgotten:
   *
   * <pre>{@code
   * RecipeDraft.PartDraft white =
   *     RecipeDraft.PartDraft.named("titanium-white-rutile").withShare("10 % by volume");
   * RecipeDraft.PartDraft wax = RecipeDraft.PartDraft.named("beeswax-yellow");
   * RecipeDraft draft = new RecipeDraft(null, "white", null, List.of(white, wax));
   * List<Problem> problems = new ArrayList<>();
   * try {
   *   draft.toRecipe(QuantityParser.localeFree(), MaterialCatalogue.standard()::require);
   * } catch (ProblemException e) {
   *   problems.addAll(e.problems());
   * }
   * problems.get(0).path(); // /parts/1
   * problems.get(0).what(Locale.ENGLISH); // The line states no amount, or several.
   * }</pre>
   *
   * <p>Immutable and thread-safe.
   *
   * @param of what other recipes call a recipe, or the id of a material; a recipe goes first
   * @param lot the lot of the material; absent if none is named, or if it is a recipe
   * @param parts how many parts, a number: by mass, or by volume if a state is stated
   * @param share a share of the whole, such as "10 %" by mass or "10 % by volume"
   * @param amount a mass or a volume, such as "40 g" or "60 ml"
   * @param inEach a mass in a volume of the whole, such as "0.25 g/ml"
   * @param upTo the mass or the volume of the whole that this line makes up, such as "100 g"
   * @param rest whether it is all that the other lines leave
   * @param state the state that a volume is measured in: solid, melt or bulk; solid if absent
   * @param losses what is lost in making the other recipe; absent for nothing
   */
  public record PartDraft(
      @Nullable String of,
      @Nullable String lot,
      @Nullable String parts,
      @Nullable String share,
      @Nullable String amount,
      @Nullable String inEach,
      @Nullable String upTo,
      @Nullable Boolean rest,
      @Nullable String state,
      @Nullable LossesDraft losses) {

    private static final QuantityFormatter EXACT = QuantityFormatter.exact();

    /**
     * Returns a line that names what is taken, and no amount yet.
     *
     * @param of what is taken
     * @return the line
     */
    public static PartDraft named(String of) {
      return new PartDraft(of, null, null, null, null, null, null, null, null, null);
    }

    /**
     * Returns a copy with parts.
     *
     * @param number how many, a number
     * @return the new line
     */
    public PartDraft withParts(String number) {
      return new PartDraft(of, lot, number, share, amount, inEach, upTo, rest, state, losses);
    }

    /**
     * Returns a copy with a share.
     *
     * @param ofWhole the share of the whole
     * @return the new line
     */
    public PartDraft withShare(String ofWhole) {
      return new PartDraft(of, lot, parts, ofWhole, amount, inEach, upTo, rest, state, losses);
    }

    /**
     * Returns how much of it the line takes, volumes counted with the densities of the materials.
     *
     * @param parser reads the amount
     * @return the amount
     * @throws ProblemException if none is stated, several are, or it cannot be read; it carries all
     *     problems found, each at its field
     */
    public StatedAmount toAmount(QuantityParser parser) {
      FieldReader at = FieldReader.of(parser);
      Optional<StatedAmount> amount = RecipeReader.amount(at, this);
      return at.make(amount::orElseThrow);
    }

    /** The lines; in parts by mass where volumes were counted with densities of one's own. */
    static List<PartDraft> of(Recipe recipe, UnaryOperator<String> referenceOf) {
      boolean asStated = recipe.parts().stream().allMatch(part -> isPlain(part.amount()));
      List<PartDraft> lines = new ArrayList<>();
      for (int i = 0; i < recipe.parts().size(); i++) {
        RecipePart part = recipe.parts().get(i);
        StatedAmount amount = asStated ? part.amount() : StatedAmount.parts(recipe.lineMasses()[i]);
        lines.add(of(part.ingredient(), amount, referenceOf));
      }
      return List.copyOf(lines);
    }

    private static boolean isPlain(StatedAmount amount) {
      return basis(amount).map(b -> b.equals(DensityBasis.of(b.state()))).orElse(true);
    }

    private static Optional<DensityBasis> basis(StatedAmount amount) {
      if (amount instanceof StatedAmount.VolumeParts v) {
        return Optional.of(v.basis());
      } else if (amount instanceof StatedAmount.VolumeShare v) {
        return Optional.of(v.basis());
      } else if (amount instanceof StatedAmount.InVolume v) {
        return Optional.of(v.basis());
      } else if (amount instanceof StatedAmount.MassInVolume v) {
        return Optional.of(v.basis());
      }
      return amount instanceof StatedAmount.UpToVolume v
          ? Optional.of(v.basis())
          : Optional.empty();
    }

    private static PartDraft of(
        Ingredient ingredient, StatedAmount amount, UnaryOperator<String> referenceOf) {
      Optional<Material> material = ingredient.material();
      return new PartDraft(
          material.map(Material::id).orElseGet(() -> referenceOf.apply(ingredient.name())),
          material.flatMap(Material::lot).orElse(null),
          parts(amount),
          share(amount),
          amount(amount),
          amount instanceof StatedAmount.MassInVolume in
              ? EXACT.format(
                  QuantityKind.DENSITY,
                  in.kilogramsPerCubicMetre(),
                  MetricUnits.GRAM_PER_MILLILITRE)
              : null,
          upTo(amount),
          amount instanceof StatedAmount.Rest ? true : null,
          basis(amount).map(basis -> basis.state().word()).orElse(null),
          ingredient.losses().equals(Losses.NONE) ? null : ingredient.losses().toDraft());
    }

    private static @Nullable String parts(StatedAmount amount) {
      return amount instanceof StatedAmount.Parts p
          ? EXACT.format(p.parts())
          : amount instanceof StatedAmount.VolumeParts v ? EXACT.format(v.parts()) : null;
    }

    private static @Nullable String share(StatedAmount amount) {
      return amount instanceof StatedAmount.MassShare m
          ? EXACT.format(m.share())
          : amount instanceof StatedAmount.VolumeShare v ? EXACT.format(v.share()) : null;
    }

    private static @Nullable String amount(StatedAmount amount) {
      return amount instanceof StatedAmount.InMass m
          ? mass(m.kilograms())
          : amount instanceof StatedAmount.InVolume v ? volume(v.cubicMetres()) : null;
    }

    private static @Nullable String upTo(StatedAmount amount) {
      return amount instanceof StatedAmount.UpToMass m
          ? mass(m.kilograms())
          : amount instanceof StatedAmount.UpToVolume v ? volume(v.cubicMetres()) : null;
    }

    private static String mass(double kilograms) {
      return EXACT.format(QuantityKind.MASS, kilograms, MetricUnits.GRAM);
    }

    private static String volume(double cubicMetres) {
      return EXACT.format(QuantityKind.VOLUME, cubicMetres, MetricUnits.MILLILITRE);
    }
  }
}
