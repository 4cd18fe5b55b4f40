package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;

/**
 * Finds plans: solves the program of one part of the world's slots after another, each begun with the
 * best plan so far and asked for something better. A plan of a part is a plan of the whole.
 */
final class Improving implements Runnable {
  private static final long FIRST_MILLIS = 2500;
  private static final long ROUND_MILLIS = 4000;
  private static final long LONG_MILLIS = 600_000;
  private final World world;
  private final Best best;
  private final Judging judging;
  private final Weights weights;
  private final Neighbourhoods neighbourhoods;
  private final LongSupplier millisLeft;
  private final OptionalInt rounds;

  Improving(World world, Best best, LongSupplier millisLeft, OptionalInt rounds) {
    this.world = world;
    this.best = best;
    this.millisLeft = millisLeft;
    this.rounds = rounds;
    judging = new Judging(world);
    weights = Weights.of(world);
    neighbourhoods = new Neighbourhoods(world);
  }

  @Override
  public void run() {
    int most = rounds.orElse(Integer.MAX_VALUE);
    boolean small = !neighbourhoods.isLarge();
    for (int round = 0; round < most && millisLeft.getAsLong() > 0 && !best.isProven(); round++) {
      Optional<Answer.Judged> before = best.plan();
      List<Slot> part =
          small
              ? world.slots()
              : before.map(neighbourhoods::around).orElseGet(neighbourhoods::spread);
      boolean finished = search(world.withSlots(part), before);
      if (small && finished) {
        return;
      }
    }
  }

  private boolean search(World part, Optional<Answer.Judged> before) {
    Attempt attempt = new Attempt(part, judging);
    Linear objective = weights.objective(attempt.program().model());
    List<Model.Row> better =
        before
            .map(plan ->
                List.of(
                    Model.extra(
                        -Model.INFINITY,
                        objective,
                        weights.of(plan.standing()) - best.halfUnit())))
            .orElse(List.of());
    long slice = before.isEmpty() ? FIRST_MILLIS : ROUND_MILLIS;
    long millis = rounds.isPresent() ? LONG_MILLIS : Math.min(slice, millisLeft.getAsLong());
    Attempt.Result result =
        attempt.minimise(
            objective,
            better,
            before.map(attempt::hintOf).orElse(new double[0]),
            new Scip.Budget(millis, rounds.isPresent() ? OptionalInt.of(1) : OptionalInt.empty()));
    result.plan().ifPresent(best::offer);
    return result.finished();
  }
}
