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

  /** Share of what about one order costs by which a change may be for the worse, at first. */
  private static final double WARM = 0.12;

  /** The same in units of shortfall, where runs of meals are to be evened out. */
  private static final double WARM_UNITS = 4;

  private final World world;
  private final Judge judge;
  private final List<Tying> tying;
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
    judge = new Judge(world);
    tying = Rules.tying(judge.rules());
    menu = new Menu(world, tying, option -> number(option.item()));
    deliveries = new Deliveries(world, look, this::number);
    scale = Weights.of(world).scale();
  }

  /** Is there one keeper? */
  static boolean suits(World world) {
    return world.joint().equals(Joint.ALONE);
  }

  World world() {
    return world;
  }

  Judge judge() {
    return judge;
  }

  /** Are there more runs of meals than the program of packs is told of? */
  boolean hasMoreRuns() {
    return tying.stream().anyMatch(Tying::isRelaxed);
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

  /** Money by which a change may be for the worse when a search begins. */
  double warmth() {
    return menu.runs().isEmpty() ? WARM * scale : WARM_UNITS * ofShortfall();
  }

  double ofShortfall() {
    return OF_AN_ORDER * scale;
  }

  /** Empty freezers. */
  Stocks stocks(Undo undo) {
    return new Stocks(world, look, items, undo);
  }
}
