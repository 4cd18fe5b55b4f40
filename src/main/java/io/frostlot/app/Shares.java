package io.frostlot.app;

import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Division;
import io.frostlot.plan.Handed;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Shared;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What each keeper of one part of a group gets out of its plan. */
final class Shares {
  private static final int DECIMALS = 8;
  private final Shared.Part part;
  private final Map<String, Integer> served;
  private final Levels levels;
  private final List<Shared.Collected> collected = new ArrayList<>();

  Shares(Shared.Part part) {
    this.part = part;
    served = part.plan().served();
    levels = new Levels(part.plan());
    if (part.keepers().size() > 1) {
      Handed.of(part.world(), part.plan()).stream()
          .filter(handed -> part.isJoint(handed.order()))
          .forEach(this::collect);
    }
  }

  private void collect(Handed handed) {
    List<Division.Portion> portions = handed.division(part.world().joint().cutting()).orElseThrow();
    Map<String, Integer> wanted = new HashMap<>();
    handed.pieces().keySet().forEach(keeper -> wanted.put(keeper, eaten(handed, keeper)));
    for (Division.Portion portion : portions) {
      int some = Math.min(portion.pieces(), wanted.get(portion.keeper()));
      wanted.merge(portion.keeper(), -some, Integer::sum);
      LocalDate day = day(handed, portion.keeper());
      collected.add(
          new Shared.Collected(handed.order(), day, portion, some, price(portion.pack(), some)));
    }
  }

  private static Money price(Pack pack, int pieces) {
    return new Money(
        pack.price()
            .amount()
            .multiply(BigDecimal.valueOf(pieces))
            .divide(BigDecimal.valueOf(pack.pieces()), DECIMALS, RoundingMode.HALF_UP));
  }

  private Stream<Lot> lots(Handed handed, String keeper) {
    return part.plan().lots().stream()
        .filter(lot -> lot.item().equals(handed.item()))
        .filter(lot -> lot.origin().equals(new Lot.Ordered(handed.order().slot())))
        .filter(lot -> keeperOf(lot).equals(keeper));
  }

  /** The first day on which the keeper gets pieces of the item. */
  private LocalDate day(Handed handed, String keeper) {
    return lots(handed, keeper).map(Lot::earliest).min(LocalDate::compareTo).orElseThrow();
  }

  private int eaten(Handed handed, String keeper) {
    return lots(handed, keeper).mapToInt(lot -> lot.pieces() - levels.neverEaten(lot)).sum();
  }

  private String keeperOf(Lot lot) {
    return part.world().joint().keeperOf(part.world().freezer(lot.freezer()));
  }

  List<Shared.Collected> collectedBy(String keeper) {
    return collected.stream().filter(it -> it.portion().keeper().equals(keeper)).toList();
  }

  /** Orders of the keeper's own, whole. */
  Money own(String keeper) {
    return sum(
        part.plan().orders().stream()
            .filter(order -> !part.isJoint(order) && part.buyer(order).equals(keeper))
            .map(order -> part.answer().plan().books().ledger(order.slot()).total())
            .toList());
  }

  /** What the keeper buys after the planning days, and an equal part of what is only reckoned. */
  Money later(String keeper) {
    Money later =
        new Money(
            part.answer()
                .plan()
                .books()
                .total(Books.Account.RECKONED)
                .amount()
                .divide(BigDecimal.valueOf(part.keepers().size()), DECIMALS, RoundingMode.HALF_UP));
    for (Demand demand : part.world().demands()) {
      boolean eats =
          part.keepers().size() == 1 || part.world().joint().keeperOf(demand).equals(keeper);
      if (demand.tail() && eats) {
        int bought = demand.meal().count() - served.getOrDefault(demand.meal().id(), 0);
        later = later.plus(demand.tailPrice().times(bought));
      }
    }
    return later;
  }

  private static Money sum(List<Money> amounts) {
    return amounts.stream().reduce(Money.ZERO, Money::plus);
  }
}
