package io.frostlot.report;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.plan.Outcome;
import io.frostlot.supply.Item;

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
      page.heading("Margins that gave way");
      page.say(
          "So that meals are met, the safety margins fall short by "
              + shortfall
              + " in all, in pieces and piece-days.");
    }
    if (!outcome.late().isEmpty()) {
      page.heading("Meals that come late");
      page.table(late(outcome));
    }
  }

  private static Table missed(PlanReport report) {
    Table table = Table.of("animal", "day", "may be given", ">grams", "nearest item");
    for (Outcome.Missed missed : report.outcome().missed()) {
      Meal meal = missed.demand().meal();
      table.row(
          eater(meal, missed.count()),
          Wording.day(meal.days().best()),
          days(meal.days()),
          grams(meal.prey().window()),
          nearest(report, missed));
    }
    return table;
  }

  private static String grams(MealSize.Window window) {
    return Wording.decimal(window.least().toDouble())
        + "-"
        + Wording.decimal(window.most().toDouble());
  }

  private static String days(Meal.Days days) {
    return days.earliest().equals(days.latest())
        ? "that day only"
        : Wording.shortDay(days.earliest()) + " to " + Wording.shortDay(days.latest());
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
    return "%s, %s g: %s"
        .formatted(
            item.id(),
            Wording.decimal(item.grams().mean().toDouble()),
            missed.demand().options().isEmpty() ? "does not fit" : "not there in time");
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
