package io.frostlot.report;

import io.frostlot.plan.Outcome;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Pieces of each item at night, on a handful of days; items of one supplier stand together. */
final class StockOverTime implements Sections.Section {
  private static final int MOST_DAYS_SHOWN = 7;

  @Override
  public void write(PlanReport report, Page page) {
    List<LocalDate> days = days(report.world().scenario().planning());
    SortedMap<String, List<Outcome.Stock>> bySource = new TreeMap<>();
    for (Outcome.Stock stock : report.outcome().stock()) {
      if (days.stream().anyMatch(day -> pieces(stock, day) > 0)) {
        String source = report.names().source(stock.item());
        bySource.computeIfAbsent(source, it -> new ArrayList<>()).add(stock);
      }
    }
    if (bySource.isEmpty()) {
      return;
    }
    Table table =
        Table.of(
            Stream.concat(Stream.of(""), days.stream().map(day -> ">" + Wording.shortDay(day)))
                .toArray(String[]::new));
    bySource.forEach(
        (source, all) -> {
          table.line(source);
          all.forEach(stock -> table.under(row(stock, days)));
        });
    page.heading("Pieces in the freezers, at night");
    page.table(table);
  }

  private static List<String> row(Outcome.Stock stock, List<LocalDate> days) {
    List<String> cells = new ArrayList<>();
    cells.add(stock.item().name());
    days.forEach(day -> cells.add(pieces(stock, day) == 0 ? "-" : "" + pieces(stock, day)));
    return cells;
  }

  private static int pieces(Outcome.Stock stock, LocalDate day) {
    return stock.byDay().getOrDefault(day, 0);
  }

  /** The first, the last, and whole weeks apart between them. */
  private static List<LocalDate> days(Period planning) {
    long weeks = ChronoUnit.WEEKS.between(planning.from(), planning.to());
    long step = Math.max(1, (weeks + MOST_DAYS_SHOWN - 2) / (MOST_DAYS_SHOWN - 1));
    List<LocalDate> days = new ArrayList<>();
    for (LocalDate day = planning.from(); day.isBefore(planning.to()); day = day.plusWeeks(step)) {
      days.add(day);
    }
    days.add(planning.to());
    return days;
  }
}
