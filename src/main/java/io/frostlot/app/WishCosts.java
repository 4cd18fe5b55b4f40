package io.frostlot.app;

import io.frostlot.plan.ExplainFinding;
import io.frostlot.plan.Fed;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Says what each rule that gives way costs, whether the scenario asks for it or not, and each other
 * that it uses: the days are planned with it and without it. Of adequacy it also says what each
 * animal is then fed.
 */
public final class WishCosts {
  private static final double PRESENT = 0.32;

  /** What is left of the time is shared out; adequacy, where not asked for, is the hardest. */
  private static final double ADEQUACY = 5;

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
    List<Wish> wishes = Wish.of(base, dearest(plan));
    double parts = wishes.stream().mapToDouble(WishCosts::parts).sum();
    for (Wish wish : wishes) {
      double share = questions.shareLeft() * parts(wish) / parts;
      parts -= parts(wish);
      stateFreer(wish);
      questions.learn(plan.plan());
      Optional<Solved> with = questions.ask(wish.with(), share);
      Optional<Solved> without = questions.ask(wish.without(), share);
      if (with.isPresent() && without.isPresent()) {
        tell(wish, with.get(), without.get());
      }
    }
  }

  private static double parts(Wish wish) {
    return wish.isAdequacy() && !wish.asked() ? ADEQUACY : 1;
  }

  private void stateFreer(Wish wish) {
    switch (wish.bearing().freer()) {
      case WITH -> questions.looser(wish.with(), wish.without());
      case WITHOUT -> questions.looser(wish.without(), wish.with());
      case NEITHER -> {}
    }
  }

  private void tell(Wish wish, Solved with, Solved without) {
    Set<String> rules = wish.bearing().rules();
    found.accept(
        new ExplainFinding.WishCost(
            wish.bearing().wished(),
            with.answer().plan().books().shortfalls(rules),
            with,
            without,
            questions.between(with, without, rules)));
    if (wish.isAdequacy()) {
      found.accept(new ExplainFinding.FedWithout(fed(with), fed(without)));
    }
  }

  private static List<Fed> fed(Solved solved) {
    return Fed.of(solved.world(), solved.plan());
  }

  private static Money dearest(Solved plan) {
    return plan.plan().slots().stream()
        .map(slot -> plan.answer().plan().books().ledger(slot).total())
        .max(Money::compareTo)
        .orElse(Money.ZERO);
  }
}
