package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.freezer;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Four mice of a litre are wanted on day 2, and the freezer holds three. */
class JudgingTest {
  private static final String SPACE = "freezer-space";

  private final World world =
      new SmallWorld(2, SmallSupplier.selling(SINGLE))
          .freezers(freezer("A", "3", Freezer.Life.of(9)))
          .need(MOUSE, 2, 4)
          .world();

  private final Judging judging = new Judging(world, new Apart());
  private final Program program = Rules.program(world);

  private static Program withoutSpace(Program program) {
    Model free = program.model().withRows(row -> !row.rule().equals(SPACE));
    return new Program(free, program.decisions(), program.bill());
  }

  private double[] best(Program of) {
    Linear objective = Weights.of(world).objective(program.model());
    Scip.Task task = Scip.Task.of(objective, List.of(), false, Scip.Budget.ofMillis(60_000));
    return Scip.minimise(of.model(), task).point();
  }

  @Test
  void a_point_within_all_rows_is_a_plan() {
    assertThat(judging.judge(program, best(program)).orElseThrow().standing().unmet()).isEqualTo(1);
  }

  @Test
  void a_point_beyond_a_row_is_none_and_no_fault_of_the_program() {
    double[] tooMuch = best(withoutSpace(program));
    assertThat(program.model().isExceeded(tooMuch)).isTrue();
    assertThat(judging.judge(program, tooMuch)).isEmpty();
  }

  @Test
  void a_plan_that_breaks_a_rule_within_all_rows_is_a_fault() {
    Program faulty = withoutSpace(program);
    double[] tooMuch = best(faulty);
    assertThat(faulty.model().isExceeded(tooMuch)).isFalse();
    assertThatThrownBy(() -> judging.judge(faulty, tooMuch))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(SPACE);
  }
}
