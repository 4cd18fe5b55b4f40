package io.frostlot.report;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.plan.Outcome;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Meals that are not met, by how much margins gave way, and meals that come late. */
final class MealsNotMet implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    long shortfall = report.answer().plan().standing().shortfall();
    Outcome outcome = report.outcome();
    if (!outcome.missed().isEmpty()) {
      page.heading("Meals not met");
      page.table(missed(report));
      page.say(
          "An animal that misses meals or loses weight, and above all a hatchling or one that"
              + " recovers, is a case for a vet who knows reptiles.");
    }
    if (shortfall > 0) {
      page.heading("What gave way");
      new TreeMap<>(report.books().shortfalls())
          .forEach((rule, amount) -> page.point(gaveWay(rule, amount)));
    }
    if (!outcome.late().isEmpty()) {
      page.heading("Meals that come late");
      page.table(late(outcome));
    }
  }

  private static String gaveWay(String rule, long amount) {
    return switch (rule) {
      case "adequacy" ->
          "Adequacy by "
              + amount
              + ": percent of the programme below or above the band, summed over any four meals in"
              + " a row and any eight weeks of each animal.";
      case "safety-cover" -> "Days of cover by " + amount + " piece-days.";
      default -> Wording.rule(rule) + " by " + Wording.count(amount, "piece", "pieces") + ".";
    };
  }

  /** Meals that differ by their days only share a row. */
  private record Row(String eater, String grams, String nearest) {}

  private static Table missed(PlanReport report) {
    Map<Row, List<Meal.Days>> rows = new LinkedHashMap<>();
    for (Outcome.Missed missed : report.outcome().missed()) {
      Meal meal = missed.demand().meal();
      Row row =
          new Row(
              eater(meal, missed.count()), grams(meal.prey().window()), nearest(report, missed));
      rows.computeIfAbsent(row, it -> new ArrayList<>()).add(meal.days());
    }
    Table table = Table.of("animal", "day (may be given)", ">grams", "nearest item");
    rows.forEach((row, days) -> table.row(row.eater(), days(days), row.grams(), row.nearest()));
    return table;
  }

  private static String days(List<Meal.Days> all) {
    return all.stream()
        .map(
            days ->
                "%s (%s-%s)"
                    .formatted(
                        Wording.date(days.best()),
                        Wording.shortDay(days.earliest()),
                        Wording.shortDay(days.latest()))
                    .replace(' ', Wording.NO_BREAK))
        .collect(Collectors.joining(", "));
  }

  private static String grams(MealSize.Window window) {
    return decimal(window.least()) + "-" + decimal(window.most());
  }

  private static String eater(Meal meal, int count) {
    return (count > 1 ? count + " x " : "")
        + meal.eater()
        + (meal.importance() == Importance.MUST ? " (must)" : "");
  }

  private static String nearest(PlanReport report, Outcome.Missed missed) {
    if (missed.nearestItem().isEmpty()) {
      return "none of a kind that it takes";
    }
    Item item = report.world().items().get(missed.nearestItem());
    Grams largest = missed.demand().meal().prey().largestPiece();
    String why =
        !missed.demand().options().isEmpty()
            ? "not there in time"
            : item.grams().most().compareTo(largest) > 0
                ? "one may weigh %s g, above the largest, %s g"
                    .formatted(decimal(item.grams().most()), decimal(largest))
                : "does not fit";
    return "%s, %s g: %s".formatted(item.id(), decimal(item.grams().mean()), why);
  }

  private static String decimal(Grams grams) {
    return Wording.decimal(grams.toDouble());
  }

  private static Table late(Outcome outcome) {
    Table table = Table.of("animal", "best day", "given on", ">days late");
    for (Outcome.Late late : outcome.late()) {
      Meal meal = late.demand().meal();
      table.row(
          eater(meal, late.meals()),
          Wording.day(meal.days().best()),
          Wording.day(late.day()),
          String.valueOf(meal.days().late(late.day())));
    }
    return table;
  }
}
