package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

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
  private final List<Ware> wares = new ArrayList<>();
  private final Map<String, Map<String, Integer>> numbers = new HashMap<>();
  private final List<String> freezers;
  private final Menu menu;
  private final Bags bags;
  private final Deliveries deliveries;
  private final double scale;

  TrialWorld(World world) {
    this(world, Set.of());
  }

  /**
   * The same with further ways to hand out packs.
   *
   * @param others that do not come of themselves, see {@link Bags}
   */
  private TrialWorld(World world, Set<Bag> others) {
    this.world = world;
    look = LookDays.of(world);
    world.keepers().forEach(this::has);
    freezers = world.scenario().larder().freezers().stream().map(Freezer::name).toList();
    judge = new Judge(world);
    tying = Rules.tying(judge.rules());
    menu =
        new Menu(
            world,
            tying,
            (demand, option) -> number(world.joint().keeperOf(demand), option.item()));
    bags = new Bags(world, this::number, others);
    deliveries = new Deliveries(world, look, bags);
    scale = Weights.of(world).scale();
  }

  private void has(String keeper) {
    Map<String, Integer> own = new HashMap<>();
    for (Item item : world.items().values()) {
      own.put(item.id(), wares.size());
      wares.add(new Ware(keeper, item));
    }
    numbers.put(keeper, own);
  }

  /** Is every freezer somebody's, from which only that keeper's animals are fed? */
  static boolean suits(World world) {
    return world.joint().eaters().isEmpty()
        && world.demands().stream()
            .map(world.joint()::keeperOf)
            .distinct()
            .allMatch(world.keepers()::contains);
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

  List<Ware> wares() {
    return wares;
  }

  /** The number of a ware. */
  int number(String keeper, Item item) {
    return numbers.get(keeper).get(item.id());
  }

  /** The number of the ware that a lot is a part of. */
  int number(Lot lot) {
    return number(keeper(lot), lot.item());
  }

  /** Whose a lot is. */
  String keeper(Lot lot) {
    return world.joint().keeperOf(world.freezer(lot.freezer()));
  }

  Bags bags() {
    return bags;
  }

  /**
   * The same in which packs may be handed out as they are in a plan; to one keeper all are whole.
   */
  TrialWorld with(Plan plan) {
    if (world.keepers().size() < 2) {
      return this;
    }
    Set<Bag> others = new HashSet<>(bags.others());
    for (Order order : plan.orders()) {
      OptionalInt delivery = deliveries.number(order.slot());
      if (delivery.isPresent()) {
        Set<Bag> known = Set.copyOf(deliveries.get(delivery.getAsInt()).rows());
        bags.of(order, plan).stream()
            .flatMap(some -> some.keySet().stream())
            .filter(bag -> !known.contains(bag))
            .forEach(others::add);
      }
    }
    return others.equals(bags.others()) ? this : new TrialWorld(world, others);
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
    return new Stocks(world, look, wares, undo);
  }
}
