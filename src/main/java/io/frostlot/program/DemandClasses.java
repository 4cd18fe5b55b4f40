package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Merges meals exactly: two of them are one class when the program cannot tell them apart. */
final class DemandClasses {
  private final World world;
  private final Timeline timeline;
  private final MealTies ties;
  private final Possible possible;

  /** May some piece of an item be there for a keeper in a segment? */
  interface Possible {
    boolean test(String keeper, Item item, int segment);
  }

  /**
   * Merging for a timeline.
   *
   * @param possible what may be there at all
   * @param ties what else tells meals apart
   */
  DemandClasses(World world, Timeline timeline, Possible possible, MealTies ties) {
    this.world = world;
    this.timeline = timeline;
    this.possible = possible;
    this.ties = ties;
  }

  private record Key(
      String keeper,
      List<DemandClass.Choice> choices,
      boolean must,
      boolean tail,
      Money tailPrice,
      MealTies.Tie tie) {}

  List<DemandClass> merge(List<Demand> demands) {
    Map<Key, List<Demand>> members = new LinkedHashMap<>();
    for (Demand demand : demands) {
      Key key =
          new Key(
              world.joint().keeperOf(demand),
              choices(demand),
              demand.meal().importance() == Importance.MUST,
              demand.tail(),
              demand.tailPrice(),
              ties.of(demand));
      members.computeIfAbsent(key, k -> new ArrayList<>()).add(demand);
    }
    return members.entrySet().stream()
        .map(
            e ->
                new DemandClass(
                    e.getKey().keeper(),
                    e.getValue(),
                    e.getKey().choices(),
                    e.getKey().must(),
                    e.getKey().tail(),
                    e.getKey().tailPrice(),
                    e.getKey().tie()))
        .toList();
  }

  /** Every meal a class by itself. */
  List<DemandClass> each(List<Demand> demands) {
    return demands.stream().flatMap(demand -> merge(List.of(demand)).stream()).toList();
  }

  private List<DemandClass.Choice> choices(Demand demand) {
    String keeper = world.joint().keeperOf(demand);
    List<DemandClass.Choice> choices = new ArrayList<>();
    for (Option option : demand.options()) {
      ItemDays days = timeline.of(option.item());
      Meal.Days window = demand.meal().days();
      int from = Math.max(timeline.at(window.earliest()), timeline.first());
      int to = Math.min(timeline.at(window.latest()), timeline.last());
      for (int segment = days.segment(from); from <= to && segment <= days.segment(to); segment++) {
        if (possible.test(keeper, option.item(), segment)) {
          choice(option, window, days, segment).ifPresent(choices::add);
        }
      }
    }
    return choices;
  }

  /**
   * On the first day within a segment, which is the least late and spares most nights; empty where
   * the meal may come on none of its days.
   */
  private Optional<DemandClass.Choice> choice(
      Option option, Meal.Days window, ItemDays days, int segment) {
    return window
        .first(days.days(segment, timeline))
        .map(
            day ->
                new DemandClass.Choice(
                    option, segment, window.late(day), timeline.sparedNights(Timeline.day(day))));
  }
}
