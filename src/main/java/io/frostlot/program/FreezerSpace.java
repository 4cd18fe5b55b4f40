package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What lies in a freezer fits into it, whenever something comes; nothing new is put into one that
 * is not in use.
 *
 * <p>For each freezer f and check day t: sum over items of litres(i) x present(i, f, t) &lt;=
 * litres(f, t). Check days are the first planning day, every day on which something may arrive or
 * be moved, and those from which a freezer has less room for a time (where days are taken together,
 * the most room on any of them counts); the check is made after the delivery, or after the meals
 * where the keeper says so. Litres are exact to the microlitre; rows are in litres.
 */
final class FreezerSpace implements Rule {
  private final World world;

  FreezerSpace(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "freezer-space";
  }

  @Override
  public String says() {
    return "What lies in a freezer fits into it: "
        + world.scenario().larder().freezers().stream()
            .map(f -> f.name() + " " + f.usable())
            .collect(Collectors.joining(", "))
        + ".";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private boolean afterMeals() {
    return world.scenario().policy().freezerCheck() == Policy.FreezerCheck.END_OF_DAY;
  }

  @Override
  public void impose(Program program) {
    boolean after = afterMeals() || program.decisions().timeline().grain().takesDaysTogether();
    List<Flow> flows = program.decisions().flows();
    for (Freezer freezer : world.scenario().larder().freezers()) {
      List<Flow> within = flows.stream().filter(flow -> flow.takesRoomIn(freezer)).toList();
      for (int day : program.decisions().timeline().checkDays()) {
        Linear litres = new Linear();
        within.forEach(
            flow ->
                litres.plus(flow.item().litres().toDouble(), flow.present(freezer, day, after)));
        Litres room = room(freezer, day, program.decisions().timeline());
        program
            .model()
            .instance(freezer.name() + " holds " + room + " on " + Timeline.date(day) + ".");
        program.model().atMost(id(), litres, room.toDouble());
      }
    }
  }

  private static Litres room(Freezer freezer, int day, Timeline timeline) {
    return new Period(
            Timeline.date(timeline.firstDayOf(day)),
            Timeline.date(timeline.firstDayOf(day + 1) - 1))
        .days()
        .map(freezer::usableOn)
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  @Override
  public void judge(Plan plan, Books books) {
    Levels levels = new Levels(plan);
    for (Freezer freezer : world.scenario().larder().freezers()) {
      if (!freezer.inUse()) {
        plan.lots().stream()
            .filter(lot -> !(lot.origin() instanceof Lot.InHand))
            .filter(lot -> lot.firstFreezer().equals(freezer.name()))
            .forEach(lot -> books.breach(id(), "lot " + lot.id(), freezer.name(), "one in use"));
      }
      Litres peak = Litres.ZERO;
      LocalDate peakDay = world.scenario().planning().from();
      for (LocalDate day : checkDays(world, plan)) {
        Litres used = used(plan.lots(), freezer, levels, day);
        Litres room = freezer.usableOn(day);
        if (share(used, room) > share(peak, freezer.usableOn(peakDay))) {
          peak = used;
          peakDay = day;
        }
        if (used.compareTo(room) > 0) {
          books.breach(id(), freezer.name() + " on " + day, used, "at most " + room);
        }
      }
      books.use(
          id(),
          freezer.name() + " on " + peakDay,
          peak.toDouble(),
          freezer.usableOn(peakDay).toDouble());
    }
  }

  private static double share(Litres used, Litres room) {
    return used.equals(Litres.ZERO) ? 0 : used.toDouble() / room.toDouble();
  }

  private Litres used(List<Lot> lots, Freezer freezer, Levels levels, LocalDate day) {
    long microlitres = 0;
    for (Lot lot : lots) {
      if (!lot.freezerOn(day).equals(freezer.name())) {
        continue;
      }
      int pieces = levels.checked(lot, day, world.scenario().policy().freezerCheck());
      microlitres += (long) Math.max(0, pieces) * lot.item().litres().microlitres();
    }
    return new Litres(microlitres);
  }

  /**
   * Days on which something really comes or is moved, the first day, and those from which there is
   * less room.
   */
  static NavigableSet<LocalDate> checkDays(World world, Plan plan) {
    NavigableSet<LocalDate> days = new TreeSet<>();
    days.add(world.scenario().planning().from());
    plan.lots().stream()
        .filter(lot -> !(lot.origin() instanceof Lot.InHand))
        .forEach(lot -> days.add(lot.earliest()));
    plan.lots().stream().filter(Lot::isMoved).forEach(lot -> days.add(lot.move().day()));
    Period all =
        new Period(world.scenario().planning().from(), Timeline.date(Timeline.lastDay(world)));
    world
        .scenario()
        .larder()
        .freezers()
        .forEach(freezer -> freezer.limitedFrom(all).forEach(days::add));
    return days;
  }
}
