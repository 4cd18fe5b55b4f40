package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class InShortTest {
  private final World world = HandmadeRoom.world();

  private String letter(Plan plan) {
    Answer.Judged judged = new Answer.Judged(plan, HandmadePlan.books(world));
    return new PlanReport(
            HandmadeRoom.inputs(world),
            new Answer.BestFound(judged, OptionalDouble.empty()),
            Outcome.of(world, plan),
            List.of())
        .text(100)
        .replaceAll("\\s+", " ");
  }

  /** Two single mice on 10 February are all: more than 14 days after 6 January. */
  @Test
  void the_first_order_of_all_is_no_order_to_place_now() {
    Plan all = HandmadePlan.plan(world);
    List<Lot> lots = all.lots().stream().filter(lot -> lot.id().equals("O3")).toList();
    String letter = letter(new Plan(List.of(all.orders().get(1)), lots, List.of(), List.of()));
    assertThat(letter)
        .contains(
            "Next nothing is to be ordered up to Mon 20 Jan 2031; then fetch from Corner Shop"
                + " (invented) on Mon 10 Feb 2031, 4.40 EUR.")
        .contains("ORDER NEXT Nothing is to be ordered up to Mon 20 Jan 2031.");
    assertThat(letter(all)).contains("Next order from Hillside Hatch (invented) by Sun 12 Jan");
  }
}
