// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * The answer to a question for a blend: found and proved, impossible and why, or undecided.
 *
 * <p>For example, a medium from what is left and from the shelf, old cakes first:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Mixture cakes = Mixture.of(Composition.ofParts(List.of(resin, wax), 1, 4), grams(300));
 * List<BlendPart> parts =
 *     List.of(
 *         BlendPart.of("old cakes", cakes).at(UnitPrice.parse("0 EUR/kg")),
 *         BlendPart.of(resin).at(UnitPrice.parse("32 EUR/kg")),
 *         BlendPart.of(wax).at(UnitPrice.parse("12.50 EUR/kg")));
 * List<Wish> wishes =
 *     List.of(
 *         Wish.amount(grams(900)),
 *         Wish.share(ShareOf.RESIN, Wish.percent(11, 14)),
 *         Wish.useUp("old cakes").ranked(1));
 * BlendAnswer answer = BlendQuestion.of(parts, wishes).cheapest();
 * BlendAnswer.Found found = answer.require();
 * found.composition(); // beeswax-yellow 89.000 % + damar 11.000 % by mass
 * found.cost().get().toMoney(); // EUR 8.26
 * found.line("old cakes").leftKilograms(); // 0 kg
 * Wish more = Wish.useAtLeast("old cakes", grams(400));
 * BlendQuestion.of(parts, wishes).with(more).cheapest().require(); // throws ProblemException
 * }</pre>
 */
public sealed interface BlendAnswer {

  /**
   * Returns the blend.
   *
   * @return the blend, if one was found
   * @throws ProblemException if there is none, with the wishes that contradict each other, or if
   *     nothing could be proved
   */
  Found require();

  /**
   * Says what a reader has to know beside the amounts: what gave way, what binds and what it is
   * worth, whether others are as good, what the steps of the balance break, how it is proved.
   *
   * @return the sentences; none if there is nothing to say
   */
  List<Bilingual> sentences();

  /**
   * A blend that is proved to be the best.
   *
   * <p>Immutable and thread-safe. {@link BlendQuestion} makes it.
   */
  final class Found implements BlendAnswer {

    /** The blend as the solver proved it. */
    record Proved(
        List<BlendLine> lines,
        BlendAim aim,
        double value,
        List<BindingWish> binding,
        List<Concession> concessions,
        List<Wish> brokenByWeighing,
        boolean isOneOfSeveral,
        BlendCertificate certificate) {

      Proved {
        lines = List.copyOf(lines);
        binding = List.copyOf(binding);
        concessions = List.copyOf(concessions);
        brokenByWeighing = List.copyOf(brokenByWeighing);
      }
    }

    private final Proved proved;
    private final List<Wish> cuts;
    private final @Nullable WorkingWindow window;
    private final @Nullable BlendAnswer middle;

    Found(Proved proved) {
      this(proved, List.of(), null, null);
    }

    private Found(
        Proved proved,
        List<Wish> cuts,
        @Nullable WorkingWindow window,
        @Nullable BlendAnswer middle) {
      this.proved = proved;
      this.cuts = List.copyOf(cuts);
      this.window = window;
      this.middle = middle;
    }

    Found within(@Nullable WorkingWindow found, List<Wish> newCuts) {
      return new Found(proved, newCuts, found, middle);
    }

    Found beside(BlendAnswer inTheMiddle) {
      return new Found(proved, cuts, window, inTheMiddle);
    }

    @Override
    public Found require() {
      return this;
    }

    /**
     * Returns how much of each part goes in.
     *
     * @return a line for each part of the question, by name; some may be nothing
     */
    public List<BlendLine> lines() {
      return proved.lines;
    }

    /**
     * Returns how much of one part goes in.
     *
     * @param part its name
     * @return its line
     * @throws ProblemException if the question has no such part
     */
    public BlendLine line(String part) {
      return proved.lines.stream()
          .filter(l -> l.part().name().equals(part))
          .findFirst()
          .orElseThrow(() -> new ProblemException(Problem.of(PlanningProblem.NO_SUCH_PART, part)));
    }

