package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.util.Set;

/**
 * Packs that the keeper has made up his mind to buy, whatever they are good for.
 *
 * @param supplier whose packs
 * @param packIds rows of its price sheet that count
 * @param orderDates orders dated within count
 * @param packs at least so many in all
 */
public record Pledge(String supplier, Set<String> packIds, Period orderDates, int packs) {
  public Pledge {
    packIds = Set.copyOf(packIds);
    if (packIds.isEmpty() || packs < 1) {
      throw new IllegalArgumentException("a pledge of " + packs + " packs of " + packIds);
    }
  }

  /** Does a pack of an order count? */
  public boolean counts(Slot slot, Pack pack) {
    return supplier.equals(slot.supplier())
        && orderDates.contains(slot.ordered())
        && packIds.contains(pack.id());
  }

  /** Packs of a plan that count. */
  public int kept(Plan plan) {
    return plan.orders().stream()
        .flatMap(order -> order.lines().stream().filter(line -> counts(order.slot(), line.pack())))
        .mapToInt(Order.Line::packs)
        .sum();
  }
}
