package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What lies in a freezer fits into it, whenever something comes; nothing new is put into one that
 * is not in use.
 *
 * <p>For each freezer f and check day t: sum over items of litres(i) x present(i, f, t) &lt;=
 * litres(f). Check days are the first planning day and every day on which something may arrive; the
 * check is made after the delivery, or after the meals where the keeper says so. Litres are exact
 * to the microlitre; rows are in litres.
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
    boolean after = afterMeals() || program.decisions().timeline().takesDaysTogether();
    List<Flow> flows = program.decisions().flows();
    for (Freezer freezer : world.scenario().larder().freezers()) {
      List<Flow> within = flows.stream().filter(f -> f.freezer().equals(freezer)).toList();
      for (int day : program.decisions().timeline().checkDays()) {
        Linear litres = new Linear();
        within.forEach(
            flow -> litres.plus(flow.item().litres().toDouble(), flow.present(day, after)));
        program
            .model()
            .instance(
                freezer.name() + " holds " + freezer.usable() + " on " + Timeline.date(day) + ".");
        program.model().atMost(id(), litres, freezer.usable().toDouble());
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    Levels levels = new Levels(plan);
    for (Freezer freezer : world.scenario().larder().freezers()) {
      List<Lot> within =
          plan.lots().stream().filter(l -> l.freezer().equals(freezer.name())).toList();
      if (!freezer.inUse()) {
        within.stream()
            .filter(lot -> !(lot.origin() instanceof Lot.InHand))
            .forEach(lot -> books.breach(id(), "lot " + lot.id(), freezer.name(), "one in use"));
      }
      Litres peak = Litres.ZERO;
      LocalDate peakDay = world.scenario().planning().from();
      for (LocalDate day : checkDays(plan)) {
        Litres used = used(within, levels, day);
        if (used.compareTo(peak) > 0) {
          peak = used;
          peakDay = day;
        }
        if (used.compareTo(freezer.usable()) > 0) {
          books.breach(id(), freezer.name() + " on " + day, used, "at most " + freezer.usable());
        }
      }
      books.use(
          id(), freezer.name() + " on " + peakDay, peak.toDouble(), freezer.usable().toDouble());
    }
  }

  private Litres used(List<Lot> lots, Levels levels, LocalDate day) {
    long microlitres = 0;
    for (Lot lot : lots) {
      int pieces = afterMeals() ? levels.atNight(lot, day) : levels.beforeMeals(lot, day);
      microlitres += (long) Math.max(0, pieces) * lot.item().litres().microlitres();
    }
    return new Litres(microlitres);
  }

  /** Days on which something really comes, and the first day. */
  private NavigableSet<LocalDate> checkDays(Plan plan) {
    NavigableSet<LocalDate> days = new TreeSet<>();
    days.add(world.scenario().planning().from());
    plan.lots().stream()
        .filter(lot -> !(lot.origin() instanceof Lot.InHand))
        .forEach(lot -> days.add(lot.earliest()));
    return days;
  }
}
