package io.frostlot.oracle;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import java.time.LocalDate;

/** One thing done on the way through a tiny world. */
sealed interface Move {
  record Bought(Order order) implements Move {}

  record PutAway(Lot lot) implements Move {}

  /** One meal; {@code pieces} of those that lie in a freezer with a use-by. */
  record Eaten(Demand demand, LocalDate day, Option option) implements Move {}

  /** Pieces of one group are moved into another freezer. */
  record Carried(Cells.Kind from, int into, LocalDate day, int count) implements Move {}

  /** Pieces of the meal before or thrown away, from one group of interchangeable ones. */
  record Taken(Cells.Kind from, LocalDate day, int count, boolean eaten) implements Move {}
}
