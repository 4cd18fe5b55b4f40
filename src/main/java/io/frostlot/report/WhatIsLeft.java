package io.frostlot.report;

import io.frostlot.plan.Leftover;
import io.frostlot.plan.Lot;
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
                    leftover -> why(leftover), LinkedHashMap::new, Collectors.toList()));
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

  private static String why(Leftover leftover) {
    Leftover.Reason reason = leftover.reason();
    if (reason instanceof Leftover.PackSize pack) {
      return "Bought because a pack holds " + pack.holds();
    }
    if (reason instanceof Leftover.Outgrown) {
      return "Outgrown, no later meal takes it";
    }
    if (reason instanceof Leftover.KeptForLater) {
      return "Kept for meals after the planning days";
    }
    return leftover.lot().origin() instanceof Lot.Ordered
        ? "More than is eaten"
        : "More than is eaten, in hand or ordered before";
  }
}
