package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The habit of one order a month: on the first day of each month that it can be, what is needed
 * until the next order comes, from the supplier whose order does best by itself; gaps are then
 * filled at the shops. Nothing later is looked at, leftovers are worth nothing while ordering, and
 * what is ordered or eaten stays so. Where the orders together run into a limit over all of them
 * (packs to be had in total), the habit has no answer.
 */
final class MonthByMonth {
  private static final Standing NOTHING = new Standing(0, 0, 0, Money.ZERO);
  private final World world;
  private final Set<String> shops;
  private final List<Months.Month> months;

  /**
   * The habit in a world.
   *
   * @param regular ids of the suppliers of which one is ordered from each month
   * @param shops ids of the suppliers that fill gaps on any day
   */
  MonthByMonth(World world, Set<String> regular, Set<String> shops) {
    this.world = world;
    this.shops = Set.copyOf(shops);
    months = Months.of(world, regular);
  }

  /** Plans one small world after another. */
  interface Solver {
    /**
     * Empty where no plan is found in the time.
     *
     * @param left worlds to plan, this one included
     */
    Optional<Answer.WithPlan> plan(World part, int left);
  }

  /** What the habit comes to, judged by every rule of the whole world; empty without an answer. */
  Optional<Answer.Judged> follow(Solver solver) {
    Settled settled = new Settled(world);
    int left = 1 + months.stream().mapToInt(MonthByMonth::worlds).sum();
    for (Months.Month month : months) {
      Optional<Slot> main = main(month, settled, solver, left);
      int now = left - worlds(month) + 1;
      left -= worlds(month);
      Optional<Answer.WithPlan> best =
          main.flatMap(slot -> settledLevels(solver, upTo(month.end(), slot, settled, shops), now));
      if (best.isEmpty()) {
        return Optional.empty();
      }
      settled.follow(best.get().plan().plan(), month.next());
    }
    return afterwards(settled, solver) ? Engine.judge(world, settled.plan()) : Optional.empty();
  }

  /** Leftovers are eaten in the tail as well as they can be; false where no plan is found. */
  private boolean afterwards(Settled settled, Solver solver) {
    Policy policy = world.scenario().policy();
    LocalDate last = world.scenario().planning().to();
    List<Demand> tail =
        world.demands().stream()
            .filter(demand -> demand.tail() && settled.isInHand(demand))
            .toList();
    if (tail.isEmpty()) {
      return true;
    }
    Optional<Answer.WithPlan> eaten =
        solver.plan(settled.ahead(policy, tail.stream(), List.of()), 1);
    eaten.ifPresent(
        it -> settled.follow(it.plan().plan(), last.plusDays(policy.tail().days() + 1L)));
    return eaten.isPresent();
  }

  /** How many worlds are planned for a month. */
  private static int worlds(Months.Month month) {
    return month.firsts().size() == 1 ? 1 : month.firsts().size() + 1;
  }

  /** The slot of the supplier whose order does best by itself, before any gap is filled. */
  private Optional<Slot> main(Months.Month month, Settled settled, Solver solver, int left) {
    List<Slot> firsts = month.firsts();
    Map<Slot, Standing> standings = new HashMap<>();
    for (int i = 0; i < firsts.size() && firsts.size() > 1; i++) {
      Slot first = firsts.get(i);
      settledLevels(solver, upTo(month.end(), first, settled, Set.of()), left - i)
          .ifPresent(answer -> standings.put(first, answer.plan().standing()));
    }
    boolean all = firsts.size() == 1 || standings.size() == firsts.size();
    return firsts.stream()
        .filter(first -> all)
        .min(Comparator.comparing(first -> standings.getOrDefault(first, NOTHING)));
  }

  /** Empty also where a better plan might meet more: then it would not be the habit's fault. */
  private static Optional<Answer.WithPlan> settledLevels(Solver solver, World part, int left) {
    return solver.plan(part, left).filter(answer -> answer.bound().isPresent());
  }

  /** One order, and visits to shops, for what is needed up to a day. */
  private World upTo(LocalDate end, Slot first, Settled settled, Set<String> shops) {
    Stream<Slot> visits =
        world.slots().stream()
            .filter(slot -> shops.contains(slot.supplier()))
            .filter(slot -> !slot.ordered().isBefore(settled.now()))
            .filter(slot -> !slot.arrivesLatest().isAfter(end))
            .filter(slot -> !settled.isOrdered(slot));
    return settled.ahead(
        world.scenario().policy().withTail(Policy.Tail.NONE),
        world.demands().stream()
            .filter(demand -> !demand.tail() && !demand.meal().days().best().isAfter(end)),
        Stream.concat(Stream.of(first), visits).sorted().toList());
  }
}
