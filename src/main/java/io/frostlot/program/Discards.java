package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a plan throws away: as little as its freezers allow, or just what the solution throws away. */
final class Discards {
  private static final double WHOLE = 1e-6;
  private final World world;
  private final Program program;
  private final List<Lot> lots;

  Discards(World world, Program program, List<Lot> lots) {
    this.world = world;
    this.program = program;
    this.lots = List.copyOf(lots);
  }

  /** Pieces never eaten go when room is short, or at once where holding is charged. */
  List<Discard> whenFull(Plan plan) {
    List<Discard> discards = new ArrayList<>();
    Map<String, Integer> spare = new HashMap<>();
    Levels levels = new Levels(plan);
    lots.forEach(lot -> spare.put(lot.id(), levels.neverEaten(lot)));
    for (int check : program.decisions().timeline().checkDays()) {
      for (Freezer freezer : world.scenario().larder().freezers()) {
        makeRoom(freezer, Timeline.date(check), plan, spare, discards);
      }
    }
    return discards;
  }

  private void makeRoom(
      Freezer freezer, LocalDate day, Plan plan, Map<String, Integer> spare, List<Discard> discards) {
    boolean atOnce = !world.scenario().policy().charges().holding().isZero();
    long used = used(freezer, day, with(plan, discards));
    for (Lot lot : lots) {
      boolean there = lot.origin() instanceof Lot.InHand || lot.latest().isBefore(day);
      int pieces = spare.get(lot.id());
      if (lot.freezer().equals(freezer.name()) && there && pieces > 0 && !lot.useBy().isBefore(day)
          && (atOnce || used > freezer.usable().microlitres())) {
        discards.add(new Discard(lot.id(), day, pieces));
        spare.put(lot.id(), 0);
        used -= pieces * lot.item().litres().microlitres();
      }
    }
  }

  private static Plan with(Plan plan, List<Discard> discards) {
    return new Plan(plan.orders(), plan.lots(), plan.feedings(), discards);
  }

  private long used(Freezer freezer, LocalDate day, Plan plan) {
    Levels levels = new Levels(plan);
    return lots.stream()
        .filter(lot -> lot.freezer().equals(freezer.name()))
        .mapToLong(lot -> levels.beforeMeals(lot, day) * lot.item().litres().microlitres())
        .sum();
  }

  /** Is a freezer too full on some day, although nothing is left that no meal takes? */
  boolean leaveTooMuch(Plan plan) {
    for (int check : program.decisions().timeline().checkDays()) {
      for (Freezer freezer : world.scenario().larder().freezers()) {
        if (used(freezer, Timeline.date(check), plan) > freezer.usable().microlitres()) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * At the start of each interval what the solution no longer has, oldest first. A solution may throw
   * old pieces away to make room and feed new ones instead.
   */
  List<Discard> asSolved(double[] point) {
    List<Discard> discards = new ArrayList<>();
    for (Flow flow : program.decisions().flows()) {
      List<Lot> oldestFirst =
          lots.stream()
              .filter(lot -> lot.item().equals(flow.item()) && lot.freezer().equals(flow.freezer().name()))
              .sorted(Comparator.comparing(Lot::useBy).thenComparing(Lot::id))
              .toList();
      Map<String, Integer> left = new HashMap<>();
      oldestFirst.forEach(lot -> left.put(lot.id(), lot.pieces()));
      for (int k = 0; k < flow.intervals(); k++) {
        LocalDate day = Timeline.date(flow.days().intervals()[k]);
        Linear stays = Linear.of(flow.stock(k)).plus(flow.thrown(k));
        long kept = (long) Math.floor(stays.at(point) + WHOLE);
        List<Lot> there =
            oldestFirst.stream()
                .filter(lot -> !lot.latest().isAfter(day) && !lot.useBy().isBefore(day))
                .toList();
        long surplus = there.stream().mapToLong(lot -> left.get(lot.id())).sum() - kept;
        take(mayGo(there, day), surplus, left)
            .forEach((lot, pieces) -> discards.add(new Discard(lot, day, pieces)));
        take(there, Math.round(flow.eatenIn(k).at(point)), left);
      }
    }
    return discards;
  }

  private static List<Lot> mayGo(List<Lot> there, LocalDate day) {
    return there.stream()
        .filter(lot -> lot.origin() instanceof Lot.InHand || lot.latest().isBefore(day))
        .toList();
  }

  private static Map<String, Integer> take(List<Lot> from, long pieces, Map<String, Integer> left) {
    Map<String, Integer> taken = new HashMap<>();
    long open = pieces;
    for (Lot lot : from) {
      int take = (int) Math.min(open, left.get(lot.id()));
      if (take > 0) {
        taken.put(lot.id(), take);
        left.merge(lot.id(), -take, Integer::sum);
        open -= take;
      }
    }
    return taken;
  }
}
