package io.frostlot.report;

import io.frostlot.forecast.FeedingDay;
import io.frostlot.keeping.Handling;
import io.frostlot.plan.MovedMeal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Meals that do not come on their usual day, since the animal is handled or nobody feeds then. */
final class MovedMeals implements Sections.Section {
  /** Places of meals that found no day among their own. */
  private static final Set<FeedingDay.Place> SOUGHT_FURTHER =
      EnumSet.complementOf(EnumSet.of(FeedingDay.Place.AS_INTENDED, FeedingDay.Place.MOVED_WITHIN));

  @Override
  public void write(PlanReport report, Page page) {
    List<MovedMeal> all = MovedMeal.of(report.world().scenario());
    if (all.isEmpty()) {
      return;
    }
    page.heading("Meals moved");
    List<MovedMeal> moved = all.stream().filter(meal -> !meal.isByTheWeek()).toList();
    if (!moved.isEmpty()) {
      page.table(table(moved));
    }
    if (moved.size() < all.size()) {
      page.say(
          Wording.count(all.size() - moved.size(), "meal is", "meals are")
              + " due on another of their own days than usual, a weekday on which their room is"
              + " fed.");
    }
    if (moved.stream().anyMatch(meal -> SOUGHT_FURTHER.contains(meal.day().place()))) {
      page.say(
          "A meal that is moved comes at least half of the days between two meals after the one"
              + " before and ahead of the next, so that no full meal comes before the last is"
              + " digested (common practice).");
    }
    if (moved.stream().anyMatch(meal -> meal.reason().cause() == MovedMeal.Cause.HANDLING)) {
      page.say(
          "No meal on the "
              + Handling.REST_DAYS
              + " days before an animal is handled (Merck Veterinary Manual); one on the day"
              + " itself comes after it. Many snakes need longer after a large meal: ask a vet who"
              + " knows reptiles.");
    }
  }

  private static Table table(List<MovedMeal> moved) {
    Table table = Table.of("animal", "usual day", "now due", "because of", "");
    for (MovedMeal meal : moved) {
      table.row(
          meal.animal(),
          Wording.day(meal.day().intended()),
          Wording.day(meal.day().days().best()),
          because(meal.reason()),
          note(meal.day().place()));
    }
    return table;
  }

  private static String because(MovedMeal.Reason reason) {
    return switch (reason.cause()) {
      case HANDLING -> reason.what();
      case KEEPER_AWAY -> "nobody there";
      case ROOM_NOT_FED -> "weekdays of " + reason.what();
      case ROOM_AND_KEEPER -> "weekdays of " + reason.what() + ", and nobody there";
    };
  }

  private static String note(FeedingDay.Place place) {
    return switch (place) {
      case MOVED_OUTSIDE -> "outside its days";
      case NOT_CLEAR -> "no day is clear: handle it another day";
      case NOBODY_FEEDS -> "no day left: somebody else must feed it";
      default -> "";
    };
  }
}
