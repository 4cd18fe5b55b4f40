package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Difference;
import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import java.util.List;
import org.junit.jupiter.api.Test;

class InsteadTest {
  @Test
  void what_is_bought_instead_is_named_as_on_price_sheets() {
    World world = HandmadeRoom.world();
    Answer.Judged plan = HandmadePlan.judged(world);
    Solved solved = new Solved(world, new Answer.Proven(plan, plan.standing().money().toDouble()));
    Item item = world.items().values().iterator().next();
    ExplainFinding why =
        new ExplainFinding.WhySupplier(
            "hillside",
            item,
            Difference.between(solved, solved),
            List.of(
                new ExplainFinding.Instead("corner", "Mouse x1", 9),
                new ExplainFinding.Instead("hillside", "Hopper x25", 2)));

    assertThat(new ExplainReport(world, 120).text(why, false).replaceAll("\\s+", " "))
        .contains(
            "instead 9 x Mouse from Corner Shop (invented),"
                + " 2 x Hopper, 25 a bag, from Hillside Hatch (invented).");
  }
}
