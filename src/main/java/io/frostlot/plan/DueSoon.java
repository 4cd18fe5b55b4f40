package io.frostlot.plan;

import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Orders of an earlier plan that are due soon, and what it is reckoned to change one.
 *
 * @param dates order dates that are soon
 * @param orders at most one per delivery
 * @param charge for each of them that is changed or dropped, and for each order that is added on
 *     these dates; zero: anything may be changed
 */
public record DueSoon(Period dates, List<Due> orders, Money charge) {
  public static final DueSoon NONE = new DueSoon(Period.ALWAYS, List.of(), Money.ZERO);

  public DueSoon {
    orders = List.copyOf(orders);
    if (charge.isNegative()) {
      throw new IllegalArgumentException("a charge below zero: " + charge);
    }
  }

  /**
   * An order of the earlier plan.
   *
   * @param packs by pack id
   */
  public record Due(Slot slot, SortedMap<String, Integer> packs) {
    public Due {
      packs = Collections.unmodifiableSortedMap(new TreeMap<>(packs));
    }
  }

  /** May anything be changed? */
  public boolean isNone() {
    return charge.isZero();
  }

  /** Was nothing to be ordered by this delivery, though it is due soon? */
  public boolean wouldAdd(Slot slot) {
    return dates.contains(slot.ordered())
        && orders.stream().noneMatch(due -> due.slot().equals(slot));
  }

  /** Those that a plan changes or drops. */
  public List<Due> changedBy(Plan plan) {
    Map<Slot, SortedMap<String, Integer>> packs =
        plan.orders().stream().collect(Collectors.toMap(Order::slot, Order::packsById));
    return orders.stream().filter(due -> !due.packs().equals(packs.get(due.slot()))).toList();
  }

  /** Orders of a plan that are due soon and new. */
  public List<Order> addedBy(Plan plan) {
    return plan.orders().stream().filter(order -> wouldAdd(order.slot())).toList();
  }

  /** What a plan is charged for. */
  public Money chargeOf(Plan plan) {
    return charge.times(changedBy(plan).size() + addedBy(plan).size());
  }
}
