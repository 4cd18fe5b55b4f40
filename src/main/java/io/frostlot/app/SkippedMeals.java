package io.frostlot.app;

import io.frostlot.plan.Deal;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Percent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The same question where more meals are skipped than planned, spread over all eaters. */
final class SkippedMeals {
  private final Questions questions;
  private final Percent skipped;
  private final double share;

  SkippedMeals(Questions questions, Percent skipped, double share) {
    this.questions = questions;
    this.skipped = skipped;
    this.share = share;
  }

  /**
   * What deals are worth then.
   *
   * @param planned the best plan with them where nothing more is skipped
   */
  Optional<SaleFinding> find(World base, World with, Solved planned, List<Deal> deals) {
    World fewer = thinned(base);
    World fewerWith = thinned(with);
    questions.looser(fewerWith, fewer);
    questions.ask(fewer, share);
    questions.learn(planned.plan());
    Optional<Solved> best = questions.ask(fewerWith, share);
    Optional<Solved> without = questions.again(fewer, share / 2);
    if (without.isEmpty() || best.isEmpty()) {
      return Optional.empty();
    }
    List<Pledge> pledges = new ArrayList<>();
    int packs = 0;
    for (Deal deal : deals) {
      int taken = deal.taken(planned.plan());
      packs += taken;
      if (taken > 0) {
        pledges.add(deal.pledge(with, Pledge.Packs.atLeast(taken)));
      }
    }
    Optional<Solved> asTaken =
        pledges.isEmpty() ? best : questions.ask(pledged(fewerWith, pledges), share);
    return Optional.of(
        new SaleFinding.WorseCase(
            skipped,
            questions.between(without.get(), best.get()).within(0, DealWorth.most(base, deals)),
            packs,
            asTaken.map(it -> questions.between(without.get(), it)).stream().toList()));
  }

  private World pledged(World world, List<Pledge> pledges) {
    World pledged = world.withPledges(pledges);
    questions.looser(world, pledged);
    return pledged;
  }

  private World thinned(World world) {
    return thinned(world, skipped.fraction().doubleValue());
  }

  /** Without a part of all meals. */
  static World thinned(World world, double part) {
    return world.withDemands(Refusals.without(world.demands(), part));
  }
}
