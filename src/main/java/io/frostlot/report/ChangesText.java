package io.frostlot.report;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Outline;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What differs between two plans: meals first, then orders, then money.
 *
 * @param supplier name of a supplier by its id
 */
record ChangesText(Changes changes, Wording wording, UnaryOperator<String> supplier) {
  void write(Page page) {
    meals(changes.nowUnmet(), "no longer met", page);
    meals(changes.nowMet(), "now met", page);
    changes.orders().forEach(change -> page.point(order(change)));
    Outline.Totals before = changes.costs().before();
    Outline.Totals after = changes.costs().after();
    if (!before.equals(after)) {
      page.point(
          "To pay %s; with what is reckoned and the days after %s."
              .formatted(
                  instead(after.cash(), before.cash()), instead(after.cost(), before.cost())));
    }
  }

  private static void meals(List<Outline.Unmet> meals, String what, Page page) {
    if (!meals.isEmpty()) {
      SortedMap<String, List<LocalDate>> byAnimal = new TreeMap<>();
      meals.forEach(
          meal -> byAnimal.computeIfAbsent(meal.animal(), it -> new ArrayList<>()).add(meal.day()));
      String which =
          byAnimal.entrySet().stream()
              .map(entry -> entry.getKey() + " " + days(entry.getValue()))
              .collect(Collectors.joining(", "));
      page.point("%s %s: %s.".formatted(Wording.count(meals.size(), "meal", "meals"), what, which));
    }
  }

  private static String days(List<LocalDate> days) {
    return days.size() == 1
        ? "on " + Wording.day(days.get(0))
        : "(%s, %s)"
            .formatted(days.size(), Wording.fromTo(Collections.min(days), Collections.max(days)));
  }

  private String order(Changes.OrderChange change) {
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

  private String instead(Money now, Money before) {
    return wording.bare(now) + " instead of " + wording.money(before);
  }
}
