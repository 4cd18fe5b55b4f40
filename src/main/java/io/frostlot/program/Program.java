package io.frostlot.program;

import io.frostlot.units.Money;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The integer program under construction: the decisions, and the one way to charge for them.
 *
 * @param model columns, rows, objectives
 * @param decisions the shared variables
 * @param bill money by rule; their sum is the objective
 */
record Program(Model model, Decisions decisions, Map<String, Linear> bill) {

  Program(Model model, Decisions decisions) {
    this(model, decisions, new LinkedHashMap<>());
  }

  /** Charges money under a rule's name. */
  void charge(Rule rule, Linear amount) {
    bill.computeIfAbsent(rule.id(), id -> new Linear()).plus(amount);
    model.minimise(Level.MONEY, amount);
  }

  void charge(Rule rule, Var variable, Money perUnit) {
    charge(rule, new Linear().plus(perUnit.toDouble(), variable));
  }

  /**
   * The largest value that the bounds allow an expression; infinite where a bound is.
   *
   * <p>Used for the constants of on-off rows.
   */
  double most(Linear expression) {
    return model.most(expression);
  }
}
