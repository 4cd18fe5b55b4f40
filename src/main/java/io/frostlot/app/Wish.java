package io.frostlot.app;

import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A rule, something allowed, or a reckoned charge: the world where it is asked for and the one
 * where it is not, all else the same. What the scenario does not ask for is asked for in a usual
 * measure.
 */
record Wish(Bearing bearing, World with, World without) {
  /**
   * What is wished for, and what it has to do with plans.
   *
   * @param rules ids of the rules that it has fall short
   * @param freer which of the two worlds allows all that the other does, at no more money
   */
  record Bearing(ExplainFinding.Wished wished, Set<String> rules, Freer freer) {
    /** Something that gives way, so that more is allowed without it. */
    static Bearing of(String says, boolean asked, String... rules) {
      return of(says, asked, ExplainFinding.Kind.RULE, rules);
    }

    /** A charge: without it the same is allowed at less. */
    static Bearing charge(String says, boolean asked) {
      return of(says, asked, ExplainFinding.Kind.CHARGE);
    }

    private static Bearing of(
        String says, boolean asked, ExplainFinding.Kind kind, String... rules) {
      return new Bearing(
          new ExplainFinding.Wished(says, asked, kind, ExplainFinding.Sake.KEEPER),
          Set.of(rules),
          Freer.WITHOUT);
    }

    Bearing sake(ExplainFinding.Sake other) {
      return new Bearing(
          new ExplainFinding.Wished(wished.says(), wished.asked(), wished.kind(), other),
          rules,
          freer);
    }

    Bearing freer(Freer other) {
      return new Bearing(wished, rules, other);
    }
  }

  /** Which of two worlds allows all that the other does. */
  enum Freer {
    WITH,
    WITHOUT,
    /** Meals have other days or other prey, so that neither need be. */
    NEITHER
  }

  /**
   * One for each that there is.
   *
   * @param dearest order of the best plan: nine tenths of it are the usual measure of a budget, a
   *     twentieth that of the effort of an order
   */
  static List<Wish> of(World world, Money dearest) {
    return Stream.of(
            new PolicyWishes(world).all(),
            new MoneyWishes(world, dearest).all(),
            new PlateWishes(world).all(),
            new MealWishes(world).all(),
            new PlaceWishes(world).all())
        .flatMap(some -> some)
        .toList();
  }

  String says() {
    return bearing.wished().says();
  }

  boolean asked() {
    return bearing.wished().asked();
  }

  /** Is it about how near grams come to the programme? */
  boolean isAdequacy() {
    return bearing.rules().contains("adequacy");
  }
}
