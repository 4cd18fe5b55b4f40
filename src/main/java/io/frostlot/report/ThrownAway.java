package io.frostlot.report;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Leftover;
import io.frostlot.plan.Lot;
import io.frostlot.plan.WhyThrown;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the keeper is to throw away, and why: one line for all lots of an item in a freezer. */
final class ThrownAway implements Sections.Section {

  /** What is thrown away for one reason shares a line; none where it is not known. */
  private record What(String item, String freezer, String why) {}

  private record Thrown(LocalDate day, int pieces) {}

  @Override
  public void write(PlanReport report, Page page) {
    Map<What, List<Thrown>> thrown = thrownAway(report);
    if (!thrown.isEmpty()) {
      page.heading("Throw away");
      thrown.forEach((what, when) -> page.point(sentence(what, when)));
    }
  }

  private static Map<What, List<Thrown>> thrownAway(PlanReport report) {
    Map<What, List<Thrown>> thrown = new LinkedHashMap<>();
    WhyThrown reasons = new WhyThrown(report.world(), report.plan());
    Map<String, Lot> lots = report.plan().lotsById();
    for (Discard discard : report.plan().discards()) {
      add(
          thrown,
          what(report, lots.get(discard.lotId()), why(reasons.of(discard))),
          new Thrown(discard.day(), discard.pieces()));
    }
    for (Leftover leftover : report.outcome().leftovers()) {
      if (leftover.reason() instanceof Leftover.PastUseBy) {
        add(
            thrown,
            what(report, leftover.lot(), ", past their use-by"),
            new Thrown(leftover.lot().useBy().plusDays(1), leftover.pieces()));
      }
    }
    return thrown;
  }

  private static String why(WhyThrown.Reason reason) {
    return switch (reason) {
      case NO_ROOM -> ", to make room: no meal needs them";
      case NO_ROOM_BUT_NEEDED ->
          ", to make room: later meals that could be of them get what comes then, or nothing";
      case NOT_NEEDED -> ", since no meal needs them";
      case UNKNOWN -> "";
    };
  }

  private static What what(PlanReport report, Lot lot, String why) {
    return new What(report.names().of(lot.item()), lot.freezer(), why);
  }

  private static void add(Map<What, List<Thrown>> thrown, What what, Thrown when) {
    thrown.computeIfAbsent(what, it -> new ArrayList<>()).add(when);
  }

  private static String sentence(What what, List<Thrown> when) {
    List<LocalDate> days = when.stream().map(Thrown::day).toList();
    LocalDate first = Collections.min(days);
    LocalDate last = Collections.max(days);
    return "%s %s from %s, %s%s."
        .formatted(
            when.stream().mapToInt(Thrown::pieces).sum(),
            what.item(),
            what.freezer(),
            first.equals(last) ? "on " + Wording.day(first) : Wording.fromTo(first, last),
            what.why());
  }
}