    /**
     * Returns what the blend is made of, as worked out.
     *
     * @return the composition
     */
    public Composition composition() {
      return Composition.blend(
          proved.lines.stream().map(l -> l.part().composition()).toList(),
          proved.lines.stream().mapToDouble(BlendLine::share).toArray());
    }

    /**
     * Returns what comes of the amounts that are weighed: what is heated, and reviewed.
     *
     * @return the mixture
     */
    public Mixture mixture() {
      return Mixture.blend(
          proved.lines.stream()
              .map(l -> new Mixture(l.part().composition(), l.weighedKilograms()))
              .toList());
    }

    /**
     * Returns what the parts that go in cost, as weighed.
     *
     * @return the exact sum; empty if one that goes in has no price, or the currencies differ
     */
    public Optional<ExactMoney> cost() {
      List<BlendLine> used = proved.lines.stream().filter(l -> l.weighedKilograms() > 0).toList();
      long currencies =
          used.stream()
              .flatMap(l -> l.part().price().stream())
              .map(p -> p.currency())
              .distinct()
              .count();
      boolean isPriced = used.stream().allMatch(l -> l.part().price().isPresent());
      return isPriced && currencies == 1
          ? used.stream()
              .map(
                  l ->
                      l.part()
                          .price()
                          .orElseThrow()
                          .cost(QuantityKind.MASS.ofSi(l.weighedKilograms())))
              .reduce(ExactMoney::plus)
          : Optional.empty();
    }

    /**
     * Returns what was to be least, or most.
     *
     * @return money per kg, the share that is changed, kg of what was to be used, or the distance
     *     from a share, as the question asked; exact, not as weighed
     */
    public double value() {
      return proved.value;
    }

    /**
     * Returns the wishes that hold the aim back.
     *
     * @return the wishes with what they are worth; none if nothing better could be had at all
     */
    public List<BindingWish> binding() {
      return proved.binding;
    }

    /**
     * Returns the ranked wishes that gave way.
     *
     * @return the wishes, and how far
     */
    public List<Concession> concessions() {
      return proved.concessions;
    }

    /**
     * Returns the hard wishes that no amounts in whole steps of the balance near these keep.
     *
     * @return the wishes; none if the weighed amounts keep all
     */
    public List<Wish> brokenByWeighing() {
      return proved.brokenByWeighing;
    }

    /**
     * Returns the wishes that were added so that the working window does not close.
     *
     * @return the wishes; the blend is the best of those that keep them too
     */
    public List<Wish> cuts() {
      return cuts;
    }

    /**
     * Tells whether other blends are as good.
     *
     * @return whether there are several; {@link BlendLine#leastShare} and {@link
     *     BlendLine#mostShare} tell how far they reach
     */
    public boolean isOneOfSeveral() {
      return proved.isOneOfSeveral;
    }

    /**
     * Returns the proof.
     *
     * @return the certificate, which holds
     */
    public BlendCertificate certificate() {
      return proved.certificate;
    }

    /**
     * Returns the working window of the blend.
     *
     * @return the window; empty if none was asked for, or it cannot be told
     */
    public Optional<WorkingWindow> window() {
      return Optional.ofNullable(window);
    }

    /**
     * Returns the answer to the same question in the middle of all figures, where this one holds
     * for every lot.
     *
     * @return the answer; empty if this is it
     */
    public Optional<BlendAnswer> inTheMiddle() {
      return Optional.ofNullable(middle);
    }

    /**
     * Returns what it costs to hold for every lot.
     *
     * @return how much worse than in the middle, in the unit of {@link #value}; empty unless both
     *     were found
     */
    public OptionalDouble safetyCost() {
      return middle instanceof Found plain
          ? OptionalDouble.of(Math.max(0, sign() * (proved.value - plain.proved.value)))
          : OptionalDouble.empty();
    }

    private int sign() {
      return proved.aim instanceof BlendAim.Most ? -1 : 1;
    }

