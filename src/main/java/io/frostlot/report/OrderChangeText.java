package io.frostlot.report;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Outline;
import io.frostlot.units.Money;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * How an order differs between two plans.
 *
 * @param supplier name of a supplier by its id
 */
record OrderChangeText(Wording wording, UnaryOperator<String> supplier) {
  /** A sentence. */
  String of(Changes.OrderChange change) {
    if (change instanceof Changes.Added added) {
      Outline.Ordered order = added.order();
      return "Added: %s: %s; %s."
          .formatted(name(order), packs(order), wording.money(order.total()));
    }
    if (change instanceof Changes.Dropped dropped) {
      Outline.Ordered order = dropped.order();
      return "Dropped: %s; %s.".formatted(name(order), wording.money(order.total()));
    }
    Outline.Ordered before = ((Changes.Changed) change).before();
    Outline.Ordered after = ((Changes.Changed) change).after();
    return "Changed: %s: %s%s%s."
        .formatted(
            name(after),
            arrival(before, after),
            packs(before.packs(), after.packs()),
            instead(after.total(), before.total()));
  }

  private String name(Outline.Ordered order) {
    return supplier.apply(order.supplier()) + ", order by " + Wording.day(order.orderBy());
  }

  private static String packs(Outline.Ordered order) {
    return order.packs().entrySet().stream()
        .map(pack -> pack.getValue() + " x " + pack(pack.getKey()))
        .collect(Collectors.joining(", "));
  }

  /** A pack's id, "Hopper x25", as words. */
  private static String pack(String id) {
    return id.replaceFirst(" x(\\d+)$", ", pack of $1");
  }

  private static String arrival(Outline.Ordered before, Outline.Ordered after) {
    return before.arrives().equals(after.arrives())
        ? ""
        : "arrives %s instead of %s; "
            .formatted(Wording.day(after.arrives()), Wording.day(before.arrives()));
  }

  private static String packs(SortedMap<String, Integer> before, SortedMap<String, Integer> after) {
    TreeSet<String> ids = new TreeSet<>(before.keySet());
    ids.addAll(after.keySet());
    StringBuilder changed = new StringBuilder();
    for (String id : ids) {
      int was = before.getOrDefault(id, 0);
      int is = after.getOrDefault(id, 0);
      changed.append(was == is ? "" : "%s x %s instead of %s; ".formatted(is, pack(id), was));
    }
    return changed.toString();
  }

  /** Such as "12.00 instead of 10.00 EUR". */
  String instead(Money now, Money before) {
    return wording.bare(now) + " instead of " + wording.money(before);
  }
}
