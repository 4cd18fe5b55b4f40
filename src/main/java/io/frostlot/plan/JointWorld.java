package io.frostlot.plan;

import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Slots;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes one world of the worlds of several keepers: all meals and all freezers, the deliveries that
 * the host could have alone, and what each other keeper could fetch itself from a shop or a show.
 * Names of animals, freezers and lots have their keeper's name before them.
 */
public final class JointWorld {
  private final List<Keeper> keepers;
  private final Keeper host;
  private final Agreement agreement;
  private final Map<String, String> keeperOf = new HashMap<>();
  private final Map<String, String> buyers = new HashMap<>();
  private final Map<String, Item> items = new HashMap<>();
  private final List<Animal> animals = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();
  private final List<Freezer> freezers = new ArrayList<>();
  private final List<StockLot> stock = new ArrayList<>();
  private final List<PlacedLot> placed = new ArrayList<>();
  private final List<Supplier> suppliers = new ArrayList<>();
  private final List<Slot> slots = new ArrayList<>();

  private JointWorld(List<Keeper> keepers, Keeper host, Agreement agreement) {
    this.keepers = keepers;
    this.host = host;
    this.agreement = agreement;
  }

  /**
   * The world of a group; of one keeper it is that keeper's own. Empty where nobody among several
   * can receive a joint order.
   *
   * @param keepers at least one, with the same days, money and policy
   */
  public static Optional<World> of(List<Keeper> keepers, Agreement agreement) {
    if (keepers.size() == 1) {
      return Optional.of(World.of(keepers.get(0).scenario()));
    }
    return agreement.host(keepers).map(host -> new JointWorld(keepers, host, agreement).make());
  }

  private World make() {
    host.scenario().suppliers().forEach(supplier -> offer(supplier, host));
    keepers.forEach(this::bring);
    for (Keeper keeper : keepers) {
      if (!keeper.equals(host)) {
        keeper.scenario().suppliers().stream()
            .filter(Supplier::isPickUp)
            .forEach(supplier -> offer(fetched(supplier, keeper), keeper));
      }
    }
    Scenario own = host.scenario();
    Scenario scenario =
        new Scenario(
            own.name(),
            own.planning(),
            own.currency(),
            new Scenario.Collection(animals, needs),
            new Scenario.Larder(freezers, stock, placed),
            suppliers,
            own.away(),
            own.policy());
    World world = World.of(scenario);
    Joint.Collecting collecting =
        new Joint.Collecting(host.name(), agreement.handOvers(), host.waiting());
    return new World(
        scenario,
        world.demands(),
        slots.stream().sorted().toList(),
        world.items(),
        new Joint(keeperOf, buyers, agreement.cutting(), collecting));
  }

  private void offer(Supplier supplier, Keeper buyer) {
    suppliers.add(supplier);
    supplier.sheet().packs().forEach(pack -> same(pack.item()));
    slots.addAll(Slots.of(supplier, buyer.scenario().planning(), buyer.scenario().away()));
  }

  /** The same shop or show as seen by a keeper who fetches there for itself. */
  private Supplier fetched(Supplier supplier, Keeper keeper) {
    String id = keeper.fetching(supplier.id());
    buyers.put(id, keeper.name());
    Supplier.PriceSheet sheet = supplier.sheet();
    return supplier
        .named(id, supplier.name() + ", by " + keeper.name())
        .withSheet(
            sheet.withPacks(
                sheet.packs().stream().map(pack -> pack.withItem(same(pack.item()))).toList()));
  }

  /** One record for what two keepers know under one id, though they may measure it differently. */
  private Item same(Item item) {
    return items.computeIfAbsent(item.id(), id -> item);
  }

  private void bring(Keeper keeper) {
    Scenario own = keeper.scenario();
    own.collection().animals().forEach(a -> animals.add(a.named(owned(keeper, a.name()))));
    own.collection().needs().forEach(n -> needs.add(n.labelled(owned(keeper, n.label()))));
    own.larder().freezers().forEach(f -> freezers.add(f.named(owned(keeper, f.name()))));
    for (StockLot lot : own.larder().stock()) {
      stock.add(
          new StockLot(
              keeper.own(lot.id()),
              item(keeper, lot.item()),
              lot.pieces(),
              keeper.own(lot.freezer()),
              lot.arrived(),
              lot.keeps()));
    }
    for (PlacedLot lot : own.larder().placed()) {
      placed.add(
          new PlacedLot(
              owned(keeper, lot.id()),
              item(keeper, lot.item()),
              lot.pieces(),
              lot.arrivesEarliest(),
              lot.arrivesLatest()));
    }
  }

  private String owned(Keeper keeper, String name) {
    keeperOf.put(keeper.own(name), keeper.name());
    return keeper.own(name);
  }

  /** What no chosen supplier sells is known to its keeper only. */
  private Item item(Keeper keeper, Item item) {
    boolean sold =
        Stream.concat(host.scenario().suppliers().stream(), keeper.scenario().suppliers().stream())
            .flatMap(supplier -> supplier.sheet().packs().stream())
            .anyMatch(pack -> pack.item().id().equals(item.id()));
    return sold
        ? same(item)
        : new Item(
            keeper.own(item.id()),
            item.name(),
            item.kind(),
            item.sizeWord(),
            item.grams(),
            item.litres());
  }
}
