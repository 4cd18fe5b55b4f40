package io.frostlot.app;

import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Percent;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is wished for in {@code policy}, money apart: adequacy, margins, how freezers are used. */
record PolicyWishes(World world) {
  private static final int COVER_DAYS = 3;
  private static final int SECOND_FREEZER_DAYS = 14;
  private static final Percent MARGIN = Percent.of("10");

  Stream<Wish> all() {
    boolean several =
        world.scenario().larder().freezers().stream().filter(Freezer::inUse).count() > 1;
    Stream<Wish> always = Stream.of(adequacy(), cover(), margin());
    Stream<Wish> second = several ? Stream.of(secondFreezer()) : Stream.empty();
    boolean moved = policy().moves().everyDays() > 0;
    Stream<Wish> moves = moved ? Stream.of(moves()) : Stream.empty();
    return Stream.of(always, second, moves, Stream.of(check())).flatMap(some -> some);
  }

  private Policy policy() {
    return world.scenario().policy();
  }

  /** With a policy where it is wished for and another where it is not. */
  static Wish of(World world, Wish.Bearing bearing, Function<Boolean, Policy> policy) {
    Scenario scenario = world.scenario();
    return new Wish(
        bearing,
        world.withScenario(scenario.withPolicy(policy.apply(true))),
        world.withScenario(scenario.withPolicy(policy.apply(false))));
  }

  private Wish adequacy() {
    Policy.Adequacy band = policy().adequacy();
    return of(
        world,
        Wish.Bearing.of(
                "adequacy, %s to %s".formatted(band.least(), band.most()), band.asked(), "adequacy")
            .sake(ExplainFinding.Sake.ANIMAL),
        asked -> policy().withAdequacy(new Policy.Adequacy(asked, band.least(), band.most())));
  }

  private Wish cover() {
    Policy.Safety own = policy().safety();
    boolean asked = own.coverDays() > 0;
    int days = asked ? own.coverDays() : COVER_DAYS;
    return of(
        world,
        Wish.Bearing.of(days + " days of cover", asked, "safety-cover"),
        wanted ->
            policy()
                .withSafety(
                    new Policy.Safety(wanted ? days : 0, own.margin(), own.secondFreezer())));
  }

  private Wish margin() {
    Policy.Safety own = policy().safety();
    boolean asked = !own.margin().isZero();
    Percent share = asked ? own.margin() : MARGIN;
    return of(
        world,
        Wish.Bearing.of("a margin of " + share, asked, "safety-margin"),
        wanted ->
            policy()
                .withSafety(
                    new Policy.Safety(
                        own.coverDays(), wanted ? share : Percent.ZERO, own.secondFreezer())));
  }

  private Wish secondFreezer() {
    Policy.Safety own = policy().safety();
    boolean asked = own.secondFreezer().days() > 0;
    int days = asked ? own.secondFreezer().days() : SECOND_FREEZER_DAYS;
    return of(
        world,
        Wish.Bearing.of("food for " + days + " days in a second freezer", asked, "second-freezer"),
        wanted ->
            policy()
                .withSafety(own.withSecondFreezer(new Policy.SecondFreezer(wanted ? days : 0))));
  }

  private Wish moves() {
    return new Wish(
        Wish.Bearing.of("moving prey between freezers", true).freer(Wish.Freer.WITH),
        world,
        world.withoutMoves());
  }

  private Wish check() {
    boolean asked = policy().freezerCheck() == Policy.FreezerCheck.AFTER_DELIVERY;
    return of(
        world,
        Wish.Bearing.of("room for a delivery before that day's meals are eaten", asked),
        wanted ->
            policy()
                .withFreezerCheck(
                    wanted ? Policy.FreezerCheck.AFTER_DELIVERY : Policy.FreezerCheck.END_OF_DAY));
  }
}
