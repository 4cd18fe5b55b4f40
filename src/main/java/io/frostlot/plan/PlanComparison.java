package io.frostlot.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Two plans side by side: only what differs.
 *
 * @param names of both
 * @param before how the first stands before money
 * @param after how the second does
 * @param changes meals, orders and totals
 * @param lines of the bill that differ; their differences sum exactly to that of the costs
 * @param suppliers names by id, as far as they are known
 */
public record PlanComparison(
    List<String> names,
    Difference.Side before,
    Difference.Side after,
    Changes changes,
    List<BillLines.Line> lines,
    Map<String, String> suppliers) {
  public PlanComparison {
    names = List.copyOf(names);
    lines = List.copyOf(lines);
    suppliers = Map.copyOf(suppliers);
  }

  /**
   * A plan by its name, whatever it was read from.
   *
   * @param side how it stands before money
   * @param suppliers names by id; none where only the plan is at hand
   */
  public record Named(
      String name,
      Difference.Side side,
      Outline outline,
      BillLines bill,
      Map<String, String> suppliers) {
    public Named {
      suppliers = Map.copyOf(suppliers);
    }

    /** A plan of a world. */
    public static Named of(String name, String digest, World world, Answer.Judged judged) {
      Map<String, String> suppliers = new HashMap<>();
      world.scenario().suppliers().forEach(it -> suppliers.put(it.id(), it.name()));
      Outcome outcome = Outcome.of(world, judged.plan());
      return new Named(
          name,
          Difference.Side.of(judged, outcome),
          Outline.of(digest, judged, outcome),
          BillLines.of(judged.books()),
          suppliers);
    }
  }

  /** Are the same meals met, though perhaps later or with other margins? */
  public boolean sameMealsMet() {
    return changes.nowMet().isEmpty()
        && changes.nowUnmet().isEmpty()
        && before.standing().unmetMust() == after.standing().unmetMust()
        && before.standing().unmetOther() == after.standing().unmetOther();
  }

  /** Is all the same that comes before money, so that money may be compared? */
  public boolean moneyCompares() {
    return sameMealsMet() && before.sameMeals(after);
  }

  public static PlanComparison of(Named before, Named after) {
    Map<String, String> suppliers = new HashMap<>(before.suppliers());
    suppliers.putAll(after.suppliers());
    return new PlanComparison(
        List.of(before.name(), after.name()),
        before.side(),
        after.side(),
        Changes.between(before.outline(), after.outline()),
        BillLines.different(before.bill(), after.bill()),
        suppliers);
  }
}
