package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The best plan and the best bound so far, shared by those who search. */
final class Best {
  private final double halfUnit;
  private final Apart apart = new Apart();
  private Optional<Answer.Judged> plan = Optional.empty();
  private Map<Level, Double> provenLevels = Map.of();
  private double bound = Double.NEGATIVE_INFINITY;
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

  synchronized void offer(Answer.Judged found) {
    if (plan.isEmpty() || found.standing().compareTo(plan.get().standing()) < 0) {
      plan = Optional.of(found);
      news++;
    }
  }

  /** No plan can have levels before money below these, nor with them less money than the bound. */
  synchronized void prove(Map<Level, Double> levels, double money) {
    int higher = provenLevels.isEmpty() ? 1 : compare(levels, provenLevels);
    if (higher > 0 || (higher == 0 && money > bound)) {
      provenLevels = Map.copyOf(levels);
      bound = money;
      news++;
    }
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

  double halfUnit() {
    return halfUnit;
  }

  Apart apart() {
    return apart;
  }

  /** The plan's value of a level before money. */
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
              !provenLevels.isEmpty()
                  && provenLevels.entrySet().stream()
                      .allMatch(e -> level(judged.standing(), e.getKey()) == e.getValue());
          if (!same || bound == Double.NEGATIVE_INFINITY) {
            return new Answer.BestFound(judged, OptionalDouble.empty());
          }
          return bound >= money - halfUnit
              ? new Answer.Proven(judged, Math.min(bound, money))
              : new Answer.BestFound(judged, OptionalDouble.of(bound));
        });
  }

  boolean isProven() {
    return answer().filter(Answer.Proven.class::isInstance).isPresent();
  }
}
