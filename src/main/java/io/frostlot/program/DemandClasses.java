package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;

/** Merges meals exactly: two of them are one class when the program cannot tell them apart. */
final class DemandClasses {
  private final Timeline timeline;
  private final BiPredicate<Option, Integer> possible;

  /**
   * Merging for a timeline.
   *
   * @param possible may some piece of the option's item be there on a day?
   */
  DemandClasses(Timeline timeline, BiPredicate<Option, Integer> possible) {
    this.timeline = timeline;
    this.possible = possible;
  }

  private record Key(
      List<DemandClass.Choice> choices, boolean must, boolean tail, Money tailPrice) {}

  List<DemandClass> merge(List<Demand> demands) {
    Map<Key, List<Demand>> members = new LinkedHashMap<>();
    for (Demand demand : demands) {
      Key key =
          new Key(
              choices(demand),
              demand.meal().importance() == Importance.MUST,
              demand.tail(),
              demand.tailPrice());
      members.computeIfAbsent(key, k -> new ArrayList<>()).add(demand);
    }
    return members.entrySet().stream()
        .map(
            e ->
                new DemandClass(
                    e.getValue(),
                    e.getKey().choices(),
                    e.getKey().must(),
                    e.getKey().tail(),
                    e.getKey().tailPrice()))
        .toList();
  }

  private List<DemandClass.Choice> choices(Demand demand) {
    List<DemandClass.Choice> choices = new ArrayList<>();
    for (Option option : demand.options()) {
      ItemDays days = timeline.of(option.item());
      Map<Integer, Long> lateBySegment = new TreeMap<>();
      Meal.Days window = demand.meal().days();
      for (LocalDate date = window.earliest();
          !date.isAfter(window.latest());
          date = date.plusDays(1)) {
        int day = timeline.at(date);
        if (possible.test(option, day)) {
          lateBySegment.merge(days.segment(day), window.late(date), Math::min);
        }
      }
      lateBySegment.forEach(
          (segment, late) -> choices.add(new DemandClass.Choice(option, segment, late)));
    }
    return choices;
  }
}
