package io.frostlot.program;

import java.util.function.BooleanSupplier;

/**
 * A local search from a plan on: some packs are given back, put into another delivery or changed
 * for others, those who lost their food are fed from what is there or what is bought for them, and
 * what comes of it is kept where it weighs less, or hardly more: simulated annealing, from warm to
 * cold (S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Science 220, 1983).
 */
final class Repacking {
  private final TrialPlan plan;
  private final Trial trial;
  private final Chance chance;
  private final Refilling refilling;
  private final PackChanges changes;
  private final Cooling cooling;
  private Amounts best;
  private int steps;

  /**
   * A search that has not begun.
   *
   * @param seed of what is chosen at random
   */
  Repacking(TrialWorld world, TrialPlan plan, Cooling cooling, long seed) {
    this.cooling = cooling;
    this.plan = plan;
    trial = plan.trial();
    chance = Chance.of(seed);
    refilling = new Refilling(trial, chance);
    changes = new PackChanges(world, plan, refilling, chance);
    trial.keep();
    best = trial.amounts();
  }

  /** Feeds as well as can be from what there is. */
  private void feed() {
    refilling.refill(refilling.unserved());
    new Exchanging(trial, refilling, chance).evenOutAll();
    trial.keep();
  }

  /** Is it better than all before? */
  private boolean isBetter() {
    if (trial.fits() && trial.amounts().compareTo(best) < 0) {
      best = trial.amounts();
      return true;
    }
    return false;
  }

  /**
   * Searches as long as it may.
   *
   * @param better told whenever the plan is better than all before
   */
  void run(BooleanSupplier goesOn, Runnable better) {
    if (steps == 0) {
      feed();
    }
    while (goesOn.getAsBoolean()) {
      if (isBetter()) {
        better.run();
      }
      step(cooling.warmth(steps));
      steps++;
    }
    if (isBetter()) {
      better.run();
    }
  }

  /** Is nothing accepted any more that is for the worse? */
  boolean isCold() {
    return cooling.isCold(steps);
  }

  /** Changes tried. */
  int steps() {
    return steps;
  }

  private void step(double warmth) {
    int mark = trial.mark();
    double before = refilling.weight();
    changes.any();
    if (refilling.weight() > before - warmth * Math.log(chance.share())) {
      refilling.backTo(mark, before);
    } else {
      trial.keep();
    }
  }

  TrialPlan plan() {
    return plan;
  }
}
