package io.frostlot.report;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.WhyUnmet;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;

/** Meals that are not met, and meals that come late. */
final class MealsNotMet implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    Outcome outcome = report.outcome();
    if (!outcome.missed().isEmpty()) {
      page.heading("Meals not met");
      page.table(missed(report));
      page.say(
          "An animal that misses meals or loses weight, and above all a hatchling or one that"
              + " recovers, is a case for a vet who knows reptiles.");
    }
    if (!outcome.late().isEmpty()) {
      page.heading("Meals that come late");
      page.table(late(outcome));
    }
  }

  /** Meals of one eater that fail for the same reason share a row. */
  private record Row(String eater, String why) {}

  private static Table missed(PlanReport report) {
    Map<Row, List<Outcome.Missed>> rows = new LinkedHashMap<>();
    WhyUnmet reasons = new WhyUnmet(report.world(), report.plan());
    for (Outcome.Missed missed : report.outcome().missed()) {
      Row row = new Row(eater(missed.demand().meal()), nearest(report, missed, reasons));
      rows.computeIfAbsent(row, it -> new ArrayList<>()).add(missed);
    }
    Table table = Table.of("animal", ">meals", "best days", ">grams", "nearest prey");
    rows.forEach(
        (row, all) -> {
          List<Meal> meals = all.stream().map(missed -> missed.demand().meal()).toList();
          int count = all.stream().mapToInt(Outcome.Missed::count).sum();
          table.row(row.eater(), String.valueOf(count), days(meals), grams(meals), row.why());
        });
    return table;
  }

  private static String days(List<Meal> meals) {
    List<LocalDate> best = meals.stream().map(meal -> meal.days().best()).toList();
    return Wording.fromTo(Collections.min(best), Collections.max(best));
  }

  /** From the least of all the meals to the most. */
  private static String grams(List<Meal> meals) {
    List<MealSize.Window> windows = meals.stream().map(meal -> meal.prey().window()).toList();
    Grams least =
        windows.stream().map(MealSize.Window::least).min(Comparator.naturalOrder()).orElseThrow();
    Grams most =
        windows.stream().map(MealSize.Window::most).max(Comparator.naturalOrder()).orElseThrow();
    return decimal(least) + "-" + decimal(most);
  }

  private static String eater(Meal meal) {
    return meal.eater() + (meal.importance() == Importance.MUST ? " (must)" : "");
  }

  private static String nearest(PlanReport report, Outcome.Missed missed, WhyUnmet reasons) {
    if (missed.nearestItem().isEmpty()) {
      return "none of a kind that it takes";
    }
    Item item = report.world().items().get(missed.nearestItem());
    Grams largest = missed.demand().meal().prey().largestPiece();
    String why =
        !missed.demand().options().isEmpty()
            ? why(reasons.of(missed))
            : item.grams().most().compareTo(largest) > 0
                ? "one may weigh %s g, more than its largest piece may"
                    .formatted(decimal(item.grams().most()))
                : "does not fit";
    return "%s, %s g%s%s"
        .formatted(
            report.names().of(item), decimal(item.grams().mean()), why.isEmpty() ? "" : ": ", why);
  }

  /** Empty where it is not known. */
  private static String why(WhyUnmet.Reason reason) {
    return switch (reason) {
      case OTHERS_GET_IT -> "other meals get what is there";
      case NO_FREEZER -> "no freezer may take it";
      case NOT_IN_TIME -> "not there in time";
      case TOO_OLD -> "too old by then";
      case NO_ROOM -> "no room in a freezer when it could come";
      case NOT_SOLD -> "none is left, and nobody sells it";
      case UNKNOWN -> "";
    };
  }

  private static String decimal(Grams grams) {
    return Wording.decimal(grams.toDouble());
  }

  private static Table late(Outcome outcome) {
    Map<String, List<Outcome.Late>> byEater = new LinkedHashMap<>();
    outcome
        .late()
        .forEach(
            late ->
                byEater
                    .computeIfAbsent(eater(late.demand().meal()), it -> new ArrayList<>())
                    .add(late));
    Table table = Table.of("animal", ">meals", "best days", "given", ">days late");
    byEater.forEach(
        (eater, all) -> {
          List<LocalDate> given = all.stream().map(Outcome.Late::day).toList();
          table.row(
              eater,
              String.valueOf(all.stream().mapToInt(Outcome.Late::meals).sum()),
              days(all.stream().map(late -> late.demand().meal()).toList()),
              Wording.fromTo(Collections.min(given), Collections.max(given)),
              daysLate(all));
        });
    return table;
  }

  /** Such as "2", or "1-3". */
  private static String daysLate(List<Outcome.Late> all) {
    LongSummaryStatistics days =
        all.stream()
            .mapToLong(late -> late.demand().meal().days().late(late.day()))
            .summaryStatistics();
    return days.getMin() == days.getMax()
        ? String.valueOf(days.getMin())
        : days.getMin() + "-" + days.getMax();
  }
}
