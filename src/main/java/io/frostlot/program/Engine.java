package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Supplier;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Solves a world level by level; every plan is judged by every rule before it is shown. */
public final class Engine {
  private static final double WHOLE = 1e-6;

  private Engine() {}

  /**
   * The best answer within a time.
   *
   * @param milliseconds by the clock, over all levels
   */
  public static Answer solve(World world, long milliseconds) {
    requireKnownTerms(world);
    long end = System.currentTimeMillis() + milliseconds;
    Program program = Rules.program(world);
    Map<Level, Double> held = new EnumMap<>(Level.class);
    boolean proven = true;
    double[] best = new double[0];
    for (Level level : Level.values()) {
      Scip.End run =
          Scip.minimise(program.model(), level, held, end - System.currentTimeMillis());
      if (run.impossible()) {
        return new Answer.Impossible(clash(world), false);
      }
      if (!run.found()) {
        proven = false;
        break;
      }
      best = run.point();
      if (level == Level.MONEY) {
        return answer(world, program, best, proven ? OptionalDouble.of(run.bound()) : OptionalDouble.empty());
      }
      double value = Math.rint(program.model().objective(level).at(best));
      proven &= run.bound() > value - 1 + WHOLE;
      held.put(level, value);
    }
    return best.length == 0
        ? new Answer.NothingFound()
        : answer(world, program, best, OptionalDouble.empty());
  }

  /** A bill that leaves a term of the supplier out is never shown. */
  private static void requireKnownTerms(World world) {
    for (Supplier supplier : world.scenario().suppliers()) {
      if (!supplier.terms().discounts().isEmpty()
          || !supplier.terms().freeShipping().isEmpty()
          || !supplier.sheet().sales().isEmpty()
          || supplier.boxing().way() == Boxing.Way.WHOLE_PACKS
          || !world.scenario().policy().safety().margin().isZero()) {
        throw new UnsupportedOperationException(
            "supplier " + supplier.id()
                + ": sales, order discounts, free shipping, whole-packs boxing and a margin in percent are not planned with yet");
      }
    }
  }

  private static List<String> clash(World world) {
    return Rules.of(world).stream().filter(Rule::relaxable).map(Rule::says).toList();
  }

  private static Answer answer(
      World world, Program program, double[] point, OptionalDouble bound) {
    Answer.Judged judged = Rules.judge(world, new PlanBuilder(world, program, point).build());
    if (!judged.books().breaches().isEmpty()) {
      throw new IllegalStateException("a plan breaks a rule: " + judged.books().breaches().get(0));
    }
    Replay replay = Replay.of(world, judged.plan());
    if (!replay.holds()) {
      throw new IllegalStateException("a plan does not hold day by day: " + replay.breaches().get(0));
    }
    double money = judged.standing().money().toDouble();
    double halfUnit = Math.pow(10, -world.decimals()) / 2;
    if (bound.isPresent() && bound.getAsDouble() >= money - halfUnit) {
      return new Answer.Proven(judged, Math.min(money, bound.getAsDouble()));
    }
    return new Answer.BestFound(judged, bound);
  }
}
