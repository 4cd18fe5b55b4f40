package io.frostlot.program;

import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.units.Litres;
import io.frostlot.units.Percent;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Pieces of a litre, two freezers of three and four litres, ten meals on day 2. */
class SketchTest {
  private static final Freezer.Life LONG = Freezer.Life.of(50);

  private static World world() {
    Delivery dayOne = new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(1)));
    return new SmallWorld(3, SmallSupplier.selling(SINGLE).delivery(dayOne))
        .freezers(freezer("A", "3", LONG), freezer("B", "4", LONG))
        .need(2, 10)
        .world();
  }

  @Test
  void freezers_are_one_with_some_room_kept_back() {
    World sketch = new Sketch(10, true).of(world());
    assertThat(sketch.scenario().larder().freezers())
        .extracting(Freezer::usable)
        .containsExactly(new Litres(6_300_000));
    assertThat(sketch.slots()).isEqualTo(world().slots());
  }

  /** Seven litres less a tenth hold six pieces: a dive there buys six, and what is true is kept. */
  @Test
  void packs_chosen_in_a_sketch_make_a_plan_of_the_world() {
    World world = world();
    Attempt attempt = new Attempt(world, new Judging(world, new Apart()));
    Program sketch = Rules.program(new Sketch(10, true).of(world));
    double[] point = attempt.dive(sketch, Scip.Budget.ofMillis(60_000));
    Answer.Judged plan = attempt.finish(point, OptionalInt.empty()).orElseThrow();
    assertThat(plan.books().breaches()).isEmpty();
    assertThat(plan.standing().unmet()).isEqualTo(4);
  }

  /** Two days and 5 percent are asked for: one more and twice as much with caution. */
  @Test
  void with_caution_more_is_asked_for_safety_where_any_is() {
    Policy.Safety asked = new Policy.Safety(2, Percent.of("5"));
    World safe = new SmallWorld(3, SmallSupplier.selling(SINGLE)).need(2, 10).safety(asked).world();
    assertThat(new Sketch(0, true, 1).of(safe).scenario().policy().safety())
        .isEqualTo(new Policy.Safety(3, Percent.of("10")));
    assertThat(new Sketch(0, true).of(safe).scenario().policy().safety()).isEqualTo(asked);
    assertThat(Sketch.cautious(world(), 2).scenario().policy().safety())
        .isEqualTo(Policy.Safety.NONE);
  }
}
