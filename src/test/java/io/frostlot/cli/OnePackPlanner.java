package io.frostlot.cli;

import io.frostlot.app.Budget;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Orders one pack of the first row from the first slot there is, and feeds nothing of it. */
final class OnePackPlanner implements Planner {
  @Override
  public Answer plan(World world, Budget budget, Watch watch) {
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
    Lot lot =
        new Lot(
            "O1",
            pack.item(),
            pack.pieces(),
            freezer.name(),
            slot.arrivesEarliest(),
            slot.arrivesLatest(),
            freezer.useBy(pack.item(), slot.arrivesEarliest()),
            new Lot.Ordered(slot));
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
    return new Answer.Judged(new Plan(List.of(order), List.of(lot), List.of(), List.of()), books);
  }
}
