package io.frostlot.report;

import io.frostlot.forecast.FeedingDay;
import io.frostlot.keeping.Handling;
import io.frostlot.plan.MovedMeal;
import java.util.List;

/** Meals that do not come on their usual day, since the animal is handled. */
final class MovedMeals implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    List<MovedMeal> moved = MovedMeal.of(report.world().scenario());
    if (moved.isEmpty()) {
      return;
    }
    page.heading("Meals moved clear of handling");
    Table table = Table.of("animal", "usual day", "now due", "because of", "");
    for (MovedMeal meal : moved) {
      table.row(
          meal.animal(),
          Wording.day(meal.day().intended()),
          Wording.day(meal.day().days().best()),
          meal.what(),
          note(meal.day().place()));
    }
    page.table(table);
    page.say(
        "No meal on the "
            + Handling.REST_DAYS
            + " days before an animal is handled (Merck Veterinary Manual); one on the day itself"
            + " comes after it. Many snakes need longer after a large meal: ask a vet who knows"
            + " reptiles.");
  }

  private static String note(FeedingDay.Place place) {
    return switch (place) {
      case MOVED_OUTSIDE -> "outside its days";
      case NOT_CLEAR -> "no day is clear: handle it another day";
      default -> "";
    };
  }
}
