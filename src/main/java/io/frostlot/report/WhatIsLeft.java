package io.frostlot.report;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Leftover;
import io.frostlot.plan.Lot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is thrown away, and what lies in the freezers when the planning days are over, and why. */
final class WhatIsLeft implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    List<String> thrown = thrownAway(report);
    if (!thrown.isEmpty()) {
      page.heading("Thrown away");
      thrown.forEach(page::point);
    }
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
    kept.forEach((why, what) -> page.point(why + ": " + what(what) + "."));
  }

  private static String what(List<Leftover> leftovers) {
    return Places.by(leftovers, Leftover::lot).entrySet().stream()
        .map(
            place ->
                "%s in %s"
                    .formatted(
                        place.getValue().stream()
                            .map(it -> it.pieces() + " " + it.lot().item().id())
                            .collect(Collectors.joining(", ")),
                        place.getKey()))
        .collect(Collectors.joining("; "));
  }

  private static List<String> thrownAway(PlanReport report) {
    List<String> thrown = new ArrayList<>();
    for (Discard discard : report.plan().discards()) {
      report.plan().lots().stream()
          .filter(lot -> lot.id().equals(discard.lotId()))
          .map(lot -> pieces(lot, discard.pieces()))
          .map(what -> "%s: %s, which no meal needs.".formatted(Wording.day(discard.day()), what))
          .forEach(thrown::add);
    }
    for (Leftover leftover : report.outcome().leftovers()) {
      if (leftover.reason() instanceof Leftover.PastUseBy) {
        Lot lot = leftover.lot();
        String day = Wording.day(lot.useBy().plusDays(1));
        thrown.add("%s: %s, past its use-by.".formatted(day, pieces(lot, leftover.pieces())));
      }
    }
    return thrown;
  }

  private static String pieces(Lot lot, int pieces) {
    return "%s %s from %s".formatted(pieces, lot.item().id(), lot.freezer());
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
