package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaveWayTest {
  private static final LocalDate FIRST = HandmadeRoom.FIRST;

  private static String letter(Shortfall... shortfalls) {
    return letter(HandmadeRoom.world(), shortfalls);
  }

  private static String letter(World world, Shortfall... shortfalls) {
    Books books = HandmadePlan.books(world);
    List.of(shortfalls).forEach(books::shortfall);
    Answer.Judged judged = new Answer.Judged(HandmadePlan.plan(world), books);
    return new PlanReport(
            HandmadeRoom.inputs(world),
            new Answer.BestFound(judged, OptionalDouble.empty()),
            Outcome.of(world, judged.plan()),
            List.of())
        .text(80)
        .replaceAll("\\s+", " ");
  }

  private static Shortfall.Part part(String of, int lastDay, long amount) {
    return new Shortfall.Part(of, new Period(FIRST, FIRST.plusDays(lastDay)), amount);
  }

  @Test
  void a_rule_is_said_with_where_it_falls_short() {
    assertThat(
            letter(
                Shortfall.counted(
                    "safety-cover",
                    Shortfall.Unit.PIECE_DAYS,
                    List.of(part("hillside/Hopper", 2, 6))),
                Shortfall.counted(
                    "budget",
                    Shortfall.Unit.PERCENT,
                    List.of(part("hillside", 0, 4), part("", 25, 9)))))
        .contains(
            "WHAT GAVE WAY",
            "Days of cover by 6 piece-days: Hopper by 6 (6 Jan 2031 to 8 Jan 2031).",
            "Budget by 13 percent, summed over orders and months: 6 Jan 2031 to 31 Jan 2031 by 9;"
                + " Hillside Hatch (invented) by 4 (6 Jan 2031).");
  }

  /** 1 percent in all of many runs is next to nothing in each. */
  @Test
  void what_is_summed_over_runs_of_meals_is_said_for_one_too() {
    Policy policy = HandmadeRoom.world().scenario().policy();
    Policy.Adequacy asked = new Policy.Adequacy(true, Percent.of("97"), Percent.of("105"));
    World world = World.of(HandmadeRoom.world().scenario().withPolicy(policy.withAdequacy(asked)));
    int runs = MealRuns.of(world).size();
    assertThat(runs).isPositive();
    assertThat(letter(world, adequacy(2L * runs)))
        .contains("each animal (" + runs + " of these, 2 percent each on average): Amber by");
    assertThat(letter(world, adequacy(1)).contains("less than 0.1 percent each"))
        .isEqualTo(runs > 10);
    assertThat(letter(adequacy(1))).contains("each animal: Amber by 1");
  }

  private static Shortfall adequacy(long percent) {
    return Shortfall.counted(
        "adequacy", Shortfall.Unit.PERCENT, List.of(part("Amber", 20, percent)));
  }

  @Test
  void a_freezer_is_named_outside_which_food_lacks() {
    assertThat(
            letter(
                Shortfall.counted(
                    "second-freezer", Shortfall.Unit.PIECES, List.of(part("Chest", 0, 1)))))
        .contains(
            "Food in a second freezer, for animals that must eat, by 1 piece, summed over the nights"
                + " looked at and the freezer that might fail: Chest by 1 (6 Jan 2031).");
  }

  @Test
  void only_the_largest_parts_are_said() {
    List<Shortfall.Part> six =
        List.of("A", "B", "C", "D", "E", "F").stream()
            .map(
                name ->
                    new Shortfall.Part(
                        name, new Period(FIRST, FIRST), new BigDecimal(name.equals("F") ? 2 : 1)))
            .toList();
    assertThat(letter(Shortfall.counted("late-limits", Shortfall.Unit.MEALS_OR_DAYS, six)))
        .contains("by 7 meals or days: F by 2 (6 Jan 2031); A by 1", "and 2 more.")
        .doesNotContain("D by 1");
  }

  @ParameterizedTest
  @CsvSource({
    "PIECES, 1 piece, 2 pieces",
    "PIECE_DAYS, 1 piece-day, 2 piece-days",
    "PERCENT, 1 percent, 2 percent",
    "MEALS, 1 meal, 2 meals",
    "MEALS_OR_DAYS, 1 meal or day, 2 meals or days",
    "CHANGES, 1 change, 2 changes"
  })
  void one_is_one_and_two_are_many(Shortfall.Unit unit, String one, String two) {
    assertThat(Wording.amount(Shortfall.counted("rule", unit, List.of(part("", 0, 1)))))
        .isEqualTo(one);
    assertThat(Wording.amount(Shortfall.counted("rule", unit, List.of(part("", 0, 2)))))
        .isEqualTo(two);
  }

  @Test
  void where_nothing_gave_way_nothing_is_said() {
    assertThat(letter()).doesNotContain("WHAT GAVE WAY");
  }
}
