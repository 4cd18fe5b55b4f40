package io.frostlot.app;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.Demand;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** When animals are fed: what keeps meals from a day, and how far they may move. */
record MealWishes(World world) {
  private static final int LATE_MEALS = 2;
  private static final int WEEK = 7;

  Stream<Wish> all() {
    return Stream.concat(
        Stream.of(lateMeals()),
        Stream.of(
                where(
                    it -> it.programme().days().early() + it.programme().days().late() > 0,
                    "meals that may come early or late",
                    it -> leeway(it, 0, 0)),
                where(
                    it -> !it.handling().isEmpty(),
                    Wish.Bearing.of("no meal on the three days before an animal is handled", true)
                        .sake(ExplainFinding.Sake.ANIMAL),
                    it -> it.withHandling(List.of())),
                where(
                    it -> it.programme().schedule() instanceof Schedule.Weekdays,
                    "feeding weekdays of animals, against any day nearest to them",
                    MealWishes::anyDay),
                where(
                    it -> it.feedingDays().weekdays().size() < WEEK,
                    "feeding weekdays of rooms and racks",
                    MealWishes::anyWeekday),
                where(
                    it -> !it.feedingDays().away().isEmpty(),
                    "days away on which nobody feeds",
                    it -> it.withFeedingDays(it.feedingDays().withAway(List.of()))))
            .flatMap(some -> some));
  }

  private Wish lateMeals() {
    World without = Loosened.animals(world, Loosened::anyLateness);
    boolean asked = !without.equals(world);
    List<Lateness> few = List.of(new Lateness(Lateness.Counted.MEALS, LATE_MEALS));
    String says =
        asked ? "limits on late meals" : "at most " + LATE_MEALS + " late meals of an animal";
    return new Wish(
        Wish.Bearing.of(says, asked, "late-limits"),
        asked
            ? world
            : Loosened.animals(
                world, animal -> animal.withProgramme(animal.programme().withLateLimits(few))),
        without);
  }

  private Stream<Wish> where(Predicate<Animal> some, String says, UnaryOperator<Animal> change) {
    return where(some, Wish.Bearing.of(says, true), change);
  }

  private Stream<Wish> where(
      Predicate<Animal> some, Wish.Bearing bearing, UnaryOperator<Animal> change) {
    return world.scenario().collection().animals().stream().noneMatch(some)
        ? Stream.empty()
        : Stream.of(otherMeals(world, bearing, change));
  }

  /**
   * Where animals without the wish have other meals; where these turn out to be the same, the world
   * is the same.
   */
  static Wish otherMeals(World world, Wish.Bearing bearing, UnaryOperator<Animal> change) {
    List<Animal> changed = world.scenario().collection().animals().stream().map(change).toList();
    World other = projected(world, world.scenario().withAnimals(changed));
    World without = other.demands().equals(world.demands()) ? world : other;
    return new Wish(bearing.freer(FreerMeals.of(world, without)), world, without);
  }

  /**
   * The meals of another scenario. Of the days after only those that the world has too: where
   * nothing would do as such a meal it is left out there, and to buy it here would cost more.
   */
  static World projected(World world, Scenario other) {
    World all = world.projectedAgain(other);
    Set<String> meals = world.demandsById().keySet();
    List<Demand> some = new ArrayList<>(all.demands());
    return some.removeIf(demand -> demand.tail() && !meals.contains(demand.meal().id()))
        ? all.withDemands(some)
        : all;
  }

  private static Animal leeway(Animal animal, int early, int late) {
    Animal.Leeway own = animal.programme().days();
    return animal.withProgramme(
        animal.programme().withDays(new Animal.Leeway(early, late, own.limits())));
  }

  private static Animal anyWeekday(Animal animal) {
    FeedingDays own = animal.feedingDays();
    return animal.withFeedingDays(
        new FeedingDays(own.room(), FeedingDays.ANY.weekdays(), own.away()));
  }

  /** A meal may come on all days that are no nearer to another feeding day. */
  private static Animal anyDay(Animal animal) {
    if (!(animal.programme().schedule() instanceof Schedule.Weekdays weekdays)) {
      return animal;
    }
    Animal.Leeway own = animal.programme().days();
    int between = WEEK / weekdays.weekdays().size();
    return leeway(
        animal, Math.max(own.early(), (between - 1) / 2), Math.max(own.late(), between / 2));
  }
}
