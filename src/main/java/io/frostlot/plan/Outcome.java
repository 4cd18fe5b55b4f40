package io.frostlot.plan;

import io.frostlot.forecast.Option;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a plan comes to over the planning days, as shown to the keeper.
 *
 * @param freezers by name
 * @param stock by item, only those that are ever there
 * @param leftovers by lot
 * @param missed meals of the planning days that are not met, by day
 * @param late meals of the planning days that come after their best day, by day
 */
public record Outcome(
    List<FreezerLoad> freezers,
    List<Stock> stock,
    List<Leftover> leftovers,
    List<Missed> missed,
    List<Late> late) {

  public Outcome {
    freezers = List.copyOf(freezers);
    stock = List.copyOf(stock);
    leftovers = List.copyOf(leftovers);
    missed = List.copyOf(missed);
    late = List.copyOf(late);
  }

  /** Pieces of an item in all freezers at night, for each planning day. */
  public record Stock(Item item, SortedMap<LocalDate, Integer> byDay) {}

  /**
   * Meals that are not met.
   *
   * @param count of the demand's meals, at least 1
   * @param nearestItem id of the item nearest to the target among those that would do, or among the
   *     kinds accepted where none would do; empty where there is none at all
   */
  public record Missed(Demand demand, int count, String nearestItem) {}

  /** Meals served on a day after their best. */
  public record Late(Demand demand, LocalDate day, int meals) {}

  /** Follows the plan's own feedings day by day. */
  public static Outcome of(World world, Plan plan) {
    Outcomes outcomes = new Outcomes(world, plan);
    return new Outcome(
        outcomes.freezers(),
        outcomes.stock(),
        new Leftovers(world, plan).find(),
        outcomes.missed(),
        outcomes.late());
  }

  private record Outcomes(World world, Plan plan, Levels levels) {
    Outcomes(World world, Plan plan) {
      this(world, plan, new Levels(plan));
    }

    private Stream<LocalDate> days() {
      LocalDate end = world.scenario().planning().to().plusDays(1);
      return world.scenario().planning().from().datesUntil(end);
    }

    List<FreezerLoad> freezers() {
      List<FreezerLoad> loads = new ArrayList<>();
      for (Freezer freezer : world.scenario().larder().freezers()) {
        List<Lot> within =
            plan.lots().stream().filter(lot -> lot.freezer().equals(freezer.name())).toList();
        SortedMap<LocalDate, Litres> byDay = new TreeMap<>();
        days().forEach(day -> byDay.put(day, taken(within, day)));
        loads.add(new FreezerLoad(freezer, byDay));
      }
      return loads;
    }

    private Litres taken(List<Lot> lots, LocalDate day) {
      boolean endOfDay = world.scenario().policy().freezerCheck() == Policy.FreezerCheck.END_OF_DAY;
      return lots.stream()
          .map(
              lot ->
                  lot.item()
                      .litres()
                      .times(endOfDay ? levels.atNight(lot, day) : levels.beforeMeals(lot, day)))
          .reduce(Litres.ZERO, Litres::plus);
    }

    List<Stock> stock() {
      SortedMap<String, SortedMap<LocalDate, Integer>> byItem = new TreeMap<>();
      for (Lot lot : plan.lots()) {
        SortedMap<LocalDate, Integer> byDay =
            byItem.computeIfAbsent(lot.item().id(), id -> new TreeMap<>());
        days().forEach(day -> byDay.merge(day, levels.atNight(lot, day), Integer::sum));
      }
      return byItem.entrySet().stream()
          .map(entry -> new Stock(world.items().get(entry.getKey()), entry.getValue()))
          .toList();
    }

    List<Missed> missed() {
      Map<String, Integer> served = plan.served();
      List<Missed> missed = new ArrayList<>();
      for (Demand demand : world.demands()) {
        int count = demand.meal().count() - served.getOrDefault(demand.meal().id(), 0);
        if (count > 0 && !demand.tail()) {
          missed.add(new Missed(demand, count, nearest(demand).map(Item::id).orElse("")));
        }
      }
      return missed;
    }

    private Optional<Item> nearest(Demand demand) {
      Grams target = demand.meal().prey().window().target();
      Comparator<Option> byGrams =
          Comparator.comparingLong(o -> Math.abs(o.grams().milligrams() - target.milligrams()));
      Stream<Option> candidates =
          demand.options().isEmpty()
              ? world.items().values().stream()
                  .filter(item -> demand.meal().prey().kinds().contains(item.kind()))
                  .map(item -> new Option(item, 1))
              : demand.options().stream();
      return candidates.min(byGrams).map(Option::item);
    }

    List<Late> late() {
      Map<String, Demand> demands = world.demandsById();
      return plan.feedings().stream()
          .map(f -> new Late(demands.get(f.mealId()), f.day(), f.meals()))
          .filter(late -> late.demand().meal().days().late(late.day()) > 0)
          .toList();
    }
  }
}
