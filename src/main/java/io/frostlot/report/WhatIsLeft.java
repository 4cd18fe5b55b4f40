package io.frostlot.report;

import io.frostlot.plan.Leftover;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What lies in the freezers when the planning days are over, and why. */
final class WhatIsLeft implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    Map<String, List<Leftover>> kept =
        report.outcome().leftovers().stream()
            .filter(leftover -> !(leftover.reason() instanceof Leftover.PastUseBy))
            .collect(
                Collectors.groupingBy(
                    leftover -> why(leftover.reason()), LinkedHashMap::new, Collectors.toList()));
    page.heading("Left at the end, and why");
    if (kept.isEmpty()) {
      page.say("Nothing.");
    }
    kept.forEach((why, what) -> page.point(why + ": " + what(report, what) + "."));
  }

  private static String what(PlanReport report, List<Leftover> leftovers) {
    return Places.by(report.world(), leftovers, Leftover::lot).entrySet().stream()
        .map(
            place ->
                "%s in %s"
                    .formatted(
                        place.getValue().stream()
                            .map(it -> it.pieces() + " " + report.names().of(it.lot().item()))
                            .collect(Collectors.joining(", ")),
                        place.getKey()))
        .collect(Collectors.joining("; "));
  }

  private static String why(Leftover.Reason reason) {
    if (reason instanceof Leftover.PackSize pack) {
      return "Bought because a pack holds " + pack.holds();
    }
    if (reason instanceof Leftover.Outgrown) {
      return "Outgrown, no later meal takes it";
    }
    return reason instanceof Leftover.KeptForLater
        ? "Kept for meals after the planning days"
        : "More than is eaten, in hand before or bought at the better price";
  }
}
