package io.frostlot.files;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Outline;
import java.util.List;

/**
 * {@code changes} of a plan in JSON: what differs from an earlier one.
 *
 * @param decimals of money
 */
record PlanJsonChanges(int decimals) {

  void write(JsonLines json, Changes changes) {
    json.object(
        "changes",
        one -> {
          one.yes("stale", changes.stale());
          meals(one, "nowUnmet", changes.nowUnmet());
          meals(one, "nowMet", changes.nowMet());
          one.list("orders", changes.orders(), this::order)
              .object("before", before -> totals(before, changes.costs().before()))
              .object("after", after -> totals(after, changes.costs().after()));
        });
  }

  private static void meals(JsonLines json, String name, List<Outline.Unmet> meals) {
    json.list(name, meals, (one, meal) -> one.text("animal", meal.animal()).day("day", meal.day()));
  }

  /** One that is added, dropped or changed. */
  void order(JsonLines json, Changes.OrderChange change) {
    if (change instanceof Changes.Added added) {
      name(json, "added", added.order());
      side(json, "after", added.order());
    } else if (change instanceof Changes.Dropped dropped) {
      name(json, "dropped", dropped.order());
      side(json, "before", dropped.order());
    } else {
      Changes.Changed changed = (Changes.Changed) change;
      name(json, "changed", changed.after());
      side(json, "before", changed.before());
      side(json, "after", changed.after());
    }
  }

  private static void name(JsonLines json, String change, Outline.Ordered order) {
    json.text("change", change).text("supplier", order.supplier()).day("orderBy", order.orderBy());
  }

  private void side(JsonLines json, String name, Outline.Ordered order) {
    json.object(
        name,
        one ->
            one.day("arrivesEarliest", order.arrives())
                .list(
                    "packs",
                    order.packs().entrySet(),
                    (pack, entry) ->
                        pack.text("pack", entry.getKey()).number("packs", entry.getValue()))
                .text("total", order.total().toText(decimals)));
  }

  private void totals(JsonLines json, Outline.Totals totals) {
    json.text("cost", totals.cost().toText(decimals)).text("cash", totals.cash().toText(decimals));
  }
}
