package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Percent;
import java.time.Duration;
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
  private static final String WHOLE =
      "everything from Hillside Hatch (invented), besides what is better fetched at the shop";
  private final World world = HandmadeRoom.world();
  private final Answer.WithPlan shown =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(100));
  private final List<World> asked = new ArrayList<>();

  private Answer nothing(World asked, Limits limits, Watch watch) {
    this.asked.add(asked);
    return new Answer.NothingFound();
  }

  /** The plan buys from the supplier and the shop only; it costs 103.215, no plan less than 100. */
  @Test
  void a_habit_that_the_plan_keeps_is_not_planned_again() {
    Comparison comparison = new Habits(this::nothing).compare(world, shown, LIMITS, Watch.NONE);
    assertThat(comparison.habits()).hasSize(1);
    assertThat(comparison.habits().get(0).says()).isEqualTo(WHOLE);
    assertThat(comparison.habits().get(0).side().lateMeals()).isEqualTo(1);
    assertThat(comparison.habits().get(0).dearerBy().most()).hasValue(0);
    assertThat(comparison.habits().get(0).dearerBy().least().getAsDouble())
        .isCloseTo(-3.215, within(1e-9));
  }

  @Test
  void a_habit_for_which_no_plan_is_found_is_unfinished() {
    Comparison comparison = new Habits(this::nothing).compare(world, shown, LIMITS, Watch.NONE);
    assertThat(asked).hasSize(1);
    assertThat(comparison.unfinished())
        .singleElement()
        .asString()
        .startsWith("one order a month")
        .endsWith("besides what is better fetched at the shop");
  }

  /** Sunday 12 January is the first order date whose box arrives; 2 February that of the next. */
  @Test
  void the_first_month_looks_no_further_than_the_next_order() {
    new Habits(this::nothing).compare(world, shown, LIMITS, Watch.NONE);
    assertThat(asked.get(0).slots())
        .filteredOn(slot -> slot.supplier().equals("hillside"))
        .extracting(slot -> slot.ordered().toString())
        .containsExactly("2031-01-12");
    assertThat(asked.get(0).demands())
        .extracting(demand -> demand.meal().days().best())
        .allSatisfy(day -> assertThat(day).isBefore("2031-02-06"));
    assertThat(asked.get(0).scenario().policy().tail().days()).isZero();
  }

  @Test
  void a_habit_is_asked_for_the_same_adequacy() {
    Policy.Adequacy asked = new Policy.Adequacy(true, Percent.of("97"), Percent.of("105"));
    Policy policy = world.scenario().policy().withDemand(Policy.Demand.ALL).withAdequacy(asked);
    World adequate = world.withScenario(world.scenario().withPolicy(policy));
    new Habits(this::nothing).compare(adequate, shown, LIMITS, Watch.NONE);
    assertThat(this.asked)
        .isNotEmpty()
        .allSatisfy(it -> assertThat(it.scenario().policy().adequacy()).isEqualTo(asked));
  }

  @Test
  void once_told_to_stop_nothing_more_is_planned() {
    Watch stopped =
        new Watch() {
          @Override
          public boolean stop() {
            return true;
          }

          @Override
          public void found(Answer.WithPlan best) {}
        };
    Comparison comparison = new Habits(this::nothing).compare(world, shown, LIMITS, stopped);
    assertThat(asked).isEmpty();
    assertThat(comparison.unfinished()).isEmpty();
  }
}
