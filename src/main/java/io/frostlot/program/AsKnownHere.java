package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A plan made for a world in which prices or pieces were others, said of the packs and items of
 * this one that have the same names.
 */
final class AsKnownHere {
  private final World world;
  private final Set<Slot> slots;
  private final Set<String> freezers;
  private final Map<String, Map<String, Pack>> packs = new HashMap<>();

  AsKnownHere(World world) {
    this.world = world;
    slots = new HashSet<>(world.slots());
    freezers =
        world.scenario().larder().freezers().stream()
            .map(Freezer::name)
            .collect(Collectors.toSet());
    world
        .scenario()
        .suppliers()
        .forEach(
            supplier ->
                packs.put(
                    supplier.id(),
                    supplier.sheet().packs().stream()
                        .collect(Collectors.toMap(Pack::id, pack -> pack))));
  }

  /** Empty where a delivery, a pack, an item or a freezer is not known here. */
  Optional<Plan> of(Plan plan) {
    boolean known =
        plan.orders().stream().allMatch(this::isSold)
            && plan.lots().stream().allMatch(this::isKnown);
    return known
        ? Optional.of(
            new Plan(
                plan.orders().stream().map(this::here).toList(),
                plan.lots().stream().map(lot -> lot.withItem(here(lot.item()))).toList(),
                plan.feedings().stream().map(this::here).toList(),
                plan.discards()))
        : Optional.empty();
  }

  private boolean isSold(Order order) {
    Map<String, Pack> sold = packs.getOrDefault(order.slot().supplier(), Map.of());
    return slots.contains(order.slot())
        && order.lines().stream().allMatch(line -> sold.containsKey(line.pack().id()));
  }

  private boolean isKnown(Lot lot) {
    return freezers.contains(lot.freezer())
        && freezers.contains(lot.firstFreezer())
        && world.items().containsKey(lot.item().id());
  }

  private Item here(Item item) {
    return world.items().get(item.id());
  }

  private Order here(Order order) {
    Map<String, Pack> sold = packs.get(order.slot().supplier());
    List<Order.Line> lines =
        order.lines().stream()
            .map(line -> new Order.Line(sold.get(line.pack().id()), line.packs(), line.underSale()))
            .toList();
    List<List<Order.Content>> contents =
        order.boxes().contents().stream()
            .map(
                box ->
                    box.stream()
                        .map(it -> new Order.Content(sold.get(it.pack().id()), it.packs()))
                        .toList())
            .toList();
    Order.Boxes boxes = new Order.Boxes(order.boxes().count(), contents);
    return new Order(order.slot(), lines, order.promotions(), boxes);
  }

  private Feeding here(Feeding feeding) {
    Option option = new Option(here(feeding.option().item()), feeding.option().pieces());
    return new Feeding(feeding.mealId(), feeding.day(), option, feeding.meals(), feeding.draws());
  }
}
