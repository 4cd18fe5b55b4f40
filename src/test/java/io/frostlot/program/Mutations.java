package io.frostlot.program;

import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Plans one step away from a plan; many of them break a rule. What is eaten is handed out anew. */
final class Mutations {
  private final World world;
  private final Random random;
  private final FeedingMutations feeding;

  Mutations(World world, Random random) {
    this.world = world;
    this.random = random;
    feeding = new FeedingMutations(world, random);
  }

  Plan mutate(Plan plan) {
    List<UnaryOperator<Plan>> ways =
        List.of(
            this::packs,
            this::packs,
            this::added,
            this::moved,
            this::boxes,
            this::promotions,
            this::sales,
            feeding::fedOnAnotherDay,
            feeding::notFed,
            feeding::fedOtherwise,
            feeding::split,
            feeding::thrown);
    return OldestFirst.of(ways.get(random.nextInt(ways.size())).apply(plan));
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private Plan packs(Plan plan) {
    if (plan.orders().isEmpty()) {
      return plan;
    }
    Order order = any(plan.orders());
    Order.Line line = any(order.lines());
    int change = random.nextBoolean() ? 1 : -1;
    List<Order.Line> lines = new ArrayList<>(order.lines());
    lines.remove(line);
    if (line.packs() + change > 0) {
      TreeMap<String, Integer> under = new TreeMap<>(line.underSale());
      if (change < 0 && line.packsUnderNoSale() == 0) {
        under.computeIfPresent(under.firstKey(), (sale, count) -> count > 1 ? count - 1 : null);
      }
      lines.add(new Order.Line(line.pack(), line.packs() + change, under));
    }
    return ordered(
        plan, order, with(order, lines), line.pack().item(), change * line.pack().pieces());
  }

  private Order with(Order order, List<Order.Line> lines) {
    Set<String> promotions = new HashSet<>(order.promotions());
    Order.Boxes boxes = PlanBuilder.boxes(world.supplier(order.slot().supplier()), lines);
    return new Order(order.slot(), lines, promotions, boxes);
  }

  /** Another order in place of one, and some pieces more or fewer of an item that comes with it. */
  private Plan ordered(Plan plan, Order before, Order after, Item item, int pieces) {
    List<Order> orders = new ArrayList<>(plan.orders());
    orders.remove(before);
    if (!after.lines().isEmpty()) {
      orders.add(after);
    }
    List<Lot> lots = new ArrayList<>(plan.lots());
    int left = pieces;
    for (Lot lot : plan.lots()) {
      if (left != 0 && FeedingMutations.isOf(lot, before.slot(), item)) {
        int change = Math.max(left, -lot.pieces());
        lots.remove(lot);
        if (lot.pieces() + change > 0) {
          lots.add(lot.withPieces(lot.pieces() + change));
        }
        left -= change;
      }
    }
    if (left > 0) {
      lots.add(feeding.lot(after.slot(), item, left, any(feeding.inUse()).name()));
    }
    return new Plan(orders, lots, plan.feedings(), plan.discards());
  }

  /** A pack more of any row in any delivery. */
  private Plan added(Plan plan) {
    if (world.slots().isEmpty() || feeding.inUse().isEmpty()) {
      return plan;
    }
    Slot slot = any(world.slots());
    Pack pack = any(world.supplier(slot.supplier()).sheet().packs());
    Order before =
        plan.orders().stream()
            .filter(order -> order.slot().equals(slot))
            .findFirst()
            .orElse(new Order(slot, List.of(), Set.of(), Order.Boxes.NONE));
    List<Order.Line> lines = new ArrayList<>(before.lines());
    if (lines.stream().anyMatch(line -> line.pack().equals(pack)) || !fits(slot, pack)) {
      return plan;
    }
    lines.add(new Order.Line(pack, 1, new TreeMap<>()));
    return ordered(plan, before, with(before, lines), pack.item(), pack.pieces());
  }

  private boolean fits(Slot slot, Pack pack) {
    Supplier supplier = world.supplier(slot.supplier());
    return supplier.isPickUp() || BoxFit.fits(pack, supplier.boxing().limits());
  }

  /** An order placed for another delivery of the same supplier. */
  private Plan moved(Plan plan) {
    if (plan.orders().isEmpty()) {
      return plan;
    }
    Order order = any(plan.orders());
    Slot slot = any(world.slots());
    boolean taken = plan.orders().stream().anyMatch(other -> other.slot().equals(slot));
    if (taken || !slot.supplier().equals(order.slot().supplier())) {
      return plan;
    }
    List<Order> orders = new ArrayList<>(plan.orders());
    orders.remove(order);
    orders.add(new Order(slot, order.lines(), order.promotions(), order.boxes()));
    List<Lot> lots = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      lots.add(
          FeedingMutations.isOf(lot, order.slot(), lot.item())
              ? feeding.lot(slot, lot.item(), lot.pieces(), lot.freezer())
              : lot);
    }
    return new Plan(orders, lots, renamed(plan, lots), plan.discards());
  }

