package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held to SCIP, another solver, on random linear programs whose bounds change. */
class SimplexTest {
  private static final long MILLIS = 20_000;
  private static final int COLUMNS = 30;
  private static final int ROWS = 20;
  private static final int CHANGES = 25;
  private static final double WITHIN = 1e-5;

  /** Needs of random sizes, each to be met by some columns. */
  private static Model model(Random random, List<Var> columns) {
    Model model = new Model();
    for (int i = 0; i < COLUMNS; i++) {
      columns.add(model.real(0, 10));
    }
    for (int r = 0; r < ROWS; r++) {
      Linear sum = new Linear();
      columns.stream()
          .filter(it -> random.nextInt(3) == 0)
          .forEach(it -> sum.plus(1 + random.nextInt(9), it));
      model.atLeast("need", sum, sum.hasNoTerms() ? 0 : random.nextInt(20));
    }
    return model;
  }

  private static double byScip(Model model, Linear objective, Var held, double most) {
    Model.Row row = Model.extra(-Model.INFINITY, Linear.of(held), most);
    Scip.Budget budget = Scip.Budget.ofMillis(MILLIS);
    Scip.End end = Scip.minimise(model, Scip.Task.of(objective, List.of(row), true, budget));
    return end.found() ? objective.at(end.point()) : Double.POSITIVE_INFINITY;
  }

  @ParameterizedTest(name = "gives up after {0} iterations")
  @ValueSource(longs = {1, 500})
  void comes_to_the_least_wherever_it_begins(long few) {
    Random random = new Random(20310101);
    List<Var> columns = new ArrayList<>();
    Model model = model(random, columns);
    Linear objective = new Linear();
    columns.forEach(column -> objective.plus(1 + random.nextInt(20), column));
    try (Simplex simplex = new Simplex(model, objective, List.of(), () -> MILLIS, few)) {
      for (int change = 0; change < CHANGES; change++) {
        Var held = columns.get(random.nextInt(COLUMNS));
        double most = random.nextInt(2);
        simplex.reset();
        simplex.tighten(held, 0, most);
        double least = byScip(model, objective, held, most);
        Simplex.End end = simplex.solve();
        if (least == Double.POSITIVE_INFINITY) {
          assertThat(end.isImpossible()).isTrue();
        } else {
          assertThat(Math.abs(end.bound() - least)).isLessThan(WITHIN * (1 + least));
          assertThat(Math.abs(objective.at(end.point()) - least)).isLessThan(WITHIN * (1 + least));
        }
      }
    }
  }
}
