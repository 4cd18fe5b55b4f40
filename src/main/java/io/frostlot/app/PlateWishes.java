package io.frostlot.app;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.PieceLimit;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.World;
import io.frostlot.units.Grams;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** What animals should have on the plate, and what of it they may get. */
record PlateWishes(World world) {
  private static final int MEALS_A_CHANGE = 4;

  Stream<Wish> all() {
    return Stream.of(
            Stream.of(changes()), shares(), never(), Stream.of(largest(), grams(), pieces()))
        .flatMap(some -> some);
  }

  /** Those of the animals or, where none has any, one change of kind or size in some meals. */
  private Wish changes() {
    World without =
        plates(plate -> plate.change() instanceof Plate.Never ? plate : changing(plate));
    boolean asked = !without.equals(world);
    Plate.Change seldom = new Plate.Seldom(MEALS_A_CHANGE, Set.of());
    return new Wish(
        Wish.Bearing.of(
                asked
                    ? "what animals have had before kept to, or seldom changed"
                    : "at most one change of kind or size in " + MEALS_A_CHANGE + " meals",
                asked,
                "seldom-changes")
            .sake(asked ? ExplainFinding.Sake.ANIMAL : ExplainFinding.Sake.KEEPER),
        asked
            ? world
            : plates(
                plate ->
                    plate.change() instanceof Plate.Never
                        ? plate
                        : new Plate(plate.largestShares(), seldom)),
        without);
  }

  private static Plate changing(Plate plate) {
    return new Plate(plate.largestShares(), new Plate.Free());
  }

  private Stream<Wish> shares() {
    World without = plates(plate -> new Plate(new TreeMap<>(), plate.change()));
    return without.equals(world)
        ? Stream.empty()
        : Stream.of(
            new Wish(
                Wish.Bearing.of("largest shares of other kinds of prey", true, "kind-shares"),
                world,
                without));
  }

  private World plates(UnaryOperator<Plate> change) {
    return Loosened.animals(
        world, it -> it.withDiet(it.diet().withPlate(change.apply(it.diet().plate()))));
  }

  private Stream<Wish> never() {
    boolean asked = animals().anyMatch(it -> it.diet().plate().change() instanceof Plate.Never);
    return asked
        ? Stream.of(
            otherMeals(
                "nothing but what animals had last, where they never change",
                it ->
                    it.diet().plate().change() instanceof Plate.Never
                        ? it.withDiet(it.diet().withPlate(changing(it.diet().plate())))
                        : it,
                ExplainFinding.Sake.ANIMAL))
        : Stream.empty();
  }

  private Wish largest() {
    return otherMeals(
        "the largest piece of each animal",
        it -> it.withDiet(it.diet().withLargest(new PieceLimit.OfGrams(Grams.UNLIMITED))),
        ExplainFinding.Sake.ANIMAL);
  }

  private Wish grams() {
    return otherMeals(
        "the least and most grams of a meal, against a tenth of its target less and more",
        it -> it.withProgramme(it.programme().withSize(it.programme().size().wider())),
        ExplainFinding.Sake.ANIMAL);
  }

  private Wish pieces() {
    return otherMeals(
        "the most pieces of a meal, against one more",
        it -> it.withDiet(it.diet().withMostPieces(it.diet().mostPieces() + 1)),
        ExplainFinding.Sake.KEEPER);
  }

  private Stream<Animal> animals() {
    return world.scenario().collection().animals().stream();
  }

  private Wish otherMeals(String says, UnaryOperator<Animal> change, ExplainFinding.Sake sake) {
    return MealWishes.otherMeals(world, Wish.Bearing.of(says, true).sake(sake), change);
  }
}
