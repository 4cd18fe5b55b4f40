package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A mouse at 1.00 is eaten on each of four Wednesdays, on which the shop is open. A night in the
 * freezer costs a little a piece, so that the best plan fetches each Wednesday what is eaten on it.
 */
class FewerOrdersTest {
  private static final Limits LIMITS = Limits.ofSeconds(600);
  private final Planner engine = new EnginePlanner();
  @TempDir private Path folder;

  private World world(String perNight) {
    String policy =
        ", \"tailDays\": 0, \"charges\": {\"perOrder\": 0, \"perDeliveryDay\": 0, \"holdingPerPieceNight\": \"%s\"}"
            .formatted(perNight);
    return new OneMouseShop(
            OneMouseShop.SINGLES,
            new OneMouseShop.Extras("", policy),
            new OneMouseShop.Keeping(60, 10))
        .world(folder);
  }

  private Simplest simplest(World world, Planner planner, Watch watch) {
    Answer.WithPlan shown = (Answer.WithPlan) engine.plan(world, LIMITS, Watch.NONE);
    assertThat(shown.plan().plan().orders()).hasSize(4);
    return new FewerOrders(planner).than(shown, world, LIMITS, watch);
  }

  /**
   * At 0.001 a night: four orders 4.00; two pairs 4 + 2 x 7 x 0.001 = 4.014; one order 4 + (7 + 14
   * + 21) x 0.001 = 4.042; all within 4.08.
   */
  @Test
  void one_order_is_the_simplest_where_waiting_costs_next_to_nothing() {
    Simplest found = simplest(world("0.001"), engine, Watch.NONE);
    assertThat(found.plan())
        .singleElement()
        .satisfies(
            plan -> {
              assertThat(plan.plan().orders()).hasSize(1);
              assertThat(plan.standing().money().toDouble()).isEqualTo(4.042);
            });
  }

  /** At 0.005 a night: three orders 4.035, two 4.07, one 4.21; 4.08 is the most. */
  @Test
  void two_orders_are_the_simplest_where_one_costs_more_than_two_percent() {
    Simplest found = simplest(world("0.005"), engine, Watch.NONE);
    assertThat(found.sure()).isTrue();
    assertThat(found.plan())
        .singleElement()
        .satisfies(
            plan -> {
              assertThat(plan.plan().orders()).hasSize(2);
              assertThat(plan.standing().money().toDouble()).isEqualTo(4.07);
            });
  }

  /** At 0.02 a night three orders are 4.14. */
  @Test
  void the_plan_shown_is_the_simplest_where_any_other_costs_more() {
    assertThat(simplest(world("0.02"), engine, Watch.NONE))
        .isEqualTo(new Simplest(2, List.of(), true));
  }

  @Test
  void what_is_not_known_is_not_sure() {
    List<Integer> asked = new ArrayList<>();
    Planner idle =
        (world, limits, watch) -> {
          asked.add(world.mostOrders());
          return new Answer.NothingFound();
        };
    Simplest unknown = new Simplest(2, List.of(), false);
    assertThat(simplest(world("0.02"), idle, Watch.NONE)).isEqualTo(unknown);
    assertThat(asked).containsExactly(3);
    assertThat(simplest(world("0.02"), idle, Watch.stopping(() -> true))).isEqualTo(unknown);
    assertThat(asked).containsExactly(3);
  }
}
