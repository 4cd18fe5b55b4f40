package io.frostlot.report;

import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The orders that are due, then the later ones, which are tentative. */
final class NextOrders implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    LocalDate first = report.world().scenario().planning().from();
    List<Order> due = report.plan().due(first);
    List<Order> later = report.plan().byOrderDate().filter(o -> !due.contains(o)).toList();

    page.heading("Order next");
    noneDue(report).ifPresent(none -> page.say(Wording.capital(none) + "."));
    due.forEach(order -> OrderBlock.write(report, order, page));
    if (later.isEmpty()) {
      return;
    }
    page.heading("Order later (tentative)");
    page.say(
        "Tentative, because these are more than "
            + Plan.DUE_WITHIN_DAYS
            + " days off: by then prices, weights and appetites will have moved. Plan again before"
            + " ordering.");
    later.forEach(order -> OrderBlock.write(report, order, page));
  }

  /** That nothing is due, such as "nothing is to be ordered up to Mon 20 Jan 2031". */
  static Optional<String> noneDue(PlanReport report) {
    LocalDate first = report.world().scenario().planning().from();
    return report.plan().due(first).isEmpty()
        ? Optional.of(
            "nothing is to be ordered up to " + Wording.day(first.plusDays(Plan.DUE_WITHIN_DAYS)))
        : Optional.empty();
  }
}
