package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Habit;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.Slot;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * One supplier that ships on Tuesdays, ordered two days before, and a shop that is open on Mondays.
 */
class HabitsTest {
  private static final Limits LIMITS = new Limits(Duration.ofSeconds(10), OptionalInt.empty());
  private final World world = HandmadeRoom.world();
  private final Answer.WithPlan shown =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(100));
  private final List<World> asked = new ArrayList<>();
  private final List<Limits> shares = new ArrayList<>();

  private Answer answer(World asked, Limits limits, Watch watch) {
    this.asked.add(asked);
    shares.add(limits);
    return new Answer.BestFound(HandmadePlan.judged(asked), OptionalDouble.of(103));
  }

  private static List<LocalDate> ordered(World world, String supplier) {
    return world.slots().stream()
        .filter(slot -> slot.supplier().equals(supplier))
        .map(Slot::ordered)
        .toList();
  }

  @Test
  void once_a_month_leaves_the_first_day_of_each_month_and_every_shop_day() {
    new Habits(this::answer).compare(world, shown, LIMITS, Watch.NONE);
    // Sunday 12 January is the first order date whose box arrives, 2 February and no later one
    assertThat(ordered(asked.get(0), "hillside"))
        .containsExactly(ordered(world, "hillside").get(0), LocalDate.parse("2031-02-02"));
    assertThat(ordered(asked.get(0), "corner")).isEqualTo(ordered(world, "corner"));
  }

  @Test
  void from_one_supplier_leaves_all_its_days() {
    new Habits(this::answer).compare(world, shown, LIMITS, Watch.NONE);
    assertThat(asked.get(1).slots()).isEqualTo(world.slots());
    assertThat(asked).hasSize(2);
  }

  @Test
  void the_time_is_shared_and_the_difference_is_an_interval() {
    List<Habit> habits = new Habits(this::answer).compare(world, shown, LIMITS, Watch.NONE);
    assertThat(shares).containsOnly(new Limits(Duration.ofSeconds(5), OptionalInt.empty()));
    assertThat(habits)
        .extracting(Habit::says)
        .containsExactly(
            "one order a month from a supplier, on the first day that it can be",
            "everything from Hillside Hatch (invented), gaps filled at the shop");
    // both cost 103.215; the plan's bound is 100, the habit's 103
    assertThat(habits.get(0).dearerBy().least().getAsDouble()).isBetween(-0.2151, -0.2149);
    assertThat(habits.get(0).dearerBy().most().getAsDouble()).isBetween(3.2149, 3.2151);
    assertThat(habits.get(0).lateMeals()).isEqualTo(1);
  }

  @Test
  void a_habit_for_which_no_plan_is_found_is_left_out() {
    Planner none = (asked, limits, watch) -> new Answer.NothingFound();
    assertThat(new Habits(none).compare(world, shown, LIMITS, Watch.NONE)).isEmpty();
  }
}
