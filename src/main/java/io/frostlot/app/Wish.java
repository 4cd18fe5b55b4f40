package io.frostlot.app;

import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A rule that gives way, or a reckoned charge: the world where it is asked for and the one where it
 * is not, all else the same. What the scenario does not ask for is asked for in a usual measure.
 *
 * @param says such as "3 days of cover"
 * @param asked does the scenario ask for it?
 */
record Wish(String says, boolean asked, World with, World without) {
  private static final int COVER_DAYS = 3;
  private static final int SECOND_FREEZER_DAYS = 14;
  private static final Percent MARGIN = Percent.of("10");
  private static final int MEALS_A_CHANGE = 4;
  private static final int LATE_MEALS = 2;
  private static final BigDecimal EFFORT = new BigDecimal("0.05");
  private static final BigDecimal OF_DEAREST = new BigDecimal("0.9");

  /**
   * One for each that there is.
   *
   * @param dearest order of the best plan: nine tenths of it are the usual measure of a budget, a
   *     twentieth that of the effort of an order
   */
  static List<Wish> of(World world, Money dearest) {
    Policy policy = world.scenario().policy();
    Policy.Adequacy band = policy.adequacy();
    List<Wish> all = new ArrayList<>();
    all.add(
        of(
            "adequacy, %s to %s".formatted(band.least(), band.most()),
            world,
            band.asked(),
            asked -> policy.withAdequacy(new Policy.Adequacy(asked, band.least(), band.most()))));
    all.add(cover(world, policy));
    all.add(margin(world, policy));
    if (world.scenario().larder().freezers().stream().filter(Freezer::inUse).count() > 1) {
      all.add(secondFreezer(world, policy));
    }
    all.add(plates(world));
    all.add(lateMeals(world));
    all.add(budget(world, dearest));
    all.add(effort(world, dearest));
    return all;
  }

  private static Wish of(
      String says, World world, boolean asked, Function<Boolean, Policy> policy) {
    Scenario scenario = world.scenario();
    return new Wish(
        says,
        asked,
        world.withScenario(scenario.withPolicy(policy.apply(true))),
        world.withScenario(scenario.withPolicy(policy.apply(false))));
  }

  private static Wish cover(World world, Policy policy) {
    Policy.Safety own = policy.safety();
    boolean asked = own.coverDays() > 0;
    int days = asked ? own.coverDays() : COVER_DAYS;
    return of(
        days + " days of cover",
        world,
        asked,
        wanted ->
            policy.withSafety(
                new Policy.Safety(wanted ? days : 0, own.margin(), own.secondFreezer())));
  }

  private static Wish margin(World world, Policy policy) {
    Policy.Safety own = policy.safety();
    boolean asked = !own.margin().isZero();
    Percent share = asked ? own.margin() : MARGIN;
    return of(
        "a margin of " + share,
        world,
        asked,
        wanted ->
            policy.withSafety(
                new Policy.Safety(
                    own.coverDays(), wanted ? share : Percent.ZERO, own.secondFreezer())));
  }

  private static Wish secondFreezer(World world, Policy policy) {
    Policy.Safety own = policy.safety();
    boolean asked = own.secondFreezer().days() > 0;
    int days = asked ? own.secondFreezer().days() : SECOND_FREEZER_DAYS;
    return of(
        "food for " + days + " days in a second freezer",
        world,
        asked,
        wanted ->
            policy.withSafety(own.withSecondFreezer(new Policy.SecondFreezer(wanted ? days : 0))));
  }

  /** Those of the animals or, where none has any, one change of kind or size in some meals. */
  private static Wish plates(World world) {
    World without = Loosened.animals(world, Loosened::anyPlate);
    boolean asked = !without.equals(world);
    Plate seldom = new Plate(new TreeMap<>(), new Plate.Seldom(MEALS_A_CHANGE, Set.of()));
    return new Wish(
        asked
            ? "what animals should have on the plate"
            : "at most one change of kind or size in " + MEALS_A_CHANGE + " meals",
        asked,
        asked
            ? world
            : Loosened.animals(world, animal -> animal.withDiet(animal.diet().withPlate(seldom))),
        without);
  }

  private static Wish lateMeals(World world) {
    World without =
        Loosened.animals(
            world, animal -> animal.withProgramme(animal.programme().withoutLateLimits()));
    boolean asked = !without.equals(world);
    List<Lateness> few = List.of(new Lateness(Lateness.Counted.MEALS, LATE_MEALS));
    return new Wish(
        asked ? "limits on late meals" : "at most " + LATE_MEALS + " late meals of an animal",
        asked,
        asked
            ? world
            : Loosened.animals(
                world, animal -> animal.withProgramme(animal.programme().withLateLimits(few))),
        without);
  }

  private static Wish budget(World world, Money dearest) {
    Policy policy = world.scenario().policy();
    Policy.Budget own = policy.ordering().budget();
    Money most = dearest.times(OF_DEAREST, world.decimals());
    Policy.Budget budget = own.isNone() ? new Policy.Budget(most, Money.ZERO, Money.ZERO) : own;
    return of(
        own.isNone()
            ? "at most %s an order".formatted(most.toText(world.decimals()))
            : "the budget",
        world,
        !own.isNone(),
        asked ->
            policy.withOrdering(policy.ordering().withBudget(asked ? budget : Policy.Budget.NONE)));
  }

  private static Wish effort(World world, Money dearest) {
    Policy policy = world.scenario().policy();
    Policy.Charges own = policy.charges();
    boolean asked = !own.order().isZero() || !own.deliveryDay().isZero();
    Money order = asked ? own.order() : dearest.times(EFFORT, world.decimals());
    return of(
        "effort reckoned at %s an order".formatted(order.toText(world.decimals())),
        world,
        asked,
        wanted ->
            policy.withCharges(
                wanted
                    ? own.withEffort(order, own.deliveryDay())
                    : own.withEffort(Money.ZERO, Money.ZERO)));
  }
}
