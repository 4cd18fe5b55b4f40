package io.frostlot.bench;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Measurements of groups as text, one line each.
 *
 * @param day of the measuring
 * @param version of the program
 * @param limit of the joint plan, members' own included
 */
public record GroupTables(
    LocalDate day, String version, Duration limit, List<GroupMeasurement> measurements) {
  private static final List<Goal> GOALS =
      List.of(Goal.FIRST_PLAN, Goal.ONE_PERCENT, Goal.HALF_PERCENT);

  /** A column, by its name in CSV and in Markdown; empty where there is nothing to tell. */
  private record Column(String csv, String shown, Function<GroupMeasurement, String> cell) {}

  public GroupTables {
    measurements = List.copyOf(measurements);
  }

  private List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("members", "members", it -> count(it.drawn().group().keepers().size())));
    columns.add(new Column("size", "size", it -> it.drawn().size().name()));
    columns.add(new Column("seed", "seed", it -> Long.toString(it.drawn().seed())));
    columns.add(
        new Column("hand_overs", "hand-overs", it -> it.drawn().handsOver() ? "dates" : "at once"));
    columns.add(new Column("limit_s", "limit", it -> Long.toString(limit.toSeconds())));
    for (Goal goal : GOALS) {
      String csv = goal == Goal.FIRST_PLAN ? "first_plan_s" : "to_" + percent(goal) + "_percent_s";
      columns.add(new Column(csv, goal.says(), it -> number(it.spent().reached().to(goal))));
    }
    columns.add(new Column("letter_s", "letter", it -> seconds(it.spent().letter())));
    columns.addAll(ofJointPlan());
    columns.addAll(ofSubgroups());
    columns.add(new Column("peak_mb", "peak MB", it -> Cells.number(it.spent().peakMegabytes())));
    return columns;
  }

  private static String percent(Goal goal) {
    return goal == Goal.ONE_PERCENT ? "1" : "half";
  }

  private static List<Column> ofJointPlan() {
    return List.of(
        new Column("unmet_must", "unmet must", it -> of(it.standing(), s -> count(s.unmetMust()))),
        new Column("unmet_other", "other", it -> of(it.standing(), s -> count(s.unmetOther()))),
        new Column(
            "shortfall", "short", it -> of(it.standing(), s -> Long.toString(s.shortfall()))),
        new Column("cost", "cost", it -> of(it.standing(), s -> number(s.money().toDouble()))),
        new Column("bound", "bound", it -> number(it.bound())),
        new Column("gap", "gap", it -> of(it.gap(), gap -> number(gap.amount()))),
        new Column("gap_percent", "gap %", it -> of(it.gap(), gap -> number(gap.percent()))),
        new Column(
            "gap_boxes", "gap in boxes", it -> of(it.gap(), gap -> number(gap.boxCharges()))),
        new Column("alone", "alone", it -> of(it.alone(), alone -> number(alone.toDouble()))));
  }

  private static List<Column> ofSubgroups() {
    return List.of(
        new Column("ways_s", "ways", it -> of(it.costs(), costs -> seconds(costs.took()))),
        new Column("subgroups", "subgroups", it -> of(it.costs(), costs -> count(costs.count()))),
        new Column("known", "known", it -> of(it.costs(), costs -> count(costs.known()))),
        new Column("width_wanted", "to", it -> of(it.costs(), costs -> number(costs.wanted()))),
        new Column("widest", "widest", it -> of(it.costs(), costs -> number(costs.widest()))));
  }

  /** RFC 4180; the machine is in a line that begins with #. */
  public String csv() {
    StringBuilder text = new StringBuilder("# " + Cells.top(version, day) + "\r\n");
    text.append(String.join(",", columns().stream().map(Column::csv).toList())).append("\r\n");
    for (GroupMeasurement it : measurements) {
      text.append(String.join(",", cells(it, ""))).append("\r\n");
    }
    return text.toString();
  }

  private List<String> cells(GroupMeasurement measurement, String none) {
    return columns().stream()
        .map(column -> column.cell().apply(measurement))
        .map(cell -> cell.isEmpty() ? none : cell)
        .toList();
  }

  /** One row for each group. */
  public String markdown() {
    StringBuilder text = new StringBuilder(Cells.top(version, day) + ".\n\n");
    text.append("Seconds are from the beginning, members' own plans included, to the first joint");
    text.append(" plan and to a gap of so many percent of cash and reckoned; the first group is");
    text.append(" planned by a process that has just begun. Alone is the sum of members' own");
    text.append(" plans; known are the costs of subgroups that lie within the width of the column");
    text.append(" after it; - is not reached, or not asked for.\n\n");
    Cells.head(text, columns().stream().map(Column::shown).toList());
    measurements.forEach(it -> Cells.row(text, cells(it, "-")));
    return text.toString();
  }

  private static <T> String of(Optional<T> found, Function<T, String> cell) {
    return found.map(cell).orElse("");
  }

  private static String count(int count) {
    return Integer.toString(count);
  }

  private static String seconds(Duration time) {
    return number(time.toMillis() / 1e3);
  }

  private static String number(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.2f", value) : "";
  }

  private static String number(OptionalDouble value) {
    return Cells.number(value, "");
  }
}
