package io.frostlot.cli;

import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Orders one pack of the first row from the first slot there is, and feeds nothing of it. */
final class OnePackPlanner implements Planner {
  @Override
  public Answer plan(World world, Limits limits, Watch watch) {
    if (world.mostOrders() == 0) {
      return new Answer.Impossible(List.of("No order."), true);
    }
    Answer.WithPlan answer = new Answer.BestFound(judged(world), OptionalDouble.empty());
    watch.found(answer);
    return answer;
  }

  static Answer.Judged judged(World world) {
    Slot slot = world.slots().get(0);
    Pack pack = world.supplier(slot.supplier()).sheet().packs().get(0);
    Order order =
        new Order(
            slot, List.of(new Order.Line(pack, 1, new TreeMap<>())), Set.of(), Order.Boxes.NONE);
    Freezer freezer =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .findFirst()
            .orElseThrow();
    List<Lot> lots = new ArrayList<>(lotsAlreadyThere(world, freezer));
    lots.add(
        new Lot(
            "O1",
            pack.item(),
            pack.pieces(),
            freezer.name(),
            slot.arrivesEarliest(),
            slot.arrivesLatest(),
            freezer.useBy(pack.item(), slot.arrivesEarliest()),
            new Lot.Ordered(slot)));
    Books books = new Books();
    books.ledger(slot).addGoods(pack.price(), false);
    books.cash("pack-prices", slot, pack.price());
    int meals =
        world.demands().stream()
            .filter(d -> !d.tail())
            .map(Demand::meal)
            .mapToInt(m -> m.count())
            .sum();
    books.unmet(meals, false);
    return new Answer.Judged(new Plan(List.of(order), lots, List.of(), List.of()), books);
  }

  /** What is under way goes into the given freezer. */
  private static List<Lot> lotsAlreadyThere(World world, Freezer freezer) {
    Stream<Lot> inHand =
        world.scenario().larder().stock().stream()
            .map(
                lot ->
                    new Lot(
                        "S" + lot.id(),
                        lot.item(),
                        lot.pieces(),
                        lot.freezer(),
                        lot.arrived(),
                        lot.arrived(),
                        lot.useBy(),
                        new Lot.InHand(lot.id())));
    Stream<Lot> underWay =
        world.scenario().larder().placed().stream()
            .map(
                lot ->
                    new Lot(
                        "P" + lot.id(),
                        lot.item(),
                        lot.pieces(),
                        freezer.name(),
                        lot.arrivesEarliest(),
                        lot.arrivesLatest(),
                        freezer.useBy(lot.item(), lot.arrivesEarliest()),
                        new Lot.UnderWay(lot.id())));
    return Stream.concat(inHand, underWay).toList();
  }
}
