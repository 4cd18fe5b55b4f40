package io.frostlot.plan;

import io.frostlot.supply.Item;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Pieces of one item of a joint order, by the keeper who gets them.
 *
 * @param lines rows of the order that are of the item
 */
public record Handed(Order order, Item item, List<Order.Line> lines, Map<String, Integer> pieces) {
  public Handed {
    lines = List.copyOf(lines);
    pieces = Map.copyOf(pieces);
  }

  /** Of every joint order, item by item. */
  public static List<Handed> of(World world, Plan plan) {
    return plan.orders().stream()
        .filter(order -> world.joint().isJoint(order.slot()))
        .flatMap(
            order ->
                order.lines().stream()
                    .map(line -> line.pack().item())
                    .distinct()
                    .map(item -> of(world, plan, order, item)))
        .toList();
  }

  private static Handed of(World world, Plan plan, Order order, Item item) {
    SortedMap<String, Integer> pieces = new TreeMap<>();
    world.keepers().forEach(keeper -> pieces.put(keeper, 0));
    for (Lot lot : plan.lots()) {
      if (lot.item().equals(item) && lot.origin().equals(new Lot.Ordered(order.slot()))) {
        String keeper = world.joint().keeperOf(world.freezer(lot.freezer()));
        pieces.merge(keeper, lot.pieces(), Integer::sum);
      }
    }
    List<Order.Line> lines =
        order.lines().stream().filter(line -> line.pack().item().equals(item)).toList();
    return new Handed(order, item, lines, pieces);
  }

  /** Bag by bag; empty where the bags may not be cut like that. */
  public Optional<List<Division.Portion>> division(Cutting cutting) {
    return Division.of(cutting, lines, pieces);
  }
}
