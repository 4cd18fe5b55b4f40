package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
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
   * What the solution no longer has of a flow on a day goes, oldest first.
   *
   * @param pieces kept, or thrown away where {@code away}
   */
  record Cutback(Flow flow, LocalDate day, long pieces, boolean away) {}

  /**
   * By day: what is kept when an interval begins, and what goes on the day after. A solution may throw
   * old pieces away to make room and feed new ones instead.
   */
  Deque<Cutback> cutbacks(double[] point) {
    List<Cutback> cutbacks = new ArrayList<>();
    for (Flow flow : program.decisions().flows()) {
      for (int k = 0; k < flow.intervals(); k++) {
        LocalDate day = Timeline.date(flow.days().intervals()[k]);
        Linear kept = Linear.of(flow.stock(k)).plus(flow.thrown(k));
        cutbacks.add(new Cutback(flow, day, (long) Math.floor(kept.at(point) + WHOLE), false));
        if (flow.days().intervalEnd(k) > flow.days().intervals()[k]) {
          long thrown = Math.round(flow.thrown(k).at(point));
          cutbacks.add(new Cutback(flow, day.plusDays(1), thrown, true));
        }
      }
    }
    cutbacks.sort(Comparator.comparing(Cutback::day));
    return new ArrayDeque<>(cutbacks);
  }

  /** Takes what a cutback throws away off what is left of each lot. */
  List<Discard> cut(Cutback cutback, Map<String, Integer> left) {
    LocalDate day = cutback.day();
    List<Lot> there =
        lots.stream()
            .filter(lot -> lot.item().equals(cutback.flow().item()))
            .filter(lot -> lot.freezer().equals(cutback.flow().freezer().name()))
            .filter(lot -> !lot.latest().isAfter(day) && !lot.useBy().isBefore(day))
            .sorted(Comparator.comparing(Lot::useBy).thenComparing(Lot::id))
            .toList();
    long all = there.stream().mapToLong(lot -> left.get(lot.id())).sum();
    long open = cutback.away() ? cutback.pieces() : all - cutback.pieces();
    List<Discard> discards = new ArrayList<>();
    for (Lot lot : there) {
      boolean mayGo = lot.origin() instanceof Lot.InHand || lot.latest().isBefore(day);
      int pieces = mayGo ? (int) Math.min(open, left.get(lot.id())) : 0;
      if (pieces > 0) {
        discards.add(new Discard(lot.id(), day, pieces));
        left.merge(lot.id(), -pieces, Integer::sum);
        open -= pieces;
      }
    }
    return discards;
  }
}
