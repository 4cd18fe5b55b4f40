package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Range;
import io.frostlot.plan.Standing;
import io.frostlot.sharing.Subgroup;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** The best that is known of each subgroup, and where its cost therefore lies. */
final class SubgroupAnswers {
  private static final Range UNKNOWN = new Range(0, Double.POSITIVE_INFINITY);
  private final Map<Subgroup, Answer> answers = new HashMap<>();

  synchronized Answer of(Subgroup some) {
    return answers.getOrDefault(some, new Answer.NothingFound());
  }

  Optional<Answer.WithPlan> plan(Subgroup some) {
    return of(some) instanceof Answer.WithPlan found ? Optional.of(found) : Optional.empty();
  }

  synchronized void keep(Subgroup some, Answer answer) {
    answers.merge(some, answer, (old, fresh) -> better(some, old, fresh));
  }

  /**
   * The cheaper plan and the higher bound, where both mean the same; else the better plan, or what
   * is known better.
   */
  private Answer better(Subgroup some, Answer old, Answer fresh) {
    if (old instanceof Answer.BestFound one
        && fresh instanceof Answer.BestFound other
        && one.plan().standing().sameBeforeMoney(other.plan().standing())) {
      boolean cheaper = other.plan().standing().compareTo(one.plan().standing()) < 0;
      OptionalDouble bound =
          DoubleStream.concat(one.bound().stream(), other.bound().stream()).max();
      return new Answer.BestFound(cheaper ? other.plan() : one.plan(), bound);
    }
    if (old instanceof Answer.BestFound one && fresh instanceof Answer.BestFound other) {
      return other.plan().standing().compareTo(one.plan().standing()) < 0 ? fresh : old;
    }
    boolean first = !(old instanceof Answer.WithPlan);
    return first || range(fresh, some).width() < range(old, some).width() ? fresh : old;
  }

  /** Where the cost of a subgroup that can order as one lies. */
  synchronized Range range(Subgroup some) {
    return answers.containsKey(some) ? range(answers.get(some), some) : UNKNOWN;
  }

  /** A plan that leaves more undone than its members alone cannot be compared in money. */
  private Range range(Answer answer, Subgroup some) {
    if (!(answer instanceof Answer.WithPlan found)) {
      return UNKNOWN;
    }
    Standing standing = found.plan().standing();
    double money = standing.money().toDouble();
    double bound = Math.max(0, Math.min(money, found.bound().orElse(0)));
    if (some.size() == 1) {
      return new Range(bound, money);
    }
    boolean worse = standing.unmet() > 0 || standing.shortfall() > shortfallAlone(some);
    if (!worse) {
      return new Range(bound, money);
    }
    double least = found.bound().isPresent() ? Double.POSITIVE_INFINITY : 0;
    return new Range(least, Double.POSITIVE_INFINITY);
  }

  private long shortfallAlone(Subgroup some) {
    return some.members().stream()
        .map(Subgroup::of)
        .flatMap(alone -> plan(alone).stream())
        .mapToLong(found -> found.plan().standing().shortfall())
        .sum();
  }
}
