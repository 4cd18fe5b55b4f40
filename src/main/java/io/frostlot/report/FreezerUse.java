package io.frostlot.report;

import io.frostlot.plan.FreezerLoad;
import io.frostlot.units.Period;
import java.time.LocalDate;

/** How full each freezer is, week by week. */
final class FreezerUse implements Sections.Section {
  private static final int WEEKS_IN_GROUP = 4;

  @Override
  public void write(PlanReport report, Page page) {
    if (report.outcome().freezers().isEmpty()) {
      return;
    }
    Period planning = report.world().scenario().planning();
    page.heading("Freezers");
    Table table =
        Table.of(
            "",
            ">litres",
            ">most",
            ">full",
            "on",
            "weeks from " + Wording.shortDay(planning.from()));
    for (FreezerLoad load : report.outcome().freezers()) {
      table.row(
          load.freezer().name(),
          Wording.decimal(load.freezer().usable().toDouble()),
          Wording.decimal(load.peak().toDouble()),
          Wording.percent(load.share(load.peakDay())),
          Wording.day(load.peakDay()),
          weeks(load, planning));
    }
    page.table(table);
    page.say(
        "One digit a week: tenths of the room taken when it is fullest, 9 for nine tenths or"
            + " more.");
  }

  private static String weeks(FreezerLoad load, Period planning) {
    StringBuilder weeks = new StringBuilder();
    int week = 0;
    for (LocalDate day = planning.from(); planning.contains(day); day = day.plusWeeks(1), week++) {
      double fullest = day.datesUntil(day.plusWeeks(1)).mapToDouble(load::share).max().orElse(0);
      weeks.append(week > 0 && week % WEEKS_IN_GROUP == 0 ? " " : "");
      weeks.append(fullest > 1 ? "!" : String.valueOf(Math.min(9, (int) (10 * fullest))));
    }
    return weeks.toString();
  }
}
