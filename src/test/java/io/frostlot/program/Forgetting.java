package io.frostlot.program;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Plate;
import io.frostlot.oracle.Feature;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Something typed that no rule of the program is about, since meals, deliveries and freezers are
 * made ready with it: and the program of a world where it was forgotten.
 *
 * @param features of worlds that have it
 */
record Forgetting(Set<Feature> features, Function<World, Program> program) {

  static final Map<String, Forgetting> ALL =
      new TreeMap<>(
          Map.of(
              "handling",
              ofMeals(Feature.HANDLING, animal -> animal.withHandling(List.of())),
              "feeding weekdays",
              ofMeals(
                  Feature.FEEDING_DAYS,
                  animal ->
                      animal.withFeedingDays(
                          FeedingDays.ANY.withAway(animal.feedingDays().away()))),
              "days without feeding",
              ofMeals(
                  Feature.AWAY,
                  animal -> animal.withFeedingDays(animal.feedingDays().withAway(List.of()))),
              "an animal never changes",
              ofMeals(Feature.NEVER_CHANGES, Forgetting::changing),
              "days without receiving",
              of(Feature.AWAY, Forgetting::alwaysReceiving),
              "prey is not sealed from food",
              of(Feature.FOOD_BESIDE, world -> with(world, Forgetting::opened)),
              "less room beside food on some days",
              of(Feature.FOOD_BESIDE, world -> with(world, Forgetting::roomy)),
              "adequacy over eight weeks",
              new Forgetting(
                  Set.of(Feature.ADEQUACY, Feature.EIGHT_WEEKS), Forgetting::fourInARowOnly)));

  private static Forgetting of(Feature feature, UnaryOperator<World> forgotten) {
    return new Forgetting(Set.of(feature), world -> Rules.program(forgotten.apply(world)));
  }

  /** The meals are those of animals of which something is not known. */
  private static Forgetting ofMeals(Feature feature, UnaryOperator<Animal> forgotten) {
    return of(
        feature,
        world -> {
          List<Animal> animals = world.scenario().collection().animals();
          List<Animal> others = animals.stream().map(forgotten).toList();
          return world.withMeals(World.of(world.scenario().withAnimals(others)).meals());
        });
  }

  private static Animal changing(Animal animal) {
    Plate plate = animal.diet().plate();
    Plate.Change change = plate.change() instanceof Plate.Never ? new Plate.Free() : plate.change();
    return animal.withDiet(animal.diet().withPlate(new Plate(plate.largestShares(), change)));
  }

  /** With the deliveries that would come on days away. */
  private static World alwaysReceiving(World world) {
    List<Slot> known = World.of(world.scenario()).slots();
    Stream<Slot> others =
        World.of(world.scenario().withAway(List.of())).slots().stream()
            .filter(slot -> !known.contains(slot));
    return world.withSlots(Stream.concat(world.slots().stream(), others).sorted().toList());
  }

  private static World with(World world, UnaryOperator<Freezer> change) {
    Scenario scenario = world.scenario();
    List<Freezer> others =
        scenario.larder().freezers().stream()
            .map(
                freezer ->
                    freezer.access().company() == Freezer.Company.FOOD
                        ? change.apply(freezer)
                        : freezer)
            .toList();
    return world.withScenario(scenario.withLarder(scenario.larder().withFreezers(others)));
  }

  private static Freezer opened(Freezer freezer) {
    Freezer.Access access = freezer.access();
    return freezer.withAccess(new Freezer.Access(true, access.company(), access.limits()));
  }

  private static Freezer roomy(Freezer freezer) {
    Freezer.Access access = freezer.access();
    return freezer.withAccess(new Freezer.Access(access.inUse(), access.company(), List.of()));
  }

  /** No eight weeks fit into the days that adequacy is told of. */
  private static Program fourInARowOnly(World world) {
    Program program =
        LevelByLevel.program(world, Grain.DAYS, rule -> !rule.id().equals(Adequacy.ID));
    Period planning = world.scenario().planning();
    Period shorter = new Period(planning.from(), planning.from().plusDays(54));
    new Adequacy(world.withScenario(world.scenario().withPlanning(shorter))).impose(program);
    return program;
  }
}
