package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Meals should not depend on a delivery that has only just come: pieces that can be eaten since
 * less than d days are still there at night.
 *
 * <p>For each item i and planning day t: short(i, t) &gt;= recent(i, t) - stock(i, t at night),
 * where recent counts pieces whose latest arrival lies in (t - d, t]. The sum of short, in
 * piece-days, is what gives way before a meal does and comes before money.
 */
final class SafetyCover implements Rule {
  private final World world;
  private final int coverDays;

  SafetyCover(World world) {
    this.world = world;
    coverDays = world.scenario().policy().safety().coverDays();
  }

  @Override
  public String id() {
    return "safety-cover";
  }

  @Override
  public String says() {
    return "Food should have come " + coverDays + " days before it is needed.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    if (program.decisions().timeline().coverDays() == 0) {
      return;
    }
    for (Item item : world.items().values()) {
      for (String keeper : world.keepers()) {
        List<Flow> flows = program.decisions().flowsOf(keeper, item);
        if (!flows.isEmpty()) {
          impose(flows, program);
        }
      }
    }
  }

  private record Shelf(String keeper, String itemId) {}

  private void impose(List<Flow> flows, Program program) {
    ItemDays days = flows.get(0).days();
    int lastPlanned = Timeline.day(world.scenario().planning().to());
    for (int s = 0; s < days.segments().length; s++) {
      int from = days.segments()[s];
      int to = Math.min(days.segmentEnd(s), lastPlanned);
      Linear recent = new Linear();
      for (Flow flow : flows) {
        flow.parts().stream()
            .filter(p -> !p.inHand())
            .filter(p -> p.coming().latest() <= from && p.coming().latest() > from - coverDays)
            .forEach(p -> recent.plus(p.pieces()));
      }
      if (to < from || (recent.hasNoTerms() && recent.constant() == 0)) {
        continue;
      }
      Var missing = program.model().real(0, Model.INFINITY);
      program.model().minimise(Level.SHORTFALL, new Linear().plus(to - from + 1, missing));
      flows.forEach(flow -> recent.minus(flow.left(from, days.segmentEnd(days.segment(from)))));
      program.model().atMost(id(), recent.plus(-1, missing), 0);
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (coverDays == 0) {
      return;
    }
    Levels levels = new Levels(plan);
    Map<Shelf, List<Lot>> byItem = new LinkedHashMap<>();
    for (Lot lot : plan.lots()) {
      String keeper = world.joint().keeperOf(world.freezer(lot.freezer()));
      byItem
          .computeIfAbsent(new Shelf(keeper, lot.item().id()), shelf -> new ArrayList<>())
          .add(lot);
    }
    List<Shortfall.Part> parts = new ArrayList<>();
    byItem.forEach((shelf, lots) -> missing(shelf.itemId(), lots, levels).ifPresent(parts::add));
    books.shortfall(Shortfall.counted(id(), Shortfall.Unit.PIECE_DAYS, parts));
  }

  private Optional<Shortfall.Part> missing(String itemId, List<Lot> lots, Levels levels) {
    List<Shortfall.Part> days = new ArrayList<>();
    for (LocalDate day : recentDays(lots)) {
      long recent = 0;
      long left = 0;
      for (Lot lot : lots) {
        boolean here = !day.isBefore(lot.latest());
        recent += here && isRecent(lot, day) ? lot.pieces() : 0;
        left += here ? levels.atNight(lot, day) : 0;
      }
      if (recent > left) {
        days.add(new Shortfall.Part(itemId, new Period(day, day), recent - left));
      }
    }
    return days.stream().reduce(Shortfall.Part::and);
  }

  private boolean isRecent(Lot lot, LocalDate day) {
    return !(lot.origin() instanceof Lot.InHand) && lot.latest().isAfter(day.minusDays(coverDays));
  }

  private Iterable<LocalDate> recentDays(List<Lot> lots) {
    Map<LocalDate, Boolean> days = new HashMap<>();
    for (Lot lot : lots) {
      if (!(lot.origin() instanceof Lot.InHand)) {
        for (int d = 0; d < coverDays; d++) {
          LocalDate day = lot.latest().plusDays(d);
          if (!day.isAfter(world.scenario().planning().to())) {
            days.put(day, true);
          }
        }
      }
    }
    return days.keySet();
  }
}
