package io.frostlot.plan;

import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Why buying more packs stops paying: what a plan with more of them has that the plan with fewer
 * has not.
 *
 * @param kind what stands in the way
 * @param what item or freezer; empty where it is neither
 * @param day on which it happens; the first planning day where it has none
 * @param amount money it costs; zero where it is no money
 */
public record Excess(Kind kind, String what, LocalDate day, Money amount) {
  private static final double FULL = 0.97;

  /** What stands in the way. */
  public enum Kind {
    /** Meals or margins suffer. */
    MEALS_SUFFER,
    /** Pieces pass their use-by before anybody has eaten them. */
    TOO_OLD,
    /** No later meal is this prey: animals that took it take something heavier. */
    OUTGROWN,
    /** More than all meals in sight eat. */
    NOT_EATEN,
    /** A freezer is full when they come. */
    FREEZER_FULL,
    /** An order needs more boxes. */
    ONE_MORE_BOX,
    /** More is held for longer. */
    MONEY_TIED_UP,
    /** They only replace what costs no more. */
    REPLACES_AS_CHEAP
  }

  /**
   * The reasons, the hardest first; at least one.
   *
   * @param items that are bought in excess, by id
   */
  public static List<Excess> between(Solved fewer, Solved more, Set<String> items) {
    LocalDate first = more.world().scenario().planning().from();
    List<Excess> found = new ArrayList<>();
    if (Difference.between(more, fewer).betterMeals()) {
      found.add(new Excess(Kind.MEALS_SUFFER, "", first, Money.ZERO));
    }
    wasted(fewer, more, items).ifPresent(found::add);
    full(fewer, more).ifPresent(found::add);
    Money boxes = charges(more).minus(charges(fewer));
    if (boxCount(more) > boxCount(fewer) && !boxes.isNegative() && !boxes.isZero()) {
      found.add(new Excess(Kind.ONE_MORE_BOX, "", first, boxes));
    }
    Money held = holding(more).minus(holding(fewer));
    if (!held.isNegative() && !held.isZero()) {
      found.add(new Excess(Kind.MONEY_TIED_UP, "", first, held));
    }
    if (found.isEmpty()) {
      found.add(new Excess(Kind.REPLACES_AS_CHEAP, "", first, Money.ZERO));
    }
    return found;
  }

  private static Optional<Excess> wasted(Solved fewer, Solved more, Set<String> items) {
    return lost(more).stream()
        .filter(lot -> items.contains(lot.item().id()))
        .filter(lot -> pieces(more, lot.item()) > pieces(fewer, lot.item()))
        .findFirst()
        .map(lot -> why(more.world(), lot));
  }

  /** Lots of which something is never eaten. */
  private static List<Lot> lost(Solved solved) {
    Levels levels = new Levels(solved.plan());
    return solved.plan().lots().stream()
        .filter(lot -> levels.neverEaten(lot) > 0)
        .sorted((a, b) -> a.useBy().compareTo(b.useBy()))
        .toList();
  }

  private static int pieces(Solved solved, Item item) {
    Levels levels = new Levels(solved.plan());
    return solved.plan().lots().stream()
        .filter(lot -> lot.item().equals(item))
        .mapToInt(levels::neverEaten)
        .sum();
  }

  private static Excess why(World world, Lot lot) {
    LocalDate lastMeal =
        world.demands().stream()
            .filter(d -> d.options().stream().anyMatch(o -> o.item().equals(lot.item())))
            .map(d -> d.meal().days().latest())
            .max(LocalDate::compareTo)
            .orElse(lot.earliest());
    if (lastMeal.isAfter(lot.useBy())) {
      return new Excess(Kind.TOO_OLD, lot.item().id(), lot.useBy().plusDays(1), Money.ZERO);
    }
    return new Excess(
        Outgrowing.is(world, lot.item()) ? Kind.OUTGROWN : Kind.NOT_EATEN,
        lot.item().id(),
        lastMeal.plusDays(1),
        Money.ZERO);
  }

  /** The fullest day on which something comes, where that leaves no room. */
  private static Optional<Excess> full(Solved fewer, Solved more) {
    Outcome outcome = more.outcome();
    for (Order order : more.plan().orders()) {
      LocalDate day = order.slot().arrivesEarliest();
      boolean grown = order.pieces() > piecesOn(fewer, order.slot());
      List<FreezerLoad> inUse =
          outcome.freezers().stream().filter(load -> load.freezer().inUse()).toList();
      double used = inUse.stream().mapToDouble(load -> load.on(day).toDouble()).sum();
      double room =
          inUse.stream().mapToDouble(load -> load.freezer().usableOn(day).toDouble()).sum();
      if (grown && used >= FULL * room) {
        String which = inUse.size() == 1 ? inUse.get(0).freezer().name() : "";
        return Optional.of(new Excess(Kind.FREEZER_FULL, which, day, Money.ZERO));
      }
    }
    return Optional.empty();
  }

  private static int piecesOn(Solved solved, Slot slot) {
    return solved.plan().orders().stream()
        .filter(order -> order.slot().equals(slot))
        .mapToInt(Order::pieces)
        .sum();
  }

  private static int boxCount(Solved solved) {
    ToIntFunction<Order> boxes = order -> order.boxes().count();
    return solved.plan().orders().stream().mapToInt(boxes).sum();
  }

  private static Money charges(Solved solved) {
    return solved.plan().orders().stream()
        .map(order -> solved.answer().plan().books().ledger(order.slot()).allCharges())
        .reduce(Money.ZERO, Money::plus);
  }

  private static Money holding(Solved solved) {
    return solved.answer().plan().books().charges().stream()
        .filter(charge -> charge.rule().equals("holding"))
        .map(Books.Charge::amount)
        .reduce(Money.ZERO, Money::plus);
  }
}
