package io.frostlot.app;

import io.frostlot.plan.Range;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.sharing.SampledShapley;
import io.frostlot.sharing.Subgroup;
import java.time.Duration;
import java.util.Random;

/**
 * Plans the subgroups that a sample of the orders of joining passes through, for a group with too
 * many members to plan them all; each subgroup once, for an equal part of the time. Costs are those
 * of the plans found, or of its members each alone where that is less.
 */
final class SampledWork {
  private static final int SEED = 1;
  private static final int MOST_PAIRS = 100;
  private static final int PAIRS_BY_EFFORT = 4;
  private static final long LEAST_MILLIS = 500;
  private final SubgroupPlans plans;
  private final Limits limits;
  private final ShareBox.Progress progress;
  private int planned;

  SampledWork(SubgroupPlans plans, Limits limits, ShareBox.Progress progress) {
    this.plans = plans;
    this.limits = limits;
    this.progress = progress;
  }

  /** Each pair of orders passes through twice all sizes but none, one and all. */
  SampledShapley run() {
    int members = plans.all().size();
    int each = 2 * (members - 2);
    long fit = limits.millis() / (LEAST_MILLIS * each);
    int pairs =
        limits.rounds().isPresent()
            ? PAIRS_BY_EFFORT
            : (int) Math.max(2, Math.min(MOST_PAIRS, fit));
    Duration slice = Duration.ofMillis(Math.max(1, limits.millis() / ((long) pairs * each)));
    return SampledShapley.of(
        members,
        some -> cost(some, new Limits(slice, limits.rounds()), pairs * each),
        pairs,
        new Random(SEED));
  }

  private double cost(Subgroup some, Limits slice, int all) {
    double apart =
        some.members().stream()
            .mapToDouble(member -> plans.range(Subgroup.of(member)).most())
            .sum();
    if (some.size() > 1 && !Double.isFinite(plans.range(some).most()) && !progress.stop()) {
      plans.solve(some, slice, Watch.stopping(progress::stop));
      planned++;
      progress.subgroups(planned, all, Double.POSITIVE_INFINITY);
    }
    Range known = plans.range(some);
    return Math.min(apart, known.most());
  }
}
