package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;

/**
 * Finds plans: solves the program of one part of the world's slots after another, each begun with
 * the best plan so far and asked for something better. A plan of a part is a plan of the whole.
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
    boolean large = neighbourhoods.isLarge();
    Iterator<List<Slot>> beginnings = neighbourhoods.beginnings().iterator();
    for (int round = 0; round < most && millisLeft.getAsLong() > 0 && !best.isProven(); round++) {
      Optional<Answer.Judged> before = best.plan();
      if (large && beginnings.hasNext()) {
        begin(world.withSlots(beginnings.next()));
      } else {
        List<Slot> part =
            large && before.isPresent() ? neighbourhoods.around(before.get()) : world.slots();
        boolean finished = search(world.withSlots(part), before);
        neighbourhoods.learn(finished);
        if (!large && finished) {
          return;
        }
      }
    }
  }

  private void begin(World part) {
    Map<Slot, Map<Pack, Integer>> packs = new Greedy(part).propose();
    Attempt attempt = new Attempt(part.withSlots(List.copyOf(packs.keySet())), judging);
    attempt
        .propose(weights.objective(attempt.program().model()), packs, budget(FIRST_MILLIS))
        .ifPresent(best::offer);
  }

  private Scip.Budget budget(long slice) {
    long millis = rounds.isPresent() ? LONG_MILLIS : Math.min(slice, millisLeft.getAsLong());
    return new Scip.Budget(millis, rounds.isPresent() ? OptionalInt.of(1) : OptionalInt.empty());
  }

  private boolean search(World part, Optional<Answer.Judged> before) {
    Attempt attempt = new Attempt(part, judging);
    Linear objective = weights.objective(attempt.program().model());
    Attempt.Result result =
        attempt.minimise(
            new Scip.Task(
                objective,
                List.of(),
                true,
                new double[0],
                before
                    .map(plan -> attempt.pointOf(plan, objective, budget(ROUND_MILLIS)))
                    .orElse(new double[0]),
                budget(ROUND_MILLIS)));
    result.plan().ifPresent(best::offer);
    return result.finished();
  }
}
