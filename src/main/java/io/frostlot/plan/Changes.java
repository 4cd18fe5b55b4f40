package io.frostlot.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The differences between two plans, nothing else.
 *
 * @param stale the earlier plan was made from other inputs
 * @param nowUnmet meals that the earlier plan met
 * @param nowMet meals that the earlier plan left unmet
 * @param orders those that differ, by order date
 */
public record Changes(
    boolean stale,
    List<Outline.Unmet> nowUnmet,
    List<Outline.Unmet> nowMet,
    List<OrderChange> orders,
    Costs costs) {

  /** What both cost. */
  public record Costs(Outline.Totals before, Outline.Totals after) {}

  /** An order that one of the two has, or that both have in different ways. */
  public sealed interface OrderChange {}

  public record Added(Outline.Ordered order) implements OrderChange {}

  public record Dropped(Outline.Ordered order) implements OrderChange {}

  /** Same supplier and order date, other packs, other arrival or other total. */
  public record Changed(Outline.Ordered before, Outline.Ordered after) implements OrderChange {}

  private record Key(LocalDate orderBy, String supplier) implements Comparable<Key> {
    Key(Outline.Ordered order) {
      this(order.orderBy(), order.supplier());
    }

    @Override
    public int compareTo(Key other) {
      int byDay = orderBy.compareTo(other.orderBy);
      return byDay != 0 ? byDay : supplier.compareTo(other.supplier);
    }
  }

  public static Changes between(Outline before, Outline after) {
    return new Changes(
        !before.digest().equals(after.digest()),
        without(after.unmet(), before.unmet()),
        without(before.unmet(), after.unmet()),
        ofOrders(before.orders(), after.orders()),
        new Costs(before.totals(), after.totals()));
  }

  private static List<Outline.Unmet> without(List<Outline.Unmet> some, List<Outline.Unmet> others) {
    return some.stream().filter(meal -> !others.contains(meal)).toList();
  }

  /** Orders that differ, by order date. */
  public static List<OrderChange> ofOrders(
      List<Outline.Ordered> before, List<Outline.Ordered> after) {
    Map<Key, OrderChange> changes = new TreeMap<>();
    after.forEach(order -> changes.put(new Key(order), new Added(order)));
    for (Outline.Ordered old : before) {
      changes.merge(
          new Key(old),
          new Dropped(old),
          (added, dropped) -> new Changed(old, ((Added) added).order()));
    }
    List<OrderChange> different = new ArrayList<>(changes.values());
    different.removeIf(
        change -> change instanceof Changed changed && changed.before().equals(changed.after()));
    return List.copyOf(different);
  }

  public boolean isEmpty() {
    return nowUnmet.isEmpty()
        && nowMet.isEmpty()
        && orders.isEmpty()
        && costs.before().equals(costs.after());
  }
}
