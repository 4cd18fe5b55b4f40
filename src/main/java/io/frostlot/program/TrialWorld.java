package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What all trials of a world have in common; found once. */
final class TrialWorld {
  /** Share of what about one order costs that a unit of shortfall weighs as much as. */
  private static final double OF_AN_ORDER = 0.25;

  private final World world;
  private final LookDays look;
  private final List<Item> items;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> freezers;
  private final Menu menu;
  private final Deliveries deliveries;
  private final double scale;

  TrialWorld(World world) {
    this.world = world;
    look = LookDays.of(world);
    items = List.copyOf(world.items().values());
    items.forEach(item -> numbers.put(item.id(), numbers.size()));
    freezers = world.scenario().larder().freezers().stream().map(Freezer::name).toList();
    menu = new Menu(world, option -> number(option.item()));
    deliveries = new Deliveries(world, look, this::number);
    scale = Weights.of(world).scale();
  }

  /** Is there one keeper, who has pledged nothing? */
  static boolean suits(World world) {
    return world.joint().equals(Joint.ALONE) && world.pledges().isEmpty();
  }

  World world() {
    return world;
  }

  LookDays look() {
    return look;
  }

  List<Item> items() {
    return items;
  }

  int number(Item item) {
    return numbers.get(item.id());
  }

  /** Names. */
  List<String> freezers() {
    return freezers;
  }

  Menu menu() {
    return menu;
  }

  Deliveries deliveries() {
    return deliveries;
  }

  /** About what one order costs. */
  double scale() {
    return scale;
  }

  double ofShortfall() {
    return OF_AN_ORDER * scale;
  }

  /** Empty freezers. */
  Stocks stocks(Undo undo) {
    return new Stocks(world, look, items, undo);
  }
}
