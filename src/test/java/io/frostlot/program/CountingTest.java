package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.World;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Held to SCIP, an independent branch and bound, on random tiny worlds, in which every closed
 * delivery of a few makes a program of its own.
 */
class CountingTest {
  private static final long MILLIS = 20_000;
  private static final double WITHIN = 1e-4;

  static LongStream seeds() {
    return LongStream.range(0, Long.getLong("frostlot.counted", 40));
  }

  /** The levels before money held at their least; empty where nothing is possible. */
  private static HeldLevels held(Model model) {
    HeldLevels held = new HeldLevels();
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL)) {
      OptionalDouble least = scip(model, level, held, false);
      if (least.isEmpty()) {
        return held;
      }
      held.hold(level, Math.rint(least.getAsDouble()));
    }
    return held;
  }

  private static OptionalDouble scip(Model model, Level level, HeldLevels held, boolean relaxed) {
    Linear objective = model.objective(level);
    Scip.Budget budget = Scip.Budget.ofMillis(MILLIS);
    Scip.End end = Scip.minimise(model, Scip.Task.of(objective, held.rows(model), relaxed, budget));
    return end.found() ? OptionalDouble.of(objective.at(end.point())) : OptionalDouble.empty();
  }

  private static double counted(Part whole) {
    double[] bound = {Double.NEGATIVE_INFINITY};
    try (Counting counting = new Counting(whole, () -> Double.POSITIVE_INFINITY, 0)) {
      counting.run(10_000, () -> false, risen -> bound[0] = risen);
    }
    return bound[0];
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void comes_to_the_least_money_when_nothing_is_left_to_search(long seed) {
    Program program = Exact.of(TinyWorlds.of(seed)).program();
    Model model = program.model();
    HeldLevels held = held(model);
    OptionalDouble expected = scip(model, Level.MONEY, held, true);
    Linear money = model.objective(Level.MONEY);
    Counts counts = new Counts(program);
    Simplex simplex = new Simplex(model, money, held.rows(model), () -> MILLIS);
    double bound = counted(Part.undivided(counts, simplex, point -> {}));
    if (expected.isPresent()) {
      assertThat(Math.abs(bound - expected.getAsDouble())).isLessThan(WITHIN);
    } else {
      assertThat(bound).isInfinite();
    }
  }

  /** A part may leave less freedom to what is left real, but none to be below a plan. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void with_parts_written_anew_lies_between_the_relaxation_and_the_best_plan(long seed) {
    World world = TinyWorlds.of(seed);
    Model exact = Exact.of(world).program().model();
    HeldLevels held = held(exact);
    OptionalDouble best = scip(exact, Level.MONEY, held, false);
    if (best.isEmpty()) {
      return;
    }
    for (Written written : List.of(Exact.of(world), new Coarse(world))) {
      OptionalDouble relaxed = scip(written.program().model(), Level.MONEY, held, true);
      assertThat(counted(Part.of(written, held, () -> MILLIS)))
          .isBetween(relaxed.orElseThrow() - WITHIN, best.getAsDouble() + WITHIN);
    }
  }
}
