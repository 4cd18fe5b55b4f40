package io.frostlot.plan;

/**
 * A way of ordering that keepers have, followed under the same rules as the plan it is compared
 * with.
 *
 * @param says the habit in a few words, such as "everything from one supplier, Hillside"
 * @param standing of the plan found for it
 * @param lateMeals meals served after their best day
 * @param dearerBy how much more the habit costs than the plan, at the habit's best
 */
public record Habit(String says, Standing standing, int lateMeals, Interval dearerBy) {
  /** What comes before money, and late meals. */
  public Difference.Side side() {
    return new Difference.Side(standing, lateMeals);
  }
}
