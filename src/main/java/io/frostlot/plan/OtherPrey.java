package io.frostlot.plan;

import io.frostlot.units.SizeBand;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An animal that never changes its prey and is to get another kind or size all the same, since
 * nothing that it keeps to would do.
 *
 * @param kept what it keeps to
 * @param given what it is to get in its place, at least one
 * @param meals of those, at least 1
 * @param met all meals that it is to get
 */
public record OtherPrey(String animal, SizeBand kept, List<SizeBand> given, int meals, int met) {
  private static final Comparator<SizeBand> IN_ORDER =
      Comparator.comparing(SizeBand::kind).thenComparing(SizeBand::doubling);

  public OtherPrey {
    given = List.copyOf(given);
  }

  /** All such animals of a plan, by name. */
  public static List<OtherPrey> of(World world, Plan plan) {
    Map<String, Feeding> feedings = plan.feedingsByMeal();
    return MealRuns.mealsByAnimal(world).values().stream()
        .flatMap(
            meals ->
                meals.get(0).meal().prey().kept().stream()
                    .flatMap(kept -> of(kept, meals, feedings).stream()))
        .toList();
  }

  /** What should be looked at of all of them. */
  public static List<String> sentences(World world, Plan plan) {
    return of(world, plan).stream().map(OtherPrey::sentence).toList();
  }

  private static Optional<OtherPrey> of(
      SizeBand kept, List<Demand> meals, Map<String, Feeding> feedings) {
    List<SizeBand> given =
        meals.stream()
            .flatMap(demand -> Stream.ofNullable(feedings.get(demand.meal().id())))
            .map(feeding -> feeding.option().band())
            .toList();
    List<SizeBand> others = given.stream().filter(band -> !band.equals(kept)).toList();
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new OtherPrey(
                meals.get(0).meal().eater(),
                kept,
                others.stream().distinct().sorted(IN_ORDER).toList(),
                others.size(),
                given.size()));
  }

  /** What should be looked at. */
  String sentence() {
    return "%s keeps to %s (changes: never), and at %s of %s is to get %s: nothing that it keeps to"
            .formatted(
                animal,
                kept.inWords(),
                meals,
                met == 1 ? "1 meal" : met + " meals",
                given.stream().map(SizeBand::inWords).collect(Collectors.joining(", ")))
        + " would do. If it refuses that, it is a case for a vet who knows reptiles.";
  }
}
