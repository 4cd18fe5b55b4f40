package io.frostlot.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What happens when a plan is followed day by day, in the order of the day: what is past its use-by
 * leaves, pieces are thrown away, deliveries arrive, freezers are checked, animals eat, night.
 *
 * <p>It is followed twice, with every delivery at its earliest and with every one at its latest;
 * days after the planning days that belong to the tail are followed too. Knows no price and no
 * solver.
 *
 * @param breaches sentences on what cannot be, with the day; none when the plan can be followed
 * @param freezers by name, deliveries at their earliest
 * @param leftovers at the last night of the planning days, by lot
 * @param pastUseBy what left on the day after its use-by, by day
 * @param unmet meals of the planning days that the plan does not serve, by day
 */
public record Replay(
    List<String> breaches,
    List<FreezerLoad> freezers,
    List<Left> leftovers,
    List<Left> pastUseBy,
    List<Unmet> unmet) {

  public Replay {
    breaches = List.copyOf(breaches);
    freezers = List.copyOf(freezers);
    leftovers = List.copyOf(leftovers);
    pastUseBy = List.copyOf(pastUseBy);
    unmet = List.copyOf(unmet);
  }

  /**
   * Pieces of a lot that nobody ate.
   *
   * @param pieces at least 1
   */
  public record Left(Lot lot, int pieces) {
    /** The day at whose start they leave, where they are not eaten by then. */
    public LocalDate leaves() {
      return lot.useBy().plusDays(1);
    }
  }

  /** Meals of a demand that are not served, at least 1. */
  public record Unmet(Demand demand, int meals) {}

  /** Follows any plan, however wrong. */
  public static Replay of(World world, Plan plan) {
    Set<String> breaches = new LinkedHashSet<>();
    new LotCheck(world, plan, breaches::add).check();
    new FeedingCheck(world, plan, breaches::add).check();
    DayByDay early = new DayByDay(world, plan, Lot::earliest, breaches::add);
    early.run();
    new DayByDay(world, plan, Lot::latest, breaches::add).run();
    return new Replay(
        List.copyOf(breaches),
        early.freezers(),
        early.leftovers(),
        early.pastUseBy(),
        unmet(world, plan));
  }

  private static List<Unmet> unmet(World world, Plan plan) {
    Map<String, Integer> served = plan.served();
    List<Unmet> unmet = new ArrayList<>();
    for (Demand demand : world.demands()) {
      int missing = demand.meal().count() - served.getOrDefault(demand.meal().id(), 0);
      if (missing > 0 && !demand.tail()) {
        unmet.add(new Unmet(demand, missing));
      }
    }
    return unmet;
  }

  /** Can the plan be followed? */
  public boolean holds() {
    return breaches.isEmpty();
  }
}
