package io.frostlot.report;

import io.frostlot.plan.FreezerLoad;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;

/** How full each freezer gets, week by week, in a table. */
record RoomTaken(List<FreezerLoad> loads, Period planning) {
  private static final int WEEKS_IN_GROUP = 4;

  void write(Page page) {
    Table table =
        Table.of(
            "",
            ">litres",
            ">most",
            ">full",
            "on",
            "weeks from " + Wording.shortDay(planning.from()));
    for (FreezerLoad load : loads) {
      table.row(
          load.freezer().name(),
          Wording.tenths(load.freezer().usableOn(load.peakDay()).toDouble()),
          Wording.tenths(load.peak().toDouble()),
          Wording.percent(load.share(load.peakDay())),
          Wording.day(load.peakDay()),
          weeks(load));
    }
    page.table(table);
    page.say(
        "One digit a week: tenths of the room taken when it is fullest, 9 for nine tenths or"
            + " more.");
  }

  private String weeks(FreezerLoad load) {
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
