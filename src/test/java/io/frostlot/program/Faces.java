package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Replay;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.Optional;

/** What the two faces of the rules say: of a plan made by hand, and of the best plan. */
final class Faces {
  private Faces() {}

  static Books judged(ByHand plan) {
    return Rules.judge(plan.world(), plan.plan()).books();
  }

  /** No rule objects, and the plan can be followed day by day. */
  static Books allowed(ByHand plan) {
    Books books = judged(plan);
    assertThat(books.breaches()).isEmpty();
    assertThat(Replay.of(plan.world(), plan.plan()).breaches()).isEmpty();
    return books;
  }

  /** No rule objects, and that is what it costs. */
  static void allowed(ByHand plan, String money) {
    assertThat(allowed(plan).standing().money()).isEqualTo(Money.of(money));
  }

  /** Those rules object, and no other. */
  static void refused(ByHand plan, String... rules) {
    assertThat(judged(plan).breaches()).extracting(Books.Breach::rule).containsOnly(rules);
  }

  static Answer.Judged best(World world) {
    Answer answer = Engine.solve(world, Limits.ofSeconds(600), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Proven.class);
    return ((Answer.Proven) answer).plan();
  }

  /** What the best plan comes to; the program says the same where it is solved by itself. */
  static Standing optimum(SmallWorld small) {
    World world = small.world();
    Standing standing = best(world).standing();
    assertThat(LevelByLevel.comesTo(Optional.of(standing), world, rule -> true)).isTrue();
    return standing;
  }

  /** Everything before money is as it should be. */
  static Standing costs(String money) {
    return new Standing(0, 0, 0, Money.of(money));
  }

  /** Some must-meals cannot be met. */
  static Standing unmet(int mustMeals, String money) {
    return new Standing(mustMeals, 0, 0, Money.of(money));
  }
}
