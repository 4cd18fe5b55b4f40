package io.frostlot.report;

import io.frostlot.plan.Changes;
import io.frostlot.plan.Outline;
import io.frostlot.units.Money;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What differs from an earlier plan: meals first, then orders, then money. */
final class ChangesSince implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    report.changes().forEach(changes -> write(changes, report, page));
  }

  private static void write(Changes changes, PlanReport report, Page page) {
    page.heading("Changed since the earlier plan");
    if (changes.stale()) {
      page.say("The earlier plan is stale: it was made from other inputs.");
    }
    if (changes.isEmpty()) {
      page.say("Nothing: same meals, same orders, same money.");
      return;
    }
    meals(changes.nowUnmet(), "no longer met", page);
    meals(changes.nowMet(), "now met", page);
    changes.orders().forEach(change -> page.point(order(change, report)));
    money(changes, report, page);
  }

  private static void meals(List<Outline.Unmet> meals, String what, Page page) {
    if (!meals.isEmpty()) {
      page.point(
          Wording.count(meals.size(), "meal ", "meals ")
              + what
              + ": "
              + meals.stream()
                  .map(meal -> meal.animal() + " on " + Wording.day(meal.day()))
                  .collect(Collectors.joining(", "))
              + ".");
    }
  }

  private static String order(Changes.OrderChange change, PlanReport report) {
    Wording wording = report.wording();
    if (change instanceof Changes.Added added) {
      return "Added: " + order(added.order()) + ": " + packs(added.order()) + "; " + wording.money(added.order().total()) + ".";
    }
    if (change instanceof Changes.Dropped dropped) {
      return "Dropped: " + order(dropped.order()) + "; " + wording.money(dropped.order().total()) + ".";
    }
    Changes.Changed changed = (Changes.Changed) change;
    String arrival =
        changed.before().arrives().equals(changed.after().arrives())
            ? ""
            : "arrives " + Wording.day(changed.after().arrives()) + " instead of " + Wording.day(changed.before().arrives()) + "; ";
    return "Changed: "
        + order(changed.after())
        + ": "
        + arrival
        + packsChanged(changed)
        + wording.bare(changed.after().total())
        + " instead of "
        + wording.money(changed.before().total())
        + ".";
  }

  private static String order(Outline.Ordered order) {
    return order.supplier() + ", order by " + Wording.day(order.orderBy());
  }

  private static String packs(Outline.Ordered order) {
    return order.packs().entrySet().stream()
        .map(pack -> pack.getValue() + " x " + pack.getKey())
        .collect(Collectors.joining(", "));
  }

  private static String packsChanged(Changes.Changed changed) {
    TreeSet<String> ids = new TreeSet<>(changed.before().packs().keySet());
    ids.addAll(changed.after().packs().keySet());
    return ids.stream()
        .filter(id -> !changed.before().packs().getOrDefault(id, 0).equals(changed.after().packs().getOrDefault(id, 0)))
        .map(id -> changed.after().packs().getOrDefault(id, 0) + " x " + id + " instead of " + changed.before().packs().getOrDefault(id, 0) + "; ")
        .collect(Collectors.joining());
  }

  private static void money(Changes changes, PlanReport report, Page page) {
    Wording wording = report.wording();
    Outline.Totals before = changes.costs().before();
    Outline.Totals after = changes.costs().after();
    if (!before.equals(after)) {
      page.point(
          "Cash " + was(wording, after.cash(), before.cash())
              + "; with reckoned costs and the days after " + was(wording, after.cost(), before.cost()) + ".");
    }
  }

  private static String was(Wording wording, Money now, Money before) {
    return wording.bare(now) + " instead of " + wording.money(before);
  }
}
