package io.frostlot.oracle;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The best plan of a tiny world by trying everything, day by day: every order of every slot, every
 * freezer, every meal by every option or left out, everything thrown away or kept. Ways that lead
 * to the same state are one, and the better of them goes on.
 *
 * <p>Only for worlds whose freezers hold a handful of pieces: costs grow with the number of states.
 */
public final class Exhaustive {
  private final World world;
  private final Tiny tiny;
  private final boolean anyPiece;
  private final TotalLimits limits;
  private final Margins margins;
  private final Programmes programmes;
  private final Spending spending;

  /** The best there is. */
  public record Found(Standing standing, Plan plan) {}

  private record Node(Score score, Trail trail) {}

  private Exhaustive(World given, boolean anyPiece) {
    world = given.withDemands(OracleMeals.of(given)).withSlots(received(given));
    this.anyPiece = anyPiece || !world.scenario().policy().charges().pastBest().isZero();
    tiny = new Tiny(world);
    limits = new TotalLimits(world);
    margins = new Margins(tiny, world.demands().size() + limits.size());
    programmes = new Programmes(tiny, world.demands().size() + limits.size() + margins.size());
    spending =
        new Spending(
            tiny, world.demands().size() + limits.size() + margins.size() + programmes.size());
  }

  /** Deliveries that surely come on no day on which nobody can receive them. */
  private static List<Slot> received(World world) {
    List<Slot> received = new ArrayList<>(world.slots());
    for (Period away : world.scenario().away()) {
      received.removeIf(
          slot ->
              slot.arrivesEarliest()
                  .datesUntil(slot.arrivesLatest().plusDays(1))
                  .anyMatch(away::contains));
    }
    return received;
  }

  /** Empty where no plan keeps every rule. */
  public static Optional<Found> best(World world) {
    return new Exhaustive(world, false).search();
  }

  /**
   * The same without the insight that of one item in one freezer the oldest piece goes first, and
   * that nothing need be thrown away before room is short.
   */
  static Optional<Found> bestByAnyPiece(World world) {
    return new Exhaustive(world, true).search();
  }

  private Optional<Found> search() {
    Map<State, Node> layer = new HashMap<>();
    layer.put(start(), new Node(before(), Trail.START));
    for (Stage stage : stages()) {
      Map<State, Node> next = new HashMap<>();
      layer.forEach(
          (state, node) ->
              stage.from(
                  state,
                  node.trail,
                  (to, added, trail) -> {
                    Score score = node.score.plus(added);
                    Node best = next.get(to);
                    if (best == null || score.compareTo(best.score) < 0) {
                      next.put(to, new Node(score, trail));
                    }
                  }));
      layer = next;
    }
    return layer.values().stream()
        .min((a, b) -> a.score.compareTo(b.score))
        .map(
            node ->
                new Found(node.score.standing(), new PlanWriter(tiny).write(node.trail.moves())));
  }

  private Score before() {
    return spending.before().plus(Score.money(new EarlierPlan(world).lost()));
  }

  private State start() {
    Cells cells = Cells.NONE;
    for (StockLot lot : world.scenario().larder().stock()) {
      if (tiny.day(lot.useBy()) >= 0) {
        cells = cells.plus(tiny.pieces(lot.item(), lot.freezer(), lot.keeps()), 0, lot.pieces());
      }
    }
    int counts =
        world.demands().size()
            + limits.size()
            + margins.size()
            + programmes.size()
            + spending.size();
    return spending.start(new State(new int[counts], cells, Cells.NONE, false, false));
  }

  private List<Stage> stages() {
    List<Stage> stages = new ArrayList<>();
    Larder larder = new Larder(tiny, anyPiece);
    Reserves reserves = new Reserves(tiny);
    Carrying carrying = new Carrying(tiny);
    Policy policy = world.scenario().policy();
    boolean endOfDay = policy.freezerCheck() == Policy.FreezerCheck.END_OF_DAY;
    boolean throwEarly = anyPiece || endOfDay || !policy.charges().holding().isZero();
    for (int day = 0; day < tiny.planned; day++) {
      stages.add(larder.leave(day));
      if (carrying.isOn(day)) {
        stages.add(carrying.carry(day));
      }
      if (throwEarly) {
        stages.add(larder.throwAway(day));
      }
      addArrivals(day, stages);
      stages.add(margins.come(day));
      if (!endOfDay) {
        stages.add(throwEarly ? larder.check(day) : larder.checkOrThrow(day));
      }
      addMeals(day, stages);
      if (endOfDay) {
        stages.add(larder.check(day));
      }
      stages.add(margins.night(day));
      stages.add(reserves.night(day));
      stages.add(larder.night(day));
    }
    for (int day = tiny.planned; day < tiny.end; day++) {
      stages.add(larder.leave(day));
      boolean shrinks = new Room(tiny).mayShrink(day);
      if (shrinks) {
        stages.add(endOfDay ? larder.throwAway(day) : larder.checkOrThrow(day));
      }
      addMeals(day, stages);
      if (shrinks && endOfDay) {
        stages.add(larder.check(day));
      }
      stages.add(larder.night(day));
    }
    stages.add(programmes.end());
    stages.add(limits.end(world.demands().size()));
    return stages;
  }

  private void addArrivals(int day, List<Stage> stages) {
    Arrivals arrivals = new Arrivals(tiny, limits, spending);
    Candidates candidates = new Candidates(tiny, limits);
    for (Slot slot : world.slots()) {
      if (tiny.day(slot.arrivesEarliest()) == day) {
        stages.add(arrivals.order(slot, candidates.of(slot)));
      }
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      if (tiny.day(lot.arrivesEarliest()) == day) {
        stages.add(arrivals.placed(lot));
      }
    }
  }

  private void addMeals(int day, List<Stage> stages) {
    Meals meals = new Meals(tiny, margins, programmes, anyPiece);
    for (int index = 0; index < world.demands().size(); index++) {
      Demand demand = world.demands().get(index);
      if (demand.meal().days().contains(tiny.date(day))) {
        stages.add(meals.of(index, day));
      }
    }
  }
}
