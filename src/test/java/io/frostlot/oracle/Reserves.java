package io.frostlot.oracle;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.storage.Freezer;
import java.util.ArrayList;
import java.util.List;

/**
 * What animals that must eat lack where one of two freezers fails on a night: the most, over all
 * sets of their meals that are due by the last of the days after, may still come and were not eaten
 * yet, by which the pieces that these need exceed those in the other freezers that would do for any
 * of them (Hall 1935; Koenig's theorem). Every week is looked at, or every so many days as should
 * be covered where these are fewer.
 */
final class Reserves {
  private final Tiny tiny;
  private final int days;
  private final int step;
  private final List<Integer> inUse = new ArrayList<>();

  Reserves(Tiny tiny) {
    this.tiny = tiny;
    days = tiny.world.scenario().policy().safety().secondFreezer().days();
    step = Math.min(7, days);
    for (int f = 0; f < tiny.freezers.size(); f++) {
      Freezer freezer = tiny.freezers.get(f);
      if (freezer.inUse()) {
        inUse.add(f);
      }
    }
  }

  /** Adds what is lacking on a night. */
  Stage night(int day) {
    boolean looked =
        days > 0 && inUse.size() > 1 && (day + 1) % step == 0 && day + 1 < tiny.planned;
    return (state, trail, next) -> {
      long lacking = 0;
      for (int failing : looked ? inUse : List.<Integer>of()) {
        lacking += lacking(state, failing, day);
      }
      next.add(state, new Score(0, 0, lacking, 0), trail);
    };
  }

  private long lacking(State state, int failing, int day) {
    List<Integer> meals = new ArrayList<>();
    for (int index = 0; index < tiny.world.demands().size(); index++) {
      Demand demand = tiny.world.demands().get(index);
      if (!demand.tail()
          && !demand.options().isEmpty()
          && demand.meal().importance() == Importance.MUST
          && tiny.day(demand.meal().days().latest()) > day
          && tiny.day(demand.meal().days().best()) <= day + days) {
        meals.add(index);
      }
    }
    long most = 0;
    for (int set = 1; set < 1 << meals.size(); set++) {
      List<Demand> some = new ArrayList<>();
      long needed = 0;
      for (int m = 0; m < meals.size(); m++) {
        if ((set >> m & 1) == 1) {
          Demand demand = tiny.world.demands().get(meals.get(m));
          int left = demand.meal().count() - state.counts()[meals.get(m)];
          needed +=
              (long) left * demand.options().stream().mapToInt(Option::pieces).min().orElseThrow();
          some.add(demand);
        }
      }
      most = Math.max(most, needed - there(some, state.cells(), failing, day));
    }
    return most;
  }

  private long there(List<Demand> meals, Cells cells, int failing, int day) {
    long there = 0;
    for (int cell = 0; cell < cells.size(); cell++) {
      int item = cells.item(cell);
      boolean does =
          meals.stream()
              .flatMap(meal -> meal.options().stream())
              .anyMatch(option -> tiny.item(option.item()) == item);
      there +=
          does && cells.freezer(cell) != failing && cells.isHere(cell, day) ? cells.count(cell) : 0;
    }
    return there;
  }
}
