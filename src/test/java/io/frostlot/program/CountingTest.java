package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Held to SCIP, an independent branch and bound, on random tiny worlds. */
class CountingTest {
  private static final long MILLIS = 20_000;
  private static final double WITHIN = 1e-4;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  /** The levels before money held at their least. */
  private static List<Model.Row> held(Model model) {
    List<Model.Row> rows = new ArrayList<>();
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL)) {
      Scip.End end = scip(model, model.objective(level), rows);
      if (!end.found()) {
        return List.of();
      }
      double least = model.objective(level).at(end.point());
      rows.add(Model.extra(-Model.INFINITY, model.objective(level), least + 1e-6));
    }
    return rows;
  }

  private static Scip.End scip(Model model, Linear objective, List<Model.Row> rows) {
    Scip.Budget budget = Scip.Budget.ofMillis(MILLIS);
    return Scip.minimise(model, Scip.Task.of(objective, rows, true, budget));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void comes_to_the_least_money_when_nothing_is_left_to_search(long seed) {
    World world = TinyWorlds.of(seed);
    Program program = Rules.program(world);
    Model model = program.model();
    Linear money = model.objective(Level.MONEY);
    List<Model.Row> rows = held(model);
    Scip.End expected = scip(model, money, rows);
    Counts counts = new Counts(program);
    double[] bound = {Double.NEGATIVE_INFINITY};
    try (Simplex simplex = new Simplex(model, money, rows, () -> MILLIS)) {
      new Counting(simplex, counts, () -> Double.POSITIVE_INFINITY)
          .run(10_000, () -> false, new Counting.Progress(risen -> bound[0] = risen, whole -> {}));
    }
    if (expected.found()) {
      assertThat(Math.abs(bound[0] - money.at(expected.point())))
          .as("%s: %s, %s", world.scenario().name(), bound[0], money.at(expected.point()))
          .isLessThan(WITHIN);
    } else {
      assertThat(bound[0]).as(world.scenario().name()).isInfinite();
    }
  }
}
