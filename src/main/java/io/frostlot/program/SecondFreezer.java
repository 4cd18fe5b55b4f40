package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Whichever freezer fails, animals that must eat have food for the next days in another one.
 *
 * <p>For each night t that is looked at (see {@link Reserves}) and each freezer f in use, where its
 * keeper has two of them: the must-meals m whose best day is at most t + days, and whose latest is
 * after t, are grouped by the items that would do; need(g) = sum over its meals of fewest(m) x
 * (count(m) - served(m) by t), in pieces. For each group g: short(g) + sum over items i of give(i,
 * g) &gt;= need(g); for each item i: sum over g of give(i, g) &lt;= left(i, outside f, night t). An
 * item that only one group could take gives it all. The sum of short, in pieces, gives way before a
 * meal does. What lies there counts while it is usable on that night.
 */
final class SecondFreezer implements Rule {
  private final World world;
  private final Reserves reserves;

  SecondFreezer(World world) {
    this.world = world;
    reserves = new Reserves(world);
  }

  @Override
  public String id() {
    return "second-freezer";
  }

  @Override
  public String says() {
    return "Whichever freezer fails, animals that must eat have food for "
        + reserves.days()
        + " days in another.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    if (!program.decisions().timeline().isExact()) {
      return;
    }
    for (LocalDate night : reserves.nights()) {
      for (String keeper : reserves.keepers()) {
        Map<Set<String>, Need> needs = needs(night, keeper, program.decisions());
        reserves
            .inUse(keeper)
            .forEach(failing -> impose(needs, outside(keeper, failing, night, program), program));
      }
    }
  }

  /**
   * What a group of meals needs.
   *
   * @param most pieces, where nothing was eaten
   * @param pieces that are left to eat
   */
  private record Need(int most, Linear pieces) {
    Need and(Need other) {
      return new Need(most + other.most, pieces.copy().plus(other.pieces));
    }
  }

  private Map<Set<String>, Need> needs(LocalDate night, String keeper, Decisions decisions) {
    Set<Demand> open = reserves.openAfter(night, keeper).collect(Collectors.toSet());
    Map<Set<String>, Need> needs = new HashMap<>();
    for (Decisions.Served served : decisions.served()) {
      Demand first = served.demandClass().first();
      if (open.contains(first)) {
        int fewest = Reserves.fewest(first);
        int most = fewest * served.demandClass().count();
        Linear eaten =
            served.weighed(choice -> isBy(night, choice, decisions.timeline()) ? fewest : 0);
        needs.merge(
            Reserves.items(first), new Need(most, Linear.constant(most).minus(eaten)), Need::and);
      }
    }
    return needs;
  }

  /** Segments end with the nights that are looked at. */
  private static boolean isBy(LocalDate night, DemandClass.Choice choice, Timeline timeline) {
    return !timeline
        .of(choice.option().item())
        .days(choice.segment(), timeline)
        .to()
        .isAfter(night);
  }

  private Map<String, Linear> outside(
      String keeper, Freezer failing, LocalDate night, Program program) {
    int day = Timeline.day(night);
    Map<String, Linear> outside = new TreeMap<>();
    program.decisions().flows().stream()
        .filter(flow -> world.joint().keeperOf(flow.freezer()).equals(keeper))
        .forEach(
            flow ->
                outside
                    .computeIfAbsent(flow.item().id(), item -> new Linear())
                    .plus(flow.left(day, day, other -> !other.equals(failing.name()))));
    return outside;
  }

  private void impose(Map<Set<String>, Need> needs, Map<String, Linear> outside, Program program) {
    Model model = program.model();
    Map<Set<String>, Linear> enough = new HashMap<>();
    needs.forEach(
        (items, need) -> {
          Var missing = model.real(0, need.most());
          model.minimise(Level.SHORTFALL, Linear.of(missing));
          enough.put(items, Linear.of(missing));
        });
    outside.forEach(
        (item, pieces) -> {
          List<Set<String>> takers =
              needs.keySet().stream().filter(items -> items.contains(item)).toList();
          if (takers.size() == 1) {
            enough.get(takers.get(0)).plus(pieces);
          } else if (takers.size() > 1) {
            Linear left = pieces.copy();
            for (Set<String> items : takers) {
              Var given = model.real(0, needs.get(items).most());
              enough.get(items).plus(1, given);
              left.plus(-1, given);
            }
            model.atLeast(id(), left, 0);
          }
        });
    needs.forEach((items, need) -> model.atLeast(id(), enough.get(items).minus(need.pieces()), 0));
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (reserves.days() == 0) {
      return;
    }
    Levels levels = new Levels(plan);
    Map<String, List<Feeding>> fed = plan.feedingsOfMeals();
    List<Shortfall.Part> parts = new ArrayList<>();
    for (String keeper : reserves.keepers()) {
      List<Lot> own = new ArrayList<>(plan.lots());
      own.removeIf(lot -> !world.joint().keeperOf(world.freezer(lot.freezer())).equals(keeper));
      for (LocalDate night : reserves.nights()) {
        Map<Set<String>, Integer> needs = needs(night, keeper, fed);
        for (Freezer failing : reserves.inUse(keeper).toList()) {
          long lacking = Matching.lacking(needs, outside(own, failing, night, levels));
          if (lacking > 0) {
            parts.add(new Shortfall.Part(failing.name(), new Period(night, night), lacking));
          }
        }
      }
    }
    books.shortfall(Shortfall.counted(id(), Shortfall.Unit.PIECES, parts));
  }

  /** Pieces by the items that would do. */
  private Map<Set<String>, Integer> needs(
      LocalDate night, String keeper, Map<String, List<Feeding>> fed) {
    Map<Set<String>, Integer> needs = new HashMap<>();
    reserves
        .openAfter(night, keeper)
        .forEach(
            demand -> {
              int eaten =
                  fed.getOrDefault(demand.meal().id(), List.of()).stream()
                      .filter(feeding -> !feeding.day().isAfter(night))
                      .mapToInt(Feeding::meals)
                      .sum();
              int left = demand.meal().count() - eaten;
              needs.merge(Reserves.items(demand), Reserves.fewest(demand) * left, Integer::sum);
            });
    return needs;
  }

  private static Map<String, Long> outside(
      List<Lot> lots, Freezer failing, LocalDate night, Levels levels) {
    Map<String, Long> outside = new HashMap<>();
    for (Lot lot : lots) {
      if (!lot.freezerOn(night).equals(failing.name()) && !lot.latest().isAfter(night)) {
        outside.merge(lot.item().id(), (long) levels.atNight(lot, night), Long::sum);
      }
    }
    return outside;
  }
}
