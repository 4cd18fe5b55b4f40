package io.frostlot.plan;

import java.util.List;

/**
 * Two plans side by side: only what differs.
 *
 * @param names of both
 * @param changes meals, orders and totals
 * @param lines of the bill that differ; their differences sum exactly to that of the costs
 */
public record PlanComparison(List<String> names, Changes changes, List<BillLines.Line> lines) {
  public PlanComparison {
    names = List.copyOf(names);
    lines = List.copyOf(lines);
  }

  /** A plan by its name, whatever it was read from. */
  public record Named(String name, Outline outline, BillLines bill) {}

  public static PlanComparison of(Named before, Named after) {
    return new PlanComparison(
        List.of(before.name(), after.name()),
        Changes.between(before.outline(), after.outline()),
        BillLines.different(before.bill(), after.bill()));
  }
}