  /** Draws from lots that have a new name now. */
  private static List<Feeding> renamed(Plan plan, List<Lot> lots) {
    List<Feeding> feedings = new ArrayList<>();
    for (Feeding feeding : plan.feedings()) {
      List<Feeding.Draw> draws = new ArrayList<>();
      for (Feeding.Draw draw : feeding.draws()) {
        int at = plan.lots().stream().map(Lot::id).toList().indexOf(draw.lotId());
        draws.add(at < 0 ? draw : new Feeding.Draw(lots.get(at).id(), draw.pieces()));
      }
      feedings.add(
          new Feeding(feeding.mealId(), feeding.day(), feeding.option(), feeding.meals(), draws));
    }
    return feedings;
  }

  /** A box too few; one too many the program may pay for, but never would. */
  private Plan boxes(Plan plan) {
    List<Order> sent =
        plan.orders().stream()
            .filter(order -> order.boxes().count() > 0)
            .filter(
                order ->
                    world.supplier(order.slot().supplier()).boxing().way() == Boxing.Way.BY_TOTAL)
            .toList();
    if (sent.isEmpty()) {
      return plan;
    }
    Order order = any(sent);
    int count = order.boxes().count() - 1;
    Order.Boxes boxes = new Order.Boxes(count, List.of());
    return replaced(plan, order, new Order(order.slot(), order.lines(), order.promotions(), boxes));
  }

  private static Plan replaced(Plan plan, Order before, Order after) {
    List<Order> orders = new ArrayList<>(plan.orders());
    orders.remove(before);
    orders.add(after);
    return new Plan(orders, plan.lots(), plan.feedings(), plan.discards());
  }

  /** An order discount taken, or not taken, where it was not, or was. */
  private Plan promotions(Plan plan) {
    if (plan.orders().isEmpty()) {
      return plan;
    }
    Order order = any(plan.orders());
    List<String> ids =
        world.supplier(order.slot().supplier()).discountsOn(order.slot()).stream()
            .map(discount -> discount.id())
            .toList();
    if (ids.isEmpty()) {
      return plan;
    }
    Set<String> taken = new HashSet<>(order.promotions());
    String id = any(ids);
    if (!taken.remove(id)) {
      taken.add(id);
    }
    return replaced(plan, order, new Order(order.slot(), order.lines(), taken, order.boxes()));
  }

  /** A pack more or fewer of a line under a sale. */
  private Plan sales(Plan plan) {
    if (plan.orders().isEmpty()) {
      return plan;
    }
    Order order = any(plan.orders());
    Order.Line line = any(order.lines());
    List<String> ids =
        world.supplier(order.slot().supplier()).salesOn(order.slot()).stream()
            .filter(sale -> sale.covers(line.pack()))
            .map(sale -> sale.id())
            .toList();
    if (ids.isEmpty()) {
      return plan;
    }
    TreeMap<String, Integer> under = new TreeMap<>(line.underSale());
    String id = any(ids);
    if (line.packsUnderNoSale() > 0 && random.nextBoolean()) {
      under.merge(id, 1, Integer::sum);
    } else {
      under.computeIfPresent(id, (sale, count) -> count > 1 ? count - 1 : null);
    }
    List<Order.Line> lines = new ArrayList<>(order.lines());
    lines.remove(line);
    lines.add(new Order.Line(line.pack(), line.packs(), under));
    Set<String> taken = new HashSet<>(order.promotions());
    world
        .supplier(order.slot().supplier())
        .salesOn(order.slot())
        .forEach(s -> taken.remove(s.id()));
    lines.forEach(each -> taken.addAll(each.underSale().keySet()));
    return replaced(plan, order, new Order(order.slot(), lines, taken, order.boxes()));
  }
}
