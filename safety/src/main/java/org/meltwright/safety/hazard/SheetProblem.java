// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import org.meltwright.units.ProblemCode;

/**
 * What can be wrong with a copied data sheet; each problem has a "line" and a "column".
 *
 * <p>A class whose name was not recognised:
 *
 * <pre>{@code
 * Problem problem = CopiedSheet.read("Skin Sens. 1; H317\nBrandgefahr 3; H226").problems().get(0);
 * problem.code(); // NOT_UNDERSTOOD
 * problem.found(); // Brandgefahr 3; H226
 * problem.details().get("line"); // 2
 * }</pre>
 */
public enum SheetProblem implements ProblemCode {
  /** Words, numbers or codes that were not understood. */
  NOT_UNDERSTOOD("sheet.not-understood"),
  /** A class and category that leave open which statement is meant. */
  STATEMENT_MISSING("sheet.statement-missing"),
  /** The code of a statement that belongs to no class that is named. */
  STATEMENT_ALONE("sheet.statement-alone"),
  /** A route that is not that of the statement. */
  ROUTE("sheet.route"),
  /** Two categories of one class. */
  TWO_CATEGORIES("sheet.two-categories"),
  /** "Not classified" beside a class. */
  CONTRADICTION("sheet.contradiction"),
  /** An estimate that lies in another category than the one stated. */
  ESTIMATE_AGAINST_CATEGORY("sheet.estimate-against-category"),
  /** An estimate of which the route or form is not said. */
  ESTIMATE_WITHOUT_ROUTE("sheet.estimate-without-route"),
  /** A limit of which the class is not said. */
  LIMIT_WITHOUT_CLASS("sheet.limit-without-class"),
  /** A second share for one substance. */
  NEGATIVE("sheet.negative"),
  /** A second share. */
  TWO_SHARES("sheet.two-shares"),
  /** A share range turned round, or beyond 100 %. */
  SHARE("sheet.share"),
  /** Risk phrases of the law before 2015. */
  OLD_LAW("sheet.old-law"),
  /** A share or a further substance where one substance is read. */
  ONE_SUBSTANCE("sheet.one-substance"),
  /** A text longer than a data sheet. */
  TOO_LONG("sheet.too-long");

  private final String id;

  SheetProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
