package io.frostlot.app;

import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Fed;
import io.frostlot.plan.Order;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Says what each rule that gives way costs, whether the scenario asks for it or not: the days are
 * planned with it and without it. Of adequacy it also says what each animal is then fed.
 */
public final class WishCosts {
  private static final double PRESENT = 0.32;
  private static final double EACH = 0.04;

  /** It is the hardest to plan for. */
  private static final double ADEQUACY = 0.2;

  private final Questions questions;
  private final World base;
  private final Consumer<ExplainFinding> found;

  /**
   * Costs that are not known yet.
   *
   * @param found told each finding as soon as it is known
   */
  public WishCosts(Questions questions, World base, Consumer<ExplainFinding> found) {
    this.questions = questions;
    this.base = base;
    this.found = found;
  }

  /** Says as much as time allows; nothing where there is no plan. */
  public void run() {
    ExplainPlan.present(questions, base, PRESENT, found).ifPresent(this::explain);
  }

  private void explain(Solved plan) {
    for (Wish wish : Wish.of(base, dearest(plan))) {
      questions.looser(wish.without(), wish.with());
      questions.learn(plan.plan());
      Optional<Solved> with = questions.ask(wish.with(), isAdequacy(wish) ? ADEQUACY : EACH);
      Optional<Solved> without = questions.ask(wish.without(), EACH);
      if (with.isPresent() && without.isPresent()) {
        found.accept(
            new ExplainFinding.WishCost(
                wish.says(),
                wish.asked(),
                with.get(),
                without.get(),
                questions.between(with.get(), without.get())));
        if (isAdequacy(wish)) {
          found.accept(new ExplainFinding.FedWithout(fed(with.get()), fed(without.get())));
        }
      }
    }
  }

  private static List<Fed> fed(Solved solved) {
    return Fed.of(solved.world(), solved.plan());
  }

  private static boolean isAdequacy(Wish wish) {
    return !wish.without().scenario().policy().adequacy().asked()
        && wish.with().scenario().policy().adequacy().asked();
  }

  private static Money dearest(Solved plan) {
    return plan.plan().orders().stream()
        .map(Order::slot)
        .map(slot -> plan.answer().plan().books().ledger(slot).total())
        .max(Money::compareTo)
        .orElse(Money.ZERO);
  }
}
