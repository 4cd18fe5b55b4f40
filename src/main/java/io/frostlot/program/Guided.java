package io.frostlot.program;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Makes a solution whole where adequacy ties so many meals that the best way takes too long to
 * find: without the rows of adequacy, each served within one of its value, and drawn towards what
 * keeps the grams that an animal has had so far next to those that the solution gives it.
 */
final class Guided {
  private static final double NONE = 1e-6;
  private final Program program;
  private final double[] found;
  private final Map<String, Double> owed = new HashMap<>();

  /**
   * A solution to make whole.
   *
   * @param found values by column, those that follow from others not whole
   */
  Guided(Program program, double[] found) {
    this.program = program;
    this.found = found;
  }

  /**
   * The whole solution.
   *
   * @param objective of the search, of which adequacy is no part here
   * @param fixed values of columns that are held, NaN where free
   */
  Scip.End finish(Linear objective, double[] fixed, Scip.Budget budget) {
    Model model = program.model().withRows(row -> !row.rule().equals(Adequacy.ID));
    Linear guided = objective.copy();
    double weight = weight(objective);
    List<Model.Row> near =
        program.decisions().served().stream()
            .flatMap(served -> served.byChoice().stream())
            .map(this::within)
            .toList();
    program.decisions().served().stream()
        .filter(served -> served.demandClass().isTied())
        .sorted(Comparator.comparing(Guided::day))
        .forEach(served -> guide(served, guided, weight));
    Scip.Task task = new Scip.Task(guided, near, false, fixed, new double[0], budget);
    Scip.End end = Scip.minimise(model, task);
    return end.found()
        ? end
        : Scip.minimise(
            model, new Scip.Task(guided, List.of(), false, fixed, new double[0], budget));
  }

  private static LocalDate day(Decisions.Served served) {
    return served.demandClass().members().get(0).meal().days().best();
  }

  private Model.Row within(Var meals) {
    double value = found[meals.index()];
    return Model.extra(Math.floor(value + NONE), Linear.of(meals), Math.ceil(value - NONE));
  }

  /** What falling short by one weighs in the objective. */
  private double weight(Linear objective) {
    int[] lacking = program.model().objective(Level.SHORTFALL).terms().variables();
    Linear.Terms terms = objective.terms();
    OptionalDouble weight =
        IntStream.range(0, terms.variables().length)
            .filter(i -> Arrays.stream(lacking).anyMatch(v -> v == terms.variables()[i]))
            .mapToDouble(i -> terms.coefficients()[i])
            .max();
    return weight.orElse(1);
  }

  /** Rewards the choice that pays best what the animal is owed. */
  private void guide(Decisions.Served served, Linear guided, double weight) {
    DemandClass c = served.demandClass();
    String animal = c.tie().animal();
    double given = 0;
    for (int x = 0; x < served.byChoice().size(); x++) {
      given += grams(c, x) * found[served.byChoice().get(x).index()];
    }
    double due = given / c.count() + owed.getOrDefault(animal, 0.0);
    int best = -1;
    for (int x = 0; x < served.byChoice().size(); x++) {
      boolean may = found[served.byChoice().get(x).index()] > NONE;
      if (may && (best < 0 || Math.abs(grams(c, x) - due) < Math.abs(grams(c, best) - due))) {
        best = x;
      }
    }
    if (best >= 0) {
      guided.plus(-weight, served.byChoice().get(best));
      owed.put(animal, due - grams(c, best));
    }
  }

  private static double grams(DemandClass c, int choice) {
    return c.choices().get(choice).option().grams().toDouble();
  }
}
