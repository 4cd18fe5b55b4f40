package io.frostlot.report;

import io.frostlot.plan.FreezerLoad;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How full each freezer is: its fullest day, and the fullest of each month as a bar; and what is at
 * risk in it.
 */
final class FreezerUse implements Sections.Section {
  private static final int FREEZERS_ABREAST = 3;

  @Override
  public void write(PlanReport report, Page page) {
    List<FreezerLoad> loads = report.outcome().freezers();
    if (loads.isEmpty()) {
      return;
    }
    page.heading("Freezers");
    Period planning = report.world().scenario().planning();
    for (FreezerLoad load : loads) {
      page.point(fullest(load) + limited(load, planning) + atRisk(report, load));
    }
    for (int from = 0; from < loads.size(); from += FREEZERS_ABREAST) {
      page.gap();
      page.table(
          byMonth(loads.subList(from, Math.min(loads.size(), from + FREEZERS_ABREAST)), planning));
    }
  }

  private static String fullest(FreezerLoad load) {
    return "%s: fullest on %s, %s of %s l (%s)."
        .formatted(
            load.freezer().name(),
            Wording.day(load.peakDay()),
            Wording.decimal(load.peak().toDouble()),
            Wording.decimal(load.freezer().usableOn(load.peakDay()).toDouble()),
            Wording.percent(load.share(load.peakDay())));
  }

  /** How full it is on days on which it has less room. */
  private static String limited(FreezerLoad load, Period planning) {
    return load.freezer().access().limits().stream()
        .map(Freezer.Limit::days)
        .filter(planning::overlaps)
        .map(
            days -> {
              LocalDate fullest =
                  days.days()
                      .filter(planning::contains)
                      .max(Comparator.comparingDouble(load::share))
                      .orElseThrow();
              return " Less room %s: at most %s of %s l."
                  .formatted(
                      Wording.fromTo(days.from(), days.to()),
                      Wording.decimal(load.on(fullest).toDouble()),
                      Wording.decimal(load.freezer().usableOn(fullest).toDouble()));
            })
        .collect(Collectors.joining());
  }

  /** What is lost where it fails on the worst day. */
  private static String atRisk(PlanReport report, FreezerLoad load) {
    return report.outcome().dearest().stream()
        .filter(it -> it.freezer().equals(load.freezer()) && it.count() > 0)
        .map(
            it ->
                " Its worst day to fail: %s, %s, %s."
                    .formatted(
                        Wording.day(it.day()),
                        Wording.count(it.count(), "piece", "pieces"),
                        report.wording().toBuyAgain(it.worth())))
        .collect(Collectors.joining());
  }

  private static Table byMonth(List<FreezerLoad> loads, Period planning) {
    Table table =
        Table.of(
            Stream.concat(
                    Stream.of("fullest in"), loads.stream().map(load -> load.freezer().name()))
                .toArray(String[]::new));
    YearMonth last = YearMonth.from(planning.to());
    for (YearMonth m = YearMonth.from(planning.from()); !m.isAfter(last); m = m.plusMonths(1)) {
      YearMonth month = m;
      table.bars(Wording.month(month), loads.stream().map(load -> fullest(load, month)).toList());
    }
    return table;
  }

  private static double fullest(FreezerLoad load, YearMonth month) {
    LocalDate next = month.plusMonths(1).atDay(1);
    return load.byDay().subMap(month.atDay(1), next).keySet().stream()
        .mapToDouble(load::share)
        .max()
        .orElse(0);
  }
}
