package io.frostlot.plan;

import io.frostlot.forecast.Option;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a plan comes to over the planning days, as shown to the keeper.
 *
 * @param freezers by name
 * @param dearest what lies in each of them on the day on which it is worth most
 * @param stock by item, only those that are ever there
 * @param leftovers by lot
 * @param missed meals of the planning days that are not met, by day
 * @param late meals of the planning days that come after their best day, by day
 */
public record Outcome(
    List<FreezerLoad> freezers,
    List<Contents> dearest,
    List<Stock> stock,
    List<Leftover> leftovers,
    List<Missed> missed,
    List<Late> late) {

  public Outcome {
    freezers = List.copyOf(freezers);
    dearest = List.copyOf(dearest);
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

  /** How many meals come after their best day. */
  public int lateMeals() {
    return late.stream().mapToInt(Late::meals).sum();
  }

  /** Follows the plan's own feedings day by day. */
  public static Outcome of(World world, Plan plan) {
    Replay replay = Replay.of(world, plan);
    return new Outcome(
        replay.freezers(),
        dearest(world, plan),
        stock(world, plan),
        new Leftovers(world, plan).of(replay),
        replay.unmet().stream().map(unmet -> missed(world, unmet)).toList(),
        late(world, plan));
  }

  private static List<Contents> dearest(World world, Plan plan) {
    Holdings holdings = new Holdings(world, plan);
    return world.scenario().larder().freezers().stream().map(holdings::dearest).toList();
  }

  private static List<Stock> stock(World world, Plan plan) {
    Levels levels = new Levels(plan);
    Period planning = world.scenario().planning();
    SortedMap<String, SortedMap<LocalDate, Integer>> byItem = new TreeMap<>();
    for (Lot lot : plan.lots()) {
      SortedMap<LocalDate, Integer> byDay =
          byItem.computeIfAbsent(lot.item().id(), id -> new TreeMap<>());
      planning
          .from()
          .datesUntil(planning.to().plusDays(1))
          .forEach(day -> byDay.merge(day, levels.atNight(lot, day), Integer::sum));
    }
    return byItem.entrySet().stream()
        .map(entry -> new Stock(world.items().get(entry.getKey()), entry.getValue()))
        .toList();
  }

  private static Missed missed(World world, Replay.Unmet unmet) {
    Demand demand = unmet.demand();
    Grams target = demand.meal().prey().window().target();
    Stream<Option> candidates =
        demand.options().isEmpty()
            ? world.items().values().stream()
                .filter(item -> demand.meal().prey().kinds().contains(item.kind()))
                .map(item -> new Option(item, 1))
            : demand.options().stream();
    String nearest =
        candidates
            .min(Comparator.comparingLong(option -> distance(option.grams(), target)))
            .map(option -> option.item().id())
            .orElse("");
    return new Missed(demand, unmet.meals(), nearest);
  }

  private static long distance(Grams a, Grams b) {
    return Math.abs(a.milligrams() - b.milligrams());
  }

  private static List<Late> late(World world, Plan plan) {
    Map<String, Demand> demands = world.demandsById();
    return plan.feedings().stream()
        .map(feeding -> new Late(demands.get(feeding.mealId()), feeding.day(), feeding.meals()))
        .filter(late -> late.demand().meal().days().late(late.day()) > 0)
        .toList();
  }
}
