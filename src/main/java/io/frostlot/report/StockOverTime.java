package io.frostlot.report;

import io.frostlot.plan.Outcome;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Pieces of each item at night, on a handful of days. */
final class StockOverTime implements Sections.Section {
  private static final int MOST_DAYS_SHOWN = 7;

  @Override
  public void write(PlanReport report, Page page) {
    List<LocalDate> days = days(report.world().scenario().planning());
    Table table =
        Table.of(
            Stream.concat(Stream.of(""), days.stream().map(day -> ">" + Wording.shortDay(day)))
                .toArray(String[]::new));
    for (Outcome.Stock stock : report.outcome().stock()) {
      List<String> cells = new ArrayList<>();
      cells.add(stock.item().id());
      days.forEach(day -> cells.add(pieces(stock, day)));
      if (days.stream().anyMatch(day -> stock.byDay().getOrDefault(day, 0) > 0)) {
        table.row(cells);
      }
    }
    if (!table.isEmpty()) {
      page.heading("Pieces in the freezers, at night");
      page.table(table);
    }
  }

  private static String pieces(Outcome.Stock stock, LocalDate day) {
    int pieces = stock.byDay().getOrDefault(day, 0);
    return pieces == 0 ? "-" : String.valueOf(pieces);
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
