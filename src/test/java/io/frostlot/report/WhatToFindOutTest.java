package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Changes;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class WhatToFindOutTest {
  private final World world = HandmadeRoom.world();
  private final Answer.WithPlan shown =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95));

  private static Guess guess(Guess.Kind kind, String of, double low, double mean, double high) {
    return new Guess(kind, of, new Guess.Ends(low, mean, high));
  }

  private Guesses.End end(long moved, Guesses.Sure sure, Changes.OrderChange... changes) {
    Difference.Side side = Difference.Side.of(new Solved(world, shown));
    return new Guesses.End(side, List.of(changes), Money.of(moved), sure);
  }

  private String said(Guesses guesses) {
    Outcome outcome = Outcome.of(world, shown.plan().plan());
    return new PlanReport(HandmadeRoom.inputs(world), shown, outcome, List.of())
        .text(guesses, 100)
        .replaceAll("\\s+", " ");
  }

  @Test
  void both_ends_of_a_guess_are_said_and_those_that_change_most_first() {
    Outline.Ordered order =
        new Outline.Ordered(
            "hillside",
            HandmadeRoom.FIRST.plusDays(6),
            HandmadeRoom.FIRST.plusDays(9),
            new TreeMap<>(java.util.Map.of("Hopper x25", 3)),
            Money.of("80.00"));
    Guesses.Tried little =
        new Guesses.Tried(
            guess(Guess.Kind.SKIPPED_MEALS, "", 0, 0, 10),
            end(0, Guesses.Sure.PROVEN),
            end(5, Guesses.Sure.PROVEN, new Changes.Dropped(order)));
    Guesses.Tried much =
        new Guesses.Tried(
            guess(Guess.Kind.PIECE_GRAMS, "hillside/Hopper", 8.5, 10, 11.5),
            end(40, Guesses.Sure.PERHAPS, new Changes.Added(order)),
            end(0, Guesses.Sure.PROVEN));
    assertThat(said(new Guesses(List.of(little, much), List.of())))
        .contains(
            "WHAT TO FIND OUT",
            "- grams of a piece of Hopper, 10 g assumed: 8.5 g: Added: Hillside Hatch (invented),"
                + " order by Sun 12 Jan 2031: 3 x Hopper, pack of 25; 80.00 EUR. Perhaps: this is not"
                + " proven best. 11.5 g: The same next orders. - meals that are refused, 0 %"
                + " assumed: 10 %: Dropped: Hillside Hatch");
  }

  /** Unmet meals of a plan that was looked for too shortly are no change. */
  @Test
  void of_an_end_that_is_not_known_no_change_is_told() {
    Guess chest = guess(Guess.Kind.FREEZER_LITRES, "Chest", 2.7, 3, 3.3);
    Guesses.End unknown = end(30, Guesses.Sure.PERHAPS).unknown();
    assertThat(
            said(
                new Guesses(
                    List.of(new Guesses.Tried(chest, unknown, end(5, Guesses.Sure.PERHAPS))),
                    List.of())))
        .contains(
            "- litres of Chest, 3 l assumed: 2.7 l: Not known in the time: what was found is worse"
                + " in meals or soft rules, and not proven best. 3.3 l:");
    assertThat(
            said(
                new Guesses(
                    List.of(new Guesses.Tried(chest, unknown, end(0, Guesses.Sure.PROVEN))),
                    List.of())))
        .contains("- not known in the time: litres of Chest.")
        .doesNotContain("without effect");
  }

  @Test
  void what_makes_no_difference_and_what_was_not_tried_are_named() {
    Guess ash = guess(Guess.Kind.ANIMAL_GRAMS, "Amber", 378, 420, 462);
    Guess chest = guess(Guess.Kind.FREEZER_LITRES, "Chest", 2.7, 3, 3.3);
    Guess prices = guess(Guess.Kind.OLD_PRICES, "corner", 95, 100, 105);
    Guess later = guess(Guess.Kind.LATER_PRICES, "", 90, 100, 110);
    Guess prey = guess(Guess.Kind.PREY_LITRES, "", 85, 100, 115);
    assertThat(
            said(
                new Guesses(
                    List.of(
                        new Guesses.Tried(
                            ash, end(0, Guesses.Sure.PROVEN), end(0, Guesses.Sure.PROVEN))),
                    List.of(chest, prices, later, prey))))
        .contains(
            "No guess that was tried is known to change the next orders.",
            "- without effect: grams of Amber.",
            "- not tried: litres of Chest; prices of Corner Shop (invented), an old"
                + " sheet; prices after the planning days; and 1 more.");
  }
}
