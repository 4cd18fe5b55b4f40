package io.frostlot.report;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Outline;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What differs between two plans of a what-if: meals first, then orders, then money. */
record ChangesText(Changes changes, Wording wording) {
  void write(Page page) {
    meals(changes.nowUnmet(), "no longer met", page);
    meals(changes.nowMet(), "met besides", page);
    changes.orders().forEach(change -> page.point(order(change)));
    Outline.Totals before = changes.costs().before();
    Outline.Totals after = changes.costs().after();
    if (!before.equals(after)) {
      page.point(
          "Cash %s instead of %s; with reckoned costs and the days after %s instead of %s."
              .formatted(
                  wording.bare(after.cash()),
                  wording.money(before.cash()),
                  wording.bare(after.cost()),
                  wording.money(before.cost())));
    }
  }

  private static void meals(List<Outline.Unmet> meals, String what, Page page) {
    if (!meals.isEmpty()) {
      String which =
          meals.stream()
              .map(meal -> meal.animal() + " on " + Wording.day(meal.day()))
              .collect(Collectors.joining(", "));
      page.point("%s %s: %s.".formatted(Wording.count(meals.size(), "meal", "meals"), what, which));
    }
  }

  private String order(Changes.OrderChange change) {
    if (change instanceof Changes.Added added) {
      Outline.Ordered order = added.order();
      return "Besides: %s: %s; %s."
          .formatted(name(order), packs(order), wording.money(order.total()));
    }
    if (change instanceof Changes.Dropped dropped) {
      return "Not any more: %s; %s."
          .formatted(name(dropped.order()), wording.money(dropped.order().total()));
    }
    Outline.Ordered before = ((Changes.Changed) change).before();
    Outline.Ordered after = ((Changes.Changed) change).after();
    return "Changed: %s: %s%s instead of %s."
        .formatted(
            name(after),
            packs(before.packs(), after.packs()),
            wording.bare(after.total()),
            wording.money(before.total()));
  }

  private static String name(Outline.Ordered order) {
    return order.supplier() + ", order by " + Wording.day(order.orderBy());
  }

  private static String packs(Outline.Ordered order) {
    return order.packs().entrySet().stream()
        .map(pack -> pack.getValue() + " x " + pack.getKey())
        .collect(Collectors.joining(", "));
  }

  private static String packs(SortedMap<String, Integer> before, SortedMap<String, Integer> after) {
    TreeSet<String> ids = new TreeSet<>(before.keySet());
    ids.addAll(after.keySet());
    return ids.stream()
        .filter(id -> !before.getOrDefault(id, 0).equals(after.getOrDefault(id, 0)))
        .map(
            id ->
                "%d x %s instead of %d; "
                    .formatted(after.getOrDefault(id, 0), id, before.getOrDefault(id, 0)))
        .collect(Collectors.joining());
  }
}
