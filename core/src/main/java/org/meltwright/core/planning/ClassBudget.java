// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.BigMoneyProvider;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.ProblemException;

/**
 * What a class costs, what each student must pay, and how many must come.
 *
 * <p>Materials are what is bought, whole packages and carriage, not the grams used: that is what
 * the till asks. For example, 240 EUR of materials for 12 students, 15 EUR for each and 300 EUR for
 * the room: 60 EUR each. At a fee of 80 EUR one student brings 45 EUR beyond their own 35 EUR, and
 * seven of them cover the room.
 *
 * <p>In code:
 *
 * <pre>{@code
 * ClassBudget budget =
 *     ClassBudget.of(
 *         12, Money.parse("EUR 240"), Money.parse("EUR 15"), Money.parse("EUR 300"));
 * budget.costPerStudent(); // 60 EUR
 * budget.costOfOneMore(); // 35 EUR
 * // a tenth on top, rounded up to whole fives: 66 becomes
 * budget.fee(Rate.ofPercent("10"), Money.parse("EUR 5")); // EUR 70.00
 * budget.breakEven(Money.parse("EUR 80")).wholeUnits(); // 7
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ClassBudget {

  private final int students;
  private final ExactMoney materials;
  private final ExactMoney perStudent;
  private final ExactMoney fixed;

  /**
   * Returns the budget of a class.
   *
   * @param students how many are planned for, at least one
   * @param materials what is bought for that many
   * @param perStudent what each costs beside that: panels, brushes, insurance
   * @param fixed what the class costs however many come: room, fee of the teacher
   * @return the budget
   * @throws ProblemException if nobody comes or the currencies differ
   */
  public static ClassBudget of(
      int students,
      BigMoneyProvider materials,
      BigMoneyProvider perStudent,
      BigMoneyProvider fixed) {
    CHECK.between(students, 1, 1e6, "number of students");
    ExactMoney none = ExactMoney.zero(ExactMoney.of(materials).currency());
    return new ClassBudget(
        students,
        ExactMoney.of(materials),
        none.plus(ExactMoney.of(perStudent)),
        none.plus(ExactMoney.of(fixed)));
  }

  private ClassBudget(int students, ExactMoney materials, ExactMoney perStudent, ExactMoney fixed) {
    this.students = students;
    this.materials = materials;
    this.perStudent = perStudent;
    this.fixed = fixed;
  }

  /**
   * Returns what the class costs if all come.
   *
   * @return the exact sum
   */
  public ExactMoney total() {
    return materials.plus(perStudent.times(students)).plus(fixed);
  }

  /**
   * Returns what a student costs if all come.
   *
   * @return the total ÷ students, exactly
   */
  public ExactMoney costPerStudent() {
    return total().dividedBy(students);
  }

  /**
   * Returns what one more student costs: their part of the materials and what each costs beside.
   *
   * @return materials ÷ students + the cost of each, exactly
   */
  public ExactMoney costOfOneMore() {
    return materials.dividedBy(students).plus(perStudent);
  }

  /**
   * Returns a fee that covers a student's cost with a margin.
   *
   * @param margin what is added to the cost
   * @param step what the fee is rounded up to a multiple of, above zero
   * @return the fee
   * @throws ProblemException if the step is not above zero or in another currency
   */
  public Money fee(Rate margin, BigMoneyProvider step) {
    Money coins = Money.of(step.toBigMoney());
    CHECK.between(coins.getAmount().doubleValue(), 1e-9, 1e9, "step that a fee is rounded to");
    BigDecimal steps =
        costPerStudent()
            .plus(margin.of(costPerStudent()))
            .plus(ExactMoney.zero(coins.getCurrencyUnit()))
            .dividedBy(coins.getAmount())
            .toBigMoney(0, RoundingMode.CEILING)
            .getAmount();
    return coins.multipliedBy(steps, RoundingMode.UNNECESSARY);
  }

  /**
   * Returns how many students must come before a fee covers everything.
   *
   * @param fee what each pays
   * @return the break-even: the fixed costs against the fee less the cost of one more
   * @throws ProblemException if the fee does not cover what one more student costs, or is in
   *     another currency
   */
  public BreakEven breakEven(BigMoneyProvider fee) {
    return BreakEven.of(fixed, ExactMoney.of(fee), costOfOneMore());
  }

  /**
   * Explains the cost of a student.
   *
   * @return the parts and the quotient
   */
  public Explanation explanation() {
    return PlanningWorking.builder("working.budget")
        .stated(PlanningWorking.STUDENTS, students)
        .stated(materials.figure(PlanningWorking.MATERIALS))
        .stated(perStudent.figure(PlanningWorking.EACH))
        .stated(fixed.figure(PlanningWorking.FIXED))
        .step(PlanningWorking.BUDGET, costPerStudent().figure(PlanningWorking.COST))
        .build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ClassBudget that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(students, materials, perStudent, fixed);
  }

  @Override
  public String toString() {
    return "budget for " + students + " students: " + materials + " + " + fixed;
  }
}
