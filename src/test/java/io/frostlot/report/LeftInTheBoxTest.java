package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.BoxRoom;
import io.frostlot.plan.Difference;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** In the two boxes of the first order there are 1.025 kg of 2 kg. */
class LeftInTheBoxTest {
  private final World world = HandmadeRoom.world();
  private final Answer.WithPlan shown =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95));

  private Order first() {
    return shown.plan().plan().orders().get(0);
  }

  private String said(BoxRoom.Verdict verdict, List<BoxRoom.Addition> addition) {
    BoxRoom room =
        new BoxRoom(
            List.of(
                new BoxRoom.Left(
                    first().slot(),
                    BoxFill.together(world.supplier("hillside").boxing(), first()),
                    verdict,
                    addition)));
    Outcome outcome = Outcome.of(world, shown.plan().plan());
    return new PlanReport(HandmadeRoom.inputs(world), shown, outcome, List.of())
        .text(room, 100)
        .replaceAll("\\s+", " ");
  }

  private BoxRoom.Addition hoppers(String saves, Interval lies) {
    Order.Content packs = new Order.Content(first().lines().get(1).pack(), 1);
    Solved solved = new Solved(world, shown);
    Difference same = Difference.between(solved, solved);
    return new BoxRoom.Addition(
        List.of(packs), new Difference(same.before(), same.after(), Money.of(saves), lies));
  }

  @Test
  void the_room_and_what_is_worth_adding_are_said() {
    assertThat(said(BoxRoom.Verdict.NO_PACK_FITS, List.of()))
        .contains(
            "WHAT IS LEFT IN THE BOX",
            "Hillside Hatch (invented), by Sun 12 Jan 2031: room for 1 kg. No pack fits into it.");
    assertThat(said(BoxRoom.Verdict.SAVES, List.of(hoppers("3.20", Interval.between(3.2, 4)))))
        .contains(
            "The best addition found is 1 x Hopper, pack of 25: the same meals, and it saves 3.20 EUR");
  }

  @Test
  void nothing_is_said_only_where_that_is_certain() {
    assertThat(said(BoxRoom.Verdict.NOTHING, List.of(hoppers("-2", Interval.between(-2, -2)))))
        .contains(
            "Nothing that fits saves money; the best addition found, 1 x Hopper, pack of 25, costs 2.00 EUR"
                + " more.");
    assertThat(said(BoxRoom.Verdict.NOTHING, List.of())).contains("Nothing that fits saves money.");
    assertThat(said(BoxRoom.Verdict.CANNOT_TELL, List.of(hoppers("-2", Interval.between(-2, 5)))))
        .contains("Cannot tell whether something is worth adding; the best found is 1 x Hopper");
    assertThat(said(BoxRoom.Verdict.CANNOT_TELL, List.of())).contains("Cannot tell what is worth");
  }
}
