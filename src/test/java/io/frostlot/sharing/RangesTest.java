package io.frostlot.sharing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.plan.LinearSolver;
import io.frostlot.plan.Range;
import io.frostlot.program.Glop;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is said where costs of subgroups are known only roughly. */
class RangesTest {
  private static final LinearSolver SOLVER = new Glop();

  /** Two halve what they save: alone 10 each, together 16 at most; one alone is 8 to 10. */
  @Test
  void a_rough_cost_makes_rough_shares() {
    Game game = two(new Range(8, 10), Range.exactly(10), Range.exactly(16));

    assertThat(Shapley.ranges(game)).containsExactly(new Range(7, 8), new Range(8, 9));
  }

  @Test
  void shares_lie_in_their_ranges_and_reach_the_ends() {
    Random random = new Random(7);
    for (int i = 0; i < 50; i++) {
      Game low = Games.random(4, random);
      Game rough =
          Game.of(
              low.members(),
              some -> new Range(low.cost(some).least(), low.cost(some).least() + some.bits() % 3));
      List<Range> ranges = Shapley.ranges(rough);
      for (int member = 0; member < 4; member++) {
        int of = member;
        Game dear =
            Games.exactly(
                4, some -> some.has(of) ? rough.cost(some).most() : rough.cost(some).least());
        Game any =
            Games.exactly(
                4, some -> rough.cost(some).least() + random.nextDouble() * (some.bits() % 3));
        assertThat(Shapley.of(dear)[member]).isEqualTo(ranges.get(member).most(), within(1e-9));
        assertThat(Shapley.of(any)[member])
            .isBetween(ranges.get(member).least() - 1e-9, ranges.get(member).most() + 1e-9);
      }
    }
  }

  @Test
  void nobody_is_said_to_be_better_off_alone_unless_that_is_certain() {
    double[] halves = {8, 8};

    assertThat(leaving(new Range(6, 7), halves).better()).containsExactly(Subgroup.of(0));
    assertThat(leaving(new Range(7, 9), halves).better()).isEmpty();
    assertThat(leaving(new Range(7, 9), halves).unsettled()).containsExactly(Subgroup.of(0));
    assertThat(leaving(new Range(7, 9), halves).isNobody()).isFalse();
    assertThat(leaving(new Range(8, 9), halves).isNobody()).isTrue();
  }

  private static Leaving leaving(Range first, double[] shares) {
    return Leaving.of(two(first, Range.exactly(9), Range.exactly(16)), shares, 0);
  }

  /** Three for whom any two save as much as all: 10 alone, 12 for two; 18 can be shared, 19 not. */
  @Test
  void an_empty_core_is_said_only_when_certain() {
    assertThat(LeastPain.core(three(new Range(12, 12.5), 18), SOLVER))
        .isEqualTo(LeastPain.Core.THERE);
    assertThat(LeastPain.core(three(new Range(12, 12.5), 19), SOLVER))
        .isEqualTo(LeastPain.Core.EMPTY);
    assertThat(LeastPain.core(three(new Range(12, 13), 19), SOLVER))
        .isEqualTo(LeastPain.Core.NOT_SETTLED);
    assertThat(LeastPain.of(three(Range.exactly(12), 19), SOLVER)).isEqualTo(2 / 3.0, within(1e-6));
  }

  @Test
  void parts_that_order_each_for_themselves_cost_no_more_than_together() {
    Game split = two(new Range(4, 5), Range.exactly(6), new Range(9, 14)).splitting();

    assertThat(split.cost(split.all())).isEqualTo(new Range(9, 11));
  }

  @Test
  void a_sample_agrees_with_the_exact_value() {
    Game game = Games.random(6, new Random(3));
    double[] exact = Shapley.of(game);
    SampledShapley sample =
        SampledShapley.of(6, some -> game.cost(some).least(), 400, new Random(4));

    double sum = 0;
    for (int i = 0; i < 6; i++) {
      assertThat(sample.shares()[i])
          .isEqualTo(exact[i], within(4 * sample.standardErrors()[i] + 1e-9));
      sum += sample.shares()[i];
    }
    assertThat(sum).isEqualTo(game.toShare(), within(1e-9));
    assertThat(sample.standardErrors()).contains(sample.standardErrors()[0]).doesNotContain(0);
  }

  private static Game two(Range first, Range second, Range both) {
    List<Range> costs = List.of(Range.exactly(0), first, second, both);
    return new Game(Games.names(2), costs);
  }

  private static Game three(Range two, double all) {
    List<Range> bySize = List.of(Range.exactly(0), Range.exactly(10), two, Range.exactly(all));
    return Game.of(Games.names(3), some -> bySize.get(some.size()));
  }
}
