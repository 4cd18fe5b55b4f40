package io.frostlot.plan;

/**
 * A way of ordering that keepers have, solved under the same rules as the plan it is compared with.
 *
 * @param says the habit in a few words, such as "everything from one supplier, Hillside"
 * @param lateMeals meals served after their best day
 * @param dearerBy how much more it costs than the plan
 */
public record Habit(String says, Standing standing, int lateMeals, Interval dearerBy) {}
