package io.frostlot.report;

import io.frostlot.plan.Order;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** The orders that are due, then the later ones, which are tentative. */
final class NextOrders implements Sections.Section {
  private static final int DUE_WITHIN_DAYS = 14;
  static final Comparator<Order> BY_DATE =
      Comparator.comparing((Order order) -> order.slot().ordered())
          .thenComparing(order -> order.slot().supplier());

  @Override
  public void write(PlanReport report, Page page) {
    List<Order> due = due(report);
    List<Order> later =
        report.plan().orders().stream().filter(o -> !due.contains(o)).sorted(BY_DATE).toList();

    page.heading("Order next");
    if (due.isEmpty()) {
      page.say("Nothing is to be ordered up to " + Wording.day(lastDue(report)) + ".");
    }
    due.forEach(order -> OrderBlock.write(report, order, page));
    if (later.isEmpty()) {
      return;
    }
    page.heading("Order later (tentative)");
    page.say(
        "Tentative, because these are more than "
            + DUE_WITHIN_DAYS
            + " days off: by then prices, weights and appetites will have moved. Plan again before"
            + " ordering.");
    later.forEach(order -> OrderBlock.write(report, order, page));
  }

  private static LocalDate lastDue(PlanReport report) {
    return report.world().scenario().planning().from().plusDays(DUE_WITHIN_DAYS);
  }

  /** Orders of the first two weeks, by date. */
  static List<Order> due(PlanReport report) {
    return report.plan().orders().stream()
        .filter(order -> !order.slot().ordered().isAfter(lastDue(report)))
        .sorted(BY_DATE)
        .toList();
  }
}
