package io.frostlot.app;

import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Order;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether to wait for deals that may come: to order nothing from those that ship before the deals
 * hold (what is fetched may bridge), or to order then what the best plan without them orders.
 */
final class Waiting {
  private final Questions questions;
  private final double share;

  Waiting(Questions questions, double share) {
    this.questions = questions;
    this.share = share;
  }

  /**
   * Empty where time is up.
   *
   * @param without the best plan without the deals
   */
  Optional<SaleFinding> find(Percent chance, Solved without, List<Deal> deals) {
    World base = without.world();
    LocalDate until =
        deals.stream().map(deal -> deal.when().from()).min(LocalDate::compareTo).get();
    boolean atOnce = !until.isAfter(base.scenario().planning().from());
    if (atOnce || without.plan().slots().stream().noneMatch(it -> isHeldBack(base, it, until))) {
      return Optional.of(new SaleFinding.NothingToWaitFor(until, atOnce));
    }
    World come = World.of(Deal.in(base.scenario(), deals));
    World inVain = waiting(base, until);
    World notInVain = waiting(come, until);
    World ordered = ordering(come, without, until);
    questions.looser(base, inVain);
    questions.looser(come, notInVain);
    questions.looser(notInVain, inVain);
    questions.looser(come, ordered);
    questions.learn(without.plan());
    Optional<Solved> waitedInVain = questions.ask(inVain, share);
    Optional<Solved> waited = questions.ask(notInVain, share);
    Optional<Solved> orderedAndCome = questions.ask(ordered, share);
    if (waitedInVain.isEmpty() || waited.isEmpty() || orderedAndCome.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SaleFinding.Waiting(
            chance,
            until,
            questions.between(orderedAndCome.get(), waited.get()),
            questions.between(without, waitedInVain.get()),
            latestSafe(without, until).stream().toList()));
  }

  private static boolean isHeldBack(World world, Slot slot, LocalDate until) {
    return slot.ordered().isBefore(until) && !world.supplier(slot.supplier()).isPickUp();
  }

  private static World waiting(World world, LocalDate until) {
    return world.withSlots(
        world.slots().stream().filter(slot -> !isHeldBack(world, slot, until)).toList());
  }

  /** What the plan orders before is ordered, and nothing else. */
  private static World ordering(World world, Solved plan, LocalDate until) {
    List<Pledge> pledges = new ArrayList<>();
    List<Slot> early = new ArrayList<>();
    for (Order order : plan.plan().orders()) {
      Slot slot = order.slot();
      if (isHeldBack(world, slot, until)) {
        early.add(slot);
        Period day = new Period(slot.ordered(), slot.ordered());
        order
            .lines()
            .forEach(
                line ->
                    pledges.add(
                        new Pledge(
                            slot.supplier(),
                            Set.of(line.pack().id()),
                            day,
                            Pledge.Packs.atLeast(line.packs()))));
      }
    }
    return world
        .withSlots(
            world.slots().stream()
                .filter(slot -> !isHeldBack(world, slot, until) || early.contains(slot))
                .toList())
        .withPledges(pledges);
  }

  /** By halving: without an order before a later day no more meals are met. */
  private Optional<LocalDate> latestSafe(Solved without, LocalDate until) {
    World base = without.world();
    List<LocalDate> days =
        Stream.concat(
                base.slots().stream()
                    .filter(slot -> isHeldBack(base, slot, until))
                    .map(Slot::ordered),
                Stream.of(until))
            .distinct()
            .sorted()
            .toList();
    int safe = -1;
    int unsafe = days.size();
    while (unsafe - safe > 1 && !questions.over()) {
      int middle = (safe + unsafe) / 2;
      World later = waiting(base, days.get(middle));
      questions.looser(base, later);
      Optional<Solved> held = questions.ask(later, share / 2);
      boolean same = held.filter(it -> !Difference.between(it, without).betterMeals()).isPresent();
      safe = same ? middle : safe;
      unsafe = same ? unsafe : middle;
    }
    return safe < 0 ? Optional.empty() : Optional.of(days.get(safe));
  }
}
