package io.frostlot.app;

import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The budget, and what is reckoned but on no invoice.
 *
 * @param dearest order of the best plan
 */
record MoneyWishes(World world, Money dearest) {
  private static final BigDecimal EFFORT = new BigDecimal("0.05");
  private static final BigDecimal OF_DEAREST = new BigDecimal("0.9");

  Stream<Wish> all() {
    return Stream.concat(Stream.of(budget(), effort()), charges());
  }

  private Policy policy() {
    return world.scenario().policy();
  }

  private Wish budget() {
    Policy.Budget own = policy().ordering().budget();
    Money most = dearest.times(OF_DEAREST, world.decimals());
    Policy.Budget budget = own.isNone() ? new Policy.Budget(most, Money.ZERO, Money.ZERO) : own;
    String says =
        own.isNone()
            ? "at most %s an order, nine tenths of the dearest".formatted(text(most))
            : "the budget";
    return PolicyWishes.of(
        world,
        Wish.Bearing.of(says, !own.isNone(), "budget"),
        asked ->
            policy()
                .withOrdering(policy().ordering().withBudget(asked ? budget : Policy.Budget.NONE)));
  }

  private Wish effort() {
    Policy.Charges own = policy().charges();
    boolean asked = !own.order().isZero() || !own.deliveryDay().isZero();
    Money order = asked ? own.order() : dearest.times(EFFORT, world.decimals());
    return charge(
        "effort reckoned at %s an order%s"
            .formatted(text(order), asked ? "" : ", a twentieth of the dearest"),
        asked,
        wanted ->
            wanted
                ? own.withEffort(order, own.deliveryDay())
                : own.withEffort(Money.ZERO, Money.ZERO));
  }

  /** Those that the scenario reckons. */
  private Stream<Wish> charges() {
    Policy.Charges own = policy().charges();
    HoldingCharge none = new HoldingCharge(Money.ZERO, Money.ZERO);
    return Stream.of(
            charge(
                "late meals reckoned at %s a day".formatted(text(own.lateMeal())),
                !own.lateMeal().isZero(),
                wanted -> wanted ? own : own.withLateMeal(Money.ZERO)),
            charge(
                "what holding prey is reckoned at",
                !own.holding().equals(none),
                wanted -> wanted ? own : own.withHolding(none)),
            charge(
                "prey past its best reckoned at %s a piece".formatted(text(own.pastBest())),
                !own.pastBest().isZero(),
                wanted -> wanted ? own : own.withPastBest(Money.ZERO)))
        .filter(Wish::asked);
  }

  private Wish charge(String says, boolean asked, Function<Boolean, Policy.Charges> charges) {
    return PolicyWishes.of(
        world,
        Wish.Bearing.charge(says, asked),
        wanted -> policy().withCharges(charges.apply(wanted)));
  }

  private String text(Money money) {
    return money.toText(world.decimals()) + " " + world.scenario().currency().getCurrencyCode();
  }
}
