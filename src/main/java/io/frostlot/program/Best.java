package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The best plan and the best bound so far, shared by those who search. A plan clearly below a bound
 * shows that a bound was false: from then on none is believed, and nothing is proven.
 */
final class Best {
  private static final double EXACT = 1e-6;
  private final double halfUnit;
  private final Apart apart = new Apart();
  private final Promising promising = new Promising();
  private Optional<Answer.Judged> plan = Optional.empty();
  private Map<Level, Double> provenLevels = Map.of();
  private double bound = Double.NEGATIVE_INFINITY;
  private final Map<Map<Level, Double>, Double> boundsBeside = new HashMap<>();
  private final Map<Map<Level, Double>, Double> boundsOfAsGood = new HashMap<>();
  private boolean distrusted;
  private boolean impossible;
  private boolean settled;
  private long news;

  /**
   * Nothing yet.
   *
   * @param halfUnit half a minor unit of money
   */
  Best(double halfUnit) {
    this.halfUnit = halfUnit;
  }

  /** Nothing yet, to half a minor unit of a world's money. */
  static Best in(World world) {
    return new Best(Math.pow(10, -world.decimals()) / 2);
  }

  synchronized void offer(Answer.Judged found) {
    if (plan.isEmpty() || found.standing().compareTo(plan.get().standing()) < 0) {
      plan = Optional.of(found);
      impossible = false;
      news++;
      check();
    }
  }

  /** No plan can have levels before money below these, nor with them less money than the bound. */
  synchronized void prove(Map<Level, Double> levels, double least) {
    if (distrusted) {
      return;
    }
    double money = Math.max(least, boundsBeside.getOrDefault(levels, Double.NEGATIVE_INFINITY));
    int higher = provenLevels.isEmpty() ? 1 : compare(levels, provenLevels);
    if (higher > 0 || (higher == 0 && money > bound)) {
      provenLevels = Map.copyOf(levels);
      bound = money;
      news++;
      check();
    }
  }

  /** All that is proven of another world, of which this one allows no more than a part. */
  void proveAs(Best looser) {
    Map<Level, Double> levels;
    double money;
    synchronized (looser) {
      levels = looser.provenLevels;
      money = looser.bound;
    }
    if (!levels.isEmpty()) {
      prove(levels, money);
    }
  }

  /** No plan that is no worse than these levels before money costs less than the bound. */
  synchronized void proveAsGood(Map<Level, Double> levels, double least) {
    double before = boundsOfAsGood.getOrDefault(levels, Double.NEGATIVE_INFINITY);
    if (!distrusted && least > before) {
      boundsOfAsGood.put(Map.copyOf(levels), least);
      news++;
    }
  }

  /** What is known of plans that are no worse before money than one that meets all meals. */
  private OptionalDouble boundOfAsGood(Answer.Judged judged) {
    Map<Level, Double> levels = beforeMoney(judged.standing());
    return judged.standing().unmetMust() + judged.standing().unmetOther() > 0
        ? OptionalDouble.empty()
        : boundsOfAsGood.entrySet().stream()
            .filter(it -> it.getKey().get(Level.SHORTFALL) >= levels.get(Level.SHORTFALL))
            .mapToDouble(Map.Entry::getValue)
            .max();
  }

  /**
   * No plan that is just as good before money as a plan found costs less by more than so much; of
   * use where its levels before money are proven.
   */
  synchronized void proveBeside(Standing found, double lessAtMost) {
    Map<Level, Double> levels = beforeMoney(found);
    boundsBeside.merge(levels, level(found, Level.MONEY) - lessAtMost, Math::max);
    if (levels.equals(provenLevels)) {
      prove(levels, bound);
    }
  }

  /** Is it proven by a search of the whole beside the bounds, with nothing left to count? */
  synchronized boolean isProvenBeside() {
    return isProven() && boundsBeside.getOrDefault(provenLevels, Double.NEGATIVE_INFINITY) >= bound;
  }

  /** No plan is below what was proven, or that was not proven. */
  private void check() {
    distrusted |= plan.filter(judged -> isBelowBound(judged.standing())).isPresent();
    if (distrusted) {
      provenLevels = Map.of();
      boundsOfAsGood.clear();
      bound = Double.NEGATIVE_INFINITY;
    }
  }

  private boolean isBelowBound(Standing standing) {
    if (provenLevels.isEmpty()) {
      return false;
    }
    int higher = compare(beforeMoney(standing), provenLevels);
    boolean cheaper = level(standing, Level.MONEY) < bound - halfUnit - EXACT;
    return higher < 0 || (higher == 0 && cheaper);
  }

  /** Shows this one of the plans that are as good as the best, and no other. */
  synchronized void settle(Answer.Judged chosen) {
    plan = Optional.of(chosen);
    settled = true;
    news++;
  }

  /** Is the best plan proven, and which of equally good ones is shown? */
  synchronized boolean isSettled() {
    return settled;
  }

  /** Level by level; a bound on money says nothing of plans that come after others before money. */
  private static int compare(Map<Level, Double> a, Map<Level, Double> b) {
    for (Level level : Level.values()) {
      int order = Double.compare(a.getOrDefault(level, 0.0), b.getOrDefault(level, 0.0));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  synchronized void proveImpossible() {
    impossible = plan.isEmpty();
  }

  synchronized boolean isImpossible() {
    return impossible;
  }

  synchronized Optional<Answer.Judged> plan() {
    return plan;
  }

  synchronized long news() {
    return news;
  }

  Apart apart() {
    return apart;
  }

  Promising promising() {
    return promising;
  }

  private static Map<Level, Double> beforeMoney(Standing standing) {
    Map<Level, Double> levels = new EnumMap<>(Level.class);
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL)) {
      levels.put(level, level(standing, level));
    }
    return levels;
  }

  /** The plan's value of a level. */
  static double level(Standing standing, Level level) {
    return switch (level) {
      case UNMET_MUST -> standing.unmetMust();
      case UNMET_OTHER -> standing.unmetOther();
      case SHORTFALL -> standing.shortfall();
      case MONEY -> standing.money().toDouble();
    };
  }

  synchronized Optional<Answer.WithPlan> answer() {
    return plan.map(
        judged -> {
          double money = judged.standing().money().toDouble();
          boolean same =
              !provenLevels.isEmpty() && compare(beforeMoney(judged.standing()), provenLevels) == 0;
          if (!same || bound == Double.NEGATIVE_INFINITY) {
            return new Answer.BestFound(judged, OptionalDouble.empty(), boundOfAsGood(judged));
          }
          return bound >= money - halfUnit
              ? new Answer.Proven(judged, Math.min(bound, money))
              : new Answer.BestFound(judged, OptionalDouble.of(bound));
        });
  }

  /** Is it proven that no plan costs so much less? */
  synchronized boolean isProvenWithin(double money) {
    return isProven()
        && plan.filter(judged -> bound >= level(judged.standing(), Level.MONEY) - money)
            .isPresent();
  }

  boolean isProven() {
    return answer().filter(Answer.Proven.class::isInstance).isPresent();
  }
}
