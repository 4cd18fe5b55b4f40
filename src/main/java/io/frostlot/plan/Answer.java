package io.frostlot.plan;

import java.util.List;
import java.util.OptionalDouble;

/** What a solve came to. */
public sealed interface Answer {
  /** A plan that passed every rule and the replay. */
  sealed interface WithPlan extends Answer {
    Judged plan();

    /** Safe lower bound on money; empty until the levels before money are proven. */
    OptionalDouble bound();

    /** The least that any plan may cost: what is proven costs what it costs; else the bound. */
    default OptionalDouble least() {
      return bound();
    }

    /**
     * Safe lower bound on the money of plans that are no worse at any level before money; known
     * also where it is not proven that no plan is better there.
     */
    OptionalDouble boundOfAsGood();

    /** The same of another plan that comes to the same. */
    WithPlan with(Judged other);

    /** Is it known that no plan costs less by more than so much? */
    default boolean isKnownWithin(double money) {
      double found = plan().standing().money().toDouble();
      return bound().isPresent() && found - bound().getAsDouble() <= money;
    }
  }

  /** A plan with its judgement. */
  record Judged(Plan plan, Books books) {
    public Standing standing() {
      return books.standing();
    }
  }

  /** Nothing better exists: the bound is within half a minor unit. */
  record Proven(Judged plan, double safeBound) implements WithPlan {
    @Override
    public WithPlan with(Judged other) {
      return new Proven(other, safeBound);
    }

    @Override
    public OptionalDouble bound() {
      return OptionalDouble.of(safeBound);
    }

    @Override
    public OptionalDouble least() {
      return OptionalDouble.of(plan.standing().money().toDouble());
    }

    @Override
    public OptionalDouble boundOfAsGood() {
      return bound();
    }
  }

  /** The best found so far, with what is known about how good it is. */
  record BestFound(Judged plan, OptionalDouble bound, OptionalDouble boundOfAsGood)
      implements WithPlan {
    /** Where no more is known of plans that are only as good before money. */
    public BestFound(Judged plan, OptionalDouble bound) {
      this(plan, bound, bound);
    }

    @Override
    public WithPlan with(Judged other) {
      return new BestFound(other, bound, boundOfAsGood);
    }
  }

  /**
   * No plan can be had.
   *
   * @param clash sentences of rules that cannot hold together
   * @param minimal without any one of them the others do not clash
   */
  record Impossible(List<String> clash, boolean minimal) implements Answer {
    public Impossible {
      clash = List.copyOf(clash);
    }
  }

  /** Time ran out before any plan was found. */
  record NothingFound() implements Answer {}
}
