package io.frostlot.plan;

/**
 * A way of ordering that keepers have, followed under the same rules as the plan it is compared
 * with.
 *
 * @param says the habit in a few words, such as "everything from one supplier, Hillside"
 * @param side how the plan found for it stands before money
 * @param dearerBy how much more the habit costs than the plan, at the habit's best
 */
public record Habit(String says, Difference.Side side, Interval dearerBy) {}
