package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What a letter says of freezers that are shared or have less room on some days. */
class FreezerUseTest {
  private static String letter(UnaryOperator<Freezer> change) {
    World room = HandmadeRoom.world();
    Scenario.Larder larder = room.scenario().larder();
    World world =
        room.withScenario(
            room.scenario()
                .withLarder(larder.withFreezers(larder.freezers().stream().map(change).toList())));
    Answer.Judged judged = HandmadePlan.judged(world);
    return new PlanReport(
            new Inputs(world, HandmadeRoom.DIGEST, List.of()),
            new Answer.BestFound(judged, OptionalDouble.empty()),
            Outcome.of(world, judged.plan()),
            List.of())
        .text(80)
        .replaceAll("[\\s\u00a0]+", " ");
  }

  private static Freezer with(Freezer freezer, Freezer.Company company, String limited) {
    LocalDate from = LocalDate.parse(limited);
    Freezer.Limit limit =
        new Freezer.Limit(new Period(from, from.plusDays(5)), new Litres(2_500_000));
    return freezer.withAccess(new Freezer.Access(true, company, List.of(limit)));
  }

  /** On 15 January 25 mice of 21 / 450 l and 54 hoppers of 10 / 450 l lie in the chest: 2.367 l. */
  @Test
  void less_room_is_said_with_how_full_it_gets_then() {
    assertThat(
            letter(
                it ->
                    it.name().equals("Chest") ? with(it, Freezer.Company.NONE, "2031-01-15") : it))
        .contains(
            "Chest: fullest on Mon 10 Feb 2031, 2.4 of 3 l (80 %). Less room 15 Jan 2031 to 20 Jan"
                + " 2031: at most 2.4 of 2.5 l.")
        .doesNotContain("holds food too");
  }

  @Test
  void prey_beside_food_comes_with_a_caution() {
    assertThat(
            letter(
                it ->
                    it.name().equals("Kitchen")
                        ? with(it, Freezer.Company.FOOD, "2032-01-01")
                        : it))
        .containsOnlyOnce("Kitchen holds food too.")
        .contains("Salmonella", "sealed, in a closed box", "rules of your place")
        .doesNotContain("Less room");
  }

  /** 0.57 l beside the plan: a delivery of 0.6 l would not fit. */
  @Test
  void what_fits_is_rounded_down() {
    World world = HandmadeRoom.world();
    Solved plan =
        new Solved(world, new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.empty()));
    FreezerFinding.Free free =
        new FreezerFinding.Free(
            LocalDate.parse("2031-01-15"), new Litres(570_000), new Litres(99_999));
    assertThat(
            new FreezerReport(world, 80)
                .text(new FreezerFinding.Use(plan, List.of(), List.of(free)), false)
                .replaceAll("[\\s\u00a0]+", " "))
        .contains("Wed 15 Jan 2031 0.5 0.0");
  }
}
