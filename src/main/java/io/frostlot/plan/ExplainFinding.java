package io.frostlot.plan;

import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.util.List;

/** Why a plan says what it says, one reason after another. */
public sealed interface ExplainFinding {
  /**
   * The plan, and the limits that it uses most.
   *
   * @param tight by share of the limit, the most used first
   */
  record Tight(Solved plan, List<Books.Use> tight) implements ExplainFinding {
    private static final double WORTH_SHOWING = 0.7;
    private static final int MOST_SHOWN = 8;

    public Tight {
      tight = List.copyOf(tight);
    }

    public static Tight of(Solved plan) {
      return new Tight(
          plan,
          plan.answer().plan().books().uses().stream()
              .filter(use -> use.limit() > 0 && use.used() >= WORTH_SHOWING * use.limit())
              .sorted((a, b) -> Double.compare(b.used() / b.limit(), a.used() / a.limit()))
              .limit(MOST_SHOWN)
              .toList());
    }
  }

  /**
   * What a rule costs.
   *
   * @param without what is changed, such as "without the safety margin"
   * @param lacking what that rule itself falls short of in the plan, which counts in no difference
   * @param difference from the plan to the best one then; none where none was found in time
   */
  record RuleCost(String without, List<Shortfall> lacking, List<Difference> difference)
      implements ExplainFinding {
    public RuleCost {
      lacking = List.copyOf(lacking);
      difference = List.copyOf(difference);
    }
  }

  /**
   * A rule, something allowed, or a reckoned charge: the best plans found with it and without it.
   *
   * @param wish what is wished for
   * @param lacking what its rules themselves fall short of, which counts in no difference
   * @param difference from with it to without it
   */
  record WishCost(
      Wished wish, List<Shortfall> lacking, Solved with, Solved without, Difference difference)
      implements ExplainFinding {
    public WishCost {
      lacking = List.copyOf(lacking);
    }
  }

  /**
   * What is wished for.
   *
   * @param says such as "3 days of cover"
   * @param asked does the scenario ask for it?
   */
  record Wished(String says, boolean asked, Kind kind, Sake sake) {}

  /** What going without something means. */
  enum Kind {
    /** Other plans can be had. */
    RULE,
    /** The same plans can be had, and each is reckoned at less, though as much is paid. */
    CHARGE
  }

  /** For whose sake something is wished for. */
  enum Sake {
    KEEPER,
    /** Dropping it may harm an animal, whatever it costs. */
    ANIMAL,
    /** Not keeping to it may make people ill. */
    PEOPLE
  }

  /**
   * What each animal is fed where adequacy is asked for and where it is not, the same animals in
   * the same order.
   */
  record FedWithout(List<Fed> with, List<Fed> without) implements ExplainFinding {
    public FedWithout {
      with = List.copyOf(with);
      without = List.copyOf(without);
    }
  }

  /**
   * Why an item is bought from a supplier.
   *
   * @param supplier id
   * @param difference from the plan to the best one that does not buy it there
   * @param instead rows that are bought more of then, by supplier and pack
   */
  record WhySupplier(String supplier, Item item, Difference difference, List<Instead> instead)
      implements ExplainFinding {
    public WhySupplier {
      instead = List.copyOf(instead);
    }
  }

  /** More packs of a row than before. */
  record Instead(String supplier, String packId, int packs) {}

  /**
   * Why an order is placed now.
   *
   * @param difference from the plan to the best one that orders from this supplier later only
   */
  record WhyNow(Slot slot, Difference difference) implements ExplainFinding {}
}
