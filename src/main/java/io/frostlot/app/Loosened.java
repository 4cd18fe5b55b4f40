package io.frostlot.app;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Slots;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Litres;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A world in which one rule is away, or asks for one unit less, all else the same.
 *
 * @param says what is changed, such as "without days away"
 * @param rules ids of the rules that give way otherwise and are asked for no more
 */
record Loosened(String says, Set<String> rules, World world) {
  private static final Litres ANY = new Litres(100_000_000_000L);
  private static final int MORE_DAYS = 7;
  private static final Set<String> MARGINS =
      Set.of("safety-cover", "safety-margin", "second-freezer");

  private Loosened(String says, World world) {
    this(says, Set.of(), world);
  }

  /** One for each rule that can bind in a world. */
  static List<Loosened> of(World world) {
    Scenario scenario = world.scenario();
    List<Loosened> all = new ArrayList<>();
    all.add(new Loosened("with any room in the freezers", freezers(world, Loosened::ofAnySize)));
    all.add(
        new Loosened(
            "with one litre more in each freezer",
            freezers(world, it -> it.withRoom(litres -> litres.plus(new Litres(1_000_000))))));
    all.add(new Loosened("with prey that keeps a week longer", freezers(world, Loosened::longer)));
    if (!scenario.away().isEmpty()) {
      all.add(new Loosened("without days away", neverAway(world)));
    }
    Policy policy = scenario.policy();
    if (!policy.safety().equals(Policy.Safety.NONE)) {
      all.add(new Loosened("without safety margins", MARGINS, careless(world)));
    }
    Stream.of(
            new Loosened(
                "with anything on the plate that an animal accepts",
                Set.of("kind-shares", "seldom-changes"),
                animals(world, Loosened::anyPlate)),
            new Loosened(
                "without limits on late meals",
                Set.of("late-limits"),
                animals(world, Loosened::anyLateness)))
        .filter(wish -> !wish.world().equals(world))
        .forEach(all::add);
    if (!policy.ordering().budget().isNone()) {
      all.add(new Loosened("without the budget", Set.of("budget"), unlimited(world)));
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

  /** The world without any of these rules. */
  static World all(World world) {
    World all = freezers(world, it -> ofAnySize(longer(it)));
    World any = animals(unlimited(careless(neverAway(all))), it -> anyPlate(anyLateness(it)));
    return suppliers(any, it -> plenty(anyOrder(it)));
  }

  /** Other wishes for animals; what it could eat stays as it is. */
  static World animals(World world, UnaryOperator<Animal> change) {
    Scenario scenario = world.scenario();
    List<Animal> changed = scenario.collection().animals().stream().map(change).toList();
    return world.withScenario(scenario.withAnimals(changed));
  }

  static Animal anyLateness(Animal animal) {
    return animal.withProgramme(animal.programme().withoutLateLimits());
  }

  static Animal anyPlate(Animal animal) {
    Plate.Change change = animal.diet().plate().change();
    Plate.Change hard = change instanceof Plate.Never ? change : new Plate.Free();
    return animal.withDiet(animal.diet().withPlate(new Plate(new TreeMap<>(), hard)));
  }

  static World freezers(World world, UnaryOperator<Freezer> change) {
    Scenario scenario = world.scenario();
    List<Freezer> changed = scenario.larder().freezers().stream().map(change).toList();
    return world.withScenario(scenario.withLarder(scenario.larder().withFreezers(changed)));
  }

  static Freezer ofAnySize(Freezer freezer) {
    return freezer.withRoom(litres -> ANY);
  }

  private static Freezer longer(Freezer freezer) {
    Freezer.Life life = freezer.life();
    return freezer.withLife(
        new Freezer.Life(
            life.days() + MORE_DAYS, life.smallBelow(), life.smallDays() + MORE_DAYS, life.best()));
  }

  static World neverAway(World world) {
    Scenario there = world.scenario().withAway(List.of());
    Stream<Slot> more =
        there.suppliers().stream()
            .flatMap(it -> Slots.of(it, there.planning(), there.away()).stream());
    return world
        .withScenario(there)
        .withSlots(Stream.concat(world.slots().stream(), more).distinct().sorted().toList());
  }

  private static World careless(World world) {
    Scenario scenario = world.scenario();
    return world.withScenario(
        scenario.withPolicy(scenario.policy().withSafety(Policy.Safety.NONE)));
  }

  /** Orders may cost what they will. */
  static World unlimited(World world) {
    Scenario scenario = world.scenario();
    Policy policy = scenario.policy();
    return world.withScenario(
        scenario.withPolicy(policy.withOrdering(policy.ordering().withBudget(Policy.Budget.NONE))));
  }

  private static World suppliers(World world, UnaryOperator<Supplier> change) {
    Scenario scenario = world.scenario();
    return world.withScenario(
        scenario.withSuppliers(scenario.suppliers().stream().map(change).toList()));
  }

  private static Supplier anyOrder(Supplier from) {
    return from.withTerms(from.terms().withMinimum(OrderTerms.Threshold.NONE));
  }

  private static Supplier plenty(Supplier from) {
    return from.withSheet(
        from.sheet()
            .withPacks(
                from.sheet().packs().stream()
                    .map(pack -> pack.withAvailable(Pack.Availability.ANY))
                    .toList()));
  }
}
