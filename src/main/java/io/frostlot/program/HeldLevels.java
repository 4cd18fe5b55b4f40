package io.frostlot.program;

import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Levels of the comparison that are held at what no plan can be below, to look at the next one. */
final class HeldLevels {
  private final Map<Level, Double> least = new EnumMap<>(Level.class);

  /** Held at what a plan reaches. */
  static HeldLevels at(Standing standing) {
    HeldLevels held = new HeldLevels();
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL)) {
      held.hold(level, Best.level(standing, level));
    }
    return held;
  }

  /** Held at what a plan reaches that lacks nothing. */
  static HeldLevels lackingNothing() {
    return at(new Standing(0, 0, 0, Money.ZERO));
  }

  void clear() {
    least.clear();
  }

  void hold(Level level, double value) {
    least.put(level, value);
  }

  /** Level by level. */
  Map<Level, Double> least() {
    return least;
  }

  /** Rows that keep a solution from being above one of them. */
  List<Model.Row> rows(Model model) {
    List<Model.Row> rows = new ArrayList<>();
    least.forEach(
        (level, most) -> rows.add(Model.extra(-Model.INFINITY, model.objective(level), most)));
    return rows;
  }

  /**
   * The least money where to be above one of them is not forbidden but dear, what follows left
   * real: a relaxation of which a point is soon found, without which SCIP tells no bound.
   */
  Scip.Task nearly(Program program) {
    Model model = program.model();
    Linear money = model.objective(Level.MONEY).copy();
    double dear = Weights.of(program.decisions().world()).ofAMeal();
    List<Model.Row> rows = new ArrayList<>();
    least.forEach(
        (level, most) -> {
          Var above = model.real(0, Model.INFINITY);
          Linear amount = model.objective(level).copy().plus(-1, above);
          rows.add(Model.extra(-Model.INFINITY, amount, most));
          money.plus(dear, above);
        });
    return Scip.Task.of(money, rows, true, Scip.Budget.ofMillis(0));
  }

  /** Is a plan as good as that in all of them? */
  boolean areReachedBy(Standing standing) {
    return least.entrySet().stream()
        .allMatch(e -> Best.level(standing, e.getKey()) == e.getValue());
  }
}
