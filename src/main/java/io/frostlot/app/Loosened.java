package io.frostlot.app;

import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slots;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Litres;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A world in which one rule is away, or asks for one unit less, all else the same.
 *
 * @param says what is changed, such as "without days away"
 */
record Loosened(String says, World world) {
  private static final Litres ANY = new Litres(100_000_000_000L);
  private static final int MORE_DAYS = 7;

  /** One for each rule that can bind in a world. */
  static List<Loosened> of(World world) {
    Scenario scenario = world.scenario();
    List<Loosened> all = new ArrayList<>();
    all.add(new Loosened("with any room in the freezers", freezers(world, it -> room(it, ANY))));
    all.add(
        new Loosened(
            "with one litre more in each freezer",
            freezers(world, it -> room(it, it.usable().plus(new Litres(1_000_000))))));
    all.add(new Loosened("with prey that keeps a week longer", freezers(world, Loosened::longer)));
    if (!scenario.away().isEmpty()) {
      all.add(new Loosened("without days away", never(world)));
    }
    Policy policy = scenario.policy();
    if (!policy.safety().equals(Policy.Safety.NONE)) {
      all.add(new Loosened("without safety margins", careless(world)));
    }
    if (scenario.suppliers().stream().anyMatch(it -> !it.terms().minimum().from().isZero())) {
      all.add(new Loosened("without minimum orders", suppliers(world, Loosened::anyOrder)));
    }
    boolean scarce =
        scenario.suppliers().stream()
            .flatMap(it -> it.sheet().packs().stream())
            .anyMatch(pack -> !pack.available().equals(Pack.Availability.ANY));
    if (scarce) {
      all.add(new Loosened("with as many packs as one likes", suppliers(world, Loosened::plenty)));
    }
    return all;
  }

  private static World freezers(World world, UnaryOperator<Freezer> change) {
    Scenario.Larder larder = world.scenario().larder();
    return world.withLarder(
        new Scenario.Larder(
            larder.freezers().stream().map(change).toList(), larder.stock(), larder.placed()));
  }

  private static Freezer room(Freezer freezer, Litres litres) {
    return new Freezer(freezer.name(), litres, freezer.kind(), freezer.life(), freezer.inUse());
  }

  private static Freezer longer(Freezer freezer) {
    Freezer.Life life = freezer.life();
    return new Freezer(
        freezer.name(),
        freezer.usable(),
        freezer.kind(),
        new Freezer.Life(life.days() + MORE_DAYS, life.smallBelow(), life.smallDays() + MORE_DAYS),
        freezer.inUse());
  }

  private static World in(World world, Scenario scenario) {
    return new World(
        scenario, world.demands(), world.slots(), world.items(), world.joint(), world.pledges());
  }

  private static World never(World world) {
    Scenario scenario = world.scenario();
    return in(
            world,
            new Scenario(
                scenario.name(),
                scenario.planning(),
                scenario.currency(),
                scenario.collection(),
                scenario.larder(),
                scenario.suppliers(),
                List.of(),
                scenario.policy()))
        .withSlots(
            scenario.suppliers().stream()
                .flatMap(it -> Slots.of(it, scenario.planning(), List.of()).stream())
                .sorted()
                .toList());
  }

  private static World careless(World world) {
    Scenario scenario = world.scenario();
    Policy policy = scenario.policy();
    return in(
        world,
        new Scenario(
            scenario.name(),
            scenario.planning(),
            scenario.currency(),
            scenario.collection(),
            scenario.larder(),
            scenario.suppliers(),
            scenario.away(),
            new Policy(
                policy.demand(),
                policy.tail(),
                policy.freezerCheck(),
                policy.charges(),
                Policy.Safety.NONE)));
  }

  private static World suppliers(World world, UnaryOperator<Supplier> change) {
    Scenario scenario = world.scenario();
    return in(world, scenario.withSuppliers(scenario.suppliers().stream().map(change).toList()));
  }

  private static Supplier anyOrder(Supplier from) {
    OrderTerms terms = from.terms();
    return new Supplier(
        from.id(),
        from.name(),
        from.sheet(),
        new OrderTerms(
            terms.discounts(), OrderTerms.Threshold.NONE, terms.freeShipping(), terms.tax()),
        from.boxing(),
        from.shipping(),
        from.delivery());
  }

  private static Supplier plenty(Supplier from) {
    Supplier.PriceSheet sheet = from.sheet();
    List<Pack> packs =
        sheet.packs().stream()
            .map(
                it ->
                    new Pack(
                        it.item(), it.pieces(), it.price(), Pack.Availability.ANY, it.packed()))
            .toList();
    return new Supplier(
        from.id(),
        from.name(),
        new Supplier.PriceSheet(sheet.dated(), packs, sheet.breaks(), sheet.sales()),
        from.terms(),
        from.boxing(),
        from.shipping(),
        from.delivery());
  }
}
