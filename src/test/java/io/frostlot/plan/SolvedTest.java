package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.OneMouseShop;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SolvedTest {
  @TempDir Path folder;

  private Answer.Judged judged(int cost, int unmet) {
    Books books = new Books();
    books.tail("tail", Money.of(cost));
    books.unmet(unmet, false);
    return new Answer.Judged(new Plan(List.of(), List.of(), List.of(), List.of()), books);
  }

  private Solved solved(Answer.WithPlan answer) {
    return new Solved(
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 3)).world(folder),
        answer);
  }

  /** Proven with less room; with more, plans may cost as little as 80.00. */
  @Test
  void what_is_proven_of_a_stricter_world_is_not_of_a_looser_one() {
    Solved less = solved(new Answer.Proven(judged(100, 0), 100));
    Solved more = solved(new Answer.BestFound(judged(120, 0), OptionalDouble.of(80)));

    Solved better = more.orBetter(less);

    assertThat(better.cost()).isEqualTo(100);
    assertThat(better.answer()).isInstanceOf(Answer.BestFound.class);
    assertThat(better.answer().bound()).hasValue(80);
    assertThat(less.orBetter(more)).isSameAs(less);
  }

  @Test
  void a_bound_of_plans_that_leave_more_unmet_says_nothing_of_one_that_does_not() {
    Solved less = solved(new Answer.Proven(judged(100, 0), 100));
    Solved more = solved(new Answer.BestFound(judged(70, 1), OptionalDouble.of(60)));

    assertThat(more.orBetter(less).answer().bound()).isEmpty();
  }

  /** The safe bound of what is proven lies within half a cent below: 99.996. */
  @Test
  void what_is_proven_costs_what_it_costs() {
    Solved best = solved(new Answer.Proven(judged(100, 0), 99.996));
    Solved other = solved(new Answer.Proven(judged(116, 0), 115.998));

    assertThat(Interval.saving(other, best)).isEqualTo(Interval.between(16, 16));
    assertThat(Interval.ofAnything(best).most()).hasValue(0);
    assertThat(Interval.dearer(other.answer(), best.answer())).isEqualTo(Interval.between(16, 16));
  }
}