    @Override
    public List<Bilingual> sentences() {
      List<Bilingual> all = new ArrayList<>();
      proved.concessions.forEach(c -> all.add(c.inWords()));
      cuts.forEach(c -> all.add(BlendTexts.text("found.cut", "wish", c.inWords())));
      proved.brokenByWeighing.forEach(
          w -> all.add(BlendTexts.text("found.broken", "wish", w.inWords())));
      if (proved.isOneOfSeveral) {
        all.add(BlendTexts.text("found.several"));
      }
      proved.binding.forEach(b -> all.add(b.inWords()));
      safetyCost()
          .ifPresent(c -> all.add(BlendTexts.text("found.safety", "worth", proved.aim.inWords(c))));
      all.add(proved.certificate.inWords());
      return List.copyOf(all);
    }

    /**
     * Explains the blend.
     *
     * @return the amounts, the proof, and what to take care of
     */
    public Explanation explanation() {
      Explanation.Builder text =
          Explanation.builder(BlendTexts.class, "working.blend", Map.of())
              .method(
                  new Explanation.Method(
                      BlendTexts.text("working.blend.least"),
                      BlendWorking.lines(proved.lines),
                      proved.certificate.inWords()));
      proved.binding.forEach(b -> text.conclusion(b.inWords()));
      proved.concessions.forEach(c -> text.caution(c.inWords()));
      proved.brokenByWeighing.forEach(
          w -> text.caution(BlendTexts.text("found.broken", "wish", w.inWords())));
      return text.build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Found that && stated().equals(that.stated());
    }

    @Override
    public int hashCode() {
      return stated().hashCode();
    }

    private List<@Nullable Object> stated() {
      return Arrays.asList(proved, cuts, window, middle);
    }

    @Override
    public String toString() {
      return "found: " + mixture();
    }
  }

  /**
   * Wishes that no blend keeps.
   *
   * <p>Immutable and thread-safe. {@link BlendQuestion} makes it.
   */
  final class Impossible implements BlendAnswer {

    private final List<Concession> conflict;

    Impossible(List<Concession> conflict) {
      this.conflict = List.copyOf(conflict);
    }

    /**
     * Returns wishes that contradict each other: without any one of them the rest of them can be
     * met. There may be other such sets, and smaller ones.
     *
     * @return the wishes, each with how far it would have to give way if it alone did
     */
    public List<Concession> conflict() {
      return conflict;
    }

    @Override
    public Found require() {
      Bilingual wishes =
          Bilingual.of(
              reader ->
                  conflict.stream()
                      .map(c -> c.wish().inWords().in(reader))
                      .collect(Collectors.joining("; ")));
      Bilingual ways =
          Bilingual.of(
              reader ->
                  conflict.stream()
                      .map(c -> c.inWords().in(reader))
                      .collect(Collectors.joining("; ")));
      throw new ProblemException(
          Problem.of(PlanningProblem.WISHES_CONFLICT, wishes).with("ways", ways));
    }

    @Override
    public List<Bilingual> sentences() {
      return conflict.stream().map(Concession::inWords).toList();
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Impossible that && conflict.equals(that.conflict);
    }

    @Override
    public int hashCode() {
      return conflict.hashCode();
    }

    @Override
    public String toString() {
      return "impossible: " + conflict;
    }
  }

  /**
   * Nothing that could be proved: numbers so far apart that errors of rounding decide.
   *
   * <p>Immutable and thread-safe. {@link BlendQuestion} makes it.
   */
  final class Undecided implements BlendAnswer {

    Undecided() {}

    @Override
    public Found require() {
      throw new ProblemException(Problem.of(PlanningProblem.UNDECIDED, ""));
    }

    @Override
    public List<Bilingual> sentences() {
      return List.of(BlendTexts.text("undecided"));
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Undecided;
    }

    @Override
    public int hashCode() {
      return 1;
    }

    @Override
    public String toString() {
      return "undecided";
    }
  }
}
