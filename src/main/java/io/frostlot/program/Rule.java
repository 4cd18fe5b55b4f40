package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;

/**
 * One rule of the world, with two faces that must say the same: put to the solver, and judged on a
 * finished plan. A rule knows the decisions and the few records given to its constructor, never
 * another rule.
 */
interface Rule {
  /** Stable and kebab-case, for reports, bills and tests. */
  String id();

  /** One sentence in the keeper's words, with the real numbers. */
  String says();

  /** May it be blamed when nothing fits? Arithmetic of stock may not. */
  boolean relaxable();

  /** Adds its constraints and charges. */
  void impose(Program program);

  /** Writes down its breaches, charges and use of limits, in exact decimals. */
  void judge(Plan plan, Books books);
}
