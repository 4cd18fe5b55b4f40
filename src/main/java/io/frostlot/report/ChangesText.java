package io.frostlot.report;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Outline;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What differs between two plans: meals first, then orders, then money.
 *
 * @param supplier name of a supplier by its id
 */
record ChangesText(Changes changes, Wording wording, UnaryOperator<String> supplier) {
  void write(Page page) {
    meals(page);
    orders(page);
  }

  void meals(Page page) {
    meals(changes.nowUnmet(), "no longer met", page);
    meals(changes.nowMet(), "now met", page);
  }

  /** Orders, and what they come to. */
  void orders(Page page) {
    OrderChangeText text = new OrderChangeText(wording, supplier);
    changes.orders().forEach(change -> page.point(text.of(change)));
    Outline.Totals before = changes.costs().before();
    Outline.Totals after = changes.costs().after();
    if (!before.equals(after)) {
      page.point(
          "To pay %s; with what is reckoned and the days after %s."
              .formatted(
                  text.instead(after.cash(), before.cash()),
                  text.instead(after.cost(), before.cost())));
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
}
