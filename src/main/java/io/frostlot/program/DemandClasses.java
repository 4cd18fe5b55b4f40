package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Demands;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
      MealTies.Tie tie,
      List<LocalDate> reserved) {
    DemandClass of(List<Alike> alike) {
      return new DemandClass(keeper, alike, choices, must, tail, tailPrice, tie);
    }
  }

  /** Meals that are alike in keeper and ties too. */
  private record Part(Apart apart, Alike alike) {
    private record Apart(String keeper, MealTies.Tie tie) {}
  }

  List<DemandClass> merge(Demands demands) {
    List<Part> parts = new ArrayList<>();
    demands.alike().forEach(alike -> addParts(alike, parts));
    if (parts.size() > demands.alike().size()) {
      parts.sort(Comparator.comparing(part -> part.alike().first(), Demands.CANONICAL));
    }
    Map<Key, List<Alike>> members = new LinkedHashMap<>();
    for (Part part : parts) {
      members.computeIfAbsent(key(part), key -> new ArrayList<>()).add(part.alike());
    }
    return members.entrySet().stream().map(e -> e.getKey().of(e.getValue())).toList();
  }

  private void addParts(Alike alike, List<Part> parts) {
    if (world.joint().keepers().isEmpty() && ties.areNone()) {
      parts.add(new Part(apart(alike.first()), alike));
      return;
    }
    Map<Part.Apart, List<Demand>> apart = new LinkedHashMap<>();
    for (Demand demand : alike.members()) {
      apart.computeIfAbsent(apart(demand), some -> new ArrayList<>()).add(demand);
    }
    apart.forEach((kept, members) -> parts.add(new Part(kept, Alike.of(members))));
  }

  private Part.Apart apart(Demand demand) {
    return new Part.Apart(world.joint().keeperOf(demand), ties.of(demand));
  }

  private Key key(Part part) {
    Demand first = part.alike().first();
    return new Key(
        part.apart().keeper(),
        choices(part.apart().keeper(), first),
        part.alike().isMust(),
        first.tail(),
        first.tailPrice(),
        part.apart().tie(),
        timeline.isExact() ? timeline.reserves().asked(first) : List.of());
  }

  /** Every meal a class by itself. */
  List<DemandClass> each(Demands demands) {
    return demands.all().stream()
        .map(demand -> new Part(apart(demand), Alike.of(List.of(demand))))
        .map(part -> key(part).of(List.of(part.alike())))
        .toList();
  }

  private List<DemandClass.Choice> choices(String keeper, Demand demand) {
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
    Period all = days.days(segment, timeline);
    return window
        .first(all)
        .map(
            day ->
                new DemandClass.Choice(
                    option, segment, window.late(day), timeline.sparedNights(day, all)));
  }
}
